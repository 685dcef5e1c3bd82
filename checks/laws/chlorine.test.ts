import { defaultSettings, noSafety, type SiteFacts, unmeasuredSite } from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  giardiaTable_mg_min_per_L,
  giardiaTable_mg_per_L,
  giardiaTable_pH,
  tableTemperatures_C,
  virusTable_log,
} from '../../packages/engine/src/water/chlorine/ctTables.ts';
import {
  boilingPoint_C,
  chlorineFinding,
  contactCt_mg_min_per_L,
  cryptosporidiumInactivation_log,
  doseOfStock_mg_per_L,
  giardiaCt,
  giardiaCtOlder,
  giardiaCtSmith,
  giardiaInactivation,
  productMadeUp_g,
  stayFor_min,
  stockAdded_g_per_L,
  stockForDose_mL,
  stockMadeUp_g_per_L,
  virusCt,
  virusInactivation,
} from '../../packages/engine/src/water/chlorine/index.ts';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 20_000 : 1000, seed: 20261126 };
const temperature_C = fc.double({ min: 0, max: 40, noNaN: true });
const pH = fc.double({ min: 5, max: 9, noNaN: true });
const chlorine_mg_per_L = fc.double({ min: 0.01, max: 6, noNaN: true });
const ct = fc.double({ min: 0, max: 2000, noNaN: true });

/** Every cell of the table: temperature, chlorine, acidity, figure. */
const cells = tableTemperatures_C.flatMap((t, i) =>
  giardiaTable_mg_per_L.flatMap((c, j) =>
    giardiaTable_pH.map((p, k) => [t, c, p, giardiaTable_mg_min_per_L[i]![j]![k]!] as const),
  ),
);

describe('the table for Giardia', () => {
  it('has 588 cells, and each is read as it stands', () => {
    expect(cells.length).toBe(588);
    for (const [t, c, p, figure] of cells)
      expect(giardiaCt(t, p, c)).toEqual({ ct_mg_min_per_L: figure, outside: null });
  });

  it('never falls with acidity or chlorine, nor rises with warmth', () => {
    for (const [t, c, p, figure] of cells) {
      const least = (found: readonly (readonly [number, number, number, number])[]) =>
        found.every((one) => one[3] >= figure);
      expect(least(cells.filter(([u, d, q]) => u <= t && d >= c && q >= p))).toBe(true);
    }
  });

  it('halves, cell by cell, from 15 to 25 °C, but for the rounding and for what two transcriptions part in', () => {
    for (const [, c, p, figure] of cells.filter(([t]) => t === 25)) {
      const cold = cells.find(([t, d, q]) => t === 15 && d === c && q === p)![3];
      expect(figure - cold / 2).toBeGreaterThan(-0.6);
      expect(figure - cold / 2).toBeLessThan(1.6);
    }
  });

  it('is never passed under by Smith’s regression, in all cells; by the older one it is, down to −11.2 %', () => {
    const over = cells.map(([t, c, p, figure]) => giardiaCtSmith(t, p, c).ct_mg_min_per_L! / figure - 1);
    expect(Math.min(...over)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...over)).toBeCloseTo(0.174, 3);
    const older = cells.map(([t, c, p, figure]) => giardiaCtOlder(t, p, c).ct_mg_min_per_L! / figure - 1);
    expect(Math.min(...older)).toBeCloseTo(-0.112, 3);
    expect(Math.max(...older)).toBeCloseTo(0.081, 3);
  });

  it('is met by both regressions as they were worked out elsewhere (derived)', () => {
    const cases = [
      [10, 7, 1, 115.78, 112.54],
      [20, 7.5, 1, 70.39, 67.72],
      [25, 7, 1, 41.49, 39.77],
      [10, 6, 0.4, 77.52, 64.8],
    ] as const;
    for (const [t, p, c, smith, older] of cases) {
      expect(Math.abs(giardiaCtSmith(t, p, c).ct_mg_min_per_L! - smith)).toBeLessThan(0.01);
      expect(Math.abs(giardiaCtOlder(t, p, c).ct_mg_min_per_L! - older)).toBeLessThan(0.01);
    }
  });
});

describe('reading on the safe side', () => {
  it('asks for no less in colder, more alkaline or more chlorinated water, or for more logs', () => {
    fc.assert(
      fc.property(temperature_C, temperature_C, pH, pH, chlorine_mg_per_L, chlorine_mg_per_L, (a, b, p, q, c, d) => {
        const easy = giardiaCt(Math.max(a, b), Math.min(p, q), Math.min(c, d), 2).ct_mg_min_per_L!;
        const hard = giardiaCt(Math.min(a, b), Math.max(p, q), Math.max(c, d), 3).ct_mg_min_per_L!;
        return hard >= easy;
      }),
      settings,
    );
    fc.assert(
      fc.property(temperature_C, temperature_C, fc.double({ min: 6, max: 10, noNaN: true }), (a, b, p) => {
        const ctOf = (t: number, logs: number) => virusCt(t, p, logs).ct_mg_min_per_L!;
        return (
          ctOf(Math.min(a, b), 4) >= ctOf(Math.max(a, b), 4) && ctOf(a, 4) >= ctOf(a, 3) && ctOf(a, 3) >= ctOf(a, 1.5)
        );
      }),
      settings,
    );
  });

  it('reads nothing beyond the table, and says what is outside', () => {
    const anything = fc.oneof(fc.double(), fc.constantFrom(Number.NaN, Infinity, -Infinity, -1, 0, 4.99, 9.01, 40.1));
    fc.assert(
      fc.property(anything, anything, anything, anything, (t, p, c, logs) => {
        const told = [
          giardiaCt(t, p, c, logs),
          giardiaCtSmith(t, p, c, logs),
          giardiaCtOlder(t, p, c, logs),
          virusCt(t, p, logs),
        ];
        return told.every(({ ct_mg_min_per_L: figure, outside }) =>
          figure === null ? outside !== null : outside === null && Number.isFinite(figure) && figure > 0,
        );
      }),
      settings,
    );
    expect(giardiaCt(-1, 7, 1).outside).toBe('temperature');
    expect(giardiaCt(20, 9.1, 1).outside).toBe('acidity');
    expect(giardiaCt(20, 4.9, 1).outside).toBe('acidity');
    expect(giardiaCt(20, 7, 0).outside).toBe('chlorine');
    expect(giardiaCt(20, 7, 1, 3.5).outside).toBe('logs');
    expect(virusCt(20, 10.1).outside).toBe('acidity');
  });
});

describe('inactivation', () => {
  it('never falls with chlorine times minutes, and never passes what the table is for', () => {
    fc.assert(
      fc.property(ct, ct, temperature_C, pH, chlorine_mg_per_L, (a, b, t, p, c) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map(
          (one) => giardiaInactivation(one, t, p, c).reached_log!,
        );
        return less! >= 0 && less! <= more! && more! <= 3;
      }),
      settings,
    );
  });

  it('is three logs at the table’s figure, half at half, and four of viruses', () => {
    const whole = giardiaCt(20, 7, 1).ct_mg_min_per_L!;
    expect(giardiaInactivation(whole, 20, 7, 1)).toEqual({ reached_log: 3, outside: null, isMost: true });
    expect(giardiaInactivation(whole / 2, 20, 7, 1).reached_log).toBe(1.5);
    expect(giardiaInactivation(10, 20, 9.5, 1)).toEqual({ reached_log: null, outside: 'acidity', isMost: false });
    expect(virusInactivation(3, 20, 7)).toEqual({ reached_log: 4, outside: null, isMost: true });
  });

  it('of viruses never passes what the table’s figures for two and three logs give', () => {
    for (const t of tableTemperatures_C)
      for (const p of [7, 10])
        for (const logs of virusTable_log)
          expect(virusInactivation(virusCt(t, p, logs).ct_mg_min_per_L!, t, p).reached_log).toBeLessThanOrEqual(
            // At 25 °C one figure stands for two logs and for three.
            virusCt(t, p, 3).ct_mg_min_per_L === virusCt(t, p, logs).ct_mg_min_per_L ? Math.max(3, logs) : logs,
          );
  });

  it('after half an hour of 0.5 mg/L at 25 °C is 1.25 logs of Giardia at pH 7, 0.88 at pH 8, and next to nothing of Cryptosporidium (derived)', () => {
    const got = contactCt_mg_min_per_L(0.5, 30, 1);
    expect(giardiaInactivation(got, 25, 7, 0.5).reached_log).toBeCloseTo(1.25, 2);
    expect(giardiaInactivation(got, 25, 8, 0.5).reached_log).toBeCloseTo(0.88, 2);
    expect(virusInactivation(got, 25, 8).isMost).toBe(true);
    expect(cryptosporidiumInactivation_log(got)).toBeLessThan(0.01);
    expect(cryptosporidiumInactivation_log(15_300)).toBe(3);
  });
});

describe('stock', () => {
  it('and dose turn each other round; stay and chlorine times minutes too', () => {
    const positive = fc.double({ min: 0.01, max: 1000, noNaN: true });
    fc.assert(
      fc.property(positive, positive, positive, (dose, water, stock) => {
        const back = doseOfStock_mg_per_L(stockForDose_mL(dose, water, stock), water, stock);
        const stay = contactCt_mg_min_per_L(dose, stayFor_min(water, dose, 0.3), 0.3);
        return Math.abs(back / dose - 1) < 1e-12 && Math.abs(stay / water - 1) < 1e-12;
      }),
      settings,
    );
  });

  it('added to water is never stronger than made up to as much, and what is made up has the strength asked for', () => {
    const share = fc.double({ min: 0.01, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(share, fc.double({ min: 1, max: 900, noNaN: true }), (active, product_mL) => {
        const [added, madeUp] = [stockAdded_g_per_L(product_mL, active, 1), stockMadeUp_g_per_L(product_mL, active, 1)];
        return added < madeUp && Math.abs(productMadeUp_g(madeUp, 1, active) / product_mL - 1) < 1e-12;
      }),
      settings,
    );
  });

  it('of the usual products (derived)', () => {
    const grams = [0.7, 0.3, 0.05, 0.15].map((active) => productMadeUp_g(10, 1, active));
    expect(grams.map((one) => Math.round(one * 10) / 10)).toEqual([14.3, 33.3, 200, 66.7]);
    expect(
      [
        [2.5, 1000],
        [1, 20],
        [5, 10_000],
      ].map(([dose, water]) => stockForDose_mL(dose!, water!)),
    ).toEqual([250, 2, 5000]);
  });
});

/** Saturation temperature of the industrial formulation of 1997, equation 31, from memory; its own check values stand below. */
function saturation_C(pressure_MPa: number): number {
  const n = [
    1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333, 14.91510861353,
    -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798,
  ];
  const b = pressure_MPa ** 0.25;
  const e = b * b + n[2]! * b + n[5]!;
  const f = n[0]! * b * b + n[3]! * b + n[6]!;
  const g = n[1]! * b * b + n[4]! * b + n[7]!;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const kelvin = (n[9]! + d - Math.sqrt((n[9]! + d) ** 2 - 4 * (n[8]! + n[9]! * d))) / 2;
  return kelvin - 273.15;
}

describe('boiling', () => {
  it('falls with height and is as the industrial formulation has it, to 0.1 °C', () => {
    for (const [pressure_MPa, kelvin] of [
      [0.1, 372.755919],
      [1, 453.035632],
      [10, 584.149488],
    ] as const)
      expect(saturation_C(pressure_MPa) + 273.15).toBeCloseTo(kelvin, 5);
    for (let height_m = -500; height_m <= 6000; height_m += 250) {
      const pressure_MPa = 0.101325 * (1 - (0.0065 * height_m) / 288.15) ** 5.25588;
      expect(Math.abs(boilingPoint_C(height_m)! - saturation_C(pressure_MPa))).toBeLessThan(0.1);
      expect(boilingPoint_C(height_m + 250)!).toBeLessThan(boilingPoint_C(height_m)!);
    }
  });

  it('is at 100, 93.4, 86.7 and 83.3 °C at 0, 2,000, 4,000 and 5,000 m (derived)', () => {
    const wanted = [100, 93.4, 86.7, 83.3];
    for (const [index, height_m] of [0, 2000, 4000, 5000].entries())
      expect(Math.abs(boilingPoint_C(height_m)! - wanted[index]!)).toBeLessThan(0.1);
    expect(boilingPoint_C(9001)).toBeNull();
    expect(boilingPoint_C(Number.NaN)).toBeNull();
  });
});

describe('what a site says of its chlorine', () => {
  it('is told without a figure that is none, whatever stands in its facts', () => {
    const figure = fc.constantFrom(
      null,
      0,
      -0,
      0.5,
      7,
      25,
      60,
      -1,
      1e-300,
      1e12,
      1e300,
      Number.NaN,
      Infinity,
      -Infinity,
    );
    const product = fc.constantFrom(null, 'bleach', 'calciumHypochlorite', 'chlorinatedLime', 'tablets', 'other');
    const names = [
      ...['active_fraction', 'stock_g_per_L', 'dose_mg_per_L', 'residual_mg_per_L', 'contact_min', 'baffling_fraction'],
      ...['pH', 'waterTemperature_C', 'batch_L'],
    ];
    const figures = fc.tuple(...names.map(() => figure));
    fc.assert(
      fc.property(product, figures, (own, values) => {
        const chlorination = { product: own, ...Object.fromEntries(names.map((name, i) => [name, values[i]!])) };
        const site = { ...unmeasuredSite, siteId: 'S1', safety: { ...noSafety, chlorination } } as unknown as SiteFacts;
        const { finding, problems, working } = chlorineFinding(site, defaultSettings);
        return [finding, problems, working].every(isSound);
      }),
      settings,
    );
  });
});

/** Every number in it is one, however deep it lies. */
function isSound(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'object' || value === null || Object.values(value).every(isSound);
}
