import { english, loadLanguage } from '@eavewell/words';
import { expect, it } from 'vitest';
import { textsOf } from '../reading/readBack.testing.ts';
import type { SitePackContent } from './content.ts';
import { content, load, options, section } from './madeUpPack.testing.ts';
import { sitePack } from './sitePack.ts';

function made(given: SitePackContent = content, language = english, more = {}) {
  const pack = sitePack(given, language, { ...options, ...more });
  if (pack.kind !== 'made') throw new Error(pack.said.join(' '));
  return { ...pack, pages: textsOf(pack.bytes) };
}

/** The usual pack, made once. */
const usual = made();

const flat = (pages: readonly (readonly string[])[]) => pages.flat().join(' ').replaceAll('\u00a0', ' ');

it('what the pack says is read back from the file: who, way, stations, kit, steps, tests, pictures', () => {
  const { pages, pages_count } = usual;
  expect(pages.length).toBe(pages_count);
  expect(pages_count).toBeLessThanOrEqual(6);
  const [first] = pages;
  for (const said of [
    `Site pack, 1 of ${pages_count}`,
    'Pellanta, school hall',
    '90 people. Caretaker: M. Delvu',
    'Halune store',
    '5 h 30 min (4 to 8 h)',
    'tank short',
    'dry 21.7 d a year, target at most 18',
    'build the second tank',
    `1 : ${section.oneTo}`,
    'A full tank weighs 12 t.',
    'P1',
  ])
    expect(flat([first!]), said).toContain(said);
  const all = flat(pages);
  for (const said of [
    'In 15 of 32 years',
    'pipe number 5',
    '450 kg of at most 600 kg',
    'Chlorine and fuel never',
    'Ladder:',
    'Set the tank level',
    'As planned, with a new unit: 410 L an hour',
    'ground and stand, by whoever is licensed',
    'picture 12',
  ])
    expect(all, said).toContain(said);
});

it('what can hurt is on the first page however long the finding is, which then stands behind it, whole', () => {
  const finding = 'The tank is short in most of the years that were kept. '.repeat(40).trim();
  const { pages } = made({ ...content, finding });
  expect(flat([pages[0]!])).toContain('A full tank weighs 12 t.');
  expect(flat([pages[0]!]).match(/The tank is short/g)?.length).toBe(1);
  expect(flat(pages.slice(1)).match(/The tank is short/g)?.length).toBe(40);
});

it('exceptions stand first, and what was not judged is not told', () => {
  const { pages } = usual;
  const said = flat([pages[0]!]);
  const order = ['tank short', 'gutter tight', 'stand unknown', 'roof holds'].map((one) => said.lastIndexOf(one));
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(order[0]).toBeGreaterThan(0);
  expect(said).not.toContain('settling tank not judged');
});

it('the same content is the same file, and another hour is another file', () => {
  const one = usual.bytes;
  expect(Buffer.compare(one, made().bytes)).toBe(0);
  expect(Buffer.compare(one, made(content, english, { printedAt: '17:21' }).bytes)).not.toBe(0);
});

const many: SitePackContent = {
  ...content,
  loads: Array.from({ length: 7 }, (_, nth) =>
    load(`load ${nth + 1}`, 60, [`Caution of load ${nth + 1}. Keep it dry.`]),
  ),
};

it('a kit of many loads is shortened to six pages, tells how much it leaves out, and drops no caution', () => {
  const { pages, pages_count, leftOut_count, isOver } = made(many);
  expect(pages_count).toBeLessThanOrEqual(6);
  expect(isOver).toBe(false);
  const all = flat(pages);
  const told = [...all.matchAll(/and (\d+) more, in kit\.xlsx/g)].map(({ 1: one }) => Number(one));
  expect(told.length).toBe(7);
  expect(told.reduce((sum, one) => sum + one, 0)).toBe(leftOut_count);
  const shown = new Set(all.match(/pipe number \d+/g)).size;
  expect(shown * 7 + leftOut_count).toBe(7 * 60);
  for (let nth = 1; nth <= 7; nth++) expect(all).toContain(`Caution of load ${nth}.`);
});

it('a pack of more cautions than six pages hold is longer and says so', () => {
  const cautions = Array.from({ length: 12 }, (_, nth) => `Caution ${nth}. ${'Never alone on a ladder. '.repeat(12)}`);
  const steps = Array.from({ length: 12 }, (_, nth) => ({ said: `Step ${nth}.`, cautions }));
  const { pages, pages_count, isOver } = made({ ...content, steps });
  expect(isOver).toBe(true);
  expect(pages_count).toBeGreaterThan(6);
  const all = flat(pages);
  expect(all.match(/Never alone on a ladder\./g)?.length).toBe(12 * 12 * 12);
});

it('what is not known is told or left to be written in, never a zero', () => {
  const bare: SitePackContent = {
    ...content,
    people: null,
    caretaker: null,
    trip: null,
    way: [],
    section: null,
    stations: [],
    beforeAnything: [],
    cautions: [],
    loads: [
      {
        ...load('load 1', 1),
        weight_kg: null,
        limit_kg: null,
        longest_m: null,
        items: [{ partId: 'a', what: 'bag', size: null, count: 1, weight_kg: null, hands_count: null }],
      },
    ],
    steps: [],
    tests: {
      flow_L_per_h: null,
      taps_count: null,
      air_kPa: null,
      airMost_kPa: null,
      airFall_kPa_per_min: null,
      units: [],
      samplePlaces: [],
      residual_mg_per_L: null,
      hasChlorine: false,
    },
    pictures: [],
  };
  const { pages } = made(bare);
  const all = flat(pages);
  expect(all).toContain('There is no drawing');
  expect(all).toContain('No station could be judged');
  expect(all).toContain('weight not known');
  expect(all).toContain('No flow was planned');
  expect(all).toContain('Nobody drinks before the water test is read.');
  expect(all).not.toMatch(/NaN|undefined|null|\b0 kg/);
});

it('a letter that no face has is told by name, and no file is made', () => {
  const pack = sitePack({ ...content, caretaker: 'M. 🚰' }, english, options);
  if (pack.kind !== 'lettersMissing') throw new Error('a file was made');
  expect(pack.letters.map(({ codePoint }) => codePoint)).toEqual(['U+1F6B0']);
  expect(pack.said[0]).toContain('U+1F6B0');
  // In the head of a later page, in a drawing, in a picture's word: nowhere is one passed over.
  for (const change of [
    { name: 'ក' },
    { pictures: [{ ...content.pictures[0]!, title: 'ก' }] },
    { loads: [load('ก', 1)] },
    { cautions: ['\u{10FFFD}'] },
  ])
    expect(sitePack({ ...content, ...change }, english, options).kind).toBe('lettersMissing');
});

it('in a language from right to left the sheet is mirrored, its drawing is not, and it is read in its order', async () => {
  const language = await loadLanguage('ar-XB');
  const arabic = { ...content, name: 'مدرسة (القديمة) 12', caretaker: 'دلفو' };
  const { pages, bytes } = made(arabic, language);
  expect(flat(pages)).toContain('مدرسة (القديمة) 12');
  const [first] = pages;
  // Letters of the drawing stand as on the screen.
  expect(first).toContain('3.75\u00a0m');
  expect(bytes.length).toBeGreaterThan(20_000);
});

it('says its language, its name and what each piece is, and embeds its faces', () => {
  const file = Buffer.from(usual.bytes).toString('latin1');
  expect(file).toContain('/Lang (en)');
  expect(file).toContain('/MarkInfo');
  for (const role of ['/S /H1', '/S /H2', '/S /Table', '/S /TR', '/S /TH', '/S /TD', '/S /Figure', '/S /Note', '/S /L'])
    expect(file).toContain(role);
  expect(file).toContain('/FontFile2');
  expect(file).not.toContain('/Type1');
});

it('the record of tests says at what to test with air, never over what the catalogue gives the unit, and how much chlorine is left', () => {
  const all = flat(usual.pages);
  expect(all).toContain('Test at 100 kPa');
  expect(all).toContain('The catalogue gives the unit 150 kPa at most.');
  expect(all).toContain('falls by at most 1.2 kPa');
  expect(all).toContain('Free chlorine at the tap: 0.5 to 1 mg/L.');
  // What was tested over the limit once is not told as what to test at.
  const over = flat(made({ ...content, tests: { ...content.tests, air_kPa: 180 } }).pages);
  expect(over).not.toContain('180 kPa');
  expect(over).toContain('150 kPa at most');
  const bare = { ...content.tests, air_kPa: null, airMost_kPa: null, residual_mg_per_L: null };
  const unknown = flat(made({ ...content, tests: bare }).pages);
  expect(unknown).toContain('Test at the pressure the maker names');
  expect(unknown).toContain('Ask the health authority how much free chlorine');
});
