/** A question put to the rain of the past: fewer or more wet days, less or more rain on each, the last years alone. No fact of a programme. */
export interface Scenario {
  /** Wet days, as a share of what they were; 1 changes none. */
  readonly wetDays_fraction: number;
  /** Rain of a wet day, as a share of what it was; 1 changes none. */
  readonly wetDayRain_fraction: number;
  /** Only the last so many water years of each record; null: all of them. */
  readonly lastYears: number | null;
}
