import { dayIndexOf, type GaugeFacts, noStorms } from '../../packages/engine/src/kernel/index.ts';

/**
 * Rain of 1963 at Greer, South Carolina, by month and day [tenths of mm]. Source: ghcn-daily, station USW00003870, element
 * PRCP, quality flags empty. Public domain.
 */
const rainByMonth_tenthsOfMm: readonly (readonly number[])[] = [
  [0, 0, 0, 0, 0, 0, 0, 0, 0, 3, 201, 38, 36, 0, 0, 0, 0, 135, 419, 79, 0, 0, 46, 0, 0, 3, 18, 0, 0, 23, 0],
  [15, 206, 119, 0, 0, 0, 0, 0, 0, 0, 117, 61, 0, 0, 0, 0, 0, 0, 188, 0, 0, 0, 0, 30, 0, 89, 0, 0],
  [249, 0, 0, 5, 965, 165, 0, 0, 8, 0, 135, 800, 0, 0, 0, 5, 71, 0, 3, 3, 0, 0, 0, 0, 0, 46, 0, 0, 0, 0, 0],
  [0, 0, 0, 0, 0, 198, 33, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 188, 848, 244],
  [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 53, 36, 0, 0, 74, 0, 0, 0, 0, 0, 0, 0, 8, 51, 414, 25, 61, 56, 0],
  [0, 0, 30, 0, 8, 0, 0, 0, 0, 0, 0, 0, 0, 48, 0, 71, 124, 38, 18, 150, 231, 10, 41, 0, 0, 89, 297, 30, 15, 0],
  [0, 0, 0, 0, 0, 33, 43, 3, 0, 0, 0, 0, 0, 89, 0, 46, 20, 0, 0, 152, 0, 0, 56, 0, 183, 0, 0, 0, 0, 0, 0],
  [0, 0, 0, 0, 0, 0, 0, 0, 0, 33, 0, 0, 28, 0, 0, 0, 0, 0, 28, 0, 0, 0, 0, 0, 20, 0, 5, 0, 109, 71, 0],
  [0, 0, 0, 3, 53, 0, 0, 0, 0, 0, 0, 0, 0, 127, 18, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 988, 0, 0],
  [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 61, 0, 0, 0],
  [183, 0, 0, 0, 8, 20, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 13, 216, 0, 0, 79, 15, 218, 312, 0],
  [0, 23, 0, 0, 0, 0, 0, 46, 0, 0, 206, 117, 81, 114, 0, 0, 0, 0, 0, 0, 0, 0, 213, 0, 0, 0, 0, 0, 0, 0, 160],
];

/** The same as a gauge with one whole calendar year of readings. */
export const greer1963: GaugeFacts = {
  ...noStorms,
  gaugeId: 'greer-1963',
  name: 'Greer, South Carolina, 1963',
  latitude_deg: null,
  longitude_deg: null,
  readingTime: null,
  normals: [],
  file: 'rain/greer-1963.csv',
  readings: rainByMonth_tenthsOfMm
    .flat()
    .map((tenths, i) => ({ day: dayIndexOf(1963, 1, 1) + i, rain_mm: tenths / 10, row: i + 2 })),
};
