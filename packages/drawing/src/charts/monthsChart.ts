import { calendarDay, type DayIndex } from '@eavewell/engine';
import type { Picture, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import { type Box, isWithin } from './chart.ts';
import { Lettering, lettersAt } from './lettering.ts';
import { type MonthFlow, type MonthTotals, monthFlows, monthTotals } from './monthTotals.ts';
import { type RecordInput, yearOf } from './record.ts';
import { axisEnd } from './scales.ts';
import { across, down, fill, group, pen, pointDot, rect, stroke } from './strokes.ts';

/** The words of the months, in the reader's language. */
export interface MonthsWords {
  month(month: number, isNarrow: boolean): string;
  /** `caught`, `taken to drink and cook`, … */
  flow(flow: MonthFlow): string;
  litres(volume_L: number): string;
  /** `140,000 L a year`; of what never happens: `never`. */
  ofYear(flow: MonthFlow, volume_L: number): string;
  /** `line: eight years in ten` */
  readonly range: string;
  /** `Aug 2010: 4,100 L` */
  at(month: number, year: number, volume_L: number): string;
}

/** A picture of months: a day pointed at lights the month it is in, with that month's own litres. */
export interface MonthsChart extends Picture {
  /** 1 to 12; null outside the frames. */
  monthAt(x: number, y: number): number | null;
  placesOf(month: number): readonly Box[];
  overlayOf(day: DayIndex): readonly Shape[];
}

interface Panel {
  readonly flow: MonthFlow;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly top: number;
  readonly base: number;
  readonly most_L: number;
}

const headHeight_px = 26;
const plotHeight_px = 62;
const footHeight_px = 34;

/**
 * How many litres are caught, taken, spilled and short, by month of the year? A frame for each, with its own scale from zero.
 *
 * @param input - a tank's days [L] and the record's years
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px], and its months by place
 * @definition ours: docs/decisions/0153
 */
export function monthsChart(input: RecordInput, words: MonthsWords, layout: { readonly width: number }): MonthsChart {
  const totals = monthTotals(input);
  const { width } = layout;
  const panels = panelsOf(totals, width);
  const last = panels[panels.length - 1];
  const height = (last ? last.base + footHeight_px : 20) + 14;
  const lettering = new Lettering(width, height);
  const isNarrow = width < 1100;
  const shapes = panels.map((panel) =>
    group(`flow:${panel.flow}`, drawPanel(panel, totals, words, lettering, isNarrow)),
  );
  lettering.set({ text: words.range, ink: 'second' }, { x: 1, y: height - 6 });
  return {
    width,
    height,
    pxPerM: null,
    shapes: [...shapes, ...lettering.letters],
    handles: [],
    ...monthsOf(panels, totals, input, words),
  };
}

/** What is never there is left out, but that nothing is short is told. */
function panelsOf({ means }: MonthTotals, width: number): readonly Panel[] {
  const flows = monthFlows.filter(
    (flow) => flow === 'short' || flow === 'caught' || means[flow].some((one) => one.high_L > 0 || one.mean_L > 0),
  );
  const columns = width >= 900 ? 3 : width >= 560 ? 2 : 1;
  const gap = 28;
  const own = (width - gap * (columns - 1)) / columns;
  const each = headHeight_px + plotHeight_px + footHeight_px;
  return flows.map((flow, index) => {
    const y = Math.floor(index / columns) * each;
    const most = Math.max(0, ...means[flow].map((one) => Math.max(one.mean_L, one.high_L)));
    const top = y + headHeight_px;
    return {
      flow,
      x: (index % columns) * (own + gap),
      y,
      width: own,
      top,
      base: top + plotHeight_px,
      most_L: axisEnd(most),
    };
  });
}

const columnOf = ({ x, width }: Panel, index: number) => ({ x: x + (index * width) / 12, width: width / 12 });
const yOf = ({ base, top, most_L }: Panel, litres: number) => base - (Math.min(litres, most_L) / most_L) * (base - top);

/** Mean as a bar from zero, eight years in ten as a line over it. */
function drawPanel(
  panel: Panel,
  { means, months }: MonthTotals,
  words: MonthsWords,
  lettering: Lettering,
  isNarrow: boolean,
): readonly Shape[] {
  const { flow, x, y, width, base, top, most_L } = panel;
  const bars: string[] = [];
  const ranges: string[] = [];
  for (const [index, { mean_L, low_L, high_L }] of means[flow].entries()) {
    const column = columnOf(panel, index);
    const middle = column.x + column.width / 2;
    const thick = column.width * 0.62;
    if (mean_L > 0) bars.push(rect(middle - thick / 2, yOf(panel, mean_L), thick, base - yOf(panel, mean_L)));
    if (high_L > low_L) {
      const [from, to] = [yOf(panel, low_L), yOf(panel, high_L)];
      ranges.push(`M${px(middle)} ${px(from)}V${px(to)}M${px(middle - 3)} ${px(from)}h6M${px(middle - 3)} ${px(to)}h6`);
    }
    const text = words.month(months[index]!, isNarrow);
    lettering.set({ text, ink: 'second' }, { x: middle, y: base + 16, anchor: 'middle' }, { room: 0 });
  }
  const year_L = means[flow].reduce((sum, one) => sum + one.mean_L, 0);
  const isShort = flow === 'short' && year_L > 0;
  const name = { text: words.flow(flow), isStrong: true, ink: isShort ? ('brick' as const) : ('ink' as const) };
  lettering.set([name, { text: words.ofYear(flow, year_L), ink: 'second' }], { x: x + 1, y: y + 13 }) ||
    lettering.set(name, { x: x + 1, y: y + 13 });
  const hasAny = bars.length > 0 || ranges.length > 0;
  if (hasAny)
    lettering.set({ text: words.litres(most_L), ink: 'second' }, { x: x + width, y: top - 3 + 0, anchor: 'end' });
  const ground = isShort ? 'brick' : flow === 'spilled' ? 'low' : 'water';
  const edge = isShort ? null : pen('hair', 'waterline');
  return [
    ...(hasAny ? [stroke(across(x, top, x + width), pen('hair', 'rule'))] : []),
    ...(bars.length > 0 ? [fill(bars.join(''), ground, edge)] : []),
    ...(ranges.length > 0 ? [stroke(ranges.join(''), pen('thin', 'ink'))] : []),
    stroke(across(x, base, x + width), pen('thin', 'ink')),
  ];
}

function monthsOf(
  panels: readonly Panel[],
  totals: MonthTotals,
  { series, years }: RecordInput,
  words: MonthsWords,
): Pick<MonthsChart, 'monthAt' | 'placesOf' | 'overlayOf'> {
  const boxesAt = (index: number) =>
    panels.map((panel) => ({ ...columnOf(panel, index), y: panel.top, height: panel.base - panel.top }));
  return {
    placesOf: (month) => (totals.months.includes(month) ? boxesAt(totals.months.indexOf(month)) : []),
    monthAt: (x, y) => {
      const panel = panels.find((own) =>
        isWithin({ x: own.x, y: own.y, width: own.width, height: own.base - own.y + footHeight_px / 2 }, x, y),
      );
      if (!panel) return null;
      return totals.months[Math.min(11, Math.max(0, Math.floor(((x - panel.x) / panel.width) * 12)))] ?? null;
    },
    overlayOf: (day) => {
      const year = yearOf(years, day - series.firstDay);
      const { month } = calendarDay(day);
      const own = year && totals.each.find((one) => one.waterYear === year.label && one.month === month);
      if (!own) return [];
      const index = totals.months.indexOf(month);
      return panels.flatMap((panel) => {
        const column = columnOf(panel, index);
        const litres = own.litres[panel.flow];
        const text = [{ text: words.at(month, own.year, litres), isStrong: true }];
        const at = { x: panel.x + panel.width, y: panel.y + 13, anchor: 'end' as const };
        const { box, letters } = lettersAt(text, at);
        const x = column.x + column.width / 2;
        return [
          fill(rect(box.x - 4, box.y, box.width + 4, panel.top - 2 - box.y), 'paper'),
          ...letters,
          stroke(down(x, panel.top, panel.base + 4), pen('hair', 'ink')),
          litres > panel.most_L ? beyondDart(x, panel.top) : pointDot(x, yOf(panel, litres)),
        ];
      });
    },
  };
}

/** A month with more than the axis reaches: a dart that points beyond it. */
function beyondDart(x: number, top: number): Shape {
  return fill(`M${px(x - 4.5)} ${px(top + 4)}h9l-4.5 -9Z`, 'ink');
}
