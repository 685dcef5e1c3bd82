import { type DayIndex, dryRuns } from '@eavewell/engine';
import type { Shape } from '../sheet/shapes.ts';
import type { Box, DayChart } from './chart.ts';
import { Lettering, lettersAt } from './lettering.ts';
import { letterWidth_px } from './letterWidth.ts';
import { drawCells, drawDoubtTicks, drawKey } from './rasterCells.ts';
import { type RasterFrame, type RasterWords, rasterFrame, rowOf, slotAt, slotOf, slots_days } from './rasterFrame.ts';
import { type RecordInput, yearOf } from './record.ts';
import { yearStep } from './scales.ts';
import { across, down, fill, group, pen, rect, stroke } from './strokes.ts';

/**
 * How full was the tank on every day of the record, a row a water year? Dry days are solid, others the paler the emptier the
 * tank. Beside it the longest dry run of each year against the limit.
 *
 * @param input - a tank's days [L], the record's years and the target's run [day]
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px], and its days by place
 * @law each day of the record has one cell
 * @definition ours: docs/decisions/0150
 */
export function rasterChart(input: RecordInput, words: RasterWords, layout: { readonly width: number }): DayChart {
  const frame = rasterFrame(input, words, layout.width);
  const { width, height } = frame;
  const lettering = new Lettering(width, height);
  const shapes: Shape[] = [
    group('cells', drawCells(frame, input)),
    ...drawMonths(frame, words, lettering),
    ...drawDoubtTicks(frame, input),
    ...drawLongest(frame, input, words, lettering),
    ...drawKey(frame, input, words, lettering),
  ];
  letterYears(frame, input, words, lettering);
  return {
    width,
    height,
    pxPerM: null,
    shapes: [...shapes, ...lettering.letters],
    handles: [],
    ...daysOf(frame, input, words),
  };
}

function drawMonths(
  { left, top, pitch, pxPerSlot, height, startMonth, isNarrow }: RasterFrame,
  words: RasterWords,
  lettering: Lettering,
) {
  const bottom = height - 48;
  const lines: string[] = [];
  for (let index = 0; index < 12; index++) {
    const month = ((startMonth - 1 + index) % 12) + 1;
    const x = left + slotOf(month, 1, startMonth) * pxPerSlot;
    if (index > 0) lines.push(down(x, top, bottom));
    lettering.set({ text: words.month(month, isNarrow), ink: 'second' }, { x: x + 2, y: 14 });
  }
  return [stroke(lines.join(''), pen(pitch >= 5 ? 'thin' : 'hair', 'paper'))];
}

/** Years beside their rows, as many as have room, the last among them where it has. */
function letterYears(
  { left, top, pitch }: RasterFrame,
  { years }: RecordInput,
  words: RasterWords,
  lettering: Lettering,
) {
  const step = yearStep(pitch, 21);
  const name = (index: number) =>
    lettering.set(
      { text: words.year(years[index]!.label), ink: 'second' },
      { x: left - 6, y: top + (index + 0.5) * pitch + 4.5, anchor: 'end' },
    );
  for (const [index, { label }] of years.entries()) if (label % step === 0) name(index);
  for (const index of [0, years.length - 1]) if (years[index]) name(index);
}

/** The longest dry run of each year: a bar from a line, the limit dashed, the worst lettered. */
function drawLongest(
  frame: RasterFrame,
  { series, years, longestDryRun_days }: RecordInput,
  words: RasterWords,
  lettering: Lettering,
) {
  const { left, top, plotWidth, pitch, gap, width, height, isNarrow } = frame;
  const x = left + plotWidth + (isNarrow ? 10 : 22);
  const room = width - x - letterWidth_px(words.days(999), 'lettering', true) - 6;
  const { longestByYear_days } = dryRuns(series.dry, years, series.firstDay);
  const most = Math.max(longestDryRun_days * 1.3, 1, ...longestByYear_days.map((days) => Math.min(366, days)));
  const xOf = (days: number) => x + (Math.min(366, days) / most) * room;
  const bars = { over: [] as string[], under: [] as string[], other: [] as string[] };
  for (const [index, days] of longestByYear_days.entries()) {
    if (days === 0) continue;
    const d = rect(x, top + index * pitch + gap, xOf(days) - x, pitch - 2 * gap);
    bars[!years[index]!.judged ? 'other' : days > longestDryRun_days ? 'over' : 'under'].push(d);
  }
  const bottom = height - 48;
  const worst = [...longestByYear_days.entries()]
    .filter(([index, days]) => days > 0 && years[index]!.judged)
    .sort((a, b) => b[1] - a[1]);
  for (const [index, days] of worst.slice(0, 3)) {
    const ink = days > longestDryRun_days ? ('brick' as const) : ('second' as const);
    lettering.set(
      { text: words.days(days), isStrong: true, ink },
      { x: xOf(days) + 5, y: top + (index + 0.5) * pitch + 4.5 },
    );
  }
  const head = [
    { x: x - (isNarrow ? 4 : 0), y: 14 },
    { x: width, y: 14, anchor: 'end' as const },
  ];
  lettering.set({ text: words.longestRun(isNarrow), ink: 'second' }, head);
  lettering.set({ text: words.days(longestDryRun_days), ink: 'second' }, [
    { x: xOf(longestDryRun_days), y: bottom + 17, anchor: 'middle' },
    { x: width, y: bottom + 17, anchor: 'end' },
  ]);
  return [
    ...(bars.under.length > 0 ? [fill(bars.under.join(''), 'mark')] : []),
    ...(bars.over.length > 0 ? [fill(bars.over.join(''), 'brick')] : []),
    ...(bars.other.length > 0 ? [fill(bars.other.join(''), 'paper', pen('hair', 'mark'))] : []),
    stroke(down(x, top - 3, bottom), pen('thin', 'mark')),
    stroke(down(xOf(longestDryRun_days), top - 3, bottom + 4), pen('hair', 'ink', 'unknown')),
  ];
}

function daysOf(
  frame: RasterFrame,
  { series, years }: RecordInput,
  words: RasterWords,
): Pick<DayChart, 'dayAt' | 'placeOf' | 'overlayOf'> {
  const { left, top, pitch, pxPerSlot, plotWidth, startMonth } = frame;
  const rows = years.map((year) => rowOf(year, series.firstDay, startMonth));
  const placeOf = (day: DayIndex): Box | null => {
    const year = yearOf(years, day - series.firstDay);
    if (!year) return null;
    const row = years.indexOf(year);
    const offset = day - series.firstDay - year.from;
    const from = slotAt(rows[row]!, offset);
    const x = left + from * pxPerSlot;
    return { x, y: top + row * pitch, width: (slotAt(rows[row]!, offset + 1) - from) * pxPerSlot, height: pitch };
  };
  return {
    placeOf,
    dayAt: (x, y) => {
      const row = Math.floor((y - top) / pitch);
      const year = years[row];
      if (!year || x < left || x > left + plotWidth) return null;
      const slot = Math.min(slots_days - 1, Math.floor((x - left) / pxPerSlot));
      const { firstSlot, before28 } = rows[row]!;
      const counted = slot - firstSlot;
      const offset = counted > before28 ? Math.max(before28, counted - 1) : counted;
      return offset < 0 || offset >= year.to - year.from ? null : series.firstDay + year.from + offset;
    },
    overlayOf: (day) => {
      const box = placeOf(day);
      if (!box) return [];
      const place = day - series.firstDay;
      const text = words.day(day, series.content_L[place]!, series.dry[place] === 1);
      const x = box.x + box.width / 2;
      const own = lettersAt([{ text, isStrong: true }], { x: 0, y: 0 }).box.width;
      const at = { x: Math.min(Math.max(x - own / 2, 0), Math.max(0, frame.width - own)), y: 14 };
      const under = fill(rect(at.x - 4, 0, own + 8, top - 3), 'paper');
      const cell = rect(box.x - 1.5, box.y - 1.5, box.width + 3, box.height + 3);
      return [
        under,
        ...lettersAt([{ text, isStrong: true }], at).letters,
        stroke(down(x, top - 3, box.y - 1.5), pen('hair', 'ink')),
        stroke(across(left - 4, box.y + box.height / 2, left), pen('edge', 'ink')),
        stroke(cell, pen('edge', 'ink')),
      ];
    },
  };
}
