import { describe, expect, it } from 'vitest';
import { defaultSettings, type JudgedRain } from '../../kernel/index.ts';
import { goodYearsAt } from './curve.ts';
import { drawYears } from './drawYears.ts';
import { sizeCurve, sizePoints } from './sizeCurve.ts';
import { daysMet_fraction, sizeDoubt, tankToHold_L } from './sizeDoubt.ts';

/** Thirty years of 40 days: rain for 25 of them falls on the first day, less in some years, then nothing. */
function dryEnds(shortYears: number) {
  return madeOf((i) => ({ 0: i < shortYears ? 300 : 420, 20: 30 }));
}

/** Thirty years of 40 days: plenty of rain on the first day and once more, in some years sooner, in others later. */
function unevenGaps() {
  return madeOf((i) => ({ 0: 900, [20 + ((7 * i) % 19)]: 900 }));
}

function madeOf(rainOf: (year: number) => Readonly<Record<number, number>>) {
  const years = Array.from({ length: 30 }, (_, i) => ({
    label: 2001 + i,
    from: 40 * i,
    to: 40 * i + 40,
    missing_days: 0,
    judged: true,
  }));
  const inflow_L = new Float64Array(1200);
  for (const [i, year] of years.entries()) {
    for (const [day, litres] of Object.entries(rainOf(i))) inflow_L[year.from + Number(day)] = litres;
  }
  const balance = { inflow_L, judged_L: new Float64Array(1200).fill(10), other_L: new Float64Array(1200) };
  const record = { gaugeId: 'G', firstDay: 0, rain_mm: inflow_L, state: new Uint8Array(1200) };
  const rain: JudgedRain = {
    record,
    startMonth: 1,
    years,
    judgedYears: 30,
    filledDays: 0,
    neighbourDays: 0,
    madeDays: 0,
    meanAnnualRain_mm: 0,
    longestRainlessRun_days: 0,
    cutDays: 0,
  };
  const given = { balance, rain, settings: defaultSettings, drawn: drawYears(30, 200, 1) };
  return { given, curve: sizeCurve(balance, rain, defaultSettings.target, 100) };
}

const holds = (made: ReturnType<typeof dryEnds>, volume: number) =>
  sizeDoubt(made.curve, made.given, volume, goodYearsAt(made.curve.needs_L, volume)).meetsTarget;

const chosenAt = (made: ReturnType<typeof dryEnds>, tankVolume_L: number) => ({
  tankVolume_L,
  doubt: sizeDoubt(made.curve, made.given, tankVolume_L, goodYearsAt(made.curve.needs_L, tankVolume_L)),
});

describe('tankToHold_L', () => {
  it('comes to the same, to its two hundredths, from whichever tank is known to be too small', () => {
    const made = unevenGaps();
    const found = tankToHold_L(made.curve, made.given, chosenAt(made, 100))!;
    const least = made.curve.tankForTarget_L!;
    expect(found).toBeGreaterThan(least);
    let tried = 0;
    for (const share of [0, 0.1, 0.3, 0.5, 0.7]) {
      const tooSmall = least + share * (found - least);
      if (holds(made, tooSmall)) continue;
      tried++;
      const again = tankToHold_L(made.curve, made.given, chosenAt(made, tooSmall))!;
      expect(holds(made, again)).toBe(true);
      expect(Math.abs(again / found - 1)).toBeLessThan(0.021);
    }
    expect(tried).toBeGreaterThan(1);
  });

  it('gives a tank that holds, and one a thirtieth smaller does not', () => {
    const made = dryEnds(0);
    const found = tankToHold_L(made.curve, made.given, chosenAt(made, 100))!;
    expect(found).toBeGreaterThanOrEqual(made.curve.tankForTarget_L!);
    expect(holds(made, found)).toBe(true);
    expect(holds(made, found * 0.97)).toBe(false);
  });

  it('gives none where too many years fall short in any tank', () => {
    const made = dryEnds(20);
    expect(tankToHold_L(made.curve, made.given, chosenAt(made, 100))).toBeNull();
  });

  it('gives none on a short record', () => {
    const made = dryEnds(0);
    const settings = { ...defaultSettings, leastYears: 31 };
    expect(tankToHold_L(made.curve, { ...made.given, settings }, chosenAt(made, 100))).toBeNull();
  });
});

describe('sizeDoubt', () => {
  it('holds its own point, though years that are not judged drain the tank and are not drawn', () => {
    const made = dryEnds(0);
    // Every second year brings nothing and is not judged; the years after it begin with an empty tank.
    const years = made.given.rain.years.map((year, i) => ({ ...year, judged: i % 2 === 0 }));
    const inflow_L = made.given.balance.inflow_L.slice();
    for (const year of years) if (!year.judged) inflow_L.fill(0, year.from, year.to);
    const rain = { ...made.given.rain, years, judgedYears: 15 };
    const balance = { ...made.given.balance, inflow_L };
    const curve = sizeCurve(balance, rain, defaultSettings.target, 1000);
    const given = { ...made.given, balance, rain, drawn: drawYears(15, 200, 1) };
    const point = sizePoints(curve, [{ partId: null, tankVolume_L: 1000 }])[0]!.dryDays_per_year;
    const { dryDays_per_year } = sizeDoubt(curve, given, 1000, goodYearsAt(curve.needs_L, 1000));
    expect(point).toBeGreaterThan(0);
    expect(dryDays_per_year.low).toBeLessThanOrEqual(point);
    expect(dryDays_per_year.high).toBeGreaterThanOrEqual(point);
  });

  it('never tells a share under 0, where drawn years have more days than the judged ones', () => {
    expect(daysMet_fraction({ judgedYears: 4, askedDays: 1461 }, 366)).toBe(0);
    expect(daysMet_fraction({ judgedYears: 4, askedDays: 1461 }, 0)).toBe(1);
  });
});
