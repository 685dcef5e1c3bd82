import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { type ProgrammeFacts, readIsoDay, readyKit, readyProgramme, rolloutSites } from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { SitesKept } from './sitesKept.ts';

const today = readIsoDay('2026-11-26')!;
let folder: string;
let facts: ProgrammeFacts;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eavewell-kept-'));
  await writeProgramme(folder, demoProgramme({ sites: 12, seed: 2, clean: true }));
  facts = (await readProgramme(folder)).facts;
});
afterAll(() => rm(folder, { recursive: true }));

/** What is found of changed facts by one that knows the facts as they were, how much of it anew, and what is found from nothing. */
function afterChange(changed: ProgrammeFacts, day = today) {
  const kept = new SitesKept();
  const of = (now: ProgrammeFacts, on: number) => [
    ...kept.of(now, readyProgramme(now, { today: on }), readyKit(now, on), new Map()),
  ];
  of(facts, today);
  const before = kept.made_count;
  const found = of(changed, day);
  const ready = readyProgramme(changed, { today: day });
  const anew = [...rolloutSites(changed.sites, ready, readyKit(changed, day))];
  return { found, anew, made_count: kept.made_count - before };
}

it('works nothing out anew where what changed is beside the sites', () => {
  const rollout = { ...facts.rollout, arrivals: [], closures: [] };
  const { found, anew, made_count } = afterChange({ ...facts, rollout, kit: { ...facts.kit, carriers: [] } });
  expect(found).toEqual(anew);
  expect(made_count).toBe(0);
});

it('works a site out anew whose own facts changed', () => {
  const before = [...rolloutSites(facts.sites, readyProgramme(facts, { today }), readyKit(facts, today))];
  const at = before.findIndex(({ site, lines }) => lines.length > 0 && site.tanks.length > 0);
  const sites = facts.sites.map((site, nth) => (nth === at ? { ...site, tanks: [] } : site));
  const { found, anew, made_count } = afterChange({ ...facts, sites });
  expect(found).toEqual(anew);
  expect(found[at]!.lines).not.toEqual(before[at]!.lines);
  expect(made_count).toBe(1);
});

it('works out anew what rules of kits, the rain and the day bear on', () => {
  const rules = facts.kit.rules.slice(1);
  const fewer = afterChange({ ...facts, kit: { ...facts.kit, rules } });
  expect(fewer.found).toEqual(fewer.anew);
  expect(fewer.made_count).toBe(facts.sites.length);
  const gauges = facts.gauges.map((gauge, at) =>
    at > 0 ? gauge : { ...gauge, readings: gauge.readings.slice(0, Math.floor(gauge.readings.length / 2)) },
  );
  const drier = afterChange({ ...facts, gauges });
  expect(drier.found).toEqual(drier.anew);
  expect(drier.made_count).toBeGreaterThan(0);
  const tomorrow = afterChange(facts, today + 1);
  expect(tomorrow.found).toEqual(tomorrow.anew);
  expect(tomorrow.made_count).toBe(facts.sites.length);
});

it('takes a site in that is new, and lets one go', () => {
  const [first, ...rest] = facts.sites;
  const sites = [...rest, { ...first!, siteId: 'NEW1' }];
  const { found, anew, made_count } = afterChange({ ...facts, sites });
  expect(found).toEqual(anew);
  expect(made_count).toBe(1);
});
