import { expect, it } from 'vitest';
import { dayIndexOf } from '../../../kernel/index.ts';
import { tinyRollout } from '../tinyRollout.testing.ts';
import { type AreaWeather, drawWeather, readyWeather } from './areaWeather.ts';
import { NamedDice } from './namedDice.ts';
import { recordYears } from './recordYears.ts';
import { readyWaits } from './serviceWaits.ts';
import { chainMeans, closedByLevel, closedByRain, fittedChain } from './weatherChain.ts';

const problem = { ...tinyRollout(1), firstDay: dayIndexOf(2026, 3, 1), horizon_days: 400, areaIds: ['A', 'B'] };
const begins = dayIndexOf(2010, 1, 1);
/** In year y of the record all days are closed where y is odd. */
const oddYears = (years: number) => ({
  firstDay: begins,
  state: Uint8Array.from(
    { length: dayIndexOf(2010 + years, 1, 1) - begins },
    (_, at) => new Date((begins + at - 59) * 86_400_000).getUTCFullYear() % 2,
  ),
});
/** The areas by themselves, of a rollout without waits for rain. */
const readyAreas = (areas: readonly AreaWeather[]) =>
  readyWeather(problem, areas, recordYears(problem, areas, readyWaits(problem)).ofAreas);
const draw = (weather: ReturnType<typeof readyWeather>, seed: number) => {
  const dice = ['A', 'B'].map((name) => new NamedDice(seed, name));
  const yearDice = new NamedDice(seed, 'years');
  drawWeather(weather, Float64Array.of(yearDice.fraction(), yearDice.fraction()), dice);
  return weather.closed.map((days) => days.slice());
};

it('draws whole years, the same for neighbours, where five years are known', () => {
  const days = oddYears(9);
  const other = { ...days, state: days.state.map((state) => 1 - state) };
  const weather = readyAreas([
    { days, chain: null },
    { days: other, chain: null },
  ]);
  expect(weather.drawnBy).toEqual(['years', 'years']);
  const seen = new Set<number>();
  for (let seed = 1; seed <= 30; seed++) {
    const [one, two] = draw(weather, seed);
    seen.add(one![0]!);
    for (let day = 0; day < 400; day++) expect(one![day]! + two![day]!).toBe(1);
    expect(new Set(one!.slice(5, 360)).size).toBe(1);
  }
  expect(seen.size).toBe(2);
});

it('draws the chain where fewer years are known, and nothing where nothing is', () => {
  const chain = { afterOpen_fraction: new Array(12).fill(0.1), afterClosed_fraction: new Array(12).fill(0.6) };
  const weather = readyAreas([
    { days: oddYears(5), chain },
    { days: null, chain: null },
  ]);
  // Five calendar years hold four years that begin in March.
  expect(weather.drawnBy).toEqual(['chain', 'none']);
  let closed = 0;
  for (let seed = 1; seed <= 200; seed++) closed += draw(weather, seed)[0]!.reduce((sum, day) => sum + day, 0);
  // 80,000 days, of which a fifth is closed; three standard errors with the chain's own correlation (1 + r) / (1 - r) = 3.
  expect(Math.abs(closed / 80_000 - 0.2)).toBeLessThan(3 * Math.sqrt((3 * 0.16) / 80_000));
  expect(draw(weather, 1)[1]!.every((day) => day === 0)).toBe(true);
});

it('fits the chain by counting, month by month', () => {
  const chances = { afterOpen_fraction: new Array(12).fill(0.2), afterClosed_fraction: new Array(12).fill(0.7) };
  chances.afterOpen_fraction[6] = 0.5;
  const dice = new NamedDice(4, 'rain');
  const firstDay = dayIndexOf(1980, 1, 1);
  let before = 0;
  const state = Uint8Array.from({ length: 40 * 365 }, (_, at) => {
    const month = new Date((firstDay + at) * 86_400_000).getUTCMonth();
    before =
      dice.fraction() < (before ? chances.afterClosed_fraction[month]! : chances.afterOpen_fraction[month]!) ? 1 : 0;
    return before;
  });
  const fitted = fittedChain({ firstDay, state })!;
  for (let month = 0; month < 12; month++) {
    // At least some 350 days of each kind in a month: three standard errors.
    expect(Math.abs(fitted.afterOpen_fraction[month]! - chances.afterOpen_fraction[month]!)).toBeLessThan(0.08);
    expect(Math.abs(fitted.afterClosed_fraction[month]! - chances.afterClosed_fraction[month]!)).toBeLessThan(0.08);
  }
});

it('days that are not known are no days of the chain, and a month with few takes the whole year', () => {
  const state = Uint8Array.from({ length: 60 }, (_, at) => (at % 3 === 0 ? 2 : at % 3 === 1 ? 0 : 1));
  const fitted = fittedChain({ firstDay: dayIndexOf(2020, 1, 1), state })!;
  expect(fitted.afterOpen_fraction).toEqual(new Array(12).fill(1));
  expect(fitted.afterClosed_fraction).toEqual(new Array(12).fill(1));
  expect(fittedChain({ firstDay: 0, state: Uint8Array.of(0, 2, 1) })).toBeNull();
});

it('reads closed days off rain and off a river', () => {
  const record = {
    gaugeId: 'G',
    firstDay: 5,
    rain_mm: Float64Array.of(0, 20, 21, 0),
    state: Uint8Array.of(0, 0, 0, 1),
  };
  expect(Array.from(closedByRain(record, 20).state)).toEqual([0, 0, 1, 2]);
  const levels = [1, 3, 5, 9].map((level_m, at) => ({ day: 7 - at + (at === 3 ? -2 : 0), level_m }));
  expect(closedByLevel(levels, 2, 6)).toEqual({ firstDay: 2, state: Uint8Array.of(1, 2, 2, 0, 0, 1) });
  expect(closedByLevel([], null, null)).toBeNull();
});

it('knows the means of a chain', () => {
  expect(chainMeans(0.1, 0.6)).toEqual({
    closed_fraction: expect.closeTo(0.2, 12),
    spell_days: expect.closeTo(2.5, 12),
    wait_days: expect.closeTo(0.5, 12),
  });
  expect(chainMeans(0, 1)).toMatchObject({ closed_fraction: 0, wait_days: 0 });
});
