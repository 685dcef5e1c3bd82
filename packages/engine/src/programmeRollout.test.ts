// long: one made-up programme and what is planned of it
import { describe, expect, it } from 'vitest';
import { type RolloutFacts, readIsoDay } from './kernel/index.ts';
import { evaluatePlan } from './programme/rollout/index.ts';
import {
  arrival,
  asked,
  carrier,
  codes,
  crew,
  firstDay,
  line,
  place,
  programme,
  reasons,
  siteFacts,
  sites,
  thisDay,
  wanted,
  way,
  work,
} from './programmeRollout.testing.ts';
import { readyRollout, rolloutWay } from './programmeRollout.ts';

const day = (text: string) => readIsoDay(text)!;

describe('readyRollout', () => {
  it('makes sites jobs, crews free on their days, and ways legs, which a plan can be timed with', () => {
    const ready = readyRollout(programme(), sites('V1', 'V2', 'V3', 'V4'), asked);
    const { problem } = ready;
    expect(problem.placeIds).toEqual(['town']);
    expect(problem.jobs.map(({ siteId }) => siteId)).toEqual(['V1', 'V2', 'V3']);
    expect(reasons(ready)).toEqual([['V4', 'noWay']]);
    expect(ready.stops.map(({ stopId }) => stopId)).toEqual(['town', 'V1', 'V2', 'V3']);
    expect(problem.travels[0]!.nodes).toBe(4);
    const table = problem.travels[0]!.byPeriod[0]!;
    expect([...table.river_h.slice(0, 4)]).toEqual([0, 2, 4, 4]);
    // An hour to change at the village, one on foot.
    expect([...table.landAfter_h.slice(0, 4)]).toEqual([0, 0, 0, 2]);
    // Monday to Saturday.
    expect([...problem.crews[0]!.works.slice(0, 8)]).toEqual([1, 1, 1, 1, 1, 1, 0, 1]);
    // Its own day and its boat's.
    expect(problem.crews[0]!.cost_per_day).toBe(120);
    expect(problem.jobs[0]).toMatchObject({ kg: 80, longest_m: 1.5, weight: 100, install_days: { likely: 2 } });
    expect(problem.jobs[0]!.serviceWait_days[0]).toBe(3);
    const plan = { trips: [[{ stops: [0, 1], notBefore: 0, isLocked: false }]] };
    const outcome = evaluatePlan(problem, plan);
    expect(outcome.broken.map(({ kind }) => kind)).toEqual(['leftOut']);
    // 2 h up the river and 16 h of work: handed over on the third day; 2 h more, two days of work: on the fifth.
    expect(outcome.trips[0]![0]!.stops.map(({ handOverDay }) => handOverDay)).toEqual([2, 4]);
    expect(rolloutWay(ready, { crew: 0, from: 0, to: 3, period: 0 })).toMatchObject({
      stretches: [{ wayId: 'W1' }, { wayId: 'W2' }, { wayId: 'W3', changeOver_h: 1 }],
    });
  });

  it('says of every site that is not planned why', () => {
    const all = [
      wanted('done', { site: siteFacts('done', { handOverDay: thisDay }) }),
      wanted('short', { verdict: 'short' }),
      wanted('unsure', { verdict: 'unknown' }),
      wanted('empty', { people_count: null }),
      wanted('unasked', {}),
      wanted('bare', { lines: [] }),
      wanted('late', {}),
      wanted('skilled', {}),
      wanted('V1', { verdict: 'tight' }),
      wanted('V2', { lines: [line('tank', 6)] }),
    ];
    const dated = { agreedOn: thisDay };
    const rollout = {
      work: [
        ...['done', 'short', 'unsure', 'empty', 'bare', 'V1', 'V2'].map((id) => work(id, dated)),
        work('late', { ...dated, readyFrom: firstDay + 60 }),
        work('skilled', { ...dated, skill: 'welder' }),
        work('unasked'),
      ],
    };
    const ready = readyRollout(programme(rollout), all, asked);
    expect(reasons(ready)).toEqual([
      ['done', 'handedOver'],
      ['short', 'short'],
      ['unsure', 'unknown'],
      ['empty', 'noPeople'],
      ['unasked', 'notAgreed'],
      ['bare', 'noKit'],
      ['late', 'noWindow'],
      ['skilled', 'noSkill'],
      ['V2', 'tooHeavy'],
    ]);
    // Six tanks of 80 kg, a boat of 400 kg.
    expect(ready.leftOut.at(-1)).toMatchObject({ over_kg: 80, over_L: null, over_m: null });
    expect(ready.problem.jobs.map(({ siteId }) => siteId)).toEqual(['V1']);
    expect(ready.problems.find(({ code }) => code === 'rollout.tight')?.facts).toEqual({ sites: ['V1'], count: 1 });
    const some = readyRollout(programme(), sites('V1', 'V2'), { ...asked, siteIds: new Set(['V2']) });
    expect(reasons(some)).toEqual([['V1', 'notAsked']]);
    const bold = readyRollout(programme({}, { mustHold: false }), [wanted('V1', { verdict: 'short' })], asked);
    expect(bold.problem.jobs).toHaveLength(1);
    expect(codes(bold.problems)).toContain('rollout.short_planned');
  });

  it('leaves no site unaccounted for', () => {
    const all = sites('V1', 'V2', 'V3', 'V4');
    const ready = readyRollout(programme(), all, asked);
    const told = [...ready.problem.jobs.map(({ siteId }) => siteId), ...ready.leftOut.map(({ siteId }) => siteId)];
    expect(told.sort()).toEqual(all.map(({ site }) => site.siteId).sort());
  });

  it('counts what is short at some time alone, from what lies there and what comes later', () => {
    // Two lie there, counted on 1 November: the one of October is among them, that of 20 November is not.
    const arrivals = [
      arrival('A1', day('2026-10-20'), 5),
      arrival('A2', day('2026-11-20'), 1),
      arrival('A3', day('2027-01-14'), 4),
    ];
    const three = readyRollout(programme({ arrivals }), sites('V1', 'V2', 'V3'), asked);
    expect(three.problem.goods).toEqual([]);
    const four = [...sites('V1', 'V3'), wanted('V2', { lines: [line('tank', 2), line('tap', 1)] })];
    const short = readyRollout(programme({ arrivals }), four, asked);
    expect(short.problem.goods).toEqual([{ partId: 'tank' }]);
    expect(short.problem.jobs.map(({ needs }) => needs)).toEqual([[1], [1], [2]]);
    expect(short.problem.stores[0]!.arrivals).toEqual([
      { arrivalId: '', day: 0, goods: 0, quantity_count: 2, slip_days: { low: 0, likely: 0, high: 0 } },
      { arrivalId: 'A2', day: 0, goods: 0, quantity_count: 1, slip_days: { low: 0, likely: 0, high: 0 } },
      { arrivalId: 'A3', day: 10, goods: 0, quantity_count: 4, slip_days: { low: 0, likely: 2, high: 9 } },
    ]);
    expect(short.problems.find(({ code }) => code === 'rollout.stock_unknown')?.facts['parts']).toEqual(['tap']);
    const never = readyRollout(programme(), four, asked);
    expect(never.problems.find(({ code }) => code === 'rollout.stock_never_enough')?.facts).toEqual({
      ...{ part: 'tank', needed: 4, comes: 2 },
    });
  });

  it('fills a forward store by hauls, shares carriers that are too few, and gives each set of carriers its own legs', () => {
    const rollout: Partial<RolloutFacts> = {
      places: [place('town'), place('landing', { filledFrom: 'town', filledBy: 'truck' })],
      ways: [way('R', 'town', 'landing', 'road', 9), way('W', 'landing', 'V1', 'river', 2)],
      closures: [
        {
          ...{ closureId: 'C', wayId: 'R', weatherArea: null, months: [2], from: null, to: null },
          slower_factor: null,
          reason: null,
        },
      ],
      crews: [
        crew('A', { base: 'landing', store: 'landing' }),
        crew('B', { base: 'landing', store: 'landing', skills: ['pumps'], mostDaysAway: null }),
        crew('C', { base: 'landing', store: 'landing', carrierIds: ['boat', 'truck'] }),
      ],
      travel: [
        { carrierId: 'boat', speed_km_per_h: 10, fuel_L_per_km: 0.5, cost_per_day: 30 },
        { carrierId: 'truck', speed_km_per_h: 40, fuel_L_per_km: 0.3, cost_per_day: 50 },
      ],
      work: [work('V1', { skill: 'pumps' })],
    };
    const { problem, problems } = readyRollout(programme(rollout), sites('V1'), asked);
    expect(codes(problems)).toEqual(['rollout.no_agreements']);
    const without = { ...rollout, crews: rollout.crews!.slice(0, 2) };
    const alone = readyRollout(programme(without), sites('V1'), asked).problem;
    expect([alone.pools.map(({ carrierId }) => carrierId), alone.stores[0]!.filledBy!.pool]).toEqual([['boat'], null]);
    expect(problem.crews.map(({ travel }) => travel)).toEqual([0, 0, 1]);
    expect(problem.crews.map(({ pools }) => pools)).toEqual([[0], [0], [0, 1]]);
    // Crew C goes with the only truck, which also fills the landing.
    expect(problem.pools).toEqual(['boat', 'truck'].map((carrierId) => ({ carrierId, carriers_count: 1 })));
    expect(problem.crews.map(({ skills }) => skills & problem.jobs[0]!.skills)).toEqual([0, 1, 0]);
    expect(problem.crews[1]!.mostDaysAway).toBe(60);
    const [landing, town] = [problem.placeIds.indexOf('landing'), problem.placeIds.indexOf('town')];
    expect(problem.stores.map(({ node }) => node)).toEqual([landing, town]);
    // Nine hours are two days; in February the road is closed, though no crew goes it.
    expect(problem.periods.map(({ from }) => from)).toEqual([0, 28, 56]);
    expect(problem.stores[0]!.filledBy).toMatchObject({
      ...{ store: 1, there_days: [2, Infinity, 2], back_days: [2, Infinity, 2], limit_kg: 2000 },
      // Two days of the truck at 50 and six litres each way; in February neither.
      ...{ pool: 1, there_cost: [100, 0, 100], back_cost: [100, 0, 100], there_fuel_L: [6, 0, 6] },
    });
    expect(problem.stores[1]!.filledBy).toBeNull();
  });

  it('has stores that could be where they are asked for, and only those that can be filled from one there is', () => {
    const facts = programme({
      places: [
        place('town'),
        place('pier', { filledFrom: 'town', filledBy: 'truck' }),
        place('far', { filledFrom: 'other', filledBy: 'truck' }),
        place('other'),
      ],
      ways: [
        way('W', 'town', 'V1', 'river', 2),
        way('R', 'town', 'pier', 'road', 2),
        way('Q', 'other', 'far', 'road', 2),
      ],
      crews: [crew('A', { base: 'town', store: 'town' })],
    });
    const storesOf = (more: object) => {
      const { problem } = readyRollout(facts, sites('V1'), { ...asked, ...more });
      return problem.stores.map(({ node }) => problem.placeIds[node]);
    };
    expect([storesOf({}), storesOf({ hasPossibleStores: true })]).toEqual([['town'], ['pier', 'town']]);
  });

  it('fills a store by its carrier, and on stretches of another kind by what there is, to and fro', () => {
    const rollout: Partial<RolloutFacts> = {
      places: [place('town'), place('pier'), place('shed', { filledFrom: 'town', filledBy: 'boat' })],
      ways: [
        way('R', 'town', 'pier', 'road', 3),
        way('W', 'pier', 'shed', 'river', 3),
        way('P', 'shed', 'V1', 'foot', 1),
      ],
      crews: [crew('A', { base: 'shed', store: 'shed', carrierIds: [] })],
    };
    const facts = programme(rollout);
    const carriers = [carrier('boat', 'boat', 4000), carrier('truck', 'truck', 900)];
    const fast = { carrierId: 'truck', speed_km_per_h: 40, fuel_L_per_km: 0.3, cost_per_day: 50 };
    const travel = [...facts.rollout.travel, fast];
    const { problem } = readyRollout(
      { ...facts, kit: { ...facts.kit, carriers }, rollout: { ...facts.rollout, travel } },
      sites('V1'),
      asked,
    );
    const shed = problem.stores.find(({ filledBy }) => filledBy !== null)!;
    // Three hours by road, one to change, three by boat: a day. The truck goes as often as it takes.
    expect(shed.filledBy).toMatchObject({
      there_days: [1],
      back_days: [1],
      limit_kg: 4000,
      there_cost: [30],
      back_cost: [30],
    });
    const without = programme({
      ...rollout,
      places: [place('town'), place('pier'), place('shed', { filledFrom: 'town' })],
    });
    const none = readyRollout(without, sites('V1'), asked);
    expect(codes(none.problems)).toContain('rollout.haul_unknown');
    expect(none.problem.stores.find(({ filledBy }) => filledBy !== null)!.filledBy!.there_days).toEqual([Infinity]);
  });

  it('tells of crews it cannot plan with, and plans with the others', () => {
    const rollout = {
      crews: [crew('A', { base: 'nowhere' }), crew('B', { restDays: [0, 1, 2, 3, 4, 5, 6] }), crew('C')],
    };
    const ready = readyRollout(programme(rollout), sites('V1'), asked);
    expect(ready.crewsLeftOut).toEqual(['A']);
    expect(ready.problem.crews.map(({ crewId }) => crewId)).toEqual(['B', 'C']);
    expect(codes(ready.problems)).toContain('rollout.crew_base_unknown');
    expect(codes(ready.problems)).toContain('rollout.crew_never_works');
    const nobody = readyRollout(programme({ crews: [] }), sites('V1'), asked);
    expect(codes(nobody.problems)).toContain('rollout.no_crews');
    expect(reasons(nobody)).toEqual([['V1', 'noWay']]);
  });

  it('tells of a plan that begins before today, and of none that begins today', () => {
    const begun = (from: number) =>
      codes(readyRollout(programme(), sites('V1'), { ...asked, firstDay: from }).problems);
    expect(begun(thisDay - 1)).toContain('rollout.begins_in_past');
    expect(begun(thisDay)).not.toContain('rollout.begins_in_past');
  });

  it('works in the months and from the day on that a site states', () => {
    const rollout = {
      work: [
        work('V1', { readyFrom: firstDay + 10, finishBy: firstDay + 20, agreedOn: thisDay, priority_factor: 2 }),
        work('V2', { workMonths: [2, 12], agreedOn: firstDay + 30 }),
      ],
    };
    const { jobs } = readyRollout(programme(rollout), sites('V1', 'V2'), asked).problem;
    expect(jobs[0]).toMatchObject({ windows: [{ from: 10, to: 59 }], finishBy: 20, weight: 200, people: 100 });
    // February 2027 is days 28 to 55 of the plan.
    expect(jobs[1]!.windows).toEqual([{ from: 30, to: 55 }]);
  });

  it('takes the days of a calendar before the days of rest', () => {
    const calendars = [
      { calendarId: 'K', from: day('2027-01-06'), to: day('2027-01-07'), works: false, reason: 'feast' },
      { calendarId: 'K', from: day('2027-01-10'), to: day('2027-01-10'), works: true, reason: null },
      { calendarId: 'other', from: day('2027-01-04'), to: day('2027-01-30'), works: false, reason: null },
    ];
    const own = crew('A', { calendarId: 'K', from: day('2027-01-05'), to: day('2027-01-12') });
    const { crews } = readyRollout(programme({ calendars, crews: [own] }), sites('V1'), asked).problem;
    expect([...crews[0]!.works.slice(0, 11)]).toEqual([0, 1, 0, 0, 1, 1, 1, 1, 1, 0, 0]);
    expect(crews[0]!.freeFrom).toBe(1);
  });
});
