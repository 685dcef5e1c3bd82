import { type Asked, standingsWritten } from './asked.ts';
import { exceptions, type Overview, type SiteEntry, type Standing, standingOf, standings } from './overview.ts';

/** What is compared where sites are put in an order by words. */
export type Compare = (a: string, b: string) => number;

/**
 * Which sites are shown, in which order?
 *
 * @param overview - all of them, worst first
 * @param asked - what the address asks for
 * @param found - places of those that fit the text, the likeliest first; null where no text is asked for
 * @param compare - how words are put in order in the language of the page
 * @returns places in `overview.sites`
 */
export function chosenSites(
  { sites, nameRanks }: Pick<Overview, 'sites' | 'nameRanks'>,
  asked: Asked,
  found: Uint32Array | null,
  compare: Compare,
): Uint32Array {
  const wanted = new Set(shownStandings(asked, found !== null));
  const fits = (at: number) => {
    const site = sites[at];
    return site !== undefined && wanted.has(standingOf(site)) && fitsBeside(site, asked);
  };
  const places = (found ?? Uint32Array.from(sites, (_, at) => at)).filter(fits);
  const order = asked.order;
  if (order === 'cheapest') return sorted(places, (at) => cheapness(sites[at]!));
  if (order === 'area') return sortedByWord(places, (at) => sites[at]!.area ?? '', compare);
  if (order === 'name') return sortedByWord(places, (at) => sites[at]!.name, compare, nameRanks);
  return places;
}

/** The verdicts that are shown: those asked for, all where a text is looked for or a gate asked of, else those that need her. */
export function shownStandings(asked: Asked, isFinding: boolean): readonly Standing[] {
  return standingsWritten(asked.verdict) ?? (isFinding || asked.gate !== undefined ? standings : exceptions);
}

function fitsStation({ stations }: SiteEntry, { station }: Asked): boolean {
  if (station === undefined) return true;
  const verdict = stations?.[station] ?? 'notJudged';
  return verdict !== 'holds' && verdict !== 'notJudged';
}

const fitsBeside = (site: SiteEntry, asked: Asked): boolean =>
  fitsStation(site, asked) && fitsArea(site, asked) && (asked.gate === undefined || site.standGate === asked.gate);

const fitsArea = (site: SiteEntry, { area }: Asked): boolean => area === undefined || site.area === area;

/** What is mended for little comes first; what costs an unknown sum after it, and what nothing mends last. */
function cheapness({ remedy }: SiteEntry): readonly [number, string, number] {
  if (remedy === null) return [2, '', 0];
  if (remedy.amount === null) return [1, '', 0];
  // Sums in two currencies are not compared: each stands among its own.
  return [0, remedy.currency ?? '', remedy.amount];
}

function sorted(places: Uint32Array, rankOf: (at: number) => readonly [number, string, number]): Uint32Array {
  const values = new Map(Array.from(places, (at) => [at, rankOf(at)] as const));
  return Uint32Array.from(
    [...places].sort((x, y) => {
      const [a, b] = [values.get(x)!, values.get(y)!];
      return a[0] - b[0] || Number(a[1] > b[1]) - Number(a[1] < b[1]) || a[2] - b[2];
    }),
  );
}

/** By a word; where there is none, last. Within one word the order stays. */
function sortedByWord(
  places: Uint32Array,
  wordOf: (at: number) => string,
  compare: Compare,
  known?: Uint32Array,
): Uint32Array {
  const ranks = known ? places.map((at) => known[at]!) : ranksOf(Array.from(places, wordOf), compare);
  // One number holds the rank and the row, so that many are put in order quickly and rows of one rank stay as they are.
  const keys = Float64Array.from(ranks, (rank, row) => rank * ranks.length + row).sort();
  return Uint32Array.from(keys, (key) => places[key % places.length]!);
}

/**
 * The place of each word among all, in the order of a language; the same for words that are the same, and last where there is none.
 *
 * @param words - the words
 * @param compare - how they are put in order
 */
export function ranksOf(words: readonly string[], compare: Compare): Uint32Array {
  const ordered = [...new Set(words)].sort((a, b) => Number(a === '') - Number(b === '') || compare(a, b));
  const rank = new Map(ordered.map((word, i) => [word, i]));
  return Uint32Array.from(words, (word) => rank.get(word)!);
}

/** What a remedy costs together: a sum for each currency, and how many have no known cost. */
export interface CostTogether {
  readonly sums: readonly { readonly amount: number; readonly currency: string }[];
  readonly withoutCost_count: number;
}

/** What several sites come to. */
export interface Together extends CostTogether {
  readonly people: number;
  readonly withoutPeople_count: number;
}

/**
 * What do the chosen sites come to?
 *
 * @param sites - the chosen sites
 * @returns people of those whose people are known; costs of their smallest remedies by currency; those that need one and have no known cost
 */
export function togetherOf(sites: Iterable<SiteEntry>): Together {
  const sums = new Map<string, number>();
  let [people, withoutPeople_count, withoutCost_count] = [0, 0, 0];
  for (const site of sites) {
    if (site.people === null) withoutPeople_count++;
    else people += site.people;
    if (standingOf(site) === 'holds') continue;
    const { amount, currency } = site.remedy ?? { amount: null, currency: null };
    if (amount === 0) continue;
    if (amount === null || currency === null) withoutCost_count++;
    else sums.set(currency, (sums.get(currency) ?? 0) + amount);
  }
  const list = [...sums].map(([currency, amount]) => ({ amount, currency }));
  return { people, withoutPeople_count, sums: list, withoutCost_count };
}
