import {
  type ChlorineFinding,
  type EngineProblemCode,
  engineProblem,
  type Facts,
  g_per_kg,
  type Problem,
} from '../../kernel/index.ts';
import type { ChlorineGiven } from './chlorineGiven.ts';
import { bleachRecipe_mL, mostDrunk_mg_per_L, mostForChlorine_NTU, slowFrom_pH } from './constants.ts';
import { giardiaCt } from './giardiaCt.ts';
import { residualAfterWait_mg_per_L } from './residual.ts';
import { stockMadeUp_g_per_L } from './stock.ts';

type Tell = (code: EngineProblemCode, column: string, facts?: Facts) => void;

/** What is not known of a site's chlorine, or does not fit together. */
export function chlorineProblems(siteId: string, given: ChlorineGiven, f: ChlorineFinding): readonly Problem[] {
  const problems: Problem[] = [];
  const tell: Tell = (code, column, facts = {}) => {
    problems.push(engineProblem(code, { file: 'chlorination.csv', siteId, column }, facts));
  };
  ofResidual(tell, given, f);
  ofContact(tell, given, f);
  ofWater(tell, given);
  ofStock(tell, given);
  return problems;
}

function ofResidual(tell: Tell, { facts, water_pH }: ChlorineGiven, { residualBand }: ChlorineFinding): void {
  const { residual_mg_per_L: residual, dose_mg_per_L: dose } = facts;
  const column = 'residual_mg_per_L';
  if (residual === null) {
    tell('chlorine.residual_unknown', column);
    return;
  }
  const wanted_mg_per_L = residualAfterWait_mg_per_L(water_pH ?? 0);
  if (residualBand === 'none' || residualBand === 'low')
    tell('chlorine.residual_low', column, { residual_mg_per_L: residual, wanted_mg_per_L });
  if (residualBand === 'high' || residualBand === 'tooHigh')
    tell('chlorine.residual_high', column, {
      residual_mg_per_L: residual,
      wanted_mg_per_L,
      most_mg_per_L: mostDrunk_mg_per_L,
      drinkable: residualBand === 'high' ? 'yes' : 'no',
    });
  if (dose !== null && residual > dose)
    tell('chlorine.residual_over_dose', column, { residual_mg_per_L: residual, dose_mg_per_L: dose });
}

function ofContact(tell: Tell, { facts }: ChlorineGiven, { wait_min }: ChlorineFinding): void {
  const { contact_min } = facts;
  if (contact_min === null) tell('chlorine.contact_unknown', 'contact_min');
  else if (wait_min !== null && contact_min < wait_min)
    tell('chlorine.contact_short', 'contact_min', { contact_min, wait_min });
}

function ofWater(tell: Tell, given: ChlorineGiven): void {
  const { facts, water_pH, temperature_C, turbidity_NTU, isTemperatureAssumed } = given;
  if (isTemperatureAssumed) tell('chlorine.temperature_unknown', 'waterTemperature_C', { value: temperature_C });
  if (water_pH === null) tell('chlorine.ph_unknown', 'pH');
  else {
    const { outside } = giardiaCt(temperature_C, water_pH, facts.residual_mg_per_L ?? 1);
    // No chlorine left is told as that, and not as a hole of the table.
    if (outside === 'acidity' || outside === 'temperature')
      tell('chlorine.outside_table', outside === 'acidity' ? 'pH' : 'waterTemperature_C', {
        outside,
        value: outside === 'acidity' ? water_pH : temperature_C,
      });
    if (water_pH >= slowFrom_pH) tell('chlorine.ph_high', 'pH', { value: water_pH });
  }
  if (turbidity_NTU === null) tell('chlorine.turbidity_unknown', 'turbidity_NTU');
  else if (turbidity_NTU >= mostForChlorine_NTU)
    tell('chlorine.too_turbid', 'turbidity_NTU', { turbidity_NTU, most_NTU: mostForChlorine_NTU });
}

function ofStock(tell: Tell, { facts, active_fraction }: ChlorineGiven): void {
  const { product, stock_g_per_L } = facts;
  const isLiquid = product === 'bleach';
  // What is made of a liquid is never stronger than the liquid itself.
  const most_g_per_L = active_fraction === null ? null : active_fraction * g_per_kg;
  if (isLiquid && stock_g_per_L !== null && most_g_per_L !== null && stock_g_per_L > most_g_per_L)
    tell('chlorine.stock_differs', 'stock_g_per_L', { stock_g_per_L, most_g_per_L });
  if (isLiquid && active_fraction !== null)
    tell('chlorine.stock_recipe', 'product', {
      recipe_mL: bleachRecipe_mL,
      makes_g_per_L: stockMadeUp_g_per_L(bleachRecipe_mL, active_fraction, 1),
    });
}
