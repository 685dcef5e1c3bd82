import { explain, meanYear_days, type WorkingLine, workingInput } from '../../kernel/index.ts';
import {
  beforeBoiling_C,
  boiling_C,
  evaporated_fraction,
  evaporating_kJ_per_L,
  kJ_per_MJ,
  waterHeat_kJ_per_L_per_K,
} from './constants.ts';
import { equivalentAnnualCost } from './interest.ts';

/** What people buy water for today. Nothing is assumed: null is not stated. */
export interface BoughtWater {
  readonly litres_L_per_person_per_day: number | null;
  /** In the programme's currency. */
  readonly price_per_L: number | null;
}

/** What people boil water with today. Nothing is assumed: null is not stated. */
export interface BoiledWater {
  /** Litres that are boiled in practice, not those that are said to be. */
  readonly litres_L_per_person_per_day: number | null;
  /** Share of the fire's heat that comes into the water. */
  readonly stove_fraction: number | null;
  /** Of the fuel, net. */
  readonly fuelHeat_MJ_per_kg: number | null;
  /** In the programme's currency; 0 where it is gathered. */
  readonly fuelPrice_per_kg: number | null;
}

/** A piped scheme at the user's own rate. */
export interface PipedScheme {
  readonly amount_per_person: number | null;
  readonly life_years: number | null;
  /** To run it. */
  readonly yearly_per_person: number | null;
}

/** A cost for each person and year, or which figure it lacks. */
export interface PersonYearCost {
  readonly perPersonYear_amount: number | null;
  /** Names of what is not stated or cannot be; empty where there is a cost. */
  readonly missing: readonly string[];
  readonly working: readonly WorkingLine[];
}

/**
 * How much heat takes a litre of water to boil: to warm it, and the share of it that boils away?
 *
 * @param before_C - how warm it is before [C]
 * @returns the heat [kJ/L]
 * @source ams-iii-av, equation 5 (quoted)
 * @example
 * boilingHeat_kJ_per_L(20) // → 357.48
 */
export function boilingHeat_kJ_per_L(before_C: number): number {
  return waterHeat_kJ_per_L_per_K * (boiling_C - before_C) + evaporated_fraction * evaporating_kJ_per_L;
}

/**
 * How much of a fuel's heat comes into the water?
 *
 * @param fuelHeat_MJ_per_kg - heat of the fuel [MJ/kg]
 * @param stove_fraction - share that comes into the water [fraction]
 * @returns the heat used [MJ/kg]
 * @source boiling-point-28, table of fuels
 * @example
 * usedHeat_MJ_per_kg(18, 0.1) // → 1.8
 */
export function usedHeat_MJ_per_kg(fuelHeat_MJ_per_kg: number, stove_fraction: number): number {
  return fuelHeat_MJ_per_kg * stove_fraction;
}

/**
 * How much fuel boils a litre?
 *
 * @param fuelHeat_MJ_per_kg - heat of the fuel, net [MJ/kg]
 * @param stove_fraction - share of it that comes into the water [fraction]
 * @param before_C - how warm the water is before [C]
 * @returns the fuel [kg/L]
 * @law a better stove, or a hotter fuel, never takes more
 * @source ams-iii-av, equation 5: useful heat ÷ efficiency ÷ heat of the fuel, which is divided by once (quoted)
 * @example
 * fuelPerLitre_kg(15.6, 0.1, 20) // → 0.22915
 */
export function fuelPerLitre_kg(fuelHeat_MJ_per_kg: number, stove_fraction: number, before_C: number): number {
  return boilingHeat_kJ_per_L(before_C) / (usedHeat_MJ_per_kg(fuelHeat_MJ_per_kg, stove_fraction) * kJ_per_MJ);
}

/**
 * What do people pay for bought water?
 *
 * @param given - litres [L/person/day] and their price [currency/L]
 * @param currency - the programme's, for the working [text]
 * @returns the cost [currency/person/year]; null with what is missing
 * @definition ours: litres × price × 365.2425 days
 */
export function boughtWaterCost(given: BoughtWater, currency: string): PersonYearCost {
  return cost(given, {}, (known, working) =>
    explain(working, {
      code: 'cost.boughtWater',
      value: known.litres_L_per_person_per_day * known.price_per_L * meanYear_days,
      unit: `${currency}_per_person_per_year`,
      inputs: [
        workingInput('litres', known.litres_L_per_person_per_day, 'L_per_person_per_day'),
        workingInput('waterPrice', known.price_per_L, `${currency}_per_L`),
      ],
      source: 'settings',
    }),
  );
}

/**
 * What do people pay for the fuel they boil water with? Only what is boiled in practice.
 *
 * @param given - litres boiled [L/person/day], stove [fraction], fuel [MJ/kg] and its price [currency/kg]
 * @param currency - the programme's, for the working [text]
 * @returns the cost [currency/person/year]; null with what is missing
 * @source ams-iii-av, equation 5 (quoted)
 */
export function boilingCost(given: BoiledWater, currency: string): PersonYearCost {
  return cost(given, { stove_fraction: 1 }, (known, working) => {
    const fuel_kg_per_L = explain(working, {
      code: 'cost.boilingFuel',
      value: fuelPerLitre_kg(known.fuelHeat_MJ_per_kg, known.stove_fraction, beforeBoiling_C),
      unit: 'kg_per_L',
      inputs: [
        workingInput('boilingHeat', boilingHeat_kJ_per_L(beforeBoiling_C), 'kJ_per_L'),
        workingInput('stoveFraction', known.stove_fraction, 'fraction'),
        workingInput('fuelHeat', known.fuelHeat_MJ_per_kg, 'MJ_per_kg'),
      ],
      source: 'ams-iii-av, equation 5',
    });
    return explain(working, {
      code: 'cost.boiling',
      value: known.litres_L_per_person_per_day * fuel_kg_per_L * known.fuelPrice_per_kg * meanYear_days,
      unit: `${currency}_per_person_per_year`,
      inputs: [
        workingInput('litres', known.litres_L_per_person_per_day, 'L_per_person_per_day'),
        workingInput('fuel', fuel_kg_per_L, 'kg_per_L'),
        workingInput('fuelPrice', known.fuelPrice_per_kg, `${currency}_per_kg`),
      ],
      source: 'settings',
    });
  });
}

/**
 * What would a piped scheme cost, at the user's own rate?
 *
 * @param given - its price [currency/person], life [year] and what running it takes [currency/person/year]
 * @param interest_fraction_per_year - in money that keeps its worth [fraction/year]; null: not known
 * @param currency - the programme's, for the working [text]
 * @returns the cost [currency/person/year]; null with what is missing
 * @source newnan-tables, equivalent uniform annual cost
 */
export function pipedSchemeCost(
  given: PipedScheme,
  interest_fraction_per_year: number | null,
  currency: string,
): PersonYearCost {
  const least = interest_fraction_per_year === null || interest_fraction_per_year > -1;
  if (interest_fraction_per_year === null || !least)
    return { perPersonYear_amount: null, missing: ['interest'], working: [] };
  return cost(given, {}, (known, working) => {
    const capital = [{ amount: known.amount_per_person, life_years: known.life_years }];
    return explain(working, {
      code: 'cost.pipedScheme',
      value: equivalentAnnualCost(capital, known.yearly_per_person, interest_fraction_per_year),
      unit: `${currency}_per_person_per_year`,
      inputs: [
        workingInput('pipedScheme', known.amount_per_person, `${currency}_per_person`),
        workingInput('life', known.life_years, 'year'),
        workingInput('interest', interest_fraction_per_year, 'fraction'),
        workingInput('yearly', known.yearly_per_person, `${currency}_per_person_per_year`),
      ],
      source: 'newnan-tables, equivalent uniform annual cost',
    });
  });
}

type Known<T> = { readonly [K in keyof T]: number };

/** Reckons where every figure is stated and can be; else says which are not. Divisors are above 0. */
function cost<T extends Readonly<Record<keyof T, number | null>>>(
  given: T,
  most: Partial<Record<keyof T, number>>,
  reckon: (known: Known<T>, working: WorkingLine[]) => number,
): PersonYearCost {
  const divisors = ['stove_fraction', 'fuelHeat_MJ_per_kg', 'life_years'];
  const names = Object.keys(given) as (keyof T & string)[];
  const missing = names.filter((name) => {
    const value = given[name] as number | null;
    if (value === null || !Number.isFinite(value) || value > (most[name] ?? Number.MAX_VALUE)) return true;
    return divisors.includes(name) ? value <= 0 : value < 0;
  });
  const working: WorkingLine[] = [];
  if (missing.length > 0) return { perPersonYear_amount: null, missing, working };
  return { perPersonYear_amount: reckon(given as Known<T>, working), missing, working };
}
