import type { Row } from './draft.ts';

/**
 * The treatment units of the demo's catalogue. Three cartridges, pores of about 15 nm, some 2,000,000 L a set over two to three years: common practice, no source. All else is
 * invented, and the tests that are named say so.
 */
const figures: Row = {
  ...{ cartridges: 3, membraneArea_m2: 9, permeability_L_per_m2_h_bar: 250, pore_nm: 15 },
  ...{ ratedFlow_L_per_h: 900, ratedPressure_kPa: 40, highestPressure_kPa: 200 },
  ...{ ratedLitres_L: 2_000_000, ratedTurbidity_NTU: 1, highestTurbidity_NTU: 80, lifeLimit_years: 3 },
  ...{ lowestFlow_L_per_h: 360, backwash_fraction: 0.02, backwash_min_per_day: 5 },
  ...{ pistonBore_mm: 60, pistonStroke_mm: 120, leverRatio: 4 },
};

/** Parts of the catalogue that units may be. */
export const unitParts = { plain: 'unit-hand', virusTested: 'unit-hand-v', old: 'unit-old' } as const;

/** What is told of each unit beside its size and price: one of which nobody tested what viruses it lets through, and one of which somebody did. */
export const unitFigures = {
  plain: {
    ...figures,
    ...{ bacteria_log10: 6, protozoa_log10: 4, evidence: 'challengeTest' },
    evidenceSource: 'invented: challenge test of the demo, 2023, without viruses',
  },
  virusTested: {
    ...figures,
    ...{ bacteria_log10: 6, viruses_log10: 4, protozoa_log10: 4, evidence: 'challengeTest' },
    evidenceSource: 'invented: challenge test of the demo, 2024, with viruses',
  },
} as const satisfies Record<string, Row>;

/** A cartridge of a set, as the catalogue has it. */
export const cartridgePart = 'cartridge-set';

/** A set passes so much clean at the rated pressure and 20 °C [L/h], and is rated at this pressure [kPa]. */
export const [cleanFlow_L_per_h, rated_kPa] = [900, 40] as const;
