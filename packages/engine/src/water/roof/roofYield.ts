import { armedAfter_days, dryDayBelow_mm } from './constants.ts';

/** What a square metre of roof does with rain. */
export interface YieldRule {
  readonly runoffFraction: number;
  readonly firstFlush_mm: number;
  readonly drainHole: 'open' | 'blocked';
  /** What the rain is multiplied by before anything else; 1 where not given. */
  readonly rainFactor?: number;
  /** 2: the record is run twice end to end and the second pass is given back, so that its start follows from its end. */
  readonly passes: 1 | 2;
}

/**
 * How much clean water does 1 m² of plan roof give each day? Runoff fraction × rain, less the first flush: a spell begins
 * after three or more days each under 1 mm; its first depth is lost, over several days if need be; nothing more until
 * three such days arm it again. It is armed at the start of the first pass. A blocked drain hole never arms again, so the
 * depth is lost once at the very start. Rain under 1 mm after three dry days falls into an empty diverter and is lost up
 * to its depth. A day marked unknown stands with 0 mm and counts as a dry day; its year is not judged.
 *
 * @param rain_mm - rain by day [mm], 0 or more
 * @param rule - runoffFraction [fraction] 0 to 1, firstFlush_mm [mm] 0 or more, drainHole, rainFactor [fraction] 0 or more, passes 1 or 2
 * @returns net depth by day on 1 m² of plan [mm], 0 or more, as long as rain_mm
 * @law never more than runoff fraction × rain on any day; 0 first flush takes nothing
 * @definition ours; the dry gap is common practice, no source
 * @example
 * Array.from(roofYield_mm(Float64Array.of(0.25, 2, 4), { runoffFraction: 0.5, firstFlush_mm: 1, drainHole: 'open', passes: 1 })) // → [0, 0.125, 2]
 */
export function roofYield_mm(rain_mm: Float64Array, rule: YieldRule): Float64Array {
  const { firstFlush_mm, passes } = rule;
  const factor = rule.rainFactor ?? 1;
  const net_mm = new Float64Array(rain_mm.length);
  const days = rain_mm.length;
  const armsAfter = rule.drainHole === 'open' ? armedAfter_days : Infinity;
  let left_mm = firstFlush_mm;
  let dryDays = 0;
  for (let pass = 1; pass <= passes; pass++) {
    let hadWetDay = false;
    for (let day = 0; day < days; day++) {
      const fallen_mm = rain_mm[day]! * factor;
      // Most days of a record: nothing falls, nothing runs off, and the day's net depth is 0 from the start.
      if (fallen_mm === 0) {
        dryDays++;
        continue;
      }
      if (dryDays >= armsAfter) {
        // Armed anew after a wet day of this pass: from here on the second pass can only repeat the first.
        if (pass === 2 && hadWetDay) return net_mm;
        left_mm = firstFlush_mm;
      }
      const runoff_mm = rule.runoffFraction * fallen_mm;
      const lost_mm = Math.min(left_mm, runoff_mm);
      left_mm -= lost_mm;
      net_mm[day] = runoff_mm - lost_mm;
      if (fallen_mm < dryDayBelow_mm) dryDays++;
      else {
        dryDays = 0;
        hadWetDay = true;
      }
    }
  }
  return net_mm;
}
