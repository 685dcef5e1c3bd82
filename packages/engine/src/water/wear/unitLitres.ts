import type { DayOrder, Ration } from '../../kernel/index.ts';

/** A tank, or tanks joined at the foot, and what is asked of it on the days ahead. */
export interface TankAhead {
  /** Usable litres. */
  readonly tankVolume_L: number;
  /** In it on the first morning; what is above the volume runs over. */
  readonly content_L: number;
  /** Asked for the judged purposes, by day ahead. */
  readonly judged_L: Float64Array;
  /** Asked for other purposes, served after, by day ahead. */
  readonly other_L: Float64Array;
  /** 1 on a day on which a second source gives what judged litres are missing; null where there is none. */
  readonly covered: Uint8Array | null;
  readonly order: DayOrder;
  readonly ration: Ration | null;
  /** Share of the litres of other purposes that passes the treatment unit. */
  readonly otherTreated_fraction: number;
}

/** What passes the treatment unit, by day. */
export interface UnitLitres {
  /** From the tank. */
  readonly tank_L: Float64Array;
  /** From the second source. */
  readonly source_L: Float64Array;
}

/**
 * What passes the treatment unit of a site, day by day: what its tank gives, and from a second source, on the days it covers, the judged litres the tank lacks.
 *
 * @param tank - usable volume and first content [L], litres asked by day [L], days covered, order of the day, ration [fraction], share of other litres treated [fraction]
 * @param inflow_L - water from the roofs by day [L], 0 or more, no longer than what is asked
 * @returns litres from the tank and from the second source by day [L], and what is left at the end [L]
 * @law litres taken, spilled and left are what came and what was there; the tank gives what the storage's day-by-day run gives
 * @source jenkins-1978, yield after and before spill; drawFirst is ours, docs/decisions/0050-order-of-the-day.md
 */
export function unitLitres(tank: TankAhead, inflow_L: Float64Array): UnitLitres & { readonly content_L: number } {
  const days = inflow_L.length;
  const passed = { tank_L: new Float64Array(days), source_L: new Float64Array(days) };
  const content_L = addUnitLitres(
    tank,
    tank.content_L,
    { inflow_L, inflowFactor: 1, skipped_days: 0 },
    0,
    days,
    passed,
  );
  return { ...passed, content_L };
}

/** A year of the record, as it may come again. */
export interface InflowDays {
  readonly inflow_L: Float64Array;
  readonly inflowFactor: number;
  /** Its first days are left out: how many. */
  readonly skipped_days: number;
}

/**
 * Adds what passes on the days from `from` to before `to` to `passed`, whose first entry is that of `from`; the rain of a day after the last one of `inflow` is that of the last
 * one. Gives what is in the tank after them.
 */
export function addUnitLitres(
  tank: TankAhead,
  content_L: number,
  { inflow_L, inflowFactor, skipped_days }: InflowDays,
  from: number,
  to: number,
  passed: UnitLitres,
): number {
  const { tankVolume_L, judged_L, other_L, covered, ration, otherTreated_fraction } = tank;
  const rainFirst = tank.order === 'ybs' ? 1 : 0;
  const takenHoldsRoom = tank.order === 'yas' ? 1 : 0;
  const mark_L = ration === null ? 0 : ration.below_fraction * tankVolume_L;
  const last = inflow_L.length - 1;
  let content = Math.min(content_L, tankVolume_L);
  for (let day = from; day < to; day++) {
    const inflow = inflow_L[Math.min(last, day - from + skipped_days)]! * inflowFactor;
    const judged = judged_L[day]!;
    const other = other_L[day]!;
    const isRationed = content < mark_L;
    const available = content + rainFirst * inflow;
    const judgedTaken = Math.min(isRationed ? judged * ration!.judged_fraction : judged, available);
    const otherTaken = Math.min(isRationed ? other * ration!.other_fraction : other, available - judgedTaken);
    const taken = judgedTaken + otherTaken;
    const offered = available - taken + (1 - rainFirst) * inflow;
    content = Math.max(0, Math.min(offered, tankVolume_L - takenHoldsRoom * taken));
    passed.tank_L[day - from]! += judgedTaken + otherTreated_fraction * otherTaken;
    if (covered !== null && covered[day] === 1) passed.source_L[day - from]! += judged - judgedTaken;
  }
  return content;
}
