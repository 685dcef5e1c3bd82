import { defaultSettings, type SiteFacts, type TankFacts, unmeasuredGutter, usableVolume } from '@eavewell/engine';
import { expect, it } from 'vitest';
import type { DraftStep } from './draft.ts';
import { drafted, draftedSite } from './draftedSite.ts';
import { measuredTank, siteWith, statedTank } from './siteForTests.ts';

const made = (site: SiteFacts, ...steps: readonly DraftStep[]) => draftedSite(site, { steps }, defaultSettings);
const volumeOf = (tanks: readonly TankFacts[]) => usableVolume('S1', tanks).tankVolume_L;

it('is the very site without a draft', () => {
  const site = siteWith({});
  expect(made(site)).toBe(site);
});

it('writes another volume on a tank that is not measured, and it is of no part any more', () => {
  const site = siteWith({ tanks: [{ ...statedTank, nominal_L: null, partVolume_L: 5000 }] });
  const [tank] = made(site, { kind: 'tank', tankId: 'T1', volume_L: 8000 }).tanks;
  expect(tank).toEqual({ ...statedTank, nominal_L: 8000, partVolume_L: null });
  const back = made(
    site,
    { kind: 'tank', tankId: 'T1', volume_L: 8000 },
    { kind: 'tank', tankId: 'T1', volume_L: 5000 },
  );
  expect(back.tanks).toEqual(site.tanks);
});

it('moves the rim of a measured tank: the volume is the one asked for, to a tenth of a millimetre', () => {
  const site = siteWith({ tanks: [{ ...measuredTank, nominal_L: 5000, partVolume_L: 5000 }] });
  const after = made(site, { kind: 'tank', tankId: 'T1', volume_L: 7000 });
  const { diameter_m } = measuredTank;
  const perStep_L = (Math.PI / 4) * diameter_m! ** 2 * 0.0001 * 1000;
  expect(Math.abs(volumeOf(after.tanks)! - 7000)).toBeLessThanOrEqual(perStep_L);
  expect(after.tanks[0]).toMatchObject({ diameter_m, outletHeight_m: 0.1, nominal_L: null, partVolume_L: null });
  const wide = made(site, { kind: 'diameter', tankId: 'T1', diameter_m: 4 });
  expect(volumeOf(wide.tanks)).toBeCloseTo((Math.PI / 4) * 16 * (measuredTank.overflowHeight_m! - 0.1) * 1000, 6);
});

it('a measure that leaves the tank unmeasured leaves what is written on it', () => {
  const site = siteWith({ tanks: [{ ...statedTank, nominal_L: 5000 }] });
  const after = made(site, { kind: 'overflow', tankId: 'T1', overflowHeight_m: 2 });
  expect(after.tanks[0]).toMatchObject({ nominal_L: 5000, overflowHeight_m: 2 });
});

const gutter = { ...unmeasuredGutter, gutterId: 'G1', roofId: 'R1', shape: 'trapezoidal' } as const;

it('makes a gutter wider in its shape, with its depth and its sole; its fall and outlets alone', () => {
  const site = siteWith({ gutters: [{ ...gutter, width_mm: 100, depth_mm: 60, baseWidth_mm: 70, fall_mm_per_m: 2 }] });
  const fitting = { kind: 'fitting', of: 'gutter', id: 'G1' } as const;
  const wide = made(site, { ...fitting, measure: 'width_mm', value: 150 });
  expect(wide.gutters[0]).toMatchObject({ width_mm: 150, depth_mm: 90, baseWidth_mm: 105, fall_mm_per_m: 2 });
  const level = made(
    site,
    { ...fitting, measure: 'fall_mm_per_m', value: 0 },
    { ...fitting, measure: 'outlets_count', value: 2 },
  );
  expect(level.gutters[0]).toMatchObject({ width_mm: 100, depth_mm: 60, fall_mm_per_m: 0, outlets_count: 2 });
  const bare = made(siteWith({ gutters: [gutter] }), { ...fitting, measure: 'width_mm', value: 150 });
  expect(bare.gutters[0]).toMatchObject({ width_mm: 150, depth_mm: null, baseWidth_mm: null });
});

it('tries pipes, overflows, stands and taps; a step that names what is not there changes nothing', () => {
  const site = siteWith({ downpipes: [{ downpipeId: 'D1', roofId: 'R1', bore_mm: 80, length_m: 3 }] });
  const after = made(
    site,
    { kind: 'fitting', of: 'downpipe', id: 'D1', measure: 'bore_mm', value: 110 },
    { kind: 'fitting', of: 'tank', id: 'T1', measure: 'overflowBore_mm', value: 100 },
    { kind: 'fitting', of: 'tank', id: 'T1', measure: 'standHeight_m', value: 1.2 },
    { kind: 'fitting', of: 'site', id: 'S1', measure: 'tapHeight_m', value: 0.9 },
    { kind: 'fitting', of: 'downpipe', id: 'D9', measure: 'bore_mm', value: 20 },
  );
  expect(after).toEqual({
    ...site,
    downpipes: [{ ...site.downpipes[0], bore_mm: 110 }],
    tanks: [{ ...site.tanks[0], overflowBore_mm: 100, standHeight_m: 1.2 }],
    tapHeight_m: 0.9,
  });
});

it('gives a roof a share and a first flush, with a diverter where it had none', () => {
  const site = siteWith({});
  const after = made(
    site,
    { kind: 'gutter', roofId: 'R1', gutteredFraction: 0.4 },
    { kind: 'firstFlush', roofId: 'R1', firstFlush_mm: 1.5 },
    { kind: 'gutter', roofId: 'nowhere', gutteredFraction: 0.1 },
  );
  expect(after.roofs).toHaveLength(1);
  expect(after.roofs[0]).toMatchObject({ gutteredFraction: 0.4, diverter: { firstFlush_mm: 1.5, drainHole: 'open' } });
});

it('gives a site without purposes of its own those it is judged by, under names the tables take', () => {
  const site = siteWith({ demand: [] });
  const step = (litres: number) =>
    ({ kind: 'litres', purpose: 'drinking and cooking', litres_per_person_per_day: litres }) as const;
  const expected = [{ purpose: 'drinking_and_cooking', litres_per_person_per_day: 6, judged: true }];
  expect(made(site, step(6)).demand).toEqual(expected);
  expect(made(site, step(9), step(6)).demand).toEqual(expected);
});

it('puts a larger tank in the place of the first, a second beside it, and knows their parts', () => {
  const site = siteWith({ tanks: [statedTank, { ...statedTank, tankId: 'T2', joinedTo: 'T1' }] });
  const part = { partId: 'tank10', volume_L: 10_000, mass_kg: null, tankId: null };
  const larger = drafted(
    site,
    { steps: [{ kind: 'remedy', changes: [{ kind: 'largerTank', ...part }] }] },
    defaultSettings,
  );
  expect(larger.site.tanks.map(({ tankId, partVolume_L, nominal_L }) => [tankId, partVolume_L, nominal_L])).toEqual([
    ['T1', 10_000, null],
  ]);
  expect([...larger.bought]).toEqual([['T1', 'tank10']]);
  const second = drafted(
    site,
    {
      steps: [
        {
          kind: 'remedy',
          changes: [
            { kind: 'secondTank', ...part },
            { kind: 'secondTank', ...part },
          ],
        },
      ],
    },
    defaultSettings,
  );
  expect(second.site.tanks.map(({ tankId }) => tankId)).toEqual(['T1', 'T2', 'T3', 'T4']);
  expect(second.site.tanks[2]!.joinedTo).toBe('T1');
  expect([...second.bought.keys()]).toEqual(['T3', 'T4']);
  const resized = drafted(
    site,
    {
      steps: [
        { kind: 'remedy', changes: [{ kind: 'secondTank', ...part }] },
        { kind: 'tank', tankId: 'T3', volume_L: 4000 },
      ],
    },
    defaultSettings,
  );
  expect(resized.bought.size).toBe(0);
  expect(resized.site.tanks[2]).toMatchObject({ nominal_L: 4000, partVolume_L: null });
});

it('counts those who are sent to a site of their own', () => {
  const split = { kind: 'people', carried_people: 20, others_people: 10 } as const;
  const found = drafted(siteWith({ people: 30 }), { steps: [{ kind: 'remedy', changes: [split] }] }, defaultSettings);
  expect(found).toMatchObject({ others_people: 10, site: { people: 20 } });
});

it('moves the wall of a tank with its rim', () => {
  const site = siteWith({ tanks: [{ ...measuredTank, height_m: 2 }] });
  expect(made(site, { kind: 'overflow', tankId: 'T1', overflowHeight_m: 1.9 }).tanks[0]!.height_m).toBe(2.2);
  expect(made(site, { kind: 'diameter', tankId: 'T1', diameter_m: 3 }).tanks[0]!.height_m).toBe(2);
});
