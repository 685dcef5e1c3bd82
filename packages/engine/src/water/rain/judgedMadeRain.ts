import {
  type Checked,
  type DesignSettings,
  dayIndexOf,
  type JudgedRain,
  madeDay,
  type RainRecord,
} from '../../kernel/index.ts';
import { judgedRain, type RainSettings, slice } from './judgedRain.ts';
import { madeRain } from './madeRain.ts';
import type { RainMonth } from './rainMonths.ts';
import { waterYearStart, wholeWaterYears } from './waterYearStart.ts';

/** The year of made-up rain that comes first, so that none looks like a year of the calendar. */
const firstMadeYear = 1;

/**
 * Which years may a verdict rest on where nobody measured? As many whole water years as the settings say, made day by day and
 * marked so. Years are counted from 1.
 *
 * @param gaugeId - the gauge [text]; its rain has a seed of its own
 * @param months - twelve months, January first: chances [fraction] and amounts [mm]
 * @param settings - madeYears [year] and those that judge a record
 * @returns whole water years of made-up rain [mm] by day, every day marked `madeDay`
 * @problem rain.few_years - fewer made years than a firm verdict needs
 * @law all its years are judged; none of its days counts as measured, missing or filled
 * @definition ours: docs/decisions/0085-verdicts-from-normals.md
 */
export function judgedMadeRain(
  gaugeId: string,
  months: readonly RainMonth[],
  settings: RainSettings & Pick<DesignSettings, 'madeYears'>,
): Checked<JudgedRain> {
  // A year more than asked for, so that water years from any month are whole.
  const years = settings.madeYears + 1;
  const { firstDay, rain_mm } = madeRain(months, {
    name: gaugeId,
    seed: settings.seed,
    firstYear: firstMadeYear,
    years,
  });
  const all: RainRecord = { gaugeId, firstDay, rain_mm, state: new Uint8Array(rain_mm.length).fill(madeDay) };
  const startMonth = settings.waterYearStartMonth ?? waterYearStart(all);
  const { firstYear } = wholeWaterYears(all, startMonth);
  const from = dayIndexOf(firstYear, startMonth, 1) - firstDay;
  const to = dayIndexOf(firstYear + settings.madeYears, startMonth, 1) - firstDay;
  return judgedRain(slice(all, from, to), { ...settings, waterYearStartMonth: startMonth });
}
