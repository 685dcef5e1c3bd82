import {
  type DayIndex,
  filledDay,
  type JudgedRain,
  madeDay,
  measured,
  neighbourDay,
  type RainRecord,
} from '../../kernel/index.ts';

/** A day and its rain. */
export interface DayOfRain {
  readonly day: DayIndex;
  readonly rain_mm: number;
}

/**
 * Which was the wettest day? Measured days only; of several, the first.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @returns the day and its rain [mm]; null where nothing above 0 was measured
 * @source etccdi, maximum 1-day rain
 */
export function wettestDay(record: RainRecord): DayOfRain | null {
  let most: DayOfRain | null = null;
  for (let at = 0; at < record.rain_mm.length; at++) {
    const rain_mm = record.rain_mm[at]!;
    if (record.state[at] === measured && rain_mm > (most?.rain_mm ?? 0)) most = { day: record.firstDay + at, rain_mm };
  }
  return most;
}

/** The days of the judged years, and how many of them nobody measured. */
export interface JudgedDaysFilled {
  readonly days: number;
  readonly fromOtherYearsDays: number;
  readonly fromNeighboursDays: number;
  readonly madeDays: number;
}

/**
 * How much of what is judged was never measured? Counts the filled and the made-up days of the judged years, the filled by what they were filled from.
 *
 * @param rain - rain ready for the balance
 * @returns days of judged years [day], of them filled from other years [day], from neighbours [day] and made up [day]
 * @law the three never make more than the days
 * @definition ours
 */
export function judgedDaysFilled(rain: JudgedRain): JudgedDaysFilled {
  let days = 0;
  let fromOtherYearsDays = 0;
  let fromNeighboursDays = 0;
  let madeDays = 0;
  for (const { from, to, judged } of rain.years) {
    if (!judged) continue;
    days += to - from;
    for (let day = from; day < to; day++) {
      if (rain.record.state[day] === filledDay) fromOtherYearsDays++;
      if (rain.record.state[day] === neighbourDay) fromNeighboursDays++;
      if (rain.record.state[day] === madeDay) madeDays++;
    }
  }
  return { days, fromOtherYearsDays, fromNeighboursDays, madeDays };
}
