import type { SafetyHead, SiteOfSafety } from './cups.ts';

/** Sites that are passed on at a time: few enough that taking them over is not felt [site]. Ours, as the list of sites has it. */
export const piece_sites = 100;

/** What the page asks of the thread that reads the cups of a programme. */
export interface ToSafety {
  readonly ask: number;
  readonly programmeId: string;
  /** Under what it is kept in this browser, and the form of answers these pages were built for. */
  readonly keepAs: string;
  readonly form: string;
}

/** What that thread answers: the sites stand the worst first. */
export type FromSafety =
  | { readonly kind: 'piece'; readonly ask: number; readonly sites: readonly SiteOfSafety[] }
  | { readonly kind: 'end'; readonly ask: number; readonly head: SafetyHead }
  | { readonly kind: 'unreachable'; readonly ask: number }
  | { readonly kind: 'refused'; readonly ask: number; readonly status: number; readonly body: unknown };
