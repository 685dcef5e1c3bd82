import { defaultSettings } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { doubted, good, line, readFiles } from './folder.ts';

const all = ['S001', 'S002', 'S003'];
const withSettings = (settings: unknown) => readFiles({ ...good, 'settings.json': JSON.stringify(settings) });

describe('settings at fault', () => {
  it('that are not JSON: the defaults, and every site in doubt', async () => {
    const read = await readFiles({ ...good, 'settings.json': '{ "programme": "Tarn' });
    expect(read.problems.map(line)).toEqual(['settings.not_json blocker @ settings.json - - = "settings.json"']);
    expect(read.facts.settings).toEqual(defaultSettings);
    expect(doubted(read)).toEqual(all);
  });

  it('that are a list', async () => {
    const read = await withSettings([1]);
    expect(read.problems.map(line)).toEqual(['settings.wrong_value blocker @ settings.json -  = "[1]"']);
    expect(read.facts.settings).toEqual(defaultSettings);
  });

  it('with a key nobody knows: a warning with the likely one', async () => {
    const read = await withSettings({ litres_per_person: 10, target: { daysmet: 0.9 } });
    expect(read.problems.map(line)).toEqual([
      'settings.unknown_key warning @ settings.json - litres_per_person = "10"',
      'settings.unknown_key warning @ settings.json - target.daysmet = "0.9"',
    ]);
    expect(read.problems[1]!.facts['likely']).toBe('');
    expect(doubted(read)).toEqual([]);
    expect(read.facts.settings).toEqual(defaultSettings);
  });

  const wrong = [
    ['a number in quotes', { litres_per_person_per_day: '15' }, 'litres_per_person_per_day', '"15"', '7.5'],
    ['a share above one', { target: { daysMet_fraction: 95 } }, 'target.daysMet_fraction', '95', '0.95'],
    ['null where a number is needed', { draws: null }, 'draws', 'null', '1000'],
    ['half a year', { leastYears: 10.5 }, 'leastYears', '10.5', '10'],
    ['a month that is not', { waterYearStartMonth: 13 }, 'waterYearStartMonth', '13', 'null'],
    ['an order of the day nobody knows', { dayOrder: 'yes' }, 'dayOrder', '"yes"', '"drawFirst"'],
    ['a target that is a number', { target: 0.95 }, 'target', '0.95', JSON.stringify(defaultSettings.target)],
  ] as const;
  it.each(wrong)('with %s: a blocker that says which default is used', async (_, settings, key, value, used) => {
    const read = await withSettings(settings);
    expect(read.problems.map(line)).toEqual([
      `settings.wrong_value blocker @ settings.json - ${key} = ${JSON.stringify(value)}`,
    ]);
    expect(read.problems[0]!.facts['used']).toBe(used);
    expect(read.facts.settings).toEqual(defaultSettings);
    expect(doubted(read)).toEqual(all);
  });

  it('with a name that is not text costs the name only', async () => {
    const read = await withSettings({ programme: 5, seed: 9 });
    expect(read.problems.map(({ code }) => code)).toEqual(['settings.wrong_value']);
    expect(read.facts.settings).toEqual({ ...defaultSettings, seed: 9 });
    expect(doubted(read)).toEqual([]);
  });

  it('outside the usual are used, with a warning', async () => {
    const read = await withSettings({ target: { daysMet_fraction: 0.5 }, waterYearStartMonth: null });
    expect(read.problems.map(line)).toEqual([
      'settings.unusual warning @ settings.json - target.daysMet_fraction = "0.5"',
    ]);
    expect(read.facts.settings.target.daysMet_fraction).toBe(0.5);
  });

  it('nested deeper than anything can be written out', async () => {
    const deep = '['.repeat(100_000) + ']'.repeat(100_000);
    const read = await readFiles({ ...good, 'settings.json': `{ "seed": ${deep} }` });
    expect(read.problems.map(line)).toEqual(['settings.wrong_value blocker @ settings.json - seed = "[…]"']);
  });

  it('cannot reach the prototype of anything', async () => {
    const read = await readFiles({ ...good, 'settings.json': '{ "__proto__": { "draws": 7 }, "constructor": 1 }' });
    expect(read.problems.map(({ code, place }) => [code, place.column])).toEqual([
      ['settings.unknown_key', '__proto__'],
      ['settings.unknown_key', 'constructor'],
    ]);
    expect(read.facts.settings).toEqual(defaultSettings);
  });
});

describe('datapackage.json at fault', () => {
  const withPackage = (descriptor: unknown) =>
    readFiles({
      ...good,
      'datapackage.json': typeof descriptor === 'string' ? descriptor : JSON.stringify(descriptor),
    });

  it.each([
    ['not JSON', '{'],
    ['a number', '5'],
    ['null', 'null'],
    ['without resources', '{}'],
  ])('is a warning where it is %s', async (_, text) => {
    const read = await withPackage(text);
    expect(read.problems.map(line)).toEqual(['package.not_json warning @ datapackage.json - - = "datapackage.json"']);
    expect(doubted(read)).toEqual([]);
    expect(read.facts.sites).toHaveLength(3);
  });

  it.each([
    '/etc/hostname',
    '../sites.csv',
    'rain/../../x.csv',
    'C:\\x.csv',
    'https://example.org/x.csv',
    '~/x.csv',
    'a\u0000b',
  ])('never leads out of the folder: %s', async (path) => {
    const read = await withPackage({ resources: [{ name: 'x', path }] });
    expect(read.problems.map(({ code, facts }) => [code, facts['value']])).toEqual([['package.path_unsafe', path]]);
  });

  it('names a file that is not there, and passes those that are', async () => {
    const resources = [{ path: 'sites.csv' }, { path: ['rain/G-east.csv', 'rain/G-north.csv'] }, { data: [] }, null, 7];
    const read = await withPackage({ resources });
    expect(read.problems.map(line)).toEqual([
      'package.file_absent warning @ datapackage.json - - = "rain/G-north.csv"',
    ]);
  });
});
