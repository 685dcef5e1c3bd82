import { describe, expect, it } from 'vitest';
import type { RolloutFacts } from './kernel/index.ts';
import { evaluatePlan, retiming } from './programme/rollout/index.ts';
import { carrier, crew, firstDay, place, programme, sites, way, work } from './programmeRollout.testing.ts';
import { readyRollout } from './programmeRollout.ts';
import { haulRunLegs, tripLegs } from './programmeRolloutTrips.ts';

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

  it('wait at a landing for the morning, and rest there', () => {
    const places = [place('town'), place('bend'), place('fork')];
    const ways = [
      way('W1', 'town', 'bend', 'river', 4),
      way('W2', 'bend', 'fork', 'river', 3),
      way('W3', 'fork', 'V1', 'river', 3),
    ];
    const crews = [crew('A', { restDays: [2] })];
    const [out, home] = legsOf(['V1'], { places, ways, crews }, 1);
    // Boats are ashore after 6 of 8 hours: four on Monday, no time for three; Tuesday is a day of rest; three and three on Wednesday.
    expect(out!.times.map(({ begins, ends }) => [begins, ends])).toEqual([
      [0, 4 / 8],
      [2, 2 + 3 / 8],
      [2 + 3 / 8, 2 + 6 / 8],
    ]);
    expect(out!.arrives).toBe(2 + 6 / 8);
    // Done on Thursday at three quarters of the day: home on Friday and Saturday.
    expect([home!.leaves, home!.arrives]).toEqual([4, 5 + 4 / 8]);
  });

  it('go a way that takes longer than a day from a morning on, and say which', () => {
    const places = [place('town'), place('bend')];
    const ways = [way('W1', 'town', 'bend', 'river', 1), way('W2', 'bend', 'V1', 'river', 7)];
    const [out] = legsOf(['V1'], { places, ways }, 1);
    expect(out!.times).toEqual([
      { begins: 0, ends: 1 / 8 },
      { begins: 1, ends: 2 + 1 / 8 },
    ]);
    const { problems, leftOut } = readyRollout(programme({ places, ways }, { riverEnds_h: 6 }), sites('V1'), {
      today: firstDay,
    });
    expect(problems.filter(({ code }) => code === 'ways.longer_than_day')).toMatchObject([
      { facts: { way: 'W2', from: 'bend', to: 'V1', hours_h: 7, most_h: 6 } },
    ]);
    expect(leftOut).toEqual([]);
  });

  it('are told for each crew by its own day', () => {
    const places = [place('town'), place('bend')];
    const ways = [way('W1', 'town', 'bend', 'river', 4), way('W2', 'bend', 'V1', 'river', 4)];
    const crews = [crew('long', { work_h_per_day: 9 }), crew('short', { work_h_per_day: 6 })];
    const { problem } = readyRollout(programme({ places, ways, crews }, { riverEnds_h: 10 }), sites('V1'), {
      today: firstDay,
    });
    const outOf = ({ travel }: { readonly travel: number }) => problem.travels[travel]!.byPeriod[0]!.river_h[1];
    // Eight hours of one day of nine; or a day of six, and four hours of the next.
    expect(problem.crews.map(outOf)).toEqual([8, 10]);
  });

  it('end when the evaluator says, whatever the hours, and no way by river is broken at a night', () => {
    const places = [place('town'), place('pier', { changeOver_h: 1 }), place('bend'), place('shore')];
    let rivers = 0;
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
      for (const { times, arrives, way: gone } of legs) {
        expect(times.at(-1)!.ends).toBeCloseTo(arrives!, 4);
        for (const [nth, { mode, hours_h }] of gone!.stretches.entries()) {
          if (mode !== 'river') continue;
          const { begins, ends } = times[nth]!;
          const isWithin = ends <= Math.floor(begins) + 6 / 8 + 1e-6;
          expect([hours_h, isWithin || begins % 1]).toEqual([hours_h, hours_h <= 6 ? true : 0]);
          rivers++;
        }
      }
    }
    expect(rivers).toBe(60 * 4);
  });

  it('have no night at a landing where nobody may sleep, and end when the evaluator says', () => {
    const nightsAtShoal = (maySleep: boolean) => {
      const places = [place('town'), place('bend'), place('shoal', { maySleep }), place('shore')];
      let nights = 0;
      for (let at = 0; at < 60; at++) {
        const hours = (nth: number) => 0.6 + ((at * 7 + nth * 11) % 25) / 10;
        const ways = [
          way('W1', 'town', 'bend', 'river', hours(1)),
          way('W2', 'bend', 'shoal', 'river', hours(2)),
          way('W3', 'shoal', 'shore', 'river', hours(3)),
          way('W4', 'shore', 'V1', 'river', hours(4)),
        ];
        const legs = legsOf(['V1'], { places, ways, crews: [crew('A', { mostDaysAway: null })] }, 0.3 + (at % 5));
        expect(legs).toHaveLength(2);
        for (const { times, arrives, way: gone } of legs) {
          expect(times.at(-1)!.ends).toBeCloseTo(arrives!, 4);
          for (const [nth, { from }] of gone!.stretches.entries())
            if (from === 'shoal')
              nights += Math.floor(times[nth]!.begins + 1e-6) - Math.floor(times[nth - 1]!.ends - 1e-6);
        }
      }
      return nights;
    };
    expect(nightsAtShoal(true)).toBeGreaterThan(10);
    expect(nightsAtShoal(false)).toBe(0);
  });
});

describe('legs of what is brought between stores', () => {
  /** A tank of 80 kg for a site behind a landing that is filled from the town. */
  function filled(limit_kg: number, closures: RolloutFacts['closures'] = []) {
    const facts = programme({
      places: [place('town'), place('fork'), place('landing', { filledFrom: 'town', filledBy: 'truck' })],
      ways: [
        way('R1', 'town', 'fork', 'road', 9),
        way('R2', 'fork', 'landing', 'road', 3),
        way('R3', 'town', 'landing', 'road', 20),
        way('W', 'landing', 'V1', 'river', 1),
      ],
      closures,
      crews: [crew('A', { base: 'landing', store: 'landing' })],
      travel: [{ carrierId: 'truck', speed_km_per_h: 40, fuel_L_per_km: 0.3, cost_per_day: 50 }],
    });
    const carriers = [carrier('boat', 'boat', 400), carrier('truck', 'truck', limit_kg)];
    const ready = readyRollout({ ...facts, kit: { ...facts.kit, carriers } }, sites('V1'), { today: firstDay });
    const plan = { trips: [[{ stops: [0], notBefore: 0, isLocked: false }]] };
    const { hauls } = evaluatePlan(retiming(ready.problem), plan);
    return { haul: hauls[0]!, legs: haulRunLegs(ready, hauls[0]!) };
  }

  const told = ({ legs }: ReturnType<typeof filled>) =>
    legs.map(({ from, to, leaves, arrives, way: gone }) => [
      ...[from, to, leaves, arrives],
      gone?.stretches.map(({ wayId }) => wayId).join(),
    ]);

  it('go there and back run by run, by the ways its days were counted by', () => {
    // Twelve hours are two days of eight.
    expect(told(filled(100))).toEqual([
      ['town', 'landing', 0, 2, 'R1,R2'],
      ['landing', 'town', 2, 4, 'R2,R1'],
    ]);
    // Eighty kilograms, fifty a run.
    const two = filled(50);
    expect(two.haul.trips_count).toBe(2);
    expect(told(two).slice(2)).toEqual([
      ['town', 'landing', 4, 6, 'R1,R2'],
      ['landing', 'town', 6, 8, 'R2,R1'],
    ]);
  });

  it('go another way back where the first has closed meanwhile', () => {
    const closed = { wayId: 'R1', weatherArea: null, months: [], slower_factor: null, reason: null };
    const closure = { ...closed, closureId: 'C', from: firstDay + 2, to: firstDay + 300 };
    // Twenty hours by the other road are three days.
    expect(told(filled(100, [closure]))).toEqual([
      ['town', 'landing', 0, 2, 'R1,R2'],
      ['landing', 'town', 2, 5, 'R3'],
    ]);
  });
});
