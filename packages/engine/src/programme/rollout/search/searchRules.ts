/** How a search goes about it. One set for each kind of problem, written down once, never fitted to one problem. */
export interface SearchRules {
  /** Jobs taken out in one try, on average. */
  readonly removed_count: number;
  /** The longest string taken out of one trip. */
  readonly longestString_count: number;
  /** Chance that some jobs in the middle of a string stay. */
  readonly split_fraction: number;
  /** Chance that one more of them stays. */
  readonly splitDepth_fraction: number;
  /** Chance that a place is passed over. */
  readonly blink_fraction: number;
  /** So many tries in a row begin at jobs beside each other, of so many nearest to one: what they read is near in memory. */
  readonly seedsTogether_count: number;
  /** With fewer jobs than this all of it is near in memory anyway, and every try begins anywhere. */
  readonly seedsTogetherFrom_count: number;
  readonly seedsAround_count: number;
  /** Strings taken out of one trip in a try, at the most. */
  readonly stringsPerTrip_count: number;
  /** Moves tried after each try, of stops within their trips or of whole trips, as the state knows; 0: none. */
  readonly moves_count: number;
  /** Temperature at the start and at the end, × the state's scale of costs. */
  readonly firstTemperature_ratio: number;
  readonly lastTemperature_ratio: number;
  /**
   * Beginnings from nothing, at most so many, and one for each so many tries a job that the budget is good for, judged by the pace of the first
   * tries after this share of it. They share this part of the budget; the rest goes on from the best at this share of the first temperature.
   */
  readonly mostStarts_count: number;
  readonly triesAJobAndStart_count: number;
  readonly paceAfter_fraction: number;
  readonly startsShare_fraction: number;
  readonly gentler_ratio: number;
  /** Orders in which jobs come back, each with its weight. */
  readonly orders: readonly RecreateOrder[];
}

/** One order in which jobs come back: its name, asked of the state, and its weight among the orders. */
export interface RecreateOrder {
  readonly by: string;
  readonly weight_count: number;
}

const removal = {
  removed_count: 10,
  longestString_count: 10,
  split_fraction: 0.5,
  splitDepth_fraction: 0.01,
  blink_fraction: 0.01,
  seedsTogether_count: 128,
  seedsTogetherFrom_count: 400,
  seedsAround_count: 48,
  stringsPerTrip_count: 1,
  moves_count: 0,
  mostStarts_count: 1,
  triesAJobAndStart_count: 6000,
  paceAfter_fraction: 0.02,
  startsShare_fraction: 0.6,
  gentler_ratio: 0.3,
} as const;

/**
 * Trips limited by load, distance counted.
 *
 * @source christiaens-vanden-berghe-2020, strings, split, blinks, orders (from memory); seeds beside each other and temperatures are ours
 */
export const loadRules: SearchRules = {
  ...removal,
  removed_count: 12,
  mostStarts_count: 2,
  triesAJobAndStart_count: 10_000,
  firstTemperature_ratio: 1.5,
  lastTemperature_ratio: 0.05,
  orders: [
    { by: 'random', weight_count: 4 },
    { by: 'demand', weight_count: 4 },
    { by: 'far', weight_count: 2 },
    { by: 'close', weight_count: 1 },
  ],
};

/**
 * Trips limited by load and by windows of time, distance counted.
 *
 * @source christiaens-vanden-berghe-2020, strings, split, blinks, orders (from memory); seeds beside each other and temperatures are ours
 */
export const windowRules: SearchRules = {
  ...removal,
  removed_count: 15,
  mostStarts_count: 4,
  triesAJobAndStart_count: 2500,
  firstTemperature_ratio: 3,
  lastTemperature_ratio: 0.05,
  orders: [
    { by: 'random', weight_count: 4 },
    { by: 'demand', weight_count: 4 },
    { by: 'far', weight_count: 2 },
    { by: 'close', weight_count: 1 },
    { by: 'shortWindow', weight_count: 2 },
    { by: 'opensEarly', weight_count: 2 },
    { by: 'closesLate', weight_count: 2 },
  ],
};

/**
 * Crews with trips of some days that share stock, hauls or carriers, waiting counted.
 *
 * @source christiaens-vanden-berghe-2020, strings, split, blinks (from memory); orders and temperatures are ours
 */
export const sharingRules: SearchRules = {
  ...removal,
  removed_count: 8,
  firstTemperature_ratio: 0.3,
  lastTemperature_ratio: 0.003,
  orders: [
    { by: 'random', weight_count: 3 },
    { by: 'peopleByDay', weight_count: 3 },
    { by: 'people', weight_count: 2 },
    { by: 'far', weight_count: 1 },
    { by: 'close', weight_count: 1 },
  ],
};

/**
 * Crews with trips of some days, each by itself, waiting counted.
 *
 * @source christiaens-vanden-berghe-2020, strings, split, blinks (from memory); orders, removals and temperatures are ours
 */
export const crewRules: SearchRules = {
  ...sharingRules,
  moves_count: 1,
};

/** Temperature × the state's scale of costs where cost is searched for from a good plan on: hardly anything is melted again. Ours. */
export const costTemperature_ratio = 0.03;

/**
 * One long trip a crew, waiting counted: strings lie several to a trip, and stops change their places within it.
 *
 * @source christiaens-vanden-berghe-2020, strings, split, blinks (from memory); moves and temperatures are ours
 */
export const longTripRules: SearchRules = {
  ...crewRules,
  removed_count: 10,
  stringsPerTrip_count: 4,
  moves_count: 150,
  mostStarts_count: 8,
  triesAJobAndStart_count: 150,
  firstTemperature_ratio: 0.15,
  lastTemperature_ratio: 0.015,
};

/**
 * Several crews of one trip each, waiting counted: jobs change crews by strings, and several beginnings spare a run that is caught early.
 *
 * @source christiaens-vanden-berghe-2020, strings, split, blinks (from memory); beginnings and temperatures are ours
 */
export const oneTripRules: SearchRules = {
  ...longTripRules,
  stringsPerTrip_count: 1,
  moves_count: 0,
  firstTemperature_ratio: 1,
  lastTemperature_ratio: 0.01,
};

/**
 * Vehicles that go out several times, limited by load, windows of time and when goods come, distance counted: the rules of windows as they
 * are, since what makes good plans few is the same.
 *
 * @source christiaens-vanden-berghe-2020, strings, split, blinks, orders (from memory); temperatures are ours
 */
export const releaseRules: SearchRules = { ...windowRules };
