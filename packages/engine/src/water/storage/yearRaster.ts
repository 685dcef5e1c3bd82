import type { DayIndex, StorageSeries, WaterYear } from '../../kernel/index.ts';

/** One row of the raster: a water year, a day each. */
export interface RasterYear {
  readonly waterYear: number;
  readonly judged: boolean;
  readonly firstDay: DayIndex;
  /** How full the tank is at the end of each day, 0 empty to 1 full. */
  readonly full_fraction: Float64Array;
  /** 1 on a dry day. */
  readonly dry: Uint8Array;
}

/**
 * How full was the tank on every day of the record, a row a year?
 *
 * @param series - the chosen tank's series: content [L] and dry days by day
 * @param years - the record's water years
 * @param tankVolume_L - usable volume [L], above 0
 * @returns a row a water year: share of the tank that is full [fraction] and dry days, by day
 * @law the rows joined end to end are the record
 * @definition content ÷ usable volume
 */
export function yearRaster(
  series: Pick<StorageSeries, 'firstDay' | 'content_L' | 'dry'>,
  years: readonly WaterYear[],
  tankVolume_L: number,
): readonly RasterYear[] {
  return years.map(({ label, judged, from, to }) => ({
    waterYear: label,
    judged,
    firstDay: series.firstDay + from,
    full_fraction: series.content_L.slice(from, to).map((content) => content / tankVolume_L),
    dry: series.dry.slice(from, to),
  }));
}
