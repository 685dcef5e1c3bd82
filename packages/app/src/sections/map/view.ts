import type { Box } from './frame.ts';
import type { PlanePoint } from './plane.ts';

/** What part of the plane is seen: the point in the middle [km] and the scale [px for a km]. */
export interface View {
  readonly east_km: number;
  readonly south_km: number;
  readonly pixels_per_km: number;
}

/** The size of the picture [px]. */
export interface Size {
  readonly wide: number;
  readonly high: number;
}

/** Free space round what is fitted, and under it, where the scale and the buttons stand [px]. Ours. */
const [edge, foot] = [34, 60] as const;
/** Nearest there is: 200 px for a km; farthest: a quarter of what fits. Ours. */
const [nearest, farthest] = [200, 0.25] as const;

/** The view that shows a box whole. */
export function fitted({ west, east, north, south }: Box, { wide, high }: Size): View {
  const room = [Math.max(40, wide - 2 * edge) / (east - west), Math.max(40, high - edge - foot) / (south - north)];
  const pixels_per_km = Math.min(nearest, ...room);
  return {
    east_km: (west + east) / 2,
    south_km: (north + south) / 2 + (foot - edge) / 2 / pixels_per_km,
    pixels_per_km,
  };
}

/** Where a point of the plane falls in the picture [px]. */
export function onPicture(view: View, { wide, high }: Size, [x, y]: PlanePoint): PlanePoint {
  return [wide / 2 + (x - view.east_km) * view.pixels_per_km, high / 2 + (y - view.south_km) * view.pixels_per_km];
}

/** The view moved by so many pixels of the picture; what was fitted never leaves it wholly. */
export function moved(view: View, whole: Box, right: number, down: number): View {
  const [x, y] = [view.east_km - right / view.pixels_per_km, view.south_km - down / view.pixels_per_km];
  return {
    ...view,
    east_km: Math.min(whole.east, Math.max(whole.west, x)),
    south_km: Math.min(whole.south, Math.max(whole.north, y)),
  };
}

/** The view nearer or farther by a factor, about a point of the picture that stays where it is. */
export function zoomed(view: View, size: Size, whole: Box, times: number, about?: PlanePoint): View {
  const least = fitted(whole, size).pixels_per_km * farthest;
  const pixels_per_km = Math.min(nearest, Math.max(least, view.pixels_per_km * times));
  const [x, y] = about ?? [size.wide / 2, size.high / 2];
  const shift = 1 / view.pixels_per_km - 1 / pixels_per_km;
  const next = {
    east_km: view.east_km + (x - size.wide / 2) * shift,
    south_km: view.south_km + (y - size.high / 2) * shift,
    pixels_per_km,
  };
  return moved(next, whole, 0, 0);
}

/** The view with a point in its middle. */
export function centred(view: View, [x, y]: PlanePoint): View {
  return { ...view, east_km: x, south_km: y };
}
