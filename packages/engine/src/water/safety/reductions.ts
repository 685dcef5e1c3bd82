import type { GermClass, Reductions } from '../../kernel/index.ts';

/** Nothing taken out. */
export const noReductions: Reductions = { bacteria_log10: 0, viruses_log10: 0, protozoa_log10: 0 };

/** The field of a class. */
export const fieldOf = {
  bacteria: 'bacteria_log10',
  viruses: 'viruses_log10',
  protozoa: 'protozoa_log10',
} as const satisfies Readonly<Record<GermClass, keyof Reductions>>;

/** Log reductions of one question asked of each class. */
export function byClass(of: (field: keyof Reductions) => number): Reductions {
  return {
    bacteria_log10: of('bacteria_log10'),
    viruses_log10: of('viruses_log10'),
    protozoa_log10: of('protozoa_log10'),
  };
}
