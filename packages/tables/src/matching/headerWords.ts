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
  min: ['min', 'mins', 'minute'],
  h: ['h', 'hr', 'hour'],
  mL: ['ml', 'millilitre', 'milliliter', 'cc'],
  um: ['um', 'μm', 'micron', 'micrometre', 'micrometer'],
  nm: ['nm', 'nanometre', 'nanometer'],
  C: ['c', '°c', 'degc', 'celsius', 'degreec', 'degcelsius', 'degreecelsius'],
  F: ['f', '°f', 'degf', 'fahrenheit', 'degreef', 'degfahrenheit', 'degreefahrenheit'],
  kPa: ['kpa', 'kilopascal'],
  psi: ['psi', 'psig', 'lb/in2'],
  bar: ['bar'],
  mbar: ['mbar', 'millibar', 'hpa'],
  mH2O: ['mh2o', 'mwc', 'mwg', 'mofwater', 'metreofwater', 'metresofwater'],
  'kPa/min': ['kpa/min', 'kpamin', 'kpapermin', 'kpaperminute', 'kpa/minute'],
  'psi/min': ['psi/min', 'psimin', 'psipermin', 'psiperminute', 'psi/minute'],
  'bar/min': ['bar/min', 'barmin', 'barpermin', 'barperminute'],
  'mbar/min': ['mbar/min', 'mbarmin', 'mbarpermin', 'mbarperminute'],
  'L/h': ['l/h', 'lh', 'lph', 'lperh', 'l/hr', 'lhr', 'lperhr', 'lperhour', 'l/hour', 'litreperhour', 'litresperhour'],
  'L/min': ['l/min', 'lmin', 'lpm', 'lpermin', 'lperminute', 'l/minute', 'litreperminute', 'litresperminute'],
  'L/s': ['l/s', 'lps', 'lpers', 'lpersec', 'lpersecond', 'l/sec', 'litrepersecond', 'litrespersecond'],
  'm3/h': ['m3/h', 'm³/h', 'm3h', 'm3/hr', 'm3perh', 'm3perhour', 'cumecperhour'],
  usgpm: ['usgpm', 'usgal/min', 'usgalmin', 'usgallonperminute', 'usgalpermin'],
  impgpm: ['impgpm', 'impgal/min', 'impgalmin', 'impgallonperminute', 'ukgpm'],
  gpm: ['gpm', 'gal/min', 'galmin', 'galpermin', 'galperminute', 'gallonperminute', 'gallonsperminute'],
  'L/m2/h/bar': ['l/m2/h/bar', 'l/m²/h/bar', 'lm2hbar', 'lperm2hbar', 'lmh/bar', 'lmhbar', 'lmhperbar'],
  NTU: ['ntu'],
  'mg/L': ['mg/l', 'mgl', 'mgperl', 'mgperlitre', 'mgperliter', 'ppm'],
  'g/L': ['g/l', 'gl', 'gperl', 'gperlitre', 'gperliter'],
  '1/L': ['1/l', '/l', 'perl', 'perlitre', 'perliter'],
  '1/100mL': ['1/100ml', '/100ml', 'per100ml', 'cfu/100ml', 'cfuper100ml', 'mpn/100ml', 'mpnper100ml'],
  log10: ['log10', 'log', 'lrv'],
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
  ['temperature', 'temp'],
  ['laboratory', 'lab'],
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
  serial: ['serial number', 'serial no', 'unit serial number'],
  unitSerial: ['unit', 'unit serial number', 'treatment unit', 'filter unit'],
  installedOn: ['date installed', 'installation date', 'installed'],
  removedOn: ['date removed', 'removal date', 'removed'],
  readOn: ['date read', 'reading date', 'date measured', 'date'],
  testedOn: ['date tested', 'test date', 'date'],
  takenOn: ['date taken', 'date sampled', 'sample date', 'sampling date', 'date'],
  inspectedOn: ['date inspected', 'inspection date', 'visit date', 'date'],
  flow_L_per_h: ['flow rate', 'measured flow'],
  passed_L: ['meter reading', 'litres passed', 'volume filtered', 'volume treated'],
  fall_kPa_per_min: ['pressure drop', 'pressure decay', 'decay rate', 'pressure loss'],
  airVolume_L: ['hold up volume', 'holdup volume'],
  testId: ['sample', 'sample code', 'sample number'],
  point: ['sampling point', 'sample point', 'sample location', 'where taken'],
  freeChlorine_mg_per_L: ['residual chlorine', 'chlorine residual', 'free residual chlorine', 'frc'],
  residual_mg_per_L: ['residual chlorine', 'chlorine residual', 'free residual chlorine', 'frc'],
  pH: ['ph', 'acidity'],
  waterTemperature_C: ['temperature', 'temperature of water'],
  laboratory: ['tested by', 'analysed by', 'read by'],
  portions: ['tubes', 'wells', 'bottles', 'plates', 'number of tubes', 'number of wells', 'number of plates'],
  positive: ['positive tubes', 'positive wells', 'number positive', 'positives'],
  colonies: ['colony count', 'colonies counted', 'cfu'],
  uncountable: ['tntc', 'too numerous to count', 'too many to count'],
  volume_mL: ['volume', 'sample volume', 'volume tested', 'portion volume'],
  risks: ['risk score', 'sanitary risk score', 'risks found', 'yes answers'],
  questions: ['questions asked', 'number of questions', 'out of'],
  by: ['inspector', 'surveyor', 'inspected by'],
  active_fraction: ['available chlorine', 'active chlorine'],
  stock_g_per_L: ['stock strength', 'stock solution', 'stock concentration'],
  dose_mg_per_L: ['chlorine dose', 'dosage'],
  contact_min: ['contact time'],
  batch_L: ['batch volume', 'batch size'],
  cartridges: ['number of cartridges', 'number of membranes'],
  membraneArea_m2: ['filter area', 'filter surface', 'membrane surface'],
  ratedFlow_L_per_h: ['nominal flow', 'design flow'],
  ratedLitres_L: ['rated capacity', 'rated volume', 'litres per set'],
  pore_nm: ['pore size'],
  highestPressure_kPa: ['max pressure', 'maximum pressure', 'maximum operating pressure'],
  highestTurbidity_NTU: ['max turbidity', 'maximum turbidity'],
  lowestFlow_L_per_h: ['min flow', 'minimum flow'],
  lifeLimit_years: ['service life', 'service life years', 'replacement interval', 'replace after years'],
  pistonBore_mm: ['piston diameter', 'cylinder diameter'],
  pistonStroke_mm: ['stroke', 'stroke length'],
  leverRatio: ['mechanical advantage'],
  bacteria_log10: ['bacteria log reduction', 'bacteria reduction'],
  viruses_log10: ['virus log reduction', 'viruses log reduction', 'virus reduction'],
  protozoa_log10: ['protozoa log reduction', 'protozoa reduction'],
  coating: ['paint', 'roof paint'],
  lead: ['lead flashing', 'lead present'],
  asbestos: ['asbestos sheets', 'asbestos present'],
  underTrees: ['overhanging trees', 'trees overhang', 'overhanging branches'],
  daysOff_per_year: ['days without treatment', 'downtime days'],
  altitude_m: ['elevation', 'height above sea level'],
  pathogen: ['germ', 'organism'],
  typical_per_L: ['mean', 'average', 'concentration'],
  low_per_L: ['lower limit', 'minimum'],
  high_per_L: ['upper limit', 'maximum', '95th percentile'],
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
  return (
    text
      .normalize('NFKD')
      // One word, as people write it.
      .replaceAll('pH', 'ph')
      .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
      .toLowerCase()
      .split(/[^\p{L}\p{N}%°²³]+/u)
      .filter((word) => word !== '')
  );
}

/** Of how many words a unit is made, as L per m2 h bar is; the longest is looked for first. */
const unitWords_counts = [5, 4, 3, 2, 1] as const;

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
  for (const count of unitWords_counts) {
    if (unit !== null || words.length <= count) continue;
    unit = unitNamed(words.slice(-count).join(''));
    if (unit !== null) words.splice(-count);
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
