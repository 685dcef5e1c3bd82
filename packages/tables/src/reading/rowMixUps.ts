import { m_per_ft } from '@eavewell/engine';
import { cubicMetres } from '../contract/columns.ts';
import type { Columns } from '../contract/table.ts';
import type { Fault } from './tableProblems.ts';

/** A fault that only the cells of a row together show. The first column is the one it is named at. */
export interface RowMixUp {
  readonly columns: readonly string[];
  readonly fault: Fault;
}

/** Largest latitude and longitude [deg]. */
const [mostLatitude_deg, mostLongitude_deg] = [90, 180] as const;
const squareFeet_per_m2 = 1 / (m_per_ft * m_per_ft);
/** How far a ratio may be from that of the two units, for roundings of a survey [fraction]. Ours. */
const ratioTolerance_fraction = 0.03;

const rounded = (value: number) => Number(value.toPrecision(4));

function swappedCoordinates(latitude: number, longitude: number): readonly RowMixUp[] {
  const isSwapped =
    Math.abs(latitude) > mostLatitude_deg &&
    Math.abs(latitude) <= mostLongitude_deg &&
    Math.abs(longitude) <= mostLatitude_deg;
  if (!isSwapped) return [];
  const facts = { value: `${latitude}, ${longitude}`, likely: `${longitude}, ${latitude}`, unit: 'deg' };
  return [{ columns: ['latitude_deg', 'longitude_deg'], fault: { code: 'row.coordinates_swapped', facts } }];
}

/** Sides and area of one roof that differ by the ratio of square feet to m², which no shape of a plan explains. */
function feet(length_m: number, width_m: number, area_m2: number): readonly RowMixUp[] {
  const sides_m2 = length_m * width_m;
  const isRatio = (ratio: number) => Math.abs(ratio / squareFeet_per_m2 - 1) <= ratioTolerance_fraction;
  if (isRatio(sides_m2 / area_m2)) {
    const likely = `${rounded(length_m * m_per_ft)} × ${rounded(width_m * m_per_ft)}`;
    const facts = { value: `${length_m} × ${width_m}`, likely, area_m2, unit: 'm' };
    return [{ columns: ['length_m', 'width_m'], fault: { code: 'row.sides_in_feet', facts } }];
  }
  if (!isRatio(area_m2 / sides_m2)) return [];
  const facts = { value: String(area_m2), likely: String(rounded(area_m2 / squareFeet_per_m2)), unit: 'm2' };
  return [{ columns: ['roofPlanArea_m2'], fault: { code: 'row.area_in_square_feet', facts } }];
}

/** Water does not stand above the wall that holds it. */
function overflowAboveWall(overflowHeight_m: number, height_m: number): readonly RowMixUp[] {
  if (overflowHeight_m <= height_m) return [];
  const facts = { value: String(overflowHeight_m), wall_m: height_m, unit: 'm' };
  return [{ columns: ['overflowHeight_m'], fault: { code: 'row.overflow_above_wall', facts } }];
}

/** No more portions turn than there were. */
function morePositive(positive: number, portions: number): readonly RowMixUp[] {
  if (positive <= portions) return [];
  const facts = { value: String(positive), portions: String(portions) };
  return [{ columns: ['positive'], fault: { code: 'row.positive_over_portions', facts } }];
}

function cubicMetresForLitres(volume_L: number): readonly RowMixUp[] {
  const { unit: other, high, factor } = cubicMetres;
  if (volume_L <= 0 || volume_L > high) return [];
  const facts = { value: String(volume_L), other, likely: String(volume_L * factor), unit: 'L' };
  return [{ columns: ['volume_L'], fault: { code: 'cell.other_unit', facts } }];
}

/**
 * Which cells of a row are good numbers in the wrong place or the wrong unit, as the others in the row show?
 *
 * @param columns - the columns of the table
 * @param numberIn - the number in a column as it is written, null where there is none
 * @param kind - the kind of a part, empty in other tables [text]
 * @returns the faults, each with the columns it is about
 * @problem cell.other_unit - a part that is a tank and holds so few litres that m³ are meant
 * @problem row.coordinates_swapped - a latitude beyond 90 degrees that would be a longitude
 * @problem row.sides_in_feet - length × width is 10.76 times the area: as many square feet as m²
 * @problem row.overflow_above_wall - an overflow higher than the wall of its tank
 * @problem row.positive_over_portions - more tubes turned than there were
 * @problem row.area_in_square_feet - the area is 10.76 times length × width
 * @definition ours: docs/decisions/0017-cells-mixed-up.md
 */
export function rowMixUps(
  columns: Columns,
  numberIn: (column: string) => number | null,
  kind: string,
): readonly RowMixUp[] {
  const all = (...names: readonly string[]) => {
    if (names.some((name) => columns[name] === undefined)) return null;
    const numbers = names.flatMap((name) => numberIn(name) ?? []);
    return numbers.length === names.length ? numbers : null;
  };
  const coordinates = all('latitude_deg', 'longitude_deg');
  const volume = kind === 'tank' ? all('volume_L') : null;
  const sides = all('length_m', 'width_m', 'roofPlanArea_m2');
  const levels = all('overflowHeight_m', 'height_m');
  const turned = all('positive', 'portions');
  return [
    ...(coordinates ? swappedCoordinates(coordinates[0]!, coordinates[1]!) : []),
    ...(sides ? feet(sides[0]!, sides[1]!, sides[2]!) : []),
    ...(levels ? overflowAboveWall(levels[0]!, levels[1]!) : []),
    ...(turned ? morePositive(turned[0]!, turned[1]!) : []),
    ...(volume ? cubicMetresForLitres(volume[0]!) : []),
  ];
}

/** A position as it stands in a row. */
export interface Position {
  readonly row: number;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

/** So few positions do not show where a programme lies; and what is near them and what is far [deg]. Ours. */
const leastPositions = 5;
const [near_deg, far_deg] = [2, 5] as const;

function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;
}

/** What was likely done to a position: its numbers the other way round, a sign lost or put, or both. */
export type PositionSlip = 'swapped' | 'sign' | 'both';

/** A position that is meant where another stands. */
export interface LikelyPosition {
  readonly how: PositionSlip;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

type Numbers = Pick<Position, 'latitude_deg' | 'longitude_deg'>;

/** What each slip makes of two numbers; the plainer slip first. */
function slipsOf({ latitude_deg: first, longitude_deg: second }: Numbers): readonly LikelyPosition[] {
  const as = (how: PositionSlip, latitude_deg: number, longitude_deg: number) => ({ how, latitude_deg, longitude_deg });
  return [
    as('swapped', second, first),
    as('sign', -first, second),
    as('sign', first, -second),
    as('sign', -first, -second),
    as('both', -second, first),
    as('both', second, -first),
    as('both', -second, -first),
  ].filter(
    ({ latitude_deg, longitude_deg }) =>
      Math.abs(latitude_deg) <= mostLatitude_deg && Math.abs(longitude_deg) <= mostLongitude_deg,
  );
}

/** Where most of these positions lie; null where they are too few to show it. */
export function placeOfMost(positions: readonly Numbers[]): Numbers | null {
  if (positions.length < leastPositions) return null;
  return {
    latitude_deg: middle(positions.map(({ latitude_deg }) => latitude_deg)),
    longitude_deg: middle(positions.map(({ longitude_deg }) => longitude_deg)),
  };
}

const away_deg = (one: Numbers, other: Numbers) =>
  Math.max(Math.abs(one.latitude_deg - other.latitude_deg), Math.abs(one.longitude_deg - other.longitude_deg));

/**
 * Which position near the others was likely meant by two numbers?
 *
 * @param numbers - latitude and longitude as they stand [deg]
 * @param most - where most of the others lie [deg]
 * @returns the nearest that one slip explains; null where none is near
 * @definition ours: docs/decisions/0017-cells-mixed-up.md, docs/decisions/0138-positions-guessed-by-their-neighbours.md
 */
export function likelyPosition(numbers: Numbers, most: Numbers): LikelyPosition | null {
  const found = slipsOf(numbers).filter((one) => away_deg(one, most) <= near_deg);
  return found.toSorted((a, b) => away_deg(a, most) - away_deg(b, most))[0] ?? null;
}

/**
 * Which positions are far from all the others as they stand, and near them as one slip explains?
 *
 * @param positions - the positions of one table
 * @returns those, each with its numbers as they stand and the position likely meant [deg]
 * @definition ours: docs/decisions/0017-cells-mixed-up.md
 */
export function positionsFar(
  positions: readonly Position[],
): readonly (Position & { readonly likely: LikelyPosition })[] {
  const most = placeOfMost(positions);
  if (most === null) return [];
  return positions.flatMap((position) => {
    const likely = away_deg(position, most) > far_deg ? likelyPosition(position, most) : null;
    return likely === null ? [] : [{ ...position, likely }];
  });
}
