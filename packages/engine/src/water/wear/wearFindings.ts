import {
  type DayIndex,
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  isoDay,
  type Judged,
  meanYear_days,
  type Problem,
  type Spread,
  seedFor,
  type TreatmentUnitFacts,
  type WearFinding,
  type WorkingLine,
} from '../../kernel/index.ts';
import { type CartridgeRating, growthOfLoad } from './cartridgeRating.ts';
import { disagrees_count, lookAhead_years, pastFutures_count } from './constants.ts';
import { foulingSpread } from './foulingSpread.ts';
import { ratingOf } from './ratingOf.ts';
import { type PassedLitres, type ReadingsOf, readingsOf } from './readingsOf.ts';
import { type SetsOf, setsOf, type WearSite } from './setsOf.ts';
import { type SiteFouling, type SiteReading, type SiteTurbidity, siteFouling, turbidityAt_NTU } from './siteFouling.ts';
import { type DaysAhead, type PassedSoFar, type WearRange, wearFutures, wearRange } from './wearFutures.ts';
import { wearWorking } from './wearWorking.ts';

/** What wear is worked out from. */
export interface WearGiven {
  readonly site: WearSite;
  readonly settings: DesignSettings;
  /** The day it is asked on; null where that is not known: then the day the set was new. */
  readonly today: DayIndex | null;
  /** Across the membranes; null where not known: the rated one. */
  readonly pressure_kPa: number | null;
  /**
   * One future from a day on, with the people as they grow: the same number from the same day is the same future, however many days are asked for. Null where the site's water is not known.
   */
  readonly futureOf: ((future: number, from: DayIndex, days: number) => DaysAhead) | null;
}

/**
 * When are the cartridges of a site due? Each unit in use has an equal part of the site's water. From the day its set was new, or its meter was last read, it is led through many futures; readings of its
 * flow, also of its earlier sets, tell how fast it fouls here.
 *
 * @param given - the site's facts, the settings, the day, the pressure [kPa] and the water that may come [L/day]
 * @returns a finding for each unit in use: P10, P50 and P90 of its last day [day] and of the litres [L], why it ends [fraction], fouling [ratio]; null where the site has none
 * @problem wear.water_unknown - the site's water is not known: no date
 * @problem wear.set_day_unknown - it is not known when the set was new: no date, the litres alone
 * @problem wear.rating_unknown - rated litres are not known: no date
 * @problem wear.rated_turbidity_unknown - the turbidity they are rated at is not known: no date, the latest one is told
 * @problem wear.flow_not_rated - clean and lowest flow are not known: the end by its flow is not looked for
 * @problem wear.temperature - the water is set to a temperature no tank has: no date
 * @problem wear.turbidity_unknown - the turbidity of roof water is not known: no date
 * @problem wear.source_turbidity_unknown - water of a second source passes, of a turbidity not known: no date
 * @problem wear.too_turbid - water is muddier than the unit may be given
 * @problem wear.life_unknown - no limit of age is known
 * @problem wear.failures_unknown - sets that fail by themselves are not reckoned with
 * @problem wear.meter_backwards - a meter fell while a set was in: the balance is taken for that reading
 * @problem wear.reading_before_set - a reading is older than any set that is known
 * @problem wear.readings_not_used - flow was read, but is not rated
 * @problem wear.readings_disagree - readings are further from what is believed after them than their errors explain
 * @problem wear.beyond_sight - some futures last longer than is looked ahead
 * @problem wear.overdue - half the futures ended before today
 * @definition ours: docs/methods/wear.md
 */
export function wearFindings(given: WearGiven): Judged<readonly WearFinding[]> {
  const units = given.site.treatment.units.filter(({ removedOn }) => removedOn === null);
  if (units.length === 0) return { finding: null, problems: [], working: [] };
  const { futureOf, site } = given;
  const unknownWater =
    futureOf === null ? [engineProblem('wear.water_unknown', { file: 'sites.csv', siteId: site.siteId })] : [];
  const problems: Problem[] = [...unknownWater];
  const working: WorkingLine[] = [];
  const finding = units.map((unit) => {
    const found = unitWear(given, unit, units.length);
    problems.push(...found.problems);
    working.push(...found.working);
    return found.finding;
  });
  return { finding, problems: eachOnce(problems), working };
}

/** Problems of the site or its settings are told once, however many units there are. */
function eachOnce(problems: readonly Problem[]): readonly Problem[] {
  const told = new Set<string>();
  return problems.filter((problem) => {
    const key = JSON.stringify(problem);
    return told.has(key) ? false : told.add(key) !== undefined;
  });
}

const noEnds = { litres: 0, flow: 0, age: 0, failure: 0 } as const;

/** What one unit found. */
interface UnitWear {
  readonly finding: WearFinding;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

function unitWear(given: WearGiven, unit: TreatmentUnitFacts, units: number): UnitWear {
  const { site, settings, futureOf } = given;
  const known = ratingOf(site, unit, settings);
  const sets = setsOf(site, unit);
  const problems = [...known.problems];
  if (sets.setSince === null) {
    const place = { file: 'cartridges.csv', siteId: site.siteId };
    problems.push(engineProblem('wear.set_day_unknown', place, { unit: unit.serial }));
  }
  const { rating } = known;
  if (futureOf === null || rating === null || known.problems.some(({ code }) => code === 'wear.temperature')) {
    const unknownBy = futureOf === null ? 'wear.water_unknown' : known.unknownBy;
    return { finding: { ...bareFinding(given, unit, sets.setSince), unknownBy }, problems, working: [] };
  }
  const ofUnit = (future: number, from: DayIndex, days: number) => shareOf(futureOf(future, from, days), units);
  return runUnit(given, unit, { ...known, rating, sets, ofUnit, units, problems });
}

/** A finding that says nothing yet, with what is believed before any reading. */
function bareFinding({ settings }: WearGiven, unit: TreatmentUnitFacts, setSince: DayIndex | null): WearFinding {
  const before = siteFouling(
    unrated,
    { roof_NTU_range: { low: 0, high: 0 }, source_NTU_range: null },
    [],
    settings.foulingSpread_fraction,
  );
  return {
    ...{ serial: unit.serial, partId: unit.partId, setSince, unknownBy: null, endsOn: null, litres_L: null },
    ...{ passedSoFar_L: null, endsBy_fraction: noEnds, fouling_ratio: foulingSpread(before) },
    readings_count: 0,
    futures_count: 0,
  };
}

/** What is known of a unit before its futures are run. */
interface UnitKnown {
  readonly rating: CartridgeRating;
  readonly turbidity: SiteTurbidity;
  readonly isSourceUnknown: boolean;
  readonly unknownBy: EngineProblemCode | null;
  readonly sets: SetsOf;
  readonly ofUnit: UnitFuture;
  readonly units: number;
  readonly problems: Problem[];
}

/** Readings, fouling, futures, dates. */
function runUnit(given: WearGiven, unit: TreatmentUnitFacts, known: UnitKnown): UnitWear {
  const { site, settings, today } = given;
  const { rating, turbidity, sets, ofUnit, units, problems } = known;
  const passedBetween = (from: DayIndex, to: DayIndex) => meanPassed(ofUnit, from, to);
  const pressure_kPa = given.pressure_kPa ?? rating.flow?.ratedPressure_kPa ?? 1;
  const flow = (unit.figures?.ratedPressure_kPa ?? null) === null ? null : rating.flow;
  const read = readingsOf({ site, settings, unit, flow, pressure_kPa, sets, passedBetween });
  problems.push(...read.problems);
  const fouling = siteFouling(rating, turbidity, read.readings, settings.foulingSpread_fraction);
  const begin = beginningOf(sets.setSince, read, today);
  const range = rangeOf(given, { rating, turbidity, fouling, begin, ofUnit, isSourceUnknown: known.isSourceUnknown });
  const isSourceUnknown = known.isSourceUnknown && range.hasSourceWater;
  if (isSourceUnknown) problems.push(sourceUnknown(site, unit));
  const dayUnknown = sets.setSince === null ? 'wear.set_day_unknown' : null;
  const unknownBy = known.unknownBy ?? (isSourceUnknown ? 'wear.source_turbidity_unknown' : dayUnknown);
  const ends = spreadOf(range, begin.day);
  const hasLitres = unknownBy === null || unknownBy === 'wear.set_day_unknown';
  const finding: WearFinding = {
    ...bareFinding(given, unit, sets.setSince),
    unknownBy,
    endsOn: unknownBy === null ? ends.endsOn : null,
    litres_L: hasLitres ? ends.litres_L : null,
    passedSoFar_L: sets.setSince === null ? null : passedTill(begin, today, passedBetween),
    endsBy_fraction: hasLitres ? range.endsBy_fraction : noEnds,
    fouling_ratio: foulingSpread(fouling),
    readings_count: read.readings.length,
    futures_count: settings.futures,
  };
  const told = unknownBy === null ? problems : problems.map((problem) => withLatest(problem, ends.endsOn.p90));
  const more = toldOf(given, unit, finding, { range, fouling, read, rating, turbidity });
  const working = wearWorking(finding, { unit, settings, rating, turbidity, units });
  return { finding, problems: [...told, ...more], working };
}

const unrated = { ratedLitres_L: 1, ratedTurbidity_NTU: null, flow: null, ageLimit_days: Infinity };

/** Where turbidity is not known on one side, litres count as they are: that is the latest end there can be, and it is told with what is missing. */
function withLatest(problem: Problem, latest: DayIndex): Problem {
  const isLate = problem.code === 'wear.rated_turbidity_unknown' || problem.code === 'wear.turbidity_unknown';
  return isLate ? { ...problem, facts: { ...problem.facts, latest: isoDay(latest) } } : problem;
}

/** An equal part of the site's water. */
function shareOf({ roof_L, secondSource_L }: DaysAhead, units: number): DaysAhead {
  if (units === 1) return { roof_L, secondSource_L };
  return {
    roof_L: roof_L.map((litres) => litres / units),
    secondSource_L: secondSource_L.map((litres) => litres / units),
  };
}

type UnitFuture = (future: number, from: DayIndex, days: number) => DaysAhead;

/** What passed between two days, in the mean of some futures. */
function meanPassed(ofUnit: UnitFuture, from: DayIndex, to: DayIndex): PassedLitres {
  if (to <= from) return { roof_L: 0, secondSource_L: 0 };
  let [roof_L, secondSource_L] = [0, 0];
  for (let future = 0; future < pastFutures_count; future++) {
    const days = ofUnit(future, from, to - from);
    roof_L += total(days.roof_L);
    secondSource_L += total(days.secondSource_L);
  }
  return { roof_L: roof_L / pastFutures_count, secondSource_L: secondSource_L / pastFutures_count };
}

const total = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0);

/** Where the futures of a set begin: the day its meter was last read, else the day it was new; where that is not known, a new set today. */
interface Beginning extends PassedSoFar {
  readonly day: DayIndex;
}

function beginningOf(setSince: DayIndex | null, { metered }: ReadingsOf, today: DayIndex | null): Beginning {
  if (setSince === null) return { day: today ?? 0, roof_L: 0, secondSource_L: 0, age_days: 0 };
  if (metered === null) return { day: setSince, roof_L: 0, secondSource_L: 0, age_days: 0 };
  return { ...metered, age_days: metered.day - setSince };
}

/** What passed till today; null where today is not known or the set is not in use yet. */
function passedTill(
  begin: Beginning,
  today: DayIndex | null,
  passedBetween: (from: DayIndex, to: DayIndex) => PassedLitres,
) {
  if (today === null || today < begin.day) return null;
  const since = passedBetween(begin.day, today);
  return begin.roof_L + begin.secondSource_L + since.roof_L + since.secondSource_L;
}

interface RangeGiven {
  readonly rating: CartridgeRating;
  readonly turbidity: SiteTurbidity;
  readonly fouling: SiteFouling;
  readonly begin: Beginning;
  readonly ofUnit: UnitFuture;
  readonly isSourceUnknown: boolean;
}

/** Many futures of one set. */
function rangeOf(
  { site, settings, today }: WearGiven,
  { rating, turbidity, fouling, begin, ofUnit, isSourceUnknown }: RangeGiven,
) {
  let hasSourceWater = begin.secondSource_L > 0;
  const days = Math.ceil(lookAhead_years * meanYear_days);
  const futures = wearFutures({
    ...{ rating, soFar: begin, turbidity, fouling },
    futureOf: (future, count) => {
      const ahead = ofUnit(future, begin.day, count);
      hasSourceWater ||= isSourceUnknown && ahead.secondSource_L.some((litres) => litres > 0);
      return ahead;
    },
    temperature_C: new Float64Array(days).fill(settings.waterTemperature_C),
    failures_count_per_year: settings.cartridgeFailures_per_year ?? 0,
    unbroken_days: today === null ? 0 : Math.max(0, today - begin.day),
    futures_count: settings.futures,
    seed: seedFor(settings.seed, `wear ${site.siteId} ${begin.day}`),
  });
  return { ...wearRange(futures), hasSourceWater, days };
}

/** The ends as days and litres; what lies beyond the days looked at stands at their last one. */
function spreadOf(range: WearRange & { readonly days: number }, first: DayIndex) {
  const on = (days: number | null) => first + Math.floor(days ?? range.days);
  const endsOn: Spread = { p10: on(range.early_days), p50: on(range.middle_days), p90: on(range.late_days) };
  const { few_L, middle_L, many_L } = range;
  const litres_L: Spread | null =
    few_L === null || middle_L === null || many_L === null ? null : { p10: few_L, p50: middle_L, p90: many_L };
  return { endsOn, litres_L };
}

function sourceUnknown({ siteId, secondSource }: WearSite, { serial }: TreatmentUnitFacts): Problem {
  const place = { file: 'secondSources.csv', siteId, column: 'turbidity_NTU' };
  return engineProblem('wear.source_turbidity_unknown', place, { unit: serial, source: secondSource?.name ?? '' });
}

interface Told {
  readonly range: WearRange & { readonly days: number };
  readonly fouling: SiteFouling;
  readonly read: ReadingsOf;
  readonly rating: CartridgeRating;
  readonly turbidity: SiteTurbidity;
}

/** What is worth telling of a finding: overdue, beyond what is looked at, readings that disagree. */
function toldOf(
  { site, today }: WearGiven,
  unit: TreatmentUnitFacts,
  finding: WearFinding,
  told: Told,
): readonly Problem[] {
  const place = { file: 'treatmentUnits.csv', siteId: site.siteId };
  const named = { unit: unit.serial };
  const problems: Problem[] = [];
  const { endsOn } = finding;
  if (endsOn !== null && today !== null && endsOn.p50 < today)
    problems.push(engineProblem('wear.overdue', place, { ...named, days: today - endsOn.p50 }));
  if (endsOn !== null && told.range.late_days === null)
    problems.push(engineProblem('wear.beyond_sight', place, { ...named, years: lookAhead_years }));
  const off = told.read.readings.filter((reading) => isFar(reading, told)).length;
  if (off > 0 || told.fouling.beliefs.some(({ atEdge }) => atEdge))
    problems.push(
      engineProblem(
        'wear.readings_disagree',
        { ...place, file: 'flowReadings.csv' },
        { ...named, count: Math.max(1, off) },
      ),
    );
  return problems;
}

/** Is a reading further from the middle of what is believed than its error explains? */
function isFar(
  { roof_L, secondSource_L, resistance_ratio, error_fraction }: SiteReading,
  { fouling, rating, turbidity }: Told,
): boolean {
  const growth = growthOfLoad(rating);
  if (growth === null) return false;
  const heaviest = fouling.stretch_fraction.indexOf(Math.max(...fouling.stretch_fraction));
  const up = (heaviest + 1 / 2) / fouling.stretch_fraction.length;
  const { roof_NTU_range, source_NTU_range } = turbidity;
  const source_NTU = source_NTU_range === null ? 0 : turbidityAt_NTU(source_NTU_range, up);
  const load = roof_L * turbidityAt_NTU(roof_NTU_range, up) + secondSource_L * source_NTU;
  const middle = foulingSpread({ stretch_fraction: Float64Array.of(1), beliefs: [fouling.beliefs[heaviest]!] }).p50;
  return Math.abs(Math.log(resistance_ratio / (1 + middle * growth * load))) > disagrees_count * error_fraction;
}
