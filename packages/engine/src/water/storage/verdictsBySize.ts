import type { EngineProblemCode, SizePoint, Verdict } from '../../kernel/index.ts';
import { countedYears } from './countedYears.ts';
import { isShareMet, type SizeCurve, sizePoints, type TankSize } from './sizeCurve.ts';
import { type DoubtCase, sizeDoubt } from './sizeDoubt.ts';

/** One size of tank on the curve, and its verdict. */
export interface SizeVerdict {
  readonly point: SizePoint;
  readonly verdict: Verdict;
}

/** From which size on a tank is known to hold, and up to which it is known not to [L]. */
export interface KnownToHold {
  from_L: number;
  notUpTo_L: number;
}

/** Of no size is it known. */
export function nothingKnown(): KnownToHold {
  return { from_L: Infinity, notUpTo_L: -Infinity };
}

/**
 * What verdict does each of these tanks get? A larger tank never has a worse verdict, so the years are drawn again only
 * at the few sizes between those that are surely `short` or `tight` and those that hold.
 *
 * @param curve - every tank size
 * @param given - balance [L], rain, settings and drawn years
 * @param sizes - tanks [L], 0 or more
 * @param cappedBy - an assumption about the site that keeps it from holding [text]; null where there is none
 * @param known - sizes of which it is known already whether they hold [L]; added to
 * @returns each size's point on the curve and its verdict, smallest first
 * @law the verdict of each size is that of `storageFinding` for a tank of that size
 * @definition ours: docs/methods/storage.md, target, range and verdict
 */
export function verdictsBySize(
  curve: SizeCurve,
  given: DoubtCase,
  sizes: readonly TankSize[],
  cappedBy: EngineProblemCode | null,
  known: KnownToHold = nothingKnown(),
): readonly SizeVerdict[] {
  const points = sizePoints(curve, sizes);
  let first = cappedBy === null ? points.findIndex((point) => point.meetsTarget && areYearsSure(given, point)) : -1;
  if (first < 0) first = points.length;
  let end = first;
  for (; end < points.length && points[end]!.tankVolume_L < known.from_L; end++)
    if (points[end]!.tankVolume_L <= known.notUpTo_L) first = end + 1;
  // The smallest candidate mostly holds at once; then halves.
  for (let probe = first; first < end; probe = (first + end) >> 1) {
    const { tankVolume_L, goodYears } = points[probe]!;
    if (sizeDoubt(curve, given, tankVolume_L, goodYears).meetsTarget) {
      end = probe;
      known.from_L = tankVolume_L;
    } else {
      first = probe + 1;
      known.notUpTo_L = tankVolume_L;
    }
  }
  return points.map((point, index) => {
    if (index >= end) return { point, verdict: 'holds' };
    return { point, verdict: point.meetsTarget ? 'tight' : 'short' };
  });
}

/** Does the unfavourable end of the good years meet the target, whatever the days? Where not, no drawing of years mends it. */
export function areYearsSure({ rain, settings }: DoubtCase, { goodYears }: SizePoint): boolean {
  const { share_fraction } = countedYears(goodYears, rain.judgedYears, settings.range_fraction);
  return isShareMet(share_fraction.low, 1, settings.target.goodYears_fraction);
}
