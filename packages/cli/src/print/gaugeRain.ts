import {
  annualMaximum_mm,
  type DesignSettings,
  type DoubleMass,
  type GaugeFacts,
  type JudgedRain,
  judgedDaysFilled,
  judgedMadeRain,
  longestDryRunByYear,
  monthlyNormals,
  monthsFromRecord,
  type RainRecord,
  twelveNormals,
  type YearMoments,
  yearFacts,
  yearMoments,
} from '@eavewell/engine';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { rain: words } = spoken.commandLine;
const { numbers } = spoken;

const shown = (value: number | null | undefined, decimals: number) =>
  value === null || value === undefined ? words.none : numbers.fixed(value, decimals);

/** How much of what is judged was measured, filled from what, or made up. */
export function sourcesSection(sheet: Sheet, rain: JudgedRain): void {
  sheet.heading(words.sources);
  const { days, fromOtherYearsDays, fromNeighboursDays, madeDays } = judgedDaysFilled(rain);
  const measuredDays = days - fromOtherYearsDays - fromNeighboursDays - madeDays;
  const counts = [measuredDays, fromOtherYearsDays, fromNeighboursDays, madeDays];
  sheet.table(
    words.sourceColumns.map((head, index) => ({ head, align: index === 0 ? 'left' : 'right' }) as const),
    counts.map((count, i) => [words.sourceNames[i]!, numbers.quantity(count, 'number'), numbers.percent(count / days)]),
  );
}

/** Rain, wet days, longest dry run and wettest day of each water year. */
export function yearsSection(sheet: Sheet, rain: JudgedRain): void {
  const { record, years } = rain;
  const facts = yearFacts(record, years);
  const runs = longestDryRunByYear(record, years, 'filledToo');
  const wettest = annualMaximum_mm(record, years);
  sheet.heading(words.yearByYear);
  sheet.table(
    words.yearColumns.map((head, index) => ({ head, align: index === 0 ? 'left' : 'right' }) as const),
    years.map(({ label, missing_days }, i) => [
      `${label}${missing_days > 0 ? '*' : ''}`,
      shown(facts[i]!.rain_mm, 0),
      shown(facts[i]!.wetDays, 0),
      shown(runs[i], 0),
      shown(wettest[i], 1),
    ]),
  );
  sheet.line(words.yearsKey, 2);
}

/** The normals given for the gauge, beside what its record, or its made-up rain, has. */
export function normalsBeside(
  sheet: Sheet,
  gauge: GaugeFacts,
  rain: JudgedRain | null,
  record: RainRecord | null,
): void {
  if (gauge.normals.length === 0) return;
  const made = rain !== null && rain.madeDays > 0 ? madeMonths(rain) : null;
  const own = record && !made ? monthlyNormals(record) : null;
  sheet.heading(words.given);
  sheet.table(
    words.givenColumns(made !== null).map((head, index) => ({ head, align: index === 0 ? 'left' : 'right' }) as const),
    twelveNormals(gauge).map(({ rain_mm, wetDays }, i) => [
      numbers.quantity(i + 1, 'month'),
      shown(rain_mm, 0),
      shown(wetDays, 1),
      shown(made ? made[i]!.rain_mm : own?.[i]?.meanTotal_mm, 0),
      shown(made ? made[i]!.wetDays : own?.[i]?.meanWetDays, 1),
    ]),
  );
}

/** Mean rain [mm] and wet days of each month of made-up rain. */
function madeMonths({ record, years }: JudgedRain): readonly { readonly rain_mm: number; readonly wetDays: number }[] {
  // Made days count as measured here: the question is what was made.
  const asMeasured = { ...record, state: new Uint8Array(record.state.length) };
  return monthlyNormals(asMeasured).map(({ meanTotal_mm, meanWetDays }) => ({
    rain_mm: meanTotal_mm ?? 0,
    wetDays: years.length > 0 ? (meanWetDays ?? 0) : 0,
  }));
}

/** What years made up from the record's own months would be like, beside the record. */
export function madeBesideRecord(sheet: Sheet, record: RainRecord, rain: JudgedRain, settings: DesignSettings): void {
  if (rain.madeDays > 0) return;
  const months = monthsFromRecord(record, settings.wetDayAmounts);
  sheet.heading(words.made);
  if (!months) {
    sheet.line(words.noMade, 2);
    return;
  }
  const made = judgedMadeRain(record.gaugeId, months, { ...settings, waterYearStartMonth: rain.startMonth });
  if (!made.ok) return;
  const both = [yearMoments(rain), yearMoments(made.value)] as const;
  const row = (label: string, of: (moments: YearMoments) => string) => [label, of(both[0]), of(both[1])];
  sheet.table(
    words.madeColumns.map((head, index) => ({ head, align: index === 0 ? 'left' : 'right' }) as const),
    [
      row(words.madeRows.rain, ({ meanRain_mm }) => numbers.quantity(meanRain_mm, 'mm')),
      row(words.madeRows.spread, ({ sdRain_mm }) => numbers.quantity(sdRain_mm, 'mm')),
      row(words.madeRows.wetDays, ({ meanWetDays }) => numbers.days(meanWetDays)),
      row(words.madeRows.run, ({ meanLongestDryRun_days }) => numbers.days(meanLongestDryRun_days)),
      row(words.madeRows.longest, ({ longestDryRun_days }) => numbers.days(longestDryRun_days)),
    ],
  );
  sheet.line(words.madeKey(made.value.judgedYears, words.amountKinds[settings.wetDayAmounts]), 2);
}

/** How the gauge measures beside the gauges near by, earlier and later. */
export function massLine(sheet: Sheet, mass: DoubleMass | null, others: readonly string[]): void {
  sheet.heading(words.beside);
  if (!mass) sheet.line(words.noMass, 2);
  else
    sheet.line(
      words.mass(
        others.length > 3 ? numbers.quantity(others.length, 'number') : others.join(', '),
        numbers.percent(mass.slopeRatio_fraction),
        numbers.date(mass.bendDay),
        mass.months,
      ),
      2,
      2,
    );
}
