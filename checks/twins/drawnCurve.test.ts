import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  bandSizes_L,
  type DayOrder,
  dayByDay,
  dayOrders,
  dryRuns,
  looksAtContent,
  rainOfSite,
  readyProgramme,
  rulesOf,
  siteInFull,
  siteSeries,
  siteSizes,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, expect, it } from 'vitest';

// What is drawn of a site against plain runs of its tank, day by day, and against its design.

const room = await mkdtemp(join(tmpdir(), 'eavewell-curve-'));
await writeProgramme(join(room, 'demo'), demoProgramme({ sites: 30 }));
const { facts } = await readProgramme(join(room, 'demo'));
afterAll(() => rm(room, { recursive: true }));

const countAbove = (ascending_L: Float64Array, volume_L: number) =>
  ascending_L.reduce((count, critical) => count + Number(critical > volume_L), 0);

/** The same to the last bit; the test's own comparison takes a minute for as many days. */
function isSame(one: unknown, other: unknown): boolean {
  if (one instanceof Float64Array && other instanceof Float64Array) return isSame(bytes(one), bytes(other));
  if (!(one instanceof Uint8Array) || !(other instanceof Uint8Array)) return String(one) === String(other);
  return Buffer.compare(one, other) === 0;
}

const bytes = ({ buffer, byteOffset, byteLength }: Float64Array) => new Uint8Array(buffer, byteOffset, byteLength);

function siteUnder(order: DayOrder, index: number) {
  const ready = readyProgramme({ ...facts, settings: { ...facts.settings, dayOrder: order } });
  const site = facts.sites[index]!;
  const gauge = rainOfSite(site, ready);
  return { site, gauge, ready };
}

const judged = dayOrders.flatMap((order) =>
  facts.sites.flatMap((_, index) => {
    const { site, gauge, ready } = siteUnder(order, index);
    // Every third site under the other orders: these take longer.
    if (order !== 'drawFirst' && index % 3 !== 0) return [];
    const { waters, design } = siteInFull(site, gauge, ready);
    const sizes = siteSizes(site, gauge, ready);
    const series = siteSeries(site, gauge, ready);
    return waters.map((water) => {
      const place = sizes.findIndex(({ tankIds }) => tankIds.join() === water.finding.tankIds.join());
      return {
        order,
        site,
        gauge: gauge!,
        ready,
        design,
        water,
        balance: sizes[place]!.water.balance,
        series: series[place]!,
      };
    });
  }),
);

it('has sites of every kind', () => {
  const exact = judged.filter(({ water }) => water.curve().isExact);
  expect(exact.length).toBeGreaterThan(25);
  expect(judged.some(({ water, order }) => order !== 'yas' && !water.curve().isExact)).toBe(true);
  expect(exact.some(({ order }) => order === 'ybs')).toBe(true);
  expect(exact.some(({ site }) => site.secondSource !== null)).toBe(true);
});

it('counts off the curve what plain runs count, at any size', () => {
  let compared = 0;
  for (const { order, water, balance, site, design } of judged) {
    const curve = water.curve();
    if (!curve.isExact) continue;
    const { tankVolume_L } = water.finding;
    const days = water.years.reduce((sum, { judged: is, from, to }) => sum + (is ? to - from : 0), 0);
    expect(curve.critical_L.length).toBe(days);
    expect(curve.needs_L.length).toBe(curve.judgedYears);
    for (const size_L of [0, 0.31, 0.77, 1.13, 2.9].map((times) => times * tankVolume_L + 0.5)) {
      const { dry } = dayByDay({ ...balance, covered: undefined }, size_L, rulesOf(order, null));
      const dryDays = water.years.reduce((sum, { judged: is, from, to }) => {
        return is ? sum + dry.subarray(from, to).reduce((count, one) => count + one, 0) : sum;
      }, 0);
      expect(countAbove(curve.critical_L, size_L), `${site.siteId} ${order} ${size_L}`).toBe(dryDays);
      const { longestByYear_days } = dryRuns(dry, water.years, 0);
      const good = water.years.filter(
        ({ judged: is }, year) => is && longestByYear_days[year]! <= design.target.longestDryRun_days,
      );
      expect(curve.judgedYears - countAbove(curve.needs_L, size_L)).toBe(good.length);
      compared++;
    }
  }
  expect(compared).toBeGreaterThan(150);
});

it('has the sizes of the design on its curve, and the target where they meet it', () => {
  for (const { water } of judged) {
    const curve = water.curve();
    expect(curve.sizes).toEqual(water.finding.sizes);
    if (!curve.isExact) {
      expect([curve.critical_L.length, curve.needs_L.length, water.bandAt(1000)]).toEqual([0, 0, null]);
      continue;
    }
    for (const { tankVolume_L, dryDays_per_year, goodYears, meetsTarget } of curve.sizes) {
      expect(countAbove(curve.critical_L, tankVolume_L * (1 + 1e-9)) / curve.judgedYears).toBe(dryDays_per_year);
      expect(curve.judgedYears - countAbove(curve.needs_L, tankVolume_L * (1 + 1e-9))).toBe(goodYears);
      expect(meetsTarget).toBe(goodYears >= curve.goodYearsNeeded && dryDays_per_year <= curve.daysAllowed_per_year);
    }
  }
});

it('holds the doubt of the design at the tank there is, and the points of every size', () => {
  for (const { water, site } of judged.filter(({ order }) => order === 'drawFirst').slice(0, 12)) {
    const curve = water.curve();
    if (!curve.isExact) continue;
    const { finding } = water;
    const sizes = bandSizes_L(finding);
    expect(sizes).toContain(finding.tankVolume_L);
    expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
    let before = Infinity;
    for (const size_L of sizes) {
      const { dryDays_per_year: dry, comingGood_years: good } = water.bandAt(size_L)!;
      const point = countAbove(curve.critical_L, size_L * (1 + 1e-9)) / curve.judgedYears;
      expect(dry.low).toBeLessThanOrEqual(point);
      expect(dry.high).toBeGreaterThanOrEqual(point);
      expect(good.low).toBeLessThanOrEqual(curve.judgedYears - countAbove(curve.needs_L, size_L * (1 + 1e-9)));
      // A larger tank never makes the worse end worse.
      expect(dry.high).toBeLessThanOrEqual(before);
      before = dry.high;
    }
    if (site.secondSource !== null) continue;
    expect(water.bandAt(finding.tankVolume_L)).toEqual({
      tankVolume_L: finding.tankVolume_L,
      dryDays_per_year: finding.dryDays_per_year_range,
      comingGood_years: finding.comingGood_years_range,
    });
  }
});

it('draws the days that are judged', () => {
  for (const { water, series, balance, order, ready } of judged) {
    const drawn: Readonly<Record<string, unknown>> = { ...water.series() };
    for (const [name, values] of Object.entries(series)) expect(isSame(drawn[name], values), name).toBe(true);
    const { tankVolume_L, ration } = water.finding;
    expect(looksAtContent(rulesOf(order, ration))).toBe(!water.curve().isExact);
    const { dry } = dayByDay(balance, tankVolume_L, rulesOf(ready.settings.dayOrder, ration));
    expect(isSame(series.dry, dry)).toBe(true);
  }
});
