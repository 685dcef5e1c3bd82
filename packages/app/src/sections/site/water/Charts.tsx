import {
  curveChart,
  curveFacts,
  dayByDay_days,
  monthsChart,
  monthsFacts,
  monthTotals,
  type RecordInput,
  rasterChart,
  recordFacts,
  tableOfCurve,
  tableOfDays,
  tableOfMonths,
  tableOfRaster,
  tableOfRuns,
  tableOfYears,
  traceChart,
  type YearsInput,
  yearsChart,
  yearsFacts,
} from '@eavewell/drawing';
import type { DayIndex } from '@eavewell/engine';
import { type ReactNode, useMemo, useRef, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { PictureView } from '../../../look/PictureView.tsx';
import { useWidth } from '../../../look/useWidth.ts';
import type { Judged } from '../../../water/index.ts';
import { ChartBlock } from './ChartBlock.tsx';
import { curveTitle, monthsTitle, rasterTitle, traceTitle, yearsTitle } from './chartTitles.ts';
import { chartWords } from './chartWords.ts';
import { DayPicture } from './DayPicture.tsx';

type Found = Judged['report']['storages'][number];
type Drawn = Judged['storages'][number];

/** One body of water as the charts are given it. */
export interface ChartsOf {
  readonly found: Found;
  readonly drawn: Drawn;
  readonly longestDryRun_days: number;
  /** It is the record under a question: its files are named so. */
  readonly isAsked: boolean;
}

/** Under this width a trace is told in strips [px], of so many years each. The look's. */
const [narrow, stripYears] = [640, 8] as const;

/** The record of one body of water in five pictures; a day pointed at lights up in all of them. */
export function Charts({
  of,
  siteId,
  beside,
  isBusy,
  onOpen,
}: {
  readonly of: ChartsOf;
  readonly siteId: string;
  readonly beside?: ReactNode;
  readonly isBusy: boolean;
  /** Opens a line of the working; left out where what is shown has none of its own. */
  onOpen?: ((code: string) => void) | undefined;
}) {
  const element = useRef<HTMLDivElement>(null);
  const { width, isPaper } = useWidth(element);
  return (
    <div ref={element} className="charts" aria-busy={isBusy}>
      {width === null || width < 100 ? null : <Drawn {...{ of, siteId, width, isPaper, beside, onOpen }} />}
    </div>
  );
}

// long: five charts, each its title, its picture and its table
function Drawn({
  of,
  siteId,
  width,
  isPaper,
  beside,
  onOpen,
}: {
  readonly of: ChartsOf;
  readonly siteId: string;
  readonly width: number;
  readonly isPaper: boolean;
  readonly beside?: ReactNode;
  readonly onOpen: ((code: string) => void) | undefined;
}) {
  const language = useLanguage();
  const { say, numbers } = language;
  const words = useMemo(() => chartWords(language), [language]);
  const { found, drawn, longestDryRun_days, isAsked } = of;
  const { series, years, curve } = drawn;
  const input = useMemo<RecordInput>(
    () => ({ series, years, tankVolume_L: found.tankVolume_L, longestDryRun_days }),
    [series, years, found.tankVolume_L, longestDryRun_days],
  );
  const facts = useMemo(() => recordFacts(input), [input]);
  const ofYears = useMemo<YearsInput>(
    () => ({
      ...input,
      finding: findingOf(found, series.firstDay, years),
      daysAllowed_per_year: curve.daysAllowed_per_year,
    }),
    [input, found, series.firstDay, years, curve.daysAllowed_per_year],
  );
  const isNarrow = width < narrow && !isPaper;
  const half = isNarrow || isPaper ? width : Math.floor((width - 48) / 2);
  const raster = useMemo(() => rasterChart(input, words.raster, { width }), [input, words, width]);
  const curves = useMemo(
    () =>
      curveChart(
        { curve, tankVolume_L: found.tankVolume_L, verdict: found.verdict, proposed: null, longestDryRun_days },
        words.curve,
        { width: half },
      ),
    [curve, found, longestDryRun_days, words, half],
  );
  const byYear = useMemo(() => yearsChart(ofYears, words.years, { width }), [ofYears, words, width]);
  const byMonth = useMemo(() => monthsChart(input, words.months, { width }), [input, words, width]);
  const span = { from: series.firstDay, to: series.firstDay + series.content_L.length - 1 };
  const said = (day: DayIndex) => {
    const at = day - series.firstDay;
    return words.trace.day(day, series.content_L[at] ?? 0, series.dry[at] === 1);
  };
  const tank = found.tankIds.join('+');
  const file = (what: string) => `${siteId}-${tank}-${what}${isAsked ? '-what-if' : ''}.csv`;
  const aYear = numbers.years(years.length);
  return (
    <>
      <Trace {...{ input, words, width, isNarrow, span, said }} isPaper={isPaper}>
        {(chart) => (
          <ChartBlock
            title={say('water.chart_trace', { years: aYear })}
            onHow={onOpen && (() => onOpen('storage.goodYears'))}
            finding={traceTitle(facts, longestDryRun_days, language)}
            tables={{ shown: () => tableOfRuns(input), whole: () => tableOfDays(input), file: file('days') }}
          >
            {chart}
          </ChartBlock>
        )}
      </Trace>
      <ChartBlock
        title={say('water.chart_raster')}
        onHow={onOpen && (() => onOpen('storage.dryDays'))}
        finding={rasterTitle(facts, language)}
        tables={{ shown: () => tableOfRaster(input), whole: () => tableOfRaster(input), file: file('raster') }}
      >
        <DayPicture chart={raster} name={say('water.chart_raster')} span={span} said={said} />
      </ChartBlock>
      <div className={isNarrow || isPaper ? 'beside one' : 'beside'}>
        <ChartBlock
          title={say('water.chart_curve')}
          onHow={onOpen && (() => onOpen('storage.tankForTarget'))}
          finding={curveTitle(curveFacts(curve, found.tankVolume_L), found.secondSource !== null, language)}
          tables={{
            shown: () => sizesAlone(tableOfCurve(curve), curve),
            whole: () => tableOfCurve(curve),
            file: file('sizes'),
          }}
        >
          <SizePicture chart={curves} name={say('water.chart_curve')} />
        </ChartBlock>
        {beside}
      </div>
      <ChartBlock
        title={say('water.chart_years')}
        onHow={onOpen && (() => onOpen('storage.dryDaysRange'))}
        finding={yearsTitle(yearsFacts(ofYears), language)}
        tables={{ shown: () => tableOfYears(ofYears), whole: () => tableOfYears(ofYears), file: file('years') }}
      >
        <DayPicture chart={byYear} name={say('water.chart_years')} span={span} said={said} />
      </ChartBlock>
      <ChartBlock
        title={say('water.chart_months')}
        onHow={onOpen && (() => onOpen('roof.inflow'))}
        finding={monthsTitle(monthsFacts(monthTotals(input)), language)}
        tables={{ shown: () => tableOfMonths(input), whole: () => tableOfMonths(input), file: file('months') }}
      >
        <DayPicture
          chart={{ ...byMonth, dayAt: () => null }}
          name={say('water.chart_months')}
          span={span}
          said={said}
        />
      </ChartBlock>
    </>
  );
}

/** The finding's years as the engine counts days. */
function findingOf(found: Found, firstDay: DayIndex, years: Drawn['years']): YearsInput['finding'] {
  const byLabel = new Map(years.map((year) => [year.label, firstDay + year.from]));
  return {
    ...found,
    years: found.years.map((year) => ({ ...year, firstDay: byLabel.get(year.waterYear) ?? firstDay })),
  };
}

/** The rows of the catalogue's sizes and of those that are wanted: a curve has thousands. */
function sizesAlone(table: ReturnType<typeof tableOfCurve>, curve: Drawn['curve']): ReturnType<typeof tableOfCurve> {
  const wanted = new Set<unknown>([
    ...curve.sizes.map((size) => size.tankVolume_L),
    curve.tankForDays_L,
    curve.tankForRuns_L,
    curve.tankToHold_L,
  ]);
  return { ...table, rows: table.rows.filter(([size]) => wanted.has(size)) };
}

/** The trace with its window: drag over it to come nearer, or by the buttons. */
function Trace({
  input,
  words,
  width,
  isNarrow,
  isPaper,
  span,
  said,
  children,
}: {
  readonly input: RecordInput;
  readonly words: ReturnType<typeof chartWords>;
  readonly width: number;
  readonly isNarrow: boolean;
  readonly isPaper: boolean;
  readonly span: { readonly from: DayIndex; readonly to: DayIndex };
  said(day: DayIndex): string;
  children(chart: ReactNode): ReactNode;
}) {
  const { say, numbers } = useLanguage();
  const [chosen, choose] = useState<{ from: DayIndex; to: DayIndex } | null>(null);
  const { from: first, to: last } = span;
  const window = useMemo(
    () => (chosen === null ? null : clamped(chosen, { from: first, to: last })),
    [chosen, first, last],
  );
  const strips = (isNarrow || isPaper) && window === null ? Math.max(1, Math.ceil(input.years.length / stripYears)) : 1;
  const chart = useMemo(
    () => traceChart(input, words.trace, { width, strips, window }),
    [input, words, width, strips, window],
  );
  const shown = window ?? span;
  const length = shown.to - shown.from + 1;
  const middle = Math.round((shown.from + shown.to) / 2);
  const around = (at: DayIndex, days: number) =>
    days >= span.to - span.from + 1
      ? choose(null)
      : choose({ from: at - Math.floor(days / 2), to: at + Math.ceil(days / 2) });
  const name = say('water.chart_trace', { years: numbers.years(input.years.length) });
  return children(
    <DayPicture chart={chart} name={name} span={span} said={said} onDrag={(from, to) => choose({ from, to })}>
      <p className="zoom on-screen">
        <button
          type="button"
          className="press"
          disabled={length <= least_days}
          onClick={() => around(middle, Math.max(least_days, Math.round(length / 2)))}
        >
          {say('water.zoom_in')}
        </button>
        <button type="button" className="press" disabled={window === null} onClick={() => around(middle, length * 2)}>
          {say('water.zoom_out')}
        </button>
        {window === null ? null : (
          <>
            <button type="button" className="press" onClick={() => around(middle - length, length)}>
              {say('water.zoom_earlier')}
            </button>
            <button type="button" className="press" onClick={() => around(middle + length, length)}>
              {say('water.zoom_later')}
            </button>
            <button type="button" className="press" onClick={() => choose(null)}>
              {say('water.zoom_whole')}
            </button>
            <span role="status">
              {numbers.date(window.from)} – {numbers.date(window.to)}
              {length <= dayByDay_days ? `, ${say('water.day_by_day')}` : ''}
            </span>
          </>
        )}
      </p>
    </DayPicture>,
  );
}

/** Nearer than two months nothing more is seen [day]. Ours. */
const least_days = 60;

/** A window of so many days, moved so that it lies within the record. */
function clamped({ from, to }: { from: DayIndex; to: DayIndex }, span: { from: DayIndex; to: DayIndex }) {
  const length = Math.min(to - from, span.to - span.from);
  const start = Math.max(span.from, Math.min(from, span.to - length));
  return { from: start, to: start + length };
}

function SizePicture({ chart, name }: { readonly chart: ReturnType<typeof curveChart>; readonly name: string }) {
  const [size, point] = useState<number | null>(null);
  return (
    <PictureView
      picture={chart}
      name={name}
      overlay={size === null ? [] : chart.overlayOfSize(size)}
      onPoint={({ x, y }) => point(chart.sizeAt(x, y))}
      onPress={({ x, y }) => point(chart.sizeAt(x, y))}
      onLeave={() => point(null)}
    />
  );
}
