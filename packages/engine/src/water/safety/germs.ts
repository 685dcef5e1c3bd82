import type { GermClass, Pathogen } from '../../kernel/index.ts';

/** How a dose infects: each organism with one chance; with one that differs from person to person, as approximated for β well over 1 and over α; or exactly so. */
export type DoseResponse =
  | { readonly form: 'exponential'; readonly perOrganism_fraction: number }
  | { readonly form: 'betaPoisson' | 'exactBetaPoisson'; readonly alpha_shape: number; readonly beta_shape: number };

/** A germ that stands for its class. */
export interface ReferencePathogen {
  readonly pathogenId: Pathogen | 'norovirus';
  readonly germs: GermClass;
  readonly response: DoseResponse;
  /** Share of those infected who fall ill. */
  readonly illness_fraction: number;
  /** Burden of one case of illness. */
  readonly burden_DALY_per_case: number;
  /** Share of people who can be infected. */
  readonly susceptible_fraction: number;
  readonly source: string;
}
