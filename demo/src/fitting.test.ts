import { describe, expect, test } from 'vitest';
import { demoProgramme } from './demoProgramme.ts';

describe('sites that are to be fitted', () => {
  test.each([
    [60, 1, false, 24],
    [60, 7, false, 24],
    [60, 1, true, 24],
    [1500, 1, false, 600],
    [5, 1, false, 2],
    [1, 1, false, 0],
  ])('of %i sites, seed %i, clean %s: %i', (sites, seed, clean, count) => {
    const { tables } = demoProgramme({ sites, seed, clean });
    const ids = new Set(tables.sites!.map(({ siteId }) => siteId));
    const waiting = new Set(tables.sites!.flatMap(({ siteId, handOverDay }) => (handOverDay ? [] : [siteId])));
    expect(ids.size).toBe(sites);
    expect(waiting.size).toBe(count);
    // What only a unit in use shows is shown of none of them.
    const used = ['cartridges', 'flowReadings', 'pressureTests', 'waterTests', 'inspections', 'chlorination'] as const;
    for (const name of used) for (const { siteId } of tables[name] ?? []) expect(waiting, name).not.toContain(siteId);
    const units = (tables.treatmentUnits ?? []).map(({ siteId, installedOn }) => ({ siteId, installedOn }));
    expect(units.every(({ siteId, installedOn }) => (installedOn === null) === waiting.has(siteId!))).toBe(true);
    if (sites >= 60) expect(units.some(({ siteId }) => waiting.has(siteId!))).toBe(true);
  });

  test('the seed tells which', () => {
    const waitingOf = (seed: number) =>
      demoProgramme({ seed }).tables.sites!.flatMap(({ siteId, handOverDay }) => (handOverDay ? [] : [siteId]));
    expect(waitingOf(1)).toEqual(waitingOf(1));
    expect(waitingOf(1)).not.toEqual(waitingOf(2));
  });
});
