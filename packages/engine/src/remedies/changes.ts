import type { SecondSourceKind } from '../kernel/index.ts';

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
}

/** One tank of the catalogue in place of all that are one body of water now. */
export interface LargerTank extends Where {
  readonly kind: 'largerTank';
  readonly partId: string;
  readonly volume_L: number;
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

export type TankChange = SecondTank | LargerTank;
export type RoofChange = MoreGutter | LessFirstFlush;
/** A change to the whole site, whatever its bodies of water. */
export type SiteChange = FewerLitres | DeclaredSource | PeopleSplit;
export type RemedyChange = TankChange | RoofChange | SiteChange;

/** Every kind of change, the way of the water down: also the order in which changes are told. */
export const changeKinds = [
  'gutter',
  'firstFlush',
  'secondTank',
  'largerTank',
  'secondSource',
  'people',
  'litres',
] as const;
export type ChangeKind = (typeof changeKinds)[number];
