import {
  type ChlorineFinding,
  explain,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import type { ChlorineGiven } from './chlorineGiven.ts';
import { giardiaTable_log, mostVirus_log, onePercent_g_per_L } from './constants.ts';
import { virusCt } from './virusCt.ts';

/** Writes down how each figure of a site's chlorine was reached. It computes nothing of its own. */
// long: one line after another, nothing else
export function chlorineWorking(given: ChlorineGiven, f: ChlorineFinding): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const line = (
    code: WorkingCode,
    value: number | null,
    unit: string,
    inputs: readonly WorkingInput[],
    source: string,
  ) => explain(lines, { code, value, unit, inputs, source });
  const known = (name: string, value: number | null, unit: string) => workingInput(name, value ?? 'unknown', unit);
  const { facts, water_pH, temperature_C } = given;
  const residual = known('residual', facts.residual_mg_per_L, 'mg/L');
  const acidity = known('acidity', water_pH, 'number');
  const water = workingInput('waterTemperature', temperature_C, 'C');
  const ct = known('contactCt', f.ct_mg_min_per_L, 'mg_min_per_L');
  line(
    'chlorine.ct',
    f.ct_mg_min_per_L,
    'mg_min_per_L',
    [residual, known('contactTime', facts.contact_min, 'min'), workingInput('baffling', given.baffling_ratio, 'ratio')],
    'cfr-141-74, CT by T10',
  );
  line(
    'chlorine.giardia',
    f.giardia_log10,
    'log10',
    [
      ct,
      known('ctOfTable', f.ctForGiardia_mg_min_per_L, 'mg_min_per_L'),
      known('ctOfRegression', f.ctForGiardiaRegression_mg_min_per_L, 'mg_min_per_L'),
      workingInput('logsOfTable', giardiaTable_log, 'log10'),
      ...[water, acidity, residual],
    ],
    'epa-815-r-20-003, table B-1',
  );
  line(
    'chlorine.viruses',
    f.viruses_log10,
    'log10',
    [
      ct,
      known('ctOfTable', water_pH === null ? null : virusCt(temperature_C, water_pH).ct_mg_min_per_L, 'mg_min_per_L'),
      workingInput('logsOfTable', mostVirus_log, 'log10'),
      ...[water, acidity],
    ],
    'epa-815-r-20-003, table B-2',
  );
  if (f.stock_mL !== null)
    line(
      'chlorine.stock',
      f.stock_mL,
      'mL',
      [
        known('dose', facts.dose_mg_per_L, 'mg/L'),
        known('batch', facts.batch_L, 'L'),
        known('stockStrength', facts.stock_g_per_L, 'g/L'),
      ],
      'gtfcc-2019, appendix 14',
    );
  if (f.product_per_L !== null)
    line(
      'chlorine.product',
      f.product_per_L,
      facts.product === 'bleach' ? 'mL' : 'g',
      [
        workingInput('stockStrength', onePercent_g_per_L, 'g/L'),
        known('activeShare', given.active_fraction, 'fraction'),
      ],
      'gtfcc-2019, appendix 14',
    );
  return lines;
}
