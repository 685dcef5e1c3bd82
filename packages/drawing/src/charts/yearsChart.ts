import type { DayIndex, StorageFinding, WaterYear } from '@eavewell/engine';
import type { Shape } from '../sheet/shapes.ts';
import type { Box, DayChart } from './chart.ts';
import { Lettering, lettersAt } from './lettering.ts';
import { letterWidth_px } from './letterWidth.ts';
import { dryPieces, type RecordInput, yearOf } from './record.ts';
import { stepsUp, ticksTo, yearStep } from './scales.ts';
import { across, down, fill, group, pen, rect, stroke } from './strokes.ts';

/** A record with what the engine found of it. */
export interface YearsInput extends RecordInput {
  readonly finding: Pick<StorageFinding, 'years' | 'dryDays_per_year' | 'dryDays_per_year_range' | 'judgedYears'>;
  /** Dry days a mean year may have. */
  readonly daysAllowed_per_year: number;
}

/** The words of the years, in the reader's language. */
export interface YearsWords {
  year(year: number): string;
  count(days: number): string;
  days(days: number): string;
  /** `dry days of the year` */
  readonly head: string;
  /** `solid: a dry run over 7 d; hollow: not judged` */
  key(longestDryRun_days: number, hasOthers: boolean): string;
  /** `target: at most 18 d in the mean` */
  target(days_per_year: number): string;
  /** `mean 21.7 d`, `likely 15 to 29` */
  mean(days_per_year: number): string;
  likely(low: number, high: number): string;
  /** `coming years` */
  readonly coming: string;
  /** `2010: 74 dry days, longest run 54` */
  yearAt(year: number, dryDays: number, longestRun_days: number, isJudged: boolean): string;
}

interface YearsFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly base: number;
  readonly width: number;
  readonly height: number;
  readonly pitch: number;
  readonly most: number;
  readonly sideX: number;
  readonly sideWidth: number;
}

/**
 * How many days of each year were dry, and how many are likely in those to come?
 *
 * @param input - the record, what was found of it, and the target [day/year]
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px]; a place means the day its year's longest dry run begins, or its lowest level
 * @definition ours: docs/decisions/0152
 */
export function yearsChart(input: YearsInput, words: YearsWords, layout: { readonly width: number }): DayChart {
  const frame = frameOf(input, words, layout.width);
  const { width, height } = frame;
  const lettering = new Lettering(width, height);
  const shapes: Shape[] = [
    ...drawFrame(frame, input, words, lettering),
    group(null, drawBars(frame, input, words, lettering)),
    ...drawComing(frame, input, words, lettering),
  ];
  letterTarget(frame, input, words, lettering);
  return {
    width,
    height,
    pxPerM: null,
    shapes: [...shapes, ...lettering.letters],
    handles: [],
    ...daysOf(frame, input, words),
  };
}

function frameOf({ finding, daysAllowed_per_year }: YearsInput, words: YearsWords, width: number): YearsFrame {
  const { years, dryDays_per_year_range } = finding;
  const wanted = Math.max(
    5,
    daysAllowed_per_year * 1.3,
    dryDays_per_year_range.high * 1.1,
    ...years.map((year) => year.dryDays),
  );
  const most = stepsUp(wanted, 4);
  const left = Math.ceil(letterWidth_px(words.count(most))) + 8;
  const isNarrow = width < 560;
  const right = width - (isNarrow ? 142 : 190);
  const top = 44;
  const base = top + (isNarrow ? 120 : 132);
  const pitch = Math.min(40, (right - left) / Math.max(1, years.length));
  return {
    left,
    right,
    top,
    base,
    width,
    height: base + 22,
    pitch,
    most,
    sideX: right + (isNarrow ? 6 : 14),
    sideWidth: isNarrow ? 14 : 22,
  };
}

const heightOf = ({ base, top, most }: YearsFrame, days: number) => (Math.min(days, most) / most) * (base - top);

function drawFrame(
  frame: YearsFrame,
  { finding, longestDryRun_days }: YearsInput,
  words: YearsWords,
  lettering: Lettering,
) {
  const { left, right, base, most, pitch } = frame;
  const lines: string[] = [];
  for (const count of ticksTo(most, 4)) {
    const y = base - heightOf(frame, count);
    if (count > 0) lines.push(across(left, y, right));
    lettering.set({ text: words.count(count), ink: 'second' }, { x: left - 6, y: y + 4.5, anchor: 'end' });
  }
  lettering.set({ text: words.head, isStrong: true }, { x: 1, y: 13 });
  const key = words.key(
    longestDryRun_days,
    finding.years.some((year) => !year.judged),
  );
  lettering.set({ text: key, ink: 'second' }, [
    { x: left + letterWidth_px(words.head, 'lettering', true), y: 13 },
    { x: 1, y: 30 },
  ]);
  const widest = Math.max(0, ...finding.years.map((year) => letterWidth_px(words.year(year.waterYear))));
  const step = yearStep(pitch, widest + 8);
  for (const index of yearsNamed(finding, step))
    lettering.set({ text: words.year(finding.years[index]!.waterYear), ink: 'second' }, [
      { x: left + (index + 0.5) * pitch, y: base + 17, anchor: 'middle' },
      { x: Math.max(0, left + index * pitch - 4), y: base + 17 },
    ]);
  return [stroke(lines.join('') || 'M0 0', pen('hair', 'rule'))];
}

/** Which years are lettered: round ones, or the first where none is. */
function yearsNamed({ years }: YearsInput['finding'], step: number): readonly number[] {
  const round = [...years.keys()].filter((index) => years[index]!.waterYear % step === 0);
  return round.length > 0 || years.length === 0 ? round : [0];
}

/** A year that is not good stands solid, a good one grey, one that is not judged hollow; the three worst are lettered. */
function drawBars(
  frame: YearsFrame,
  { finding, longestDryRun_days }: YearsInput,
  words: YearsWords,
  lettering: Lettering,
) {
  const { left, base, pitch } = frame;
  const bars = { over: [] as string[], under: [] as string[], other: [] as string[] };
  const thick = Math.max(1, pitch * 0.68);
  for (const [index, { dryDays, judged, longestRun_days }] of finding.years.entries()) {
    const tall = heightOf(frame, dryDays);
    if (tall === 0) continue;
    const d = rect(left + (index + 0.5) * pitch - thick / 2, base - tall, thick, tall);
    bars[!judged ? 'other' : longestRun_days > longestDryRun_days ? 'over' : 'under'].push(d);
    lettering.keepOff({ x: left + (index + 0.5) * pitch - thick / 2, y: base - tall, width: thick, height: tall });
  }
  const worst = [...finding.years.entries()]
    .filter(([, year]) => year.judged && year.dryDays > 0)
    .sort((a, b) => b[1].dryDays - a[1].dryDays);
  for (const [index, { dryDays, longestRun_days }] of worst.slice(0, 3)) {
    const ink = longestRun_days > longestDryRun_days ? ('brick' as const) : ('second' as const);
    const x = left + (index + 0.5) * pitch;
    lettering.set(
      { text: words.days(dryDays), isStrong: true, ink },
      { x, y: base - heightOf(frame, dryDays) - 4, anchor: 'middle' },
    );
  }
  return [
    ...(bars.under.length > 0 ? [fill(bars.under.join(''), 'mark')] : []),
    ...(bars.over.length > 0 ? [fill(bars.over.join(''), 'brick')] : []),
    ...(bars.other.length > 0 ? [fill(bars.other.join(''), 'paper', pen('thin', 'mark'))] : []),
  ];
}

/** Beside the years: the mean, and the range of the years to come as a pale band. */
function drawComing(
  frame: YearsFrame,
  { finding, daysAllowed_per_year }: YearsInput,
  words: YearsWords,
  lettering: Lettering,
): readonly Shape[] {
  const { left, right, top, base, width, sideX, sideWidth } = frame;
  const { dryDays_per_year, dryDays_per_year_range, judgedYears } = finding;
  const limitY = base - heightOf(frame, daysAllowed_per_year);
  const limit = stroke(across(left, limitY, sideX + sideWidth), pen('hair', 'ink', 'unknown'));
  const ground = stroke(across(left, base, right), pen('edge', 'ink'));
  if (judgedYears === 0) return [ground, limit];
  const lowY = base - heightOf(frame, dryDays_per_year_range.low);
  const highY = base - heightOf(frame, dryDays_per_year_range.high);
  const meanY = base - heightOf(frame, dryDays_per_year);
  const x = sideX + sideWidth + 6;
  lettering.keepOff({ x: sideX - 3, y: highY, width: sideWidth + 6, height: lowY - highY });
  const isOver = dryDays_per_year > daysAllowed_per_year + 1e-9;
  const side = (text: string, y: number, how: { isStrong?: boolean; ink?: 'brick' | 'ink' | 'second' }) =>
    [0, 16, 32, -16, -32].some((shift) =>
      lettering.set({ text, ...how }, [
        { x, y: y + shift },
        { x: width, y: y + shift, anchor: 'end' },
      ]),
    );
  side(words.mean(dryDays_per_year), meanY + 4.5, { isStrong: true, ink: isOver ? 'brick' : 'ink' });
  side(words.likely(dryDays_per_year_range.low, dryDays_per_year_range.high), meanY + 20.5, { ink: 'second' });
  const coming = [
    { x: sideX, y: base + 17 },
    { x: sideX, y: highY - 6 },
    { x: width, y: top - 2, anchor: 'end' as const },
  ];
  lettering.set({ text: words.coming, ink: 'second' }, coming);
  return [
    fill(rect(sideX, highY, sideWidth, Math.max(1, lowY - highY)), 'likely', pen('hair', 'waterline')),
    stroke(across(sideX - 3, meanY, sideX + sideWidth + 3), pen('cut', 'ink')),
    stroke(across(sideX - 3, base, sideX + sideWidth + 3), pen('edge', 'ink')),
    ground,
    limit,
  ];
}

function letterTarget(
  frame: YearsFrame,
  { daysAllowed_per_year }: YearsInput,
  words: YearsWords,
  lettering: Lettering,
): void {
  const { left, right, base, top } = frame;
  const y = base - heightOf(frame, daysAllowed_per_year);
  const text = words.target(daysAllowed_per_year);
  const spots = [];
  for (const own of [y - 5, y + 14]) for (let x = left + 4; x < right; x += 12) spots.push({ x, y: own });
  if (lettering.set(text, spots, { hasHalo: true, room: 0 })) return;
  for (const own of [y - 5, top - 2, y + 14]) {
    const placed = lettersAt([{ text }], { x: right, y: own, anchor: 'end' }, { hasHalo: true });
    if (placed.box.x >= 0 && lettering.set(text, { x: right, y: own, anchor: 'end' }, { hasHalo: true })) return;
  }
}

function daysOf(
  frame: YearsFrame,
  input: YearsInput,
  words: YearsWords,
): Pick<DayChart, 'dayAt' | 'placeOf' | 'overlayOf'> {
  const { series, years, finding } = input;
  const { left, pitch, top, base, width } = frame;
  const placeOf = (day: DayIndex): Box | null => {
    const year = yearOf(years, day - series.firstDay);
    const index = year === null ? -1 : finding.years.findIndex((own) => own.waterYear === year.label);
    return index < 0 ? null : { x: left + index * pitch, y: top, width: pitch, height: base - top };
  };
  return {
    placeOf,
    dayAt: (x, y) => {
      const own = finding.years[Math.floor((x - left) / pitch)];
      if (!own || x < left || y < 0 || y > frame.height) return null;
      const year = years.find((one) => one.label === own.waterYear);
      return year ? series.firstDay + tellingDay(input, year) : null;
    },
    overlayOf: (day) => {
      const box = placeOf(day);
      if (!box) return [];
      const index = Math.round((box.x - left) / pitch);
      const { waterYear, dryDays, longestRun_days, judged } = finding.years[index]!;
      const text = [{ text: words.yearAt(waterYear, dryDays, longestRun_days, judged), isStrong: true }];
      const own = lettersAt(text, { x: 0, y: 0 }).box.width;
      const x = Math.min(Math.max(0, box.x + pitch / 2 - own / 2), Math.max(0, width - own));
      const tall = Math.max(4, heightOf(frame, dryDays));
      return [
        stroke(rect(box.x + 0.5, base - tall - 2, pitch - 1, tall + 4), pen('edge', 'ink')),
        stroke(down(box.x + pitch / 2, top - 10, base - tall - 2), pen('hair', 'ink')),
        fill(rect(x - 3, top - 26, own + 6, 17), 'paper'),
        ...lettersAt(text, { x, y: top - 13 }).letters,
      ];
    },
  };
}

/** The day that says most of a year: the first of its longest dry run, else that of the lowest level. */
export function tellingDay(
  { series }: Pick<RecordInput, 'series'>,
  { from, to }: Pick<WaterYear, 'from' | 'to'>,
): number {
  let longest = { from, days: 0 };
  for (const piece of dryPieces(series.dry.subarray(from, to)))
    if (piece.to - piece.from > longest.days) longest = { from: from + piece.from, days: piece.to - piece.from };
  if (longest.days > 0) return longest.from;
  let lowest = from;
  for (let day = from; day < to; day++) if (series.content_L[day]! < series.content_L[lowest]!) lowest = day;
  return lowest;
}
