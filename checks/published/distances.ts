import { greatCircle_km, lineLength_km } from '../../packages/engine/src/kernel/index.ts';
import type { PublishedFile } from './published.ts';

const m_per_km = 1000;

/** The printed distance is over the ellipsoid; ours is over the sphere of the mean radius. */
function sphere(printed_m: number) {
  const reason =
    'a sphere for the ellipsoid is out by the flattening at most: 1 in 298, doubled in the radius of curvature';
  return { value: 0.0056 * printed_m, reason };
}

const at = (latitude_deg: number, longitude_deg: number) => ({ latitude_deg, longitude_deg });

export const distances: PublishedFile = {
  source: 'geographiclib',
  method: 'greatCircle_km',
  rows: [
    {
      place: 'page of the JavaScript package, example of Inverse [m]: almost half way round the earth',
      inputs: { latitude1: -41.32, longitude1: 174.81, latitude2: 40.96, longitude2: -5.5 },
      printed: '19959679.267',
      tolerance: sphere(19959679.267),
      got: () => greatCircle_km(at(-41.32, 174.81), at(40.96, -5.5)) * m_per_km,
    },
    {
      place: 'page of the Rust wrapper, version 0.1.0, example of inverse [m]: over the 180° meridian and the equator',
      inputs: { latitude1: 37.87622, longitude1: -122.23558, latitude2: -9.4047, longitude2: 147.1597 },
      printed: '10700471.955233702',
      tolerance: sphere(10700471.955),
      got: () => greatCircle_km(at(37.87622, -122.23558), at(-9.4047, 147.1597)) * m_per_km,
    },
    {
      place: 'page of the Rust wrapper, the same, as a line of one stretch [m]',
      inputs: { latitude1: 37.87622, longitude1: -122.23558, latitude2: -9.4047, longitude2: 147.1597 },
      printed: '10700471.955233702',
      tolerance: sphere(10700471.955),
      got: () => lineLength_km([[at(37.87622, -122.23558), at(-9.4047, 147.1597)]]) * m_per_km,
      method: 'lineLength_km',
    },
  ],
};
