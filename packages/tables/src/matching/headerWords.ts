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
  lb: ['lb', 'lbs', 'pound'],
  deg: ['deg', 'degree', '°'],
  'm/s': ['m/s', 'mps', 'mpers', 'mpersec', 'mpersecond', 'ms'],
  kmh: ['kmh', 'km/h', 'kph', 'kmperh', 'kmperhour', 'kmhr', 'km/hr'],
  kn: ['kn', 'kt', 'knot', 'kts'],
  mph: ['mph', 'mi/h', 'mileperhour', 'milesperhour'],
  'mm/h': ['mm/h', 'mmh', 'mm/hr', 'mmhr', 'mmph', 'mmperh', 'mmperhr', 'mmperhour', 'mmanhour', 'mm/hour'],
  'in/h': [
    ...['in/h', 'inh', 'in/hr', 'inhr', 'iph', 'inperh', 'inperhr', 'inperhour', 'inanhour', 'in/hour'],
    ...['inchperhour', 'inchesperhour', 'inchesanhour', 'inches/hour', 'inches/hr'],
  ],
  'cm/h': ['cm/h', 'cmh', 'cm/hr', 'cmhr', 'cmperh', 'cmperhour'],
  'in/ft': ['in/ft', 'inft', 'inperft', 'inperfoot', 'inchperfoot', 'inchesperfoot', 'inchesperft'],
  'cm/m': ['cm/m', 'cmperm', 'cmpermetre', 'cmpermeter'],
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
  ['bore', 'diameter', 'dia'],
  ['mass', 'weight'],
  ['pitch', 'slope', 'fall', 'gradient'],
  ['form', 'shape', 'profile'],
  ['bend', 'elbow', 'corner'],
  ['stand', 'platform', 'tower', 'plinth'],
  ['ground', 'soil'],
  ['pad', 'footing'],
  ['base', 'bottom', 'sole'],
  ['class', 'type', 'kind'],
  ['downpipe', 'downspout'],
  ['tap', 'faucet'],
  ['screen', 'mesh'],
];

/** Whole headers for a column, where no word of its name stands in them or another column has more of them. Common practice, no source. */
const alsoCalled: Readonly<Record<string, readonly string[]>> = {
  bore_mm: ['inside diameter', 'pipe size', 'downpipe size', 'size'],
  chamber_L: ['first flush volume', 'chamber volume'],
  chamberBore_mm: ['chamber pipe diameter'],
  overflowBore_mm: ['overflow pipe', 'overflow pipe diameter', 'overflow size'],
  runToOutlet_m: ['distance to outlet', 'gutter run'],
  outletGrate: ['leaf guard', 'grating'],
  fastened: ['tied down', 'strapped down', 'strapped', 'anchored'],
  signedOn: ['date signed', 'day signed'],
  windSpeed_m_per_s: ['design wind', 'design wind speed'],
  returnPeriod_years: ['recurrence interval', 'recurrence interval years', 'return interval', 'return interval years'],
  interval_min: ['duration', 'duration min', 'duration minutes'],
  low_mm_per_h: ['lower limit', 'lower bound', 'low estimate'],
  high_mm_per_h: ['upper limit', 'upper bound', 'high estimate'],
  emptyMass_kg: ['tank mass', 'empty tank mass'],
  padSide_m: ['pad width', 'pad size'],
  cells: ['compartments'],
  wallAbove_m2: ['wall area'],
  otherLoss_k: ['loss coefficient'],
  leg: ['section', 'stretch'],
};

const namesKnown = new Map<string, readonly (readonly string[])[]>();

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
  const word = written.toLowerCase().replace(/[\s._-]/g, '');
  const named = (text: string) =>
    Object.entries(unitNames).find(([, names]) => names.includes(text) || names.includes(one(text)))?.[0] ?? null;
  // "in feet" are feet; "in per hour" are inches.
  return named(word) ?? named(word.replace(/^in(?!ch)(?=\p{L})/u, ''));
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

/**
 * In which words may a header name a column? Those of the column itself, and whole headers that mean it.
 *
 * @param column - the column's name [text]
 * @returns the words of each, the column's own first
 * @definition ours: docs/decisions/0199-plain-words-of-headers.md
 */
export function namesOf(column: string): readonly (readonly string[])[] {
  const known = namesKnown.get(column);
  if (known !== undefined) return known;
  const others = Object.hasOwn(alsoCalled, column) ? alsoCalled[column]! : [];
  const names = [column, ...others].map((name) => headerWords(name).words);
  namesKnown.set(column, names);
  return names;
}

/** Words for what is measured outside. Every bore of ours is measured inside. */
const outsideWords = ['outside', 'outer', 'external', 'od'];

/** Is one of the two an outside measure, where the other is a bore? A pipe's outside says little of what it carries. */
export function isOutsideOfBore(theirs: readonly string[], ours: readonly string[]): boolean {
  return ours.includes('bore') && theirs.some((word) => outsideWords.includes(word));
}
