import type { DayIndex } from '@eavewell/engine';
import { Lettering } from '../charts/lettering.ts';
import { letterWidth_px } from '../charts/letterWidth.ts';
import { monthStarts, yearStarts } from '../charts/scales.ts';
import { across, down, fill, group, pen, rect, stroke } from '../charts/strokes.ts';
import type { Picture, Shape } from '../sheet/shapes.ts';

/** When a set of cartridges is due: the tenth, middle and ninetieth of a hundred futures. */
export interface DueRow {
  readonly serial: string;
  readonly early: DayIndex;
  readonly middle: DayIndex;
  readonly late: DayIndex;
  /** What is said of it: which end comes first. */
  readonly said: string;
}

/** The words of what is due, in the reader's language. */
export interface DueWords {
  readonly today: string;
  year(year: number): string;
}

const [head_px, row_px, foot_px] = [22, 44, 22] as const;

/**
 * When sets of cartridges are due, as ranges on one line of months, with the day it is.
 *
 * @param rows - the sets, the soonest first
 * @param today - the day it is [day index]
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px]
 * @definition ours: docs/decisions/0233-the-way-of-the-water.md
 */
export function duePicture(
  rows: readonly DueRow[],
  today: DayIndex,
  words: DueWords,
  { width }: { readonly width: number },
): Picture {
  const base = head_px + rows.length * row_px;
  const height = base + foot_px;
  const lettering = new Lettering(width, height);
  const [left, right] = [10, width - 10];
  const from = Math.min(today, ...rows.map(({ early }) => early)) - 31;
  const to = Math.max(today + 365, ...rows.map(({ late }) => late)) + 31;
  const xOf = (day: DayIndex) => left + ((day - from) / (to - from)) * (right - left);
  const months = monthStarts(from, to).map(({ day }) => day);
  const years = yearStarts(from, to);
  const everyMonth = (to - from) / 30.44 <= (right - left) / 6;
  const shapes: Shape[] = [
    stroke(across(left, base, right), pen('thin', 'ink')),
    ...(everyMonth ? [stroke(months.map((day) => down(xOf(day), base, base + 3)).join(''), pen('hair', 'ink'))] : []),
    stroke(years.map(({ day }) => down(xOf(day), base - 4, base + 6)).join('') || 'M0 0', pen('edge', 'ink')),
    stroke(down(xOf(today), head_px - 4, base), pen('edge', 'ink', 'unknown')),
  ];
  lettering.set({ text: words.today, isStrong: true }, [
    { x: xOf(today), y: 13, anchor: 'middle' },
    { x: xOf(today), y: 13 },
    { x: xOf(today), y: 13, anchor: 'end' },
  ]);
  for (const { year, day } of years)
    lettering.set(
      { text: words.year(year), ink: 'second' },
      { x: xOf(day), y: base + 18, anchor: 'middle' },
      { room: 6 },
    );
  const drawn = rows.map((row, nth) => rowOf(row, head_px + nth * row_px, today, { xOf, width }, lettering));
  return { width, height, pxPerM: null, shapes: [...shapes, ...drawn, ...lettering.letters], handles: [] };
}

function rowOf(
  { serial, early, middle, late, said }: DueRow,
  top: number,
  today: DayIndex,
  { xOf, width }: { readonly xOf: (day: DayIndex) => number; readonly width: number },
  lettering: Lettering,
): Shape {
  const y = top + 30;
  const [from, to] = [xOf(early), xOf(late)];
  const isPast = middle <= today;
  const stretches = [
    { text: serial, isStrong: true, ink: isPast ? ('brick' as const) : ('ink' as const) },
    { text: said, ink: 'second' as const },
  ];
  const own = stretches.reduce((sum, { text }) => sum + letterWidth_px(text, 'lettering', true), 8);
  // It begins where its range does, or as far left as it must to stand on the picture.
  const x = Math.max(10, Math.min(from, width - own - 6));
  if (!lettering.set(stretches, [{ x, y: y - 12 }], { hasHalo: true }))
    lettering.set(stretches[0]!, [{ x: Math.max(10, Math.min(from, width - 80)), y: y - 12 }], { hasHalo: true });
  return group(`due:${serial}`, [
    fill(
      rect(from, y - 5, Math.max(2, to - from), 10),
      isPast ? 'brickWash' : 'likely',
      pen('thin', isPast ? 'brick' : 'ink'),
    ),
    stroke(down(xOf(middle), y - 9, y + 9), pen('cut', 'ink')),
  ]);
}
