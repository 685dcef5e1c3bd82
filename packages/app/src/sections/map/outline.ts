import { geoPath } from 'd3-geo';
import { feature, mesh } from 'topojson-client';
import outlineAddress from 'world-atlas/countries-50m.json?url';
import type { Box } from './frame.ts';
import type { Plane } from './plane.ts';

/** The file of outlines, as its reader takes it. */
type World = Parameters<typeof feature>[0];

/** The outlines of states, or of all land. */
type Outlines = Extract<NonNullable<Parameters<typeof mesh>[1]>, { readonly type: 'GeometryCollection' }>;

/** Coasts and borders as paths of the plane [km]; null where there are none. */
export interface Outline {
  readonly coast: string | null;
  readonly land: string | null;
  readonly borders: string | null;
  /** Does a coast or a border come near the sites? */
  readonly isNear: boolean;
}

/** Coasts and borders are drawn so many times as far out as the sites lie: farther than one can go. Ours. */
const times = 6;

/** The outlines of the earth's land and states, a file of the program that is fetched when a map is first drawn. */
export async function loadWorld(): Promise<World> {
  const answer = await fetch(outlineAddress);
  if (!answer.ok) throw new Error(`outlines: ${answer.status}`);
  return (await answer.json()) as World;
}

/**
 * The coasts and borders round a box of the plane.
 *
 * @param world - the outlines
 * @param plane - what they are laid on
 * @param box - where the sites lie [km]
 */
export function outlineOf(world: World, plane: Plane, { west, east, north, south }: Box): Outline {
  const span = Math.max(east - west, south - north);
  const [x, y] = [(west + east) / 2, (north + south) / 2];
  const { projection } = plane;
  const within = (half: number) =>
    geoPath(
      projection.clipExtent([
        [x - half, y - half],
        [x + half, y + half],
      ]),
    );
  const { countries, land } = world.objects as Readonly<Record<'countries' | 'land', Outlines>>;
  const coasts = mesh(world, countries, (a, b) => a === b);
  const inland = mesh(world, countries, (a, b) => a !== b);
  const path = within(times * span);
  const drawn = { coast: path(coasts), borders: path(inland), land: path(feature(world, land)) };
  const near = within(span);
  const isNear = near(coasts) !== null || near(inland) !== null;
  projection.clipExtent(null);
  return { ...drawn, isNear };
}
