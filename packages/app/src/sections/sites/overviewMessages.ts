import type { OverviewPacked } from './overviewPacked.ts';

/** What the page asks of the thread that keeps the list: under what it is kept in this browser, and the form of answers these pages were built for. */
export type ToWorker =
  | {
      readonly kind: 'load';
      readonly ask: number;
      readonly programmeId: string;
      readonly language: string;
      readonly keepAs: string;
      readonly form: string;
    }
  | {
      readonly kind: 'find';
      readonly ask: number;
      readonly keepAs: string;
      readonly form: string;
      readonly text: string;
    };

/** What that thread answers. */
export type FromWorker =
  | { readonly kind: 'read'; readonly ask: number; readonly packed: OverviewPacked }
  | { readonly kind: 'unreachable'; readonly ask: number }
  | { readonly kind: 'refused'; readonly ask: number; readonly status: number; readonly body: unknown }
  | { readonly kind: 'found'; readonly ask: number; readonly places: Uint32Array | null };
