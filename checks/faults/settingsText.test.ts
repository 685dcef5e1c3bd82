import { defaultSettings } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { doubted, good, line, readFiles } from './folder.ts';

const all = ['S001', 'S002', 'S003'];
const withText = (text: string | Uint8Array) => readFiles({ ...good, 'settings.json': text });

describe('settings.json that cannot be read', () => {
  it.each([
    [
      'a comma too many',
      '{\n  "seed": 7,\n}\n',
      'in line 2, character 12, a comma stands before the closing bracket',
      /^Take that comma out/,
    ],
    [
      'a comma too few',
      '{\n  "seed": 7\n  "draws": 500\n}',
      'in line 3, character 3, a comma is missing before "draws": 500',
      /^Write a comma/,
    ],
    [
      'a remark',
      '{\n  // ours\n  "seed": 7\n}',
      'in line 2, character 3, a remark begins (// ours)',
      /^Take the remark out/,
    ],
    ['single quotes', "{ 'seed': 7 }", 'in line 1, character 3, a text stands in single quotes', /"double quotes"/],
    [
      'curly quotes',
      '{ “seed”: 7 }',
      'in line 1, character 3, a text stands in curly quotes',
      /straight "double quotes"/,
    ],
    [
      'a name without quotes',
      '{ seed: 7 }',
      'in line 1, character 3, seed: 7 } stands without quotes',
      /"double quotes"/,
    ],
    ['NaN', '{ "seed": NaN }', 'in line 1, character 11, NaN } is no number', /decimal point/],
    [
      'a decimal comma',
      '{ "firstFlush_mm": 0,5 }',
      'in line 1, character 21, a number has a decimal comma',
      /with a point/,
    ],
    ['no end', '{ "seed": 7', 'in line 1, character 1, a bracket or a quote is opened and not closed', /^Close it/],
    ['nothing', '', 'in line 1, character 1, nothing stands in it', /^Fill it/],
    ['two of them', '{}\n{}', 'in line 2, character 1, {} stands behind the end', /^Take out/],
  ])('for %s: said in words, with line and character', async (_, text, what, todo) => {
    const read = await withText(text);
    expect(read.problems.map(line)).toEqual(['settings.not_json blocker @ settings.json - - = "settings.json"']);
    const said = problemSentence(read.problems[0]!);
    expect(said.what).toContain(what);
    expect(said.todo).toMatch(todo);
    expect(`${said.what} ${said.todo}`).not.toMatch(/JSON|token|position|Unexpected/);
    expect(read.facts.settings).toEqual(defaultSettings);
    expect(doubted(read)).toEqual(all);
  });
});

describe('settings.json with values that cannot be used', () => {
  it('a number beyond all numbers is named as such', async () => {
    const read = await withText('{ "seed": 1e999 }');
    expect(read.problems.map(line)).toEqual(['settings.wrong_value blocker @ settings.json - seed = "Infinity"']);
    expect(read.facts.settings).toEqual(defaultSettings);
  });

  it('a setting that stands twice puts every site in doubt, with the line of the second', async () => {
    const read = await withText('{\n  "seed": 7,\n  "seed": 8\n}');
    expect(read.problems.map(line)).toEqual(['settings.key_twice blocker @ settings.json - seed = "seed"']);
    expect(problemSentence(read.problems[0]!).what).toContain('again in line 3');
    expect(doubted(read)).toEqual(all);
  });

  it('a list at the top', async () => {
    const read = await withText('[{ "seed": 7 }]');
    const { what, todo } = problemSentence(read.problems[0]!);
    expect(what).toBe('settings.json is not one object in { }, but [{"seed":7}]; every default was used.');
    expect(todo).toContain('{ "programme": "…" }');
  });

  it('with its mark at the start is read', async () => {
    const read = await withText('\uFEFF{ "seed": 7 }');
    expect(read.problems).toEqual([]);
    expect(read.facts.settings.seed).toBe(7);
  });
});
