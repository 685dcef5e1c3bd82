import { engineProblems, type Problem, workingCodes } from '@eavewell/engine';
import { recordProblems } from '@eavewell/records';
import { tableProblems } from '@eavewell/tables';
import { beforeAll, describe, expect, it } from 'vitest';
import { english, type Language, loadLanguage, problemSentence, tagAsked, workingText } from './index.ts';

const catalogue = { ...engineProblems, ...recordProblems, ...tableProblems };
const codes = Object.keys(catalogue) as (keyof typeof catalogue)[];

let spanish: Language;
beforeAll(async () => {
  spanish = await loadLanguage('es');
});

const made = (code: keyof typeof catalogue, facts: Problem['facts']): Problem => ({
  code,
  severity: catalogue[code],
  place: { file: 'roofs.csv', row: 14, column: 'length_m', day: '2010-07-20' },
  facts,
});

describe('Spanish', () => {
  it('says every problem in a sentence of its own, with what to do', () => {
    const same: string[] = [];
    for (const code of codes)
      for (const facts of [{}, { value: 'Abc', count: 3, days: 3, expected: 'number 0 to 10 [mm]', likely: '7.5' }]) {
        const inSpanish = problemSentence(made(code, facts), spanish);
        const inEnglish = problemSentence(made(code, facts), english);
        for (const text of [inSpanish.what, inSpanish.todo]) {
          expect(text, code).toMatch(/^["¿A-ZÁÉÍÓÚÑ0-9(]|^(?:settings|columns|datapackage)\.json/);
          expect(text, code).toMatch(/[.?]$/);
          expect(text, code).not.toMatch(/undefined|NaN|\[object|null| {2}|\.\./);
          expect(text, code).not.toMatch(/\b(?:the|and|of|with|was|were|not|nothing)\b/i);
        }
        if (inSpanish.what === inEnglish.what || inSpanish.todo === inEnglish.todo) same.push(code);
      }
    expect(same).toEqual([]);
  });

  it('says what a cell should hold, and the place, in its own words and numbers', () => {
    const { todo } = problemSentence(
      made('cell.missing', { expected: 'whole number above 0 to 12 [person]' }),
      spanish,
    );
    expect(todo).toBe('Complétela: un número entero mayor que 0 a 12 personas.');
    expect(problemSentence(made('cell.missing', { expected: 'whole number above 0 to 12 [person]' })).todo).toBe(
      'Fill it in: whole number above 0 to 12 people.',
    );
    expect(spanish.place({ file: 'roofs.csv', row: 14, siteId: 'S1', day: '2010-07-20' })).toBe(
      'roofs.csv, fila 14, sitio S1, 20 de julio de 2010',
    );
    expect(spanish.numbers.quantity({ low: 14.6, high: 29.2 }, 'day/year')).toBe('15 a 29 días al año');
    expect(spanish.numbers.quantity(1, 'day')).toBe('1 día');
    expect(spanish.numbers.percent(0.9998)).toBe('99,9 %');
    expect(spanish.numbers.distance_km(0.4)).toBe('400 m');
    expect(spanish.numbers.distance_km(12.34)).toBe('12,3 km');
    expect(spanish.numbers.fixed(1234.5, 2)).toBe('1234,50');
    expect(spanish.numbers.fixed(12_345.5, 1)).toBe('12\u00a0345,5');
    expect(spanish.verdicts).toEqual({
      holds: 'alcanza',
      tight: 'justo',
      short: 'corto',
      unknown: 'sin datos',
      notJudged: 'no se juzga',
    });
  });

  it('labels every step of a working', () => {
    for (const code of workingCodes) {
      const line = { code, value: 1, unit: 'L', inputs: [], source: 'survey' } as const;
      expect(workingText(line, spanish).label).not.toBe(workingText(line).label);
    }
  });

  it('is one language for all its regions, each with its own decimal mark', async () => {
    const [mexico, colombia] = [await loadLanguage('es-MX'), await loadLanguage('es_CO')];
    expect([mexico.code, colombia.code]).toEqual(['es-MX', 'es-CO']);
    expect([mexico.numbers.days(7.5), colombia.numbers.days(7.5)]).toEqual(['7.5 días', '7,5 días']);
    expect(await loadLanguage('es-MX')).toBe(mexico);
    expect(await loadLanguage('xx')).toBe(english);
  });
});

it('the language asked for is the heaviest there is', () => {
  expect(tagAsked(undefined)).toBe('en');
  expect(tagAsked('es')).toBe('es');
  expect(tagAsked('fr;q=1, es-PE;q=0.3, en;q=0.2')).toBe('es-PE');
  expect(tagAsked('en;q=0.2, es;q=0.9')).toBe('es');
  expect(tagAsked('es;q=0')).toBe('en');
  expect(tagAsked('*')).toBe('en');
  expect(tagAsked('es;q=2, es;q=x')).toBe('en');
});
