import type { GroundClass, Station, StationVerdict } from '@eavewell/engine';
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
  /** The fall of a gutter toward its outlet [mm/m]: `falls 3 mm/m`; 0: level; under 0: it falls back; null: nobody measured it. */
  fall(value_mm_per_m: number | null): string;
  /** The same over its whole run: `60 mm over 12.00 m`. */
  fallOver(drop_m: number, run_m: number, how: How): string;
  /** A gutter across: `150 × 75 mm`. */
  gutterSize(width_m: number, depth_m: number, how: How): string;
  /** Its outlets: `1 outlet ⌀ 90 mm, with a grate`. */
  outlets(count: number, bore_m: number, how: How, isGrated: boolean): string;
  /** What is told of a part with its name: `gutter 1.56 of 1.20 L/s`. */
  partSaid(part: FiguredPart, figure: string): string;
  /** The inside diameter of a pipe: `⌀ 90 mm`. */
  bore(value_m: number, how: How): string;
  /** A detail circle: `8 times as large`. */
  larger(times: number): string;
  /** What a first-flush chamber holds: `40 L`, and by which hole it empties: `hole 3 mm`; null: not measured. */
  chamber(volume_L: number, how: How, hole_m: number | null): string;
  /** Its hole is blocked. */
  readonly holeBlocked: string;
  /** Beside a tank whose inlet stands so much over the gutter. */
  inletTooHigh(by_m: number): string;
  /** Heights over the floor of a tank: `inlet 2.10 m`, `draw-off 0.60 m`. */
  inlet(value_m: number, how: How): string;
  drawOff(value_m: number, how: How): string;
  overflowAt(value_m: number, how: How): string;
  /** Overflow pipes: `overflow ⌀ 90 mm, no screen`. */
  overflow(count: number, bore_m: number, how: How, isScreened: boolean): string;
  /** Nobody said where the overflow leads. */
  readonly overflowWay: string;
  sludge(value_m: number): string;
  cells(count: number): string;
  /** Over the line of pressure at the taps: what is left of it, or what the pump must add. */
  headLeft(value_m: number): string;
  pumpAdds(value_m: number): string;
  /** What a stand rests on; null: nobody said. */
  ground(groundClass: GroundClass | null): string;
  /** Its pads: `4 pads, 0.50 m`. */
  pads(count: number, side_m: number): string;
  /** Between the outer edges of its feet: `base 2.10 m`. */
  base(value_m: number, how: How): string;
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

/** Parts that a flow can be told of. */
export type FiguredPart = 'gutter' | 'outlet' | 'downpipe' | 'overflow' | 'pipe';

/** What is said beside one part: what it must carry and what it does: `1.56 of 1.20 L/s`. */
export interface PartLetters {
  readonly part: FiguredPart;
  /** Of the gutter (also for its outlet), the downpipe, the tank (for its overflow) or the pipe. */
  readonly id: string;
  readonly text: string;
  readonly verdict: StationVerdict;
}

/** How deep what settled lies on the floor of a tank, where that is known. */
export interface SludgeDepth {
  readonly tankId: string;
  readonly height_m: number;
}

/** A point of the way from tank to tap: its own height over the ground, and the head that is left there. */
export interface HeadPoint {
  readonly at: 'tank' | 'unit' | 'tap';
  readonly elevation_m: number;
  readonly head_m: number;
}

/** The line of pressure of one body of water, from tank to tap. The unit may be named twice, before and after what it takes. */
export interface HeadLine {
  readonly tankIds: readonly string[];
  readonly points: readonly HeadPoint[];
  /** What a pump must add for the taps; null or left out: nothing, and what is left at the tap is told. */
  readonly pumpAdds_m?: number | null;
}

/** May a tank on a stand be filled? `words` are for the one that is closed: `not signed: do not fill`; open: who signed. */
export interface GateAt {
  readonly tankId: string;
  readonly gate: 'closed' | 'open';
  readonly words: string;
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
  /** In the whole: the station that is pressed; the gutter then has a detail circle, where there is room. */
  readonly pressed?: Station | null;
  /** Said beside parts: flow and capacity. Those that are exceptions are said in the whole, all of them in cut-outs. */
  readonly partLetters?: readonly PartLetters[];
  /** Beside the treatment unit, a line each: its flow, the pressure, when its cartridges are due. */
  readonly unitLetters?: readonly string[];
  readonly sludge?: readonly SludgeDepth[];
  readonly headLines?: readonly HeadLine[];
  readonly gates?: readonly GateAt[];
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
