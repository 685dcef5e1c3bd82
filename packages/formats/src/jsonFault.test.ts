import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFaults } from './jsonFault.ts';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('jsonFaults', () => {
  it.each([
    ['', 'empty', 1, 1],
    ['{ "a": 1, }', 'trailingComma', 1, 9],
    ['{\n  "a": 1\n  "b": 2\n}', 'missingComma', 3, 3],
    ['{ // why\n "a": 1 }', 'comment', 1, 3],
    ['{ "a": 1 } # done', 'comment', 1, 12],
    ["{ 'a': 1 }", 'singleQuotes', 1, 3],
    ['{ “a”: 1 }', 'curlyQuotes', 1, 3],
    ['{ a: 1 }', 'nameWithoutQuotes', 1, 3],
    ['{ "a": NaN }', 'notANumber', 1, 8],
    ['{ "a": .5 }', 'notANumber', 1, 8],
    ['{ "a": 007 }', 'notANumber', 1, 8],
    ['{ "a": 0,95 }', 'decimalComma', 1, 9],
    ['{ "a": 1', 'notClosed', 1, 1],
    ['{ "a": "b', 'notClosed', 1, 8],
    ['{ "a": "b\n" }', 'lineInText', 1, 8],
    ['{} {}', 'moreBehind', 1, 4],
    ['{ "a" 1 }', 'unexpected', 1, 7],
  ])('names %j: %s in line %i, character %i', (source, kind, line, column) => {
    expect(isJson(source)).toBe(false);
    expect(jsonFaults(source).fault).toMatchObject({ kind, line, column });
  });

  it('finds keys that stand twice in one object, and not those of two', () => {
    expect(jsonFaults('{ "a": 1,\n "a": 2, "b": { "a": 3 } }').twice).toEqual([{ key: 'a', line: 2 }]);
  });

  it('refuses exactly what JSON.parse refuses', () => {
    const mark = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"',
      ' ',
      '\n',
      '1',
      '-',
      '.',
      'e',
      'a',
      'true',
      '"a"',
      '\\',
      '//',
    );
    let sound = 0;
    const seen = (text: string) => {
      if (isJson(text)) sound++;
      expect(jsonFaults(text).fault === null).toBe(isJson(text));
    };
    fc.assert(
      fc.property(fc.array(mark, { maxLength: 9 }), (marks) => seen(marks.join(''))),
      { numRuns: 3000, seed: 5 },
    );
    fc.assert(
      fc.property(fc.json(), (text) => seen(text)),
      { numRuns: 300, seed: 6 },
    );
    const cut = fc.tuple(fc.json(), fc.nat(), fc.constantFrom('', ',', '"', '}', 'x', '1'));
    fc.assert(
      fc.property(cut, ([text, at, put]) => {
        const i = at % (text.length + 1);
        seen(text.slice(0, i) + put + text.slice(i + 1));
      }),
      { numRuns: 2000, seed: 7 },
    );
    expect(sound).toBeGreaterThan(400);
  });

  it('does not fall over a text nested too deep for it', () => {
    expect(jsonFaults('['.repeat(100_000) + ']'.repeat(100_000)).fault).toBeNull();
    expect(jsonFaults('['.repeat(100_000)).fault).toMatchObject({ kind: 'tooDeep' });
  });
});
