import { calendarDay, dryRuns, isoDay } from '@eavewell/engine';
import type { ChartTable } from './chart.ts';
import { monthFlows, monthTotals } from './monthTotals.ts';
import { doubtOf, type RecordInput, runsOf, yearOf } from './record.ts';
import { readCurve, type WaterCurve } from './waterCurve.ts';
import type { YearsInput } from './yearsChart.ts';

/**
 * The days of the trace and of the raster as a table: a row a day.
 *
 * @param input - a tank's days
 * @param window - first and last day wanted; null: all
 * @returns date, water year, level, rain, what ran in, what was taken and spilled [L], [mm]; dry 1 or 0; how the rain is known
 * @definition the series as it is drawn
 */
export function tableOfDays(
  { series, years }: RecordInput,
  window: { readonly from: number; readonly to: number } | null = null,
): ChartTable {
  const days = series.content_L.length;
  const from = Math.max(0, (window?.from ?? series.firstDay) - series.firstDay);
  const to = Math.min(days, (window?.to ?? series.firstDay + days - 1) - series.firstDay + 1);
  const rows = Array.from({ length: Math.max(0, to - from) }, (_, index) => {
    const day = from + index;
    const year = yearOf(years, day);
    return [
      isoDay(series.firstDay + day),
      year?.label ?? null,
      year?.judged ? 1 : 0,
      series.content_L[day]!,
      series.rain_mm[day]!,
      series.inflow_L[day]!,
      series.judgedAsked_L[day]!,
      series.judgedTaken_L[day]!,
      series.otherTaken_L[day]!,
      series.spill_L[day]!,
      series.secondSource_L[day]!,
      series.dry[day]!,
      doubtOf(series.state[day]) ?? 'measured',
    ];
  });
  return {
    columns: [
      { key: 'date', unit: '' },
      { key: 'waterYear', unit: 'year' },
      { key: 'judged', unit: '' },
      { key: 'content_L', unit: 'L' },
      { key: 'rain_mm', unit: 'mm' },
      { key: 'inflow_L', unit: 'L' },
      { key: 'judgedAsked_L', unit: 'L' },
      { key: 'judgedTaken_L', unit: 'L' },
      { key: 'otherTaken_L', unit: 'L' },
      { key: 'spill_L', unit: 'L' },
      { key: 'secondSource_L', unit: 'L' },
      { key: 'dry', unit: '' },
      { key: 'rainIs', unit: '' },
    ],
    rows,
  };
}

/**
 * The dry runs of the trace as a table, longest first.
 *
 * @param input - a tank's days, years and the target's run [day]
 * @returns first and last day, length [day], the water year it counts for, and 1 where it is over the target
 * @definition runs as the engine counts them
 */
export function tableOfRuns(input: RecordInput): ChartTable {
  return {
    columns: [
      { key: 'from', unit: '' },
      { key: 'to', unit: '' },
      { key: 'length_days', unit: 'day' },
      { key: 'waterYear', unit: 'year' },
      { key: 'isOverTarget', unit: '' },
    ],
    rows: runsOf(input).map(({ from, to, days, waterYear }) => [
      isoDay(from),
      isoDay(to),
      days,
      waterYear,
      days > input.longestDryRun_days ? 1 : 0,
    ]),
  };
}

/**
 * The raster as a table: a row a water year, dry days of each month and the longest run.
 *
 * @param input - a tank's days, years and the target's run [day]
 * @returns water year, judged 1 or 0, dry days by month of the calendar and in all [day], longest run [day], days not measured [day]
 * @definition counts of the cells
 */
export function tableOfRaster({ series, years }: RecordInput): ChartTable {
  const { longestByYear_days } = dryRuns(series.dry, years, series.firstDay);
  const months = Array.from({ length: 12 }, (_, index) => index + 1);
  const rows = years.map((year, index) => {
    const byMonth = new Array<number>(12).fill(0);
    let notMeasured = 0;
    for (let day = year.from; day < year.to; day++) {
      if (series.dry[day] === 1) byMonth[calendarDay(series.firstDay + day).month - 1]!++;
      if (doubtOf(series.state[day]) !== null) notMeasured++;
    }
    const dryDays = byMonth.reduce((sum, days) => sum + days, 0);
    return [year.label, year.judged ? 1 : 0, ...byMonth, dryDays, longestByYear_days[index]!, notMeasured];
  });
  return {
    columns: [
      { key: 'waterYear', unit: 'year' },
      { key: 'judged', unit: '' },
      ...months.map((month) => ({ key: `dryInMonth${month}_days`, unit: 'day' })),
      { key: 'dry_days', unit: 'day' },
      { key: 'longestRun_days', unit: 'day' },
      { key: 'notMeasured_days', unit: 'day' },
    ],
    rows,
  };
}

/**
 * The curve as a table: every size at which one of its lines steps, the catalogue's, and the smallest that would do.
 *
 * @param curve - every size
 * @returns size [L], dry days a year [day/year], good years [year]
 * @definition `readCurve` at each volume; a size at which the lines step stands with what it does itself, so all sizes up to the next do the same
 */
export function tableOfCurve(curve: WaterCurve): ChartTable {
  const finite = (sizes: Iterable<number | null>) =>
    [...sizes].filter((size): size is number => size !== null && Number.isFinite(size));
  const volumes = new Set<number>(finite(curve.sizes.map((size) => size.tankVolume_L)));
  if (curve.isExact) {
    volumes.add(0);
    for (const size of finite([...curve.critical_L, ...curve.needs_L])) volumes.add(size);
    for (const size of finite([curve.tankForDays_L, curve.tankForRuns_L, curve.tankToHold_L])) volumes.add(size);
  }
  const ascending = [...volumes].sort((a, b) => a - b);
  return {
    columns: [
      { key: 'tankVolume_L', unit: 'L' },
      { key: 'dryDays_per_year', unit: 'day/year' },
      { key: 'goodYears', unit: 'year' },
    ],
    rows: ascending.map((size) => {
      const { dryDays_per_year, goodYears } = readCurve(curve, size);
      return [size, dryDays_per_year, goodYears];
    }),
  };
}

/**
 * The years as a table, and the years to come as its last row.
 *
 * @param input - what was found of the record
 * @returns water year, judged 1 or 0, dry days, longest run, filled days [day]; last the mean of the judged years with its range [day/year]
 * @definition the finding as it is drawn
 */
export function tableOfYears({ finding }: Pick<YearsInput, 'finding'>): ChartTable {
  const { years, dryDays_per_year, dryDays_per_year_range, judgedYears } = finding;
  const rows = years.map((year) => [
    year.waterYear,
    year.judged ? 1 : 0,
    year.dryDays,
    year.longestRun_days,
    year.filledDays,
    null,
    null,
  ]);
  const mean = ['mean', null, dryDays_per_year, null, null, dryDays_per_year_range.low, dryDays_per_year_range.high];
  return {
    columns: [
      { key: 'waterYear', unit: 'year' },
      { key: 'judged', unit: '' },
      { key: 'dry_days', unit: 'day' },
      { key: 'longestRun_days', unit: 'day' },
      { key: 'filled_days', unit: 'day' },
      { key: 'low_days', unit: 'day' },
      { key: 'high_days', unit: 'day' },
    ],
    rows: judgedYears > 0 ? [...rows, mean] : rows,
  };
}

/**
 * The months as a table: a row a month of the calendar, in the order of the water year.
 *
 * @param input - a tank's days and years
 * @returns month, and of each flow mean and range over the years [L]
 * @law the means × years are the sums of the days
 * @definition `monthTotals`
 */
export function tableOfMonths(input: RecordInput): ChartTable {
  const { months, means } = monthTotals(input);
  return {
    columns: [
      { key: 'month', unit: 'month' },
      ...monthFlows.flatMap((flow) => [
        { key: `${flow}_L`, unit: 'L' },
        { key: `${flow}Low_L`, unit: 'L' },
        { key: `${flow}High_L`, unit: 'L' },
      ]),
    ],
    rows: months.map((month, index) => [
      month,
      ...monthFlows.flatMap((flow) => {
        const { mean_L, low_L, high_L } = means[flow][index]!;
        return [mean_L, low_L, high_L];
      }),
    ]),
  };
}

/** Decimals of a figure in a file: as many as the answer of the program has. What lies beyond is dust of binary figures. */
const csvDecimals = 6;

/**
 * A table as CSV text, for a file.
 *
 * @param table - columns and rows
 * @returns RFC 4180 with a head of keys, figures to six decimals; what is not known is empty
 * @source rfc-4180, section 2
 */
export function csvOf({ columns, rows }: ChartTable): string {
  const cell = (value: number | string | null) => {
    if (value === null) return '';
    const text = typeof value === 'number' ? String(Number(value.toFixed(csvDecimals))) : value;
    return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  };
  const lines = [columns.map(({ key }) => key), ...rows].map((row) => row.map(cell).join(','));
  return `${lines.join('\r\n')}\r\n`;
}
