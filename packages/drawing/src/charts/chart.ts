import type { DayIndex } from '@eavewell/engine';
import type { Picture, Shape } from '../sheet/shapes.ts';

/** A place on a picture [px]. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A picture of days: what is pointed at in one can be shown in all. */
export interface DayChart extends Picture {
  /** The day at a place [px]; null where there is none. */
  dayAt(x: number, y: number): DayIndex | null;
  /** Where a day is; null where it is not on the picture. */
  placeOf(day: DayIndex): Box | null;
  /** What is drawn over the picture when this day is pointed at, here or elsewhere. Empty where it is not on the picture. */
  overlayOf(day: DayIndex): readonly Shape[];
}

/** A picture of sizes of tank. */
export interface SizeChart extends Picture {
  /** The usable volume at a place [L]; null outside the frames. */
  sizeAt(x: number, y: number): number | null;
  /** Where a size is; null where the axis does not reach it. */
  placeOfSize(tankVolume_L: number): Box | null;
  overlayOfSize(tankVolume_L: number): readonly Shape[];
}

/** A column of a table: what it holds, by a name that ends in its unit, and the unit alone. */
export interface ChartColumn {
  readonly key: string;
  readonly unit: string;
}

/** All that a picture says, in figures. Null: not known, or nothing of the kind. */
export interface ChartTable {
  readonly columns: readonly ChartColumn[];
  readonly rows: readonly (readonly (number | string | null)[])[];
}

/** Is a place within a box? */
export function isWithin({ x, y, width, height }: Box, atX: number, atY: number): boolean {
  return atX >= x && atX <= x + width && atY >= y && atY <= y + height;
}
