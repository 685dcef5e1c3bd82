import type { Shape } from '../sheet/shapes.ts';
import type { Lettering } from './lettering.ts';
import { type DryPiece, type RecordInput, runsOf, yearOf } from './record.ts';
import { across, fill, pen, rect, stroke } from './strokes.ts';
import type { Strip, TraceFrame, TraceWords } from './traceFrame.ts';

/** Dry runs are drawn no deeper than a year's; longer ones say so in their letters [day]. Ours. */
const deepest_days = 366;

/** Dry runs of one strip: over the limit in brick, under it grey, of years not judged in outline; and the limit, dashed. */
export function drawRuns(
  strip: Strip,
  { left, pxPerDay, pxPerRunDay }: TraceFrame,
  { years, longestDryRun_days }: RecordInput,
  pieces: readonly DryPiece[],
): readonly Shape[] {
  const paths = { over: [] as string[], under: [] as string[], other: [] as string[] };
  for (const piece of pieces) {
    if (piece.to <= strip.from || piece.from >= strip.to) continue;
    const from = Math.max(piece.from, strip.from);
    const to = Math.min(piece.to, strip.to);
    const width = Math.max(1.2, (to - from) * pxPerDay);
    const d = rect(left + (from - strip.from) * pxPerDay, strip.base, width, depthOf(piece.days, pxPerRunDay));
    const isJudged = yearOf(years, to - 1)?.judged ?? false;
    paths[isJudged ? (piece.days > longestDryRun_days ? 'over' : 'under') : 'other'].push(d);
  }
  const right = left + (strip.to - strip.from) * pxPerDay;
  const limit = strip.base + longestDryRun_days * pxPerRunDay;
  return [
    ...(paths.under.length > 0 ? [fill(paths.under.join(''), 'mark')] : []),
    ...(paths.over.length > 0 ? [fill(paths.over.join(''), 'brick')] : []),
    ...(paths.other.length > 0 ? [stroke(paths.other.join(''), pen('hair', 'mark'))] : []),
    stroke(across(left, limit, right), pen('hair', 'ink', 'unknown')),
  ];
}

const depthOf = (days: number, pxPerRunDay: number) => Math.min(deepest_days, days) * pxPerRunDay;

/** The three longest runs shown, with their days and the day they began. */
export function letterRuns(
  frame: TraceFrame,
  input: RecordInput,
  pieces: readonly DryPiece[],
  words: TraceWords,
  lettering: Lettering,
): void {
  const { left, pxPerDay, pxPerRunDay, strips } = frame;
  const { firstDay } = input.series;
  keepOffRuns(frame, pieces, lettering);
  const runs = runsOf(input).filter((run) => strips.some((strip) => isIn(strip, run.to - firstDay)));
  for (const run of runs.slice(0, 3)) {
    const end = run.to - firstDay;
    const strip = strips.find((one) => isIn(one, end))!;
    const from = Math.max(strip.from, run.from - firstDay);
    const x = left + (from - strip.from) * pxPerDay;
    const toX = left + (end + 1 - strip.from) * pxPerDay;
    const bottom = strip.base + depthOf(run.days, pxPerRunDay);
    const isOver = run.days > input.longestDryRun_days;
    const days = { text: words.days(run.days), isStrong: true, ink: isOver ? 'brick' : 'second' } as const;
    const beside = [bottom + 1, bottom + 12].flatMap((y) => [
      { x: Math.max(toX, x + 1.2) + 4, y: Math.max(y, strip.base + 13) },
      { x: x - 4, y: Math.max(y, strip.base + 13), anchor: 'end' as const },
    ]);
    const spots = [...beside, { x, y: bottom + 14 }, { x: toX, y: bottom + 14, anchor: 'end' as const }];
    if (!frame.isNarrow && lettering.set([days, { text: words.from(run.from) }], spots, { hasHalo: true })) continue;
    lettering.set(days, spots, { hasHalo: true });
  }
  letterLimit(frame, input, words, lettering);
}

const isIn = (strip: Strip, place: number) => place >= strip.from && place < strip.to;

/** Wide bars are not written on; thin ones may be, since letters have paper round them [px]. */
const wideBar_px = 5;

function keepOffRuns(
  { strips, left, pxPerDay, pxPerRunDay }: TraceFrame,
  pieces: readonly DryPiece[],
  lettering: Lettering,
) {
  for (const strip of strips)
    for (const { from, to, days } of pieces) {
      const [first, last] = [Math.max(from, strip.from), Math.min(to, strip.to)];
      const width = (last - first) * pxPerDay;
      if (width < wideBar_px) continue;
      const x = left + (first - strip.from) * pxPerDay;
      lettering.keepOff({ x, y: strip.base, width, height: depthOf(days, pxPerRunDay) });
    }
}

/** The limit in words, under its line in the first strip: at its right end, or the nearest free place to it. */
function letterLimit(
  { strips, left, width, pxPerRunDay }: TraceFrame,
  { longestDryRun_days }: RecordInput,
  words: TraceWords,
  lettering: Lettering,
): void {
  const strip = strips[0]!;
  const limit = strip.base + longestDryRun_days * pxPerRunDay;
  const spots = [];
  for (const y of [limit + 14, limit + 28])
    for (let x = width - 1; x > left + 80; x -= 40) spots.push({ x, y, anchor: 'end' as const });
  lettering.set({ text: words.runsOver(longestDryRun_days), ink: 'second' }, spots, { hasHalo: true });
}
