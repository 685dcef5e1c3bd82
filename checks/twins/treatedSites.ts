import type { ProgrammeTables } from '@eavewell/formats';

type Tables = ProgrammeTables['tables'];
type Row = NonNullable<Tables['sites']>[number];

/** A made-up unit of three cartridges; its tests are made up with it. */
const unitPart: Row = {
  ...{ partId: 'unit-made-up', kind: 'treatmentUnit', name: 'Made-up unit', cartridges: 3, membraneArea_m2: 9 },
  ...{ ratedFlow_L_per_h: 600, ratedPressure_kPa: 60, highestPressure_kPa: 200, pore_nm: 15, ratedLitres_L: 2_000_000 },
  ...{ ratedTurbidity_NTU: 5, highestTurbidity_NTU: 50, lifeLimit_years: 3, lowestFlow_L_per_h: 150 },
  ...{ backwash_fraction: 0.02, backwash_min_per_day: 5, pistonBore_mm: 60, pistonStroke_mm: 120, leverRatio: 4 },
  ...{ bacteria_log10: 6, protozoa_log10: 6, evidence: 'challengeTest', evidenceSource: 'Made-up test of 2024' },
};

/** What is told of one site: all of it, or less the higher its number. */
function told(siteId: string, i: number): Partial<Record<keyof Tables, readonly Row[]>> {
  const serial = `U-${i}`;
  return {
    treatmentUnits: [{ siteId, serial, partId: i % 7 === 6 ? null : 'unit-made-up', installedOn: '2025-03-01' }],
    cartridges: [{ siteId, serial: `C-${i}`, unitSerial: serial, batch: 'made up', installedOn: '2025-09-15' }],
    flowReadings: [
      { siteId, unitSerial: null, readOn: '2026-02-10', flow_L_per_h: 420 + i, pressure_kPa: 58, passed_L: 90_000 },
      { siteId, unitSerial: serial, readOn: '2025-12-01', flow_L_per_h: 510, waterTemperature_C: 24.5 },
    ],
    pressureTests: [
      { siteId, unitSerial: serial, testedOn: '2026-01-20', pressure_kPa: 80, fall_kPa_per_min: 0.4, airVolume_L: 2 },
    ],
    barriers: [
      { siteId, barrierId: 'B1', kind: 'boiling', bacteria_log10: 6, evidence: 'credited', used_fraction: 0.3 },
    ],
    waterTests: [
      { siteId, testId: 'W1', takenOn: '2025-06-01', point: 'tap', turbidity_NTU: 0.8, pH: 7.1 },
      { siteId, testId: 'W2', takenOn: '2026-03-01', point: 'container', freeChlorine_mg_per_L: 0.3 },
    ],
    testPortions: [
      { siteId, testId: 'W1', kind: 'tubes', volume_mL: 10, portions: 5, positive: i % 3 === 2 ? 2 : 0 },
      { siteId, testId: 'W2', kind: 'plates', volume_mL: 100, portions: 1, colonies: i % 5 === 4 ? 3 : 0 },
    ],
    inspections: [{ siteId, inspectedOn: '2026-02-01', risks: i % 10, questions: 10, by: 'Made up' }],
    chlorination: i % 4 === 3 ? [{ siteId, product: 'bleach', active_fraction: 0.05, residual_mg_per_L: 0.4 }] : [],
    rawWater: i % 2 === 1 ? [{ siteId, pathogen: 'campylobacter', typical_per_L: 12, source: 'Made up' }] : [],
  };
}

const ofAll: readonly Row[] = [
  { pathogen: 'campylobacter', typical_per_L: 5, low_per_L: 1, high_per_L: 50, source: 'Made up' },
  { pathogen: 'rotavirus', typical_per_L: 0.1, low_per_L: 0.01, high_per_L: 1, source: 'Made up' },
  { pathogen: 'cryptosporidium', typical_per_L: 0.2, low_per_L: 0.02, high_per_L: 2, source: 'Made up' },
];

/**
 * Treatment, samples and raw water at every second site of a programme, all made up.
 *
 * @param tables - the programme's
 */
export function treated(tables: Tables): Partial<Tables> {
  const sites = tables.sites!.filter((_, i) => i % 2 === 0);
  const all = sites.map((row, i) => told(String(row['siteId']), i));
  const rows = (name: keyof Tables) => all.flatMap((one) => one[name] ?? []);
  return {
    parts: [...tables.parts!, unitPart],
    roofs: tables.roofs!.map((row, i) => ({ ...row, ...(i % 3 === 0 ? { coating: 'unknownPaint', lead: true } : {}) })),
    sites: tables.sites!.map((row, i) => ({
      ...row,
      altitude_m: 100 * i,
      ...(i % 4 === 0 ? { daysOff_per_year: 12 } : {}),
    })),
    treatmentUnits: rows('treatmentUnits'),
    cartridges: rows('cartridges'),
    flowReadings: rows('flowReadings'),
    pressureTests: rows('pressureTests'),
    barriers: rows('barriers'),
    waterTests: rows('waterTests'),
    testPortions: rows('testPortions'),
    inspections: rows('inspections'),
    chlorination: rows('chlorination'),
    rawWater: [...ofAll, ...rows('rawWater')],
  };
}
