import { type JudgedRain, seededDice, type WaterYear } from '../../kernel/index.ts';
import { beyondExtreme_count } from './constants.ts';

/** A year to draw from: a judged year as it was, or with its water multiplied. */
export interface PoolYear {
  readonly year: WaterYear;
  /** What its inflow is multiplied by; 1 for a year as it was. */
  readonly inflowFactor: number;
}

/** Years drawn again and again from a pool, a row of `length` years a draw, as positions in the pool. */
export interface DrawnYears {
  readonly draws: number;
  readonly length: number;
  readonly positions: Uint16Array;
}

/**
 * Which years may be drawn? The judged years as they were, in their order; then a year drier than any of them and a year
 * wetter than any. How much they are beyond the driest and the wettest goes by the spread of the years' rain, which no
 * roof and no tank changes.
 *
 * @param rain - the rain with its water years [mm]
 * @returns the judged years, the year beyond the driest, the year beyond the wettest; empty where none is judged
 * @law the pool is the same for every site on a gauge
 * @definition ours: docs/methods/storage.md, how sure
 */
export function drawPool(rain: Pick<JudgedRain, 'record' | 'years'>): readonly PoolYear[] {
  const known = knownPools.get(rain);
  if (known) return known;
  const pool = poolOf(rain);
  knownPools.set(rain, pool);
  return pool;
}

/** Pools that were asked for before, by their rain: all sites on a gauge ask for the same one. */
const knownPools = new WeakMap<Pick<JudgedRain, 'record' | 'years'>, readonly PoolYear[]>();

function poolOf(rain: Pick<JudgedRain, 'record' | 'years'>): readonly PoolYear[] {
  const judged = rain.years.filter((year) => year.judged);
  if (judged.length === 0) return [];
  const rain_mm = judged.map(({ from, to }) => {
    let sum = 0;
    for (let day = from; day < to; day++) sum += rain.record.rain_mm[day]!;
    return sum;
  });
  const beyond = beyondExtreme_count * spread_fraction(rain_mm);
  const driest = judged[rain_mm.indexOf(Math.min(...rain_mm))]!;
  const wettest = judged[rain_mm.indexOf(Math.max(...rain_mm))]!;
  return [
    ...judged.map((year) => ({ year, inflowFactor: 1 })),
    { year: driest, inflowFactor: Math.exp(-beyond) },
    { year: wettest, inflowFactor: Math.exp(beyond) },
  ];
}

/** Standard deviation ÷ mean; 0 where there is one value, or none but 0. */
function spread_fraction(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  if (values.length < 2 || !(mean > 0)) return 0;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1)) / mean;
}

/**
 * Draws records of as many years as were judged, in blocks of two that follow each other, so that a tank that carries one
 * year's rain into the next is drawn as it is. The list of judged years is a loop. The next year is as likely to fall in
 * each of the n + 1 stretches into which n years cut the scale from dry to wet; so each drawn year gives way, one time in
 * n + 1 each, to the year beyond the driest and to the year beyond the wettest.
 *
 * @param judgedYears - years judged [year], whole, 1 to 65,000
 * @param draws - how many records to draw [count], whole
 * @param seed - the seed [number], whole
 * @returns positions in the pool of `drawPool` [count], draw after draw
 * @law the same arguments give the same draws
 * @source kuensch-1989, moving blocks; politis-romano-1992, circular blocks; the years beyond are ours (docs/decisions)
 */
export function drawYears(judgedYears: number, draws: number, seed: number): DrawnYears {
  const dice = seededDice(seed);
  const positions = new Uint16Array(judgedYears * draws);
  for (let draw = 0; draw < draws; draw++) {
    const row = draw * judgedYears;
    for (let i = 0; i < judgedYears; i += 2) {
      const start = dice.next(judgedYears);
      positions[row + i] = start;
      if (i + 1 < judgedYears) positions[row + i + 1] = (start + 1) % judgedYears;
    }
    for (let i = row; i < row + judgedYears; i++) {
      const half = dice.next(2 * judgedYears + 2);
      if (half === 0) positions[i] = judgedYears;
      else if (half === 1) positions[i] = judgedYears + 1;
    }
  }
  return { draws, length: judgedYears, positions };
}
