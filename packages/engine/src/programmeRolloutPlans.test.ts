import { describe, expect, it } from 'vitest';
import {
  type CarrierAway,
  isoDay,
  type KitRule,
  type PlanFacts,
  type PlanTripFacts,
  type RolloutFacts,
} from './kernel/index.ts';
import { evaluatePlan } from './programme/rollout/index.ts';
import {
  arrival,
  codes,
  crew,
  firstDay,
  line,
  programme,
  reasons,
  siteFacts,
  sites,
  wanted,
  way,
} from './programmeRollout.testing.ts';
import { readyRollout } from './programmeRollout.ts';
import { keptPlan } from './programmeRolloutPlans.ts';
import { rowsOfPlan } from './programmeRolloutRows.ts';

// A Wednesday, nine days into the plan.
const today = firstDay + 9;

const trip = (tripId: string, siteIds: readonly string[], rest: Partial<PlanTripFacts> = {}): PlanTripFacts => ({
  ...{ tripId, crewId: 'A', order: 1, notBefore: null, isLocked: false, leaves: null, back: null },
  ...{ leftOn: null, backOn: null },
  stops: siteIds.map((siteId, at) => ({ siteId, order: at + 1, handOver: null })),
  ...rest,
});

const plan = (trips: readonly PlanTripFacts[], rest: Partial<PlanFacts> = {}): PlanFacts => ({
  ...{ planId: 'P', name: 'P', from: firstDay, isInForce: true, timedAt: null, note: null, trips },
  ...rest,
});

/** A tank for every site. */
const tankEach: KitRule = {
  ...{ ruleId: 'K', partId: 'tank', countedBy: 'site', each_count: 1, rounding: 'up', spare_fraction: 0 },
  ...{ leastSpare_count: 0, conditions: [] },
};

/** What is ready and kept of a plan, with days of hand-over entered for some sites. */
function kept(
  trips: readonly PlanTripFacts[],
  handedOver: Readonly<Record<string, number>> = {},
  rollout: Partial<RolloutFacts> = {},
  stock_count = 2,
) {
  const made = programme({ ...rollout, plans: [plan(trips)] });
  const facts = {
    ...made,
    kit: { ...made.kit, rules: [tankEach] },
    parts: made.parts.map((part) => ({ ...part, kit: { ...part.kit, stock_count } })),
    sites: made.sites.map(({ siteId }) => siteFacts(siteId, { handOverDay: handedOver[siteId] ?? null })),
  };
  const wants = ['V1', 'V2', 'V3'].map((siteId) => {
    const site = facts.sites.find((one) => one.siteId === siteId)!;
    return wanted(siteId, { site, lines: site.handOverDay === null ? [line('tank', 1)] : [] });
  });
  const ready = readyRollout(facts, wants, { today, planId: 'P' });
  return { facts, ready, got: keptPlan(ready, facts, 'P', today)! };
}

describe('planning from today', () => {
  it('leaves out the sites of a trip under way, and has its crew free the day after it is back and has turned round', () => {
    const away = trip('T1', ['V1'], { leftOn: firstDay + 7, back: firstDay + 11, leaves: firstDay + 7 });
    const { ready, got } = kept([away, trip('T2', ['V3', 'V2'], { order: 2 })]);
    expect(reasons(ready)).toEqual([['V1', 'underWay']]);
    expect(ready.problem.firstDay).toBe(today);
    // Back on Friday, 2 days from today; on Saturday it turns round, Sunday it rests.
    expect(ready.problem.crews[0]!.freeFrom).toBe(4);
    expect(ready.problem.crews[0]!.done_count).toBe(1);
    expect(got.past).toMatchObject([
      [{ tripId: 'T1', state: 'underWay', back: firstDay + 11, stops: [{ siteId: 'V1', handOver: null }] }],
    ]);
    expect(got.tripIds).toEqual([['T2']]);
    const jobs = got.plan.trips[0]![0]!.stops.map((job) => ready.problem.jobs[job]!.siteId);
    expect(jobs).toEqual(['V3', 'V2']);
    expect(evaluatePlan(ready.problem, got.plan).trips[0]![0]!.leaves).toBe(5);
    expect([got.notPlaced, got.dropped, got.overdue, got.problems]).toEqual([[], [], [], []]);
  });

  it('takes a trip that should be back as back today at the earliest, and tells it and one that should have left', () => {
    const late = trip('T1', ['V1'], { leftOn: firstDay + 1, back: firstDay + 5, leaves: firstDay });
    const { ready, got } = kept([late, trip('T2', ['V2'], { order: 2, leaves: today - 1 })]);
    // Back today, turned round tomorrow.
    expect(ready.problem.crews[0]!.freeFrom).toBe(2);
    expect(got.past[0]![0]!.back).toBe(today);
    expect(got.overdue).toEqual(['T1', 'T2']);
    expect(kept([trip('T2', ['V2'], { leaves: today })]).got.overdue).toEqual([]);
  });

  it('asks of a trip that should have left until somebody answers: that its days are made anew is no answer', () => {
    const late = { leaves: today - 4, back: today + 1 };
    const { ready, got } = kept([trip('T1', ['V1'], late), trip('T2', ['V2'], { order: 2, leaves: today + 6 })]);
    const { planTrips } = rowsOfPlan(ready.problem, got.plan, evaluatePlan(ready.problem, got.plan), got);
    expect(planTrips.map(({ tripId, leaves, back }) => [tripId, leaves, back])).toEqual([
      ['T1', isoDay(today - 4), isoDay(today + 1)],
      ['T2', expect.stringMatching(/^\d{4}-/), expect.stringMatching(/^\d{4}-/)],
    ]);
    // Not yet: it leaves no earlier than a day that has not gone by, and then its days are worked out.
    for (const notBefore of [today, today + 3]) {
      const told = kept([trip('T1', ['V1'], { ...late, notBefore })]);
      expect(told.got.overdue).toEqual([]);
      const rows = rowsOfPlan(
        told.ready.problem,
        told.got.plan,
        evaluatePlan(told.ready.problem, told.got.plan),
        told.got,
      );
      expect(rows.planTrips[0]!['leaves']! >= isoDay(notBefore)).toBe(true);
    }
    expect(kept([trip('T1', ['V1'], { ...late, notBefore: today - 1 })]).got.overdue).toEqual(['T1']);
  });

  it('asks no more of a trip whose id stands for another crew or other stops: it has the days of its own', () => {
    const late = { leaves: today - 4, back: today + 1 };
    const rollout = { crews: [crew('A'), crew('B')] };
    const { ready, got } = kept([trip('T1', ['V1', 'V2'], late)], {}, rollout);
    const jobs = got.plan.trips[0]![0]!.stops;
    const plans = { same: [[jobs], []], turned: [[[...jobs].reverse()], []], fewer: [[jobs.slice(0, 1)], []] };
    for (const [name, stops] of Object.entries({ ...plans, other: [[], [jobs]] })) {
      const planned = {
        trips: stops.map((own) => own.map((one) => ({ stops: one, notBefore: 0, isLocked: false }))),
      };
      const tripIds = stops.map((own) => own.map(() => 'T1'));
      const outcome = evaluatePlan(ready.problem, planned);
      const [row] = rowsOfPlan(ready.problem, planned, outcome, { ...got, tripIds }).planTrips;
      const isAsked = row!['leaves'] === isoDay(today - 4) && row!['back'] === isoDay(today + 1);
      expect([name, row!['tripId'], isAsked]).toEqual([name, 'T1', name === 'same']);
      expect([name, isAsked || row!['leaves']! >= isoDay(today)]).toEqual([name, true]);
    }
  });

  it('counts what a trip that is back handed over; what it did not waits for a place', () => {
    const done = trip('T1', ['V1', 'V2'], { leftOn: firstDay, backOn: today - 1 });
    const { ready, got } = kept([done, trip('T2', ['V3', 'V1'], { order: 2 })], { V1: firstDay + 2 });
    expect(reasons(ready)).toEqual([['V1', 'handedOver']]);
    expect(ready.problem.crews[0]).toMatchObject({ done_count: 1, freeFrom: 1 });
    expect(got.past[0]![0]).toMatchObject({ state: 'done', back: today - 1, stops: [{ handOver: firstDay + 2 }, {}] });
    expect(got.notPlaced).toEqual(['V2']);
    expect(got.dropped).toEqual([{ tripId: 'T2', siteId: 'V1', reason: 'handedOver' }]);
    expect(got.problems.map(({ code, facts }) => [code, facts])).toEqual([
      ['rollout.not_handed_over', { trip: 'T1', sites: ['V2'], count: 1 }],
    ]);
  });

  it('takes a day still to come as not having happened, and tells two trips of a crew that are under way at once', () => {
    const trips = [
      trip('T1', ['V1'], { leftOn: today + 2 }),
      trip('T2', ['V2'], { order: 2, leftOn: today - 2 }),
      trip('T3', ['V3'], { order: 3, leftOn: today - 3, backOn: today + 3 }),
    ];
    const { ready, got } = kept(trips);
    expect(got.tripIds).toEqual([['T1']]);
    // The one of the two that is back last: on Saturday; Sunday it rests, on Monday it turns round.
    expect(got.past[0]!.map(({ tripId, back }) => [tripId, back])).toEqual([
      ['T3', today + 3],
      ['T2', today],
    ]);
    expect(ready.problem.crews[0]!.freeFrom).toBe(6);
    expect(codes(got.problems).sort()).toEqual(['rollout.left_after_today', 'rollout.two_under_way']);
  });

  it('takes a trip that came back as gone even where nobody says when it left', () => {
    const { got } = kept([trip('T1', ['V1'], { backOn: today - 1, leaves: firstDay })], { V1: firstDay + 3 });
    expect(got.past[0]![0]).toMatchObject({ state: 'done', leftOn: firstDay });
  });

  it('knows of the plan in force where its crews are, and which sites are being done, for a plan beside it too', () => {
    const away = trip('T1', ['V1'], { leftOn: today - 2, back: today + 2 });
    const beside = plan([trip('T1', ['V2']), { ...away, tripId: 'T9' }], { planId: 'Q', isInForce: false });
    const only = plan([trip('T1', ['V2', 'V1'])], { planId: 'R', isInForce: false });
    const facts = programme({ plans: [plan([away]), beside, only] });
    for (const planId of ['Q', 'R']) {
      const ready = readyRollout(facts, sites('V1', 'V2'), { today, planId });
      expect(reasons(ready)).toEqual([['V1', 'underWay']]);
      // The same trip in two plans is one.
      expect(ready.problem.crews[0]).toMatchObject({ freeFrom: 4 });
      const got = keptPlan(ready, facts, planId, today)!;
      expect(got.dropped).toEqual(planId === 'Q' ? [] : [{ tripId: 'T1', siteId: 'V1', reason: 'underWay' }]);
      expect(got.past.flat()).toHaveLength(planId === 'Q' ? 1 : 0);
    }
  });

  it('keeps the trips of a crew that is not planned with, and gives their sites no place', () => {
    const rollout = { crews: [crew('A', { base: 'nowhere' }), crew('B')] };
    const { ready, got } = kept([trip('T1', ['V1', 'V2'])], {}, rollout);
    expect(got.notPlaced).toEqual(['V1', 'V2', 'V3']);
    expect(got.problems.map(({ code }) => code)).toEqual(['rollout.trips_without_crew']);
    // One of the two goes with the other crew now; the rest of the trip stays.
    const planned = { trips: [[{ stops: [1], notBefore: 0, isLocked: false }]] };
    const { planTrips, planStops } = rowsOfPlan(ready.problem, planned, null, got);
    expect(planTrips.map(({ tripId, crewId }) => [tripId, crewId])).toEqual([
      ['T001', 'B'],
      ['T1', 'A'],
    ]);
    expect(planStops.map(({ siteId, tripId }) => [siteId, tripId])).toEqual([
      ['V2', 'T001'],
      ['V1', 'T1'],
    ]);
  });

  it('has nothing of a plan that is not there, and plans as if there were none', () => {
    const facts = programme();
    const ready = readyRollout(facts, sites('V1'), { today: firstDay, planId: 'gone' });
    expect(ready.problem).toMatchObject({ firstDay, crews: [{ freeFrom: 0, done_count: 0 }] });
    expect(keptPlan(ready, facts, 'gone', firstDay)).toBeNull();
  });

  it('no longer has in its store what trips took since it was counted', () => {
    const under = trip('T1', ['V1'], { leftOn: firstDay + 7 });
    const done = trip('T2', ['V2'], { leftOn: firstDay, backOn: firstDay + 4, order: 0 });
    const arrivals = [arrival('A1', firstDay + 2, 1), arrival('A2', firstDay + 20, 4)];
    const { ready } = kept([under, done], { V2: firstDay + 2 }, { arrivals });
    // Two lay there, one came, two were taken: one is left for V3, so nothing is short.
    expect(ready.problem.goods).toEqual([]);
    const short = kept([under, done], { V2: firstDay + 2 }, { arrivals: arrivals.slice(1) }).ready.problem;
    expect(short.stores[0]!.arrivals.map(({ day, quantity_count }) => [day, quantity_count])).toEqual([[11, 4]]);
    // Two were taken, and one was there.
    const over = kept([under, done], { V2: firstDay + 2 }, { arrivals: arrivals.slice(1) }, 1).ready;
    expect(over.problem.stores[0]!.arrivals.map(({ day }) => day)).toEqual([11]);
    expect(over.problems.find(({ code }) => code === 'rollout.stock_overdrawn')?.facts).toEqual({
      ...{ part: 'tank', store: 'town', taken: 2, there: 1 },
    });
  });
});

describe('carriers that are away', () => {
  const away = (rest: Partial<CarrierAway> = {}): CarrierAway => ({
    ...{ awayId: 'X', carrierId: 'boat', carriers_count: 1, from: firstDay + 3, to: firstDay + 12, reason: 'engine' },
    ...rest,
  });
  const rollout = (carriersAway: readonly CarrierAway[], more: Partial<RolloutFacts> = {}) =>
    readyRollout(programme({ carriersAway, ...more }), sites('V1', 'V2'), { today: firstDay }).problem;

  it('keep a crew at home that is the only one to use them', () => {
    const problem = rollout([away()]);
    expect(problem.pools).toEqual([
      { carrierId: 'boat', carriers_count: 1, away: [{ from: 3, to: 12, carriers_count: 1 }] },
    ]);
    const trips = [[0], [1]].map((stops) => ({ stops, notBefore: 0, isLocked: false }));
    const [first, second] = evaluatePlan(problem, { trips: [trips] }).trips[0]!;
    // Two hours there, two days of work, two hours back: three days, and back before the boat is away.
    expect([first!.leaves, first!.nights_count]).toEqual([0, 2]);
    // Then it waits until the boat is there again, on the 13th day, a Sunday: on the 14th it goes.
    expect([second!.leaves, second!.waitsFor]).toEqual([14, 'carrier']);
  });

  it('are no matter where enough are left, where they are back before, or where nobody uses them', () => {
    expect(rollout([away({ carrierId: 'truck' })]).pools).toEqual([]);
    expect(rollout([away({ from: firstDay - 9, to: firstDay - 1 })]).pools).toEqual([]);
    expect(rollout([away({ from: firstDay + 60, to: null })]).pools).toEqual([]);
    expect(rollout([away({ to: null })]).pools[0]!.away).toEqual([{ from: 3, to: 59, carriers_count: 1 }]);
  });

  it('go with the trip that is under way as long as it is', () => {
    const crews = [crew('A'), crew('B')];
    const trips = [trip('T1', ['V1'], { leftOn: firstDay + 7, back: firstDay + 11 })];
    const { ready } = kept(trips, {}, { crews });
    expect(ready.problem.pools).toEqual([
      { carrierId: 'boat', carriers_count: 1, away: [{ from: 0, to: 2, carriers_count: 1 }] },
    ]);
  });

  it('fill no store meanwhile', () => {
    const facts = programme({
      places: [
        ...programme().rollout.places,
        { ...programme().rollout.places[0]!, placeId: 'shed', filledFrom: 'town', filledBy: 'truck' },
      ],
      ways: [...programme().rollout.ways, way('R', 'town', 'shed', 'road', 2)],
      crews: [crew('A', { store: 'shed', base: 'shed', carrierIds: ['boat'] })],
      carriersAway: [away({ carrierId: 'truck' })],
    });
    const { problem } = readyRollout(facts, sites('V1'), { today: firstDay });
    const { filledBy } = problem.stores.find((store) => store.filledBy !== null)!;
    expect(problem.pools[filledBy!.pool!]).toMatchObject({ carrierId: 'truck', away: [{ from: 3 }] });
  });
});
