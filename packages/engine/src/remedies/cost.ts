import type { DayIndex, PartFacts } from '../kernel/index.ts';
import { barPlan, partById } from '../parts/index.ts';
import type { Market } from './market.ts';

/** So many of one part. */
export interface BoughtPart {
  readonly partId: string;
  readonly pieces_count: number;
  /** Price of one: in the programme's currency and of the market's day where a rate allows, else as it stands. */
  readonly amount: number;
  readonly currency: string;
  /** The day the price stands for in its table. */
  readonly priceDate: DayIndex;
}

/** Why a cost is not known. */
export type NoCostReason =
  | 'noPart'
  | 'noPrice'
  | 'onlyLaterPrices'
  | 'roofLengthUnknown'
  | 'runLengthUnknown'
  | 'pieceLengthUnknown'
  | 'rateMissing'
  | 'otherSite'
  | 'secondSource';

/** What a remedy costs to buy. The amount is null where a price is missing, with the reason, and 0 only where nothing is bought. */
export interface RemedyCost {
  readonly amount: number | null;
  /** Null where nothing is bought or the amount is not known. */
  readonly currency: string | null;
  readonly reason: NoCostReason | null;
  /** What can be priced of it. */
  readonly bought: readonly BoughtPart[];
}

/** Gutter to hang on one roof. */
export interface HungGutter {
  /** What it is called, where the roof's gutters are measured; else null. */
  readonly gutterId: string | null;
  /** Null where the roof's length is not known. */
  readonly length_m: number | null;
  /** No part known to be smaller will do; null where nothing says. */
  readonly leastWidth_mm: number | null;
  readonly leastDepth_mm: number | null;
}

/** What has to be bought for one or two changes. */
export interface ToBuy {
  /** Tanks by their part. */
  readonly partIds: readonly string[];
  /** Gutter to hang, roof by roof. */
  readonly gutter_m: readonly HungGutter[];
  /** Parts by the piece. */
  readonly pieces: readonly { readonly partId: string; readonly pieces_count: number }[];
  /** Parts by their length: whole bars for the runs of one change together [m]; null where a run's length is not known. */
  readonly runs: readonly { readonly partId: string; readonly runs_m: readonly (number | null)[] }[];
  readonly diverters_count: number;
  /** Whole sites for people who cannot be carried here. */
  readonly otherSites_count: number;
  /** Is water of a second source to be fetched and treated? No part is priced for that. */
  readonly isSourceUsed: boolean;
}

/** Nothing. */
export const nothingToBuy: ToBuy = {
  partIds: [],
  gutter_m: [],
  pieces: [],
  runs: [],
  diverters_count: 0,
  otherSites_count: 0,
  isSourceUsed: false,
};

/**
 * What does it cost to buy these parts? Tanks by their own price; gutter in whole bars, of the part that comes
 * cheapest; diverters, and kits of a whole site, of the cheapest part; gutters, outlets and pipes that are named of that part, what is
 * sold by length in whole bars for the runs of one change. Brackets, stands, carrying and work are not in it;
 * fetching and treating water of a second source is never priced.
 *
 * @param wanted - tanks, metres of gutter by roof [m], pieces [count] and runs [m] of parts, diverters and whole sites [count]
 * @param market - parts and prices on a day
 * @returns amount [currency]; null with the reason where any price is missing
 * @law a missing price never counts as 0
 * @definition ours: docs/methods/remedies.md, cost
 */
export function remedyCost(wanted: ToBuy, market: Market): RemedyCost {
  const bought: BoughtPart[] = [];
  let reason: NoCostReason | null = null;
  const buy = (found: BoughtPart | NoCostReason) => {
    if (typeof found === 'string') reason ??= found;
    else if (found.pieces_count > 0) bought.push(found);
  };
  for (const partId of wanted.partIds) buy(priced(partId, 1, market));
  if (wanted.gutter_m.length > 0) buy(gutter(wanted.gutter_m, market));
  for (const { partId, pieces_count } of wanted.pieces) buy(priced(partId, pieces_count, market));
  for (const { partId, runs_m } of wanted.runs) buy(byLength(partId, runs_m, market));
  if (wanted.diverters_count > 0) buy(cheapest('diverter', () => wanted.diverters_count, market));
  if (wanted.otherSites_count > 0) buy(otherSites(wanted.otherSites_count, market));
  if (wanted.isSourceUsed) buy('secondSource');
  const [first] = bought;
  if (bought.some(({ currency }) => currency !== first!.currency)) reason ??= 'rateMissing';
  if (reason !== null) return { amount: null, currency: null, reason, bought };
  const amount = bought.reduce((sum, one) => sum + one.pieces_count * one.amount, 0);
  return { amount, currency: first?.currency ?? null, reason: null, bought };
}

/**
 * Is one cost before another? Known ones first, by amount within a currency, currencies between which no rate is known by their letters; a cost that is not known comes last.
 *
 * @param a - a cost, amount [currency]
 * @param b - another
 * @returns under 0 where a comes first, over 0 where b does, 0 where neither [number]
 * @definition ours
 */
export function compareCosts(a: RemedyCost, b: RemedyCost): number {
  if (a.amount === null || b.amount === null) return Number(a.amount === null) - Number(b.amount === null);
  if (a.currency !== b.currency && a.amount > 0 && b.amount > 0) return a.currency! < b.currency! ? -1 : 1;
  return a.amount - b.amount;
}

function priced(partId: string, pieces_count: number, market: Market): BoughtPart | NoCostReason {
  const found = market.prices.get(partId);
  if (!found) return 'noPart';
  if (found.price === null) return found.reason;
  const { amount, currency, priceDate } = found.price;
  return { partId, pieces_count, amount, currency, priceDate };
}

/** Gutter of one part for all roofs, cut from whole bars: what one roof leaves over may do for another. */
function gutter(hung: readonly HungGutter[], market: Market): BoughtPart | NoCostReason {
  if (hung.some(({ length_m }) => length_m === null)) return 'roofLengthUnknown';
  const isLess = (size: number | null, least: number | null) => size !== null && least !== null && size < least;
  const pieces = ({ length_m, topWidth_mm, depth_mm }: PartFacts) => {
    const isSmall = hung.some((one) => isLess(topWidth_mm, one.leastWidth_mm) || isLess(depth_mm, one.leastDepth_mm));
    if (length_m === null || !(length_m > 0) || isSmall) return null;
    return barsFor(
      hung.map((one) => one.length_m!),
      length_m,
    );
  };
  return cheapest('gutter', pieces, market);
}

/** Whole bars of one part for all these runs. */
function byLength(partId: string, runs_m: readonly (number | null)[], market: Market): BoughtPart | NoCostReason {
  const part = partById(market.parts, partId);
  if (part === null) return 'noPart';
  if (part.length_m === null || !(part.length_m > 0)) return 'pieceLengthUnknown';
  const known_m = runs_m.filter((run_m) => run_m !== null);
  const bars_count = known_m.length < runs_m.length ? null : barsFor(known_m, part.length_m);
  return bars_count === null ? 'runLengthUnknown' : priced(partId, bars_count, market);
}

/** As the kit counts them (parts/bars.ts), the saw taking nothing; null where a length is none. */
function barsFor(runs_m: readonly number[], length_m: number): number | null {
  const runs = runs_m.map((run_m, at) => ({ runId: `${at}`, length_m: run_m }));
  return barPlan(runs, { length_m, cut_mm: 0, squareOff_mm: 0 })?.bars_count ?? null;
}

/** Whole sites, where the catalogue has a kit for one. */
function otherSites(count: number, market: Market): BoughtPart | NoCostReason {
  const found = cheapest('site', () => count, market);
  return found === 'noPart' ? 'otherSite' : found;
}

/** The cheapest part of a kind for the pieces it takes; where none has a price, why. */
function cheapest(
  kind: string,
  piecesOf: (part: PartFacts) => number | null,
  market: Market,
): BoughtPart | NoCostReason {
  let best: BoughtPart | null = null;
  let reason: NoCostReason = 'noPart';
  for (const part of market.parts) {
    const pieces_count = part.kind === kind ? piecesOf(part) : null;
    if (pieces_count === null) continue;
    const found = priced(part.partId, pieces_count, market);
    if (typeof found === 'string') reason = found;
    else if (best === null || isCheaper(found, best)) best = found;
  }
  return best ?? reason;
}

function isCheaper(a: BoughtPart, b: BoughtPart): boolean {
  if (a.currency !== b.currency) return a.currency < b.currency;
  const difference = a.pieces_count * a.amount - b.pieces_count * b.amount;
  return difference < 0 || (difference === 0 && a.partId < b.partId);
}
