import fc from 'fast-check';
import { expect, it } from 'vitest';
import { folded, mistakesToBeginning, SiteFinder } from './findSites.ts';

const site = (siteId: string, name: string, area: string | null = null) => ({ siteId, name, area });
const sites = [
  site('S001', 'Bresolune school', 'Upper Tavi'),
  site('S002', 'Ardísund village hall', 'Lower Tavi'),
  site('S003', 'Ñandelu', 'Lower Tavi'),
  site('S010', 'Santa Rovina'),
  site('S100', 'Bresivane school', 'Upper Tavi'),
];
const finder = new SiteFinder(sites);
const found = (text: string) => [...(finder.find(text) ?? [])].map((at) => sites[at]!.siteId);

it('finds by name, id and area, whatever the case and the accents', () => {
  expect(found('BRESOLUNE')).toEqual(['S001']);
  expect(found('ardisund')).toEqual(['S002']);
  expect(found('nandelu')).toEqual(['S003']);
  expect(found('s010')).toEqual(['S010']);
  expect(found('lower tavi')).toEqual(['S002', 'S003']);
  expect(found('school upper')).toEqual(['S001', 'S100']);
  expect(found('santarovina')).toEqual(['S010']);
});

it('forgives a mistake or two, also while a name is still being typed', () => {
  expect(found('brezolu')[0]).toBe('S001');
  expect(found('bersolune')[0]).toBe('S001');
  expect(found('adrisund')[0]).toBe('S002');
  expect(found('ardissund hal')[0]).toBe('S002');
  expect(found('quorvane')).toEqual([]);
});

it('the word itself comes before its beginning, and that before a mistake', () => {
  const near = new SiteFinder([site('A', 'Tarnovi'), site('B', 'Tarn'), site('C', 'Tern'), site('D', 'Tarno')]);
  expect([...near.find('tarn')!]).toEqual([1, 0, 3, 2]);
});

it('nothing typed, or signs alone, finds nothing in particular', () => {
  expect(finder.find('')).toBeNull();
  expect(finder.find(' -- ')).toBeNull();
});

/** The same distance, by its definition: the fewest steps, tried in every way. */
function slowly(a: string, b: string): number {
  if (a === '' || b === '') return a.length + b.length;
  const swapped =
    a.length > 1 && b.length > 1 && a[0] === b[1] && a[1] === b[0] ? slowly(a.slice(2), b.slice(2)) + 1 : 99;
  const kept = slowly(a.slice(1), b.slice(1)) + (a[0] === b[0] ? 0 : 1);
  return Math.min(swapped, kept, slowly(a.slice(1), b) + 1, slowly(a, b.slice(1)) + 1);
}

it('counts mistakes as trying every way does', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 6 });
  fc.assert(
    fc.property(word, word, fc.integer({ min: 0, max: 3 }), (typed, whole, most) => {
      const beginnings = Array.from({ length: whole.length + 1 }, (_, end) => slowly(typed, whole.slice(0, end)));
      expect(mistakesToBeginning(typed, whole, most)).toBe(Math.min(most + 1, ...beginnings));
    }),
    { numRuns: 300 },
  );
});

it('folds letters of other scripts too', () => {
  expect(folded('Йоруна-Ола')).toBe('иоруна ола');
  expect(folded("N'Zeré (Est)")).toBe('nzere est');
});
