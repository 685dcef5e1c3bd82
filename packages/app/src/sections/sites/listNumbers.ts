import { gates } from './asked.ts';
import { type SiteEntry, type Standing, standingOf, standings, stationsInOrder } from './overview.ts';

/**
 * What all sites of a list are looked at by: a number for each in its order. The thread that reads the list makes them: then the
 * page looks at ten thousand numbers at a press, and not at ten thousand sites.
 */
export interface ListNumbers {
  /** The place of its standing in `standings`. */
  readonly standing: Uint8Array;
  /** A bit for each station with trouble, in the order of the water's path. */
  readonly trouble: Uint16Array;
  /** The place of its gate in `gates` and one; 0 where there is none of them. */
  readonly gate: Uint8Array;
  /** The place of its area, its name and its cost among all; the same for those that are the same, and last where there is none. */
  readonly areaRank: Uint32Array;
  readonly nameRank: Uint32Array;
  readonly costRank: Uint32Array;
  /** Not a number where it is not known; so in those that follow. */
  readonly people: Float64Array;
  /** What its smallest remedy costs, in the currency whose place is in `currency`. */
  readonly cost: Float64Array;
  readonly currency: Uint8Array;
  readonly latitude_deg: Float64Array;
  readonly longitude_deg: Float64Array;
  /** Areas there are, with how many sites lie in each, by name: the first has the rank 0. */
  readonly areas: readonly (readonly [area: string, sites: number])[];
  readonly currencies: readonly string[];
  /** Sites with a stand nobody signed for. */
  readonly closed_count: number;
  /** Was a site judged, and none with a storm? */
  readonly isWithoutStorm: boolean;
}

/** What is compared where sites are put in an order by words. */
export type Compare = (a: string, b: string) => number;

/**
 * The numbers of a list.
 *
 * @param sites - all of them
 * @param compare - how words are put in order in the language of the page
 */
export function listNumbersOf(sites: readonly SiteEntry[], compare: Compare): ListNumbers {
  const places = new Map<Standing, number>(standings.map((standing, place) => [standing, place]));
  const known: readonly SiteEntry['standGate'][] = gates;
  const gate = Uint8Array.from(sites, ({ standGate }) => known.indexOf(standGate) + 1);
  const areaRank = ranksOf(
    sites.map(({ area }) => area ?? ''),
    compare,
  );
  const currencies = [...new Set(sites.flatMap(({ remedy }) => remedy?.currency ?? []))];
  return {
    standing: Uint8Array.from(sites, (site) => places.get(standingOf(site))!),
    trouble: Uint16Array.from(sites, troubleOf),
    gate,
    areaRank,
    nameRank: ranksOf(
      sites.map(({ name }) => name),
      compare,
    ),
    costRank: costRanksOf(sites),
    people: Float64Array.from(sites, ({ people }) => people ?? Number.NaN),
    cost: Float64Array.from(sites, costOf),
    currency: Uint8Array.from(sites, ({ remedy }) => Math.max(0, currencies.indexOf(remedy?.currency ?? ''))),
    latitude_deg: Float64Array.from(sites, ({ latitude_deg }) => latitude_deg ?? Number.NaN),
    longitude_deg: Float64Array.from(sites, ({ longitude_deg }) => longitude_deg ?? Number.NaN),
    currencies,
    areas: areasOf(sites, areaRank),
    closed_count: gate.reduce((count, one) => count + Number(one === gates.indexOf('closed') + 1), 0),
    isWithoutStorm: sites.some(({ hasStorm }) => hasStorm !== null) && !sites.some(({ hasStorm }) => hasStorm === true),
  };
}

/** A bit for each station with trouble. */
function troubleOf({ stations }: SiteEntry): number {
  if (stations === null) return 0;
  return stationsInOrder.reduce((bits, station, i) => {
    const verdict = stations[station];
    return verdict === 'holds' || verdict === 'notJudged' ? bits : bits | (1 << i);
  }, 0);
}

/** Areas with how many sites lie in each, in the order of their ranks. */
function areasOf(sites: readonly SiteEntry[], ranks: Uint32Array): ListNumbers['areas'] {
  const found: [string, number][] = [];
  for (const [i, { area }] of sites.entries()) {
    if (area === null || area === '') continue;
    const known = found[ranks[i]!];
    if (known === undefined) found[ranks[i]!] = [area, 1];
    else known[1]++;
  }
  return found;
}

/**
 * The place of each word among all, in the order of a language; the same for words that are the same, and last where there is none.
 *
 * @param words - the words
 * @param compare - how they are put in order
 */
function ranksOf(words: readonly string[], compare: Compare): Uint32Array {
  const ordered = [...new Set(words)].sort((a, b) => Number(a === '') - Number(b === '') || compare(a, b));
  const rank = new Map(ordered.map((word, i) => [word, i]));
  return Uint32Array.from(words, (word) => rank.get(word)!);
}

/** What the smallest remedy costs; a sum without a currency is not known, but for nothing at all. */
function costOf({ remedy }: SiteEntry): number {
  if (remedy === null || remedy.amount === null) return Number.NaN;
  return remedy.amount === 0 || remedy.currency !== null ? remedy.amount : Number.NaN;
}

/** What is mended for little comes first; what costs an unknown sum after it, and what nothing mends last. */
function cheapness({ remedy }: SiteEntry): readonly [number, string, number] {
  if (remedy === null) return [2, '', 0];
  if (remedy.amount === null) return [1, '', 0];
  // Sums in two currencies are not compared: each stands among its own.
  return [0, remedy.currency ?? '', remedy.amount];
}

/** The place of each site's cost among all; the same for costs that are the same. */
function costRanksOf(sites: readonly SiteEntry[]): Uint32Array {
  const costs = sites.map(cheapness);
  const order = (x: number, y: number) => {
    const [a, b] = [costs[x]!, costs[y]!];
    return a[0] - b[0] || Number(a[1] > b[1]) - Number(a[1] < b[1]) || a[2] - b[2];
  };
  const ranks = new Uint32Array(sites.length);
  const ordered = Array.from(sites, (_, at) => at).sort(order);
  let rank = 0;
  for (const [i, at] of ordered.entries()) {
    if (i > 0 && order(ordered[i - 1]!, at) !== 0) rank++;
    ranks[at] = rank;
  }
  return ranks;
}
