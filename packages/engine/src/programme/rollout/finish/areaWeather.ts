import { calendarDay } from '../../../kernel/index.ts';
import type { RolloutProblem } from '../problem.ts';
import { yearDrawn_days } from './constants.ts';
import type { NamedDice } from './namedDice.ts';
import { sameDay } from './recordYears.ts';
import { type ClosedChain, type ClosedDays, chainMeans } from './weatherChain.ts';

/** What is known of the weather of an area: its days as they were, a chain for where these are too few; both null: it is never closed, which the answer says. */
export interface AreaWeather {
  readonly days: ClosedDays | null;
  readonly chain: ClosedChain | null;
}

/** How the weather of an area is drawn. */
export type WeatherDrawn = 'years' | 'chain' | 'none';

/** Areas ready for drawing; `closed` is written anew by each draw. */
export interface ReadyWeather {
  readonly drawnBy: readonly WeatherDrawn[];
  readonly closed: readonly Uint8Array[];
  /** Of areas drawn by years: days without holes, and where the years begin in them. */
  readonly known: readonly (Uint8Array | null)[];
  readonly starts: readonly Int32Array[];
  /** Of areas drawn by a chain, by day: chance of a closed day after an open and after a closed one, and of the first day. */
  readonly afterOpen: readonly Float64Array[];
  readonly afterClosed: readonly Float64Array[];
  readonly first_fraction: readonly number[];
}

/**
 * Makes the weather of areas ready. Whole years are drawn of an area of which there are some to draw from, else the chain.
 *
 * @param problem - the rollout as numbers [day]
 * @param areas - what is known of each
 * @param years - of each, the years to draw from, as `recordYears` found them
 */
export function readyWeather(
  problem: RolloutProblem,
  areas: readonly AreaWeather[],
  years: readonly (readonly number[])[],
): ReadyWeather {
  const { firstDay, horizon_days } = problem;
  const chains = problem.areaIds.map((_, area) => areas[area]?.chain ?? null);
  const months = Array.from({ length: horizon_days }, (_, day) => calendarDay(firstDay + day).month - 1);
  const byDay = (of: (chain: ClosedChain) => readonly number[]) =>
    chains.map((chain) => Float64Array.from(months, (month) => (chain === null ? 0 : of(chain)[month]!)));
  const afterOpen = byDay((chain) => chain.afterOpen_fraction);
  const afterClosed = byDay((chain) => chain.afterClosed_fraction);
  return {
    drawnBy: years.map((found, area) => (found.length > 0 ? 'years' : chains[area] !== null ? 'chain' : 'none')),
    closed: problem.areaIds.map(() => new Uint8Array(horizon_days)),
    known: years.map((found, area) => (found.length > 0 ? withoutHoles(areas[area]!.days!) : null)),
    starts: years.map((found, area) =>
      Int32Array.from(found, (year) => sameDay(firstDay, year) - areas[area]!.days!.firstDay),
    ),
    ...{ afterOpen, afterClosed },
    first_fraction: chains.map((chain, area) =>
      chain === null || horizon_days === 0
        ? 0
        : chainMeans(afterOpen[area]![0]!, afterClosed[area]![0]!).closed_fraction,
    ),
  };
}

/** Draws the closed days of all areas into `closed`: of the years thrown, or by dice of each area. */
export function drawWeather(weather: ReadyWeather, thrown: Float64Array, areaDice: readonly NamedDice[]): void {
  const { drawnBy, closed, known, starts } = weather;
  const horizon_days = closed[0]?.length ?? 0;
  for (let from = 0; from < horizon_days; from += yearDrawn_days)
    for (let area = 0; area < drawnBy.length; area++) {
      if (drawnBy[area] !== 'years') continue;
      const start = starts[area]![Math.floor(thrown[from / yearDrawn_days]! * starts[area]!.length)]!;
      const length = Math.min(yearDrawn_days, horizon_days - from);
      for (let day = 0; day < length; day++) closed[area]![from + day] = known[area]![start + day]!;
    }
  for (let area = 0; area < drawnBy.length; area++)
    if (drawnBy[area] === 'chain') drawChain(weather, area, areaDice[area]!);
}

function drawChain(
  { closed, afterOpen, afterClosed, first_fraction }: ReadyWeather,
  area: number,
  dice: NamedDice,
): void {
  const days = closed[area]!;
  const [open, shut] = [afterOpen[area]!, afterClosed[area]!];
  let before = dice.fraction() < first_fraction[area]! ? 1 : 0;
  days[0] = before;
  for (let day = 1; day < days.length; day++) {
    before = dice.fraction() < (before === 1 ? shut[day]! : open[day]!) ? 1 : 0;
    days[day] = before;
  }
}

/** A day that is not known is as the day before; the first ones are open. */
function withoutHoles({ state }: ClosedDays): Uint8Array {
  let before = 0;
  return state.map((now) => {
    if (now < 2) before = now;
    return before;
  });
}
