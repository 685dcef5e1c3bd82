import type { DayIndex } from '@eavewell/engine';
import type { Shape } from '../sheet/shapes.ts';
import type { DayChart } from './chart.ts';
import { Lettering, pointedLetters } from './lettering.ts';
import { letterWidth_px } from './letterWidth.ts';
import { dryPieces, type RecordInput } from './record.ts';
import { shareOf } from './scales.ts';
import { down, group, pen, pointDot, stroke } from './strokes.ts';
import type { Strip, TraceFrame, TraceWords } from './traceFrame.ts';
import { drawRuns, letterRuns } from './traceRuns.ts';
import { drawStrip } from './traceStrip.ts';

/** How large, and which days. */
export interface TraceLayout {
  /** Width of the picture [px]. */
  readonly width: number;
  /** Strips one below the other; 1 where left out. */
  readonly strips?: number;
  /** First and last day shown; null or left out: the whole record. */
  readonly window?: { readonly from: DayIndex; readonly to: DayIndex } | null;
}

/** Up to so many days are drawn one by one, with the rain above [day]. Ours. */
export const dayByDay_days = 400;
/** Depth of the room below the base for the longest dry run, and the most a dry day hangs down [px]. Ours. */
const runsDepth_px = 66;
const mostDepth_px_per_day = 3;

/**
 * How full was the tank, day by day? Pale to the lowest level of each px's days, mid-blue up to the highest; dry runs hang
 * below the base, as deep as they are long.
 *
 * @param input - a tank's days [L], the record's years and the target's run [day]
 * @param words - its words
 * @param layout - width [px], strips [count] and the days shown
 * @returns the picture [px], and its days by place
 * @law the level of every day is within the water drawn at its place, to half a px
 * @definition ours: docs/decisions/0150
 */
export function traceChart(input: RecordInput, words: TraceWords, layout: TraceLayout): DayChart {
  const frame = frameOf(input, words, layout);
  const { strips, width, height } = frame;
  const lettering = new Lettering(width, height);
  const shapes: Shape[] = [];
  const pieces = dryPieces(input.series.dry);
  for (const strip of strips) {
    const drawn = drawStrip(strip, frame, input, words, lettering);
    shapes.push(group(null, [...drawn, ...drawRuns(strip, frame, input, pieces)]));
  }
  letterRuns(frame, input, pieces, words, lettering);
  shapes.push(...lettering.letters);
  return { width, height, pxPerM: null, shapes, handles: [], ...daysOf(frame, input, words) };
}

/** Lays the strips out: days from left to right, one scale for all. */
function frameOf(input: RecordInput, words: TraceWords, layout: TraceLayout): TraceFrame {
  const { series, tankVolume_L, longestDryRun_days } = input;
  const days = series.content_L.length;
  const from = Math.min(days, Math.max(0, (layout.window?.from ?? series.firstDay) - series.firstDay));
  const to = Math.max(from, Math.min(days, (layout.window?.to ?? series.firstDay + days - 1) - series.firstDay + 1));
  const isNarrow = layout.width < 560;
  const gutter = Math.ceil(Math.max(letterWidth_px(words.litres(tankVolume_L)), letterWidth_px(words.empty))) + 7;
  const left = isNarrow ? 1 : gutter;
  const plotWidth = Math.max(10, layout.width - left - 1);
  const parts = partsOf(input, from, to, Math.max(1, layout.strips ?? 1));
  const most = Math.max(1, ...parts.map((part) => part.to - part.from));
  const isDaily = most <= dayByDay_days;
  const shown = dryPieces(series.dry).filter((piece) => piece.to > from && piece.from < to);
  const longest = Math.min(366, Math.max(longestDryRun_days * 1.5, ...shown.map((piece) => piece.days), 1));
  const pxPerRunDay = Math.min(mostDepth_px_per_day, runsDepth_px / longest);
  const hasDoubt = series.state.subarray(from, to).some((state) => state !== 0);
  const head = 18 + (isNarrow ? 15 : 0) + (hasDoubt ? 14 : 0);
  const plotHeight = parts.length > 1 ? 56 : isDaily ? 150 : 118;
  const rainHeight = isDaily ? 58 : 0;
  let y = 0;
  const strips = parts.map((part, index): Strip => {
    const deepest = Math.max(0, ...shown.filter((p) => p.to > part.from && p.from < part.to).map((p) => p.days));
    const below = Math.max(longestDryRun_days, Math.min(366, deepest)) * pxPerRunDay;
    const top = y + (index === 0 || hasDoubt ? head : 20) + rainHeight;
    const base = top + plotHeight;
    const bottom = base + Math.max(longestDryRun_days * pxPerRunDay + 20, below + 18);
    const strip = { ...part, y, top, base, bottom, index };
    y = bottom + (parts.length > 1 ? 6 : 0);
    return strip;
  });
  return {
    strips,
    width: layout.width,
    height: Math.ceil(Math.max(y, 1)),
    left,
    pxPerDay: plotWidth / most,
    pxPerRunDay,
    isDaily,
    isNarrow,
    hasDoubt,
    rainHeight,
    told: new Set(),
  };
}

/** Whole water years to each strip where there are enough of them, else days. */
function partsOf({ years }: RecordInput, from: number, to: number, strips: number) {
  const inside = years.filter((year) => year.from >= from && year.to <= to);
  if (inside.length >= strips && inside[0]!.from === from && inside[inside.length - 1]!.to === to) {
    const each = Math.ceil(inside.length / strips);
    const count = Math.ceil(inside.length / each);
    return Array.from({ length: count }, (_, index) => ({
      from: inside[index * each]!.from,
      to: inside[Math.min(inside.length, (index + 1) * each) - 1]!.to,
    }));
  }
  const each = Math.max(1, Math.ceil((to - from) / strips));
  const count = Math.max(1, Math.ceil((to - from) / each));
  return Array.from({ length: count }, (_, index) => ({
    from: from + index * each,
    to: Math.min(to, from + (index + 1) * each),
  }));
}

/** Days by place, places by day, and what lights up. */
function daysOf(
  frame: TraceFrame,
  { series, tankVolume_L }: RecordInput,
  words: TraceWords,
): Pick<DayChart, 'dayAt' | 'placeOf' | 'overlayOf'> {
  const { strips, left, pxPerDay, width } = frame;
  const stripOf = (place: number) => strips.find((strip) => place >= strip.from && place < strip.to);
  const placeOf = (day: DayIndex) => {
    const place = day - series.firstDay;
    const strip = stripOf(place);
    if (!strip) return null;
    const x = left + (place - strip.from) * pxPerDay;
    return { x, y: strip.top, width: pxPerDay, height: strip.base - strip.top };
  };
  return {
    placeOf,
    dayAt: (x, y) => {
      const strip = strips.find((one) => y >= one.y && y <= one.bottom);
      if (!strip || strip.to === strip.from) return null;
      const place = strip.from + Math.floor((x - left) / pxPerDay);
      return place < strip.from || place >= strip.to ? null : series.firstDay + place;
    },
    overlayOf: (day) => {
      const box = placeOf(day);
      if (!box) return [];
      const place = day - series.firstDay;
      const strip = stripOf(place)!;
      const x = box.x + box.width / 2;
      const content_L = series.content_L[place]!;
      const y = strip.base - shareOf(content_L, tankVolume_L) * (strip.base - strip.top);
      const text = words.day(day, content_L, series.dry[place] === 1);
      const letters = pointedLetters([{ text, isStrong: true }], { x, y: strip.top + 15 }, width);
      return [
        stroke(down(x, strip.top - frame.rainHeight, strip.bottom), pen('hair', 'ink')),
        pointDot(x, y),
        ...letters,
      ];
    },
  };
}
