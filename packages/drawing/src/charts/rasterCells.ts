import type { Ground, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import type { Lettering } from './lettering.ts';
import type { RasterWords } from './rasterChart.ts';
import { type RasterFrame, rowOf, slotAt } from './rasterFrame.ts';
import { type DoubtKind, doubtOf, doubtSpans, type RecordInput } from './record.ts';
import { shareOf } from './scales.ts';
import { across, fill, pen, rect, stroke } from './strokes.ts';

/** Steps of how full a tank is, from nearly empty to full. */
export const tones = ['level1', 'level2', 'level3', 'level4', 'level5', 'level6'] as const satisfies readonly Ground[];
/** The tone of a dry day. */
const dryTone = tones.length;

/**
 * Which tone has a day? 0 to 5 by how full the tank is at its end, 6 where it is dry.
 *
 * @param content_L - at the end of the day [L]
 * @param tankVolume_L - usable volume [L]
 * @param isDry - is the day dry
 * @returns tone [count]
 * @definition sixths of the usable volume
 */
export function toneOf(content_L: number, tankVolume_L: number, isDry: boolean): number {
  return isDry ? dryTone : Math.min(tones.length - 1, Math.floor(shareOf(content_L, tankVolume_L) * tones.length));
}

/** One stretch of cells of one tone in a row, places in the record with the end not in it. */
export interface CellSpan {
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly tone: number;
}

/** The cells of the raster, days of one tone that adjoin taken together. */
export function cellSpans({ series, years, tankVolume_L }: RecordInput): readonly CellSpan[] {
  const { content_L, dry } = series;
  const spans: CellSpan[] = [];
  for (const [row, year] of years.entries()) {
    for (let day = year.from; day < year.to; ) {
      const tone = toneOf(content_L[day]!, tankVolume_L, dry[day] === 1);
      const from = day;
      do day++;
      while (day < year.to && toneOf(content_L[day]!, tankVolume_L, dry[day] === 1) === tone);
      spans.push({ row, from, to: day, tone });
    }
  }
  return spans;
}

/** One path a tone; rows of years not judged are thin. Dry cells are never thinner than a px. */
export function drawCells(frame: RasterFrame, input: RecordInput): readonly Shape[] {
  const { left, top, pitch, gap, pxPerSlot, startMonth } = frame;
  const rows = input.years.map((year) => rowOf(year, input.series.firstDay, startMonth));
  const paths: string[][] = [...tones, 'brick'].map(() => []);
  for (const { row, from, to, tone } of cellSpans(input)) {
    const year = input.years[row]!;
    const x = left + slotAt(rows[row]!, from - year.from) * pxPerSlot;
    const toX = left + slotAt(rows[row]!, to - year.from) * pxPerSlot;
    const thick = (pitch - gap) * (year.judged ? 1 : 0.4);
    const y = top + row * pitch + (pitch - gap - thick) / 2 + gap / 2;
    const width = tone === dryTone ? Math.max(1, toX - x) : toX - x;
    paths[tone]!.push(`M${px(x)} ${px(y)}h${px(width)}v${px(thick)}h${px(-width)}Z`);
  }
  const grounds: readonly Ground[] = [...tones, 'brick'];
  return grounds.flatMap((ground, tone) => (paths[tone]!.length === 0 ? [] : [fill(paths[tone]!.join(''), ground)]));
}

/** Is every day made up? Then no day need be ticked: the key says so. */
const isAllMade = ({ series }: RecordInput) =>
  series.state.length > 0 && series.state.every((state) => doubtOf(state) === 'made');

/** Days that were not measured: a line along the foot of their cells. */
export function drawDoubtTicks(frame: RasterFrame, input: RecordInput): readonly Shape[] {
  if (isAllMade(input)) return [];
  const { left, top, pitch, gap, pxPerSlot, startMonth } = frame;
  const paths: string[] = [];
  for (const [row, year] of input.years.entries()) {
    const own = rowOf(year, input.series.firstDay, startMonth);
    const y = top + (row + 1) * pitch - gap / 2;
    for (const { from, to } of doubtSpans(input.series.state, year.from, year.to)) {
      const x = left + slotAt(own, from - year.from) * pxPerSlot;
      paths.push(across(x, y, Math.max(x + 1, left + slotAt(own, to - year.from) * pxPerSlot)));
    }
  }
  return paths.length === 0 ? [] : [stroke(paths.join(''), pen('thin', 'ink'))];
}

/** What the tones mean, at the foot: dry, low to full, and what is not measured or judged where there is such. */
export function drawKey(
  frame: RasterFrame,
  input: RecordInput,
  words: RasterWords,
  lettering: Lettering,
): readonly Shape[] {
  const { left, top, pitch } = frame;
  const foot = top + Math.max(1, input.years.length) * pitch;
  const y = foot + 9;
  const shapes: Shape[] = [];
  let x = left;
  const said = (text: string, ground: (atX: number, atY: number) => readonly Shape[], wide: number) => {
    const wanted = lettering.set({ text, ink: 'second' }, [{ x: x + wide + 5, y: y + 9 }]);
    if (!wanted) return;
    shapes.push(...ground(x, y));
    const last = lettering.letters[lettering.letters.length - 1]!;
    x = last.x + text.length * 7 + 14;
  };
  const swatch = (tone: Ground) => (atX: number, atY: number) => [fill(rect(atX, atY, 14, 8), tone)];
  if (input.series.dry.includes(1)) said(words.dry, swatch('brick'), 14);
  const line = (atX: number, atY: number) => [stroke(across(atX, atY + 8, atX + 14), pen('thin', 'ink'))];
  said(words.low, swatch('level1'), 14);
  const steps = (atX: number, atY: number) => tones.map((tone, index) => fill(rect(atX + index * 9, atY, 9, 8), tone));
  said(words.full, steps, tones.length * 9);
  const kinds = new Set<DoubtKind>();
  for (const { kind } of doubtSpans(input.series.state, 0, input.series.state.length)) kinds.add(kind);
  for (const kind of kinds) said(words[kind], isAllMade(input) ? () => [] : line, isAllMade(input) ? 0 : 14);
  if (input.years.some((year) => !year.judged)) said(words.thinRows, () => [], 0);
  return shapes;
}
