import type { Station, StationVerdict } from '@eavewell/engine';
import type { Picture } from '../sheet/shapes.ts';
import type { Building, BuiltTank, How } from './building.ts';

/** Every word on a drawing of a building. */
export interface SectionWords {
  /** A length with its unit, and what is said of how it came: `2.55 m`, `about 2.55 m`, `2.60 m?`. */
  metres(value_m: number, how: How): string;
  /** The same of a diameter: `⌀ 2.55 m`. */
  diameter(value_m: number, how: How): string;
  roofOverGutters(value_m: number, how: How): string;
  degrees(value_deg: number, how: How): string;
  /** A number of the scale bar; the last has the unit. */
  scaleMark(value_m: number, isLast: boolean): string;
  /** What dashed lines mean: `dashed: not measured`. */
  readonly notMeasured: string;
  /** What dashed blue lines mean. */
  readonly proposed: string;
  /** Beside a pipe that would have to run up: the overflow stands so much over the gutter. */
  tankTooHigh(by_m: number): string;
  /** In the plan: how much of the roof drains to a gutter. */
  guttered(fraction: number, how: How): string;
  /** In the plan: nobody measured how it lies. */
  readonly northNotKnown?: string;
  /** In the plan: how many downpipes. */
  downpipes(count: number): string;
}

/** What stands at a station's mark. */
export interface MarkWords {
  readonly word: string;
  /** The figure that makes it an exception; null where none is shown. */
  readonly figure: string | null;
}

/** How much water is in a body of water. */
export interface Level {
  readonly tankIds: readonly string[];
  /** Litres over the outlet. */
  readonly content_L: number;
}

export interface SectionInput {
  readonly building: Building;
  /** One for each body of water, as proposed where anything is; null or left out: none is drawn. */
  readonly levels: readonly Level[] | null;
  readonly stations: Readonly<Record<Station, StationVerdict>>;
  readonly letters: Readonly<Record<Station, MarkWords>>;
  readonly words: SectionWords;
  /** Its measures with a remedy or a draft: what differs is drawn dashed. */
  readonly proposed?: Building | null;
  /** What is said of it, a line each: what it is, litres, cost. Stands in the first tank that is proposed. */
  readonly proposedWords?: readonly string[];
  /** Width of the picture [px]. */
  readonly width: number;
  /** px to the metre, where the sheet says which; else as much as the width holds. */
  readonly pxPerM?: number | null;
  /** The whole, or a cut-out at one station. */
  readonly detail?: Station | 'whole';
}

/** Where the water of a tank is drawn, so that its level alone can be drawn anew. */
export interface WaterPlace {
  readonly tank: BuiltTank;
  /** Left wall, and foot of the tank [px]. */
  readonly x: number;
  readonly foot: number;
  readonly isDashed: boolean;
}

/** A section, and where its water is drawn. */
export interface Section extends Picture {
  readonly pxPerM: number;
  /** By body of water. */
  readonly waters: readonly (readonly WaterPlace[])[];
}
