/** Load constant: what most people may lift under the best conditions [kg]. Source: niosh-94-110, equation. */
export const bestLift_kg = 23;

/** Reach of the best lift [cm]; nearer than that one cannot hold it, farther than the most nobody should. Source: niosh-94-110 (upper bound from memory). */
export const reach_cm = { best: 25, most: 63 } as const;

/** Height of the hands at the start: the best, what a cm off it takes away, and the highest [cm]. Source: niosh-94-110 (upper bound from memory). */
export const handHeight_cm = { best: 75, most: 175 } as const;
export const handHeightLoss_per_cm = 0.003;

/** Way up or down: no loss up to the least, none allowed over the most [cm]; 0.82 + 4.5 ÷ way. Source: niosh-94-110 (bounds from memory). */
export const travel_cm = { least: 25, most: 175 } as const;
export const travelBase_factor = 0.82;
export const travelShare_cm = 4.5;

/** Turn of the body: what a degree takes away, and the most [degree]. Source: niosh-94-110 (bound from memory). */
export const turnLoss_per_deg = 0.0032;
export const turnMost_deg = 135;

/**
 * The lift that every carton of a kit makes: from the floor to the bed of a truck or a deck, a quarter turned. Ours: reach 35 cm,
 * hands from 15 up by 85 cm, 30°; once a minute for up to an hour 0.94 and a fair grip 0.95 (niosh-94-110, from memory).
 */
export const floorToTruck = {
  reach_cm: 35,
  handHeight_cm: 15,
  travel_cm: 85,
  turn_deg: 30,
  frequency_factor: 0.94,
  grip_factor: 0.95,
} as const;

/**
 * What one carton and what a piece for two may weigh [kg]. Ours, a proposal: 15 kg keeps the lift from the floor to a truck at a
 * lifting index of 1.6.
 */
export const carton_kg = 15;
export const twoPeople_kg = 30;

/** By so much more may lie in a bin or a bar than it holds, for sums of decimals [factor]. Ours: a thousand-millionth, far under what can be weighed or measured. */
export const hair_factor = 1e-9;

/**
 * Cutting of bars: steps a search may make, steps to fill one bar of the quick way, and states that led to nothing it remembers [count]. Ours: a
 * step is some 50 ns, so that a search ends in some 0.1 s.
 */
export const barWork_count = 1_000_000;
export const stepsOfABar_count = 2000;
export const mostRemembered_count = 50_000;

/** Lengths are cut to a thousandth of a millimetre, a µm; what they lack of a whole one to rounding [um]. Ours. */
export const um_per_m = 1_000_000;
export const um_per_mm = 1000;
export const rounding_um = 0.01;

/** No run and no bar is longer [m]. Ours: longer ones were mistyped. */
export const longestRun_m = 100_000;
