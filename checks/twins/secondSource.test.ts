import {
  allSizes,
  type Balance,
  dayByDay,
  designSites,
  drawnRecords,
  drawYears,
  fromSecondSource,
  judgedRules,
  readyProgramme,
  siteSizes,
} from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { madeProgramme } from './madeSites.ts';
import { wholeRecord } from './records.ts';

const records = process.env['EAVEWELL_SOAK'] ? 20_000 : 1_000;

/** A whole record with every so many days covered, in stretches. */
function coveredRecord(seed: number): Balance & { readonly covered: Uint8Array } {
  const balance = wholeRecord(seed);
  const covered = Uint8Array.from(balance.inflow_L, (_, day) => (((day + seed) >> 2) % 3 === 0 ? 1 : 0));
  return { ...balance, covered };
}

describe('a second source against the plain run and a mask', () => {
  it('the same days are dry in tanks of every size, and the same litres come from the source', () => {
    let coveredDry = 0;
    for (let seed = 0; seed < records; seed++) {
      const balance = coveredRecord(seed);
      const plain = { ...balance, covered: undefined };
      const sizes = allSizes(balance, { ...judgedRules, order: 'drawFirst' });
      const without = allSizes(plain, { ...judgedRules, order: 'drawFirst' });
      // The water in the tank is the same with the source and without it.
      expect(sizes.otherCritical_L).toEqual(without.otherCritical_L);
      expect(sizes.asked_L).toBe(without.asked_L);
      for (const volume of [0, 1, 4, 7, 19, 60, 1000]) {
        const run = dayByDay(plain, volume, judgedRules, true);
        const masked = run.dry.map((dry, day) => (balance.covered[day] === 1 ? 0 : dry));
        expect(dayByDay(balance, volume, judgedRules).dry).toEqual(masked);
        expect(sizes.critical_L.map((critical) => Number(critical > volume))).toEqual(Float64Array.from(masked));
        const year = { label: 2001, from: 0, to: masked.length, missing_days: 0, judged: true };
        const source = fromSecondSource(balance, volume, [year]);
        let [days, litres] = [0, 0];
        run.dry.forEach((dry, day) => {
          if (dry === 0 || balance.covered[day] === 0) return;
          days++;
          litres += balance.judged_L[day]! - run.series!.judgedTaken_L[day]!;
        });
        expect([source.days, source.given_L]).toEqual([days, litres]);
        coveredDry += days;
      }
    }
    expect(coveredDry).toBeGreaterThan(records);
  });

  it('the verdict of every size read off the curves is that of the site with that tank', () => {
    const seen = new Set<string>();
    for (let seed = 1; seed <= 8; seed++) {
      const made = madeProgramme(seed);
      const months = [[6, 7, 8], [1, 2, 3, 4, 5], [3]][seed % 3]!;
      const secondSource = { secondSourceId: 'R', name: 'R', kind: 'pond', months, turbidity_NTU: null } as const;
      const tank = { ...made.site.tanks[0]!, diameter_m: null, joinedTo: null };
      const site = { ...made.site, secondSource, tanks: [tank] };
      const ready = readyProgramme(made);
      const [sizes] = siteSizes(site, ready.gauges.get('G'), ready);
      const from_L = 0.2 * (sizes!.tankForTarget_L ?? sizes!.tankVolume_L);
      const tanks = Array.from({ length: 14 }, (_, i) => ({ partId: null, tankVolume_L: from_L * 1.3 ** i }));
      for (const { point, verdict } of sizes!.verdictsAt(tanks)) {
        const own = { ...site, tanks: [{ ...tank, nominal_L: point.tankVolume_L }] };
        const design = designSites([own], ready).next().value!;
        expect(verdict, `programme ${seed}, ${point.tankVolume_L} L`).toBe(design.verdict);
        seen.add(verdict);
      }
    }
    expect([...seen].sort()).toEqual(['holds', 'short', 'tight']);
  });

  it('the years drawn again are those of the drawn years run end to end, with their mask', () => {
    let dryDays = 0;
    for (let seed = 0; seed < 200; seed++) {
      const balance = coveredRecord(seed);
      const days = balance.inflow_L.length;
      if (days < 8) continue;
      const cut = days >> 1;
      const years = [
        { label: 2001, from: 0, to: cut, missing_days: 0, judged: true },
        { label: 2002, from: cut, to: days, missing_days: 0, judged: true },
      ];
      const drawn = drawYears(2, 1, seed);
      const volume = 3 + (seed % 20);
      const pool = [
        ...years.map((year) => ({ year, inflowFactor: 1 })),
        { year: years[0]!, inflowFactor: 0.5 },
        { year: years[1]!, inflowFactor: 2 },
      ];
      const order = [...drawn.positions].map((position) => pool[position]!.year);
      const joined = (values: Float64Array) =>
        Float64Array.from(order.flatMap(({ from, to }) => [...values.slice(from, to)]));
      const again = {
        inflow_L: Float64Array.from(
          [...drawn.positions].flatMap((position) => {
            const { year, inflowFactor } = pool[position]!;
            return [...balance.inflow_L.slice(year.from, year.to)].map((inflow) => inflow * inflowFactor);
          }),
        ),
        judged_L: joined(balance.judged_L),
        other_L: joined(balance.other_L),
        covered: Uint8Array.from(order.flatMap(({ from, to }) => [...balance.covered.slice(from, to)])),
      };
      const dry = dayByDay(again, volume, judgedRules).dry.reduce((sum, one) => sum + one, 0);
      const found = drawnRecords(balance, pool, volume, 7, drawn);
      expect([...found.dryDays_per_year]).toEqual([dry / 2]);
      dryDays += dry;
    }
    expect(dryDays).toBeGreaterThan(100);
  });
});
