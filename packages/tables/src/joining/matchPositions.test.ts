import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MapPoint } from './mapThings.ts';
import { matchPositions } from './matchPositions.ts';
import type { PositionTable, PositionTarget } from './matchTargets.ts';

const at = (latitude_deg: number, longitude_deg: number) => ({ latitude_deg, longitude_deg });
const here = at(-8.5, 125.25);

function target(
  id: string,
  name: string,
  position: MapPoint['position'] | null = null,
  table: PositionTable = 'sites',
) {
  return { table, id, name, row: 2, position } satisfies PositionTarget;
}

function point(number: number, name: string | null, position = here, more: Partial<MapPoint> = {}): MapPoint {
  return { number, name, ids: [], kind: null, position, ...more };
}

function match(points: readonly MapPoint[], targets: readonly PositionTarget[], far_km = 5) {
  const found = matchPositions(points, targets, 'a.gpx', { far_km });
  return {
    ...found,
    pairs: found.matches.map(
      ({ target: { table, id }, point: { number }, by, isDoubtful }) =>
        `${table} ${id} = ${number} by ${by}${isDoubtful ? ', in doubt' : ''}`,
    ),
    codes: found.problems.map(
      ({ code, place, facts }) => `${code} ${place.siteId ?? place.gaugeId ?? '-'} ${facts['value']}`,
    ),
  };
}

const tarns = [target('S001', 'Upper Tarn'), target('S002', 'Lower Tarn'), target('S003', 'Ferry Stones')];

describe('what a point is', () => {
  it('is said by its id first, wherever that stands', () => {
    expect(match([point(1, 'x', here, { ids: ['S002'] })], tarns).pairs).toEqual(['sites S002 = 1 by id']);
    expect(match([point(1, 'S003')], tarns).pairs).toEqual(['sites S003 = 1 by id']);
  });

  it('is said by its name letter for letter, spaces aside', () => {
    expect(match([point(1, ' Upper  Tarn')], tarns).pairs).toEqual(['sites S001 = 1 by name']);
  });

  it('is only proposed where the name is nearly one', () => {
    expect(match([point(1, 'upper tarn'), point(2, 'Fery Stones')], tarns).pairs).toEqual([
      'sites S001 = 1 by likely',
      'sites S003 = 2 by likely',
    ]);
  });

  it('is not guessed at where digits differ, names are short or far from any', () => {
    const numbered = [target('A', 'School 11'), target('B', 'Ely')];
    const found = match([point(1, 'School 12'), point(2, 'Ela'), point(3, 'Harbour')], numbered);
    expect(found.pairs).toEqual([]);
    expect(found.unmatchedPoints.map(({ number }) => number)).toEqual([1, 2, 3]);
    expect(found.unmatchedTargets.map(({ id }) => id)).toEqual(['A', 'B']);
  });

  it('cannot be told where two rows have the name, unless the file says the kind', () => {
    const both = [target('S001', 'Upper Tarn'), target('G1', 'Upper Tarn', null, 'gauges')];
    const found = match([point(1, 'Upper Tarn')], both);
    expect(found.pairs).toEqual(['sites S001 = 1 by name, in doubt', 'gauges G1 = 1 by name, in doubt']);
    expect(found.codes).toEqual(['positions.of_two - Upper Tarn']);
    expect(match([point(1, 'Upper Tarn', here, { kind: 'gauge' })], both).pairs).toEqual(['gauges G1 = 1 by name']);
  });

  it('is in doubt where id and name say two rows, or the ids do', () => {
    const found = match([point(1, 'Upper Tarn', here, { ids: ['S002'] })], tarns);
    expect(found.pairs).toEqual(['sites S002 = 1 by id, in doubt']);
    expect(found.codes).toEqual(['positions.id_and_name S002 Upper Tarn']);
    expect(match([point(1, null, here, { ids: ['S001', 'S002'] })], tarns).codes).toEqual(['positions.of_two - S001']);
  });

  it('is nothing without a name and an id', () => {
    const found = match([point(1, null), point(2, null)], tarns);
    expect(found.codes).toEqual(['positions.without_name - ']);
    expect(found.problems[0]!.facts['count']).toBe(2);
  });
});

describe('two points for one row', () => {
  it('put it in doubt where they are in two places', () => {
    const found = match([point(1, 'Upper Tarn'), point(2, 'Upper Tarn', at(-8.51, 125.25))], tarns);
    expect(found.pairs).toEqual(['sites S001 = 1 by name, in doubt', 'sites S001 = 2 by name, in doubt']);
    expect(found.codes).toEqual(['positions.two_points S001 S001']);
  });

  it('count once where they are in one', () => {
    const found = match([point(1, 'Upper Tarn'), point(2, 'Upper Tarn', at(-8.500001, 125.25))], tarns);
    expect(found.pairs).toEqual(['sites S001 = 1 by name']);
    expect(found.codes).toEqual(['positions.same_point S001 S001']);
  });

  it('leave the surer one', () => {
    const found = match([point(1, 'Uper Tarn', at(-8.6, 125.3)), point(2, 'Upper Tarn')], tarns);
    expect(found.pairs).toEqual(['sites S001 = 2 by name']);
    expect(found.unmatchedPoints.map(({ number }) => number)).toEqual([1]);
  });
});

describe('where a point is', () => {
  const placed = (
    position: MapPoint['position'],
    present: MapPoint['position'] | null,
    others: readonly PositionTarget[] = [],
  ) => match([point(1, 'Upper Tarn', position)], [target('S001', 'Upper Tarn', present), ...others]);
  const around = Array.from({ length: 6 }, (_, i) => target(`T${i}`, `Other ${i}`, at(-8.4 - i / 50, 125.2 + i / 40)));

  it('is set down with the way it moves', () => {
    const found = placed(at(-8.51, 125.25), here);
    expect(found.pairs).toEqual(['sites S001 = 1 by name']);
    // A hundredth of a degree of a meridian of the mean sphere.
    expect(found.matches[0]!.moved_km).toBeCloseTo((2 * Math.PI * 6371.0088) / 36000, 6);
    expect(placed(here, null).matches[0]!.moved_km).toBeNull();
  });

  it('is in doubt at 0, 0', () => {
    expect(placed(at(0, 0), null).codes).toEqual(['positions.zero S001 0, 0']);
    expect(placed(at(0, 0), null).pairs).toEqual(['sites S001 = 1 by name, in doubt']);
  });

  it('is in doubt far from where it was, or from all others', () => {
    expect(placed(at(-8.6, 125.25), here).codes).toEqual(['positions.far_from_present S001 -8.6, 125.25']);
    expect(placed(at(-14, 125.25), null, around).codes).toEqual(['positions.far_from_others S001 -14, 125.25']);
    expect(placed(at(-14, 125.25), null, around.slice(0, 4)).codes).toEqual([]);
  });

  it('is likely swapped where it would land right the other way round', () => {
    const [north, east] = [42.5, 25.25];
    const bulk = Array.from({ length: 6 }, (_, i) => target(`T${i}`, `Other ${i}`, at(north + i / 50, east + i / 40)));
    const found = placed(at(east, north), null, bulk);
    expect(found.codes).toEqual(['positions.swapped_likely S001 25.25, 42.5']);
    expect(found.problems[0]!.facts['likely']).toBe('42.5, 25.25');
    expect(placed(at(east, north), at(north, east)).codes).toEqual(['positions.swapped_likely S001 25.25, 42.5']);
  });

  it('is no doubt across the 180° meridian', () => {
    const edge = Array.from({ length: 6 }, (_, i) =>
      target(`T${i}`, `Other ${i}`, at(-17, i % 2 === 0 ? 179.9 : -179.9)),
    );
    expect(placed(at(-17, -179.95), at(-17, 179.99), edge).codes).toEqual([
      'positions.far_from_present S001 -17, -179.95',
    ]);
    expect(placed(at(-17, -179.99), at(-17, 179.99), edge).codes).toEqual([]);
  });
});

it('matches the same whatever the order of the points', () => {
  const points = [
    point(1, 'Upper Tarn'),
    point(2, 'Fery Stones', at(-8.75, 125.5)),
    point(3, 'lower tarn', at(-8.55, 125.3)),
    point(4, 'S002', at(-8.56, 125.3)),
    point(5, 'Nowhere at all'),
    point(6, 'Upper Tarn', at(-8.7, 125.3)),
  ];
  const key = (pairs: readonly string[]) => [...pairs].sort();
  const expected = match(points, tarns);
  expect(expected.pairs).toHaveLength(4);
  fc.assert(
    fc.property(fc.shuffledSubarray(points, { minLength: points.length }), (shuffled) => {
      expect(key(match(shuffled, tarns).pairs)).toEqual(key(expected.pairs));
    }),
    { seed: 3, numRuns: 100 },
  );
});
