import { evenDraws, seedFor } from '../../kernel/index.ts';
import { earlyShare_fraction, lateShare_fraction, middleShare_fraction } from './constants.ts';

/** A figure with its doubt, in the unit of the field that holds it. The least is never above the likely one, nor that above the greatest. */
export interface Doubtful {
  /** What is thrown: figures of one name are thrown together, at every site. */
  readonly inputId: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** Are the ends the least and the greatest there can be, or the tenth and ninetieth of a hundred? */
  readonly ends: 'limits' | 'p10p90';
}

/**
 * Makes a figure with its doubt. An end that is not stated is the likely figure itself.
 *
 * @param inputId - its name; figures of one name are thrown together [text]
 * @param likely - the likely figure [any unit]
 * @param low - the low end [same unit]; null: not stated
 * @param high - the high end [same unit]; null: not stated
 * @returns the figure with its ends [same unit]; null where one is no number, or they do not rise
 * @definition ours: docs/decisions/0257-throws-and-swings.md
 */
export function doubtful(inputId: string, likely: number, low: number | null, high: number | null): Doubtful | null {
  const ends = { low: low ?? likely, likely, high: high ?? likely };
  if (![ends.low, likely, ends.high].every(Number.isFinite)) return null;
  return ends.low <= likely && likely <= ends.high ? { inputId, ...ends, ends: 'limits' } : null;
}

/**
 * Which value of a doubtful figure stands at a share of all there can be? Between limits a triangle with its top at the likely value; between the tenth and the
 * ninetieth straight lines through the middle, and nothing beyond them.
 *
 * @param figure - the figure with its ends [any unit]
 * @param share_fraction - the share [fraction], 0 to 1
 * @returns the value [same unit]
 * @law never falls as the share grows; between the ends
 * @source evans-2000, triangular distribution (from memory); straight lines between P10, P50 and P90 are ours: docs/decisions/0257-throws-and-swings.md
 * @example
 * valueAtShare({ inputId: 'a', low: 0, likely: 2, high: 4, ends: 'limits' }, 0.5) // → 2
 * valueAtShare({ inputId: 'a', low: 0, likely: 0, high: 4, ends: 'limits' }, 0.75) // → 2
 * valueAtShare({ inputId: 'a', low: 1, likely: 3, high: 7, ends: 'p10p90' }, 0.7) // → 5
 */
export function valueAtShare(figure: Doubtful, share_fraction: number): number {
  const { low, likely, high } = figure;
  if (low === high) return likely;
  if (figure.ends === 'limits') {
    const below_fraction = (likely - low) / (high - low);
    return share_fraction < below_fraction
      ? low + Math.sqrt(share_fraction * (high - low) * (likely - low))
      : high - Math.sqrt((1 - share_fraction) * (high - low) * (high - likely));
  }
  if (share_fraction <= earlyShare_fraction) return low;
  if (share_fraction >= lateShare_fraction) return high;
  const isEarly = share_fraction < middleShare_fraction;
  const [from, to] = isEarly ? [low, likely] : [likely, high];
  const start_fraction = isEarly ? earlyShare_fraction : middleShare_fraction;
  return from + ((share_fraction - start_fraction) / (middleShare_fraction - earlyShare_fraction)) * (to - from);
}

/**
 * Throws a doubtful figure so many times, evenly spread. The name and the seed alone decide, so that one figure is the same throw for throw wherever it stands.
 *
 * @param figure - the figure with its ends [any unit]
 * @param draws - how many throws [count]
 * @param seed - the programme's seed [number], whole
 * @returns the throws [same unit]
 * @law the same name and seed give the same throws
 * @definition ours: docs/decisions/0257-throws-and-swings.md
 */
export function throwsOf(figure: Doubtful, draws: number, seed: number): Float64Array {
  if (figure.low === figure.high) return new Float64Array(draws).fill(figure.likely);
  const [shares] = evenDraws(draws, 1, seedFor(seed, figure.inputId));
  return shares!.map((share) => valueAtShare(figure, share));
}
