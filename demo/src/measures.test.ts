import { expect, test } from 'vitest';
import { demoProgramme } from './demoProgramme.ts';
import type { Row } from './draft.ts';

const { tables } = demoProgramme({ sites: 300, clean: true });
const rows = (name: keyof typeof tables): readonly Row[] => tables[name] ?? [];
const of = (name: keyof typeof tables, siteId: unknown) => rows(name).filter((row) => row['siteId'] === siteId);

test('without faults every building is measured, and could stand so', () => {
  for (const { siteId } of rows('sites')) {
    const [roofs, tanks] = [of('roofs', siteId), of('tanks', siteId)];
    const lowest_m = Math.min(...roofs.map((roof) => Number(roof['eaveHeight_m'])));
    for (const tank of tanks) {
      expect(Number(tank['height_m'])).toBeGreaterThan(Number(tank['overflowHeight_m']));
      // Water runs down from the eave into the tank.
      expect(Number(tank['standHeight_m']) + Number(tank['height_m'])).toBeLessThan(lowest_m);
    }
    for (const roof of roofs) {
      expect(['gable', 'oneSlope', 'hip']).toContain(roof['form']);
      expect(Number(roof['pitch_deg'])).toBeGreaterThanOrEqual(3);
      const runs = of('gutters', siteId).filter(({ roofId }) => roofId === roof['roofId']);
      const pipes = of('downpipes', siteId).filter(({ roofId }) => roofId === roof['roofId']);
      expect(runs.length).toBeGreaterThan(0);
      expect(pipes.length).toBeGreaterThanOrEqual(runs.length);
      const length_m = Number(roof['length_m'] ?? Math.sqrt(2.2 * Number(roof['roofPlanArea_m2'])));
      for (const run of runs) expect(Number(run['length_m'])).toBeLessThanOrEqual(length_m + 0.05);
      for (const pipe of pipes) expect(Number(pipe['length_m'])).toBeLessThan(Number(roof['eaveHeight_m']));
    }
  }
});

test('a true survey leaves some of it out, and no other figure hangs on that', () => {
  const worn = demoProgramme({ sites: 300 }).tables;
  const unmeasured = (worn.roofs ?? []).filter((row) => (row['eaveHeight_m'] ?? null) === null);
  expect(unmeasured.length).toBeGreaterThan(10);
  expect(unmeasured.length).toBeLessThan((worn.roofs ?? []).length / 3);
  const sites = new Set((worn.gutters ?? []).map(({ siteId }) => siteId));
  expect(sites.size).toBeGreaterThan(200);
  expect(sites.size).toBeLessThan(300);
});
