import { describe, expect, it } from 'vitest';
import type { RolloutFacts, WorkingLine } from './kernel/index.ts';
import {
  areaWorking,
  boundWorking,
  differenceWorking,
  evaluatePlan,
  finishDates,
  finishWorking,
  planChanges,
  planCostWorking,
  retiming,
  stockCurves,
  stockWorking,
  waitingBounds,
  waitingByGroup,
  waitingWorking,
} from './programme/rollout/index.ts';
import { arrival, crew, firstDay, place, programme, sites, way, work } from './programmeRollout.testing.ts';
import { readyRollout } from './programmeRollout.ts';
import { tripLegs } from './programmeRolloutTrips.ts';
import { serviceWorking } from './programmeRolloutWorking.ts';

type Inputs = Readonly<Record<string, number>>;

/** Each figure again from what stands in its line: written from docs/methods/rollout.md. */
const again: Readonly<Record<string, (input: Inputs, all: readonly WorkingLine[]) => number>> = {
  'rollout.crewFree': ({ freeFrom, backAgain, turnaround = 0, restDays = 0 }) =>
    Math.ceil((freeFrom ?? backAgain! + turnaround) + restDays - 1e-9),
  'rollout.leaves': ({ crewFree, waitedDays = 0 }) => crewFree! + waitedDays,
  'rollout.arrives': ({ setsOut, hoursOnWay, hoursADay, restDays = 0, stoodDays = 0 }) =>
    setsOut! + hoursOnWay! / hoursADay! + restDays + stoodDays,
  'rollout.learnt': ({ nthJob, learning }) => nthJob! ** Math.log2(learning!),
  'rollout.workDays': ({ installDays, paceOfCrew, learntFactor }) => installDays! * paceOfCrew! * learntFactor!,
  'rollout.starts': ({ arrivesAt, opensOn = 0, restDays = 0 }) =>
    restDays > 0 ? Math.floor(Math.max(arrivesAt!, opensOn)) + restDays : Math.max(arrivesAt!, opensOn),
  'rollout.ends': ({ startsAt, daysOfWork, restDays = 0 }) => startsAt! + daysOfWork! + restDays,
  'rollout.handOver': ({ workEnds }) => Math.ceil(workEnds! - 1e-9) - 1,
  'rollout.firstService': ({ handedOver, waitForRain }) => handedOver! + waitForRain!,
  'rollout.siteWaits': ({ waitingPeople, waitingDays }) => waitingPeople! * waitingDays!,
  'rollout.waits': (_, all) => sumOf(all, 'rollout.siteWaits'),
  'rollout.meanWait': ({ totalWaiting, waitingPeople }) => totalWaiting! / waitingPeople!,
  'rollout.weighedWaits': (_, all) =>
    all
      .filter(({ code }) => code === 'rollout.siteWaits')
      .reduce((sum, { value, inputs }) => sum + (value as number) * (numbersOf(inputs)['priority'] ?? 1), 0),
  'rollout.gap': ({ weighedWaiting, bestBound }) => weighedWaiting! / bestBound! - 1,
  'rollout.bound': (_, all) =>
    Math.max(...all.flatMap(({ code, value }) => (/rollout.bound[A-Z]/.test(code) ? [value as number] : []))),
  'rollout.tripCost': ({ daysOut, costOfDay, fares, fuelBurnt, fuelPrice }) =>
    daysOut! * costOfDay! + fares! + fuelBurnt! * fuelPrice!,
  'rollout.haulCost': ({ costOfHaul, fuelOfHaul, fuelPrice }) => costOfHaul! + fuelOfHaul! * fuelPrice!,
  'rollout.cost': (_, all) => sumOf(all, 'rollout.tripCost') + sumOf(all, 'rollout.haulCost'),
  'rollout.siteDiffers': ({ waitingPeople, daysUnderFirst, daysUnderSecond }) =>
    waitingPeople! * (daysUnderSecond! - daysUnderFirst!),
  'rollout.fuel': ({ fuelOfTrips, fuelOfHauls }) => fuelOfTrips! + fuelOfHauls!,
  'rollout.differs': ({ underFirst, underSecond }) => underSecond! - underFirst!,
  'rollout.stock': (_, all) => sumOf(all, 'rollout.stockComes') - sumOf(all, 'rollout.stockGoes'),
};

const sumOf = (all: readonly WorkingLine[], wanted: string) =>
  all.reduce((sum, { code, value }) => (code === wanted ? sum + (value as number) : sum), 0);
const numbersOf = (inputs: WorkingLine['inputs']): Inputs =>
  Object.fromEntries(inputs.flatMap(({ name, value }) => (typeof value === 'number' ? [[name, value]] : [])));

const planOf = (inputs: WorkingLine['inputs']) => inputs.find(({ name }) => name === 'ofPlan')?.value;

/** The value of the line that was asked for; every line of the working comes out again from its inputs. */
function figureOf(lines: readonly WorkingLine[], wanted: string): number {
  for (const { code, inputs, value } of lines) {
    // Of two plans each adds up its own.
    const own = lines.filter((line) => planOf(line.inputs) === planOf(inputs));
    const found = again[code]?.(numbersOf(inputs), own);
    if (found !== undefined) expect([code, found]).toEqual([code, expect.closeTo(value as number, 4)]);
  }
  return lines.findLast(({ code }) => code === wanted)!.value as number;
}

const rollout: Partial<RolloutFacts> = {
  places: [place('town'), place('store')],
  ways: [
    way('R', 'town', 'store', 'foot', 3),
    way('W1', 'store', 'V1', 'river', 2),
    way('W2', 'V1', 'V2', 'river', 5),
    way('W3', 'V2', 'V3', 'foot', 12),
  ],
  crews: [crew('A', { store: 'store', pace_factor: 1.25, restDays: [0, 3], mostDaysAway: null })],
  arrivals: [{ ...arrival('A1', firstDay + 9, 3), store: 'store' }],
  work: [
    work('V1', { area: 'near', install_days: { low: 1, likely: 1.5, high: 4 } }),
    work('V2', { area: 'far', priority_factor: 3, readyFrom: firstDay + 24 }),
    work('V3', { area: 'far', finishBy: firstDay + 3 }),
  ],
};

function timed(order: readonly (readonly string[])[] = [['V1', 'V3'], ['V2']]) {
  const facts = programme(rollout, { learning_fraction: 0.9, riverEnds_h: 6 });
  const ready = readyRollout(facts, sites('V1', 'V2', 'V3'), { today: firstDay });
  const { problem } = ready;
  const stops = (...ids: readonly string[]) => ids.map((id) => problem.jobs.findIndex(({ siteId }) => siteId === id));
  const plan = {
    trips: [order.map((ids) => ({ stops: stops(...ids), notBefore: 0, isLocked: false }))],
  };
  const outcome = evaluatePlan(retiming(problem), plan);
  return { ready, problem, plan, outcome };
}

const names = {
  siteOf: (job: number) => `site ${job}`,
  areaOf: (job: number) => (job === 0 ? 'near' : 'far'),
  crewOf: (crewAt: number) => `crew ${crewAt}`,
  tripOf: (crewAt: number, trip: number) => `trip ${crewAt} ${trip}`,
  ...{ storeOf: () => 'store', partOf: () => 'tank', currency: 'EUR' },
};

describe('workings of a rollout', () => {
  it('come to the day on which each village drinks', () => {
    const { ready, problem, plan, outcome } = timed();
    const futures = finishDates(problem, plan, { seed: 1, replicates_count: 50 });
    const seen = new Set<string>();
    for (const [trip, { stops }] of outcome.trips[0]!.entries())
      for (const { job, serviceDay, handOverDay } of stops) {
        const asked = { crew: 0, trip, job, legs: tripLegs(ready, outcome, 0, trip), futures, names };
        const lines = serviceWorking({ problem, plan, outcome }, asked);
        expect(figureOf(lines, 'rollout.handOver')).toBe(handOverDay);
        expect(figureOf(lines, 'rollout.firstService')).toBe(serviceDay);
        const { service } = futures.bySite.find((one) => one.job === job)!;
        expect(figureOf(lines, 'rollout.nineInTen')).toBe(service.p90.value);
        for (const { code } of lines) seen.add(code);
      }
    expect(seen).toContain('rollout.starts');
    expect(seen).toContain('rollout.learnt');
  });

  it('end with the hand-over where nobody knows how long it waits for rain', () => {
    const { ready, problem, plan, outcome } = timed();
    const dry = { ...problem, jobs: problem.jobs.map((job) => ({ ...job, serviceWaits: null })) };
    const futures = finishDates(dry, plan, { seed: 1, replicates_count: 50 });
    const { job, handOverDay } = outcome.trips[0]![1]!.stops[0]!;
    const asked = { crew: 0, trip: 1, job, legs: tripLegs(ready, outcome, 0, 1), futures, names };
    const lines = serviceWorking({ problem: dry, plan, outcome }, asked);
    expect(lines.at(-1)).toMatchObject({ code: 'rollout.handOver', value: handOverDay });
    expect(lines.map(({ code }) => code)).not.toContain('rollout.firstService');
  });

  it('tell hours, rest and waiting of a leg apart', () => {
    const { ready, problem, plan, outcome } = timed();
    const { job } = outcome.trips[0]![1]!.stops[0]!;
    const asked = { crew: 0, trip: 1, job, legs: tripLegs(ready, outcome, 0, 1), futures: null, names };
    const [leg] = serviceWorking({ problem, plan, outcome }, asked).filter(({ code }) => code === 'rollout.arrives');
    // Three hours on foot; on the next morning two by river and no time for five more, which are gone on the third: five hours and six that nobody used.
    expect(numbersOf(leg!.inputs)).toMatchObject({ hoursOnWay: 10, hoursADay: 8 });
    const from = outcome.trips[0]![1]!.leaves;
    expect(numbersOf(leg!.inputs)['setsOut']).toBe(from);
    expect(numbersOf(leg!.inputs)['stoodDays'] ?? 0).toBeCloseTo(11 / 8, 6);
  });

  it('come to the waiting, its bound, the cost and what all wait for', () => {
    const all = timed();
    const { problem, plan, outcome, ready } = all;
    expect(figureOf(waitingWorking(all, names), 'rollout.waits')).toBe(outcome.waiting_personDays);
    const areas = waitingWorking(all, names).filter(({ code }) => code === 'rollout.areaWaits');
    expect(sumOf(areas, 'rollout.areaWaits')).toBe(outcome.waiting_personDays);
    const bounds = waitingBounds(problem, { solve: null, mostColumns: 100 })!;
    const gap = figureOf(boundWorking(all, bounds, names), 'rollout.gap');
    expect(gap).toBeCloseTo(outcome.waiting / bounds.best.waiting - 1, 9);
    expect(gap).toBeGreaterThan(0);
    const lines = planCostWorking(all, names);
    expect(figureOf(lines, 'rollout.cost')).toBeCloseTo(outcome.cost, 6);
    for (const [trip, { inputs }] of lines.filter(({ code }) => code === 'rollout.tripCost').entries()) {
      const fares = tripLegs(ready, outcome, 0, trip).reduce((sum, leg) => sum + leg.way!.cost_amount, 0);
      expect(numbersOf(inputs)['fares']).toBeCloseTo(fares, 3);
    }
    const [last] = finishWorking(all, null, names);
    expect(last!.value).toBe(Math.max(...outcome.trips[0]!.flatMap(({ stops }) => stops.map((one) => one.serviceDay))));
    for (const { store, goods, points } of stockCurves(problem, plan, outcome))
      for (const { day, left_count } of points)
        expect(figureOf(stockWorking(all, { store, goods, day }, names), 'rollout.stock')).toBe(left_count);
  });

  it('come to what two plans differ in', () => {
    const a = { ...timed(), name: 'far last', names };
    const b = { ...timed([['V2'], ['V3'], ['V1']]), name: 'far first', names };
    const { finish_days, waiting_personDays, cost } = planChanges(a, b);
    const trips = { finish: finish_days, waiting: waiting_personDays, cost, fuel: b.outcome.fuel_L - a.outcome.fuel_L };
    for (const [of, value] of Object.entries({ ...trips, trips: 1 })) {
      const lines = differenceWorking(of as keyof typeof trips, a, b);
      expect([of, figureOf(lines, 'rollout.differs')]).toEqual([of, expect.closeTo(value, 9)]);
    }
    // Each plan's own lines come to what stands in the difference; of the waiting, sites come to all of it.
    const own = differenceWorking('cost', a, b).flatMap(({ code, value }) => (code === 'rollout.cost' ? [value] : []));
    expect(own).toEqual([a.outcome.cost, b.outcome.cost]);
    expect(sumOf(differenceWorking('waiting', a, b), 'rollout.siteDiffers')).toBeCloseTo(waiting_personDays, 6);
    expect(waiting_personDays).not.toBe(0);
    expect(differenceWorking('waiting', a, a).map(({ value }) => value)).toEqual([0]);
  });

  it('come to what a person of one area waits', () => {
    const all = timed();
    const { problem, outcome } = all;
    for (const { group, mean_days } of waitingByGroup(problem, outcome, names.areaOf))
      expect(figureOf(areaWorking(all, group, names), 'rollout.meanWait')).toBeCloseTo(mean_days, 9);
    expect(areaWorking(all, 'far', names).filter(({ code }) => code === 'rollout.siteWaits')).toHaveLength(2);
    expect(areaWorking(all, 'nowhere', names)).toEqual([]);
  });
});
