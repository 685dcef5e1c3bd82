import type { DayIndex, GermBand, SamplePoint } from '@eavewell/engine';
import { Lettering } from '../charts/lettering.ts';
import { monthStarts, yearStarts } from '../charts/scales.ts';
import { across, down, fill, group, pen, rect, ring, stroke } from '../charts/strokes.ts';
import type { Picture, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';

/** One sample on the picture. */
export interface SampleDot {
  readonly takenOn: DayIndex;
  readonly point: SamplePoint;
  readonly sign: 'less' | 'equal' | 'more';
  readonly count_per_100mL: number;
  readonly low_per_100mL: number | null;
  readonly high_per_100mL: number | null;
  readonly isBeforeHandOver: boolean;
}

/** The words of the samples, in the reader's language. */
export interface SamplesWords {
  band(band: GermBand): string;
  /** A limit of a band on the axis: `10`. */
  count(count: number): string;
  /** What is counted: `E. coli in 100 mL`. */
  readonly axis: string;
  month(year: number, month: number): string;
  year(year: number): string;
}

/** Height of a band, what stands over and under all [px]; and from where on the days begin. */
const [band_px, head_px, foot_px, left_px] = [34, 22, 22, 44] as const;
/** From the highest band down, each with its lower limit. */
const bands = [
  { band: 'veryHigh', from: 100 },
  { band: 'high', from: 10 },
  { band: 'intermediate', from: 1 },
  { band: 'low', from: 0 },
] as const satisfies readonly { readonly band: GermBand; readonly from: number }[];
const base_px = head_px + bands.length * band_px;

/** Where a count stands: a tenfold step is a band; under 1 it lies in the lowest, over 1,000 at the rim. */
function yOf(count: number): number {
  const steps = count > 0 ? Math.log10(count) + 1 : 0.4;
  return base_px - Math.min(4, Math.max(0.25, steps)) * band_px;
}

/**
 * The samples in time, each with its limits, over the bands of E. coli.
 *
 * @param samples - in the order of their days
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px]
 * @definition ours: docs/decisions/0233-the-way-of-the-water.md
 */
export function samplesPicture(
  samples: readonly SampleDot[],
  words: SamplesWords,
  { width }: { readonly width: number },
): Picture {
  const height = base_px + foot_px;
  const lettering = new Lettering(width, height);
  const right = width - 12;
  const [first, last] = [samples[0]?.takenOn ?? 0, samples.at(-1)?.takenOn ?? 0];
  // A year at least, so that two samples of one week are not as far apart as two of two years.
  const room = Math.max(0, 365 - (last - first)) / 2;
  const [from, to] = [Math.floor(first - room - 15), Math.ceil(last + room + 15)];
  const xOf = (day: DayIndex) => left_px + ((day - from) / (to - from)) * (right - left_px);
  const shapes: Shape[] = [];
  lettering.set({ text: words.axis, ink: 'second' }, { x: 1, y: 13 });
  for (const [nth, { band, from: limit }] of bands.entries()) {
    const top = head_px + nth * band_px;
    if (band === 'veryHigh' || band === 'high')
      shapes.push(fill(rect(left_px, top, right - left_px, band_px), 'brickWash'));
    if (band === 'intermediate') shapes.push(fill(rect(left_px, top, right - left_px, band_px), 'ochreWash'));
    shapes.push(stroke(across(left_px, top + band_px, right), pen(limit === 0 ? 'thin' : 'hair', 'ink')));
    if (limit > 0)
      lettering.set(
        { text: words.count(limit), ink: 'second' },
        { x: left_px - 5, y: top + band_px + 4, anchor: 'end' },
      );
  }
  const dots = samples.map((sample) => dotOf(sample, xOf(sample.takenOn)));
  for (const { takenOn, count_per_100mL: count, low_per_100mL: low, high_per_100mL: high } of samples) {
    const [top, foot] = [yOf(high ?? count), yOf(low ?? count)];
    lettering.keepOff({ x: xOf(takenOn) - 7, y: top - 9, width: 14, height: foot - top + 18 });
  }
  for (const [nth, { band }] of bands.entries())
    lettering.set({ text: words.band(band), ink: 'second' }, [
      { x: right - 3, y: head_px + nth * band_px + 15, anchor: 'end' },
      { x: left_px + 4, y: head_px + nth * band_px + 15 },
    ]);
  shapes.push(...ticksOf(from, to, xOf, words, lettering));
  return { width, height, pxPerM: null, shapes: [...shapes, ...dots, ...lettering.letters], handles: [] };
}

function ticksOf(
  from: DayIndex,
  to: DayIndex,
  xOf: (day: DayIndex) => number,
  words: SamplesWords,
  lettering: Lettering,
) {
  const years = yearStarts(from, to);
  const months = to - from < 900 ? monthStarts(from, to).filter(({ month }) => month % 3 === 1) : [];
  for (const { year, month, day } of months)
    lettering.set(
      { text: words.month(year, month), ink: 'second' },
      { x: xOf(day), y: base_px + 17, anchor: 'middle' },
      { room: 8 },
    );
  if (months.length === 0)
    for (const { year, day } of years)
      lettering.set(
        { text: words.year(year), ink: 'second' },
        { x: xOf(day), y: base_px + 17, anchor: 'middle' },
        { room: 8 },
      );
  const ticks = (months.length > 0 ? months : years).map(({ day }) => down(xOf(day), base_px, base_px + 4)).join('');
  return ticks === '' ? [] : [stroke(ticks, pen('thin', 'ink'))];
}

/** A dot for a tap, a square for a container, a triangle for a tank, a ring for other water; hollow where it was before hand-over. */
function dotOf(sample: SampleDot, x: number): Shape {
  const { point, sign, count_per_100mL: count, low_per_100mL: low, high_per_100mL: high, isBeforeHandOver } = sample;
  const y = yOf(sign === 'less' ? Math.min(count, 1) * 0.5 : count);
  const ink = isBeforeHandOver ? 'mark' : 'ink';
  const [top, foot] = [yOf(high ?? count), yOf(low ?? count)];
  const range = sign === 'equal' && foot - top > 2 ? [stroke(down(x, top, foot), pen('thin', ink))] : [];
  const dart = sign === 'more' ? [stroke(`M${px(x - 4)} ${px(y - 9)}l4 -5l4 5`, pen('edge', ink))] : [];
  const ground = isBeforeHandOver || point === 'secondSource' ? 'paper' : 'ink';
  return group(`sample:${sample.takenOn}`, [...range, ...dart, fill(signOf[point](x, y), ground, pen('edge', ink))]);
}

const signOf: Readonly<Record<SamplePoint, (x: number, y: number) => string>> = {
  tap: (x, y) => ring(x, y, 5),
  secondSource: (x, y) => ring(x, y, 5),
  container: (x, y) => rect(x - 4.5, y - 4.5, 9, 9),
  tank: (x, y) => `M${px(x - 5.5)} ${px(y + 4.5)}h11l-5.5 -10Z`,
};
