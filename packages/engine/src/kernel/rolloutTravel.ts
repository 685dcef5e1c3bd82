/** Days of one state of the ways: from `from` to before the next period's. The first begins at day 0. */
export interface Period {
  readonly from: number;
}

/**
 * The best way between any two nodes, for one set of carriers, period by period. Arrays are of nodes x nodes, from-major. The way is
 * gone as land, river, land: what lies before the first stretch of river, from there to the last, and after. A river part that fits
 * into a day (`riverEnds_h`) is not begun unless it ends that day; a longer one is broken at nights, as land is anywhere.
 */
export interface Travel {
  readonly nodes: number;
  /** Left out: the arrays hold every pair of nodes. Else those of these pairs alone, in this order; any other cannot be gone. */
  readonly pairs?: LegPairs;
  readonly byPeriod: readonly LegTable[];
}

/** Pairs of nodes, sorted by `from * nodes + to`, each once. */
export interface LegPairs {
  readonly keys: ArrayLike<number>;
}

export interface LegTable {
  /** Infinity: cannot be gone in this period. */
  readonly landBefore_h: Float32Array;
  readonly river_h: Float32Array;
  readonly landAfter_h: Float32Array;
  readonly cost: Float32Array;
  readonly fuel_L: Float32Array;
  /** Index of `limits`. */
  readonly limitOf: Uint16Array;
  readonly limits: readonly LegLimit[];
  /** Index of the problem's areas plus 1; 0: none. */
  readonly areaOf: Uint8Array;
}

/** What passes on a leg in one go. */
export interface LegLimit {
  readonly kg: number;
  readonly litres: number;
  readonly longest_m: number;
  readonly porters_count: number;
}
