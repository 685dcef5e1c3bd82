import type { Ground, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import type { Lettering } from './lettering.ts';
import { letterWidth_px } from './letterWidth.ts';
import { type RasterFrame, type RasterWords, rowOf, slotAt } from './rasterFrame.ts';
import { type DoubtKind, doubtOf, doubtSpans, type RecordInput } from './record.ts';
import { shareOf } from './scales.ts';
import { across, fill, group, pen, rect, stroke } from './strokes.ts';

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
  { left, top, pitch, width }: RasterFrame,
  input: RecordInput,
  words: RasterWords,
  lettering: Lettering,
): readonly Shape[] {
  const y = top + Math.max(1, input.years.length) * pitch + 9;
  const shapes: Shape[] = [];
  let x = left;
  const say = (text: string, before: readonly Shape[], wide: number) => {
    const own = letterWidth_px(text);
    const from = x + (wide > 0 ? wide + 5 : 0);
    if (from + own > width || !lettering.set({ text, ink: 'second' }, { x: from, y: y + 9 })) return;
    shapes.push(...before);
    x = from + own + 16;
  };
  if (input.series.dry.includes(1)) say(words.dry, [fill(rect(x, y, 14, 8), 'brick')], 14);
  say(words.low, [], 0);
  x -= 10;
  const steps = tones.map((tone, index) => fill(rect(x + index * 9, y, 9, 8), tone));
  const outline = stroke(rect(x, y, tones.length * 9, 8), pen('hair', 'mark'));
  say(words.full, [group('cells', steps), outline], tones.length * 9);
  const kinds = new Set<DoubtKind>();
  for (const { kind } of doubtSpans(input.series.state, 0, input.series.state.length)) kinds.add(kind);
  const isMade = isAllMade(input);
  for (const kind of kinds)
    say(words[kind], isMade ? [] : [stroke(across(x, y + 8, x + 14), pen('thin', 'ink'))], isMade ? 0 : 14);
  if (input.years.some((year) => !year.judged)) say(words.thinRows, [], 0);
  return shapes;
}
