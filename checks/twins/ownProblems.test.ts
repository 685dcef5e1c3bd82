import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  type DesignSettings,
  designSites,
  judgedSites,
  type ProgrammeFacts,
  problemsOf,
  readyProgramme,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { beforeAll, describe, expect, it } from 'vitest';

/** The demo with its faults, and without them. */
const read: ProgrammeFacts[] = [];
beforeAll(async () => {
  for (const clean of [false, true]) {
    const folder = await mkdtemp(join(tmpdir(), 'eavewell-own-'));
    await writeProgramme(folder, demoProgramme({ sites: 30, seed: 3, clean }));
    read.push((await readProgramme(folder)).facts);
    await rm(folder, { recursive: true });
  }
});

const everywhere = {
  judgeDrainage: 'always',
  judgeSettling: 'always',
  judgeStand: 'always',
  judgeHead: 'always',
} as const satisfies Partial<DesignSettings>;

/** The settings, a gauge taken away, and settling judged in water nobody has: whatever may change what is told of a site. */
const variants: readonly (readonly [string, (facts: ProgrammeFacts) => ProgrammeFacts])[] = [
  ['as it is', (facts) => facts],
  ['every station judged', (facts) => ({ ...facts, settings: { ...facts.settings, ...everywhere } })],
  ['no storms', (facts) => ({ ...facts, gauges: facts.gauges.map((one) => ({ ...one, storms: [], shortRain: [] })) })],
  ['no gauge', (facts) => ({ ...facts, gauges: [] })],
  ['ice', (facts) => ({ ...facts, settings: { ...facts.settings, ...everywhere, waterTemperature_C: -3 } })],
];

describe('a site judged once tells what it tells judged twice', () => {
  it.each(variants)('%s', (_, change) => {
    let told = 0;
    for (const facts of read.map(change)) {
      const judged = [...judgedSites(facts.sites, readyProgramme(facts))];
      const apart = readyProgramme(facts);
      expect(judged.map(({ design }) => design)).toEqual([...designSites(facts.sites, apart)]);
      expect(judged.map(({ ownProblems }) => ownProblems)).toEqual(facts.sites.map((site) => problemsOf(site, apart)));
      told += judged.reduce((sum, { ownProblems }) => sum + ownProblems.length, 0);
    }
    expect(told).toBeGreaterThan(30);
  });
});
