import {
  cleanFlow_L_per_h,
  cleanUnit,
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  isWaterTemperature,
  meanYear_days,
  type Problem,
  type TreatmentUnitFacts,
  type UnitFigures,
} from '../../kernel/index.ts';
import type { CartridgeRating, FlowRating } from './cartridgeRating.ts';
import { largestFigure_count, smallestFigure_count } from './constants.ts';
import type { WearSite } from './setsOf.ts';
import type { SiteTurbidity } from './siteFouling.ts';

/** What a unit's set is rated for, and the water it gets. */
export interface SetRating {
  /** Null where rated litres are not known. */
  readonly rating: CartridgeRating | null;
  readonly turbidity: SiteTurbidity;
  /** The turbidity of the second source is not known. */
  readonly isSourceUnknown: boolean;
  /** Why no date can be given; null where nothing is in the way. */
  readonly unknownBy: EngineProblemCode | null;
  readonly problems: readonly Problem[];
}

/** What is known of a unit's rating and of the turbidity at its site, with what is missing. */
export function ratingOf(site: WearSite, unit: TreatmentUnitFacts, settings: DesignSettings): SetRating {
  const { siteId, secondSource } = site;
  const problems: Problem[] = [];
  const partPlace = (column: string) => ({ file: 'parts.csv', siteId, column });
  const settingPlace = (column: string) => ({ file: 'settings.json', siteId, column });
  const named = { unit: unit.serial, part: unit.partId ?? '' };
  const ratedLitres_L = usable(unit.figures?.ratedLitres_L);
  const ratedTurbidity_NTU = usable(unit.figures?.ratedTurbidity_NTU);
  const life_years = usable(unit.figures?.lifeLimit_years);
  const flow = unit.figures === null ? null : flowOf(unit.figures);
  if (ratedLitres_L === null) problems.push(engineProblem('wear.rating_unknown', partPlace('ratedLitres_L'), named));
  else if (ratedTurbidity_NTU === null)
    problems.push(engineProblem('wear.rated_turbidity_unknown', partPlace('ratedTurbidity_NTU'), named));
  if (!isWaterTemperature(settings.waterTemperature_C))
    problems.push(
      engineProblem('wear.temperature', settingPlace('waterTemperature_C'), { value: settings.waterTemperature_C }),
    );
  const turbidity = turbidityOf(settings, secondSource?.turbidity_NTU ?? null);
  if (turbidity === null) problems.push(engineProblem('wear.turbidity_unknown', settingPlace('roofTurbidity_NTU')));
  const unknownBy = (problems[0]?.code ?? null) as EngineProblemCode | null;
  if (ratedLitres_L !== null) {
    if (flow === null) problems.push(engineProblem('wear.flow_not_rated', partPlace('lowestFlow_L_per_h'), named));
    if (life_years === null) problems.push(engineProblem('wear.life_unknown', partPlace('lifeLimit_years'), named));
    if (settings.cartridgeFailures_per_year === null)
      problems.push(engineProblem('wear.failures_unknown', settingPlace('cartridgeFailures_per_year')));
  }
  problems.push(...tooTurbid(site, unit, turbidity));
  const ageLimit_days = life_years === null ? Infinity : life_years * meanYear_days;
  const isSourceUnknown = secondSource !== null && usable(secondSource.turbidity_NTU, 0) === null;
  return {
    rating: ratedLitres_L === null ? null : { ratedLitres_L, ratedTurbidity_NTU, flow, ageLimit_days },
    turbidity: turbidity ?? { roof_NTU_range: { low: 0, high: 0 }, source_NTU_range: null },
    isSourceUnknown,
    unknownBy,
    problems,
  };
}

/** A figure one can reckon with; null else. */
function usable(value: number | null | undefined, least = smallestFigure_count): number | null {
  return value !== null && value !== undefined && value >= least && value <= largestFigure_count ? value : null;
}

/**
 * The clean flow and the lowest. Both are rated at one pressure, so the flow is looked at there: less pressure at a site lowers both alike, and whether what is left is enough is judged elsewhere.
 */
function flowOf(figures: UnitFigures): FlowRating | null {
  const clean = cleanUnit(figures);
  const clean_L_per_h = cleanFlow_L_per_h(clean) ?? usable(figures.ratedFlow_L_per_h);
  const lowestFlow_L_per_h = usable(figures.lowestFlow_L_per_h);
  if (clean_L_per_h === null || lowestFlow_L_per_h === null || lowestFlow_L_per_h >= clean_L_per_h) return null;
  const pressure = clean.ratedPressure_kPa ?? 1;
  return {
    cleanFlow_L_per_h: clean_L_per_h,
    lowestFlow_L_per_h,
    ratedPressure_kPa: pressure,
    workingPressure_kPa: pressure,
  };
}

/** The turbidity of roof water before the unit, as many times lower as it may be higher than usual, and that of the second source; null where roof water's is not known. */
function turbidityOf(settings: DesignSettings, source_NTU: number | null): SiteTurbidity | null {
  const usual = usable(settings.roofTurbidity_NTU, 0);
  if (usual === null) return null;
  const high = Math.max(usual, usable(settings.roofTurbidityHigh_NTU, 0) ?? usual);
  const left = 1 - settings.settledTurbidity_fraction;
  const low = usual > 0 ? (usual / high) * usual : 0;
  const source = usable(source_NTU, 0);
  return {
    roof_NTU_range: { low: left * low, high: left * high },
    source_NTU_range: source === null ? null : { low: source, high: source },
  };
}

/** Water that is muddier than the unit may be given. */
function tooTurbid({ siteId, secondSource }: WearSite, unit: TreatmentUnitFacts, turbidity: SiteTurbidity | null) {
  const most_NTU = usable(unit.figures?.highestTurbidity_NTU);
  if (most_NTU === null) return [];
  const waters = [
    { water: 'roof', value_NTU: turbidity?.roof_NTU_range.high ?? 0 },
    { water: 'secondSource', value_NTU: turbidity?.source_NTU_range?.high ?? 0 },
  ];
  return waters.flatMap(({ water, value_NTU }) =>
    value_NTU <= most_NTU
      ? []
      : [
          engineProblem(
            'wear.too_turbid',
            { file: water === 'roof' ? 'settings.json' : 'secondSources.csv', siteId },
            { unit: unit.serial, water, value_NTU, most_NTU, source: secondSource?.name ?? '' },
          ),
        ],
  );
}
