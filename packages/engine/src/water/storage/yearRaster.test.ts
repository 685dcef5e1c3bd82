import { describe, expect, it } from 'vitest';
import { yearRaster } from './yearRaster.ts';

describe('yearRaster', () => {
  it('cuts the record into its years', () => {
    const years = [
      { label: 2001, from: 0, to: 2, missing_days: 0, judged: true },
      { label: 2002, from: 2, to: 3, missing_days: 1, judged: false },
    ];
    const rows = yearRaster(
      { firstDay: 100, content_L: Float64Array.of(0, 50, 200), dry: Uint8Array.of(1, 0, 0) },
      years,
      200,
    );
    expect(rows).toEqual([
      {
        waterYear: 2001,
        judged: true,
        firstDay: 100,
        full_fraction: Float64Array.of(0, 0.25),
        dry: Uint8Array.of(1, 0),
      },
      { waterYear: 2002, judged: false, firstDay: 102, full_fraction: Float64Array.of(1), dry: Uint8Array.of(0) },
    ]);
  });
});
