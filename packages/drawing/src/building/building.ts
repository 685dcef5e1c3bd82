import type { GutterShape, RoofForm, TankRole } from '@eavewell/engine';

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
}

/** A first-flush pipe: what it holds, and the bore it is made of; null where no bore was measured. */
export interface BuiltDiverter {
  readonly chamber_L: Measure;
  readonly bore_m: number | null;
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
  readonly gutter: BuiltGutter;
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
}

/** Tanks that share one level, and the roofs that lead to them. */
export interface BodyOfWater {
  readonly tankIds: readonly string[];
  readonly tanks: readonly BuiltTank[];
  readonly roofs: readonly BuiltRoof[];
}

/** The measures of one site, roof to tank. */
export interface Building {
  readonly bodies: readonly BodyOfWater[];
}
