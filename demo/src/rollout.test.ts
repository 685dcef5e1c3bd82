import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { calendarDay, kitAtSite, type ProgrammeFacts, readIsoDay, readyKit } from '@eavewell/engine';
import { type ProgrammeRead, readProgramme, writeProgramme } from '@eavewell/formats';
import { expect, it } from 'vitest';
import { type DemoOptions, demoProgramme } from './demoProgramme.ts';

async function readDemo(options: DemoOptions): Promise<ProgrammeRead> {
  const folder = await mkdtemp(join(tmpdir(), 'demo-rollout-'));
  try {
    await writeProgramme(folder, demoProgramme(options));
    return await readProgramme(folder);
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** Places and sites that ways lead to from the main store; by boat alone, where that is asked. */
function reached({ rollout, settings }: ProgrammeFacts, byBoat = false): ReadonlySet<string> {
  const found = new Set([settings.mainStore!]);
  for (let size = 0; size !== found.size; ) {
    size = found.size;
    for (const { from, to, mode } of rollout.ways) {
      if (byBoat && mode !== 'river') continue;
      if (found.has(from)) found.add(to);
      if (found.has(to)) found.add(from);
    }
  }
  return found;
}

const tablesOfRollout =
  /^(?:places|ways|closures|riverLevels|wayLevels|crews|crewCarriers|workCalendars|arrivals)\.csv$/;
const openSites = ({ sites }: ProgrammeFacts) => sites.filter(({ handOverDay }) => handOverDay === null);

it.each([1, 2, 3])(
  'the rollout of seed %d is whole: a way to every site that is to be fitted, and no fault',
  async (seed) => {
    const { facts, problems } = await readDemo({ seed, clean: true });
    const { rollout } = facts;
    expect(problems.filter(({ place }) => tablesOfRollout.test(place.file ?? ''))).toEqual([]);
    expect(problems.filter(({ code }) => code.startsWith('rollout.'))).toEqual([]);
    const ends = reached(facts);
    expect(openSites(facts).length).toBeGreaterThanOrEqual(20);
    for (const { siteId } of openSites(facts)) expect(ends, siteId).toContain(siteId);
    for (const { base, store } of rollout.crews) for (const end of [base, store]) expect(ends).toContain(end);
    expect(rollout.crews).toHaveLength(3);
    const filled = rollout.places.filter(({ filledFrom }) => filledFrom === 'STORE');
    expect(filled).toHaveLength(1);
    // What fills it is a boat.
    expect(reached(facts, true)).toContain(filled[0]!.placeId);
    // Costs of two currencies are told in that of the programme.
    for (const { carrierId, cost_per_day } of rollout.travel)
      if (rollout.crews.some(({ carrierIds }) => carrierIds.includes(carrierId)))
        expect(cost_per_day).toBeGreaterThan(0);
  },
);

it('shows what a rollout has to deal with', async () => {
  const { facts } = await readDemo({});
  const { crews, riverLevels, wayLevels, closures, arrivals, work, calendars } = facts.rollout;
  const sharing = crews.filter(({ carrierIds }) => carrierIds.includes('coaster'));
  expect(sharing).toHaveLength(2);
  expect(facts.kit.carriers.find(({ carrierId }) => carrierId === 'coaster')!.carriers_count).toBe(1);
  expect(new Set(riverLevels.map(({ day }) => calendarDay(day).year)).size).toBeGreaterThanOrEqual(6);
  // The river is too high in some weeks and too low in others.
  const { least_m, greatest_m } = wayLevels.find(({ carrierId }) => carrierId === 'lighter')!;
  const share = (is: (level_m: number) => boolean) =>
    riverLevels.filter(({ level_m }) => is(level_m)).length / riverLevels.length;
  for (const shut of [share((level) => level > greatest_m!), share((level) => level < least_m!)]) {
    expect(shut).toBeGreaterThan(0.03);
    expect(shut).toBeLessThan(0.4);
  }
  expect(closures.some(({ months, slower_factor }) => months.length > 0 && slower_factor === null)).toBe(true);
  expect(closures.some(({ from }) => from !== null)).toBe(true);
  expect(arrivals.some(({ slip_days }) => slip_days.high > 0)).toBe(true);
  expect(arrivals.some(({ slip_days }) => slip_days.high === 0)).toBe(true);
  expect(calendars.some(({ works }) => works)).toBe(true);
  const asked = work.filter(({ siteId }) => openSites(facts).some((site) => site.siteId === siteId));
  expect(asked.filter(({ priorityReason }) => priorityReason !== null)).toHaveLength(1);
  for (const some of [
    asked.filter(({ readyFrom }) => readyFrom !== null),
    asked.filter(({ finishBy }) => finishBy !== null),
    asked.filter(({ install_days }) => install_days !== null),
    asked.filter(({ agreedOn }) => agreedOn === null),
  ])
    expect(some.length).toBeGreaterThan(0);
});

it.each([1, 2, 3, 4])('what the store of seed %d is short of comes with the ships', async (seed) => {
  const { facts } = await readDemo({ seed });
  const ready = readyKit(facts, readIsoDay('2026-11-01'));
  const needed = new Map<string, number>();
  for (const site of openSites(facts))
    for (const { partId, total_count } of kitAtSite(site, ready).lines)
      needed.set(partId, (needed.get(partId) ?? 0) + (total_count ?? 0));
  const short = facts.parts.flatMap(({ partId, kit }) => {
    const missing = (needed.get(partId) ?? 0) - (kit.stock_count ?? Number.POSITIVE_INFINITY);
    return missing > 0 ? [{ partId, missing }] : [];
  });
  expect(short.length).toBeGreaterThan(3);
  for (const { partId, missing } of short) {
    const coming = facts.rollout.arrivals.filter((one) => one.partId === partId);
    expect(
      coming.reduce((sum, one) => sum + one.quantity_count, 0),
      partId,
    ).toBeGreaterThanOrEqual(missing);
  }
});
