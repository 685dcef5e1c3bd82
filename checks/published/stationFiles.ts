import { dlyLines } from '../../packages/formats/src/stationDly.ts';
import { readStationRain } from '../../packages/tables/src/index.ts';
import { october1962 } from '../records/stationLines.ts';
import type { PublishedFile } from './published.ts';

const { lines } = dlyLines(`${october1962}\n`);
const values = lines[0]!.values!;
const read = readStationRain('greer', 'rain/greer.dly', lines);

/** Value and flags of a day, as the source writes them. */
function slot(date: number): string {
  const { value, measurementFlag, qualityFlag, sourceFlag } = values[date - 1]!;
  return [value.trim(), measurementFlag, qualityFlag, sourceFlag].join('|');
}

/** What the test of the package that keeps the line asserts of it. */
export const stationFiles: PublishedFile = {
  source: 'ghcn-daily',
  method: 'dlyLines',
  rows: [
    ...(
      [
        [15, '0|||X'],
        [16, '0|T||X'],
        [21, '102|||X'],
        [31, '30|||X'],
      ] as const
    ).map(([date, printed]) => ({
      place: `USW00003870, October 1962, day ${date}: value [0.1 mm] and flags`,
      inputs: { date },
      printed,
      got: () => slot(date),
    })),
    {
      place: 'USW00003870, October 1962: days missing [day]',
      inputs: {},
      printed: '14',
      got: () => read.readings.filter(({ rain_mm }) => rain_mm === null).length,
      method: 'readStationRain',
    },
    {
      place: 'USW00003870, October 1962: days with a trace [day]',
      inputs: {},
      printed: '1',
      got: () => Number(read.problems.find(({ code }) => code === 'station.trace')?.facts['count'] ?? 0),
      method: 'readStationRain',
    },
  ],
};
