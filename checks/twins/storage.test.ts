import { allSizes, type Balance, criticalVolumes, dayByDay, type RunRules, shortfallAt_L } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { numbersFrom, realRecord, wholeRecord } from './records.ts';
import { textbookRun } from './textbookRun.ts';

const wholeRecords = process.env['EAVEWELL_SOAK'] ? 40_000 : 800;
const passes = [1, 2] as const;
const starts = ['empty', 'full'] as const;

/** Are two series the same, number by number? */
const areSame = (a: Float64Array, b: Float64Array) => a.length === b.length && a.every((value, i) => value === b[i]);

function total(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** Every day of every volume, all sizes against the plain run; gives how many days were compared. */
function compareDays(
  balance: Balance,
  rules: RunRules & { order: 'drawFirst' | 'ybs' },
  volumes: Iterable<number>,
): number {
  const sizes = allSizes(balance, rules);
  let compared = 0;
  for (const volume of volumes) {
    const run = dayByDay(balance, volume, rules, true);
    for (let day = 0; day < run.dry.length; day++) {
      const dry = sizes.critical_L[day]! > volume;
      const otherShort = sizes.otherCritical_L[day]! > volume;
      const otherTaken = run.series!.otherTaken_L[day]!;
      if (dry !== (run.dry[day] === 1) || otherShort !== otherTaken < balance.other_L[day]!)
        expect.fail(`day ${day}, volume ${volume}, ${JSON.stringify(rules)}: all sizes and the plain run differ`);
      compared++;
    }
  }
  return compared;
}

describe('every tank size at once against one plain run a size', () => {
  for (const order of ['drawFirst', 'ybs'] as const)
    for (const pass of passes)
      it(`agrees on and beside every critical volume, ${order}, ${pass} pass, ${wholeRecords} records`, () => {
        let compared = 0;
        for (let seed = 0; seed < wholeRecords; seed++) {
          const balance = wholeRecord(seed);
          const rules = { order, passes: pass, start: starts[seed % 2]! };
          const sizes = allSizes(balance, rules);
          const volumes = new Set<number>([0]);
          for (const list of [sizes.critical_L, sizes.otherCritical_L])
            for (const c of list)
              if (Number.isFinite(c)) for (const beside of [c - 0.5, c, c + 0.5]) if (beside >= 0) volumes.add(beside);
          volumes.add(1e6);
          compared += compareDays(balance, rules, volumes);
          for (const volume of volumes) {
            const run = dayByDay(balance, volume, rules);
            const short = total(balance.judged_L) - run.judgedTaken_L;
            expect(shortfallAt_L(sizes, volume)).toBe(short);
            const one = criticalVolumes(balance, rules, volume);
            const { otherShortDays } = run;
            const isSame =
              areSame(one.critical_L, sizes.critical_L) &&
              one.shortfall_L === short &&
              one.otherShortDays === otherShortDays;
            // The whole form once a record: looking into it takes longer than working it out.
            if (!isSame || volume === 0)
              expect(one).toEqual({ critical_L: sizes.critical_L, shortfall_L: short, otherShortDays });
          }
        }
        expect(compared).toBeGreaterThan(wholeRecords * 100);
      });

  it('agrees a millionth beside every critical volume on real numbers', () => {
    for (let seed = 0; seed < 12; seed++)
      for (const order of ['drawFirst', 'ybs'] as const)
        for (const pass of passes) {
          const balance = realRecord(seed, 400);
          const rules = { order, passes: pass, start: starts[seed % 2]! };
          const sizes = allSizes(balance, rules);
          const finite = [...new Set(sizes.critical_L)].filter((c) => c > 0 && Number.isFinite(c));
          compareDays(
            balance,
            rules,
            finite.flatMap((c) => [c * (1 - 1e-6), c * (1 + 1e-6)]),
          );
          for (const volume of finite.slice(0, 60)) {
            const short = total(balance.judged_L) - dayByDay(balance, volume, rules).judgedTaken_L;
            expect(Math.abs(shortfallAt_L(sizes, volume) - short)).toBeLessThanOrEqual(1e-9 * total(balance.judged_L));
          }
        }
  });
});

describe('one tank beside every size, the second pass ending where it repeats the first', () => {
  /** The record cut into uneven years, some not judged. */
  const cut = (days: number, seed: number, longest: number) => {
    const next = numbersFrom(seed + 5);
    const years = [];
    for (let from = 0; from < days; ) {
      const to = Math.min(days, from + 1 + Math.floor(next() * longest));
      years.push({ from, to, judged: next() < 0.8 });
      from = to;
    }
    return years;
  };

  it('gives the critical volumes of the whole run to the last bit, and the litres short of the judged years', () => {
    for (let seed = 0; seed < 400; seed++)
      for (const order of ['drawFirst', 'ybs'] as const)
        for (const balance of [wholeRecord(seed), realRecord(seed, 300)]) {
          const days = balance.inflow_L.length;
          const rules = { order, passes: 2 as const, start: starts[seed % 2]! };
          const years = cut(days, seed, Math.max(2, days / 6));
          const volume = [3, 11, 900, 40_000][seed % 4]!;
          const one = criticalVolumes(balance, rules, volume, years);
          const all = allSizes(balance, rules).critical_L;
          if (!areSame(one.critical_L, all)) expect(one.critical_L).toEqual(all);
          const run = dayByDay(balance, volume, rules, true).series!;
          let [short, otherShortDays] = [0, 0];
          for (const { from, to, judged } of years)
            for (let day = from; judged && day < to; day++) {
              short += balance.judged_L[day]! - run.judgedTaken_L[day]!;
              if (run.otherTaken_L[day]! < balance.other_L[day]! * (1 - 1e-9)) otherShortDays++;
            }
          expect(Math.abs(one.shortfall_L - short)).toBeLessThanOrEqual(1e-9 * Math.max(1, total(balance.judged_L)));
          expect(one.otherShortDays).toBe(otherShortDays);
        }
  });
});

describe('the plain run against the rules as printed', () => {
  for (const order of ['drawFirst', 'yas', 'ybs'] as const)
    for (const pass of passes)
      it(`gives the same litres every day, ${order}, ${pass} pass, ${wholeRecords} records`, () => {
        for (let seed = 0; seed < wholeRecords; seed++) {
          const balance = wholeRecord(seed);
          const rules: RunRules = { order, passes: pass, start: starts[seed % 2]! };
          for (const volume of [0, 1, 4, 7, 19, 60, 1000]) {
            const run = dayByDay(balance, volume, rules, true);
            const printed = textbookRun(balance, volume, rules);
            printed.forEach((expected, day) => {
              const got = {
                judged: run.series!.judgedTaken_L[day],
                other: run.series!.otherTaken_L[day],
                content: run.series!.content_L[day],
                spill: run.series!.spill_L[day],
              };
              const isSame =
                got.judged === expected.judged &&
                got.other === expected.other &&
                got.content === expected.content &&
                got.spill === expected.spill;
              // Where a field of either is more or less than the other's, the first day tells.
              if (!isSame || day === 0) expect(got).toEqual(expected);
            });
          }
        }
      });
});
