import type { DayIndex } from './days.ts';
import type { DaysAsked } from './rolloutFacts.ts';

/** The settings of the rollout. None of them bears on the water of a site. */
export interface RolloutSettings {
  /** The first day of the plan; null: the day it is asked on. */
  readonly rolloutStart: DayIndex | null;
  /** Days looked ahead. */
  readonly rolloutHorizon_days: number;
  /** Crew days of work at a site that states none: low, likely and high. */
  readonly installLow_days: number;
  readonly installLikely_days: number;
  readonly installHigh_days: number;
  /** What a crew's job takes each time the jobs it did are doubled, as a share of before (Wright's unit curve); 1: nobody learns. */
  readonly learning_fraction: number;
  /** A boat is ashore so many hours after the crew's day begins. */
  readonly riverEnds_h: number;
  /** What a litre of fuel for boats and trucks costs, in the programme's currency; null: not known. */
  readonly fuelPrice_per_L: number | null;
  /** What a porter carries. */
  readonly porterLoad_kg: number;
  /** Changing from one carrier to another, where a place states nothing. */
  readonly changeOver_h: number;
  /** A week in which a river is open in fewer of the years than this share counts as closed. */
  readonly openChance_fraction: number;
  /** With more rain than this a day is closed, where weather is drawn; null: no weather is drawn from rain. */
  readonly closedRain_mm: number | null;
  /** Is a site that is not shown to hold left out of the plan? */
  readonly mustHold: boolean;
  /** The place in which lies what the table of parts says is in the store; null: the only store there is. */
  readonly mainStore: string | null;
}

/**
 * 730 days, days of work, hours and share of weeks are ours; 25 kg is what one person lifts with care (common practice, no source: local
 * rules on lifting come first).
 */
export const defaultRolloutSettings: RolloutSettings = {
  rolloutStart: null,
  rolloutHorizon_days: 730,
  installLow_days: 1,
  installLikely_days: 2,
  installHigh_days: 4,
  learning_fraction: 1,
  riverEnds_h: 10,
  fuelPrice_per_L: null,
  porterLoad_kg: 25,
  changeOver_h: 1,
  openChance_fraction: 0.8,
  closedRain_mm: null,
  mustHold: true,
  mainStore: null,
};

/**
 * Crew days of work at a site that states none.
 *
 * @param settings - of the programme
 * @returns low, likely and high [day]
 * @definition ours
 */
export function usualInstall_days(
  settings: Pick<RolloutSettings, 'installLow_days' | 'installLikely_days' | 'installHigh_days'>,
): DaysAsked {
  return { low: settings.installLow_days, likely: settings.installLikely_days, high: settings.installHigh_days };
}
