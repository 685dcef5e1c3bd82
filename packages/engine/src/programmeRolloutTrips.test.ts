import { describe, expect, it } from 'vitest';
import type { RolloutFacts } from './kernel/index.ts';
import { evaluatePlan, retiming } from './programme/rollout/index.ts';
import { crew, place, programme, sites, way, work } from './programmeRollout.testing.ts';
import { readyRollout } from './programmeRollout.ts';
import { tripLegs } from './programmeRolloutTrips.ts';

/** The legs of one trip through these sites, on a plan that begins on a Monday. */
function legsOf(siteIds: readonly string[], rollout: Partial<RolloutFacts>, install_days: number, riverEnds_h = 6) {
  const facts = programme(
    {
      ...rollout,
      work: siteIds.map((id) =>
        work(id, { install_days: { low: install_days, likely: install_days, high: install_days } }),
      ),
    },
    { riverEnds_h, learning_fraction: 1 },
  );
  const parts = facts.parts.map((part) => ({ ...part, kit: { ...part.kit, stock_count: 50 } }));
  const ready = readyRollout({ ...facts, parts }, sites(...siteIds), { today: facts.settings.rolloutStart! });
  const stops = siteIds.map((id) => ready.problem.jobs.findIndex(({ siteId }) => siteId === id));
  const plan = { trips: [[{ stops, notBefore: 0, isLocked: false }]] };
  return tripLegs(ready, evaluatePlan(retiming(ready.problem), plan), 0, 0);
}

describe('legs of a trip', () => {
  it('are begun when the boat goes, not when the work before is done', () => {
    // A day of 8 h, boats ashore after 6: two hours out, half a day of work, and four hours that do not fit into what is left.
    const ways = [way('W1', 'town', 'V1', 'river', 2), way('W2', 'V1', 'V2', 'river', 4)];
    const [out, on] = legsOf(['V1', 'V2'], { ways }, 0.5);
    expect([out!.leaves, out!.arrives]).toEqual([0, 0.25]);
    // Done on Monday at three quarters of the day; on the water on Tuesday.
    expect([on!.leaves, on!.arrives]).toEqual([1, 1.5]);
  });

  it('are gone stretch by stretch, over nights and days of rest', () => {
    const places = [place('town'), place('fork'), place('landing')];
    const ways = [
      way('R1', 'town', 'fork', 'foot', 10),
      way('R2', 'fork', 'landing', 'foot', 4),
      way('W1', 'landing', 'V1', 'river', 5),
    ];
    const [out] = legsOf(['V1'], { places, ways, crews: [crew('A', { restDays: [2] })] }, 1);
    // Eight hours on Monday; Tuesday is a day of rest; two hours and four on Wednesday, and no time for five by boat.
    expect(out!.times).toEqual([
      { begins: 0, ends: 2.25 },
      { begins: 2.25, ends: 2.75 },
      { begins: 3, ends: 3 + 5 / 8 },
    ]);
    expect(out!.arrives).toBe(3 + 5 / 8);
  });

  it('end when the evaluator says, whatever the hours', () => {
    const places = [place('town'), place('pier', { changeOver_h: 1 }), place('bend'), place('shore')];
    for (let at = 0; at < 60; at++) {
      const hours = (nth: number) => 0.4 + ((at * 7 + nth * 11) % 37) / 4;
      const ways = [
        way('R1', 'town', 'pier', 'foot', hours(1)),
        way('W1', 'pier', 'bend', 'river', hours(2)),
        way('W2', 'bend', 'shore', 'river', hours(3)),
        way('F1', 'shore', 'V1', 'foot', hours(4)),
        way('F2', 'V1', 'V2', 'foot', hours(5)),
      ];
      const legs = legsOf(['V1', 'V2'], { places, ways, crews: [crew('A', { mostDaysAway: null })] }, 0.3 + (at % 5));
      expect(legs.flatMap(({ way: gone }) => gone?.stretches ?? []).length).toBe(4 + 1 + 5);
      for (const { times, arrives } of legs) expect(times.at(-1)!.ends).toBeCloseTo(arrives!, 4);
    }
  });
});
