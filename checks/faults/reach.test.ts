import { problemsOf, readyProgramme } from '@eavewell/engine';
import { expect, it } from 'vitest';
import { changed, doubted, type Files, line, readFiles } from './folder.ts';

/** The good folder with the third site's gauge left empty. */
const unnamed = (): Files => changed('sites.csv', '240,G-west', '240,');
const codesOf = async (files: Files) => {
  const { facts } = await readFiles(files);
  const ready = readyProgramme(facts);
  return problemsOf(facts.sites[2]!, ready).map(({ code }) => code);
};

it('an empty gaugeId is no fault where the site has a position: it takes the gauges within reach', async () => {
  const read = await readFiles(unnamed());
  expect(read.problems).toEqual([]);
  expect(read.facts.sites[2]).toMatchObject({ gaugeId: null, latitude_deg: -8.75, longitude_deg: 125.5 });
  expect(await codesOf(unnamed())).toContain('site.gauge_by_distance');
});

it('a position left empty too leaves no gauge to take, and says so', async () => {
  const files = changed('sites.csv', '-8.75,125.5,240,G-west', ',,240,');
  expect((await readFiles(files)).problems).toEqual([]);
  expect(await codesOf(files)).toContain('site.gauge_unknown');
});

it('a gauge whose row cannot all be used puts such a site in doubt: it might have been the nearest', async () => {
  const gauges = String(unnamed()['gauges.csv']).replace('-8.5,125.2,07:00', '-8.5,195.2,07:00');
  const files = { ...unnamed(), 'gauges.csv': gauges };
  const read = await readFiles(files);
  expect(read.problems.map(line)).toEqual(['cell.out_of_range blocker @ gauges.csv 2 longitude_deg = "195.2"']);
  // S001 and S002 name the gauge; S003 names none.
  expect(doubted(read)).toEqual(['S001', 'S002', 'S003']);
});

it('a gaugeId that is there no more is a fault still, and no reason to take others', async () => {
  const files = changed('sites.csv', '240,G-west', '240,G-wset');
  const read = await readFiles(files);
  expect(read.problems.map(line)).toEqual(['link.unknown_gauge blocker @ sites.csv 4 gaugeId = "G-wset"']);
  expect(doubted(read)).toEqual(['S003']);
});
