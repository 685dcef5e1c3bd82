import {
  doseThatInfects_organisms,
  exactBetaPoisson_fraction,
  infection_fraction,
  neededReduction_log10,
  referencePathogens,
  yearlyBurden,
  yearlyInfection_fraction,
} from '../../packages/engine/src/water/safety/index.ts';
import type { PublishedFile, PublishedRow } from './published.ts';

const yearOf = (infected_fraction: number) => yearlyInfection_fraction([{ days: 365, infected_fraction }]);
const ppm = 1e6;
const perTenThousand = 1e4;

interface ChainExample {
  readonly name: 'cryptosporidium' | 'campylobacter';
  readonly raw_per_L: number;
  readonly drunk_per_L: number;
  readonly printed: Readonly<Record<'day' | 'year' | 'ill' | 'burden' | 'needed', string>>;
  readonly rounded?: Readonly<Record<'ill' | 'needed', { readonly value: number; readonly reason: string }>>;
}

/** WHO's example of raw water and tolerable burden, row by row, one litre a day. */
function chain({ name, raw_per_L, drunk_per_L, printed, rounded }: ChainExample): readonly PublishedRow[] {
  const pathogen = referencePathogens[name];
  const day = () => infection_fraction(drunk_per_L, pathogen.response);
  const year = () => yearlyBurden(yearOf(day()), pathogen);
  const steps = [
    ['day', 'infected in a day [in a million]', 'infection_fraction', () => day() * ppm],
    ['year', 'infected in a year [in ten thousand]', 'yearlyInfection_fraction', () => yearOf(day()) * perTenThousand],
    ['ill', 'ill in a year [in ten thousand]', 'yearlyBurden', () => year().ill_fraction * perTenThousand],
    ['burden', 'DALY in a million people and year', 'yearlyBurden', () => year().burden_DALY_per_person_per_year * ppm],
    ['needed', 'log reduction needed', 'neededReduction_log10', () => neededReduction_log10(raw_per_L, 1, pathogen)],
  ] as const;
  return steps.map(([step, place, method, got]) => ({
    place: `Table 7.4, ${name}, ${place}`,
    inputs: { raw_per_L, drunk_per_L, drunk_L_per_day: 1 },
    printed: printed[step],
    got,
    method,
    fromMemory: true,
    ...(rounded && (step === 'ill' || step === 'needed') ? { tolerance: rounded[step] } : {}),
  }));
}

export const whoBurden: PublishedFile = {
  source: 'who-gdwq-4',
  method: 'neededReduction_log10',
  rows: [
    ...chain({
      name: 'cryptosporidium',
      raw_per_L: 10,
      drunk_per_L: 1.3e-5,
      printed: { day: '2.6', year: '9.5', ill: '6.7', burden: '1', needed: '5.89' },
      rounded: {
        ill: { value: 0.065, reason: 'the table goes on from its rounded 9.5 in ten thousand: unrounded it is 6.64' },
        needed: { value: 0.007, reason: 'the table goes back from its rounded 1.3e-5 in a litre: exactly it is 5.884' },
      },
    }),
    ...chain({
      name: 'campylobacter',
      raw_per_L: 100,
      drunk_per_L: 1.05e-4,
      printed: { day: '2.0', year: '7.3', ill: '2.2', burden: '1', needed: '5.98' },
    }),
    {
      place: 'Table 7.4, rotavirus, log reduction needed',
      inputs: { raw_per_L: 10, drunk_L_per_day: 1 },
      printed: '5.96',
      got: () => neededReduction_log10(10, 1, referencePathogens.rotavirus),
      fromMemory: true,
    },
  ],
};

/** The dose that infects half of the people, as printed. */
export const halfInfected: PublishedFile = {
  source: 'qmra-wiki',
  method: 'doseThatInfects_organisms',
  rows: [
    {
      place: 'Cryptosporidium parvum, k = 0.00419, dose for half [organisms]',
      inputs: { perOrganism_fraction: 0.00419 },
      printed: '165.4',
      got: () => doseThatInfects_organisms(0.5, { form: 'exponential', perOrganism_fraction: 0.00419 }),
    },
    {
      place: 'rotavirus, alpha = 0.253 and beta = 0.426, dose for half [organisms]',
      inputs: { alpha_shape: 0.253, beta_shape: 0.426 },
      printed: '6.17',
      got: () => doseThatInfects_organisms(0.5, referencePathogens.rotavirus.response),
      fromMemory: true,
    },
  ],
};

export const halfInfectedCampylobacter: PublishedFile = {
  source: 'who-iwa-2012',
  method: 'doseThatInfects_organisms',
  rows: [
    {
      place: 'page 392, Campylobacter, alpha = 0.145 and beta = 7.589, dose for half [organisms]',
      inputs: { alpha_shape: 0.145, beta_shape: 7.589 },
      printed: '897',
      got: () => doseThatInfects_organisms(0.5, { form: 'betaPoisson', alpha_shape: 0.145, beta_shape: 7.589 }),
    },
  ],
};

export const calledExact: PublishedFile = {
  source: 'opasnet',
  method: 'exactBetaPoisson_fraction',
  rows: [
    {
      place: 'beta-Poisson called exact, 1 − e^(−α ÷ (α + β) · dose): rotavirus, α = 0.167, β = 0.191, one organism',
      inputs: { dose_organisms: 1, alpha_shape: 0.167, beta_shape: 0.191 },
      printed: '0.373',
      got: () => exactBetaPoisson_fraction(1, 0.167, 0.191),
      follows: {
        value: 0.3153465,
        tolerance: 5e-8,
        reason: 'the expression printed is the limit for small doses; the confluent function itself gives 0.3153',
      },
    },
  ],
};

/** Giardia of roof tanks: infections among ten thousand people a year who drink a litre a day, at the least and the most cysts found. */
const giardia = { form: 'exponential', perOrganism_fraction: 0.0199 } as const;

export const roofGiardia: PublishedFile = {
  source: 'ahmed-2009',
  method: 'yearlyInfection_fraction',
  rows: (
    [
      [0.6, '44', 9872],
      [3.6, '250', 10_000],
    ] as const
  ).map(([cysts_per_L, printed, value]) => ({
    place: `Giardia, ${cysts_per_L} cysts/L drunk daily, infected in a year [in ten thousand]`,
    inputs: { cysts_per_L, drunk_L_per_day: 1, perOrganism_fraction: 0.0199 },
    printed,
    got: () => yearOf(infection_fraction(cysts_per_L, giardia)) * perTenThousand,
    follows: {
      value,
      tolerance: 0.5,
      reason:
        'one litre a day of such water infects 1.2 and 6.9 % of people a day; the figure printed needs a thousandth of the dose',
    },
  })),
};
