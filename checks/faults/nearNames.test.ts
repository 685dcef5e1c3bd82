import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { type Files, good, readFiles } from './folder.ts';

/** The good folder with one file under another name. */
function renamed(from: string, to: string): Files {
  const { [from]: text, ...others } = good;
  return { ...others, [to]: text! };
}

describe('a file that stands under nearly its name', () => {
  it.each([
    ['sites.csv', 'Sites.csv', 'Rename Sites.csv to sites.csv'],
    ['sites.csv', 'site.csv', 'Rename site.csv to sites.csv'],
    ['sites.csv', 'sites (1).csv', 'Rename sites (1).csv to sites.csv'],
    ['sites.csv', 'sites - Copy.csv', 'Rename sites - Copy.csv to sites.csv'],
    ['sites.csv', 'SITES.CSV', 'Rename SITES.CSV to sites.csv'],
    ['sites.csv', 'sites.xlsx', 'Save sites.xlsx as "CSV UTF-8" under the name sites.csv'],
    ['sites.csv', 'sites.txt', 'Save sites.txt as "CSV UTF-8" under the name sites.csv'],
    ['tanks.csv', 'tnaks.csv', 'Rename tnaks.csv to tanks.csv'],
  ])('%s as %s: told, not taken', async (file, name, advice) => {
    const read = await readFiles(renamed(file, name));
    const missing = read.problems.filter(({ code }) => code === 'file.missing');
    expect(missing.map(({ place, facts }) => [place.file, facts['likely']])).toEqual([[file, name]]);
    expect(problemSentence(missing[0]!).todo).toContain(advice);
  });

  it.each([
    ['rain/G-east.csv', 'G-east.csv', 'Move or rename G-east.csv to rain/G-east.csv'],
    ['rain/G-east.csv', 'rain/g-east.csv', 'Move or rename rain/g-east.csv to rain/G-east.csv'],
    ['rain/G-east.csv', 'rain/G-east (2).csv', 'Move or rename rain/G-east (2).csv to rain/G-east.csv'],
    ['rain/G-east.csv', 'rain/G-east.xlsx', 'Move or rename rain/G-east.xlsx to rain/G-east.csv'],
  ])('%s as %s: told, not taken', async (file, name, advice) => {
    const read = await readFiles(renamed(file, name));
    const missing = read.problems.filter(({ code }) => code === 'rainFile.missing');
    expect(missing.map(({ place, facts }) => [place.file, facts['likely']])).toEqual([[file, name]]);
    expect(problemSentence(missing[0]!).todo).toContain(advice);
    expect(read.facts.gauges[0]!.readings).toEqual([]);
  });

  it('is not told of a file that is one of the tables, or of none like it', async () => {
    const { 'roofs.csv': _, ...others } = good;
    const read = await readFiles({ ...others, 'photo.jpg': 'x', 'notes.txt': 'x' });
    const [missing] = read.problems.filter(({ code }) => code === 'file.missing');
    expect(missing!.facts['likely']).toBe('');
    expect(problemSentence(missing!).what).toBe('The file "roofs.csv" is not in the folder.');
  });
});
