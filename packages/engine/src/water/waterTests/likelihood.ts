import type { Plate, Portion, UncountablePlate, Wells } from './portion.ts';
import { logTail, tailSlope } from './uncountable.ts';

/** ln of the chance that a well with this many on average has any. */
export function logAny(mean_count: number): number {
  return mean_count > Math.LN2 ? Math.log1p(-Math.exp(-mean_count)) : Math.log(-Math.expm1(-mean_count));
}

/** How likely is what was seen, at this density? ln, without what does not depend on the density. */
export function logLikelihood(portions: readonly Portion[], logDensity: number): number {
  let sum = 0;
  for (const portion of portions) {
    const mean_count = Math.exp(logDensity) * portion.volume_mL;
    if (portion.kind === 'wells') {
      const { positive_count, wells_count } = portion;
      if (positive_count > 0) sum += positive_count * logAny(mean_count);
      sum -= (wells_count - positive_count) * mean_count;
    } else if (portion.kind === 'plate')
      sum += portion.colonies_count * (logDensity + Math.log(portion.volume_mL)) - mean_count;
    else sum += logTail(mean_count, portion.limit_count);
  }
  return sum;
}

/** How fast it grows with ln of the density. It falls all the way, so that there is one highest place at most. */
export function score(portions: readonly Portion[], logDensity: number): number {
  let sum = 0;
  for (const portion of portions) {
    const mean_count = Math.exp(logDensity) * portion.volume_mL;
    if (portion.kind === 'wells') {
      const { positive_count, wells_count } = portion;
      if (positive_count > 0) sum += (positive_count * mean_count) / Math.expm1(mean_count);
      sum -= (wells_count - positive_count) * mean_count;
    } else if (portion.kind === 'plate') sum += portion.colonies_count - mean_count;
    else sum += tailSlope(mean_count, portion.limit_count);
  }
  return sum;
}

/** Signs of E. coli at least: positive wells, colonies, limits that were passed. */
export function found_count(portions: readonly Portion[]): number {
  return portions.reduce((sum, portion) => {
    if (portion.kind === 'wells') return sum + portion.positive_count;
    return sum + (portion.kind === 'plate' ? portion.colonies_count : portion.limit_count);
  }, 0);
}

/** Water that holds a density down: that of negative wells and of plates that could be counted. */
export function holding_mL(portions: readonly Portion[]): number {
  return portions.reduce((sum, portion) => {
    if (portion.kind === 'wells') return sum + (portion.wells_count - portion.positive_count) * portion.volume_mL;
    return portion.kind === 'plate' ? sum + portion.volume_mL : sum;
  }, 0);
}

/** All water that was looked at. */
export function looked_mL(portions: readonly Portion[]): number {
  return portions.reduce(
    (sum, portion) => sum + portion.volume_mL * (portion.kind === 'wells' ? portion.wells_count : 1),
    0,
  );
}

/** Wells of one volume are one set, and plates of one volume one plate, however they were written down. */
export function gathered(portions: readonly Portion[]): readonly Portion[] {
  const wells = new Map<number, Wells>();
  const plates = new Map<number, Plate>();
  const others: UncountablePlate[] = [];
  for (const portion of portions) {
    const { volume_mL } = portion;
    if (portion.kind === 'uncountable') others.push(portion);
    else if (portion.kind === 'plate') {
      const before = plates.get(volume_mL) ?? { volume_mL: 0, colonies_count: 0 };
      // Two plates say together what one of twice the volume would.
      const both_mL = before.volume_mL + volume_mL;
      const colonies_count = before.colonies_count + portion.colonies_count;
      plates.set(volume_mL, { kind: 'plate', volume_mL: both_mL, colonies_count });
    } else {
      const before = wells.get(volume_mL) ?? { wells_count: 0, positive_count: 0 };
      const wells_count = before.wells_count + portion.wells_count;
      const positive_count = before.positive_count + portion.positive_count;
      wells.set(volume_mL, { kind: 'wells', volume_mL, wells_count, positive_count });
    }
  }
  return [...wells.values(), ...plates.values(), ...others];
}
