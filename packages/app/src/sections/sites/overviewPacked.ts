import { type Compare, type ListNumbers, listNumbersOf } from './listNumbers.ts';
import type { OverviewBody, OverviewHead, SiteEntry } from './overview.ts';

/** A word for each site: one text, and where each begins in it and the last ends. */
export interface Words {
  readonly text: string;
  readonly starts: Uint32Array;
}

/**
 * The list of sites as few large things: a browser that tidies its memory looks at a dozen of them, and not at ten thousand sites with
 * all they hold. So it is handed over by the thread that reads it, and kept.
 */
export interface OverviewPacked {
  readonly head: OverviewHead;
  /** Every site as JSON in UTF-8, one after the other, worst first. */
  readonly bytes: Uint8Array;
  /** Where each begins in them, and where the last ends. */
  readonly starts: Uint32Array;
  readonly keys: Words;
  readonly siteIds: Words;
  /** What each is called: its name; where it has none its number, or its key. */
  readonly names: Words;
  /** Places by key: the place and one stands where the hash of the key leads, or in the next that was free; 0 in what is free. */
  readonly byKey: Uint32Array;
  readonly numbers: ListNumbers;
}

/**
 * Packs a list.
 *
 * @param body - the list as the server answers it
 * @param compare - how words are put in order in the language of the page
 */
export function packedOf({ sites, ...head }: OverviewBody, compare: Compare): OverviewPacked {
  const encoder = new TextEncoder();
  const pieces = sites.map((site) => encoder.encode(JSON.stringify(site)));
  const starts = startsOf(pieces);
  const bytes = new Uint8Array(starts[sites.length]!);
  for (const [place, piece] of pieces.entries()) bytes.set(piece, starts[place]);
  const keys = sites.map(({ key }) => key);
  return {
    ...{ head, bytes, starts, byKey: byKeyOf(keys), keys: wordsOf(keys) },
    siteIds: wordsOf(sites.map(({ siteId }) => siteId)),
    names: wordsOf(sites.map(({ name, siteId, key }) => name || siteId || key)),
    numbers: listNumbersOf(sites, compare),
  };
}

/** One after the other, as they were told: what was read of a list that was packed. */
export function sitesOf({ bytes, starts }: Pick<OverviewPacked, 'bytes' | 'starts'>): readonly SiteEntry[] {
  return Array.from({ length: starts.length - 1 }, (_, place) => readSite(bytes, starts, place));
}

const decoder = new TextDecoder();

/** Reads one site. */
export const readSite = (bytes: Uint8Array, starts: Uint32Array, place: number): SiteEntry =>
  JSON.parse(decoder.decode(bytes.subarray(starts[place], starts[place + 1])));

/** The word of one site. */
export const wordAt = ({ text, starts }: Words, place: number): string => text.slice(starts[place], starts[place + 1]);

/** Where a key leads in a table of so many. FNV-1a. */
function hashOf(key: string, length: number): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < key.length; i++) hash = Math.imul(hash ^ key.charCodeAt(i), 0x01000193);
  return (hash ^ (hash >>> 15)) & (length - 1);
}

/** The place of a key; -1 where no site has it. */
export function placeOfKey({ keys, byKey }: Pick<OverviewPacked, 'keys' | 'byKey'>, key: string): number {
  for (let at = hashOf(key, byKey.length); byKey[at] !== 0; at = (at + 1) % byKey.length) {
    const place = byKey[at]! - 1;
    if (wordAt(keys, place) === key) return place;
  }
  return -1;
}

function byKeyOf(keys: readonly string[]): Uint32Array {
  // A power of two, and never more than half full.
  const byKey = new Uint32Array(2 ** Math.ceil(Math.log2(2 * keys.length + 2)));
  for (const [place, key] of keys.entries()) {
    let at = hashOf(key, byKey.length);
    while (byKey[at] !== 0) at = (at + 1) % byKey.length;
    byKey[at] = place + 1;
  }
  return byKey;
}

const wordsOf = (words: readonly string[]): Words => ({ text: words.join(''), starts: startsOf(words) });

function startsOf(pieces: readonly { readonly length: number }[]): Uint32Array {
  const starts = new Uint32Array(pieces.length + 1);
  for (const [i, { length }] of pieces.entries()) starts[i + 1] = starts[i]! + length;
  return starts;
}

/** What of a packed list is given away when it is handed to another thread: nothing of it is copied. */
export const handedOver = ({ bytes, starts, keys, siteIds, names, byKey, numbers }: OverviewPacked): Transferable[] =>
  [bytes, starts, byKey, keys.starts, siteIds.starts, names.starts, ...Object.values(numbers)]
    .filter((one) => ArrayBuffer.isView(one))
    .map(({ buffer }) => buffer as ArrayBuffer);
