import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  evaluatePlan,
  isoDay,
  keptPlan,
  type ProgrammeFacts,
  pastTrips,
  readIsoDay,
  readyKit,
  readyProgramme,
  readyRollout,
  rolloutSites,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { describe, expect, it } from 'vitest';
import { demoProgramme } from './index.ts';

const codeOf = ({ code, place }: { code: string; place: { file?: string } }) => `${code} ${place.file}`;

/** The demo as it is read on a day, with what is told of it. */
async function readOn(today: string | undefined) {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-demo-'));
  try {
    await writeProgramme(folder, demoProgramme(today === undefined ? {} : { today }));
    const { facts, problems } = await readProgramme(folder);
    return { facts, problems };
  } finally {
    await rm(folder, { recursive: true });
  }
}

const weekday = (day: number) => (((day + 4) % 7) + 7) % 7;
const happenedOn = ({ rollout, ...facts }: ProgrammeFacts, day: number) =>
  pastTrips(
    { ...facts, rollout },
    rollout.plans.find(({ isInForce }) => isInForce),
    day,
  );

describe('the demo on a day', () => {
  it('has on every day of a week trips that are back, one under way and one that should have left', () => {
    for (let at = 0; at < 7; at++) {
      const today = readIsoDay('2029-08-14')! + at;
      const { tables } = demoProgramme({ today: isoDay(today) });
      const day = (text: unknown) => readIsoDay(String(text))!;
      const begins = day((tables.plans ?? [])[0]!['from']);
      expect(weekday(begins)).toBe(1);
      const trips = (tables.planTrips ?? []).filter(({ planId }) => planId === 'first');
      const left = trips.filter(({ leftOn }) => leftOn !== null);
      const back = left.filter(({ backOn }) => backOn !== null);
      expect([left.length, back.length]).toEqual([4, 3]);
      for (const { backOn } of back) expect(day(backOn)).toBeLessThan(today);
      const underWay = left.find(({ backOn }) => backOn === null)!;
      expect(day(underWay['leftOn'])).toBeLessThan(today);
      expect(day(underWay['back'])).toBeGreaterThanOrEqual(today);
      const overdue = trips.filter(({ leaves, leftOn }) => leaves !== null && leftOn === null);
      expect(overdue.map(({ leaves }) => day(leaves) < today)).toEqual([true]);
    }
  });

  it('is read without a fault of its plans, and every site that waits is in a plan', async () => {
    const today = readIsoDay('2028-02-17')!;
    const { facts, problems } = await readOn(isoDay(today));
    const still = await readOn(undefined);
    const before = new Set(still.problems.map(codeOf));
    expect(problems.map(codeOf).filter((code) => !before.has(code))).toEqual([]);
    expect(still.facts.rollout.plans).toEqual([]);
    const done = happenedOn(facts, today);
    expect(done.map(({ state }) => state).sort()).toEqual(['done', 'done', 'done', 'underWay']);
    for (const { state, stops } of done)
      for (const { handOver, kept } of stops) expect(handOver).toBe(state === 'done' ? kept : null);
    const handedOver = facts.sites.filter(({ handOverDay }) => handOverDay !== null);
    const earlier = still.facts.sites.filter(({ handOverDay }) => handOverDay !== null);
    expect(handedOver.length - earlier.length).toBe(4);
    const inPlan = facts.rollout.plans.map(({ trips }) => trips.flatMap(({ stops }) => stops.map((one) => one.siteId)));
    const left = inPlan[0]!.filter((siteId) => !done.some(({ stops }) => stops.some((one) => one.siteId === siteId)));
    // Without the crew of the shed nobody reaches it before its way shuts for a season.
    expect([...inPlan[1]!, 'S038'].sort()).toEqual([...left].sort());
  });

  it('has plans in which nothing is broken and no stop is dropped, but for the site that is in none, in one season and in another', async () => {
    for (const text of ['2026-11-27', '2028-07-09']) {
      const today = readIsoDay(text)!;
      const { facts } = await readOn(text);
      // Whether they hold is nothing to this: every site that waits is tight.
      const verdicts = new Map(facts.sites.map(({ siteId }) => [siteId, 'tight' as const]));
      const sites = [...rolloutSites(facts.sites, readyProgramme(facts, { today }), readyKit(facts, today), verdicts)];
      for (const { planId } of facts.rollout.plans) {
        const ready = readyRollout(facts, sites, { today, planId });
        const kept = keptPlan(ready, facts, planId, today)!;
        const isNone = planId === 'first' ? [] : ['S038'];
        expect([kept.dropped, kept.notPlaced, kept.problems]).toEqual([[], isNone, []]);
        const { broken } = evaluatePlan(ready.problem, kept.plan);
        const told = broken.map((one) => [one.kind, 'job' in one ? ready.problem.jobs[one.job!]!.siteId : null]);
        expect(told).toEqual(isNone.map((siteId) => ['leftOut', siteId]));
        expect(ready.problems.map(({ code }) => code)).not.toContain('rollout.stock_overdrawn');
        expect(kept.overdue).toHaveLength(planId === 'first' ? 1 : 0);
      }
    }
  });

  it('moves the days of its rollout and nothing else, and other demos not at all', () => {
    const [still, moved] = [demoProgramme(), demoProgramme({ today: '2027-01-25' })];
    // It begins on the day on which the demo that stands still begins.
    const { sites: _, plans, planTrips, planStops, carriersAway, treatmentUnits: __, ...rest } = moved.tables;
    expect([plans, planTrips, planStops, carriersAway].every((rows) => rows !== undefined)).toBe(true);
    const { sites: _s, treatmentUnits: _t, ...same } = still.tables;
    expect(rest).toEqual(same);
    expect(demoProgramme({ sites: 40, today: '2031-01-01' })).toEqual(demoProgramme({ sites: 40 }));
    expect(demoProgramme({ seed: 2, today: '2031-01-01' })).toEqual(demoProgramme({ seed: 2 }));
  });
});
