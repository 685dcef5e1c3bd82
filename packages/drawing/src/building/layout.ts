import type { BodyOfWater, Building, BuiltRoof, BuiltStops, BuiltTank } from './building.ts';
import { domeShare, greatestDome_m, greatestPxPerM, standBeyond_m } from './constants.ts';
import { type RoofOutline, roofOutline } from './roofOutline.ts';
import { tapLift_m, unitLift_m } from './tapStand.ts';

/** A roof in the section: where its left eave stands [px]. */
export interface PlacedRoof {
  readonly kind: 'roof';
  readonly roof: BuiltRoof;
  readonly outline: RoofOutline;
  /** As it would be; null where nothing of it changes. */
  readonly proposed: BuiltRoof | null;
  readonly body: number;
  readonly x: number;
}

/** A tank in the section: where the middle of its foot stands [px]. */
export interface PlacedTank {
  readonly kind: 'tank';
  /** As it is; null for one that is only proposed. */
  readonly tank: BuiltTank | null;
  /** As it would be; null where nothing of it changes. */
  readonly proposed: BuiltTank | null;
  /** Would it be taken away, with nothing in its place? */
  readonly isGoing: boolean;
  readonly body: number;
  readonly isLastOfBody: boolean;
  /** As the one before it, as the one after it: measures are lettered once. */
  readonly isRepeat: boolean;
  readonly isRepeated: boolean;
  readonly x: number;
}

/** The treatment unit or the taps: where their left edge stands [px]. */
export interface PlacedStop {
  readonly kind: 'treatmentUnit' | 'tap';
  readonly stops: BuiltStops;
  /** As they would be; null where nothing of them changes. */
  readonly proposed: BuiltStops | null;
  readonly x: number;
}

export type Placed = PlacedRoof | PlacedTank | PlacedStop;

/** Everything of a section from left to right, and px to the metre. */
export interface Layout {
  readonly k: number;
  readonly placed: readonly Placed[];
  readonly ridge_m: number;
  /** Where the last thing ends [px]. */
  readonly end: number;
  readonly hasRoomForLetters: boolean;
}

/** Room for dimension lines that does not scale [px]. */
interface Gaps {
  readonly margin: number;
  readonly eave: number;
  readonly stand: number;
  readonly tank: number;
}
const lettered: Gaps = { margin: 12, eave: 46, stand: 56, tank: 40 };
/** A cut-out letters more beside its tanks. */
const cutOut: Gaps = { margin: 12, eave: 46, stand: 64, tank: 82 };
const bare: Gaps = { margin: 4, eave: 2, stand: 3, tank: 3 };

export const unitWidth_m = 2.75;
export const tapWidth_m = 3.9;

interface Slot {
  readonly before: { readonly m: number; readonly px: number };
  readonly size_m: number;
  readonly after: { readonly m: number; readonly px: number };
  readonly make: (x: number, k: number) => Placed;
}

/**
 * Where does everything stand? Body of water after body of water: its roofs side by side, then its tanks; the treatment
 * unit and the taps at the end. One scale for all, as large as the width lets it be.
 */
export function layoutOf(
  building: Building,
  proposed: Building | null,
  options: {
    readonly width: number;
    readonly pxPerM: number | null;
    readonly hasDimensions: boolean;
    readonly isDetail?: boolean;
  },
): Layout {
  const gaps = options.isDetail ? cutOut : options.hasDimensions ? lettered : bare;
  const slots = [...bodySlots(building, proposed, gaps), ...stopSlots(building, proposed)];
  const sum = (of: (slot: Slot) => number) => slots.reduce((total, slot) => total + of(slot), 0);
  const wide_m = sum(({ before, size_m, after }) => before.m + size_m + after.m);
  const wide_px = sum(({ before, after }) => before.px + after.px) + 2 * gaps.margin + (options.hasDimensions ? 16 : 0);
  // Where there is more room for letters than for the building, it shrinks, and the letters go.
  const gapShare = Math.min(1, (options.width * 0.5) / wide_px);
  const fitted = (options.width - wide_px * gapShare) / wide_m;
  const k = Math.min(fitted, options.pxPerM ?? greatestPxPerM);
  const placed: Placed[] = [];
  let x = (gaps.margin + (options.hasDimensions ? 16 : 0)) * gapShare + (fitted - k) * wide_m * 0.4;
  for (const { before, size_m, after, make } of slots) {
    x += before.m * k + before.px * gapShare;
    placed.push(make(x, k));
    x += size_m * k + after.m * k + after.px * gapShare;
  }
  return { k, placed, ridge_m: ridgeOf(placed), end: x, hasRoomForLetters: gapShare === 1 };
}

/** The most px to the metre at which a building fits a width. */
export function fittingPxPerM(building: Building, proposed: Building | null, width: number): number {
  return layoutOf(building, proposed, { width, pxPerM: null, hasDimensions: true }).k;
}

export const domeOf = (diameter_m: number): number => Math.min(greatestDome_m, diameter_m * domeShare);

export const topOf = (tank: BuiltTank): number =>
  tank.standHeight_m.value + tank.height_m.value + domeOf(tank.diameter_m.value) + 0.12;

/** The top of the treatment unit or the taps, or of who stands there [m]. */
export const stopTop_m = (kind: PlacedStop['kind'], stops: BuiltStops): number =>
  1.75 + (kind === 'tap' ? tapLift_m(stops) : unitLift_m(stops));

/** How far a tank, or a stand that is wider, reaches from its middle [m]. */
export const reachOf = ({ diameter_m, stand }: BuiltTank): number =>
  Math.max(diameter_m.value / 2, stand.base_m.value / 2 - standBeyond_m);

function ridgeOf(placed: readonly Placed[]): number {
  const tops = placed.flatMap((one) => {
    if (one.kind === 'roof')
      return [one.outline.ridgeHeight_m, ...(one.proposed ? [roofOutline(one.proposed).ridgeHeight_m] : [])];
    if (one.kind !== 'tank')
      return [one.stops, one.proposed].map((stops) => (stops === null ? 0 : stopTop_m(one.kind, stops)));
    return [one.tank, one.proposed].flatMap((tank) => (tank === null ? [] : [topOf(tank)]));
  });
  return Math.max(2, ...tops) + 0.1;
}

/** The tank a roof's water comes to first: one to settle in, else the one named for it, else the first. */
export function targetOf({ tanks }: Pick<BodyOfWater, 'tanks'>, roof: BuiltRoof): BuiltTank | null {
  const named = tanks.find(({ tankId }) => tankId === roof.tankId);
  return tanks.find(({ role }) => role === 'settling') ?? named ?? tanks[0] ?? null;
}

/** How high the pipe must come for the tank to fill to its overflow [m]. */
function inletWanted(body: BodyOfWater, roof: BuiltRoof): number {
  const tank = targetOf(body, roof);
  return tank ? tank.standHeight_m.value + tank.overflowHeight_m.value + 0.08 : 0;
}

function bodySlots(building: Building, proposed: Building | null, gaps: Gaps): readonly Slot[] {
  return building.bodies.flatMap((body, index) => {
    const changed = proposed?.bodies[index] ?? null;
    const roofs = body.roofs.map((roof): Slot => {
      const outline = roofOutline(roof, inletWanted(body, roof));
      const would = changed?.roofs.find(({ roofId }) => roofId === roof.roofId) ?? null;
      const other = would && !isSame(would, roof) ? would : null;
      const rightOut = Math.max(outline.rightOut_m, other ? roofOutline(other).rightOut_m : 0);
      return {
        before: { m: outline.leftOut_m, px: gaps.eave },
        size_m: outline.width_m,
        after: { m: rightOut + 0.3, px: 0 },
        make: (x) => ({ kind: 'roof', roof, outline, proposed: other, body: index, x }),
      };
    });
    const pairs = pairsOf(body.tanks, changed?.tanks ?? null);
    const tanks = pairs.map(([tank, other], place): Slot => {
      const size_m = 2 * Math.max(tank ? reachOf(tank) : 0, other ? reachOf(other) : 0);
      const isLastOfBody = place === pairs.length - 1;
      const isGoing =
        other === null && changed !== null && !changed.tanks.some(({ tankId }) => tankId === tank?.tankId);
      const isRepeat = isAlike(pairs[place - 1], pairs[place]);
      // A cut-out may show the first alone, so that one is lettered; a whole letters heights after the last.
      const isRepeated = gaps === cutOut ? isRepeat : isAlike(pairs[place], pairs[place + 1]);
      const before_px = isRepeat ? 4 : place === 0 ? gaps.stand : gaps.stand * 0.7;
      return {
        before: { m: 0.35, px: before_px },
        size_m,
        after: { m: 0.45, px: isRepeated ? 4 : gaps.tank },
        make: (x, k) => ({
          kind: 'tank',
          tank,
          proposed: other,
          isGoing,
          body: index,
          isLastOfBody,
          isRepeat,
          isRepeated,
          x: x + (size_m / 2) * k,
        }),
      };
    });
    return [...roofs, ...tanks];
  });
}

/** Tanks as they are beside what they would be: one that goes makes room for one that comes. */
function pairsOf(now: readonly BuiltTank[], then: readonly BuiltTank[] | null): readonly Pair[] {
  if (then === null) return now.map((tank) => [tank, null]);
  const coming = then.filter(({ tankId }) => now.every((tank) => tank.tankId !== tankId));
  const pairs = now.map((tank): readonly [BuiltTank, BuiltTank | null] => {
    const would = then.find(({ tankId }) => tankId === tank.tankId) ?? coming.shift() ?? null;
    return [tank, would && !isSame(would, tank) ? would : null];
  });
  return [...pairs, ...coming.map((tank) => [null, tank] as const)];
}

type Pair = readonly [BuiltTank | null, BuiltTank | null];

/** Do two tanks that stand have the same outside, and does nothing of them change? */
function isAlike(a: Pair | undefined, b: Pair | undefined): boolean {
  if (!a?.[0] || !b?.[0] || a[1] || b[1]) return false;
  const outside = ({ diameter_m, height_m, standHeight_m }: BuiltTank) => [diameter_m, height_m, standHeight_m];
  return isSame(outside(a[0]), outside(b[0]));
}

const isSame = (a: object, b: object): boolean => JSON.stringify(a) === JSON.stringify(b);

function stopSlots({ stops }: Building, other: Building | null): readonly Slot[] {
  const none = { m: 0, px: 0 };
  const proposed = other && !isSame(other.stops, stops) ? other.stops : null;
  const make = (kind: PlacedStop['kind']) => (x: number) => ({ kind, stops, proposed, x });
  return [
    { before: { m: 0.3, px: 0 }, size_m: unitWidth_m, after: none, make: make('treatmentUnit') },
    { before: { m: 0.1, px: 0 }, size_m: tapWidth_m, after: none, make: make('tap') },
  ];
}
