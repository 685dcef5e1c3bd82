import type { ListNumbers, OverviewHead, SiteEntry } from './overview.ts';

/** Sites that are passed on at a time: few enough that taking them over is not felt [site]. Ours, measured. */
export const piece_sites = 100;

/** What the page asks of the thread that keeps the list. */
export type ToWorker =
  | {
      readonly kind: 'load';
      readonly ask: number;
      readonly programmeId: string;
      readonly language: string;
      /** Under what the list is kept in this browser, and the form of answers these pages were built for. */
      readonly keepAs: string;
      readonly form: string;
    }
  | { readonly kind: 'find'; readonly ask: number; readonly keepAs: string; readonly text: string };

/** What that thread answers. */
export type FromWorker =
  | { readonly kind: 'head'; readonly ask: number; readonly head: OverviewHead; readonly count: number }
  | { readonly kind: 'piece'; readonly ask: number; readonly sites: readonly SiteEntry[] }
  | { readonly kind: 'end'; readonly ask: number; readonly numbers: ListNumbers }
  | { readonly kind: 'unreachable'; readonly ask: number }
  | { readonly kind: 'refused'; readonly ask: number; readonly status: number; readonly body: unknown }
  | { readonly kind: 'found'; readonly ask: number; readonly places: Uint32Array | null };
