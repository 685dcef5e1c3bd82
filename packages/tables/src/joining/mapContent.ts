import { type GeoPosition, lineLength_km } from '@eavewell/engine';
import type { MapLine, WayMode } from './mapThings.ts';
import type { PositionTarget } from './matchTargets.ts';
import type { TablesRead } from './tablesRead.ts';
import type { WayEnd, WayKnown } from './waysOfLines.ts';

/** A point of a map that is written. */
export interface ShownPoint {
  /** site, gauge, a kind of place, or place where that is not known. */
  readonly kind: string;
  readonly idName: 'siteId' | 'gaugeId' | 'placeId';
  readonly id: string;
  readonly name: string;
  readonly people: number | null;
  readonly position: GeoPosition;
}

/** A way of a map that is written. */
export interface ShownWay {
  readonly wayId: string;
  readonly name: string | null;
  readonly from: string | null;
  readonly to: string | null;
  readonly mode: WayMode | null;
  readonly length_km: number;
  readonly pieces: MapLine['pieces'];
}

/** All that can be shown on a map, and how much cannot. */
export interface MapContent {
  readonly points: readonly ShownPoint[];
  readonly ways: readonly ShownWay[];
  readonly withoutPosition: readonly string[];
  readonly withoutLine: readonly string[];
}

interface Cells {
  readonly latitude_deg: number | null;
  readonly longitude_deg: number | null;
}

function positionOf({ latitude_deg, longitude_deg }: Cells): GeoPosition | null {
  return latitude_deg === null || longitude_deg === null ? null : { latitude_deg, longitude_deg };
}

/**
 * Which rows have, or should have, a position?
 *
 * @param tables - the tables as they were read
 * @returns the sites, gauges and places, in the order of their rows, with their positions [deg]
 * @definition ours
 */
export function positionTargets({ sites, gauges, places }: TablesRead): readonly PositionTarget[] {
  return [
    ...(sites?.rows ?? []).map(({ row, values }): PositionTarget => {
      const id = values.siteId!;
      return { table: 'sites', id, name: values.name ?? id, row, position: positionOf(values) };
    }),
    ...(gauges?.rows ?? []).map(({ row, values }): PositionTarget => {
      const id = values.gaugeId!;
      return { table: 'gauges', id, name: values.name ?? id, row, position: positionOf(values) };
    }),
    ...(places?.rows ?? []).map(({ row, values }): PositionTarget => {
      const id = values.placeId!;
      return { table: 'places', id, name: values.name ?? id, row, position: positionOf(values) };
    }),
  ];
}

/**
 * Which ways are there already?
 *
 * @param tables - the tables as they were read
 * @returns the rows of ways.csv
 * @definition ours
 */
export function waysKnown({ ways }: TablesRead): readonly WayKnown[] {
  return (ways?.rows ?? []).map(({ row, values }) => {
    const { name, from, to, mode } = values;
    return { wayId: values.wayId!, name, row, from, to, mode };
  });
}

/**
 * Where may a way start or end? At a site or a place; a gauge is none of them.
 *
 * @param targets - the rows with their positions
 * @returns those whose position is known [deg]
 * @definition ours
 */
export function wayEnds(targets: readonly PositionTarget[]): readonly WayEnd[] {
  return targets.flatMap(({ table, id, position }) =>
    table === 'gauges' || position === null ? [] : [{ id, position }],
  );
}

/**
 * What can be shown on a map? Rows with a position and ways with a line; the others are named.
 *
 * @param tables - the tables as they were read
 * @param lines - the lines of ways
 * @returns points and ways, and the ids of those that cannot be shown
 * @definition ours
 */
export function mapContent(tables: TablesRead, lines: readonly MapLine[]): MapContent {
  const people = new Map((tables.sites?.rows ?? []).map(({ values }) => [values.siteId!, values.people]));
  const kinds = new Map((tables.places?.rows ?? []).map(({ values }) => [values.placeId!, values.kind]));
  const about = {
    sites: { idName: 'siteId', kind: () => 'site' },
    gauges: { idName: 'gaugeId', kind: () => 'gauge' },
    places: { idName: 'placeId', kind: (id: string) => kinds.get(id) ?? 'place' },
  } as const;
  const targets = positionTargets(tables);
  const points = targets.flatMap(({ table, id, name, position }): readonly ShownPoint[] => {
    const { idName, kind } = about[table];
    const count = table === 'sites' ? (people.get(id) ?? null) : null;
    return position === null ? [] : [{ kind: kind(id), idName, id, name, people: count, position }];
  });
  const byId = new Map(lines.map((line) => [line.ids[0] ?? '', line]));
  const rows = (tables.ways?.rows ?? []).map(({ values }) => values);
  const ways = rows.flatMap(({ wayId, name, from, to, mode, length_km }): readonly ShownWay[] => {
    const line = byId.get(wayId!);
    if (!line) return [];
    const { pieces } = line;
    return [{ wayId: wayId!, name, from, to, mode, length_km: length_km ?? lineLength_km(pieces), pieces }];
  });
  return {
    points,
    ways,
    withoutPosition: targets.filter(({ position }) => position === null).map(({ id }) => id),
    withoutLine: rows.map(({ wayId }) => wayId!).filter((wayId) => !byId.has(wayId)),
  };
}
