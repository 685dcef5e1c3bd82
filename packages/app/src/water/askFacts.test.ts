import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterAll, afterEach, beforeEach, expect, test, vi } from 'vitest';
import { factsAnswered, readingsAnswered } from './answerForTests.ts';
import { askFacts } from './askFacts.ts';
import { factsOfAnswer, readingsOfAnswer } from './factsOfAnswer.ts';

const wanted = { programmeId: 'p-1', siteId: 'S1', form: 'one', language: 'en' };

const facts = factsAnswered;
const readings = readingsAnswered;

/** What the program would answer, by the end of the address; a number is the status of a problem. Null: it is away. */
let answers: readonly (readonly [string, unknown])[] | null;
let asked: string[];

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  [answers, asked] = [null, []];
  vi.stubGlobal('fetch', async (address: string) => {
    asked.push(address);
    if (answers === null) throw new TypeError('away');
    const [, body] = answers.find(([end]) => address.endsWith(end)) ?? ['', 404];
    const status = typeof body === 'number' ? body : 200;
    return { status, json: async () => (typeof body === 'number' ? { problems: [], status } : body) };
  });
});
afterEach(() => vi.unstubAllGlobals());
// The browser of a test ends with it: other files share this process.
afterAll(() => void Reflect.deleteProperty(globalThis, 'indexedDB'));

test('every number comes back as it was, and a text that looks like one stays a text', () => {
  const one = factsOfAnswer(facts(), new Map([['G1', readings]]));
  expect(one.site.latitude_deg).toBe(-0);
  expect(one.site.rainFactor).toBe(Number.POSITIVE_INFINITY);
  expect(one.site.name).toBe('NaN');
  expect(one.facts.gauges.map(({ gaugeId, readings: read }) => [gaugeId, read.length])).toEqual([
    ['G1', 4],
    ['G2', 0],
  ]);
  expect(readingsOfAnswer(readings)).toEqual([
    { day: 100, rain_mm: 0.1, row: 2 },
    { day: 101, rain_mm: null, row: 2 },
    { day: 102, rain_mm: Number.NaN, row: 3 },
    { day: 99, rain_mm: 12.5, row: 7 },
  ]);
});

test('what does not hold together is not taken for facts', () => {
  expect(() => factsOfAnswer(facts(), new Map())).toThrow('G1');
  expect(() => readingsOfAnswer({ ...readings, days: [[100, 3, 1]] })).toThrow('G1');
});

test('a site that was looked at is there when the program is away, with the time it was read', async () => {
  expect(await askFacts(wanted)).toEqual({ problem: 'unreachable', body: null });
  answers = [
    ['/facts', facts()],
    ['of=a', readings],
  ];
  const first = await askFacts(wanted);
  expect(first).toMatchObject({ problem: null, isKept: false, one: { version: 3 } });
  answers = null;
  const away = await askFacts(wanted);
  expect(away).toMatchObject({ problem: null, isKept: true });
  if (first.problem !== null || away.problem !== null) throw new Error('no facts');
  expect([away.one, away.tag]).toEqual([first.one, first.tag]);
  // Another start of the program does not know this page: it shows what was kept; so does no other form of the pages.
  answers = [['/facts', 403]];
  expect(await askFacts(wanted)).toMatchObject({ problem: null, isKept: true });
  expect(await askFacts({ ...wanted, form: 'two' })).toMatchObject({ problem: 'refused' });
  expect(await askFacts({ ...wanted, siteId: 'S2' })).toMatchObject({ problem: 'refused' });
});

test('readings are asked for once for each content', async () => {
  answers = [
    ['/facts', facts()],
    ['of=a', readings],
  ];
  const first = await askFacts(wanted);
  const again = await askFacts(wanted);
  expect(asked.filter((address) => address.includes('readings'))).toHaveLength(1);
  answers = [
    ['/facts', { ...facts('b', 41), version: 4, designVersion: 4 }],
    ['of=b', { ...readings, rain_mm: [1, 2, 3, 4] }],
  ];
  const other = await askFacts(wanted);
  expect(asked.filter((address) => address.includes('readings'))).toHaveLength(2);
  if (first.problem !== null || again.problem !== null || other.problem !== null) throw new Error('no facts');
  expect(again.tag).toBe(first.tag);
  expect(other.tag).not.toBe(first.tag);
  expect(other.one.facts.gauges[0]!.readings[3]).toEqual({ day: 99, rain_mm: 4, row: 7 });
});

test('what the program says is wrong is said; while it judges there is nothing yet', async () => {
  answers = [['/facts', 409]];
  expect(await askFacts(wanted)).toMatchObject({ problem: 'notYet', body: { status: 409 } });
  answers = [['/facts', 404]];
  expect(await askFacts(wanted)).toMatchObject({ problem: 'refused', body: { status: 404 } });
  // Readings that are others by now: the facts are asked for once more.
  answers = [['/facts', facts()]];
  expect(await askFacts(wanted)).toMatchObject({ problem: 'notYet' });
  expect(asked.filter((address) => address.endsWith('/facts'))).toHaveLength(4);
  answers = [
    ['/facts', facts()],
    ['of=a', { ...readings, rain_mm: [1] }],
  ];
  expect(await askFacts(wanted)).toMatchObject({ problem: 'broken' });
  // What cannot be read is not kept: asked again, it may be whole.
  answers = [
    ['/facts', facts()],
    ['of=a', readings],
  ];
  expect(await askFacts(wanted)).toMatchObject({ problem: null });
});
