import { describe, expect, it } from 'vitest';
import type { RolloutPlan, RolloutProblem } from '../problem.ts';
import { tinyCrew, tinyJob, tinyRollout } from '../tinyRollout.testing.ts';
import { type FinishBudget, finishDates, pertFinish } from './index.ts';

const trip = (...stops: number[]) => ({ stops, notBefore: 0, isLocked: false });
const doubtful = { ...tinyJob, install_days: { low: 1, likely: 2, high: 6 } };
/** Six crews with five sites each, on a trip each; names as numbers. */
const six: RolloutProblem = tinyRollout(30, {
  jobs: Array.from({ length: 30 }, (_, at) => ({ ...doubtful, siteId: `S${at}` })),
  crews: Array.from({ length: 6 }, (_, at) => ({ ...tinyCrew(100), crewId: `C${at}` })),
});
const plan: RolloutPlan = {
  trips: Array.from({ length: 6 }, (_, crew) => Array.from({ length: 5 }, (_, at) => trip(5 * crew + at))),
};
const budget = (after: number): FinishBudget & { told: number[] } => {
  const told: number[] = [];
  return { told, left: () => 1, report: (done) => told.push(done), stopped: () => told.length >= after };
};

describe('finishDates', () => {
  it('gives the day of the plan where nothing is in doubt', () => {
    const sure = tinyRollout(1);
    const found = finishDates(sure, { trips: [[trip(0)]] }, { seed: 1, replicates_count: 200 });
    const day = { value: 1, from: 1, to: 1 };
    expect(found.bySite).toEqual([
      {
        job: 0,
        handOver: { p10: day, p50: day, p90: day },
        service: { p10: day, p50: day, p90: day },
        notDone_fraction: 0,
      },
    ]);
    expect(found.finish).toMatchObject({ p90: day, mean_day: 1, sd_days: 0, notDone_fraction: 0 });
    expect(found.byWeek).toHaveLength(1);
    expect(found.byWeek[0]).toMatchObject({
      untilDay: 6,
      people: { p50: { value: 100 } },
      sites: { p10: { value: 1 } },
    });
    expect(found.cost.p50.value).toBe(34);
  });

  it('throws the same for the same seed, and the first replicates stay when more are asked for', () => {
    const asked = { seed: 5, replicates_count: 400 };
    expect(finishDates(six, plan, asked)).toEqual(finishDates(six, plan, asked));
    expect(finishDates(six, plan, { ...asked, seed: 6 })).not.toEqual(finishDates(six, plan, asked));
    const stopped = budget(4);
    const found = finishDates(six, plan, { seed: 5, replicates_count: 2000, budget: stopped });
    expect([found.replicates_count, found.isWhole, stopped.told]).toEqual([200, false, [0.025, 0.05, 0.075, 0.1]]);
    expect({ ...found, isWhole: true }).toEqual(finishDates(six, plan, { seed: 5, replicates_count: 200 }));
  });

  it('the order in which sites and crews are listed changes nothing', () => {
    const turned = { ...six, jobs: six.jobs.toReversed(), crews: six.crews.toReversed() };
    const trips = plan.trips.toReversed().map((own) => own.map(({ stops }) => trip(...stops.map((job) => 29 - job))));
    const asked = { seed: 5, replicates_count: 300 };
    const [one, other] = [finishDates(six, plan, asked), finishDates(turned, { trips }, asked)];
    expect(other.finish).toEqual(one.finish);
    expect(other.bySite.map(({ handOver }) => handOver)).toEqual(
      one.bySite.toReversed().map(({ handOver }) => handOver),
    );
  });

  it('is later than PERT along the last crew where six may be last, and near the latest of six (merge bias)', () => {
    const { p50, p90 } = finishDates(six, plan, { seed: 3, replicates_count: 4000 }).finish;
    const { ofLastCrew, ofAllCrews } = pertFinish(six, plan, 'pert');
    expect(p50.from).toBeGreaterThan(ofLastCrew.p50_day + 1);
    // Days end in the evening, trips begin in the morning: some two days for five trips.
    expect(Math.abs(p50.value - ofAllCrews.p50_day)).toBeLessThan(2);
    expect(Math.abs(p90.value - ofAllCrews.p90_day)).toBeLessThan(2);
  });

  it('a pace that a crew shares makes the end less sure than paces of single jobs', () => {
    const asked = { seed: 3, replicates_count: 1000 };
    const alone = finishDates(six, plan, asked).finish.sd_days;
    const pace = { kind: 'triangular', low: 0.7, likely: 1, high: 1.3 } as const;
    expect(finishDates(six, plan, { ...asked, pace }).finish.sd_days).toBeGreaterThan(1.2 * alone);
  });

  it('goods that may be late make it later', () => {
    const goods = {
      goods: [{ partId: 'P' }],
      jobs: six.jobs.map((job) => ({ ...job, needs: [1] })),
      stores: [
        {
          ...{ node: 0, filledBy: null },
          arrivals: [0, 20].map((day) => ({
            ...{ arrivalId: `A${day}`, day, goods: 0, quantity_count: 15 },
            slip_days: { low: 0, likely: 0, high: day },
          })),
        },
      ],
    };
    const asked = { seed: 3, replicates_count: 500 };
    const late = finishDates({ ...six, ...goods }, plan, asked).finish;
    const sure = goods.stores.map((store) => ({
      ...store,
      arrivals: store.arrivals.map((one) => ({ ...one, slip_days: { low: 0, likely: 0, high: 0 } })),
    }));
    const early = finishDates({ ...six, ...goods, stores: sure }, plan, asked).finish;
    expect(late.mean_day).toBeGreaterThan(early.mean_day + 1);
  });

  it('tells how often a site is not done within the horizon, and leaves out sites in no trip', () => {
    const short = {
      ...six,
      horizon_days: 18,
      crews: six.crews.map((crew) => ({ ...crew, works: crew.works.slice(0, 18) })),
    };
    const some = { trips: plan.trips.map((own, crew) => (crew === 5 ? own.slice(0, 4) : own)) };
    const found = finishDates(short, some, { seed: 3, replicates_count: 500 });
    expect(found.bySite).toHaveLength(29);
    const last = found.bySite.find(({ job }) => job === 4)!;
    expect(last.notDone_fraction).toBeGreaterThan(0.3);
    expect(last.handOver.p90.value).toBe(18);
    expect(found.finish.notDone_fraction).toBeGreaterThan(last.notDone_fraction);
  });
  it('refuses no replicates, and answers where nothing is planned', () => {
    expect(() => finishDates(six, plan, { seed: 1, replicates_count: 0 })).toThrow(RangeError);
    expect(() => finishDates(six, plan, { seed: 1, replicates_count: Number.NaN })).toThrow(RangeError);
    const none = finishDates(tinyRollout(0), { trips: [[]] }, { seed: 1, replicates_count: 10 });
    expect(none).toMatchObject({ bySite: [], finish: { p90: { value: 0 }, notDone_fraction: 0 } });
    expect(pertFinish(tinyRollout(1), { trips: [[]] }, 'pert').ofAllCrews.p90_day).toBe(0);
  });
});
