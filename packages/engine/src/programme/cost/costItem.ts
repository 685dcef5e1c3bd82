import type { CostHead } from '../../kernel/index.ts';
import type { Doubtful } from './doubtful.ts';

/** Why an amount, a life or a head is not known. */
export type CostReason =
  | 'noPart'
  | 'noPrice'
  | 'onlyLaterPrices'
  | 'rateMissing'
  | 'amountUnknown'
  | 'lifeUnknown'
  | 'countUnknown'
  | 'peopleUnknown'
  | 'interestUnknown'
  | 'notStated';

/** When money is spent: once at the start; at the end of every year; or again whenever it is worn out. */
export type CostTiming =
  | { readonly kind: 'once' }
  | { readonly kind: 'yearly' }
  | {
      readonly kind: 'renewed';
      /** Is the first one paid for at the start? Else it comes with something else. */
      readonly isBoughtFirst: boolean;
      /** Null: not known, so that renewals are not. */
      readonly life_years: Doubtful | null;
    };

/** One thing money is spent on. */
export interface CostItem {
  readonly itemId: string;
  readonly what: string;
  /** The head of what is spent at the start or every year; renewals stand where their life puts them. */
  readonly head: CostHead;
  /** Of one, in the programme's currency, at the prices of the day; null: not known. */
  readonly amount: Doubtful | null;
  /** Why the amount is not known. */
  readonly reason: CostReason | null;
  readonly pieces_count: number;
  readonly timing: CostTiming;
}
