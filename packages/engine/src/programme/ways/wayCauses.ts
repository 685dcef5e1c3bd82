import {
  calendarDay,
  type DayIndex,
  engineProblem,
  type Problem,
  type RiverLevel,
  type WayClosure,
  type WayFacts,
  type WayLevel,
} from '../../kernel/index.ts';
import { openChance, weekOf } from './riverChance.ts';
import type { NetworkWay, ReadyWays, WayCause, WaysAsked } from './waysFacts.ts';

/** Everything that closes ways or makes them slower, day by day. */
export function wayCauses(
  asked: WaysAsked,
  ways: readonly NetworkWay[],
): { readonly causes: readonly WayCause[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const causes = [...closures(asked, ways, problems), ...levels(asked, ways, problems)];
  return { causes: causes.filter(({ holdsOn_days }) => holdsOn_days.includes(1)), problems };
}

function closures(asked: WaysAsked, ways: readonly NetworkWay[], problems: Problem[]): readonly WayCause[] {
  return asked.closures.flatMap((closure): readonly WayCause[] => {
    const { closureId, wayId, weatherArea, slower_factor, reason } = closure;
    const own = ways.flatMap(({ way }, index) => (isOfWay(closure, way) ? [index] : []));
    if (own.length === 0) {
      const of = wayId ?? weatherArea ?? '';
      problems.push(engineProblem('ways.closure_unused', { file: 'closures.csv' }, { closure: closureId, of }));
      return [];
    }
    if (slower_factor !== null && !isSlower(closure)) {
      const facts = { of: closureId, column: 'slower_factor', value: String(slower_factor) };
      problems.push(engineProblem('ways.figure_unusable', { file: 'closures.csv' }, facts));
      // Nobody knows how much slower: the way is not counted on.
    }
    return [
      {
        ...{ causeId: closureId, kind: 'closure', reason, ways_positions: own, carrierIds: null },
        slower_factor: isSlower(closure) ? slower_factor! : Number.POSITIVE_INFINITY,
        holdsOn_days: closureDays(closure, asked),
      },
    ];
  });
}

const closureDays = (closure: WayClosure, { firstDay, horizon_days }: WaysAsked): Uint8Array =>
  Uint8Array.from({ length: horizon_days }, (_, index) => (closureHolds(closure, firstDay + index) ? 1 : 0));

/** Is a way one of those a closure is of? */
const isOfWay = ({ wayId, weatherArea }: WayClosure, way: WayFacts): boolean =>
  way.wayId === wayId || (weatherArea !== null && way.weatherArea === weatherArea);

/** Is a way slower by a closure, and not closed? A factor that cannot be reckoned with closes it. */
const isSlower = ({ slower_factor }: WayClosure): boolean =>
  slower_factor !== null && slower_factor >= 1 && Number.isFinite(slower_factor);

/** Months of every year, within the dates where both are given. */
function closureHolds({ months, from, to }: WayClosure, day: DayIndex): boolean {
  const isDated = day >= (from ?? day) && day <= (to ?? day);
  return isDated && (months.length === 0 || months.includes(calendarDay(day).month));
}

/** What a closure does to a way on a day. */
export interface ClosureOnDay {
  readonly isClosed: boolean;
  readonly reason: string | null;
  /** Is it the last day of it, and that day a guess? */
  readonly endsAsGuessed: boolean;
}

/**
 * What do closures do to a way, day by day? Asked of past days too, which no cause of ready ways has.
 *
 * @param ways - the network, ready
 * @param way - one of its ways
 * @returns of a day, in days since 1970-01-01: what holds on it, as the table has them
 * @definition ours: docs/methods/rollout.md, ways
 */
export function closuresOfWay(ways: ReadyWays, way: WayFacts): (day: DayIndex) => readonly ClosureOnDay[] {
  const own = ways.asked.closures.filter((closure) => isOfWay(closure, way));
  return (day) =>
    own
      .filter((closure) => closureHolds(closure, day))
      .map((closure) => ({
        ...{ isClosed: !isSlower(closure), reason: closure.reason },
        endsAsGuessed: closure.isToGuessed === true && closure.to === day,
      }));
}

/** Weeks in which too few days were open, for all ways and carriers of the same gauge and bounds together. */
function levels(asked: WaysAsked, ways: readonly NetworkWay[], problems: Problem[]): readonly WayCause[] {
  const byGauge = new Map<string, RiverLevel[]>();
  for (const level of asked.riverLevels) {
    const of = byGauge.get(level.riverGaugeId);
    if (of === undefined) byGauge.set(level.riverGaugeId, [level]);
    else of.push(level);
  }
  const grouped = new Map<string, { gauge: string; one: WayLevel; ways: number[]; carriers: string[] }>();
  for (const one of asked.wayLevels) {
    const index = ways.findIndex(({ way }) => way.wayId === one.wayId);
    const gauge = ways[index]?.way.riverGaugeId ?? null;
    if (index < 0 || (one.least_m === null && one.greatest_m === null)) continue;
    if (gauge === null) {
      const facts = { way: one.wayId, carrier: one.carrierId };
      problems.push(engineProblem('ways.level_without_gauge', { file: 'wayLevels.csv' }, facts));
      continue;
    }
    const key = `${gauge} ${one.least_m} ${one.greatest_m}`;
    const group = grouped.get(key) ?? { gauge, one, ways: [], carriers: [] };
    group.ways.push(index);
    group.carriers.push(one.carrierId);
    grouped.set(key, group);
  }
  const short = new Set<string>();
  const causes = [...grouped.values()].map(({ gauge, one, ways: own, carriers }): WayCause => {
    const chances = openChance(byGauge.get(gauge) ?? [], one);
    if (chances.every((chance) => chance === null)) short.add(gauge);
    const isShut = chances.map((chance) => chance !== null && chance < asked.settings.openChance_fraction);
    const { firstDay, horizon_days } = asked;
    return {
      ...{ causeId: gauge, kind: 'levels', reason: null, ways_positions: own, carrierIds: carriers },
      slower_factor: Number.POSITIVE_INFINITY,
      holdsOn_days: Uint8Array.from({ length: horizon_days }, (_, day) => (isShut[weekOf(firstDay + day)] ? 1 : 0)),
    };
  });
  for (const gauge of short) problems.push(engineProblem('ways.levels_short', { file: 'riverLevels.csv' }, { gauge }));
  return causes;
}
