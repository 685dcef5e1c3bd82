import { calendarDay, type JudgedRain, numberOfDay, type Scenario, seedFor, unknownDay } from '../../kernel/index.ts';
import { wetDayFrom_mm } from './constants.ts';
import { rainOfYears, slice } from './judgedRain.ts';

/**
 * What would this rain have been with fewer or more wet days, with less or more on each, or in its last years alone? Fewer: each
 * wet day stays or goes by a number of its own. More: dry days turn wet likewise, month by month, with the rain of a wet day of
 * the same month. Wet: 1 mm or more, by what fell. The water year stays as it was.
 *
 * @param rain - rain ready for the balance [mm]
 * @param scenario - wet days and rain of a wet day as shares of what they were [fraction], 0 or more; last years [year] or null; made-up rain keeps all its years
 * @param seed - the programme's seed [number], whole
 * @returns the rain under the scenario [mm] by day, the states as they were; null where none of the last years is judged
 * @law with the same years, smaller shares never give any day more rain; shares of 1 change no day
 * @definition ours: docs/decisions/0087-drier-and-wetter.md
 */
export function scenarioRain(rain: JudgedRain, scenario: Scenario, seed: number): JudgedRain | null {
  const cut = lastYearsOf(rain, scenario.lastYears);
  const { wetDays_fraction, wetDayRain_fraction } = scenario;
  if (!cut || (wetDays_fraction === 1 && wetDayRain_fraction === 1)) return cut;
  const { record, startMonth, years, cutDays } = cut;
  const stays = seedFor(seed, `wet days of ${record.gaugeId}`);
  const rain_mm = record.rain_mm.slice();
  for (let at = 0; at < rain_mm.length; at++) {
    if (record.state[at] === unknownDay || rain_mm[at]! < wetDayFrom_mm) continue;
    const isWet = numberOfDay(stays, record.firstDay + at) < wetDays_fraction;
    rain_mm[at] = isWet ? rain_mm[at]! * wetDayRain_fraction : 0;
  }
  if (wetDays_fraction > 1) addWetDays(rain_mm, cut, scenario, seed);
  return rainOfYears({ ...record, rain_mm }, startMonth, years, cutDays);
}

/** The last so many water years; all of them where there are no more, or where they are made up. */
function lastYearsOf(rain: JudgedRain, lastYears: number | null): JudgedRain | null {
  // Years made up follow no calendar: the last of them are no nearer to now.
  if (lastYears === null || rain.madeDays > 0 || lastYears >= rain.years.length) return rain;
  const kept = rain.years.slice(-lastYears);
  if (!kept.some((year) => year.judged)) return null;
  const from = kept[0]!.from;
  const years = kept.map((year) => ({ ...year, from: year.from - from, to: year.to - from }));
  const record = slice(rain.record, from, rain.record.rain_mm.length);
  return rainOfYears(record, rain.startMonth, years, rain.cutDays + from);
}

/** Turns dry days wet: in each month so many that its wet days are, on the mean, the share asked for, or all its days. */
function addWetDays(rain_mm: Float64Array, { record }: JudgedRain, scenario: Scenario, seed: number): void {
  const { firstDay, state } = record;
  const months = Array.from({ length: 12 }, () => ({ wet_mm: [] as number[], dryDays: 0 }));
  const monthAt = Uint8Array.from(state, (_, at) => calendarDay(firstDay + at).month - 1);
  for (let at = 0; at < state.length; at++) {
    if (state[at] === unknownDay) continue;
    const month = months[monthAt[at]!]!;
    if (record.rain_mm[at]! >= wetDayFrom_mm) month.wet_mm.push(record.rain_mm[at]!);
    else month.dryDays++;
  }
  const turns = seedFor(seed, `dry days of ${record.gaugeId}`);
  const takes = seedFor(seed, `rain for dry days of ${record.gaugeId}`);
  for (let at = 0; at < state.length; at++) {
    if (state[at] === unknownDay || record.rain_mm[at]! >= wetDayFrom_mm) continue;
    const { wet_mm, dryDays } = months[monthAt[at]!]!;
    const chance = ((scenario.wetDays_fraction - 1) * wet_mm.length) / dryDays;
    if (numberOfDay(turns, firstDay + at) >= chance) continue;
    const taken_mm = wet_mm[Math.floor(numberOfDay(takes, firstDay + at) * wet_mm.length)]!;
    rain_mm[at] = Math.max(rain_mm[at]!, taken_mm * scenario.wetDayRain_fraction);
  }
}
