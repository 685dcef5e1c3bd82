import type { GroundClass, GutterShape, PipeLeg, RoofForm, TankRole } from '@eavewell/engine';

/** Where a measure comes from: taken at the site; made from others that were; or a usual size, since nobody measured it. */
export type How = 'measured' | 'madeFrom' | 'usual';

/** One length, angle, share or volume of a building, in the unit its name says, and where it comes from. */
export interface Measure {
  readonly value: number;
  readonly how: How;
}

export interface BuiltGutter {
  readonly shape: GutterShape;
  readonly isShapeKnown: boolean;
  readonly width_m: Measure;
  readonly depth_m: Measure;
  /** Across its sole. */
  readonly baseWidth_m: Measure;
  /** Null where none was measured: the one that is drawn is of usual sizes. */
  readonly gutterId: string | null;
  readonly length_m: Measure;
  /** Toward its outlet; 0: level; under 0: it falls back. Null: nobody measured it. */
  readonly fall_mm_per_m: number | null;
  readonly outlet_m: Measure;
  readonly outlets_count: Measure;
  readonly isGrated: boolean;
  /** The farthest way water runs along it to an outlet. */
  readonly run_m: Measure;
}

/** A first-flush pipe: what it holds, and the bore it is made of; null where no bore was measured. */
export interface BuiltDiverter {
  readonly chamber_L: Measure;
  readonly bore_m: number | null;
  /** Diameter of the hole it empties by; null where it was not measured. */
  readonly hole_m: number | null;
  readonly isBlocked: boolean;
}

/** A roof as drawn. The section is cut across the shorter side; the ridge runs along the longer. */
export interface BuiltRoof {
  readonly roofId: string;
  readonly form: RoofForm;
  readonly isFormKnown: boolean;
  /** Across the ridge, eave to eave. */
  readonly width_m: Measure;
  /** Along the ridge. */
  readonly length_m: Measure;
  readonly pitch_deg: Measure;
  /** Ground to the line of the gutter. */
  readonly eaveHeight_m: Measure;
  readonly gutteredFraction: Measure;
  /** The widest: it speaks for all in the section. */
  readonly gutter: BuiltGutter;
  /** As many as were measured. */
  readonly gutters: readonly BuiltGutter[];
  readonly downpipeIds: readonly string[];
  /** How many downpipes it has, and their greatest bore. */
  readonly downpipes_count: Measure;
  readonly bore_m: Measure;
  readonly diverter: BuiltDiverter | null;
  /** The tank it leads to, where that is said. */
  readonly tankId: string | null;
}

/** A tank as drawn. Heights but the stand's are above its own floor. */
export interface BuiltTank {
  readonly tankId: string;
  readonly role: TankRole;
  readonly diameter_m: Measure;
  readonly height_m: Measure;
  readonly outletHeight_m: Measure;
  readonly overflowHeight_m: Measure;
  readonly standHeight_m: Measure;
  /** Litres between outlet and overflow: the content of a body of water is drawn by these. */
  readonly usable_L: Measure;
  /** Where the water of the roofs comes in; null: over the wall, as usual. */
  readonly inletHeight_m: Measure | null;
  readonly overflowBore_m: Measure;
  readonly overflows_count: Measure;
  readonly isOverflowScreened: boolean;
  readonly cells_count: number;
  readonly stand: BuiltStand;
}

/** What a tank stands on. */
export interface BuiltStand {
  /** What it rests on; null: nobody said. */
  readonly ground: GroundClass | null;
  /** Square pads under its feet; null where none were measured. */
  readonly pads: { readonly count: number; readonly side_m: number } | null;
  /** Between the outer edges of its feet. */
  readonly base_m: Measure;
}

/** A leg of the pipes from a tank to the taps. */
export interface BuiltLeg {
  /** The narrowest of its pipes. */
  readonly bore_m: Measure;
  readonly pipeIds: readonly string[];
}

/** The treatment unit and the taps, as far as their heights and pipes are known. */
export interface BuiltStops {
  readonly unitHeight_m: Measure;
  /** To the mouth of the taps. */
  readonly tapHeight_m: Measure;
  readonly taps_count: Measure;
  /** Null: not said. */
  readonly hasHandPump: boolean | null;
  /** Of the units that are in use there; null where nobody named one, or not how many it has. */
  readonly cartridges_count: number | null;
  readonly legs: Readonly<Record<PipeLeg, BuiltLeg>>;
}

/** Tanks that share one level, and the roofs that lead to them. */
export interface BodyOfWater {
  readonly tankIds: readonly string[];
  readonly tanks: readonly BuiltTank[];
  readonly roofs: readonly BuiltRoof[];
}

/** The measures of one site, roof to tap. */
export interface Building {
  readonly bodies: readonly BodyOfWater[];
  readonly stops: BuiltStops;
}
