import type { CountedBy } from '../../kernel/index.ts';

/**
 * The order in which kinds of part are needed on site. Ours, docs/decisions/0249-order-of-loads.md: what carries stands first, then the water's
 * path from the roof down.
 */
export const neededOrder = [
  'stand',
  'tank',
  'overflow',
  'gutter',
  'outlet',
  'screen',
  'downpipe',
  'diverter',
  'pipe',
  'valve',
  'meter',
  'treatmentUnit',
  'pump',
  'cartridge',
  'tap',
] as const;

/** What is not fragile and lies in one load of a person with a fragile piece is no heavier [kg]. Ours, docs/decisions/0248-fragile-and-apart.md: a bag of fittings. */
export const besideFragile_kg = 0.5;

/** No piece weighs, measures or is counted more than this [any unit]. Ours: far over what anybody carries. */
export const largestPiece_kg = 1e6;
export const largestBulk_L = 1e9;
export const largestSide_m = 1000;
export const mostPieces_count = 1e6;

/** Loads × kinds of piece: over this nobody reads them, and none is made [count]. Ours, some 200,000 loads of a usual kit. */
export const mostLoadKinds_count = 4_000_000;

/**
 * So many steps are taken in search of fewer loads: of few pieces, and of many [count]. Ours, docs/decisions/0247-fewest-loads.md: some tenths
 * of a second, and some hundredths.
 */
export const fewPieces_count = 60;
export const stepsOfFew_count = 500_000;
export const stepsOfMany_count = 20_000;

/** Over so many loads or kinds of piece nothing is searched for, and what was found first stands with its bound [count]. Ours. */
export const mostLoadsSearched_count = 200;
export const mostKindsSearched_count = 300;

/** So many dead ends are remembered in a search [count]. Ours: some megabytes. */
export const deadEnds_count = 20_000;

/** Least freeboard of a ferry boat by its length: 12 in up to 20 ft, 18 in from 40 ft, between them along a line [in, ft]. Source: maharashtra-ferry-rules, rule 3. */
export const ferryFreeboard = { short_ft: 20, long_ft: 40, short_in: 12, long_in: 18 } as const;

/** Least freeboard of a dugout no deeper than 18 in [in]. Source: maharashtra-ferry-rules, rule 3. */
export const dugoutFreeboard_in = 9;

/** Least freeboard on inland waters: of most boats, and of an open boat in wider water that does not pass the test of a swamped boat [mm]. Source: uk-open-boats. */
export const inlandFreeboard_mm = 250;
export const openFreeboard_mm = 400;

/** Persons of a capacity plate: 32 lb more than it holds, over 141 lb for each [lb]. Source: cfr-33-183, section 183.41 (b). */
export const plateMore_lb = 32;
export const platePerson_lb = 141;

/** Two people carry so many times what each of them is stated to [count]. Source: arithmetic, by definition. */
export const bothOf_count = 2;

/** A box has so many sides that are measured [count]. Source: geometry, by definition. */
export const sidesOfBox_count = 3;

/** Pieces are spread over loads one by one up to so many looks at a load [count]. Ours: some hundredths of a second. */
export const mostPlaced_count = 200_000;

/** What is kept apart is looked at for a bound where it makes no more groups than this [count]. Ours. */
export const mostGroups_count = 30;

/** Parts stay in the closed pack they are sold in where it weighs no more than this [kg]. Ours, docs/decisions/0251-packs-that-are-carried.md: what is carried in one hand. */
export const closedPack_kg = 5;

/** Masses are packed exactly where they are whole hundredths of a milligram, the last digit of pounds in kilograms, and what they lack of a whole one is rounding [kg, count]. Ours. */
export const massStep_kg = 1e-8;
export const stepRounding_count = 1e-3;
/** Whole numbers up to this are exact [count]. Source: 2^53, IEEE 754 double precision. */
export const massSteps_count = 9_007_199_254_740_991;

/** What a part of no kind of its own is needed with: that by which it is counted. Ours, docs/decisions/0249-order-of-loads.md. */
export const neededWith: Readonly<Partial<Record<CountedBy, (typeof neededOrder)[number]>>> = {
  stand: 'stand',
  standPad: 'stand',
  tank: 'tank',
  settlingTank: 'tank',
  overflow: 'overflow',
  roof: 'gutter',
  gutter: 'gutter',
  gutterMetre: 'gutter',
  gutterOutlet: 'outlet',
  gutterBend: 'gutter',
  gutterJoint: 'gutter',
  downpipe: 'downpipe',
  downpipeMetre: 'downpipe',
  diverter: 'diverter',
  pipe: 'pipe',
  pipeMetre: 'pipe',
  pipeJoint: 'pipe',
  elbow: 'pipe',
  tee: 'pipe',
  valve: 'valve',
  meter: 'meter',
  tap: 'tap',
  unit: 'treatmentUnit',
  cartridgeSet: 'cartridge',
  cartridge: 'cartridge',
};
