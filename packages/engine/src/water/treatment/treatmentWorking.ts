import {
  type CleanUnit,
  cautiousPersonPower_W,
  type DesignSettings,
  explain,
  min_per_h,
  type PeakFinding,
  personPower_W,
  pumpEfficiency_fraction,
  type TreatmentFinding,
  type UnitFigures,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { atmosphere_kPa, strokes_per_min, vessel_L } from './constants.ts';
import type { FlowsOfUnit } from './drivenFlow.ts';
import type { LastPressureTest } from './lastPressureTest.ts';
import type { TreatmentGiven } from './treatmentGiven.ts';

/** What a unit's figures were reached from. */
export interface TreatmentWorked {
  readonly finding: TreatmentFinding;
  readonly given: TreatmentGiven;
  readonly figures: UnitFigures;
  readonly clean: CleanUnit;
  readonly units_count: number;
  readonly flows: FlowsOfUnit | null;
  readonly air: LastPressureTest;
}

type Line = (
  code: WorkingCode,
  value: number | string | null,
  unit: string,
  inputs: readonly WorkingInput[],
  source?: string,
) => void;

const known = (name: string, value: number | null, unit: string) =>
  workingInput(name, value !== null && Number.isFinite(value) ? value : 'unknown', unit);
const darcy = 'darcy-1856, flow = pressure × area ÷ (viscosity × resistance)';

/** Writes down how each figure of a unit's finding was reached. It computes nothing: every value is taken from what was found. */
export function treatmentWorking(worked: TreatmentWorked): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const line: Line = (code, value, unit, inputs, source = 'definition') =>
    explain(lines, { code, value, unit, inputs, source });
  flowLines(worked, line);
  dayLines(worked, line);
  peakLinesOf(worked, line);
  testLines(worked, line);
  const { finding: f, given } = worked;
  line('treatment.verdict', f.verdict, '', [
    known('hoursNeeded', f.hoursNeeded_h, 'h'),
    known('hoursNeededWorn', f.hoursNeededWorn_h, 'h'),
    workingInput('pumpingHours', given.settings.pumping_h_per_day, 'h/day'),
    known(
      'lastWait',
      longest(f.peaks, ({ lastWait_min }) => lastWait_min),
      'min',
    ),
    known(
      'lastWaitWorn',
      longest(f.peaks, ({ lastWaitWorn_min }) => lastWaitWorn_min),
      'min',
    ),
    workingInput('waitLimit', given.settings.waitLimit_min, 'min'),
  ]);
  return lines;
}

/** The longest wait; null where one has no end. */
function longest(peaks: readonly PeakFinding[], wait: (peak: PeakFinding) => number | null): number | null {
  const waits = peaks.map(wait);
  return waits.length === 0 || waits.includes(null) ? null : Math.max(...waits.map((one) => one!));
}

/** Of a clean set. */
function resistanceLine({ finding: f, figures, clean }: TreatmentWorked, line: Line): void {
  line(
    'treatment.resistance',
    clean.clean_per_m3,
    '1/m3',
    [
      workingInput('unit', f.serial ?? '', 'text'),
      known('ratedFlow', figures.ratedFlow_L_per_h, 'L/h'),
      known('ratedPressure', clean.ratedPressure_kPa, 'kPa'),
      known('membraneArea', figures.membraneArea_m2, 'm2'),
      known('permeability', figures.permeability_L_per_m2_h_bar, 'L/m2/h/bar'),
    ],
    darcy,
  );
}

/** What drives the water, and the flows. */
function flowLines(worked: TreatmentWorked, line: Line): void {
  resistanceLine(worked, line);
  const { finding: f, given, figures, flows } = worked;
  const water = workingInput('waterTemperature', given.settings.waterTemperature_C, 'C');
  if (flows === null) return;
  const pressure = known('pressure', f.pressure_kPa, 'kPa');
  line('treatment.pressure', f.pressure_kPa, 'kPa', [
    workingInput('drive', f.drive!, 'text'),
    known('gravityHead', given.gravityHead_m, 'm'),
    known('highestPressure', figures.highestPressure_kPa, 'kPa'),
    water,
  ]);
  line(
    'treatment.flowClean',
    f.flowClean_L_per_h,
    'L/h',
    [known('pressure', flows.clean.pressure_kPa, 'kPa'), water],
    darcy,
  );
  line(
    'treatment.flowNow',
    f.flowNow_L_per_h,
    'L/h',
    [known('resistanceNow', f.resistanceNow_ratio, 'ratio'), pressure, water],
    darcy,
  );
  line(
    'treatment.flowWorn',
    f.flowWorn_L_per_h,
    'L/h',
    [
      known('lowestFlow', figures.lowestFlow_L_per_h, 'L/h'),
      known('pressure', flows.worn?.pressure_kPa ?? null, 'kPa'),
      water,
    ],
    darcy,
  );
  if (f.pumpPower_W !== null) pumpLine(f, flows, line);
  line('treatment.unitHead', f.unitHead_m, 'm', [known('taps', given.site.taps_count, 'count'), water], darcy);
}

function pumpLine(f: TreatmentFinding, flows: FlowsOfUnit, line: Line): void {
  line(
    'treatment.pump',
    f.pumpPower_W,
    'W',
    [
      known('pumpAddsPressure', flows.now.pumped_kPa, 'kPa'),
      workingInput('efficiency', pumpEfficiency_fraction, 'fraction'),
      workingInput('personPower', personPower_W, 'W'),
      workingInput('cautiousPower', cautiousPersonPower_W, 'W'),
      workingInput('mostStrokes', strokes_per_min, '1/min'),
      known('strokes', f.strokes_per_min, '1/min'),
      known('handForce', f.handForce_N, 'N'),
    ],
    'hydraulic-power, p Q ÷ η',
  );
}

/** What is asked of it in a day, and the hours that takes. */
function dayLines({ finding: f, given, figures, units_count }: TreatmentWorked, line: Line): void {
  const asked = known('asked', f.asked_L_per_day, 'L/day');
  line('treatment.asked', f.asked_L_per_day, 'L/day', [
    known('demandHighest', given.demandHighest_L_per_day, 'L/day'),
    workingInput('units', units_count, 'count'),
  ]);
  line('treatment.backwash', f.treated_L_per_day, 'L/day', [
    asked,
    known('backwashShare', figures.backwash_fraction, 'fraction'),
  ]);
  const backwash = known('backwash', f.backwash_min_per_day, 'min/day');
  const treated = known('treated', f.treated_L_per_day, 'L/day');
  line('treatment.hoursNeeded', f.hoursNeeded_h, 'h', [treated, known('flowNow', f.flowNow_L_per_h, 'L/h'), backwash]);
  line('treatment.hoursNeededWorn', f.hoursNeededWorn_h, 'h', [
    treated,
    workingInput('treatmentMargin', given.settings.treatmentMargin_fraction, 'fraction'),
    known('flowWorn', f.flowWorn_L_per_h, 'L/h'),
    backwash,
  ]);
}

/** The two peaks. */
function peakLinesOf({ finding: f, given: { site, settings } }: TreatmentWorked, line: Line): void {
  for (const of of f.peaks) {
    const peak = workingInput('peak', of.peak, 'text');
    line('treatment.peakAsked', of.asked_L, 'L', [
      peak,
      known('asked', f.asked_L_per_day, 'L/day'),
      workingInput('peakShare', settings.peakShare_fraction, 'fraction'),
    ]);
    line('treatment.peakPossible', of.possible_L, 'L', [
      peak,
      known('flowNow', f.flowNow_L_per_h, 'L/h'),
      ...tapInputs(site.taps_count, settings),
    ]);
    const line_L = [peak, known('asked', of.asked_L, 'L'), known('possible', of.possible_L, 'L')];
    line('treatment.lastWait', of.lastWait_min, 'min', line_L);
    line('treatment.lastWaitWorn', of.lastWaitWorn_min, 'min', [
      ...line_L,
      known('flowWorn', f.flowWorn_L_per_h, 'L/h'),
      workingInput('treatmentMargin', settings.treatmentMargin_fraction, 'fraction'),
    ]);
  }
  if (f.peaks.length > 0)
    line(
      'treatment.meanWait',
      f.meanWait_min,
      'min',
      [
        known('asked', f.peaks[0]!.asked_L, 'L'),
        workingInput('vessel', vessel_L, 'L'),
        ...tapInputs(site.taps_count, settings),
      ],
      'erlang-1917, waiting formula',
    );
}

function tapInputs(taps_count: number | null, settings: DesignSettings): readonly WorkingInput[] {
  return [known('taps', taps_count, 'count'), workingInput('tapFlow', settings.tapFlow_L_per_min, 'L/min')];
}

/** The last test with air. */
function testLines(
  { finding: { pressureTest: test, flowNow_L_per_h, waterTemperature_C }, air, figures }: TreatmentWorked,
  line: Line,
): void {
  if (test === null) return;
  const pressure = workingInput('testPressure', test.pressure_kPa, 'kPa');
  line(
    'treatment.smallestSeen',
    test.smallestSeen_um,
    'um',
    [pressure, workingInput('waterTemperature', waterTemperature_C, 'C')],
    'young-laplace, 4 σ ÷ p',
  );
  line(
    'treatment.supports',
    test.supports_log10,
    'log10',
    [
      known('testFall', air.test?.fall_kPa_per_min ?? null, 'kPa/min'),
      known('airVolume', air.test?.airVolume_L ?? null, 'L'),
      known('flowNow', flowNow_L_per_h === null ? null : flowNow_L_per_h / min_per_h, 'L/min'),
      known('airToWater', air.airToWater_ratio, 'ratio'),
      workingInput('atmosphere', atmosphere_kPa, 'kPa'),
      known('claimed', figures.reductions.protozoa_log10, 'log10'),
      known('fallLimit', test.fallLimit_kPa_per_min, 'kPa/min'),
    ],
    'epa-815-r-06-009, log removal value of the direct integrity test',
  );
}
