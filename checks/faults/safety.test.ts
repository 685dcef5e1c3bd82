import { designSites, type Problem, readyProgramme, type SiteDesign } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { type Files, good, readFiles } from './folder.ts';

const challenge = '6,5.9,6,challengeTest,An invented laboratory 2026';
/** Tables of a programme whose first site is told of in full; a change replaces a whole table. */
const told: Readonly<Record<string, string>> = {
  'rawWater.csv': [
    'siteId,secondSourceId,pathogen,typical_per_L,low_per_L,high_per_L,source',
    ',,campylobacter,0.3,0.01,1,An invented survey',
    ',,rotavirus,0.05,,0.2,An invented survey',
    ',,cryptosporidium,0.05,,0.2,An invented survey',
    '',
  ].join('\n'),
  'barriers.csv': [
    'siteId,barrierId,kind,bacteria_log10,viruses_log10,protozoa_log10,evidence,evidenceSource,used_fraction',
    `S001,B1,filter,${challenge},`,
    '',
  ].join('\n'),
  'settings.json': JSON.stringify({ skipping_fraction: 0, daysOff_per_year: 0, recontamination_fraction: 0 }),
};
const changed = (text: string, from: string, to: string): string => {
  expect(text, from).toContain(from);
  return text.replace(from, to);
};
const withChange = (file: string, from: string, to: string): Files => ({
  ...good,
  ...told,
  [file]: changed(told[file] ?? good[file]!, from, to),
});

async function designed(files: Files): Promise<{ read: ProgrammeRead; site: SiteDesign; said: readonly Problem[] }> {
  const read = await readFiles(files);
  const [site] = [...designSites(read.facts.sites, readyProgramme(read.facts))];
  // What is told of roofs, of samples and of what was not said is not at stake here.
  const said = site!.problems.filter(({ code }) => /^safety\.|^site\.station_in_doubt/.test(code));
  return { read, site: site!, said };
}
const lines = (problems: readonly Problem[]) =>
  problems
    .filter(({ code }) => !/lead_not_looked_for|bare_metal|no_clean_sample/.test(code))
    .map(({ code, severity }) => `${code} ${severity}`);
const cup = (site: SiteDesign) => [site.stations.cup, site.safety?.verdict, site.safety?.cappedBy];

it('a site of which everything is told is tight for want of a clean sample alone', async () => {
  const { read, site, said } = await designed({ ...good, ...told });
  expect(read.problems.map(({ code }) => code)).toEqual([]);
  expect(lines(said)).toEqual([]);
  expect(cup(site)).toEqual(['tight', 'tight', 'safety.no_clean_sample']);
  expect(site.safety!.risks).toHaveLength(3);
});

describe('a sample since hand-over', () => {
  const sample = (positive: number): Files => ({
    ...good,
    ...told,
    'waterTests.csv': 'siteId,testId,takenOn,point\nS001,W1,2027-04-01,tap\n',
    'testPortions.csv': `siteId,testId,kind,volume_mL,portions,positive\nS001,W1,tubes,100,1,${positive}\n`,
  });

  it('that is clean makes the cup hold, and people may drink', async () => {
    const { read, site, said } = await designed(sample(0));
    expect([read.problems, lines(said)]).toEqual([[], []]);
    expect([...cup(site), site.safety!.mayDrink]).toEqual(['holds', 'holds', null, 'yes']);
  });

  it('that held E. coli makes it short, and tells them not to', async () => {
    const { site, said } = await designed(sample(1));
    expect(lines(said)).toEqual(['safety.do_not_drink warning']);
    expect([...cup(site), site.safety!.mayDrink]).toEqual(['short', 'short', null, 'no']);
  });

  it('from before hand-over says nothing, but where the tap held E. coli up to thirty days before', async () => {
    const files = sample(1);
    const cupOf = async (day: string) => {
      const early = String(files['waterTests.csv']).replace('2027-04-01', day);
      const { site } = await designed({ ...files, 'waterTests.csv': early });
      return [...cup(site), site.safety!.mayDrink];
    };
    expect(await cupOf('2027-01-29')).toEqual(['tight', 'tight', 'safety.no_clean_sample', 'notShown']);
    expect(await cupOf('2027-01-30')).toEqual(['short', 'short', null, 'no']);
  });
});

describe('safety that was told wrongly', () => {
  it.each([
    [
      'a log reduction without evidence',
      'barriers.csv',
      'challengeTest',
      '',
      ['safety.no_evidence warning'],
      'unknown',
    ],
    [
      'evidence nobody gave',
      'barriers.csv',
      'An invented laboratory 2026',
      '',
      ['safety.evidence_without_source warning'],
      'tight',
    ],
    [
      'more than any barrier is credited with',
      'barriers.csv',
      '6,5.9,6',
      '6,5.9,7',
      ['safety.over_most note'],
      'tight',
    ],
    [
      'raw water without a source',
      'rawWater.csv',
      '0.2,An invented survey\n,,c',
      '0.2,\n,,c',
      ['safety.raw_without_source warning'],
      'tight',
    ],
    [
      'raw water without a range',
      'rawWater.csv',
      '0.05,,0.2,An invented survey\n,,c',
      '0.05,,,An invented survey\n,,c',
      ['safety.raw_without_range warning'],
      'tight',
    ],
    ['a range backwards', 'rawWater.csv', '0.3,0.01,1', '0.3,1,0.01', ['safety.raw_range_backwards warning'], 'tight'],
    [
      'a germ nobody speaks of',
      'rawWater.csv',
      ',,rotavirus,0.05,,0.2,An invented survey\n',
      '',
      ['safety.raw_unknown warning'],
      'unknown',
    ],
    [
      'people who skip and nobody counted',
      'settings.json',
      '"skipping_fraction":0',
      '"skipping_fraction":null',
      ['safety.skipping_unknown warning'],
      'tight',
    ],
  ] as const)('%s is named, and the cup follows', async (_, file, from, to, wanted, verdict) => {
    const { read, site, said } = await designed(withChange(file, from, to));
    expect(read.problems.filter(({ severity }) => severity === 'blocker')).toEqual([]);
    expect(lines(said)).toEqual(wanted);
    expect(site.stations.cup).toBe(verdict);
    for (const problem of said) expect(problemSentence(problem).what).not.toMatch(/WRITE|undefined|\bnull\b/);
  });
});

describe('cells and rows that cannot be used', () => {
  it('skipping over 1 is a blocker at its cell, and leaves the cup alone unknown', async () => {
    const sites = good['sites.csv']!.replace('handOverDay\n', 'handOverDay,skipping_fraction\n').replace(
      '2027-03-01\n',
      '2027-03-01,1.2\n',
    );
    const files = { ...good, ...told, 'sites.csv': sites.replace(/(S00[23].*)\n/g, '$1,\n') };
    const { read, site, said } = await designed(files);
    const faults = read.problems.filter(({ severity }) => severity === 'blocker');
    expect(faults.map(({ place }) => [place.file, place.row, place.column])).toEqual([
      ['sites.csv', 2, 'skipping_fraction'],
    ]);
    expect(said.some(({ code }) => code === 'site.station_in_doubt')).toBe(true);
    expect(site.stations.cup).toBe('unknown');
    const plain = await designed({ ...good, ...told });
    expect(site.stations.storage).toBe(plain.site.stations.storage);
  });

  it('raw water of a second source nobody knows is named with the nearest, and not used', async () => {
    const row = ',river-9,rotavirus,3,,9,An invented survey\n';
    const files = { ...good, ...told, 'rawWater.csv': `${told['rawWater.csv']}${row}` };
    const { read, site } = await designed(files);
    expect(read.problems.map(({ code, place }) => [code, place.file, place.row])).toEqual([
      ['link.unknown_raw_source', 'rawWater.csv', 5],
    ]);
    expect(site.safety?.risks ?? []).toHaveLength(3);
  });

  it.each([
    ['rawWater.csv', 'rotavirus,0.05', 'rotavirus,-1', 'typical_per_L'],
    ['rawWater.csv', ',,rotavirus', ',,polio', 'pathogen'],
    ['barriers.csv', '6,5.9,6', '6,59,6', 'viruses_log10'],
    ['barriers.csv', 'challengeTest', 'brochure', 'evidence'],
  ] as const)('%s: %s as %s is a blocker at its cell', async (file, from, to, column) => {
    const { read, site } = await designed(withChange(file, from, to));
    const faults = read.problems.filter(({ severity }) => severity === 'blocker');
    expect(faults.map(({ place }) => [place.file, place.column])).toEqual([[file, column]]);
    expect(site.stations.cup).not.toBe('holds');
    expect(site.stations.cup).not.toBe('tight');
  });
});
