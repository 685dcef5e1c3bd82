import type { MapSites } from './mapSites.ts';

/** Letters without marks and case: what somebody types who does not look for them. A line stays a line. */
const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** The names and ids of sites as they are looked for. */
export interface Findable {
  /** Two lines of each site, its name and its id, each after its end of line. */
  readonly text: string;
  /** Where each line begins. */
  readonly starts: Uint32Array;
}

/** Made once, as one text: each letter typed costs no more than a look through it. */
export function findable(sites: MapSites): Findable {
  const lines = new Array<string>(2 * sites.count);
  for (let place = 0; place < sites.count; place++) {
    lines[2 * place] = sites.nameAt(place);
    lines[2 * place + 1] = sites.keyAt(place);
  }
  const text = plain(lines.map((line) => `\n${line.replaceAll('\n', ' ').trim()}`).join(''));
  const starts = new Uint32Array(lines.length);
  let [at, line] = [text.indexOf('\n'), 0];
  for (; at >= 0; at = text.indexOf('\n', at + 1)) starts[line++] = at;
  return { text, starts };
}

/**
 * Places of the sites whose name or id holds what was typed; those that begin with it come first.
 *
 * @param most - how many are wanted
 */
export function findSites(all: Findable, typed: string, most: number): readonly number[] {
  const wanted = plain(typed).replaceAll('\n', ' ').trim();
  const begins = placesWith(all, `\n${wanted}`, most, []);
  return begins.length < most ? [...begins, ...placesWith(all, wanted, most - begins.length, begins)] : begins;
}

/** Places of the first sites in whose lines something stands, but for some. */
function placesWith({ text, starts }: Findable, wanted: string, most: number, but: readonly number[]) {
  const places: number[] = [];
  const left = new Set(but);
  let line = 0;
  for (let at = text.indexOf(wanted); at >= 0 && places.length < most; at = text.indexOf(wanted, starts[line])) {
    while (line < starts.length && starts[line]! <= at) line++;
    // The line before is the one it stands in; what is looked for next stands in a site after it.
    const place = (line - 1) >> 1;
    if (!left.has(place)) places.push(place);
    line = 2 * place + 2;
    if (line >= starts.length) break;
  }
  return places;
}
