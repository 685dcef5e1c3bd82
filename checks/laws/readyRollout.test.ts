import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  calendarDay,
  dayIndexOf,
  designSite,
  type ProgrammeFacts,
  rainOfSite,
  readIsoDay,
  readyKit,
  readyProgramme,
  readyRollout,
  rolloutSites,
  rolloutWay,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

let folder: string;
let facts: ProgrammeFacts;
const today = readIsoDay('2026-11-26')!;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eavewell-laws-'));
  await writeProgramme(folder, demoProgramme({ sites: 60, seed: 1, clean: true }));
  facts = (await readProgramme(folder)).facts;
});
afterAll(() => rm(folder, { recursive: true }));

describe('a programme made ready for the rollout', () => {
  it('waits for its first service as its design says, whatever the day of hand-over', () => {
    // The people of the design year hang on the hand-over where the year is not stated.
    const open = facts.sites.map((site) => ({ ...site, handOverDay: null, designYear: 2031 })).slice(0, 10);
    const ready = readyProgramme({ ...facts, sites: open }, { today });
    const verdicts = new Map(open.map(({ siteId }) => [siteId, 'holds' as const]));
    let compared = 0;
    for (const { site, serviceWaits } of rolloutSites(open, ready, readyKit(facts, today), verdicts)) {
      if (serviceWaits === null) continue;
      for (const [month, day] of [
        [1, 1],
        [2, 29],
        [3, 1],
        [6, 15],
        [12, 31],
      ] as const) {
        const handOverDay = dayIndexOf(2028, month, day);
        const { firstService } = designSite({ ...site, handOverDay }, rainOfSite(site, ready), ready);
        const ofYear = dayIndexOf(2000, month, day) - dayIndexOf(2000, 1, 1);
        expect(serviceWaits.middle_days[ofYear]).toBe(firstService?.wait_days ?? null);
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(30);
  });

  it('has every site as a job or left out with a reason, and never both', () => {
    const ready = readyProgramme(facts, { today });
    const sites = [...rolloutSites(facts.sites, ready, readyKit(facts, today))];
    const { problem, leftOut } = readyRollout(facts, sites, { today });
    const told = [...problem.jobs.map(({ siteId }) => siteId), ...leftOut.map(({ siteId }) => siteId)];
    expect(told.sort()).toEqual(facts.sites.map(({ siteId }) => siteId).sort());
    expect(problem.jobs.length).toBeGreaterThan(5);
    for (const { windows, kg, people, serviceWait_days } of problem.jobs) {
      expect(windows.length).toBeGreaterThan(0);
      expect(kg).toBeGreaterThan(0);
      expect(people).toBeGreaterThan(0);
      for (let day = 0; day < 366; day++) expect(serviceWait_days[day]).toBeGreaterThanOrEqual(0);
    }
  });

  it('explains each leg with the hours of its table', () => {
    const ready = readyProgramme(facts, { today });
    const verdicts = new Map(facts.sites.map(({ siteId }) => [siteId, 'holds' as const]));
    const sites = [...rolloutSites(facts.sites, ready, readyKit(facts, today), verdicts)];
    const rollout = readyRollout(facts, sites, { today });
    const { problem } = rollout;
    const nodes = problem.placeIds.length + problem.jobs.length;
    let gone = 0;
    problem.crews.forEach((crew, index) => {
      for (const period of [0, problem.periods.length - 1])
        for (let to = 0; to < nodes; to += 3) {
          const from = problem.stores[crew.store]!.node;
          const { landBefore_h, river_h, landAfter_h } = problem.travels[crew.travel]!.byPeriod[period]!;
          const at = from * nodes + to;
          const way = rolloutWay(rollout, { crew: index, from, to, period });
          if (way.stretches === null) {
            expect(landBefore_h[at]).toBe(Number.POSITIVE_INFINITY);
            continue;
          }
          gone++;
          expect(way.landBefore_h + way.river_h + way.landAfter_h).toBeCloseTo(
            landBefore_h[at]! + river_h[at]! + landAfter_h[at]!,
            4,
          );
        }
    });
    expect(gone).toBeGreaterThan(10);
    // Days of the plan are days of its calendar.
    expect(calendarDay(problem.firstDay).year).toBe(2027);
  });
});
