import { priceMoved } from '../../packages/engine/src/parts/index.ts';
import {
  boilingHeat_kJ_per_L,
  type CostItem,
  capitalRecovery,
  doubtful,
  levelPresentValue,
  presentValue,
  usedHeat_MJ_per_kg,
  wholeLife,
} from '../../packages/engine/src/programme/cost/index.ts';
import type { PublishedFile, PublishedRow } from './published.ts';

/** Yearly amounts that rise by 1 from nothing at the end of the first year: a gradient series. */
const gradient = (years: number) =>
  Array.from({ length: years }, (_, year) => ({ amount: year, after_years: year + 1 }));

/** The five factors of a table of interest, each by a function of the engine. */
const factors = {
  'A/P': { method: 'capitalRecovery', of: (i: number, n: number) => capitalRecovery(i, n) },
  'P/A': { method: 'levelPresentValue', of: (i: number, n: number) => levelPresentValue(i, n) },
  'F/A': {
    method: 'presentValue',
    of: (i: number, n: number) => presentValue(level(n), i) / presentValue([{ amount: 1, after_years: n }], i),
  },
  'P/G': { method: 'presentValue', of: (i: number, n: number) => presentValue(gradient(n), i) },
  'A/G': { method: 'presentValue', of: (i: number, n: number) => presentValue(gradient(n), i) * capitalRecovery(i, n) },
} as const;
const level = (years: number) => Array.from({ length: years }, (_, year) => ({ amount: 1, after_years: year + 1 }));

const factorRow = (
  name: keyof typeof factors,
  i: number,
  n: number,
  printed: string,
  more: Partial<PublishedRow> = {},
): PublishedRow => ({
  place: `${name}, ${i * 100} %, n = ${n}`,
  inputs: { i, n },
  printed,
  got: () => factors[name].of(i, n),
  method: factors[name].method,
  ...more,
});

const quarterPercent: PublishedFile = {
  source: 'interest-table-quarter',
  method: 'capitalRecovery',
  rows: [
    factorRow('A/P', 0.0025, 10, '0.10138'),
    factorRow('A/P', 0.0025, 24, '0.04298'),
    factorRow('P/A', 0.0025, 10, '9.8639'),
    factorRow('P/A', 0.0025, 24, '23.266'),
    factorRow('F/A', 0.0025, 10, '10.11325'),
    factorRow('F/A', 0.0025, 24, '24.70282'),
    factorRow('P/G', 0.0025, 10, '44.1842'),
    factorRow('P/G', 0.0025, 24, '264.7753'),
    factorRow('A/G', 0.0025, 10, '4.4794'),
    factorRow('A/G', 0.0025, 24, '11.3804'),
  ],
};

const thirtyFivePercent: PublishedFile = {
  source: 'newnan-tables',
  method: 'capitalRecovery',
  rows: [
    factorRow('A/P', 0.35, 5, '0.4505'),
    factorRow('A/P', 0.35, 10, '0.3683'),
    factorRow('P/A', 0.35, 5, '2.22'),
    factorRow('P/A', 0.35, 10, '2.715'),
    factorRow('F/A', 0.35, 5, '9.954'),
    factorRow('F/A', 0.35, 10, '54.59'),
    factorRow('A/G', 0.35, 5, '1.422'),
    factorRow('A/G', 0.35, 10, '2.334'),
    factorRow('P/G', 0.35, 5, '3.157'),
    factorRow('P/G', 0.35, 10, '6.336'),
  ],
};

const handbook: PublishedFile = {
  source: 'ncees-fe-handbook',
  method: 'capitalRecovery',
  rows: (
    [
      [0.1, 10, '0.1627'],
      [0.08, 10, '0.1490'],
      [0.08, 5, '0.2505'],
      [0.05, 20, '0.0802'],
      [0.1, 20, '0.1175'],
    ] as const
  ).map(([i, n, printed]) => factorRow('A/P', i, n, printed, { fromMemory: true })),
};

const escalation: PublishedFile = {
  source: 'uc-merced-engr155',
  method: 'priceMoved',
  rows: [
    {
      place: 'multiple choice question 2: 1,250 a foot in March 2018, in June 2021 at 3.5 % a year',
      inputs: { cost: 1250, change: 0.035, years: 3.25 },
      printed: '1398',
      got: () => priceMoved(1250, 0.035, 3.25 * 365.25),
    },
  ],
};

/** Money a person of a borehole with a hand pump, as WASHCost has it, with nothing but what it states. */
const boreholeItem = (head: CostItem['head'], amount: number, kind: 'once' | 'yearly'): CostItem => ({
  itemId: head,
  what: head,
  head,
  amount: doubtful(head, amount, null, null),
  reason: null,
  pieces_count: 1,
  timing: { kind },
});
const borehole = (items: readonly CostItem[]) =>
  wholeLife({
    ...{
      items,
      currency: 'USD',
      day: 0,
      years_count: 20,
      interest: null,
      people: null,
      growth_fraction_per_year: null,
    },
    ...{ design_people: null, workingService: null, draws: 1, seed: 1 },
  }).finding!;
const twentyYears = (capital: number, recurrent: number) =>
  borehole([boreholeItem('capExHardware', capital, 'once'), boreholeItem('opEx', recurrent, 'yearly')]).total_amount;
const recurrent = (opEx: number, capManEx: number, support: number) =>
  borehole([
    boreholeItem('opEx', opEx, 'yearly'),
    boreholeItem('capManEx', capManEx, 'yearly'),
    boreholeItem('directSupport', support, 'yearly'),
  ]).perYear_amount;

const washcost: PublishedFile = {
  source: 'washcost-infosheet-1',
  method: 'wholeLife',
  rows: [
    {
      place: 'borehole with hand pump, 20 years a person, low [US$ 2011]',
      inputs: { capital: 20, recurrent_per_year: 3, years: 20 },
      printed: '80',
      got: () => twentyYears(20, 3),
    },
    {
      place: 'the same, high',
      inputs: { capital: 61, recurrent_per_year: 6, years: 20 },
      printed: '181',
      got: () => twentyYears(61, 6),
    },
    {
      place: 'recurrent a person and year, low: running 0.5, capital maintenance 1.5, direct support 1',
      inputs: { opEx: 0.5, capManEx: 1.5, directSupport: 1 },
      printed: '3',
      got: () => recurrent(0.5, 1.5, 1),
      fromMemory: true,
    },
    {
      place: 'the same, high: running 1, capital maintenance 2, direct support 3',
      inputs: { opEx: 1, capManEx: 2, directSupport: 3 },
      printed: '6',
      got: () => recurrent(1, 2, 3),
      fromMemory: true,
    },
  ],
};

const boiling: PublishedFile = {
  source: 'ams-iii-av',
  method: 'boilingHeat_kJ_per_L',
  rows: [
    {
      place: 'equation 5, heat to boil a litre [kJ/L]',
      inputs: { before_C: 20, boiling_C: 100, evaporated: 0.01 },
      printed: '357.48',
      got: () => boilingHeat_kJ_per_L(20),
    },
  ],
};

const fuels: readonly (readonly [string, number, number, string])[] = [
  ['wood, open fire, low', 18, 0.1, '1.8'],
  ['wood, open fire, high', 18, 0.15, '2.7'],
  ['wood, improved stove, low', 18, 0.25, '4.5'],
  ['wood, improved stove, high', 18, 0.55, '9.9'],
  ['charcoal, traditional stove, low', 29, 0.15, '4.4'],
  ['charcoal, traditional stove, high', 29, 0.2, '5.8'],
  ['charcoal, improved stove, low', 29, 0.25, '7.3'],
  ['charcoal, improved stove, high', 29, 0.35, '10.2'],
  ['bottled gas, low', 46, 0.55, '25.3'],
  ['bottled gas, high', 46, 0.65, '29.9'],
  ['kerosene, low', 44, 0.5, '22.0'],
  ['kerosene, high', 44, 0.65, '28.6'],
];

const fuelTable: PublishedFile = {
  source: 'boiling-point-28',
  method: 'usedHeat_MJ_per_kg',
  rows: fuels.map(([place, heat, share, printed]) => ({
    place: `${place} [MJ/kg]`,
    inputs: { heat, share },
    printed,
    got: () => usedHeat_MJ_per_kg(heat, share),
  })),
};

export const costFiles: readonly PublishedFile[] = [
  quarterPercent,
  thirtyFivePercent,
  handbook,
  escalation,
  washcost,
  boiling,
  fuelTable,
];
