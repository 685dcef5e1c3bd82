import { describe, expect, test } from 'vitest';
import { buildingOf, planOf } from './index.ts';
import {
  downpipe,
  isWhole,
  letterFaults,
  lettersOf,
  partOf,
  pathsOf,
  pointsOf,
  roof,
  site,
  span,
  tank,
  words,
} from './madeUpBuilding.testing.ts';

const plan = (facts = site({}), width = 1216) => planOf({ building: buildingOf(facts), words, width });

/** Metres of the eaves drawn heavy. */
function heavy_m(share: number | null, form: 'gable' | 'oneSlope' = 'gable'): number {
  const picture = plan(site({ roofs: [{ ...roof, form, gutteredFraction: share }] }));
  const paths = pathsOf(partOf(picture.shapes, 'roof:R1')).filter(({ pen }) => pen?.weight === 'cut');
  const runs = paths.flatMap(({ d }) => d.split('M').filter((one) => one !== ''));
  return runs.reduce((sum, run) => sum + span(pointsOf(`M${run}`).map(([, y]) => y)), 0) / picture.pxPerM!;
}

describe('a plan', () => {
  test('has the sides of its roof and the diameter of its tank', () => {
    const picture = plan();
    const k = picture.pxPerM!;
    const [outline] = pathsOf(partOf(picture.shapes, 'roof:R1'));
    const points = pointsOf(outline!.d);
    expect(span(points.map(([x]) => x)) / k).toBeCloseTo(9.4, 2);
    expect(span(points.map(([, y]) => y)) / k).toBeCloseTo(12, 2);
    const circle = pathsOf(partOf(picture.shapes, 'tank:T1')).find(({ ground }) => ground === 'water');
    expect(Number(/A(\S+) /.exec(circle!.d)?.[1]) / k).toBeCloseTo(2.55 / 2, 2);
  });

  test('draws the guttered share of the eaves heavy: both of a gable, the low one of one slope', () => {
    expect(heavy_m(1)).toBeCloseTo(24, 1);
    expect(heavy_m(0.75)).toBeCloseTo(18, 1);
    expect(heavy_m(0.3)).toBeCloseTo(7.2, 1);
    expect(heavy_m(0)).toBe(0);
    expect(heavy_m(0.5, 'oneSlope')).toBeCloseTo(6, 1);
  });

  test('counts the downpipes, and says so where there are several', () => {
    const three = ['D1', 'D2', 'D3'].map((downpipeId) => ({ ...downpipe, downpipeId }));
    const picture = plan(site({ downpipes: three }));
    expect(pathsOf(partOf(picture.shapes, 'downpipe:R1'))).toHaveLength(3);
    expect(lettersOf(picture).map(({ text }) => text)).toContain('«3 downpipes»');
  });

  test('moves its gutter by the length of the eaves', () => {
    const picture = plan();
    const handle = picture.handles.find(({ name }) => name === 'roof:R1:gutter')!;
    expect(handle.along).toBe('y');
    // From one end of an eave to the other is half of a gable's share.
    expect(handle.perPx * 12 * picture.pxPerM!).toBeCloseTo(0.5, 9);
  });

  test('of a hall 60 m long stays a picture', () => {
    const picture = plan(site({ roofs: [{ ...roof, length_m: 60 }], tanks: [tank, { ...tank, tankId: 'T2' }] }));
    expect(picture.height).toBeLessThan(1216);
    expect(letterFaults(picture)).toEqual([]);
    expect(isWhole(picture)).toBe(true);
  });
});
