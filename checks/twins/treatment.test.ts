import {
  type AirTest,
  airToWaterSmooth_ratio,
  airToWaterStirred_ratio,
  erlangMeanWait_min,
  erlangWaiting_fraction,
  keptUpFlow,
  peakLines,
  seededDice,
  tapsFlow_L_per_min,
  unitFlow_L_per_min,
  unitPressure_kPa,
  unitResistance_per_m3,
} from '@eavewell/engine';
import { describe, expect, it } from 'vitest';

const kPa_per_psi = 6.894757;
const seed = 20261126;

/** Numbers from 0 to under 1. */
function fractions(start: number): () => number {
  const dice = seededDice(start);
  return () => dice.next(2 ** 30) / 2 ** 30;
}

/** The manual's forms in its own units, from memory: psi, °F. What they were worked out to elsewhere stands beside. */
function printedSmooth(test_psi: number, back_psi: number, across_psi: number, temperature_F: number): number {
  const driving = ((test_psi - back_psi) * (test_psi + 14.7 + back_psi + 14.7)) / 2 / (back_psi + 14.7);
  const thickness = 175 - 2.71 * temperature_F + 0.0137 * temperature_F ** 2;
  return (527 * driving * thickness) / (across_psi * (460 + temperature_F));
}

function printedStirred(test_psi: number, back_psi: number, across_psi: number, temperature_F: number): number {
  return 170 * Math.sqrt(((test_psi - back_psi) * (test_psi + 14.7)) / ((460 + temperature_F) * across_psi));
}

function asPrinted(test_psi: number, back_psi: number, across_psi: number, temperature_F: number): AirTest {
  return {
    test_kPa: test_psi * kPa_per_psi,
    back_kPa: back_psi * kPa_per_psi,
    across_kPa: across_psi * kPa_per_psi,
    temperature_C: (temperature_F - 32) / 1.8,
    atmosphere_kPa: 14.7 * kPa_per_psi,
  };
}

// Derived: two ways to the same ratio, one from memory and one from physics. Neither is a printed figure.
describe('air to water in a test, by physics and by the printed forms', () => {
  it('is what the forms were worked out to elsewhere', () => {
    expect(printedSmooth(15, 0, 10, 68)).toBeCloseTo(122.25, 1);
    expect(printedStirred(15, 0, 10, 68)).toBeCloseTo(49.38, 2);
  });

  it('agrees within 2.4 % for narrow defects and 1.6 % for wide ones at 68 °F', () => {
    for (const [test_psi, across_psi] of [
      [15, 10],
      [10, 5],
      [20, 30],
    ] as const) {
      const smooth = airToWaterSmooth_ratio(asPrinted(test_psi, 0, across_psi, 68));
      expect(Math.abs(smooth / printedSmooth(test_psi, 0, across_psi, 68) - 1)).toBeLessThan(0.024);
      const stirred = airToWaterStirred_ratio(asPrinted(test_psi, 0, across_psi, 68), 1);
      expect(Math.abs(stirred / printedStirred(test_psi, 0, across_psi, 68) - 1)).toBeLessThan(0.016);
    }
  });

  it('counts air at the atmosphere’s pressure, so that water behind parts the two by just that ratio', () => {
    const apart = (back_psi: number) =>
      airToWaterSmooth_ratio(asPrinted(15, back_psi, 10, 68)) / printedSmooth(15, back_psi, 10, 68);
    expect(apart(5) / apart(0)).toBeCloseTo((14.7 + 5) / 14.7, 9);
  });

  it('parts from the printed form in warm water, where that flatters a unit by an eighth: 0.6527 and 0.0191 mPa·s at 104 °F', () => {
    const warm = airToWaterSmooth_ratio(asPrinted(15, 0, 10, 104)) / printedSmooth(15, 0, 10, 104);
    // 175 − 2.71 T + 0.0137 T² over 460 + T, times 527, stands for the ratio of the two viscosities.
    expect(warm).toBeCloseTo(0.6527 / 0.0191 / ((527 * 41.34) / 564), 2);
  });
});

/** Clogging at constant pressure, d²t/dV² = k (dt/dV)ⁿ: litres and flow after a time, closed form. From memory. */
const closed = {
  complete: { n: 2, at: (q: number, k: number, t: number) => [(q / k) * -Math.expm1(-k * t), q * Math.exp(-k * t)] },
  standard: {
    n: 1.5,
    at: (q: number, k: number, t: number) => {
      const slowed = 1 + (k * Math.sqrt(q) * t) / 2;
      return [(q * t) / slowed, q / slowed ** 2];
    },
  },
  intermediate: { n: 1, at: (q: number, k: number, t: number) => [Math.log1p(k * q * t) / k, q / (1 + k * q * t)] },
  cake: {
    n: 0,
    at: (q: number, k: number, t: number) => {
      const root = Math.sqrt(1 + 2 * k * q * q * t);
      return [(root - 1) / (k * q), q / root];
    },
  },
} as const;

/** The same by small steps of Runge and Kutta: dQ/dt = −k Q^(3−n), dV/dt = Q. */
function stepped(n: number, q0: number, k: number, t: number): readonly [number, number] {
  const steps = 2000;
  const h = t / steps;
  const slope = (q: number) => -k * q ** (3 - n);
  let [volume, flow] = [0, q0];
  for (let step = 0; step < steps; step++) {
    const a = slope(flow);
    const b = slope(flow + (h * a) / 2);
    const c = slope(flow + (h * b) / 2);
    const d = slope(flow + h * c);
    volume += h * flow + (h * h * (a + b + c)) / 6;
    flow += (h * (a + 2 * b + 2 * c + d)) / 6;
  }
  return [volume, flow];
}

// Derived: the four laws of hermia-1982, from memory, against integration and what was worked out elsewhere.
describe('four laws of clogging', () => {
  it.each([
    ['complete', 126.4241, 0.735759],
    ['standard', 117.1573, 0.686292],
    ['intermediate', 109.8612, 0.666667],
    ['cake', 100, 0.666667],
  ] as const)('%s: closed form, small steps and the figures agree', (law, litres, flow) => {
    const [volume, left] = closed[law].at(2, 0.01, 100);
    const [slowVolume, slowFlow] = stepped(closed[law].n, 2, 0.01, 100);
    expect(Math.abs(volume! / litres - 1)).toBeLessThan(1e-5);
    expect(Math.abs(left! / flow - 1)).toBeLessThan(1e-5);
    expect(Math.abs(slowVolume / volume! - 1)).toBeLessThan(1e-9);
    expect(Math.abs(slowFlow / left! - 1)).toBeLessThan(1e-9);
  });

  it('the cake’s law is that of a unit whose resistance rises with the litres', () => {
    const [pressure_kPa, k] = [100, 0.01];
    const clean = unitResistance_per_m3(2, pressure_kPa, 20);
    // Litre by litre in small parts: time = litres ÷ flow at the resistance in the middle of the part.
    const part_L = 0.001;
    let time_min = 0;
    for (let litres_L = part_L / 2; litres_L < 100; litres_L += part_L)
      time_min += part_L / unitFlow_L_per_min(clean, pressure_kPa, 20, 1 + k * 2 * litres_L);
    expect(Math.abs(time_min / 100 - 1)).toBeLessThan(1e-4);
  });
});

/** Share that waits, from the whole list of chances that so many are there, in logarithms; no recurrence. */
function waitingByChances(load: number, taps: number): number {
  const logs: number[] = [0];
  for (let people = 1; people < 20_000; people++)
    logs.push(logs[people - 1]! + Math.log(load / Math.min(people, taps)));
  const most = Math.max(...logs);
  const chances = logs.map((one) => Math.exp(one - most));
  const all = chances.reduce((sum, one) => sum + one, 0);
  return chances.slice(taps).reduce((sum, one) => sum + one, 0) / all;
}

describe('people who come at random', () => {
  it('wait as often as the chances of every number of people say', () => {
    for (const [load, taps] of [
      [0.3, 1],
      [0.95, 1],
      [1.7, 2],
      [2.9, 3],
      [10, 14],
      [48, 55],
      [123, 132],
    ] as const)
      expect(Math.abs(erlangWaiting_fraction(load, taps) / waitingByChances(load, taps) - 1)).toBeLessThan(1e-9);
  });

  it('wait as long as 200,000 of them do who are followed one by one', () => {
    const dice = fractions(seed);
    const some = (mean: number) => -mean * Math.log(1 - dice());
    const [comers_per_min, filling_min, taps] = [0.5, 3, 2];
    const free = Array.from({ length: taps }, () => 0);
    let [now, waited] = [0, 0];
    const people = 200_000;
    for (let person = 0; person < people; person++) {
      now += some(1 / comers_per_min);
      const tap = free.indexOf(Math.min(...free));
      const begins = Math.max(now, free[tap]!);
      waited += begins - now;
      free[tap] = begins + some(filling_min);
    }
    const mean = erlangMeanWait_min(comers_per_min, filling_min, taps);
    expect(Math.abs(waited / people / mean - 1)).toBeLessThan(0.05);
  });
});

describe('a line at the taps', () => {
  it('is that of straight lines between the ends of the peaks, whatever the flow', () => {
    const day = { litres_L_per_day: 1500, morning_fraction: 0.4, evening_fraction: 0.35, between_h: 8 };
    for (let given = 0.5; given < 14; given += 0.37) {
      const rates = [
        [60, 10],
        [480, (1500 * 0.25) / 480],
        [60, (1500 * 0.35) / 60],
      ] as const;
      const ends: number[] = [];
      let line = 0;
      for (const [minutes, asked] of rates) {
        line = Math.max(0, line + minutes * (asked - given));
        ends.push(line);
      }
      const { morning, evening } = peakLines(day, given);
      expect(morning.lastWait_min).toBeCloseTo(ends[0]! / given, 6);
      expect(evening.lastWait_min).toBeCloseTo(Math.max(ends[1]!, ends[2]!) / given, 6);
    }
  });

  it('is that of vessels followed one by one, to within a vessel', () => {
    // One vessel of 20 L comes every 2 minutes for an hour, to taps that share the unit's flow and fill one vessel each.
    for (const [taps, tap_L_per_min, unit_L_per_min] of [
      [1, 7.5, 6],
      [2, 7.5, 6],
      [3, 2, 100],
      [2, 3, 4],
    ] as const) {
      const given = tapsFlow_L_per_min(taps, tap_L_per_min, unit_L_per_min);
      const filling_min = 20 / (given / taps);
      const free = Array.from({ length: taps }, () => 0);
      let last_min = 0;
      for (let vessel = 0; vessel < 30; vessel++) {
        const comes = vessel * 2;
        const at = free.indexOf(Math.min(...free));
        const begins = Math.max(comes, free[at]!);
        free[at] = begins + filling_min;
        last_min = begins - comes;
      }
      const day = { litres_L_per_day: 600, morning_fraction: 1, evening_fraction: 0, between_h: 8 };
      const { lastWait_min } = peakLines(day, given).morning;
      expect(Math.abs(last_min - lastWait_min)).toBeLessThanOrEqual(filling_min + 2);
    }
  });
});

describe('a person at a pump', () => {
  it('keeps up the flow that halving finds', () => {
    const dice = fractions(seed + 1);
    for (let one = 0; one < 200; one++) {
      const clean_per_m3 = 10 ** (11 + 2 * dice());
      const unit = {
        clean_per_m3,
        worn_ratio: 1 + 9 * dice(),
        temperature_C: 40 * dice(),
        beside_kPa: 300 * dice() - 100,
      };
      const [power_W, efficiency] = [5 + 60 * dice(), 0.2 + 0.7 * dice()];
      const wanted = (flow: number) => {
        const p = unitPressure_kPa(clean_per_m3, flow, unit.temperature_C, unit.worn_ratio) + unit.beside_kPa;
        return (Math.max(0, p) * flow) / 60 / efficiency;
      };
      let [low, high] = [0, 1e6];
      for (let halved = 0; halved < 200; halved++) {
        const middle = (low + high) / 2;
        if (wanted(middle) <= power_W) low = middle;
        else high = middle;
      }
      const pump = { power_W, efficiency_fraction: efficiency, mostPressure_kPa: null, mostStrokes_L_per_min: null };
      expect(Math.abs(keptUpFlow(unit, pump).flow_L_per_min / low - 1)).toBeLessThan(1e-9);
    }
  });
});
