/** What is looked through to find a site. */
export interface Findable {
  readonly siteId: string;
  readonly name: string;
  readonly area: string | null;
}

/** Letters as they are compared: no case, no accents, and signs as spaces. */
export function folded(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[’'`]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** How many typing mistakes a word may have: none in a short one or a number, where they make another. Ours. */
function mistakesAllowed(typed: string): number {
  if (typed.length < 4 || /\p{N}/u.test(typed)) return 0;
  return typed.length < 8 ? 1 : 2;
}

/**
 * How many letters are wrong, left out, too many or swapped with their neighbour, between what was typed and the beginning
 * of a word it comes nearest to?
 *
 * @param typed - what was typed
 * @param word - the word
 * @param most - more than so many are not counted
 * @returns the count; `most + 1` where it is more
 * @definition optimal string alignment against every beginning of the word
 */
export function mistakesToBeginning(typed: string, word: string, most: number): number {
  const width = Math.min(word.length, typed.length + most);
  let before = new Uint8Array(width + 1);
  let last = Uint8Array.from({ length: width + 1 }, (_, j) => j);
  for (let i = 1; i <= typed.length; i++) {
    const row = new Uint8Array(width + 1);
    row[0] = i;
    let least = i;
    for (let j = 1; j <= width; j++) {
      const isSame = typed[i - 1] === word[j - 1];
      let cost = Math.min(last[j - 1]! + (isSame ? 0 : 1), last[j]! + 1, row[j - 1]! + 1);
      if (i > 1 && j > 1 && typed[i - 1] === word[j - 2] && typed[i - 2] === word[j - 1])
        cost = Math.min(cost, before[j - 2]! + 1);
      row[j] = cost;
      least = Math.min(least, cost);
    }
    if (least > most) return most + 1;
    [before, last] = [last, row];
  }
  return Math.min(most + 1, ...last);
}

/** How far a word is from what was typed; null: it is not meant. 0 is the word itself. */
function farness(typed: string, word: string): number | null {
  if (word === typed) return 0;
  if (word.startsWith(typed)) return 1;
  if (typed.length > 2 && word.includes(typed)) return 3;
  const most = mistakesAllowed(typed);
  if (most === 0) return null;
  const mistakes = mistakesToBeginning(typed, word, most);
  return mistakes > most ? null : 4 + mistakes;
}

/** A word found in the area rather than in the name comes after. */
const inArea = 2;
/** Words that run together, such as `santarosa` for `Santa Rosa`. */
const runTogether = 2;

/** Finds sites by what a person types: name, id and area, whatever the case, the accents and a mistake or two. */
export class SiteFinder {
  private readonly words: string[] = [];
  private readonly named: number[][] = [];
  private readonly areas: number[][] = [];
  private readonly whole: string[];

  constructor(sites: readonly Findable[]) {
    const places = new Map<string, number>();
    const placeOf = (word: string) => {
      const known = places.get(word);
      if (known !== undefined) return known;
      places.set(word, this.words.length);
      this.named.push([]);
      this.areas.push([]);
      return this.words.push(word) - 1;
    };
    const wordsOf = (text: string) => new Set(folded(text).split(' ').filter(Boolean));
    this.whole = sites.map(({ name, siteId }) => `${folded(name)}\n${folded(siteId)}`.replaceAll(' ', ''));
    sites.forEach(({ name, siteId, area }, at) => {
      for (const word of wordsOf(`${name} ${siteId}`)) this.named[placeOf(word)]!.push(at);
      for (const word of wordsOf(area ?? '')) this.areas[placeOf(word)]!.push(at);
    });
  }

  /**
   * The sites meant, the likeliest first; those as likely stay in their order.
   *
   * @param text - what was typed
   * @returns places in the list the finder was made of; null where nothing was typed
   */
  find(text: string): Uint32Array | null {
    const asked = folded(text).split(' ').filter(Boolean);
    if (asked.length === 0) return null;
    let found: Map<number, number> | null = null;
    for (const word of asked) found = both(found, this.near(word));
    const together = asked.join('');
    if (together.length > 2)
      this.whole.forEach((whole, at) => {
        if (!found!.has(at) && whole.includes(together)) found!.set(at, asked.length * runTogether);
      });
    const sorted = [...found!].sort((a, b) => a[1] - b[1] || a[0] - b[0]);
    return Uint32Array.from(sorted, ([at]) => at);
  }

  /** How far each site is from one word that was typed. */
  private near(typed: string): Map<number, number> {
    const near = new Map<number, number>();
    const put = (at: number, far: number) => {
      if (far < (near.get(at) ?? Number.POSITIVE_INFINITY)) near.set(at, far);
    };
    this.words.forEach((word, w) => {
      const far = farness(typed, word);
      if (far === null) return;
      for (const at of this.named[w]!) put(at, far);
      for (const at of this.areas[w]!) put(at, far + inArea);
    });
    return near;
  }
}

/** Those that both have, with how far they are by both. */
function both(a: Map<number, number> | null, b: Map<number, number>): Map<number, number> {
  if (a === null) return b;
  const kept = new Map<number, number>();
  for (const [at, far] of a) {
    const other = b.get(at);
    if (other !== undefined) kept.set(at, far + other);
  }
  return kept;
}
