import { expect, it } from 'vitest';
import { boilingCost, boughtWaterCost, fuelPerLitre_kg, pipedSchemeCost } from './spentNow.ts';

const boiled = {
  litres_L_per_person_per_day: 2,
  stove_fraction: 0.1,
  fuelHeat_MJ_per_kg: 15.6,
  fuelPrice_per_kg: 0.5,
};

it('boils what is boiled, with what the stove lets into the water', () => {
  // By hand: 357.48 ÷ (15,600 × 0.1) = 0.2291538 kg a litre.
  const kg_per_year = 2 * (357.48 / 1560) * 365.2425;
  const found = boilingCost(boiled, 'XTS');
  expect(found.perPersonYear_amount).toBeCloseTo(kg_per_year * 0.5, 9);
  expect(found.working.map(({ code }) => code)).toEqual(['cost.boilingFuel', 'cost.boiling']);
  expect(fuelPerLitre_kg(15.6, 0.2, 20)).toBeCloseTo(fuelPerLitre_kg(15.6, 0.1, 20) / 2, 12);
});

it('has no cost where anything is not stated or cannot be, and names it', () => {
  expect(boilingCost({ ...boiled, stove_fraction: null, fuelPrice_per_kg: null }, 'XTS')).toEqual({
    perPersonYear_amount: null,
    missing: ['stove_fraction', 'fuelPrice_per_kg'],
    working: [],
  });
  expect(boilingCost({ ...boiled, stove_fraction: 0 }, 'XTS').missing).toEqual(['stove_fraction']);
  expect(boilingCost({ ...boiled, stove_fraction: 1.2 }, 'XTS').missing).toEqual(['stove_fraction']);
  expect(boughtWaterCost({ litres_L_per_person_per_day: null, price_per_L: 1 }, 'XTS').missing).toHaveLength(1);
  expect(boughtWaterCost({ litres_L_per_person_per_day: -2, price_per_L: Number.NaN }, 'XTS').missing).toHaveLength(2);
});

it('takes gathered fuel for free where that is stated', () => {
  expect(boilingCost({ ...boiled, fuelPrice_per_kg: 0 }, 'XTS').perPersonYear_amount).toBe(0);
});

it('buys water by the litre', () => {
  expect(
    boughtWaterCost({ litres_L_per_person_per_day: 4, price_per_L: 0.02 }, 'XTS').perPersonYear_amount,
  ).toBeCloseTo(29.2194, 9);
});

it('spreads a piped scheme over its own life, and needs an interest', () => {
  const scheme = { amount_per_person: 100, life_years: 20, yearly_per_person: 4 };
  expect(pipedSchemeCost(scheme, 0, 'XTS').perPersonYear_amount).toBe(9);
  expect(pipedSchemeCost(scheme, null, 'XTS')).toMatchObject({ perPersonYear_amount: null, missing: ['interest'] });
  expect(pipedSchemeCost({ ...scheme, life_years: 0 }, 0.05, 'XTS').missing).toEqual(['life_years']);
});
