import {
  type Balance,
  type DesignSettings,
  defaultSettings,
  drawYears,
  dryDaysAt,
  goodYearsAt,
  type JudgedRain,
  sizeCurve,
  sizeDoubt,
  sizePoints,
} from '@eavewell/engine';
import { type Climate, yearsOf } from './madeYears.ts';

/** A kind of tank in a climate whose truth is known from a very long record. */
export interface CoverageCase {
  readonly name: string;
  readonly climate: Climate;
  /** Each year's wetness leans so much on the last year's. */
  readonly correlation: number;
  /** Litres asked, as a share of what comes in. */
  readonly asked_fraction: number;
  /** `justMisses`: 2 % smaller than the smallest for the target. `rarelyBad`: good in 96 years of 100. `roomy`: in 998 of 1,000. */
  readonly tank: 'justMisses' | 'rarelyBad' | 'roomy';
}

/** What became of many records of one length, as shares of them. */
export interface Coverage {
  readonly years: number;
  /** The range of dry days holds the truth; the truth lies above it; the range of good years holds the truth. */
  readonly dryDays_fraction: number;
  readonly drierThanTold_fraction: number;
  readonly goodYears_fraction: number;
  readonly holds_fraction: number;
}

/** The truth about a case. */
interface Truth {
  readonly tankVolume_L: number;
  readonly demand_L: number;
  readonly dryDays_per_year: number;
  readonly goodYears_fraction: number;
}

const settings: DesignSettings = { ...defaultSettings, draws: 400 };

/** How often ranges hold the truth, for records of each length. */
export function coverageOf(
  given: CoverageCase,
  lengths: readonly number[],
  records: number,
  truthYears: number,
): { readonly truth: Truth; readonly found: readonly Coverage[] } {
  const truth = truthOf(given, truthYears);
  return { truth, found: lengths.map((years) => coverageAt(given, truth, years, records)) };
}

function truthOf({ climate, correlation, asked_fraction, tank }: CoverageCase, years: number): Truth {
  const rain_mm = climate(years, correlation, 7);
  const demand_L = (asked_fraction * rain_mm.reduce((sum, depth) => sum + depth, 0)) / rain_mm.length;
  const curve = sizeCurve(balanceOf(rain_mm, demand_L), judged(rain_mm, years), settings.target, 0);
  const needs = curve.needs_L.slice().sort();
  const tankVolume_L =
    tank === 'justMisses'
      ? curve.tankForTarget_L! * 0.98
      : needs[Math.floor((tank === 'roomy' ? 0.998 : 0.96) * years)]!;
  return {
    tankVolume_L,
    demand_L,
    dryDays_per_year: dryDaysAt(curve.critical_L, curve.years, [tankVolume_L])[0]! / years,
    goodYears_fraction: goodYearsAt(curve.needs_L, tankVolume_L) / years,
  };
}

function coverageAt({ climate, correlation }: CoverageCase, truth: Truth, years: number, records: number): Coverage {
  const drawn = drawYears(years, settings.draws, settings.seed);
  const counts = { dry: 0, drier: 0, good: 0, holds: 0 };
  for (let record = 0; record < records; record++) {
    const rain_mm = climate(years, correlation, 1000 + record);
    const balance = balanceOf(rain_mm, truth.demand_L);
    const rain = judged(rain_mm, years);
    const curve = sizeCurve(balance, rain, settings.target, truth.tankVolume_L);
    const [point] = sizePoints(curve, [{ partId: null, tankVolume_L: truth.tankVolume_L }]);
    const doubt = sizeDoubt(curve, { balance, rain, settings, drawn }, truth.tankVolume_L, point!.goodYears);
    const { dryDays_per_year: dry, goodYears_fraction: good } = doubt;
    if (truth.dryDays_per_year >= dry.low && truth.dryDays_per_year <= dry.high) counts.dry++;
    if (truth.dryDays_per_year > dry.high) counts.drier++;
    if (truth.goodYears_fraction >= good.low && truth.goodYears_fraction <= good.high) counts.good++;
    if (point!.meetsTarget && doubt.meetsTarget) counts.holds++;
  }
  return {
    years,
    dryDays_fraction: counts.dry / records,
    drierThanTold_fraction: counts.drier / records,
    goodYears_fraction: counts.good / records,
    holds_fraction: counts.holds / records,
  };
}

function balanceOf(rain_mm: Float64Array, demand_L: number): Balance {
  const { length } = rain_mm;
  return { inflow_L: rain_mm, judged_L: new Float64Array(length).fill(demand_L), other_L: new Float64Array(length) };
}

function judged(rain_mm: Float64Array, years: number): JudgedRain {
  return {
    record: { gaugeId: 'made', firstDay: 0, rain_mm, state: new Uint8Array(rain_mm.length) },
    startMonth: 1,
    years: yearsOf(years),
    judgedYears: years,
    filledDays: 0,
    neighbourDays: 0,
    madeDays: 0,
    meanAnnualRain_mm: 0,
    longestRainlessRun_days: 0,
    cutDays: 0,
  };
}
