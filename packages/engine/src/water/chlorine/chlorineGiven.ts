import type { ChlorinationFacts, DesignSettings, SiteFacts, WaterTest } from '../../kernel/index.ts';
import { activeChlorine_fraction, baffling_ratio, largestFigure_ratio } from './constants.ts';

/** What chlorine is judged by, with what samples and settings say where the row of the site does not. */
export interface ChlorineGiven {
  readonly facts: ChlorinationFacts;
  readonly water_pH: number | null;
  readonly temperature_C: number;
  /** Nobody measured it there: it is that of the settings. */
  readonly isTemperatureAssumed: boolean;
  readonly turbidity_NTU: number | null;
  readonly baffling_ratio: number;
  /** Active chlorine of the product, as stated or usual. */
  readonly active_fraction: number | null;
}

/** Gathers it. A measured figure comes before a stated one of the programme; of several the last. A figure nobody can reckon with is one that is not known. */
export function chlorineGiven(site: SiteFacts, stated: ChlorinationFacts, settings: DesignSettings): ChlorineGiven {
  const { tests } = site.safety;
  const ofTest = (pick: (test: WaterTest) => number | null) =>
    tests
      .filter(({ point }) => point !== 'secondSource')
      .map((test) => usable(pick(test)))
      .findLast((value) => value !== null) ?? null;
  const facts = usableFacts(stated);
  const measured_C = facts.waterTemperature_C ?? ofTest(({ waterTemperature_C }) => waterTemperature_C);
  const { product } = facts;
  const usual =
    product === null || product === 'tablets' || product === 'other' ? null : activeChlorine_fraction[product];
  return {
    facts,
    water_pH: facts.pH ?? ofTest(({ pH }) => pH),
    temperature_C: measured_C ?? settings.waterTemperature_C,
    isTemperatureAssumed: measured_C === null,
    turbidity_NTU: worst_NTU(ofTest(({ turbidity_NTU }) => turbidity_NTU) ?? settings.roofTurbidity_NTU, site),
    baffling_ratio: facts.baffling_fraction ?? baffling_ratio.unbaffled,
    active_fraction: facts.active_fraction ?? usual,
  };
}

/** On the days of a second source its own turbidity counts, where neither unit nor filter is there to clear it before. */
function worst_NTU(own_NTU: number | null, { secondSource, treatment, safety }: SiteFacts): number | null {
  const source_NTU = usable(secondSource?.turbidity_NTU ?? null);
  const isCleared =
    treatment.units.some(({ removedOn }) => removedOn === null) ||
    safety.barriers.some(({ kind }) => kind === 'filter');
  return isCleared || source_NTU === null ? own_NTU : Math.max(source_NTU, own_NTU ?? 0);
}

function usableFacts(stated: ChlorinationFacts): ChlorinationFacts {
  return {
    product: stated.product,
    active_fraction: share(stated.active_fraction),
    stock_g_per_L: above0(stated.stock_g_per_L),
    dose_mg_per_L: usable(stated.dose_mg_per_L),
    residual_mg_per_L: usable(stated.residual_mg_per_L),
    contact_min: usable(stated.contact_min),
    baffling_fraction: share(stated.baffling_fraction),
    pH: usable(stated.pH),
    waterTemperature_C: usable(stated.waterTemperature_C),
    batch_L: usable(stated.batch_L),
  };
}

/** None of these is ever under 0 or beyond all measure. */
function usable(value: number | null): number | null {
  return value !== null && value >= 0 && value <= largestFigure_ratio ? value : null;
}

function above0(value: number | null): number | null {
  const own = usable(value);
  return own !== null && own >= 1 / largestFigure_ratio ? own : null;
}

function share(value: number | null): number | null {
  const own = above0(value);
  return own !== null && own <= 1 ? own : null;
}
