import type { Column } from '../contract/table.ts';

/** A header taken apart: its words, and the unit it names. */
export interface HeaderWords {
  readonly words: readonly string[];
  /** A unit of ours; `gal` where a gallon is named without its country; null where none is named. */
  readonly unit: string | null;
}

/** How units are written in headers, as ours. Common practice, no source. */
const unitNames: Readonly<Record<string, readonly string[]>> = {
  m: ['m', 'metre', 'meter'],
  ft: ['ft', 'foot', 'feet'],
  in: ['in', 'inch', 'inche'],
  cm: ['cm', 'centimetre', 'centimeter'],
  mm: ['mm', 'millimetre', 'millimeter'],
  m2: ['m2', 'm²', 'sqm'],
  ft2: ['ft2', 'ft²', 'sqft'],
  L: ['l', 'litre', 'liter', 'ltr'],
  m3: ['m3', 'm³', 'cum'],
  usgal: ['usgal', 'usgallon'],
  impgal: ['impgal', 'impgallon', 'imperialgal', 'imperialgallon', 'ukgal', 'ukgallon'],
  gal: ['gal', 'gallon'],
  percent: ['%', 'percent', 'pct'],
  kg: ['kg', 'kilogram'],
  deg: ['deg', 'degree', '°'],
  'm/s': ['m/s', 'mps', 'mpers', 'mpersec', 'mpersecond', 'ms'],
  kmh: ['kmh', 'km/h', 'kph', 'kmperh', 'kmperhour', 'kmhr', 'km/hr'],
  kn: ['kn', 'kt', 'knot', 'kts'],
  mph: ['mph', 'mi/h', 'mileperhour', 'milesperhour'],
  'mm/m': ['mm/m', 'mmperm', 'mmpermetre', 'mmpermeter'],
  tenths: ['tenthsmm', 'tenthsofmm', '0.1mm', 'mmx10', 'tenth'],
};

/** Words for one thing, ours first. Common practice, no source. */
const sameThing: readonly (readonly string[])[] = [
  ['people', 'population', 'person', 'inhabitant', 'head', 'user'],
  ['rain', 'rainfall', 'precipitation', 'precip', 'ppt'],
  ['latitude', 'lat'],
  ['longitude', 'lon', 'long', 'lng'],
  ['date', 'day'],
  ['name', 'title'],
  ['id', 'code', 'no', 'number', 'nr'],
  ['guttered', 'gutter', 'guttering'],
  ['material', 'covering', 'cover'],
  ['nominal', 'volume', 'capacity', 'size'],
  ['gauge', 'raingauge', 'station'],
  ['litre', 'liter'],
];

const aliases = new Map(sameThing.flatMap((words) => words.map((word) => [word, words[0]!] as const)));

/** Words for the place itself: its id where an id is named, else its name. Common practice, no source. */
const placeWords = ['village', 'community', 'place', 'settlement'];

function one(word: string): string {
  return word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}

/**
 * Which unit does this word name?
 *
 * @param written - a word of a header, what stands in its brackets or behind a number [text]
 * @returns our name of the unit, `gal` for a gallon without its country, or null
 * @definition ours
 */
export function unitNamed(written: string): string | null {
  const word = written
    .toLowerCase()
    .replace(/[\s._-]/g, '')
    .replace(/^in(?!ch)(?=\p{L})/u, '');
  const found = Object.entries(unitNames).find(([, names]) => names.includes(word) || names.includes(one(word)));
  return found?.[0] ?? null;
}

function wordsIn(text: string): readonly string[] {
  return text
    .normalize('NFKD')
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}\p{N}%°²³]+/u)
    .filter((word) => word !== '');
}

/**
 * Of which words is a header made, and which unit does it name?
 *
 * @param header - the header, or a column's name [text]
 * @returns its words, one for each thing and in the singular, and the unit behind them
 * @definition ours: docs/decisions/0080-columns-saved.md
 * @example
 * headerWords('Rain (in)') // → { words: ['rain'], unit: 'in' }
 * headerWords('length_m') // → { words: ['length'], unit: 'm' }
 */
export function headerWords(header: string): HeaderWords {
  const bracket = /^(.*?)[[({]([^\])}]*)[\])}]\s*$/u.exec(header);
  const inBracket = bracket ? unitNamed(bracket[2]!) : null;
  const words = [...wordsIn(inBracket !== null ? bracket![1]! : header)];
  let unit = inBracket;
  if (unit === null && words.length > 3) {
    unit = unitNamed(words.slice(-3).join(''));
    if (unit !== null) words.splice(-3);
  }
  if (unit === null && words.length > 2) {
    unit = unitNamed(words.slice(-2).join(''));
    if (unit !== null) words.splice(-2);
  }
  if (unit === null && words.length > 1) {
    unit = unitNamed(words.at(-1)!);
    if (unit !== null) words.pop();
  }
  if (unit !== null && words.length > 1 && words.at(-1) === 'in') words.pop();
  const ours = words.map((word) => aliases.get(one(word)) ?? aliases.get(word) ?? one(word));
  const place = ours.includes('id') ? 'site' : 'name';
  return { words: ours.map((word) => (placeWords.includes(word) ? place : word)), unit };
}

/**
 * Does a header name another unit than that of the column it stands for? Then the unit of its values must be said.
 *
 * @param header - the header [text]
 * @param column - the column
 * @returns true or false; false where the column is no number or has no unit
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export function isOtherUnit(header: string, { kind, unit }: Pick<Column<unknown>, 'kind' | 'unit'>): boolean {
  const named = headerWords(header).unit;
  const isNumber = kind === 'quantity' || kind === 'whole' || kind === 'fraction';
  return isNumber && unit !== '' && named !== null && named !== unit;
}
