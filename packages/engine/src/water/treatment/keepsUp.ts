import type { DesignSettings, PeakFinding } from '../../kernel/index.ts';
import { longestWait_min, peak_min, vessel_L } from './constants.ts';
import { type Backwash, hoursNeeded_h_per_day } from './dayOfTreating.ts';
import { erlangMeanWait_min } from './erlangC.ts';
import { type PeakLine, peakLines, tapsFlow_L_per_min } from './peakLines.ts';

/** What one unit is asked for. */
export interface AskedOfUnit {
  readonly litres_L_per_day: number;
  readonly backwash: Backwash;
  /** Its share of the taps; null where nobody counted them. */
  readonly taps_count: number | null;
}

/** How a unit fares on a day. */
export interface DayOfUnit {
  /** Null where no number of hours would do. */
  readonly hours_h: number | null;
  readonly morning: PeakLine;
  readonly evening: PeakLine;
  readonly given_L_per_min: number;
  readonly meets: boolean;
}

/** Do the litres pass in the hours people pump, and does nobody wait too long? */
export function dayOfUnit(asked: AskedOfUnit, flow_L_per_min: number, settings: DesignSettings): DayOfUnit {
  const { litres_L_per_day, backwash, taps_count } = asked;
  const hours = hoursNeeded_h_per_day(litres_L_per_day, flow_L_per_min, backwash);
  const given_L_per_min =
    taps_count === null ? flow_L_per_min : tapsFlow_L_per_min(taps_count, settings.tapFlow_L_per_min, flow_L_per_min);
  const share = Math.min(settings.peakShare_fraction, 1 / 2);
  const between_h = Math.max(0, settings.pumping_h_per_day - 2);
  const { morning, evening } = peakLines(
    { litres_L_per_day, morning_fraction: share, evening_fraction: share, between_h },
    given_L_per_min,
  );
  const longest_min = Math.max(morning.lastWait_min, evening.lastWait_min);
  return {
    hours_h: hours === Infinity ? null : hours,
    morning,
    evening,
    given_L_per_min,
    meets: hours <= settings.pumping_h_per_day && longest_min <= settings.waitLimit_min,
  };
}

/** The two peaks as they are told, the set as it is now and at the unfavourable end. */
export function peaksOf(now: DayOfUnit, worst: DayOfUnit | null): readonly PeakFinding[] {
  return (['morning', 'evening'] as const).map((peak) => ({
    peak,
    asked_L: now[peak].asked_L,
    possible_L: now[peak].possible_L,
    lastWait_min: ended_min(now[peak].lastWait_min),
    lastWaitWorn_min: worst === null ? null : ended_min(worst[peak].lastWait_min),
  }));
}

/** The mean wait in the morning's hour if people came at random with a vessel each; null where the line has no end or the taps were not counted. */
export function meanWait_min({ taps_count }: AskedOfUnit, day: DayOfUnit): number | null {
  // Taps shared by several units are whole ones to the people.
  const taps = taps_count === null ? 0 : Math.floor(taps_count);
  if (taps < 1 || day.given_L_per_min <= 0) return null;
  const comers_per_min = day.morning.asked_L / vessel_L / peak_min;
  return ended_min(erlangMeanWait_min(comers_per_min, (vessel_L * taps) / day.given_L_per_min, taps));
}

function ended_min(wait_min: number): number | null {
  return wait_min > longestWait_min ? null : wait_min;
}
