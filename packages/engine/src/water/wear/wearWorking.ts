import {
  type DesignSettings,
  explain,
  isoDay,
  meanYear_days,
  type Range,
  type TreatmentUnitFacts,
  type WearFinding,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import type { CartridgeRating } from './cartridgeRating.ts';
import type { SiteTurbidity } from './siteFouling.ts';

interface WorkingGiven {
  readonly unit: TreatmentUnitFacts;
  readonly settings: DesignSettings;
  readonly rating: CartridgeRating;
  readonly turbidity: SiteTurbidity;
  readonly units: number;
}

/**
 * Writes down how each figure of a set was reached. It computes nothing: every value is taken from the finding and from what it was made of.
 *
 * @param f - the finding
 * @param given - the unit, the settings, the rating and the turbidity it was made from
 * @returns working lines in the order of the steps
 * @definition ours
 */
// long: one line after another, nothing else
export function wearWorking(f: WearFinding, given: WorkingGiven): readonly WorkingLine[] {
  const { unit, settings, rating, turbidity, units } = given;
  const lines: WorkingLine[] = [];
  const line = (
    code: WorkingCode,
    value: number | string | Range | null,
    unitOf: string,
    inputs: readonly WorkingInput[],
  ) => explain(lines, { code, value, unit: unitOf, inputs, source: 'definition' });
  const known = (name: string, value: number | null, unitOf: string) => workingInput(name, value ?? 'unknown', unitOf);
  const day = (name: string, value: number | null) =>
    value === null ? workingInput(name, 'unknown', 'text') : workingInput(name, isoDay(value), 'date');
  const serial = workingInput('treatmentUnit', unit.serial, 'text');
  line('wear.litres', f.litres_L === null ? null : { low: f.litres_L.p10, high: f.litres_L.p90 }, 'L', [
    serial,
    workingInput('unitsAtSite', units, 'count'),
    known('ratedLitres', rating.ratedLitres_L, 'L'),
    known('passedSoFar', f.passedSoFar_L, 'L'),
  ]);
  line('wear.turbidity', turbidity.roof_NTU_range, 'NTU', [
    known('roofTurbidity', settings.roofTurbidity_NTU, 'NTU'),
    known('roofTurbidityHigh', settings.roofTurbidityHigh_NTU, 'NTU'),
    workingInput('settledTurbidity', settings.settledTurbidity_fraction, 'fraction'),
    known('sourceTurbidity', turbidity.source_NTU_range?.high ?? null, 'NTU'),
    known('ratedTurbidity', rating.ratedTurbidity_NTU, 'NTU'),
  ]);
  line('wear.fouling', { low: f.fouling_ratio.p10, high: f.fouling_ratio.p90 }, 'ratio', [
    known('cleanFlow', rating.flow?.cleanFlow_L_per_h ?? null, 'L/h'),
    known('lowestFlow', rating.flow?.lowestFlow_L_per_h ?? null, 'L/h'),
    workingInput('foulingSpread', settings.foulingSpread_fraction, 'fraction'),
    workingInput('flowReadings', f.readings_count, 'count'),
    workingInput('readingError', settings.flowReadingError_fraction, 'fraction'),
  ]);
  const { litres, flow, age, failure } = f.endsBy_fraction;
  line('wear.ends', mostOf(f), 'text', [
    workingInput('endsByLitres', litres, 'fraction'),
    workingInput('endsByFlow', flow, 'fraction'),
    workingInput('endsByAge', age, 'fraction'),
    workingInput('endsByFailure', failure, 'fraction'),
    known('lifeLimit', rating.ageLimit_days === Infinity ? null : rating.ageLimit_days / meanYear_days, 'year'),
    known('failuresPerYear', settings.cartridgeFailures_per_year, '1/year'),
  ]);
  line('wear.endsOn', f.endsOn === null ? null : isoDay(f.endsOn.p50), 'date', [
    day('setSince', f.setSince),
    day('early', f.endsOn?.p10 ?? null),
    day('late', f.endsOn?.p90 ?? null),
    workingInput('futures', f.futures_count, 'count'),
  ]);
  return lines;
}

/** The end that comes first in most futures; `none` where none does. */
function mostOf({ endsBy_fraction: by }: WearFinding): string {
  const ends = (Object.keys(by) as (keyof typeof by)[]).toSorted((a, b) => by[b] - by[a]);
  return by[ends[0]!] > 0 ? ends[0]! : 'none';
}
