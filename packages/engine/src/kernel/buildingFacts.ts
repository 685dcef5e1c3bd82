import type { DayIndex } from './days.ts';

/** What a stand rests on, as a crew can tell it; `softOrMadeGround` is peat, fill, organic, swelling or washed-out ground. */
export const groundClasses = [
  'rock',
  'softRock',
  'denseGravel',
  'looseGravel',
  'denseSand',
  'looseSand',
  'silt',
  'stiffClay',
  'firmClay',
  'softClay',
  'softOrMadeGround',
] as const;
export type GroundClass = (typeof groundClasses)[number];

/** How open a place lies to the wind. */
export const windExposures = ['builtUp', 'openGround', 'openWater'] as const;
export type WindExposure = (typeof windExposures)[number];

/** Roof coverings whose runoff fraction and cautions the roof room knows. */
export const roofMaterials = ['corrugatedMetal', 'tile', 'concrete', 'fibreCement', 'shingle', 'thatch'] as const;
export type RoofMaterial = (typeof roofMaterials)[number];

/** What a roof is coated with. */
export const roofCoatings = ['none', 'forDrinkingWater', 'unknownPaint', 'bitumen'] as const;
export type RoofCoating = (typeof roofCoatings)[number];

/** How a roof is built: two slopes to a ridge, one slope, a slope to each of four eaves, or none to speak of. */
export const roofForms = ['gable', 'oneSlope', 'hip', 'flat'] as const;
export type RoofForm = (typeof roofForms)[number];

/** A first-flush diverter: its depth on the plan roof or its chamber, and whether its drain hole still runs. */
export interface DiverterFacts {
  readonly firstFlush_mm: number | null;
  readonly chamber_L: number | null;
  readonly drainHole: 'open' | 'blocked';
  /** Inside diameter of the pipe its chamber is made of. */
  readonly chamberBore_mm: number | null;
  /** Diameter of the hole its chamber empties by. */
  readonly drainHole_mm: number | null;
}

/** A roof as surveyed. Null is "not known", never zero. */
export interface RoofFacts {
  readonly roofId: string;
  readonly length_m: number | null;
  readonly width_m: number | null;
  readonly roofPlanArea_m2: number | null;
  readonly material: RoofMaterial | null;
  readonly runoffFraction: number | null;
  /** Share of the plan area that drains to a gutter which leads to the tank. */
  readonly gutteredFraction: number | null;
  /** The tank its gutter leads to; may be null where all the site's tanks are one body of water. */
  readonly tankId: string | null;
  readonly diverter: DiverterFacts | null;
  readonly form: RoofForm | null;
  /** Slope against the level. */
  readonly pitch_deg: number | null;
  /** From the ground to the line of the gutter. */
  readonly eaveHeight_m: number | null;
  /** Wall above the roof that sheds rain on it. */
  readonly wallAbove_m2: number | null;
  /** Valleys where two slopes meet and gather their water. */
  readonly valleys_count: number | null;
  /** May it break under a foot? Null: its material says. */
  readonly isFragile: boolean | null;
  readonly coating: RoofCoating | null;
  /** Lead in flashing, nails or old paint? Asbestos in its sheets? Trees or perches of birds over it? Null: nobody said. */
  readonly hasLead: boolean | null;
  readonly hasAsbestos: boolean | null;
  readonly isUnderTrees: boolean | null;
}

/** The shapes a gutter may have in section; `cutPipe` is a pipe cut in half along its length. */
export const gutterShapes = ['halfRound', 'rectangular', 'trapezoidal', 'cutPipe'] as const;
export type GutterShape = (typeof gutterShapes)[number];

/** A gutter as surveyed: one run of it along an eave. Null is "not known", never zero. */
export interface GutterFacts {
  readonly gutterId: string;
  readonly roofId: string;
  readonly shape: GutterShape | null;
  /** Across its top, inside. */
  readonly width_mm: number | null;
  readonly depth_mm: number | null;
  readonly length_m: number | null;
  /** How much it falls toward its outlet on one metre of its length; 0: it is level. */
  readonly fall_mm_per_m: number | null;
  /** Diameter of the hole its water leaves by. */
  readonly outlet_mm: number | null;
  /** Across its sole, inside, where it is not that of its top. */
  readonly baseWidth_mm: number | null;
  readonly outlets_count: number | null;
  /** The farthest way water runs along it to an outlet; null: its length, shared among its outlets. */
  readonly runToOutlet_m: number | null;
  readonly bends_count: number | null;
  readonly outletGrate: 'open' | 'grated';
  /** Is it there already, so that no kit is wanted for it? Left out: no. */
  readonly isBuilt?: boolean;
}

/** A pipe that takes the water of a roof's gutters down, as surveyed. */
export interface DownpipeFacts {
  readonly downpipeId: string;
  readonly roofId: string;
  /** Inside diameter. */
  readonly bore_mm: number | null;
  readonly length_m: number | null;
  readonly isBuilt?: boolean;
}

/** What a tank is for: water is stored in it, or clears in it first. */
export const tankRoles = ['storage', 'settling'] as const;
export type TankRole = (typeof tankRoles)[number];

/** A tank as surveyed. Heights are above the tank's own floor. */
export interface TankFacts {
  readonly tankId: string;
  readonly nominal_L: number | null;
  /** The volume its catalogue part has, where one is named and known. */
  readonly partVolume_L: number | null;
  readonly outletHeight_m: number | null;
  readonly overflowHeight_m: number | null;
  readonly diameter_m: number | null;
  /** The tank it is joined to at the foot, so that both share one level. */
  readonly joinedTo: string | null;
  readonly role: TankRole;
  /** Share of the site's people who draw from it and the tanks joined to it; null where not said. */
  readonly peopleFraction: number | null;
  /** Outside, from its foot to the top of its wall. */
  readonly height_m: number | null;
  /** From the ground to the tank's foot; 0: it stands on the ground. */
  readonly standHeight_m: number | null;
  /** The part of the catalogue it is. */
  readonly partId: string | null;
  /** Where the water of the roofs comes in. */
  readonly inletHeight_m: number | null;
  /** Inside diameter of its overflow pipe. */
  readonly overflowBore_mm: number | null;
  readonly overflows_count: number | null;
  readonly overflowScreen: 'open' | 'screened';
  /** Parts it is divided into by walls that water must pass around. */
  readonly cells_count: number | null;
  /** With nothing in it. */
  readonly emptyMass_kg: number | null;
  /** Mass its catalogue part has, where one is named and known. */
  readonly partMass_kg: number | null;
  readonly standMass_kg: number | null;
  readonly groundClass: GroundClass | null;
  /** What the stand's feet rest on: so many square pads … */
  readonly pads_count: number | null;
  /** … of this side. */
  readonly padSide_m: number | null;
  /** The least distance between the outer edges of its feet, over which it would tip. */
  readonly baseWidth_m: number | null;
  /** Is the tank fastened to its stand, so that wind cannot take it off alone? Null: not said. */
  readonly isFastened: boolean | null;
  /** Who has looked at the stand and its ground and signed for it, and when. */
  readonly signedBy: string | null;
  readonly signedOn: DayIndex | null;
  readonly isBuilt?: boolean;
}

/** A stretch of pipe from a tank to the treatment unit, or from there to the taps. */
export const pipeLegs = ['tankToUnit', 'unitToTap'] as const;
export type PipeLeg = (typeof pipeLegs)[number];

export const pipeMaterials = ['plastic', 'steel', 'galvanised', 'castIron'] as const;
export type PipeMaterial = (typeof pipeMaterials)[number];

/** One pipe of one bore, with what stands in it, as surveyed. Null is "not known", never zero. */
export interface PipeFacts {
  readonly pipeId: string;
  /** The tank it comes from; may be null where all the site's tanks are one body of water. */
  readonly tankId: string | null;
  readonly leg: PipeLeg;
  readonly bore_mm: number | null;
  readonly length_m: number | null;
  readonly material: PipeMaterial | null;
  readonly elbows_count: number | null;
  readonly tees_count: number | null;
  readonly valves_count: number | null;
  readonly meters_count: number | null;
  /** Loss coefficients of all else that stands in it, added up. */
  readonly otherLoss_k: number | null;
  readonly isBuilt?: boolean;
}

/** What is known of a roof, a gutter, a tank and a pipe that nobody has measured: nothing. */
export const unmeasuredRoof = {
  length_m: null,
  width_m: null,
  roofPlanArea_m2: null,
  material: null,
  runoffFraction: null,
  gutteredFraction: null,
  tankId: null,
  diverter: null,
  form: null,
  pitch_deg: null,
  eaveHeight_m: null,
  wallAbove_m2: null,
  valleys_count: null,
  isFragile: null,
  coating: null,
  hasLead: null,
  hasAsbestos: null,
  isUnderTrees: null,
} as const satisfies Omit<RoofFacts, 'roofId'>;

export const unmeasuredGutter = {
  shape: null,
  width_mm: null,
  depth_mm: null,
  length_m: null,
  fall_mm_per_m: null,
  outlet_mm: null,
  baseWidth_mm: null,
  outlets_count: null,
  runToOutlet_m: null,
  bends_count: null,
  outletGrate: 'open',
} as const satisfies Omit<GutterFacts, 'gutterId' | 'roofId'>;

export const unmeasuredTank = {
  nominal_L: null,
  partVolume_L: null,
  outletHeight_m: null,
  overflowHeight_m: null,
  diameter_m: null,
  joinedTo: null,
  role: 'storage',
  peopleFraction: null,
  height_m: null,
  standHeight_m: null,
  partId: null,
  inletHeight_m: null,
  overflowBore_mm: null,
  overflows_count: null,
  overflowScreen: 'open',
  cells_count: null,
  emptyMass_kg: null,
  partMass_kg: null,
  standMass_kg: null,
  groundClass: null,
  pads_count: null,
  padSide_m: null,
  baseWidth_m: null,
  isFastened: null,
  signedBy: null,
  signedOn: null,
} as const satisfies Omit<TankFacts, 'tankId'>;
