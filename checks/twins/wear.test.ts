import {
  type CartridgeRating,
  evenDraws,
  type FuturesGiven,
  foulingAtShare_ratio,
  foulingBelief,
  seededDice,
  siteFouling,
  uniformDraw,
  waterViscosity_Pas,
  wearFutures,
} from '@eavewell/engine';
import { describe, expect, it } from 'vitest';

// Many futures, and what readings say, against slow plain ways that share nothing with them but the throws.

const flow = { cleanFlow_L_per_h: 800, lowestFlow_L_per_h: 350, ratedPressure_kPa: 70, workingPressure_kPa: 55 };
const rating: CartridgeRating = { ratedLitres_L: 1.2e6, ratedTurbidity_NTU: 4, flow, ageLimit_days: 1100.25 };
const days = 1500;

/** Water, temperature and turbidity of one made site. */
function madeSite(seed: number): FuturesGiven {
  const dice = seededDice(seed);
  const chance = () => uniformDraw(dice);
  const waters = Array.from({ length: 25 }, () => ({
    roof_L: Float64Array.from({ length: days }, () => (chance() < 0.2 ? 0 : 2500 * chance())),
    secondSource_L: Float64Array.from({ length: days }, (_, day) => (day % 365 > 250 ? 900 * chance() : 0)),
  }));
  const turbidity = {
    roof_NTU_range: { low: 0.5 + chance(), high: 4 + 8 * chance() },
    source_NTU_range: seed % 3 === 0 ? null : { low: 10, high: 10 + 30 * chance() },
  };
  const readings = Array.from({ length: seed % 4 }, (_, i) => ({
    ...{ roof_L: 2e5 * (i + 1), secondSource_L: turbidity.source_NTU_range === null ? 0 : 3e4 * (i + 1) },
    ...{ resistance_ratio: 1 + (i + 1) * 0.5 * chance(), error_fraction: 0.1 + 0.1 * chance() },
  }));
  return {
    rating: seed % 5 === 4 ? { ...rating, flow: null } : rating,
    soFar:
      seed % 2 === 0
        ? { roof_L: 0, secondSource_L: 0, age_days: 0 }
        : { roof_L: 1e5, secondSource_L: 2e4, age_days: 90 },
    futureOf: (future, count) => {
      const { roof_L, secondSource_L } = waters[future % waters.length]!;
      return { roof_L: roof_L.slice(0, count), secondSource_L: secondSource_L.slice(0, count) };
    },
    temperature_C: Float64Array.from({ length: days }, (_, day) => 18 + 8 * Math.sin(day / 58)),
    turbidity,
    fouling: siteFouling(rating, turbidity, readings, 0.5),
    failures_count_per_year: 0.1,
    unbroken_days: seed % 2 === 0 ? 0 : 40.5,
    futures_count: 50,
    seed,
  };
}

/** The first moment at which a set is over, found day by day and then by halving the day. Every moment is looked at from what has passed till then. */
function slowEnd(
  given: FuturesGiven,
  future: number,
  turbidities: [number, number],
  fouling: number,
  failure: number,
): number {
  const { rating: set, soFar, temperature_C } = given;
  const { roof_L, secondSource_L } = given.futureOf(future, days);
  const pass = (moment: number, of: Float64Array) => {
    let sum = 0;
    for (let day = 0; day < days && day < moment; day++) sum += of[day]! * Math.min(1, moment - day);
    return sum;
  };
  const isOver = (moment: number, day: number) => {
    if (moment >= failure || soFar.age_days + moment >= set.ageLimit_days) return true;
    const litres = [soFar.roof_L + pass(moment, roof_L), soFar.secondSource_L + pass(moment, secondSource_L)] as const;
    const worn = litres.reduce(
      (sum, of, which) => sum + of * Math.max(1, turbidities[which]! / set.ratedTurbidity_NTU!),
      0,
    );
    if (worn >= set.ratedLitres_L) return true;
    if (set.flow === null) return false;
    const load = litres[0] * turbidities[0] + litres[1] * turbidities[1];
    const full = set.ratedLitres_L * set.ratedTurbidity_NTU!;
    const resistance = 1 + fouling * (set.flow.cleanFlow_L_per_h / set.flow.lowestFlow_L_per_h - 1) * (load / full);
    const viscosity = waterViscosity_Pas(temperature_C[day]!) / waterViscosity_Pas(20);
    const passes =
      (set.flow.cleanFlow_L_per_h * set.flow.workingPressure_kPa) / set.flow.ratedPressure_kPa / viscosity / resistance;
    return passes < set.flow.lowestFlow_L_per_h;
  };
  for (let day = 0; day < days; day++) {
    if (!isOver(day + 1, day) && !isOver(day, day)) continue;
    let [low, high] = [day, day + 1];
    if (isOver(day, day)) return day;
    for (let i = 0; i < 50; i++) {
      const middle = (low + high) / 2;
      if (isOver(middle, day)) high = middle;
      else low = middle;
    }
    return high;
  }
  return Infinity;
}

describe('many futures end as they do a day after the other, looked at by halving', () => {
  it.each(Array.from({ length: process.env['EAVEWELL_SOAK'] ? 40 : 6 }, (_, i) => i + 1))('made site %d', (seed) => {
    const given = madeSite(seed);
    const fast = wearFutures(given);
    const [upRange, byFouling, toFailure] = evenDraws(given.futures_count, 3, seed);
    const kinds = new Set<string>();
    for (let future = 0; future < given.futures_count; future++) {
      // The stretch of the turbidity by plain adding up, and how far up in it.
      const { stretch_fraction, beliefs } = given.fouling;
      let stretch = 0;
      let below = 0;
      while (stretch + 1 < stretch_fraction.length && below + stretch_fraction[stretch]! <= upRange![future]!) {
        below += stretch_fraction[stretch]!;
        stretch++;
      }
      const up = (stretch + (upRange![future]! - below) / stretch_fraction[stretch]!) / stretch_fraction.length;
      const at = (range: { low: number; high: number } | null) =>
        range === null ? 0 : Math.exp(Math.log(range.low) + up * (Math.log(range.high) - Math.log(range.low)));
      const turbidities: [number, number] = [at(given.turbidity.roof_NTU_range), at(given.turbidity.source_NTU_range)];
      const fouling = foulingAtShare_ratio(beliefs[stretch]!, byFouling![future]!);
      const failure = given.unbroken_days - (Math.log(toFailure![future]!) / 0.1) * 365.2425;
      const slow = slowEnd(given, future, turbidities, fouling, failure);
      expect(Math.abs(fast.end_days[future]! - slow)).toBeLessThan(1e-6);
      kinds.add(String(fast.ends[future]));
    }
    expect(kinds.size).toBeGreaterThan(1);
  });
});

describe('what readings say of the fouling', () => {
  // Shares of belief by Simpson's rule over the product of densities, in the fouling itself and not in its logarithm.
  it.each([
    [[]],
    [[{ load_L_NTU: 2e6, resistance_ratio: 1.5, error_fraction: 0.15 }]],
    [
      [
        { load_L_NTU: 1e6, resistance_ratio: 1.1, error_fraction: 0.1 },
        { load_L_NTU: 3e6, resistance_ratio: 1.9, error_fraction: 0.2 },
        { load_L_NTU: 4e6, resistance_ratio: 1.6, error_fraction: 0.1 },
      ],
    ],
  ])('is what integrating the densities gives (%#)', (readings) => {
    const [growth, spread] = [3e-7, 0.5];
    const density = (k: number) => {
      if (k === 0) return 0;
      let value = Math.exp(-(Math.log(k) ** 2) / (2 * spread ** 2)) / k;
      for (const { load_L_NTU, resistance_ratio, error_fraction } of readings)
        value *= Math.exp(
          -((Math.log(resistance_ratio) - Math.log(1 + k * growth * load_L_NTU)) ** 2) / (2 * error_fraction ** 2),
        );
      return value;
    };
    const integral = (from: number, to: number) => {
      const steps = 4000;
      const h = (to - from) / steps;
      let sum = density(from) + density(to);
      for (let i = 1; i < steps; i++) sum += density(from + i * h) * (i % 2 === 1 ? 4 : 2);
      return (sum * h) / 3;
    };
    const whole = integral(0, 14);
    const belief = foulingBelief(growth, readings, spread);
    for (const share of [0.1, 0.5, 0.9])
      expect(integral(0, foulingAtShare_ratio(belief, share)) / whole).toBeCloseTo(share, 3);
  });
});
