/** What a page is told of the rollout of a programme without asking. */
export interface RolloutTold {
  readonly programmeId: string;
  /** `making`: it is being made ready; `search`: a search gets on, or has ended; `sheet`: there is more to be shown, ask anew. */
  readonly what: 'making' | 'search' | 'sheet';
  readonly done_fraction: number;
  /** Of a search: of the best plan so far, and what no plan can have less of [person-day]; null: not known. */
  readonly waiting: number | null;
  readonly bound: number | null;
  readonly gap_fraction: number | null;
}
