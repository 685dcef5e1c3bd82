import type {
  AsFitted,
  DayIndex,
  GroupKind,
  LeaveIt,
  NoCostReason,
  NotMendedReason,
  PeopleCarried,
  Remedy,
  RemedyChange,
  RemedyCost,
  SitesTogether,
  Station,
} from '@eavewell/engine';

/** Remedies, as far as stations are left out of their verdicts. */
export interface BesideRemedies {
  /** Stations that stay as they are whatever is changed. */
  readonly besides: readonly Station[];
  readonly remedies: readonly Pick<Remedy, 'changes' | 'besides' | 'standGate'>[];
}

/** What is said of remedies. */
export interface RemedyWords {
  /** One change, short enough for a column. */
  change(change: RemedyChange): string;
  /** The changes of a remedy in one line. */
  remedy(remedy: Pick<Remedy, 'changes'>): string;
  cost(cost: RemedyCost): string;
  /** The smallest change of a site, its verdict and its cost, in a sentence. */
  smallest(remedy: Remedy): string;
  whyNoCost(reason: NoCostReason): string;
  notMended(reason: NotMendedReason): string;
  leaveIt(year: LeaveIt): string;
  /** How often people would drink from a second source, and that it must be treated. */
  sourceUse(days_per_year: number): string;
  /** What has to be known of the stations that the verdicts of the remedies leave out: each in a sentence. */
  beside(found: BesideRemedies, design: AsFitted): readonly string[];
  /** How many people it carries as it stands. */
  peopleCarried(carried: PeopleCarried): string;
  /** The kinds of change of a remedy. */
  kindsTogether(kinds: readonly GroupKind[]): string;
  costs(sites: SitesTogether): string;
  readonly heading: string;
  readonly programmeHeading: string;
  readonly columns: readonly string[];
  readonly programmeColumns: readonly string[];
  /** The second change of two, on a line of its own. */
  and(change: string): string;
  /** Marks a change that cuts what was promised. */
  isCut(change: string): string;
  ofYears(good: number, years: number): string;
  readonly together: string;
  looked(sites: SitesTogether): string;
  noneMends(reason: NotMendedReason, siteIds: readonly string[]): string;
  prices(day: DayIndex | null): string;
  /** What has to be known before a kind of change is made. */
  readonly cautions: Readonly<Record<'litres' | 'firstFlush' | 'secondTank' | 'people' | 'fittings', string>>;
}
