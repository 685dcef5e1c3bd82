import { calendarDay, type DayIndex, dayIndexOf, daysInMonth } from '../../../kernel/index.ts';
import type { RolloutProblem } from '../problem.ts';
import { knownOfYear_fraction, yearDrawn_days, yearsToDraw_count } from './constants.ts';
import type { NamedDice } from './namedDice.ts';
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
 * Makes the weather of areas ready. Where at least five years of an area are known, whole years are drawn, the same for all such areas if they have five in common, so that neighbours close together;
 * else the chain is drawn.
 */
export function readyWeather(problem: RolloutProblem, areas: readonly AreaWeather[]): ReadyWeather {
  const { firstDay, horizon_days } = problem;
  const own = problem.areaIds.map((_, area) => yearsOf(areas[area]?.days ?? null, firstDay));
  const withYears = own.filter(({ length }) => length >= yearsToDraw_count);
  const common = (withYears[0] ?? []).filter((year) => withYears.every((years) => years.includes(year)));
  const years = own.map((found) =>
    found.length < yearsToDraw_count ? [] : common.length >= yearsToDraw_count ? common : found,
  );
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

/** Draws the closed days of all areas into `closed`. Every area throws its own dice; years are thrown once for all. */
export function drawWeather(weather: ReadyWeather, yearDice: NamedDice, areaDice: readonly NamedDice[]): void {
  const { drawnBy, closed, known, starts } = weather;
  const horizon_days = closed[0]?.length ?? 0;
  for (let from = 0; from < horizon_days; from += yearDrawn_days) {
    const thrown = yearDice.fraction();
    for (let area = 0; area < drawnBy.length; area++) {
      if (drawnBy[area] !== 'years') continue;
      const start = starts[area]![Math.floor(thrown * starts[area]!.length)]!;
      const length = Math.min(yearDrawn_days, horizon_days - from);
      for (let day = 0; day < length; day++) closed[area]![from + day] = known[area]![start + day]!;
    }
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

/** The years of a record that begin on the rollout's first day of the year and of which enough is known. */
function yearsOf(days: ClosedDays | null, firstDay: DayIndex): readonly number[] {
  if (days === null) return [];
  const { firstDay: begins, state } = days;
  const found: number[] = [];
  const last = begins + state.length - yearDrawn_days;
  for (let year = calendarDay(begins).year; sameDay(firstDay, year) <= last; year++) {
    const start = sameDay(firstDay, year) - begins;
    if (start < 0) continue;
    let known = 0;
    for (let day = start; day < start + yearDrawn_days; day++) if (state[day]! < 2) known++;
    if (known >= knownOfYear_fraction * yearDrawn_days) found.push(year);
  }
  return found;
}

/** The same day of another year; 29 February is 28 February. */
function sameDay(day: DayIndex, year: number): DayIndex {
  const { month, day: ofMonth } = calendarDay(day);
  return dayIndexOf(year, month, Math.min(ofMonth, month === 2 ? 28 : daysInMonth(year, month)));
}

/** A day that is not known is as the day before; the first ones are open. */
function withoutHoles({ state }: ClosedDays): Uint8Array {
  let before = 0;
  return state.map((now) => {
    if (now < 2) before = now;
    return before;
  });
}
