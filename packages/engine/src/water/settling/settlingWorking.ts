import {
  type DesignSettings,
  explain,
  type SettlingFinding,
  type TankFacts,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { sludgeClearance_m, sludgeDry_kg_per_m3 } from './constants.ts';

/**
 * Writes down how each figure of a settling finding was reached. It computes nothing: every value is taken from the finding.
 *
 * @param f - the finding
 * @param tank - the tank it is of: heights and diameter [m]
 * @param settings - the settings it was judged by
 * @param solids_kg_per_year - dry dirt that reaches it [kg/year]; null where not known
 * @returns working lines in the order of the steps
 * @definition ours
 */
// long: one line after another, nothing else
export function settlingWorking(
  f: SettlingFinding,
  tank: TankFacts,
  settings: DesignSettings,
  solids_kg_per_year: number | null,
): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const line = (
    code: WorkingCode,
    value: number | string | null,
    unit: string,
    inputs: readonly WorkingInput[],
    source = 'definition',
  ) => explain(lines, { code, value, unit, inputs, source });
  const known = (name: string, value: number | null, unit: string) => workingInput(name, value ?? 'unknown', unit);
  const area = known('planArea', f.planArea_m2, 'm2');
  const cells = workingInput('mixedCells', f.cells_count, 'count');
  const sinks = known('sinks', f.sinks_m_per_h, 'm/h');
  line('settling.area', f.planArea_m2, 'm2', [known('diameter', tank.diameter_m, 'm')], 'survey');
  line(
    'settling.sinks',
    f.sinks_m_per_h,
    'm/h',
    [
      workingInput('grain', f.grain_um, 'um'),
      workingInput('grainDensity', settings.settlingGrainDensity_kg_per_m3, 'kg/m3'),
      workingInput('waterTemperature', settings.waterTemperature_C, 'C'),
    ],
    'ferguson-church-2004, equation 4',
  );
  line('settling.flowByDay', f.flowByDay_L_per_s, 'L/s', [
    workingInput('pumpingHours', settings.pumping_h_per_day, 'h/day'),
  ]);
  line('settling.flowInStorm', f.flowInStorm_L_per_s, 'L/s', [
    workingInput('returnPeriod', settings.stormReturnPeriod_years, 'year'),
  ]);
  const byDay = known('flowByDay', f.flowByDay_L_per_s, 'L/s');
  const inStorm = known('flowInStorm', f.flowInStorm_L_per_s, 'L/s');
  line('settling.rateByDay', f.overflowRateByDay_m_per_h, 'm/h', [byDay, area], 'hazen-1904, flow over area');
  line('settling.rateInStorm', f.overflowRateInStorm_m_per_h, 'm/h', [inStorm, area], 'hazen-1904, flow over area');
  const rates = [
    ['settling.settledByDay', f.settledByDay_fraction, known('overflowRate', f.overflowRateByDay_m_per_h, 'm/h')],
    ['settling.settledInStorm', f.settledInStorm_fraction, known('overflowRate', f.overflowRateInStorm_m_per_h, 'm/h')],
  ] as const;
  for (const [code, share, rate] of rates)
    line(code, share, 'fraction', [sinks, rate, cells], 'hazen-1904, cells in a row');
  line(
    'settling.firstTenth',
    f.firstTenth_min,
    'min',
    [
      known('overflowHeight', tank.overflowHeight_m, 'm'),
      known('outletHeight', tank.outletHeight_m, 'm'),
      known('overflowRate', f.overflowRateByDay_m_per_h, 'm/h'),
      cells,
    ],
    'levenspiel-1999, tanks in series',
  );
  const grains = (pick: (of: SettlingFinding['grains'][number]) => number | null) =>
    f.grains.map((of) => known(`grain${of.grain_um}`, pick(of), 'fraction'));
  const finest = f.grains[0] ?? null;
  line(
    'settling.leavesByDay',
    finest?.leavesByDay_fraction ?? null,
    'fraction',
    grains((of) => of.leavesByDay_fraction),
  );
  line(
    'settling.leavesInStorm',
    finest?.leavesInStorm_fraction ?? null,
    'fraction',
    grains((of) => of.leavesInStorm_fraction),
  );
  line('settling.sludge', f.sludge_L_per_year, 'L/year', [
    known('solids', solids_kg_per_year, 'kg/year'),
    workingInput('drySludge', sludgeDry_kg_per_m3, 'kg/m3'),
  ]);
  line('settling.cleanAfter', f.cleanAfter_months, 'months', [
    known('sludge', f.sludge_L_per_year, 'L/year'),
    area,
    known('outletHeight', tank.outletHeight_m, 'm'),
    workingInput('clearance', sludgeClearance_m, 'm'),
  ]);
  line('settling.verdict', f.verdict, '', [
    workingInput('settledTarget', settings.settledTarget_fraction, 'fraction'),
    known('settledByDay', f.settledByDay_fraction, 'fraction'),
    known('settledInStorm', f.settledInStorm_fraction, 'fraction'),
  ]);
  return lines;
}
