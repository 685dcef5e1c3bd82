import { expect, it } from 'vitest';
import { rainSheets } from './sheetsToWrite.ts';

const rows = (count: number) => Array.from({ length: count }, (_, i) => ({ date: `2001-01-0${i + 1}`, rain_mm: i }));

it('puts the rain of all gauges into one sheet where it fits', () => {
  const sheets = rainSheets(
    [
      { gaugeId: 'G1', rows: rows(4) },
      { gaugeId: 'G2', rows: rows(5) },
    ],
    10,
  );
  expect(sheets.map(({ sheet, data }) => [sheet, data.length])).toEqual([['rain', 10]]);
});

it('gives a gauge a sheet of its own where not, if its name has room and differs by more than capitals', () => {
  const long = 'G'.repeat(27);
  const sheets = rainSheets(
    [
      { gaugeId: 'G1', rows: rows(6) },
      { gaugeId: 'g1', rows: rows(2) },
      { gaugeId: long, rows: rows(5) },
      { gaugeId: long.slice(1), rows: rows(3) },
    ],
    10,
  );
  expect(sheets.map(({ sheet, data }) => [sheet, data.length])).toEqual([
    ['rain', 8],
    ['rain G1', 7],
    [`rain ${long.slice(1)}`, 4],
  ]);
});

it('has no sheet of rain without a gauge', () => {
  expect(rainSheets([])).toEqual([]);
});
