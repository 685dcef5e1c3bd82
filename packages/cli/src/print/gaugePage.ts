import {
  type DesignSettings,
  type DoubleMass,
  type GaugeFacts,
  type GaugeFinding,
  type JudgedRain,
  judgedDaysFilled,
  longestDryRunByYear,
  measured,
  monthlyNormals,
  type Problem,
  type RainRecord,
  spi,
  spiClass,
  type Verdict,
  verdictOrder,
  wettestDay,
} from '@eavewell/engine';
import { spoken } from '../language.ts';
import { madeBesideRecord, massLine, normalsBeside, sourcesSection, yearsSection } from './gaugeRain.ts';
import { stormSection } from './gaugeStorm.ts';
import { problemList } from './problemList.ts';
import type { Sheet } from './sheet.ts';
import { sideBySide, strip } from './strip.ts';

const { rain: words } = spoken.commandLine;
const { numbers } = spoken;

/** Over how many months the index is shown, and how many of the driest of each. */
const spans_months = [1, 3, 12] as const;
const driestShown = 3;
/** Sites listed one by one. */
const sitesShown = 10;

/** A site that uses the gauge. */
export interface SiteOnGauge {
  readonly siteId: string;
  readonly name: string;
  readonly verdict: Verdict;
  readonly dryDays: number;
  readonly filledDryDays: number;
}

/** What is known of a gauge. */
export interface GaugeShown {
  readonly gauge: GaugeFacts;
  readonly finding: GaugeFinding;
  /** As it was measured; null where no day was. */
  readonly record: RainRecord | null;
  readonly problems: readonly Problem[];
  readonly sites: readonly SiteOnGauge[];
  /** What the sites were judged by, in words. */
  readonly targets: readonly string[];
  /** Sites without a gauge of their own that have it within reach. */
  readonly withinReach_count: number;
  readonly settings: DesignSettings;
  /** Its months beside the gauges near by. */
  readonly mass: DoubleMass | null;
  readonly neighbours: readonly string[];
}

/** One gauge in full: record, years, filled days, normals, dry runs, driest months, sites, faults. */
export function gaugePage(sheet: Sheet, page: GaugeShown): void {
  const { gauge, finding, record, problems, sites, targets } = page;
  const { rain } = finding;
  sheet.heading(words.who(gauge.name, gauge.gaugeId));
  if (record) recordLines(sheet, record);
  if (rain) yearLines(sheet, rain);
  else sheet.line(words.noYears);
  if (rain) sourcesSection(sheet, rain);
  if (rain) filledSection(sheet, rain);
  if (record) normalsSection(sheet, record);
  normalsBeside(sheet, gauge, rain, record);
  if (rain) runsSection(sheet, rain);
  if (rain && rain.madeDays === 0) yearsSection(sheet, rain);
  if (record) indexSection(sheet, record);
  if (record) massLine(sheet, page.mass, page.neighbours);
  if (record && rain) madeBesideRecord(sheet, record, rain, page.settings);
  stormSection(sheet, gauge, finding, record, page.settings);
  sitesSection(sheet, sites, targets);
  if (page.withinReach_count > 0) sheet.line(words.withinReach(page.withinReach_count), 2);
  sheet.heading(words.faults);
  if (problems.length === 0) sheet.line(words.noFaults, 2);
  problemList(sheet, problems, true);
}

function recordLines(sheet: Sheet, record: RainRecord): void {
  const days = record.rain_mm.length;
  const missing = record.state.filter((state) => state !== measured).length;
  const lastDay = record.firstDay + days - 1;
  sheet.line(words.record(numbers.date(record.firstDay), numbers.date(lastDay), days, missing), 0, 2);
  const wettest = wettestDay(record);
  if (wettest) sheet.line(words.wettest(numbers.quantity(wettest.rain_mm, 'mm'), numbers.date(wettest.day)), 0, 2);
}

function yearLines(sheet: Sheet, rain: JudgedRain): void {
  sheet.line(words.years(numbers.quantity(rain.startMonth, 'month'), rain.judgedYears, rain.years.length), 0, 2);
  const left = rain.years.filter((year) => !year.judged);
  if (left.length > 0)
    sheet.line(
      words.notJudged(left.map(({ label, missing_days }) => `${label} (${numbers.days(missing_days)})`)),
      0,
      2,
    );
  sheet.line(words.mean(numbers.quantity(rain.meanAnnualRain_mm, 'mm')), 0, 2);
  const { longestRainlessRun_days: run, madeDays } = rain;
  sheet.line(words.longestRun(numbers.days(run), madeDays > 0), 0, 2);
}

function filledSection(sheet: Sheet, rain: JudgedRain): void {
  if (rain.madeDays > 0) {
    sheet.line(words.allMade, 2, 2);
    return;
  }
  sheet.heading(words.filled);
  const { neighbourDays, filledDays } = rain;
  sheet.line(words.filledBy(filledDays, filledDays - neighbourDays, neighbourDays), 2, 2);
  const { days, fromOtherYearsDays, fromNeighboursDays } = judgedDaysFilled(rain);
  const judgedFilled = fromOtherYearsDays + fromNeighboursDays;
  sheet.line(words.judgedFilled(judgedFilled, days, numbers.percent(judgedFilled / days)), 2, 2);
}

function normalsSection(sheet: Sheet, record: RainRecord): void {
  sheet.heading(words.normals);
  const shown = (value: number | null, decimals: number) =>
    value === null ? words.none : numbers.fixed(value, decimals);
  sheet.table(
    words.normalColumns.map((head, index) => ({ head, align: index === 0 ? 'left' : 'right' }) as const),
    monthlyNormals(record).map((normal) => [
      numbers.quantity(normal.month, 'month'),
      shown(normal.meanTotal_mm, 0),
      shown(normal.meanWetDays, 1),
      shown(normal.meanDaily_mm, 1),
      words.ofYears(normal.completeYears, normal.years),
    ]),
  );
  sheet.line(words.normalsKey, 2);
}

function runsSection(sheet: Sheet, rain: JudgedRain): void {
  sheet.heading(words.runs);
  const runs = longestDryRunByYear(rain.record, rain.years, 'filledToo');
  const years = rain.years.map(({ label }, i) => ({ year: label, value: runs[i]! }));
  strip(sheet, years);
  sheet.line(words.stripKey(sheet.look.drawn), 2);
  const cells = rain.years.flatMap(({ label, missing_days }, i) =>
    runs[i] === null ? [] : [`${label}${missing_days > 0 ? '*' : ' '} ${String(runs[i]).padStart(3)}`],
  );
  if (cells.length > 0) {
    sideBySide(sheet, cells, 11);
    sheet.line(words.runsKey, 2);
  }
}

function indexSection(sheet: Sheet, record: RainRecord): void {
  sheet.heading(words.driest);
  sheet.table(
    words.indexColumns.map((head, index) => ({ head, align: index === 2 || index === 3 ? 'right' : 'left' }) as const),
    spans_months.flatMap((months) => driestRows(record, months)),
  );
  const latest = spans_months.flatMap((months) => {
    const known = spi(record, months, 'lMoments').findLast((one) => one.spi !== null);
    return known ? [{ ...known, months, index: known.spi! }] : [];
  });
  for (const { months, year, month, index } of latest)
    sheet.line(
      words.latest(
        words.span(months),
        `${numbers.quantity(month, 'month')} ${year}`,
        numbers.fixed(index, 2),
        words.classes[spiClass(index)],
      ),
      2,
      2,
    );
  sheet.line(words.indexKey, 2);
}

/** The driest sums of so many months, or one row that says there is no index. */
function driestRows(record: RainRecord, months: number): readonly (readonly string[])[] {
  const known = spi(record, months, 'lMoments').flatMap((one) =>
    one.spi === null ? [] : [{ ...one, index: one.spi }],
  );
  if (known.length === 0) return [[words.span(months), words.none, words.none, words.none, words.noIndex]];
  known.sort((a, b) => a.index - b.index);
  return known
    .slice(0, driestShown)
    .map(({ year, month, sum_mm, index }) => [
      words.span(months),
      `${numbers.quantity(month, 'month')} ${year}`,
      numbers.quantity(sum_mm, 'mm'),
      numbers.fixed(index, 2),
      words.classes[spiClass(index)],
    ]);
}

/** The sites on the gauge by verdict, and those whose dry days rest most on days nobody measured. */
function sitesSection(sheet: Sheet, sites: readonly SiteOnGauge[], targets: readonly string[]): void {
  sheet.heading(words.sites);
  if (sites.length === 0) {
    sheet.line(words.noSites, 2);
    return;
  }
  const counts = { short: 0, unknown: 0, tight: 0, holds: 0 };
  for (const { verdict } of sites) counts[verdict]++;
  sheet.tally(counts, verdictOrder);
  for (const target of targets) sheet.line(target, 2, 2);
  const resting = sites.filter((site) => site.filledDryDays > 0);
  if (resting.length === 0) {
    sheet.line(words.noneRest, 2, 2);
    return;
  }
  resting.sort((a, b) => b.filledDryDays / b.dryDays - a.filledDryDays / a.dryDays || (a.siteId < b.siteId ? -1 : 1));
  sheet.table(
    words.siteColumns.map((head, index) => ({ head, align: index < 3 ? 'left' : 'right' }) as const),
    resting
      .slice(0, sitesShown)
      .map((site) => [
        site.siteId,
        site.name,
        spoken.verdicts[site.verdict],
        numbers.quantity(site.dryDays, 'number'),
        numbers.quantity(site.filledDryDays, 'number'),
      ]),
  );
  if (resting.length > sitesShown) sheet.line(words.moreSites(resting.length - sitesShown), 2);
}
