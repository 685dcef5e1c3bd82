import { type DayIndex, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { wetDayFrom_mm } from './constants.ts';
import { runsOfDays } from './runsOfDays.ts';

/** An unbroken run of days each under 1 mm. */
export interface DrySpell {
  readonly from: DayIndex;
  readonly to: DayIndex;
  readonly days: number;
}

/**
 * When did it not rain? Unbroken runs of days each under 1 mm. A day marked unknown breaks a spell, as it may have been
 * wet; a filled day counts as it was filled.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @returns the spells in order: from [day], to [day] included, days [day], 1 or more
 * @source etccdi, consecutive dry days (a dry day has under 1 mm)
 */
export function drySpells(record: RainRecord): readonly DrySpell[] {
  const { firstDay, rain_mm, state } = record;
  const isDry = (day: number) => state[day] !== unknownDay && rain_mm[day]! < wetDayFrom_mm;
  return runsOfDays(rain_mm.length, isDry).map(({ from, to }) => ({
    from: firstDay + from,
    to: firstDay + to - 1,
    days: to - from,
  }));
}
