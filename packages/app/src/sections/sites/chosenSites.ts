import { type Asked, gates, standingsWritten } from './asked.ts';
import type { ListNumbers } from './listNumbers.ts';
import { exceptions, type Standing, standings, stationsInOrder } from './overview.ts';

/**
 * Which sites are shown, in which order?
 *
 * @param numbers - of the list, worst first
 * @param asked - what the address asks for
 * @param found - places of those that fit the text, the likeliest first; null where no text is asked for
 * @returns places in the list of all sites
 */
export function chosenSites(numbers: ListNumbers, asked: Asked, found: Uint32Array | null): Uint32Array {
  const fits = fitting(numbers, asked, found !== null);
  const all = found ?? numbers.standing;
  const kept = new Uint32Array(all.length);
  let count = 0;
  for (let i = 0; i < all.length; i++) {
    const place = found === null ? i : found[i]!;
    if (place < numbers.standing.length && fits(place)) kept[count++] = place;
  }
  const places = kept.slice(0, count);
  if (asked.order === 'cheapest') return sortedBy(places, numbers.costRank);
  if (asked.order === 'area') return sortedBy(places, numbers.areaRank);
  if (asked.order === 'name') return sortedBy(places, numbers.nameRank);
  return places;
}

/** Is a site one of those that are asked for? */
function fitting(numbers: ListNumbers, asked: Asked, isFinding: boolean): (place: number) => boolean {
  const { standing, trouble, gate, areaRank, areas } = numbers;
  const shown = shownStandings(asked, isFinding).reduce((bits, one) => bits | (1 << standings.indexOf(one)), 0);
  const stations = asked.station === undefined ? 0 : 1 << stationsInOrder.indexOf(asked.station);
  const gateAsked = asked.gate === undefined ? 0 : gates.indexOf(asked.gate) + 1;
  const area = asked.area === undefined ? null : areas.findIndex(([name]) => name === asked.area);
  return (place) =>
    (shown & (1 << standing[place]!)) !== 0 &&
    (stations === 0 || (stations & trouble[place]!) !== 0) &&
    (gateAsked === 0 || gateAsked === gate[place]) &&
    (area === null || area === areaRank[place]);
}

/** The verdicts that are shown: those asked for, all where a text is looked for or a gate asked of, else those that need her. */
export function shownStandings(asked: Asked, isFinding: boolean): readonly Standing[] {
  return standingsWritten(asked.verdict) ?? (isFinding || asked.gate !== undefined ? standings : exceptions);
}

/** By a number of each site; within one the order stays. */
function sortedBy(places: Uint32Array, ranks: Uint32Array): Uint32Array {
  // One number holds the rank and the row, so that many are put in order quickly and rows of one rank stay as they are.
  const keys = Float64Array.from(places, (place, row) => ranks[place]! * places.length + row).sort();
  return Uint32Array.from(keys, (key) => places[key % places.length]!);
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
 * @param numbers - of the list
 * @param places - of the chosen sites in it
 * @returns people of those whose people are known; costs of their smallest remedies by currency; those that need one and have no known cost
 */
export function togetherOf(numbers: ListNumbers, places: Uint32Array): Together {
  const sums = new Map<string, number>();
  const holds = standings.indexOf('holds');
  let [people, withoutPeople_count, withoutCost_count] = [0, 0, 0];
  for (const place of places) {
    const [of, cost] = [numbers.people[place]!, numbers.cost[place]!];
    if (Number.isNaN(of)) withoutPeople_count++;
    else people += of;
    if (numbers.standing[place] === holds || cost === 0) continue;
    const currency = numbers.currencies[numbers.currency[place]!];
    if (Number.isNaN(cost) || currency === undefined) withoutCost_count++;
    else sums.set(currency, (sums.get(currency) ?? 0) + cost);
  }
  const list = [...sums].map(([currency, amount]) => ({ amount, currency }));
  return { people, withoutPeople_count, sums: list, withoutCost_count };
}
