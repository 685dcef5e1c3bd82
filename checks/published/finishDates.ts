import { seededDice } from '../../packages/engine/src/kernel/index.ts';
import {
  type Distribution,
  finishDates,
  latestOf,
  lognormalOfMean,
  lognormalOfShares,
  quantileRanks,
  type RolloutProblem,
  spreadDraw,
  spreadMoments,
  spreadOf,
  spreadQuantile,
} from '../../packages/engine/src/programme/rollout/index.ts';
import type { PublishedFile, PublishedRow } from './published.ts';

const asked = { low: 2, likely: 3, high: 8 };
const pert = spreadOf(asked, 'pert');
const triangular = spreadOf(asked, 'triangular');
const byMean = lognormalOfMean(3, 0.4);
const byShares = lognormalOfShares(3, 5);
const inputs = { low: 2, likely: 3, high: 8 };

const shapes = pert as { readonly alpha: number; readonly beta: number };
const logSd = (spread: Distribution) => (spread as { readonly logSd: number }).logSd;

const row = (place: string, printed: string, got: () => number, more: Partial<PublishedRow> = {}): PublishedRow => ({
  ...{ place, inputs, printed, got },
  ...more,
});

const moments = { method: 'spreadMoments' };
const quantiles = { method: 'spreadQuantile' };

/** Formulas of scipy, run with version 1.17.1. */
export const spreads: PublishedFile = {
  source: 'scipy',
  method: 'spreadOf',
  rows: [
    row('PERT(2, 3, 8): first shape', '1.6667', () => shapes.alpha),
    row('PERT(2, 3, 8): second shape', '4.3333', () => shapes.beta),
    row('beta(5/3, 13/3, loc=2, scale=6).mean()', '3.6667', () => spreadMoments(pert).mean, moments),
    row('beta(5/3, 13/3, loc=2, scale=6).var()', '1.03175', () => spreadMoments(pert).variance, moments),
    row('beta(5/3, 13/3, loc=2, scale=6).ppf(0.5)', '3.51172', () => spreadQuantile(pert, 0.5), quantiles),
    row('beta(5/3, 13/3, loc=2, scale=6).ppf(0.9)', '5.11161', () => spreadQuantile(pert, 0.9), quantiles),
    row('triang(1/6, loc=2, scale=6).mean()', '4.3333', () => spreadMoments(triangular).mean, moments),
    row('triang(1/6, loc=2, scale=6).var()', '1.72222', () => spreadMoments(triangular).variance, moments),
    row('triang(1/6, loc=2, scale=6).ppf(0.5)', '4.12702', () => spreadQuantile(triangular, 0.5), quantiles),
    row('triang(1/6, loc=2, scale=6).ppf(0.9)', '6.26795', () => spreadQuantile(triangular, 0.9), quantiles),
    row('lognorm of mean 3, CV 0.4: s', '0.385253', () => logSd(byMean), {
      inputs: { mean: 3, cv: 0.4 },
      method: 'lognormalOfMean',
    }),
    row('lognorm of mean 3, CV 0.4: ppf(0.5)', '2.78543', () => spreadQuantile(byMean, 0.5), {
      ...quantiles,
      inputs: { mean: 3, cv: 0.4 },
    }),
    row('lognorm of mean 3, CV 0.4: ppf(0.9)', '4.56366', () => spreadQuantile(byMean, 0.9), {
      ...quantiles,
      inputs: { mean: 3, cv: 0.4 },
    }),
    row('lognorm of P50 3, P90 5: s', '0.398599', () => logSd(byShares), {
      inputs: { p50: 3, p90: 5 },
      method: 'lognormalOfShares',
    }),
    row('lognorm of P50 3, P90 5: mean()', '3.24804', () => spreadMoments(byShares).mean, {
      ...moments,
      inputs: { p50: 3, p90: 5 },
    }),
  ],
};

const draws = 100_000;
const drawn = new Map<string, Float64Array>();

/** Draws of a sum of so many of a distribution, kept: the same for every row. */
function sums(name: string, spread: Distribution, terms: number): Float64Array {
  const found = drawn.get(name);
  if (found) return found;
  const dice = seededDice(20261126);
  const made = Float64Array.from({ length: draws / terms }, () => {
    let sum = 0;
    for (let term = 0; term < terms; term++) sum += spreadDraw(spread, dice);
    return sum;
  });
  drawn.set(name, made);
  return made;
}

const meanOf = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / values.length;
const varianceOf = (values: Float64Array) => {
  const mean = meanOf(values);
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
};
const shareUnder = (values: Float64Array, limit: number) =>
  values.filter((value) => value <= limit).length / values.length;

/** Rows of one distribution that is drawn: what scipy prints of it, within three standard errors of so many draws. */
function drawnRows(
  name: string,
  spread: Distribution,
  terms: number,
  printed: { mean: string; variance: string; kurtosis: number; p50: number; p90: number },
): readonly PublishedRow[] {
  const n = draws / terms;
  const variance = Number(printed.variance);
  const within = (value: number) => ({ value, reason: `three standard errors of ${n} draws` });
  const method = 'spreadDraw';
  const place = (what: string) => `${name}, ${n} draws: ${what}`;
  const values = () => sums(name, spread, terms);
  return [
    row(place('mean'), printed.mean, () => meanOf(values()), {
      method,
      tolerance: within(3 * Math.sqrt(variance / n)),
    }),
    row(place('variance'), printed.variance, () => varianceOf(values()), {
      ...{ method, tolerance: within(3 * variance * Math.sqrt((printed.kurtosis - 1) / n)) },
    }),
    row(place(`share up to the median, ${printed.p50}`), '0.5', () => shareUnder(values(), printed.p50), {
      ...{ method, tolerance: within(3 * Math.sqrt(0.25 / n)) },
    }),
    row(place(`share up to ppf(0.9), ${printed.p90}`), '0.9', () => shareUnder(values(), printed.p90), {
      ...{ method, tolerance: within(3 * Math.sqrt(0.09 / n)) },
    }),
  ];
}

/** Kurtosis by beta.stats and triang.stats; of a lognormal by its formula; of the sum that of one term a twentieth as far from 3. */
export const drawnSpreads: PublishedFile = {
  source: 'scipy',
  method: 'spreadDraw',
  rows: [
    ...drawnRows('PERT(2, 3, 8)', pert, 1, {
      mean: '3.66667',
      variance: '1.03175',
      kurtosis: 2.9077,
      p50: 3.51172,
      p90: 5.11161,
    }),
    ...drawnRows('triangular(2, 3, 8)', triangular, 1, {
      mean: '4.33333',
      variance: '1.72222',
      kurtosis: 2.4,
      p50: 4.12702,
      p90: 6.26795,
    }),
    ...drawnRows('lognormal, mean 3, CV 0.4', byMean, 1, {
      mean: '3',
      variance: '1.44',
      kurtosis: 5.97,
      p50: 2.78543,
      p90: 4.56366,
    }),
    ...drawnRows('20 of PERT(2, 3, 8) (beta.cdf, convolved)', pert, 20, {
      mean: '73.3333',
      variance: '20.6349',
      kurtosis: 2.9954,
      p50: 73.221,
      p90: 79.2345,
    }),
  ],
};

const rank = (place: string, printed: string, count: number, p: number, end: 'from' | 'to'): PublishedRow => ({
  ...{ place, printed, inputs: { count, p } },
  got: () => quantileRanks(count, p)[end],
});

export const ranksOfDraws: PublishedFile = {
  source: 'scipy',
  method: 'quantileRanks',
  rows: [
    rank('binom.ppf(0.025, 2000, 0.9)', '1773', 2000, 0.9, 'from'),
    rank('binom.ppf(0.975, 2000, 0.9)', '1826', 2000, 0.9, 'to'),
    rank('binom.ppf(0.025, 2000, 0.5)', '956', 2000, 0.5, 'from'),
    rank('binom.ppf(0.975, 2000, 0.5)', '1044', 2000, 0.5, 'to'),
    rank('binom.ppf(0.025, 2000, 0.1)', '174', 2000, 0.1, 'from'),
    rank('binom.ppf(0.975, 2000, 0.1)', '227', 2000, 0.1, 'to'),
  ],
};

export const latestOfCrews: PublishedFile = {
  source: 'scipy',
  method: 'latestOf',
  rows: [
    [2, 0.5, '105.45'] as const,
    [2, 0.9, '116.32'] as const,
    [6, 0.5, '112.31'] as const,
    [6, 0.9, '121.11'] as const,
  ].map(([crews, p, printed]) => ({
    place: `latest of ${crews} of norm(100, 10): norm.ppf(${p} ** (1 / ${crews}))`,
    ...{ inputs: { crews, p, mean_day: 100, sd_days: 10 }, printed },
    got: () =>
      latestOf(
        Array.from({ length: crews }, () => ({ mean_day: 100, sd_days: 10 })),
        p,
      ),
  })),
};

const replicates = 20_000;

/** Twenty days of work at the base of a crew, in an area that weather closes by a chain that is the same in every month. */
// long: one rollout written out
function twentyDays(afterOpen: number, afterClosed: number) {
  const horizon_days = 150;
  const zero = () => new Float32Array(4);
  const problem: RolloutProblem = {
    ...{
      firstDay: 20_454,
      horizon_days,
      placeIds: ['B'],
      periods: [{ from: 0 }],
      goods: [],
      pools: [],
      areaIds: ['A'],
    },
    jobs: [
      {
        ...{
          siteId: 'S',
          people: 1,
          weight: 1,
          install_days: { low: 20, likely: 20, high: 20 },
          finishBy: null,
          area: 0,
        },
        ...{ windows: [{ from: 0, to: horizon_days - 1 }], kg: 0, litres: 0, longest_m: 0, needs: [], skills: 0 },
        ...{ serviceWait_days: new Float64Array(366), serviceWaits: null },
      },
    ],
    crews: [
      {
        ...{ crewId: 'C', base: 0, store: 0, travel: 0, skills: 0, works: new Uint8Array(horizon_days).fill(1) },
        ...{ work_h_per_day: 8, mostDaysAway: Number.POSITIVE_INFINITY, maySleepAtSites: true, freeFrom: 0 },
        ...{ pace_factor: 1, turnaround_days: 0, cost_per_day: 0, limit_kg: 1, limit_L: 1, longest_m: 1, pools: [] },
        done_count: 0,
      },
    ],
    travels: [
      {
        nodes: 2,
        byPeriod: [
          {
            ...{ landBefore_h: zero(), river_h: zero(), landAfter_h: zero(), cost: zero(), fuel_L: zero() },
            ...{ limitOf: new Uint16Array(4), areaOf: new Uint8Array(4) },
            limits: [{ kg: 1, litres: 1, longest_m: 1, porters_count: 0 }],
          },
        ],
      },
    ],
    stores: [{ node: 0, arrivals: [], filledBy: null }],
    ...{ learning_fraction: 1, riverEnds_h: 8, fuelPrice_per_L: 0 },
  };
  const plan = { trips: [[{ stops: [0], notBefore: 0, isLocked: false }]] };
  const chain = {
    afterOpen_fraction: new Array<number>(12).fill(afterOpen),
    afterClosed_fraction: new Array<number>(12).fill(afterClosed),
  };
  return finishDates(problem, plan, { seed: 7, replicates_count: replicates, weather: [{ days: null, chain }] }).finish;
}

const finishes = new Map<string, ReturnType<typeof twentyDays>>();
const finishOf = (afterOpen: number, afterClosed: number) => {
  const key = `${afterOpen} ${afterClosed}`;
  const found = finishes.get(key) ?? twentyDays(afterOpen, afterClosed);
  finishes.set(key, found);
  return found;
};

function openDays(
  name: string,
  a: number,
  c: number,
  printed: readonly [string, string, string, string],
  fourth: number,
): readonly PublishedRow[] {
  const [mean, variance, p50, p90] = printed;
  const square = Number(variance);
  const within = (value: number) => ({ value, reason: `three standard errors of ${replicates} replicates` });
  const one = (what: string, figure: string, got: () => number, more: Partial<PublishedRow> = {}) => ({
    ...{ place: `${name}: ${what} of the days it takes`, inputs: { workDays: 20, a, c }, printed: figure, got },
    ...more,
  });
  return [
    one('mean', mean, () => finishOf(a, c).mean_day + 1, { tolerance: within(3 * Math.sqrt(square / replicates)) }),
    one('variance', variance, () => finishOf(a, c).sd_days ** 2, {
      tolerance: within(3 * square * Math.sqrt((fourth - 1) / replicates)),
    }),
    one('P50', p50, () => finishOf(a, c).p50.value + 1),
    one('P90', p90, () => finishOf(a, c).p90.value + 1),
  ];
}

/** Each day open with chance 0.8: scipy's nbinom(20, 0.8), kurtosis 3 + 6/20 + 1/6.25. */
export const openDaysAlone: PublishedFile = {
  source: 'scipy',
  method: 'finishDates',
  rows: openDays(
    '20 days of work, days open with chance 0.8: 20 + nbinom(20, 0.8)',
    0.2,
    0.2,
    ['25', '6.25', '25', '28'],
    3.46,
  ),
};

/**
 * The same share of closed days, but in spells. Mean: 20 + π/(1 − c) + 19 a/(1 − c), π = a/(1 + a − c); variance, kurtosis and quantiles by adding up the chain's days one by one.
 */
export const openDaysInSpells: PublishedFile = {
  source: 'derived-open-days',
  method: 'finishDates',
  rows: openDays(
    '20 days of work, a = 0.1, c = 0.6, stationary start',
    0.1,
    0.6,
    ['25.25', '19.5625', '24', '31'],
    5.04,
  ),
};
