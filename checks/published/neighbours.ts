import { normalRatio_mm, slopeRatio } from '../../packages/engine/src/water/rain/index.ts';
import type { PublishedFile } from './published.ts';

/** The neighbours of a worked example: rain and normals there, and the normal of the gauge without a reading. */
function ratioOf(rain: readonly number[], normals: readonly number[], ownNormal_mm: number) {
  return () => normalRatio_mm(rain.map((rain_mm, i) => ({ rain_mm, normal_mm: normals[i]!, ownNormal_mm })))!;
}

/** Yearly rain, newest first, of the gauge looked at and of the mean of the others. */
const station = [69, 55, 62, 67, 87, 70, 65, 75, 90, 100, 90, 95, 85, 90, 75, 95];
const base = [77, 62, 67, 68, 86, 90, 65, 75, 70, 70, 70, 75, 65, 70, 55, 75];

export const neighbourRain: PublishedFile = {
  source: 'punmia-pande-lal',
  method: 'normalRatio_mm',
  rows: [
    {
      place: 'Example 4.3, p. 115: rain of the storm at the gauge without a reading [cm]',
      inputs: { rain: [6.6, 4.8, 3.7], normals: [72.6, 51.8, 38.2], ownNormal: 65.6 },
      printed: '6.13',
      got: ratioOf([6.6, 4.8, 3.7], [72.6, 51.8, 38.2], 65.6),
    },
    {
      place: 'Example 4.40, p. 216: rain at the gauge without a reading [mm]',
      inputs: { rain: [75, 58, 47], normals: [826, 618, 482], ownNormal: 757 },
      printed: '70.90',
      got: ratioOf([75, 58, 47], [826, 618, 482], 757),
      follows: {
        value: 71.2,
        tolerance: 0.005,
        reason: 'two of the three terms were cut to whole numbers: 71 and 73 instead of 71.04 and 73.81',
      },
    },
    {
      place: 'Example 4.6, p. 127: slope of the newest 8 years ÷ slope of the oldest 8',
      inputs: { station, base },
      printed: '0.7051',
      got: () => slopeRatio([...station].reverse(), [...base].reverse())!,
      follows: {
        value: 0.7121,
        tolerance: 0.00005,
        reason: 'the two slopes were read off a curve drawn by hand; sums of the printed years give 0.7121',
      },
      method: 'slopeRatio',
    },
  ],
};
