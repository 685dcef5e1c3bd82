import { type Carrier, m_per_ft, millimetresFromInches } from '../../kernel/index.ts';
import {
  dugoutFreeboard_in,
  ferryFreeboard,
  inlandFreeboard_mm,
  openFreeboard_mm,
  plateMore_lb,
  platePerson_lb,
} from './constants.ts';

/**
 * What freeboard do the ferry rules of Maharashtra ask of a boat of this length? A fact to hold beside one's own; no boat is fit by it.
 *
 * @param length_m - from the stem to the stern post [m]
 * @returns the least freeboard [mm]; null where that is no length
 * @law a longer boat never wants less
 * @source maharashtra-ferry-rules, rule 3: 12 in up to 20 ft, 18 in from 40 ft, in proportion between
 * @example
 * ferryFreeboard_mm(5) // → 304.8
 * ferryFreeboard_mm(9.144) // → 381
 * ferryFreeboard_mm(Number.NaN) // → null
 */
export function ferryFreeboard_mm(length_m: number): number | null {
  if (!(length_m > 0 && Number.isFinite(length_m))) return null;
  const { short_ft, long_ft, short_in, long_in } = ferryFreeboard;
  const share = Math.min(1, Math.max(0, (length_m / m_per_ft - short_ft) / (long_ft - short_ft)));
  return millimetresFromInches(short_in + share * (long_in - short_in));
}

/** A freeboard that somebody's rules ask for, to be shown beside the user's own; never a permission. */
export interface FreeboardRule {
  /** Names its sentence. */
  readonly rule: 'ferryShort' | 'ferryLong' | 'dugout' | 'inland' | 'inlandOpen';
  readonly least_mm: number;
  readonly source: string;
}

/**
 * Which freeboards do published rules ask for? Facts to show beside the freeboard of a boat: no rule makes a boat safe, and none of them may be the
 * one of the place.
 *
 * @returns the rules, each with its least freeboard [mm] and its source
 * @source maharashtra-ferry-rules, rules 3 and 3A
 * @source uk-open-boats, freeboard of inland craft and clear side of an open boat
 */
export function freeboardRules(): readonly FreeboardRule[] {
  const ferry = 'maharashtra-ferry-rules, rule 3';
  return [
    { rule: 'ferryShort', least_mm: millimetresFromInches(ferryFreeboard.short_in), source: ferry },
    { rule: 'ferryLong', least_mm: millimetresFromInches(ferryFreeboard.long_in), source: ferry },
    { rule: 'dugout', least_mm: millimetresFromInches(dugoutFreeboard_in), source: 'maharashtra-ferry-rules, rule 3A' },
    { rule: 'inland', least_mm: inlandFreeboard_mm, source: 'uk-open-boats, inland craft' },
    { rule: 'inlandOpen', least_mm: openFreeboard_mm, source: 'uk-open-boats, open boat of 7 m' },
  ];
}

/**
 * How many people is a load of so many pounds, as the plates of small boats with an outboard motor count them? A fact to hold beside a limit; the plate of
 * the boat is what holds.
 *
 * @param capacity_lb - persons capacity [lb]
 * @returns persons before rounding [count]; null where that is no capacity
 * @source cfr-33-183, section 183.41 (b)
 * @example
 * platePersons_count(109) // → 1
 * platePersons_count(-1) // → null
 */
export function platePersons_count(capacity_lb: number): number | null {
  return capacity_lb >= 0 && Number.isFinite(capacity_lb) ? (plateMore_lb + capacity_lb) / platePerson_lb : null;
}

/** What is known of the freeboard of a boat with so much aboard. */
export interface FreeboardWithLoad {
  readonly freeboard_cm: number;
  /** `between`: between empty and at its limit; `atLeast`: what is stated at its limit, and with less aboard more, nobody says how much. */
  readonly from: 'between' | 'atLimit' | 'atLeast';
}

/**
 * What freeboard has a boat with so much aboard? Between what is stated for it empty and at its limit, in proportion to the load, as for walls that stand
 * upright: common practice, no source. A figure to draw by: what counts is the mark on the boat and the local skipper.
 *
 * @param carrier - its freeboards [cm] and its limit [kg]
 * @param load_kg - what is aboard beside its crew [kg]
 * @returns the freeboard [cm], and what it rests on; null where none is stated at the limit, or more is aboard than it may carry
 * @law more aboard never leaves more freeboard
 * @definition ours: docs/decisions/0315-freeboard-with-a-load.md
 * @example
 * freeboardWith({ freeboard_cm: 38, freeboardEmpty_cm: 50, limit_kg: 1200 }, 600) // → { freeboard_cm: 44, from: 'between' }
 * freeboardWith({ freeboard_cm: 38, freeboardEmpty_cm: null, limit_kg: 1200 }, 600) // → { freeboard_cm: 38, from: 'atLeast' }
 * freeboardWith({ freeboard_cm: 38, freeboardEmpty_cm: 50, limit_kg: 1200 }, 1200) // → { freeboard_cm: 38, from: 'atLimit' }
 * freeboardWith({ freeboard_cm: null, freeboardEmpty_cm: 50, limit_kg: 1200 }, 600) // → null
 */
export function freeboardWith(
  carrier: Pick<Carrier, 'freeboard_cm' | 'freeboardEmpty_cm' | 'limit_kg'>,
  load_kg: number,
): FreeboardWithLoad | null {
  const { freeboard_cm, freeboardEmpty_cm, limit_kg } = carrier;
  if (freeboard_cm === null || limit_kg === null || !(limit_kg > 0) || !(load_kg >= 0)) return null;
  if (load_kg > limit_kg) return null;
  if (load_kg === limit_kg) return { freeboard_cm, from: 'atLimit' };
  // A boat that is said to lie deeper empty than laden was measured wrong.
  if (freeboardEmpty_cm === null || freeboardEmpty_cm < freeboard_cm) return { freeboard_cm, from: 'atLeast' };
  const sunk_cm = (freeboardEmpty_cm - freeboard_cm) * (load_kg / limit_kg);
  return { freeboard_cm: freeboardEmpty_cm - sunk_cm, from: 'between' };
}
