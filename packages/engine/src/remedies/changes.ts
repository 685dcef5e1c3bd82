import type { GutterShape, SecondSourceKind } from '../kernel/index.ts';

/** Where a change is made. */
export interface Where {
  /** The first tank, by its letters, of the body of water it is made to; null where all the site's tanks are one. */
  readonly tankId: string | null;
}

/** A catalogue's tank set beside what stands, joined at the foot. */
export interface SecondTank extends Where {
  readonly kind: 'secondTank';
  readonly partId: string;
  readonly volume_L: number;
  /** As the catalogue has it; null where it says nothing. */
  readonly mass_kg: number | null;
}

/** One tank of the catalogue in place of all that are one body of water now. */
export interface LargerTank extends Where {
  readonly kind: 'largerTank';
  readonly partId: string;
  readonly volume_L: number;
  /** As the catalogue has it; null where it says nothing. */
  readonly mass_kg: number | null;
}

/** Every roof of the body of water guttered to at least this share of its plan area. */
export interface MoreGutter extends Where {
  readonly kind: 'gutter';
  readonly gutteredFraction: number;
}

/** A smaller first flush on every roof of the body of water that lets go more than this. */
export interface LessFirstFlush extends Where {
  readonly kind: 'firstFlush';
  readonly firstFlush_mm: number;
}

/** Fewer litres promised, to everybody at the site: the purposes that are not judged are dropped, and the judged ones may be cut to so many. */
export interface FewerLitres {
  readonly kind: 'litres';
  /** What is left of the judged purposes together. */
  readonly judged_L_per_person_per_day: number;
  /** Are the judged litres cut, or only the other purposes dropped? */
  readonly isJudgedCut: boolean;
}

/** The second source near by is declared as what people fall back on, at the whole site. */
export interface DeclaredSource {
  readonly kind: 'secondSource';
  readonly secondSourceId: string;
  readonly name: string;
  readonly sourceKind: SecondSourceKind;
}

/** Some of the people of the design year drink at a site of their own; the others stay. */
export interface PeopleSplit {
  readonly kind: 'people';
  readonly carried_people: number;
  readonly others_people: number;
}

/** Gutters in place of those there, of a part of the catalogue. */
export interface LargerGutter {
  readonly kind: 'largerGutter';
  readonly gutterIds: readonly string[];
  readonly partId: string;
  readonly shape: GutterShape;
  /** Inside. */
  readonly topWidth_mm: number;
  readonly baseWidth_mm: number | null;
  readonly depth_mm: number;
}

/** Outlets of gutters made larger, or one more in each of them, or both. */
export interface MoreOutlet {
  readonly kind: 'outlet';
  readonly gutterIds: readonly string[];
  readonly partId: string;
  /** All their outlets get this bore; null: those there stay, and the new one is no smaller. */
  readonly outlet_mm: number | null;
  /** How many more each gutter gets: 0 or 1. */
  readonly added_count: number;
}

/** Downpipes of one roof in place of some there, or beside them, or both. */
export interface MoreDownpipe {
  readonly kind: 'downpipe';
  readonly roofId: string;
  /** Those that are replaced. */
  readonly downpipeIds: readonly string[];
  readonly added_count: number;
  readonly partId: string;
  readonly bore_mm: number;
}

/** Overflow pipes of one tank in place of those there. */
export interface LargerOverflow {
  readonly kind: 'overflow';
  readonly tankId: string;
  readonly partId: string;
  readonly bore_mm: number;
}

/** Pipes of a larger bore in place of some on the way to the taps. */
export interface LargerPipe {
  readonly kind: 'pipe';
  readonly pipeIds: readonly string[];
  readonly partId: string;
  readonly bore_mm: number;
}

/** What a storm and the way to the taps ask of gutters and pipes; those of one remedy are one change: a gutter without its outlet carries nothing. */
export type FittingChange = LargerGutter | MoreOutlet | MoreDownpipe | LargerOverflow | LargerPipe;
export type TankChange = SecondTank | LargerTank;
export type RoofChange = MoreGutter | LessFirstFlush;
/** A change to the whole site, whatever its bodies of water. */
export type SiteChange = FewerLitres | DeclaredSource | PeopleSplit;
/** What is chosen among; gutters and pipes follow from it. */
export type StorageChange = TankChange | RoofChange | SiteChange;
export type RemedyChange = StorageChange | FittingChange;

/** Every kind of change, the way of the water down: also the order in which changes are made and told. */
export const changeKinds = [
  'gutter',
  'largerGutter',
  'outlet',
  'downpipe',
  'firstFlush',
  'overflow',
  'secondTank',
  'largerTank',
  'pipe',
  'secondSource',
  'people',
  'litres',
] as const;
export type ChangeKind = (typeof changeKinds)[number];

/** Those that follow from a storm and from the way to the taps. */
export const fittingKinds = ['largerGutter', 'outlet', 'downpipe', 'overflow', 'pipe'] as const;

/**
 * Is a change one of gutters, outlets, downpipes, overflows or pipes?
 *
 * @param change - a change
 * @returns whether the storm or the way to the taps asks for it
 * @definition ours: docs/decisions/0189-fittings-complete-a-remedy.md
 */
export function isFitting(change: RemedyChange): change is FittingChange {
  return fittingKinds.some((kind) => kind === change.kind);
}

/** Kinds of change that remedies are counted by: gutters and pipes are one. */
export const groupKinds = [
  'gutter',
  'firstFlush',
  'secondTank',
  'largerTank',
  'fittings',
  'secondSource',
  'people',
  'litres',
] as const;
export type GroupKind = (typeof groupKinds)[number];
