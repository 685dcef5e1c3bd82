import {
  chanceOfTimes_fraction,
  type DesignSettings,
  dailyMaxima,
  fiveMinuteMaxima,
  type GaugeFacts,
  type GaugeFinding,
  type RainRecord,
  returnPeriodAtRisk_years,
  risk_fraction,
  type StormTable,
  stormTable,
} from '@eavewell/engine';
import { workingText } from '@eavewell/words';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';
import { sideBySide } from './strip.ts';

const { storm: words } = spoken.commandLine;
const { numbers } = spoken;

/** The chance within its own years that the page turns round into a return period. */
const rare_fraction = 0.1;

/** How hard it rains: the design storm, its chance, and the maxima of years with what they say of rarer ones. */
export function stormSection(
  sheet: Sheet,
  gauge: GaugeFacts,
  finding: GaugeFinding,
  record: RainRecord | null,
  settings: DesignSettings,
): void {
  const { stormReturnPeriod_years: period } = settings;
  sheet.heading(words.heading);
  const { storm } = finding;
  sheet.line(storm ? spoken.findings.storm(storm, gauge.gaugeId) : words.none(period), 2, 2);
  if (period > 1) {
    sheet.line(words.risk(period, risk_fraction(period, period), chanceOfTimes_fraction(period, period, 1)), 2, 2);
    const longer = Math.round(returnPeriodAtRisk_years(rare_fraction, period));
    sheet.line(words.rare(period, rare_fraction, longer), 2, 2);
  }
  const short = fiveMinuteMaxima(gauge.shortRain).maxima.map(({ year, depth_mm }) => ({ year, rain_mm: depth_mm }));
  if (short.length > 0) {
    maximaSection(sheet, words.maxima.fiveMinutes, short, gauge.gaugeId, settings);
    sheet.line(words.fiveMinutesKey, 2);
  }
  const days = record ? dailyMaxima(record, settings.missingDays_fraction) : [];
  if (days.length > 0) maximaSection(sheet, words.maxima.day, days, gauge.gaugeId, settings);
  for (const line of finding.stormTold.working) {
    const { label, value, formula, inputs, source } = workingText(line, spoken);
    sheet.line(`${label}: ${value}`, 2, 2);
    sheet.line(`${formula} (${source})`, 4);
    if (inputs.length > 0) sheet.line(inputs.map((one) => `${one.label} ${one.value}`).join('; '), 4);
  }
}

/** The maxima year by year, their L-moments, and the maximum of rarer years by each method. */
function maximaSection(
  sheet: Sheet,
  heading: string,
  maxima: readonly { readonly year: number; readonly rain_mm: number }[],
  gaugeId: string,
  settings: DesignSettings,
): void {
  sheet.heading(heading);
  sideBySide(
    sheet,
    maxima.map(({ year, rain_mm }) => `${year} ${numbers.fixed(rain_mm, 1).padStart(5)}`),
    13,
  );
  const table = stormTable(
    maxima.map(({ rain_mm }) => rain_mm),
    gaugeId,
    settings,
  );
  if (!table) {
    sheet.line(words.tooFew, 2);
    return;
  }
  tableLines(sheet, table, maxima.length, settings);
}

/** The maximum of rarer years by each method. */
function tableLines(sheet: Sheet, table: StormTable, years: number, settings: DesignSettings): void {
  const { moments, fit, rows } = table;
  const shown = (value: number | null) => (value === null ? numbers.quantity(null, 'mm') : numbers.fixed(value, 1));
  sheet.line(
    words.moments(
      years,
      shown(moments.l1_mm),
      shown(moments.l2_mm),
      numbers.fixed(moments.t3_ratio, 2),
      numbers.fixed(moments.t4_ratio, 2),
    ),
    2,
    2,
  );
  sheet.table(
    words.columns.map((head) => ({ head, align: 'right' }) as const),
    rows.map((row) => [
      numbers.years(row.returnPeriod_years),
      shown(row.maximum_mm),
      numbers.quantity(row.maximum_mm_range, 'number'),
      shown(row.gevByLMoments_mm),
      shown(row.gevByLikelihood_mm),
      shown(row.gumbelByLMoments_mm),
      shown(row.gumbelByMoments_mm),
      shown(row.gumbelChow_mm),
    ]),
  );
  sheet.line(words.key(settings.range_fraction, fit.shape === 0), 2);
  if (years < settings.leastYears) sheet.line(words.few(years, settings.leastYears), 2);
}
