import type { ChlorinationFacts, DesignSettings, SiteFacts, WaterTest } from '../../kernel/index.ts';
import { activeChlorine_fraction, baffling_ratio } from './constants.ts';

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

/** Gathers it. A measured figure comes before a stated one of the programme; of several the last. */
export function chlorineGiven(site: SiteFacts, facts: ChlorinationFacts, settings: DesignSettings): ChlorineGiven {
  const { tests } = site.safety;
  const ofTest = (pick: (test: WaterTest) => number | null) =>
    tests
      .filter(({ point }) => point !== 'secondSource')
      .map(pick)
      .findLast((value) => value !== null) ?? null;
  const measured_C = facts.waterTemperature_C ?? ofTest(({ waterTemperature_C }) => waterTemperature_C);
  const { product } = facts;
  const usual =
    product === null || product === 'tablets' || product === 'other' ? null : activeChlorine_fraction[product];
  return {
    facts,
    water_pH: facts.pH ?? ofTest(({ pH }) => pH),
    temperature_C: measured_C ?? settings.waterTemperature_C,
    isTemperatureAssumed: measured_C === null,
    turbidity_NTU: ofTest(({ turbidity_NTU }) => turbidity_NTU) ?? settings.roofTurbidity_NTU,
    baffling_ratio: facts.baffling_fraction ?? baffling_ratio.unbaffled,
    active_fraction: facts.active_fraction ?? usual,
  };
}
