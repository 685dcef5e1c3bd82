import type { EngineProblemCode, SizePoint } from '../../kernel/index.ts';
import { type Balance, judgedRules } from './dayByDay.ts';
import { looksAtContent } from './dayRules.ts';
import { runCurve, runDryDays } from './runCurve.ts';
import { type DryDays, type SizeCurve, sizeCurve, sizePoints, type TankSize } from './sizeCurve.ts';
import { type DoubtCase, sizeDoubt } from './sizeDoubt.ts';
import { areYearsSure, type KnownToHold, nothingKnown, type SizeVerdict, verdictsBySize } from './verdictsBySize.ts';

/** What tanks of any size do for one balance, by the rules of its site. */
export interface SizeReader {
  /** Are all sizes answered at once, so that the smallest tank for a target is known exactly? */
  readonly isExact: boolean;
  /** The curve, right at this size [L]. */
  curveAt(tankVolume_L: number): SizeCurve;
  pointsAt(sizes: readonly TankSize[]): readonly SizePoint[];
  verdictsAt(sizes: readonly TankSize[]): readonly SizeVerdict[];
  /** Does this size [L] meet the target, whatever the doubt? Runs it on its own where no curve is known yet, which is quicker. */
  meetsAt(tankVolume_L: number): boolean;
  /** The verdict of this one size [L], worked out as `meetsAt` does. */
  verdictAt(tankVolume_L: number): SizeVerdict;
  /** Could this one size [L] hold, were only the years drawn again to say so too? */
  couldHoldAt(tankVolume_L: number): boolean;
  /** Takes over what is known of sizes that hold [L], where every size is answered at once. */
  learn(known: Readonly<KnownToHold>): void;
  /** Would some tank meet the target, however large, were nothing rationed? */
  hasTank(): boolean;
}

/**
 * What do tanks of any size do here? Where the rules do not look at how full the tank is, every size is read off one curve; else
 * each size that is asked for is run on its own.
 *
 * @param given - balance [L] as `balanceUnder` gives it, rain, settings, drawn years and rules
 * @param tankVolume_L - the tank there is [L], whose litres short the curve knows
 * @param cappedBy - an assumption about the site that keeps it from holding [text]; null where there is none
 * @returns a reader of sizes [L]; what it has worked out it keeps
 * @law the verdict at a size is that of `storageFinding` for a tank of that size
 * @definition ours: docs/methods/storage.md, every size at once; sizes run one by one
 */
// long: what is kept of the sizes asked for is shared by all answers
export function sizeReader(given: DoubtCase, tankVolume_L: number, cappedBy: EngineProblemCode | null): SizeReader {
  const { balance, rain, settings } = given;
  const rules = given.rules ?? judgedRules;
  const { target } = settings;
  let whole: SizeCurve | null = null;
  const curve = () => {
    whole ??= sizeCurve(balance, rain, target, tankVolume_L);
    return whole;
  };
  const run = new Map<number, SizeCurve>();
  const curveAt = (volume_L: number) => {
    const found = run.get(volume_L) ?? runCurve(balance, rain, target, volume_L, rules);
    run.set(volume_L, found);
    return found;
  };
  const known = new Map<number, DryDays>();
  // What `balanceUnder` gives is drawn from first, unless the rules look at the content.
  const ownRules = looksAtContent(rules) ? rules : ({ ...judgedRules, order: 'drawFirst' } as const);
  const dryDaysAt = (volume_L: number): DryDays => {
    const found =
      whole ?? run.get(volume_L) ?? known.get(volume_L) ?? runDryDays(balance, rain, target, volume_L, ownRules);
    known.set(volume_L, found);
    return found;
  };
  const pointAt = (size: TankSize) => sizePoints(dryDaysAt(size.tankVolume_L), [size])[0]!;
  const couldHold = (point: SizePoint) => point.meetsTarget && cappedBy === null && areYearsSure(given, point);
  const toHold = nothingKnown();
  const verdictAt = (size: TankSize): SizeVerdict => {
    const point = pointAt(size);
    if (!point.meetsTarget) return { point, verdict: 'short' };
    const { tankVolume_L: volume_L } = size;
    const isSure =
      couldHold(point) &&
      volume_L > toHold.notUpTo_L &&
      (volume_L >= toHold.from_L || sizeDoubt(dryDaysAt(volume_L), given, volume_L, point.goodYears).meetsTarget);
    return { point, verdict: isSure ? 'holds' : 'tight' };
  };
  const one = {
    meetsAt: (volume_L: number) => pointAt({ partId: null, tankVolume_L: volume_L }).meetsTarget,
    couldHoldAt: (volume_L: number) => couldHold(pointAt({ partId: null, tankVolume_L: volume_L })),
    verdictAt: (volume_L: number) => verdictAt({ partId: null, tankVolume_L: volume_L }),
  };
  if (!looksAtContent(rules))
    return {
      ...one,
      isExact: true,
      curveAt: curve,
      pointsAt: (sizes) => sizePoints(curve(), sizes),
      verdictsAt: (sizes) => verdictsBySize(curve(), given, sizes, cappedBy, toHold),
      learn: ({ from_L, notUpTo_L }) => {
        toHold.from_L = Math.min(toHold.from_L, from_L);
        toHold.notUpTo_L = Math.max(toHold.notUpTo_L, notUpTo_L);
      },
      hasTank: () => curve().tankForTarget_L !== null,
    };
  const inOrder = (sizes: readonly TankSize[]) =>
    [...sizes].sort((a, b) => a.tankVolume_L - b.tankVolume_L || (String(a.partId) < String(b.partId) ? -1 : 1));
  return {
    ...one,
    isExact: false,
    curveAt,
    pointsAt: (sizes) => inOrder(sizes).map(pointAt),
    verdictsAt: (sizes) => inOrder(sizes).map(verdictAt),
    learn: () => {},
    hasTank: () => meetsUnlimited(given),
  };
}

/** The target in a tank that never spills, nothing rationed: no tank gives more. */
function meetsUnlimited({ balance, rain, settings, rules }: DoubtCase): boolean {
  const tankVolume_L = everyLitre(balance);
  const plain = { ...(rules ?? judgedRules), ration: null };
  const curve = runDryDays(balance, rain, settings.target, tankVolume_L, plain);
  return sizePoints(curve, [{ partId: null, tankVolume_L }])[0]!.meetsTarget;
}

/** More than two passes of the record can bring, and a day's draw besides. */
function everyLitre({ inflow_L, judged_L, other_L }: Balance): number {
  let most = 1;
  for (let day = 0; day < inflow_L.length; day++) most += 2 * inflow_L[day]! + judged_L[day]! + other_L[day]!;
  return most;
}
