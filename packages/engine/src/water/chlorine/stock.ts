import { mL_per_L, onePercent_g_per_L, tablet_g } from './constants.ts';

/**
 * How much stock gives so much water this dose? Milligrams a litre × litres ÷ grams in a litre of stock.
 *
 * @param dose_mg_per_L - chlorine wanted in the water [mg/L], 0 or more
 * @param water_L - water to be treated [L], 0 or more
 * @param stock_g_per_L - chlorine in the stock [g/L], above 0; one percent is 10
 * @returns stock [mL]
 * @source gtfcc-2019, appendix 14: one percent is 10 g/L; msf-cholera, appendix 16 (from memory)
 * @example
 * stockForDose_mL(2.5, 1000, 10) // → 250
 * stockForDose_mL(1, 20, 10) // → 2
 * stockForDose_mL(5, 10000, 10) // → 5000
 */
export function stockForDose_mL(
  dose_mg_per_L: number,
  water_L: number,
  stock_g_per_L: number = onePercent_g_per_L,
): number {
  return (dose_mg_per_L * water_L) / stock_g_per_L;
}

/**
 * Which dose is so much stock in so much water?
 *
 * @param stock_mL - stock put in [mL], 0 or more
 * @param water_L - water it is put into [L], above 0
 * @param stock_g_per_L - chlorine in the stock [g/L]; one percent is 10
 * @returns chlorine in the water [mg/L]
 * @law turns stockForDose_mL round
 * @source gtfcc-2019, appendix 14: one percent is 10 g/L
 * @example
 * doseOfStock_mg_per_L(1.5, 20, 10) // → 0.75
 */
export function doseOfStock_mg_per_L(
  stock_mL: number,
  water_L: number,
  stock_g_per_L: number = onePercent_g_per_L,
): number {
  return (stock_mL * stock_g_per_L) / water_L;
}

/**
 * How much of a product makes stock, made up with water to so many litres in all? That is: the product first, then water up to the mark.
 *
 * @param stock_g_per_L - chlorine wanted in the stock [g/L], 0 or more
 * @param stock_L - stock wanted in all [L], 0 or more
 * @param active_fraction - active chlorine in the product [fraction], above 0: of a powder's mass, or kilograms in a litre of a liquid
 * @returns grams of a powder, millilitres of a liquid [g or mL]
 * @source gtfcc-2019, appendix 14
 * @example
 * productMadeUp_g(10, 1, 0.05) // → 200
 * productMadeUp_g(10, 1, 0.7) // → 14.286
 */
export function productMadeUp_g(stock_g_per_L: number, stock_L: number, active_fraction: number): number {
  return (stock_g_per_L * stock_L) / active_fraction;
}

/**
 * How strong does stock become of so much liquid product, made up with water to so many litres in all? 250 mL of bleach of 5 % made up to one litre make 1.25 %: a
 * quarter stronger than the label of the printed recipe says.
 *
 * @param product_mL - liquid product [mL], 0 or more
 * @param active_fraction - active chlorine in it [kilograms in a litre]
 * @param stock_L - litres in all [L], above 0
 * @returns chlorine in the stock [g/L]
 * @source gtfcc-2019, appendix 14, which says so over its recipes
 * @example
 * stockMadeUp_g_per_L(250, 0.05, 1) // → 12.5
 */
export function stockMadeUp_g_per_L(product_mL: number, active_fraction: number, stock_L: number): number {
  return (product_mL * active_fraction) / stock_L;
}

/**
 * How strong does stock become of so much liquid product, added to so many litres of water? Both together are more than the water alone: 250 mL of bleach of 5 % added
 * to one litre make 1.00 %.
 *
 * @param product_mL - liquid product [mL], 0 or more
 * @param active_fraction - active chlorine in it [kilograms in a litre]
 * @param water_L - water it is added to [L], above 0
 * @returns chlorine in the stock [g/L]
 * @law never stronger than the same made up to as many litres
 * @source gtfcc-2019, appendix 14, whose 250 mL fit this way of mixing alone
 * @example
 * stockAdded_g_per_L(250, 0.05, 1) // → 10
 */
export function stockAdded_g_per_L(product_mL: number, active_fraction: number, water_L: number): number {
  return (product_mL * active_fraction) / (water_L + product_mL / mL_per_L);
}

/**
 * How many tablets make so much stock?
 *
 * @param stock_g_per_L - chlorine wanted in the stock [g/L], 0 or more
 * @param stock_L - stock wanted [L], 0 or more
 * @param active_g - active chlorine in a tablet [g], above 0
 * @returns whole tablets, so that the stock is not weaker [count]
 * @source gtfcc-2019, appendix 14: ten tablets of 1 g in a litre
 * @example
 * tablets_count(10, 1, 1) // → 10
 * tablets_count(10, 1, 1.67) // → 6
 */
export function tablets_count(stock_g_per_L: number, stock_L: number, active_g: number = tablet_g): number {
  // What rounding adds is not a tablet more.
  return Math.ceil((stock_g_per_L * stock_L) / active_g - 1e-9);
}
