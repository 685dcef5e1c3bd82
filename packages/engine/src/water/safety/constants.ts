import type { ReferencePathogen } from './germs.ts';

/** Days of a year on which water is drunk [days]. Source: who-gdwq-4, example of tolerable burden and raw water (from memory). */
export const yearOfDrinking_days = 365;

/**
 * No barrier is credited with more, whatever its test showed [log10]: the most that is listed for a membrane. Source: who-gdwq-4, Table 7.8 (from
 * memory). docs/decisions/0222-credited-log-reduction.md.
 */
export const mostCredited = { bacteria_log10: 6, viruses_log10: 6, protozoa_log10: 6 } as const;

/** Burden of disease that is borne for one germ in drinking water [DALY/person/year]: one in a million. Source: who-gdwq-4, 3.2 (from memory); adwg-app3, 1.3.3. */
export const tolerableBurden_DALY_per_person_per_year = 1e-6;

/** Tiers of household water treatment: the least log reduction by class. Source: who-hwt-2011, performance tiers (from memory). */
export const tierThreeStars = { bacteria_log10: 4, viruses_log10: 5, protozoa_log10: 4 } as const;
/** Source: who-hwt-2011, performance tiers (from memory); pang-2019 for the viruses. */
export const tierTwoStars = { bacteria_log10: 2, viruses_log10: 3, protozoa_log10: 2 } as const;

/** Above this dose the series in 1/dose is tried before the one in the dose [organisms]. Ours: its terms fall under the last digit from about 50 on. */
export const largeDose_organisms = 60;

/** Shares of people infected under this are never reckoned as one less a number near one [fraction]. Ours: ten digits are wanted. */
export const smallInfection_fraction = 1e-3;

/** A series ends where a term is so small a share of its sum [ratio]. Ours: under the last bit of a double. */
export const lastTerm_ratio = 1e-17;

/** Weights of a series are scaled down when they have grown so far [ratio]. Ours: a double ends near 1e308. */
export const weightsOver_ratio = 1e250;

/** Doses that infect more people than this one does are given as Infinity [organisms]. Ours: far over what a person can drink. */
export const greatestDose_organisms = 1e15;

/** Draws of raw water and of litres for a range [count]. Ours: docs/decisions/0225-range-of-raw-water.md. */
export const rangeDraws_count = 1000;

/** From draw to draw the second of two values moves on by the golden section of what may be [fraction]. Ours: (√5 − 1) ÷ 2 never comes near to where it was. */
export const goldenStep_fraction = (Math.sqrt(5) - 1) / 2;

/** The same for the third: √2 − 1 [fraction]. Ours: it keeps no step with the golden one. */
export const silverStep_fraction = Math.SQRT2 - 1;

/** The most log reduction that is looked for where two waters are drunk in turn [log10]. Ours: five barriers of the most that one is credited with. */
export const mostNeeded_log10 = 30;

/** Shares of the draws that are told: the middle, and the one that is judged [fraction]. Ours: docs/decisions/0225-range-of-raw-water.md. */
export const shownQuantiles = { middle_fraction: 0.5, judged_fraction: 0.95 } as const;

/** Water under this takes metals up [pH]. Source: who-gdwq-4, operational range 6.5–8.5 (from memory). */
export const least_pH = 6.5;

/**
 * The germs judged by, with the burden of a case as in WHO's example of raw water and tolerable burden. Source: who-gdwq-4, Table 7.4 (from memory); its r of
 * 0.019 and 0.59 are α ÷ β of medema-1996 (one β of four that are printed: docs/decisions/0224-reference-pathogens.md) and haas-1993 (from memory).
 */
export const referencePathogens = {
  cryptosporidium: {
    pathogenId: 'cryptosporidium',
    germs: 'protozoa',
    response: { form: 'exponential', perOrganism_fraction: 0.2 },
    illness_fraction: 0.7,
    burden_DALY_per_case: 1.5e-3,
    susceptible_fraction: 1,
    source: 'who-gdwq-4, Table 7.4 (from memory)',
  },
  campylobacter: {
    pathogenId: 'campylobacter',
    germs: 'bacteria',
    response: { form: 'betaPoisson', alpha_shape: 0.145, beta_shape: 7.59 },
    illness_fraction: 0.3,
    burden_DALY_per_case: 4.6e-3,
    susceptible_fraction: 1,
    source: 'who-gdwq-4, Table 7.4 (from memory); medema-1996',
  },
  rotavirus: {
    pathogenId: 'rotavirus',
    germs: 'viruses',
    response: { form: 'betaPoisson', alpha_shape: 0.253, beta_shape: 0.426 },
    illness_fraction: 0.5,
    burden_DALY_per_case: 1.4e-2,
    // Six in a hundred: children, as most others are immune, where nobody is vaccinated.
    susceptible_fraction: 0.06,
    source: 'who-gdwq-4, Table 7.4 (from memory); haas-1993 (from memory)',
  },
} as const satisfies Readonly<Record<string, ReferencePathogen>>;

/** The germs of the Australian guidelines, with a burden of a case five times WHO's for bacteria. Source: adwg-app3, Tables A3.5 and A3.6. */
export const australianPathogens = {
  cryptosporidium: {
    pathogenId: 'cryptosporidium',
    germs: 'protozoa',
    response: { form: 'exponential', perOrganism_fraction: 0.2 },
    illness_fraction: 0.7,
    burden_DALY_per_case: 1.7e-3,
    susceptible_fraction: 1,
    source: 'adwg-app3, Tables A3.5 and A3.6',
  },
  campylobacter: {
    pathogenId: 'campylobacter',
    germs: 'bacteria',
    response: { form: 'betaPoisson', alpha_shape: 0.145, beta_shape: 7.58 },
    illness_fraction: 0.3,
    burden_DALY_per_case: 0.0235,
    susceptible_fraction: 1,
    source: 'adwg-app3, Tables A3.5 and A3.6',
  },
  norovirus: {
    pathogenId: 'norovirus',
    germs: 'viruses',
    response: { form: 'exactBetaPoisson', alpha_shape: 0.0044, beta_shape: 0.002 },
    illness_fraction: 0.7,
    burden_DALY_per_case: 5.7e-4,
    susceptible_fraction: 1,
    source: 'adwg-app3, Tables A3.5 and A3.6',
  },
} as const satisfies Readonly<Record<string, ReferencePathogen>>;

/** What may be dissolved in roof water. */
export type Substance =
  | 'lead'
  | 'cadmium'
  | 'copper'
  | 'chromium'
  | 'nickel'
  | 'arsenic'
  | 'antimony'
  | 'manganese'
  | 'fluoride'
  | 'nitrate'
  | 'zinc'
  | 'iron'
  | 'aluminium';

/** How much of a substance there may be, and whether more of it harms or only tastes. */
export interface GuidelineValue {
  readonly most_mg_per_L: number;
  readonly basis: 'health' | 'taste';
  /** The authority itself calls it provisional. */
  readonly isProvisional: boolean;
  readonly source: string;
}

const health = (most_mg_per_L: number, isProvisional: boolean): GuidelineValue => ({
  most_mg_per_L,
  basis: 'health',
  isProvisional,
  source: 'who-gdwq-4, Annex 3 (from memory)',
});
const taste = (most_mg_per_L: number): GuidelineValue => ({
  most_mg_per_L,
  basis: 'taste',
  isProvisional: false,
  source: 'who-gdwq-4, chapter 10 (from memory)',
});

/**
 * The most of each substance in drinking water [mg/L]. Source: who-gdwq-4, Annex 3 and chapter 10, edition with the addenda of 2022 (from memory; lead to
 * manganese also as quoted on a page, who-values-page). There is none for pH, zinc and asbestos in water: zinc tastes from about 3 mg/L on.
 */
export const guidelineValues: Readonly<Record<Substance, GuidelineValue>> = {
  lead: health(0.01, true),
  cadmium: health(0.003, false),
  copper: health(2, false),
  chromium: health(0.05, false),
  nickel: health(0.07, false),
  arsenic: health(0.01, true),
  antimony: health(0.02, false),
  manganese: health(0.08, true),
  fluoride: health(1.5, false),
  nitrate: health(50, false),
  zinc: taste(3),
  iron: taste(0.3),
  aluminium: taste(0.2),
};
