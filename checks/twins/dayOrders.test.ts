import {
  balanceUnder,
  type DayOrder,
  designSites,
  drawnRecords,
  drawPool,
  drawYears,
  type ProgrammeFacts,
  type Ration,
  readyProgramme,
  rerunRecords,
  rulesOf,
  type SiteFacts,
  type StorageFinding,
  seriesOf,
  type WaterYear,
} from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { madeProgramme } from './madeSites.ts';

/** What is asked and what comes in, day by day [L], as plain lists. */
interface Days {
  readonly inflow: readonly number[];
  readonly judged: number;
  readonly other: number;
}

/** What one long run comes to, day by day. */
interface Slow {
  readonly dry: boolean[];
  readonly rationed: number;
  readonly judgedShort: number;
  readonly otherShort: number;
}

/**
 * The rules written apart from the engine, straight from docs/methods/storage.md: S the tank, V what is in it, Y what is drawn.
 * Runs the list twice from an empty tank and gives the second time.
 */
function slowRun({ inflow, judged, other }: Days, S: number, order: DayOrder, ration: Ration | null): Slow {
  let V = 0;
  let found: Slow = { dry: [], rationed: 0, judgedShort: 0, otherShort: 0 };
  for (const _ of [1, 2]) {
    const dry: boolean[] = [];
    let [rationed, judgedShort, otherShort] = [0, 0, 0];
    for (const I of inflow) {
      let [D1, D2] = [judged, other];
      if (ration && V < ration.below_fraction * S) {
        rationed++;
        D1 *= ration.judged_fraction;
        D2 *= ration.other_fraction;
      }
      const there = order === 'ybs' ? V + I : V;
      const Y1 = Math.min(D1, there);
      const Y2 = Math.min(D2, there - Y1);
      const Y = Y1 + Y2;
      if (order === 'drawFirst') V = Math.min(S, V - Y + I);
      else if (order === 'ybs') V = Math.min(S, V + I - Y);
      else V = Math.min(S - Y, V + I - Y);
      if (V < 0) V = 0;
      dry.push(Y1 < judged * (1 - 1e-9));
      judgedShort += judged - Y1;
      if (Y2 < other * (1 - 1e-9)) otherShort++;
    }
    found = { dry, rationed, judgedShort, otherShort };
  }
  return found;
}

/** Judged years without a dry run over the limit, a run before the year counted in, the list a loop. */
function goodYears(dry: readonly boolean[], years: readonly WaterYear[], limit: number): number {
  return years.filter(({ judged, from, to }) => {
    if (!judged) return false;
    for (let day = from; day < to; day++) {
      let run = 0;
      while (run <= limit && dry[(day - run + dry.length) % dry.length]) run++;
      if (run > limit) return false;
    }
    return true;
  }).length;
}

const rations: readonly (Ration | null)[] = [
  null,
  { below_fraction: 0.4, judged_fraction: 1, other_fraction: 0 },
  { below_fraction: 0.25, judged_fraction: 0.6, other_fraction: 0.5 },
];

function found(facts: ProgrammeFacts & { readonly site: SiteFacts }, dayOrder: DayOrder, ration: Ration | null) {
  // The slow run knows no second source.
  const site = { ...facts.site, ration, secondSource: null };
  const ready = readyProgramme({ ...facts, settings: { ...facts.settings, dayOrder } });
  const design = [...designSites([site], ready)][0]!;
  const [series] = seriesOf(site, ready);
  return {
    finding: design.storages[0]!,
    series: series!,
    rain: ready.gauges.get('G')!.rain!,
    // A site may have a target of its own class.
    settings: { ...ready.settings, target: design.target },
  };
}

function daysOf(finding: StorageFinding, inflow: Float64Array): Days {
  return { inflow: [...inflow], judged: finding.judgedDemand_L_per_day, other: finding.otherDemand_L_per_day };
}

describe('every order of the day, rationed or not, against a slow run written apart', () => {
  for (const order of ['drawFirst', 'yas', 'ybs'] as const)
    for (const [index, ration] of rations.entries())
      it(`the same figures: ${order}, ration ${index}`, () => {
        let dryAtAll = 0;
        for (let seed = 1; seed <= 14; seed++) {
          const facts = madeProgramme(seed);
          const { finding, series, rain, settings } = found(facts, order, ration);
          const days = daysOf(finding, series.inflow_L);
          const S = finding.tankVolume_L;
          const slow = slowRun(days, S, order, ration);
          const label = `programme ${seed}`;
          expect(
            [...series.dry].map((dry) => dry === 1),
            label,
          ).toEqual(slow.dry);
          const judgedDry = rain.years.reduce(
            (sum, { judged, from, to }) => sum + (judged ? slow.dry.slice(from, to).filter(Boolean).length : 0),
            0,
          );
          dryAtAll += judgedDry;
          expect(finding.dryDays_per_year * finding.judgedYears, label).toBeCloseTo(judgedDry, 9);
          expect(finding.goodYears, label).toBe(goodYears(slow.dry, rain.years, settings.target.longestDryRun_days));
          expect(finding.shortfall_L_per_year * rain.years.length).toBeCloseTo(slow.judgedShort, 4);
          expect(finding.otherShortDays_per_year * rain.years.length).toBeCloseTo(slow.otherShort, 9);
          if (ration) {
            expect(finding.rationedDays_per_year! * rain.years.length).toBeCloseTo(slow.rationed, 9);
            const plain = slowRun(days, S, order, null).dry;
            expect(finding.unrationed!.goodYears).toBe(
              goodYears(plain, rain.years, settings.target.longestDryRun_days),
            );
          } else expect([finding.rationedDays_per_year, finding.unrationed]).toEqual([null, null]);
          for (const size of finding.sizes) {
            const { dry } = slowRun(days, size.tankVolume_L, order, ration);
            expect(size.goodYears, `${label}, ${size.tankVolume_L} L`).toBe(
              goodYears(dry, rain.years, settings.target.longestDryRun_days),
            );
          }
          const isExact = order !== 'yas' && ration === null;
          expect(finding.noExactSize).toBe(isExact ? null : ration ? 'ration' : 'order');
          if (!isExact) {
            expect([
              finding.tankForDays_L,
              finding.tankForRuns_L,
              finding.tankForTarget_L,
              finding.tankToHold_L,
            ]).toEqual([null, null, null, null]);
            const least = finding.sizes.find(({ meetsTarget }) => meetsTarget)?.tankVolume_L ?? null;
            expect(finding.catalogueForTarget_L).toBe(least);
          }
        }
        expect(dryAtAll).toBeGreaterThan(100);
      });

  it('the years drawn again, run day by day with look-ups, are the drawn years joined end to end', () => {
    let spread = 0;
    for (let seed = 1; seed <= 4; seed++)
      for (const order of ['yas', 'drawFirst', 'ybs'] as const)
        for (const ration of rations) {
          const facts = madeProgramme(seed);
          const { finding, series, rain } = found(facts, order, ration);
          const S = finding.tankVolume_L;
          const drawn = drawYears(rain.judgedYears, 12, seed);
          const pool = drawPool(rain);
          const limit = facts.settings.target.longestDryRun_days;
          const dryDays: number[] = [];
          const goodYears: number[] = [];
          for (let draw = 0; draw < drawn.draws; draw++) {
            const inflow: number[] = [];
            const ends: number[] = [];
            for (let i = 0; i < drawn.length; i++) {
              const { year, inflowFactor } = pool[drawn.positions[draw * drawn.length + i]!]!;
              inflow.push(...series.inflow_L.subarray(year.from, year.to).map((litres) => litres * inflowFactor));
              ends.push(inflow.length);
            }
            const { dry } = slowRun({ ...daysOf(finding, series.inflow_L), inflow }, S, order, ration);
            dryDays.push(dry.filter(Boolean).length / drawn.length);
            goodYears.push(slowGoodYears(dry, ends, limit) / drawn.length);
          }
          const balance = {
            inflow_L: series.inflow_L,
            judged_L: series.inflow_L.map(() => finding.judgedDemand_L_per_day),
            other_L: series.inflow_L.map(() => finding.otherDemand_L_per_day),
          };
          const records = rerunRecords(balance, pool, S, limit, drawn, rulesOf(order, ration));
          for (let draw = 0; draw < drawn.draws; draw++) {
            expect(records.dryDays_per_year[draw]).toBeCloseTo(dryDays[draw]!, 9);
            expect(records.goodYears_fraction[draw]).toBeCloseTo(goodYears[draw]!, 9);
          }
          if (new Set(dryDays).size > 1) spread++;
          if (order !== 'yas' && ration === null) {
            const net = balanceUnder(balance, rulesOf(order, null));
            expect(drawnRecords(net, pool, S, limit, drawn)).toEqual(records);
          }
        }
    expect(spread).toBeGreaterThan(10);
  });
});

/** Years without a dry day whose run, counted back over the seam of the loop, is over the limit. */
function slowGoodYears(dry: readonly boolean[], ends: readonly number[], limit: number): number {
  const days = dry.length;
  const runAt = (day: number) => {
    let run = 0;
    while (run < days && dry[(day - run + days) % days]) run++;
    return run;
  };
  return ends.filter((end, year) => {
    for (let day = year === 0 ? 0 : ends[year - 1]!; day < end; day++) if (runAt(day) > limit) return false;
    return true;
  }).length;
}
