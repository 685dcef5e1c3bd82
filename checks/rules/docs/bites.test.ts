import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { docFaults } from './docRules.ts';
import { type DoorFunction, doorFunctions, type EngineProgram, readEngine } from './engineProgram.ts';
import { exampleLines, roundingOf, runExample, same } from './examples.ts';
import { namesWithoutTheirUnit, numericNames } from './numericNames.ts';
import { sourceFaults, sourceListFaults } from './sources.ts';

const world = { sourceIds: new Set(['a-book-1999']), problemCodes: new Set(['roof.none']) };

const comment = (lines: readonly string[]) => `/**\n${lines.map((line) => ` * ${line}\n`).join('')} */\n`;
const sound = [
  'What is twice the depth? Adds it to itself.',
  '',
  '@param depth_mm - depth of rain [mm], 0 or more',
  '@returns twice the depth [mm]',
  '@source a-book-1999, p. 3',
  '@example',
  'twice(2) // → 4',
];
const body = 'export function twice(depth_mm: number): number {\n  return 2 * depth_mm;\n}\n';
const without = (start: string) => sound.filter((line) => !line.startsWith(start));
const instead = (start: string, line: string) => sound.map((own) => (own.startsWith(start) ? line : own));

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** An engine whose one room has this text. */
function engineOf(text: string, room = 'water/roof'): EngineProgram {
  const folder = mkdtempSync(join(tmpdir(), 'made up engine '));
  folders.push(folder);
  const files = { 'kernel/index.ts': 'export type DayIndex = number;\n', [`${room}/index.ts`]: text };
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return readEngine(folder);
}

function only(engine: EngineProgram): DoorFunction {
  const found = doorFunctions(engine);
  expect(found.length).toBe(1);
  return found[0]!;
}

function faultsOf(text: string, room?: string): readonly string[] {
  const engine = engineOf(text, room);
  return docFaults(engine, only(engine), world);
}

const shapeOf = (parameter: string, what: string, back = 'number') =>
  `${comment(['What?', `@param x - ${what}`, '@returns it [mm]', '@definition ours'])}export function f(x: ${parameter}): ${back} {\n  throw x;\n}\n`;

describe('the doc check', () => {
  const cases: readonly (readonly [string, string, readonly string[]])[] = [
    ['a sound comment', comment(sound) + body, []],
    ['no comment', body, ['has no doc comment']],
    ['no question', comment(sound.slice(2)) + body, ['has no doc comment']],
    ['no @param', comment(without('@param')) + body, ['has no @param depth_mm']],
    [
      'a parameter without a unit',
      comment(instead('@param', '@param depth_mm - depth')) + body,
      ['@param depth_mm has no [unit]'],
    ],
    [
      'a parameter that is none',
      comment([...sound.slice(0, 3), '@param old - gone', ...sound.slice(3)]) + body,
      ['@param old is no parameter'],
    ],
    ['no @returns', comment(without('@returns')) + body, ['has no @returns']],
    ['a return without a unit', comment(instead('@returns', '@returns twice')) + body, ['@returns has no [unit]']],
    ['no source', comment(without('@source')) + body, ['has neither @source nor @definition']],
    [
      'an unknown source',
      comment(instead('@source', '@source other-2001, p. 1')) + body,
      ['source other-2001 is not in docs/sources.json'],
    ],
    ['no example', comment(sound.slice(0, 5)) + body, ['takes and gives plain values and has no @example']],
    [
      'an example that shows nothing',
      comment(instead('twice', 'twice(2)')) + body,
      ['@example has no line "expression // → literal"'],
    ],
    ['a typed array without a unit', shapeOf('Float64Array', 'the rain'), ['@param x has no [unit]']],
    ['an object of bare numbers', shapeOf('{ readonly depth: number }', 'the rain'), ['@param x has no [unit]']],
    ['an object whose fields carry units', shapeOf('{ readonly depth_mm: number }', 'the rain'), []],
    ['a map of bare numbers', shapeOf('ReadonlyMap<string, number>', 'the rain'), ['@param x has no [unit]']],
    ['a callback', shapeOf('() => number', 'the rain'), []],
    ['a yes/no', shapeOf('boolean | string | (() => void)', 'a flag'), []],
  ];
  test.each(cases)('on %s', (_, text, faults) => {
    expect(faultsOf(text)).toEqual(faults);
  });

  test('asks for codes that exist where a function may fail', () => {
    const checked = 'type Checked<T> = { value: T };\n';
    const back = `${checked}${comment(['What?', '@param x - a text', '@returns it', '@definition ours'])}`;
    const code = 'export function f(x: string): Checked<string> {\n  throw x;\n}\n';
    expect(faultsOf(back + code)).toEqual(['returns Checked and names no @problem']);
    const told = (line: string) => faultsOf(back.replace('@definition', `@problem ${line}\n * @definition`) + code);
    expect(told('roof.none - when there is no roof')).toEqual([]);
    expect(told('roof.gone - when there is no roof')).toHaveLength(1);
    expect(told('roof.none')).toHaveLength(1);
  });

  test("lets the kernel's one-line conversions pass with a unit only", () => {
    const line = (text: string) => `/** ${text} */\n${body}`;
    expect(faultsOf(line('Twice the depth [mm].'), 'kernel')).toEqual([]);
    expect(faultsOf(line('Twice the depth.'), 'kernel')).toEqual(['has no [unit] in its comment']);
    expect(faultsOf(line('Twice the depth [mm].'))).not.toEqual([]);
  });
});

describe('examples', () => {
  const run = (line: string) => {
    const [example] = exampleLines(only(engineOf(comment(instead('twice', line)) + body)));
    return runExample(example!, { twice: (x: number) => 2 * x });
  };
  test('are run', () => {
    expect(run('twice(2) // → 4')).toBeNull();
    expect(run('twice(2) // → 5')).toBe('gave 4, not 5');
    expect(run('thrice(2) // → 6')).toMatch(/^threw ReferenceError/);
    expect(run('twice(1 / 6) // → 0.333')).toBeNull();
    expect(run('twice(1 / 6) // → 0.334')).not.toBeNull();
    expect(run('[twice(1), null] // → [2, null]')).toBeNull();
    expect(run('[twice(1), null] // → [2, 0]')).not.toBeNull();
  });

  test('are compared to half their last digit, and to the full where they have few', () => {
    expect(roundingOf('0.333')).toBeCloseTo(0.0005, 12);
    expect(roundingOf('2.20e-22')).toBeCloseTo(0.5e-24, 30);
    expect([roundingOf('0.5'), roundingOf('0.05'), roundingOf('16400')]).toEqual([0, 0, 0]);
    expect(same(NaN, 1)).toBe(false);
    expect(same(null, 0)).toBe(false);
    expect(same(Infinity, 1e308)).toBe(false);
    expect(same(Float64Array.of(1, 2), [1, 2])).toBe(true);
    expect(same([1, 2], [1, 2, 3])).toBe(false);
    expect(same({ a: 1 }, { a: 1, b: undefined })).toBe(false);
    expect(same(1 + 1e-8, 1)).toBe(false);
  });
});

test('names without their unit are found', () => {
  const text = `
    import type { DayIndex } from '../../kernel/index.ts';
    export const depth = 1;
    export const depth_mm = 1;
    export const depths: readonly number[] = [1];
    export const word = 'a';
    export interface Range { readonly low: number; readonly high: number }
    export interface Roof {
      readonly area: number | null;
      readonly area_m2: number | null;
      readonly rain: Float64Array;
      readonly rain_mm: Float64Array;
      readonly wait: Range;
      readonly wait_days_range: Range;
      readonly handOver: DayIndex | null;
      readonly name: string;
    }
    const inside = 2;
    interface Hidden { readonly depth: number }
    export const use = (one: Hidden) => one.depth + inside;
  `;
  const found = namesWithoutTheirUnit(numericNames(engineOf(text))).map((line) => line.replace(/^\S+ /, ''));
  expect(found).toEqual(['depth', 'depths', 'Roof.area', 'Roof.rain', 'Roof.wait']);
});

test('sources are found by id', () => {
  const ids = new Set(['a-book-1999', 'fnv-1a']);
  expect(sourceFaults('a-book-1999, p. 3; FNV-1a, 32 bit; the rest is ours', ids)).toEqual([]);
  expect(sourceFaults('a-book-1999; no-book-2000', ids)).toHaveLength(1);
  expect(sourceFaults('', ids)).toHaveLength(1);
});

test('a list of sources with faults is refused', () => {
  const good = { id: 'a-book-1999', title: 'A book', publisher: 'A house', year: 1999, read: 'opened' };
  expect(sourceListFaults([good])).toEqual([]);
  for (const bad of [
    { id: 'A Book' },
    { title: '' },
    { year: '1999' },
    { read: 'seen' },
    { url: 'x' },
    { colour: 'red' },
  ])
    expect(sourceListFaults([{ ...good, ...bad }])).toHaveLength(1);
  expect(sourceListFaults([good, good])).toEqual(['a-book-1999: id stands twice']);
});
