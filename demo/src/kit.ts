import type { Row } from './draft.ts';
import { cartridgePart, unitParts } from './units.ts';

/** The day the demo's store was counted. */
const countedOn = '2026-02-16';

/** A small part that a crew takes along. Every size, mass and price is made up. */
export const crewParts = [
  crew('gutter-joint', 'joint for gutters, with seal', 0.3, [0.2, 0.18, 0.1], 10, 3.5, 15),
  crew('coupling-26', 'coupling for water pipe, 26 mm', 0.1, [0.08, 0.05, 0.05], 20, 1.2, 20),
  crew('elbow-26', 'elbow for water pipe, 26 mm', 0.1, [0.08, 0.06, 0.05], 20, 1.4, 20),
  {
    ...crew('cement-25', 'cement, 25 kg', 25, [0.6, 0.4, 0.12], 1, 9, null),
    ...{ leadTime_days: 14, stock_count: 180 },
  },
  crew('blocks-6', 'concrete blocks, bundle of 6', 24, [0.4, 0.4, 0.3], 1, 8.4, 25),
  crew('sealant', 'sealant, tube', 0.4, [0.25, 0.06, 0.06], 12, 4.8, 2),
  crew('screws-100', 'roofing screws, box of 100', 0.9, [0.16, 0.1, 0.08], 10, 11, 10),
  { ...crew('sample-bottles', 'bottles for samples, glass, box of 6', 2.2, [0.3, 0.2, 0.2], 1, 14, 3), fragile: true },
  {
    ...crew('hypochlorite-1', 'calcium hypochlorite, tin of 1 kg', 1.1, [0.12, 0.12, 0.16], 12, 7.5, 2),
    danger: 'chlorine',
  },
  { ...crew('petrol-20', 'petrol for the drill, can of 20 L', 17, [0.36, 0.18, 0.45], 1, 31, null), danger: 'fuel' },
  crew('toolbox', 'tools of a crew, box', 14, [0.6, 0.3, 0.3], 1, 240, 8),
  crew('caretaker-sheet', "caretaker's picture sheet, on board", 0.5, [0.42, 0.3, 0.01], 25, 3, 15),
] as const;

function crew(
  partId: string,
  name: string,
  mass_kg: number,
  [length_m, width_m, height_m]: readonly [number, number, number],
  packSize: number,
  amount: number,
  life_years: number | null,
) {
  const sold = { packSize, supplier: 'Works store', leadTime_days: 21 };
  return { partId, kind: 'other', name, mass_kg, length_m, width_m, height_m, ...sold, life_years, amount };
}

/** How long parts of a kind serve, in years. Invented. */
const lives: Readonly<Record<string, number>> = {
  tank: 15,
  gutter: 12,
  outlet: 12,
  downpipe: 12,
  diverter: 10,
  screen: 4,
  overflow: 15,
  pipe: 20,
  valve: 8,
  tap: 3,
  treatmentUnit: 12,
};

/** What lies in the store, of the parts that are counted. */
const stock: Readonly<Record<string, number>> = {
  'gutter-4m': 140,
  'downpipe-3m': 90,
  'diverter-pipe': 31,
  [unitParts.plain]: 9,
  [cartridgePart]: 14,
  'pipe-26': 64,
  'tap-20': 50,
  'tank-4500': 6,
  'tank-7500': 4,
  'sample-bottles': 12,
  'hypochlorite-1': 40,
  toolbox: 6,
};

/**
 * What the store and the years say of a part.
 *
 * @param part - a part of the catalogue
 */
export function withStock(part: Row): Row {
  const [partId, kind] = [String(part['partId']), String(part['kind'])];
  const counted = stock[partId];
  return {
    ...part,
    life_years: part['life_years'] ?? lives[kind] ?? null,
    ...(kind === 'treatmentUnit' ? { fragile: true } : {}),
    ...(counted === undefined ? {} : { stock_count: counted, stockCountedOn: countedOn }),
  };
}

type Condition = readonly [field: string, test: string, value: string | number];

const gutterSizes: readonly (readonly [partId: string, conditions: readonly Condition[]])[] = [
  [
    'gutter-4m',
    [
      ['gutterShape', 'is', 'halfRound'],
      ['gutterWidth_mm', 'atMost', 160],
    ],
  ],
  [
    'gutter-half-200',
    [
      ['gutterShape', 'is', 'halfRound'],
      ['gutterWidth_mm', 'atLeast', 160.1],
      ['gutterWidth_mm', 'atMost', 210],
    ],
  ],
  [
    'gutter-half-250',
    [
      ['gutterShape', 'is', 'halfRound'],
      ['gutterWidth_mm', 'atLeast', 210.1],
    ],
  ],
  ['gutter-box-200', [['gutterShape', 'is', 'rectangular']]],
  ['gutter-wide-240', [['gutterShape', 'is', 'trapezoidal']]],
];
const downpipeSizes: readonly (readonly [string, readonly Condition[]])[] = [
  ['downpipe-3m', [['downpipeBore_mm', 'atMost', 95]]],
  [
    'downpipe-110-3m',
    [
      ['downpipeBore_mm', 'atLeast', 95.1],
      ['downpipeBore_mm', 'atMost', 120],
    ],
  ],
  ['downpipe-160-3m', [['downpipeBore_mm', 'atLeast', 120.1]]],
];
const pipeSizes: readonly (readonly [string, readonly Condition[]])[] = [
  ['pipe-20', [['pipeBore_mm', 'atMost', 22]]],
  [
    'pipe-26',
    [
      ['pipeBore_mm', 'atLeast', 22.1],
      ['pipeBore_mm', 'atMost', 29],
    ],
  ],
  [
    'pipe-33',
    [
      ['pipeBore_mm', 'atLeast', 29.1],
      ['pipeBore_mm', 'atMost', 36],
    ],
  ],
  ['pipe-41', [['pipeBore_mm', 'atLeast', 36.1]]],
];

interface Rule {
  readonly partId: string;
  readonly countedBy: string;
  readonly each_count: number;
  readonly spare_fraction?: number;
  readonly leastSpare_count?: number;
  readonly conditions?: readonly Condition[];
}

const sized = (sizes: readonly (readonly [string, readonly Condition[]])[], countedBy: string): readonly Rule[] =>
  sizes.map(([partId, conditions]) => ({ partId, countedBy, each_count: 1, conditions }));

const rules: readonly Rule[] = [
  ...sized(gutterSizes, 'gutterMetre'),
  ...sized(downpipeSizes, 'downpipeMetre'),
  ...sized(pipeSizes, 'pipeMetre'),
  { partId: 'gutter-joint', countedBy: 'gutterJoint', each_count: 1, leastSpare_count: 1 },
  { partId: 'leaf-screen', countedBy: 'gutterOutlet', each_count: 1, leastSpare_count: 1 },
  { partId: 'diverter-pipe', countedBy: 'diverter', each_count: 1 },
  { partId: 'mosquito-screen', countedBy: 'overflow', each_count: 1 },
  { partId: 'coupling-26', countedBy: 'pipeJoint', each_count: 1, leastSpare_count: 2 },
  { partId: 'elbow-26', countedBy: 'elbow', each_count: 1, leastSpare_count: 1 },
  { partId: 'valve-26', countedBy: 'valve', each_count: 1 },
  { partId: 'tap-20', countedBy: 'tap', each_count: 1, leastSpare_count: 1 },
  {
    ...{ partId: 'cement-25', countedBy: 'stand', each_count: 4 },
    conditions: [['standHeight_m', 'atLeast', 0.2]],
  },
  {
    ...{ partId: 'blocks-6', countedBy: 'stand', each_count: 8 },
    conditions: [['standHeight_m', 'atLeast', 0.2]],
  },
  { partId: 'sealant', countedBy: 'roof', each_count: 1, leastSpare_count: 1 },
  { partId: 'screws-100', countedBy: 'gutterMetre', each_count: 0.05 },
  { partId: cartridgePart, countedBy: 'unit', each_count: 0, leastSpare_count: 1 },
  { partId: 'sample-bottles', countedBy: 'site', each_count: 1 },
  { partId: 'hypochlorite-1', countedBy: 'tank', each_count: 1 },
  { partId: 'petrol-20', countedBy: 'site', each_count: 1, conditions: [['people', 'atLeast', 180]] },
  { partId: 'toolbox', countedBy: 'site', each_count: 1 },
  { partId: 'caretaker-sheet', countedBy: 'site', each_count: 1 },
  // The first set of a unit; the rule above it brings the spare.
  { partId: cartridgePart, countedBy: 'cartridgeSet', each_count: 1 },
];

const ruleId = (index: number) => `K${String(index + 1).padStart(2, '0')}`;

/** The rules of the demo's kit, and where they hold. */
export function kitRuleRows(): { readonly kitRules: readonly Row[]; readonly kitConditions: readonly Row[] } {
  return {
    kitRules: rules.map(({ conditions: _, ...rule }, i) => ({ ruleId: ruleId(i), ...rule })),
    kitConditions: rules.flatMap(({ conditions = [] }, i) =>
      conditions.map(([field, test, value]) => ({ ruleId: ruleId(i), field, test, value: String(value) })),
    ),
  };
}

const harbour = { limitSetBy: 'harbour office, invented', limitSetOn: '2026-01-12' };

/** What carries kits in the demo. Every limit is made up. */
export const carrierRows: readonly Row[] = [
  { carrierId: 'person', name: 'one person', mode: 'person', limit_kg: 15, limit_L: 70, longest_m: 3, count: 8 },
  { carrierId: 'pair', name: 'two people', mode: 'twoPeople', limit_kg: 30, limit_L: 900, longest_m: 6, count: 4 },
  {
    ...{ carrierId: 'longboat', name: 'longboat, 9.6 m', mode: 'boat', limit_kg: 1200, limit_L: 6000, longest_m: 7 },
    ...{
      stowage_fraction: 0.8,
      length_m: 9.6,
      freeboard_cm: 38,
      freeboardEmpty_cm: 52,
      leastFreeboard_cm: 25,
      ...harbour,
    },
  },
  {
    ...{ carrierId: 'canoe', name: 'canoe with outrigger', mode: 'boat', limit_kg: 320, limit_L: 1400, longest_m: 4.5 },
    ...{ stowage_fraction: 0.8, freeboard_cm: 30, leastFreeboard_cm: 25, count: 3, ...harbour },
  },
  {
    ...{ carrierId: 'truck', name: 'truck', mode: 'truck', limit_kg: 3500, limit_L: 16000, longest_m: 6.2 },
    stowage_fraction: 0.85,
  },
  {
    ...{
      carrierId: 'pallet',
      name: 'pallet, 1.2 by 1 m',
      mode: 'pallet',
      limit_kg: 800,
      limit_L: 1800,
      longest_m: 1.2,
    },
    count: 40,
  },
  {
    ...{ carrierId: 'container', name: 'container, 6 m', mode: 'shippingContainer', limit_kg: 21000, limit_L: 33000 },
    ...{ longest_m: 5.85, stowage_fraction: 0.8 },
  },
  {
    ...{
      carrierId: 'coaster',
      name: 'coasting vessel, 17 m',
      length_m: 17,
      mode: 'boat',
      limit_kg: 9000,
      limit_L: 120000,
      longest_m: 9,
    },
    ...{ stowage_fraction: 0.85, freeboard_cm: 70, leastFreeboard_cm: 55, ...harbour },
    ...{ speed_km_per_h: 15, fuel_L_per_km: 1.6, cost_per_day: 130, currency: 'EUR', priceDate: '2026-01-20' },
  },
  {
    ...{
      carrierId: 'lighter',
      name: 'lighter of shallow draught, 13 m',
      length_m: 13,
      mode: 'boat',
      limit_kg: 5000,
      limit_L: 70000,
      longest_m: 8,
    },
    ...{ stowage_fraction: 0.85, freeboard_cm: 45, leastFreeboard_cm: 30, ...harbour },
    ...{ speed_km_per_h: 9, fuel_L_per_km: 0.9, cost_per_day: 55, currency: 'USD', priceDate: '2026-02-02' },
  },
  {
    ...{ carrierId: 'tractor', name: 'tractor with a flat trailer', mode: 'truck', limit_kg: 4500, limit_L: 70000 },
    ...{ longest_m: 7, stowage_fraction: 0.85, count: 3 },
    ...{ speed_km_per_h: 12, fuel_L_per_km: 0.4, cost_per_day: 48, currency: 'USD', priceDate: '2026-02-02' },
  },
];

/** The breath of fuel spoils samples: bottles do not travel with it. */
export const keptApartRows: readonly Row[] = [{ partId: 'sample-bottles', otherPartId: 'petrol-20' }];

const source = 'invented for the demo';

/** Rates of two days. */
export const rateRows: readonly Row[] = [
  { currency: 'EUR', day: '2025-01-15', perUnit: 1.05, source },
  { currency: 'EUR', day: '2026-01-15', perUnit: 1.12, source },
];

const stated = { currency: 'USD', priceDate: '2026-02-02', source };

/** What is spent beside parts. Invented. */
export const costRows: readonly Row[] = [
  cost('carrying', 'capExHardware', 'truck, boat and carrying', 'site', [420, 260, 780], 15),
  cost('crew', 'capExHardware', 'wages and food for crews', 'site', [860, 640, 1250], 15),
  cost('survey', 'capExSoftware', 'survey and design', 'site', [180, 120, 260], 15),
  cost('training', 'capExSoftware', 'committee and training for caretakers', 'site', [240, 160, 380], 15),
  cost('caretaker', 'opEx', 'thanks to the caretaker, cleaning', 'year', [75, 50, 120]),
  cost('tests', 'opEx', 'bottles and reagents for tests', 'year', [48, 30, 80]),
  cost('visits', 'directSupport', 'two visits a year', 'year', [130, 90, 210]),
  cost('office', 'indirectSupport', 'office, shared', 'personYear', [0.5, 0.3, 0.9]),
];

function cost(
  costId: string,
  head: string,
  what: string,
  per: string,
  [amount, low, high]: readonly [number, number, number],
  life_years: number | null = null,
): Row {
  return { costId, head, what, amount, low, high, per, life_years, ...stated };
}

/** Money and what people spend today. Invented. */
export const costSettings = {
  ...{ currency: 'USD', priceChange_fraction_per_year: 0.03, interest_fraction_per_year: 0.06 },
  ...{ inflation_fraction_per_year: 0.03, costYears: 15 },
  ...{ workingService_fraction: 0.85, workingServiceLow_fraction: 0.6, workingServiceHigh_fraction: 0.95 },
  ...{ boughtWater_L_per_person_per_day: 0.4, boughtWater_amount_per_L: 0.12 },
  ...{ boiledWater_L_per_person_per_day: 0.6, fuel_amount_per_kg: 0.15, fuelHeat_MJ_per_kg: 15 },
  ...{ stoveEfficiency_fraction: 0.1 },
  ...{ pipedScheme_amount_per_person: 180, pipedScheme_years: 20, pipedScheme_amount_per_person_per_year: 6 },
};
