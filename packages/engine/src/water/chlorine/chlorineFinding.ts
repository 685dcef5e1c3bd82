import type { ChlorineFinding, DesignSettings, Judged, Reductions, SiteFacts } from '../../kernel/index.ts';
import { type ChlorineGiven, chlorineGiven } from './chlorineGiven.ts';
import { chlorineProblems } from './chlorineProblems.ts';
import { chlorineWorking } from './chlorineWorking.ts';
import { onePercent_g_per_L } from './constants.ts';
import { giardiaCt } from './giardiaCt.ts';
import { giardiaCtSmith } from './giardiaRegression.ts';
import {
  contactCt_mg_min_per_L,
  cryptosporidiumInactivation_log,
  giardiaInactivation,
  virusInactivation,
} from './inactivation.ts';
import { chlorineWait_min, clarityForChlorine, residualBand } from './residual.ts';
import { productMadeUp_g, stockForDose_mL } from './stock.ts';

/**
 * What does chlorine do at a site? Contact by the free chlorine left after it, the logs that earns by the table read on the safe side, and what to measure out.
 * Water too turbid for chlorine is credited nothing; Cryptosporidium next to nothing ever.
 *
 * @param site - the site's facts: its chlorination, and acidity [pH], temperature [C] and turbidity [NTU] of its samples
 * @param settings - temperature of the water [C] and turbidity of roof water [NTU], where the site states none
 * @returns contact [mg·min/L], log reductions [log10] and doses [mL]; null where water is not chlorinated there
 * @problem chlorine.residual_unknown - free chlorine was not measured
 * @problem chlorine.contact_unknown - how long it works is not known
 * @problem chlorine.contact_short - people draw before it has worked
 * @problem chlorine.ph_unknown - acidity was not measured
 * @problem chlorine.temperature_unknown - temperature is that of the settings
 * @problem chlorine.outside_table - acidity, temperature or chlorine are outside the table
 * @problem chlorine.residual_low - too little is left
 * @problem chlorine.residual_high - more is left than wanted, or than may be drunk
 * @problem chlorine.residual_over_dose - more is left than was given
 * @problem chlorine.ph_high - alkaline water: chlorine works slower
 * @problem chlorine.too_turbid - too turbid for chlorine
 * @problem chlorine.turbidity_unknown - turbidity is not known
 * @problem chlorine.stock_differs - the stock is stronger than what it is made of
 * @problem chlorine.stock_recipe - a recipe that is often mixed too strong
 * @definition ours: docs/decisions/0219-what-chlorine-is-credited.md
 */
export function chlorineFinding(site: SiteFacts, settings: DesignSettings): Judged<ChlorineFinding> {
  const { chlorination } = site.safety;
  if (chlorination === null) return { finding: null, problems: [], working: [] };
  const given = chlorineGiven(site, chlorination, settings);
  const finding = findingOf(given);
  return {
    finding,
    problems: chlorineProblems(site.siteId, given, finding),
    working: chlorineWorking(given, finding),
  };
}

function findingOf(given: ChlorineGiven): ChlorineFinding {
  const { facts, water_pH, temperature_C, turbidity_NTU } = given;
  const { residual_mg_per_L: residual, contact_min } = facts;
  const ct =
    residual === null || contact_min === null
      ? null
      : contactCt_mg_min_per_L(residual, contact_min, given.baffling_ratio);
  const logs = logsOf(given, ct);
  const isTooTurbid = turbidity_NTU === null ? null : clarityForChlorine(turbidity_NTU) === 'tooTurbid';
  const isReadable = water_pH !== null && residual !== null;
  return {
    ct_mg_min_per_L: ct,
    ctForGiardia_mg_min_per_L: isReadable ? giardiaCt(temperature_C, water_pH, residual).ct_mg_min_per_L : null,
    ctForGiardiaRegression_mg_min_per_L: isReadable
      ? giardiaCtSmith(temperature_C, water_pH, residual).ct_mg_min_per_L
      : null,
    ...logs,
    ...stockOf(given),
    residualBand: residual === null ? null : residualBand(residual, 'treated', water_pH),
    wait_min: water_pH === null ? null : chlorineWait_min(water_pH),
    isTooTurbid,
    credited: creditedOf(ct, logs.viruses_log10, isTooTurbid),
  };
}

/** Tenfold steps by the tables; null where something is not known or outside them. No chlorine left earns none. */
function logsOf({ facts, water_pH, temperature_C }: ChlorineGiven, ct: number | null) {
  if (ct === 0) return { giardia_log10: 0, viruses_log10: 0 };
  if (ct === null || water_pH === null) return { giardia_log10: null, viruses_log10: null };
  return {
    giardia_log10: giardiaInactivation(ct, temperature_C, water_pH, facts.residual_mg_per_L!).reached_log,
    viruses_log10: virusInactivation(ct, temperature_C, water_pH).reached_log,
  };
}

/** Bacteria die at least as fast as viruses; of protozoa the toughest counts. */
function creditedOf(ct: number | null, viruses: number | null, isTooTurbid: boolean | null): Reductions {
  const log10 = isTooTurbid ? 0 : (viruses ?? 0);
  // Where the acidity is not known, or outside the tables, nothing is told of any germ.
  const protozoa_log10 = isTooTurbid || viruses === null ? 0 : cryptosporidiumInactivation_log(ct ?? 0);
  return { bacteria_log10: log10, viruses_log10: log10, protozoa_log10 };
}

function stockOf({ facts, active_fraction }: ChlorineGiven) {
  const { dose_mg_per_L, batch_L, stock_g_per_L } = facts;
  const isDosed = dose_mg_per_L !== null && batch_L !== null && stock_g_per_L !== null;
  return {
    stock_mL: isDosed ? stockForDose_mL(dose_mg_per_L, batch_L, stock_g_per_L) : null,
    product_per_L: active_fraction === null ? null : productMadeUp_g(onePercent_g_per_L, 1, active_fraction),
  };
}
