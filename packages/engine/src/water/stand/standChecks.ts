import type { StandSafety, TankFacts } from '../../kernel/index.ts';
import { bearingPressure_kPa } from './bearingPressure.ts';
import {
  friction_factor,
  gust_factor,
  leastSafety_factor,
  levelGround_factor,
  roundTank_factor,
  roundTankForce_factor,
} from './constants.ts';
import { presumptiveBearing } from './presumptiveBearing.ts';
import { type StandGiven, windOf } from './standGiven.ts';
import { type StandMeasures, standMeasures } from './standMeasures.ts';
import { litresOfMass_L, waterMass_kg } from './waterMass.ts';
import { exposureFactor, velocityPressure_Pa, windForce_N } from './windPressure.ts';
import { windSafety } from './windSafety.ts';
import { windInOtherUnit } from './windUnits.ts';

/** Every sum of one tank's stand; null where something it is made of is not known. */
export interface StandChecks {
  readonly measures: StandMeasures;
  readonly massEmpty_kg: number | null;
  readonly massFull_kg: number | null;
  readonly bearing_kPa: number | null;
  readonly bearingAllowed_kPa: number | null;
  readonly bearingSource: string | null;
  readonly bearingUse_factor: number | null;
  readonly windSpeed_m_per_s: number | null;
  readonly exposure_factor: number | null;
  readonly windPressure_Pa: number | null;
  readonly windForce_N: number | null;
  /** Above the ground, where the wind pushes. */
  readonly pushHeight_m: number | null;
  readonly empty: StandSafety;
  readonly full: StandSafety;
  readonly loose: StandSafety | null;
  readonly leastHeld_L: number | null;
}

const notKnown: StandSafety = { overturning_factor: null, sliding_factor: null };

/** The sum of what is known; null where one is not. */
function sumOf(...masses_kg: readonly (number | null)[]): number | null {
  return masses_kg.reduce((sum, one) => (sum === null || one === null ? null : sum + one), 0);
}

/**
 * What do the sums of one tank's stand come to?
 *
 * @param tank - as surveyed
 * @param given - the site's wind and the settings
 * @returns masses [kg], pressures [kPa, Pa], push [N] and factors of safety [factor]; null where something is not known
 * @definition ours: docs/methods/stand.md
 */
export function standChecks(tank: TankFacts, given: StandGiven): StandChecks {
  const measures = standMeasures(tank);
  const { held, area_m2 } = measures;
  const massEmpty_kg = sumOf(measures.tank_kg, measures.stand_kg);
  const massFull_kg = sumOf(massEmpty_kg, held === null ? null : waterMass_kg(held.mostHeld_L));
  const ground = tank.groundClass === null ? null : presumptiveBearing(tank.groundClass);
  const bearing_kPa = massFull_kg === null || area_m2 === null ? null : bearingPressure_kPa(massFull_kg, area_m2);
  return {
    measures,
    massEmpty_kg,
    massFull_kg,
    bearing_kPa,
    bearingAllowed_kPa: ground?.bearing_kPa ?? null,
    bearingSource: ground?.source ?? null,
    bearingUse_factor: bearing_kPa === null || ground === null ? null : bearing_kPa / ground.bearing_kPa,
    ...inWind(measures, given, massEmpty_kg, massFull_kg, tank.isFastened),
  };
}

type InWind = Pick<StandChecks, 'empty' | 'full' | 'loose' | 'leastHeld_L'> &
  Pick<StandChecks, 'windSpeed_m_per_s' | 'exposure_factor' | 'windPressure_Pa' | 'windForce_N' | 'pushHeight_m'>;

function inWind(
  measures: StandMeasures,
  given: StandGiven,
  massEmpty_kg: number | null,
  massFull_kg: number | null,
  isFastened: boolean | null,
): InWind {
  const { standHeight_m, diameter_m, height_m, baseWidth_m, tank_kg, isRaised, held } = measures;
  const wind = windOf(given);
  const speed = wind.windSpeed_m_per_s;
  const windSpeed_m_per_s = speed !== null && speed > 0 && windInOtherUnit(speed) === null ? speed : null;
  const looseNotKnown = isRaised ? notKnown : null;
  const nothing = { exposure_factor: null, windPressure_Pa: null, windForce_N: null, pushHeight_m: null };
  if (windSpeed_m_per_s === null || standHeight_m === null || diameter_m === null || height_m === null)
    return { windSpeed_m_per_s, ...nothing, empty: notKnown, full: notKnown, loose: looseNotKnown, leastHeld_L: null };
  const exposure_factor = exposureFactor(wind.exposure, standHeight_m + height_m);
  const factors = { exposure_factor, topography_factor: levelGround_factor, direction_factor: roundTank_factor };
  const windPressure_Pa = velocityPressure_Pa({ windSpeed_m_per_s, ...factors });
  const push_N = windForce_N(windPressure_Pa, gust_factor, roundTankForce_factor, diameter_m * height_m);
  const safetyOf = (mass_kg: number | null, pushHeight_m: number, width_m: number | null): StandSafety => {
    if (mass_kg === null) return notKnown;
    const body = { mass_kg, windForce_N: push_N, pushHeight_m, friction_factor };
    const { overturning_factor, sliding_factor } = windSafety({ ...body, baseWidth_m: width_m ?? 0 });
    return { overturning_factor: width_m === null ? null : overturning_factor, sliding_factor };
  };
  const pushHeight_m = standHeight_m + height_m / 2;
  const empty = safetyOf(massEmpty_kg, pushHeight_m, baseWidth_m);
  const loose = isRaised ? safetyOf(tank_kg, height_m / 2, diameter_m) : null;
  const mostHeld_L = held?.mostHeld_L ?? null;
  const asOne_L = leastHeld_L(massEmpty_kg, empty, mostHeld_L);
  // A tank that is not fastened has to stay on its stand by its own weight.
  const alone_L = loose === null || isFastened !== false ? 0 : leastHeld_L(tank_kg, loose, mostHeld_L);
  return {
    windSpeed_m_per_s,
    exposure_factor,
    windPressure_Pa,
    windForce_N: push_N,
    pushHeight_m,
    empty,
    full: safetyOf(massFull_kg, pushHeight_m, baseWidth_m),
    loose,
    leastHeld_L: asOne_L === null || alone_L === null ? null : Math.max(asOne_L, alone_L),
  };
}

/** Litres that bring both factors of an empty body to the least, as they go with its mass; null where it does not hold so many. */
function leastHeld_L(mass_kg: number | null, safety: StandSafety, mostHeld_L: number | null): number | null {
  const { overturning_factor, sliding_factor } = safety;
  if (mass_kg === null || mostHeld_L === null || overturning_factor === null || sliding_factor === null) return null;
  const least = Math.min(overturning_factor, sliding_factor);
  if (!(least > 0)) return null;
  const wanted_L = Math.max(0, litresOfMass_L(mass_kg * (leastSafety_factor / least - 1)));
  return wanted_L > mostHeld_L ? null : wanted_L;
}
