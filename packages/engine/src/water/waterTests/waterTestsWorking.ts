import {
  explain,
  type WaterTestsFinding,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { claimCertainty_fraction, claimExceeded_fraction, limitsHold_fraction } from './constants.ts';
import { found_count } from './likelihood.ts';
import type { TestRead } from './testFinding.ts';

/** Writes down how each figure of samples and walks was reached. It computes nothing of its own. */
// long: one line after another, nothing else
export function waterTestsWorking(f: WaterTestsFinding, read: readonly TestRead[]): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const line = (
    code: WorkingCode,
    value: number | string | null,
    unit: string,
    inputs: readonly WorkingInput[],
    source = 'definition',
  ) => explain(lines, { code, value, unit, inputs, source });
  const known = (name: string, value: number | null, unit: string) => workingInput(name, value ?? 'unknown', unit);
  for (const { finding, read: portions, looked_mL } of read.filter((one) => one.finding.sign !== null)) {
    const sample = workingInput('sample', finding.testId, 'text');
    const inputs = [
      sample,
      workingInput('lookedAt', looked_mL, 'mL'),
      workingInput('signsFound', found_count(portions.portions), 'count'),
      known('lowerLimit', finding.low_per_100mL, 'per_100mL'),
      known('upperLimit', finding.high_per_100mL, 'per_100mL'),
      workingInput('limitsHold', limitsHold_fraction, 'fraction'),
    ];
    line('waterTests.count', finding.count_per_100mL, 'per_100mL', inputs, 'ridout-1994, likelihood ratio');
    if (finding.rarity !== null)
      line('waterTests.rarity', finding.rarity, 'fraction', [sample], 'blodgett-2002, rarity');
  }
  const clean = workingInput('cleanSamples', f.clean_count, 'count');
  const certainty = workingInput('certainty', claimCertainty_fraction, 'fraction');
  if (f.cleanBelow_per_100mL !== null)
    line(
      'waterTests.clean',
      f.cleanBelow_per_100mL,
      'per_100mL',
      [clean, certainty],
      'hanley-lippman-hand-1983, rule of three',
    );
  line(
    'waterTests.cleanWanted',
    f.cleanWanted_count,
    'count',
    [certainty, workingInput('exceededShare', claimExceeded_fraction, 'fraction')],
    'nz-moh-2008, table A1.3',
  );
  if (f.inspection !== null)
    line(
      'waterTests.inspection',
      f.inspection.band,
      '',
      [workingInput('inspectionScore', f.inspection.score, 'count')],
      'who-sanitary-inspection, scores',
    );
  if (f.priority !== null)
    line(
      'waterTests.priority',
      f.priority,
      '',
      [
        workingInput('ofSamples', f.last?.band ?? 'unknown', ''),
        workingInput('ofInspection', f.inspection?.band ?? 'unknown', ''),
      ],
      'who-gdwq-2017, table 5.4',
    );
  return lines;
}
