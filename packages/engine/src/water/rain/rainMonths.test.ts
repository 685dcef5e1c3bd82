import { describe, expect, it } from 'vitest';
import { dayIndexOf, measured, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { madeRain } from './madeRain.ts';
import type { MonthNormal } from './normals.ts';
import { monthsFromNormals, monthsFromRecord } from './rainMonths.ts';
import { wetShare } from './wetChain.ts';
import { amountMoments } from './wetDayAmounts.ts';

const usual: readonly MonthNormal[] = Array.from({ length: 12 }, (_, i) => ({
  rain_mm: 20 + 25 * i,
  wetDays: 3 + i * 1.5,
}));
const days = [31, 28.2425, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const changed = (at: number, normal: MonthNormal) => usual.map((one, i) => (i === at ? normal : one));

describe('monthsFromNormals', () => {
  it('has the normals as its means', () => {
    for (const [i, { chain, amounts }] of monthsFromNormals(usual)!.entries()) {
      const wetDays = wetShare(chain) * days[i]!;
      expect(wetDays).toBeCloseTo(usual[i]!.wetDays!, 10);
      expect(wetDays * amountMoments(amounts).mean_mm).toBeCloseTo(usual[i]!.rain_mm!, 9);
    }
  });

  it('takes a month that never has rain, and light rain too', () => {
    const dry = monthsFromNormals(changed(6, { rain_mm: 0, wetDays: 0 }))!;
    expect(wetShare(dry[6]!.chain)).toBe(0);
    const light = monthsFromNormals(changed(6, { rain_mm: 6, wetDays: 4 }))!;
    expect(amountMoments(light[6]!.amounts).mean_mm).toBeCloseTo(1.5, 12);
  });

  it('gives nothing where rain or wet days are not known, or cannot go together', () => {
    expect(monthsFromNormals(changed(3, { rain_mm: null, wetDays: 4 }))).toBeNull();
    expect(monthsFromNormals(changed(3, { rain_mm: 90, wetDays: null }))).toBeNull();
    expect(monthsFromNormals(changed(3, { rain_mm: 90, wetDays: 0 }))).toBeNull();
    expect(monthsFromNormals(changed(3, { rain_mm: 4, wetDays: 5 }))).toBeNull();
    expect(monthsFromNormals(changed(3, { rain_mm: 90, wetDays: 31 }))).toBeNull();
    expect(monthsFromNormals(usual.slice(1))).toBeNull();
  });
});

describe('monthsFromRecord', () => {
  const firstDay = dayIndexOf(1990, 1, 1);
  const made = madeRain(monthsFromNormals(usual)!, { name: 'G', seed: 4, firstYear: 1990, years: 200 });
  const record: RainRecord = { gaugeId: 'G', ...made, state: new Uint8Array(made.rain_mm.length) };

  it('finds again the chances and means that rain was made from', () => {
    const given = monthsFromNormals(usual)!;
    for (const [i, { chain, amounts }] of monthsFromRecord(record)!.entries()) {
      const wanted = given[i]!;
      // Four standard errors of a share among the days it is counted on.
      const wetDays = 200 * usual[i]!.wetDays!;
      const dryDays = 200 * days[i]! - wetDays;
      const near = (p: number, count: number) => 4 * Math.sqrt((p * (1 - p)) / count);
      const { wetAfterDry_fraction: p01, wetAfterWet_fraction: p11 } = wanted.chain;
      expect(Math.abs(chain.wetAfterDry_fraction - p01)).toBeLessThan(near(p01, dryDays));
      expect(Math.abs(chain.wetAfterWet_fraction - p11)).toBeLessThan(near(p11, wetDays));
      const { mean_mm, sd_mm } = amountMoments(wanted.amounts);
      expect(Math.abs(amountMoments(amounts).mean_mm - mean_mm)).toBeLessThan((4 * sd_mm) / Math.sqrt(wetDays));
    }
  });

  it('counts no day that was not measured, nor one after such a day', () => {
    const rain_mm = Float64Array.from({ length: 365 * 6 }, (_, at) => (at % 4 === 0 ? 9 + (at % 3) : 0));
    const state = new Uint8Array(rain_mm.length).fill(measured);
    const found = monthsFromRecord({ gaugeId: 'G', firstDay, rain_mm, state })!;
    for (const { chain } of found) {
      expect(chain.wetAfterWet_fraction).toBe(0);
      expect(chain.wetAfterDry_fraction).toBeCloseTo(1 / 3, 1);
    }
    // Every second dry day unknown: the wet days' own day before is then never measured.
    for (let at = 3; at < state.length; at += 4) {
      state[at] = unknownDay;
      rain_mm[at] = 500;
    }
    expect(monthsFromRecord({ gaugeId: 'G', firstDay, rain_mm, state })).toBeNull();
    const longer = { rain_mm: Float64Array.of(...rain_mm, ...rain_mm), state: Uint8Array.of(...state, ...state) };
    for (const { chain } of monthsFromRecord({ gaugeId: 'G', firstDay, ...longer })!) {
      expect(chain.wetAfterDry_fraction).toBeLessThan(0.02);
    }
  });
});
