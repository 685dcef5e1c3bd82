import type { Verdict } from '@eavewell/engine';
import type { MarkShape, Shape } from '../sheet/shapes.ts';
import type { CurveFrames, CurveInput, CurveWords } from './curveFrame.ts';
import { type CurveFrame, xOf, yOf } from './curveLines.ts';
import type { Lettering } from './lettering.ts';
import { across, down, fill, pen, ring, stroke } from './strokes.ts';
import { bandAt, readCurve, readSizes, type WaterCurve } from './waterCurve.ts';

const markHeight_px = 20;
const holdsHeight_px = 13;
/** So far a mark may stand below the axis, where its letters are [px]. */
const belowAxis_px = 8;

/** One half of the target, where there are years to judge: its frame, how many, and the smallest size that reaches it. */
interface Half {
  readonly frame: CurveFrame;
  readonly count: number;
  readonly text: string;
  readonly smallest_L: number | null;
}

function halvesOf({ days, years }: CurveFrames, { curve }: CurveInput, words: CurveWords): readonly Half[] {
  const { daysAllowed_per_year, goodYearsNeeded, judgedYears, tankForDays_L, tankForRuns_L } = curve;
  if (judgedYears === 0) return [];
  const onAxis = (size: number | null) => (size !== null && size <= days.end_L ? size : null);
  const daysText = words.daysTarget(daysAllowed_per_year);
  const yearsText = words.yearsTarget(goodYearsNeeded, judgedYears);
  return [
    { frame: days, count: daysAllowed_per_year, text: daysText, smallest_L: onAxis(tankForDays_L) },
    { frame: years, count: goodYearsNeeded, text: yearsText, smallest_L: onAxis(tankForRuns_L) },
  ];
}

/** The targets, dashed, and the smallest sizes that reach them as small rings. Letters stand off them and off the curves. */
export function drawTargets(
  frames: CurveFrames,
  input: CurveInput,
  words: CurveWords,
  lettering: Lettering,
): readonly Shape[] {
  const shapes = halvesOf(frames, input, words).flatMap(({ frame, count, smallest_L }) => {
    const y = yOf(frame, count);
    lettering.keepOff({ x: frame.left, y: y - 0.5, width: frame.right - frame.left, height: 1 });
    const line = stroke(across(frame.left, y, frame.right), pen('hair', 'ink', 'unknown'));
    if (smallest_L === null) return [line];
    const x = xOf(frame, smallest_L);
    lettering.keepOff({ x: x - 4, y: y - 4, width: 8, height: 8 });
    return [line, fill(ring(x, y, 3.4), 'paper', pen('edge', 'ink'))];
  });
  keepOffCurves(frames, input.curve, lettering);
  return shapes;
}

/** The targets in words on their lines, and the sizes of the rings, where they are not the chosen tank's. */
export function letterTargets(frames: CurveFrames, input: CurveInput, words: CurveWords, lettering: Lettering): void {
  for (const { frame, count, text } of halvesOf(frames, input, words)) {
    const y = yOf(frame, count);
    const rows = [y + 14, y - 5].filter((row) => row < frame.bottom - 1);
    const spots = rows.flatMap((own) => [
      { x: frame.left + 8, y: own },
      { x: frame.right - 2, y: own, anchor: 'end' as const },
    ]);
    lettering.set(text, spots, { hasHalo: true });
  }
  if (!input.curve.isExact) letterPoints(frames, words, lettering);
  for (const { frame, count, smallest_L } of halvesOf(frames, input, words)) {
    if (smallest_L === null || smallest_L === input.tankVolume_L) continue;
    const [x, y] = [xOf(frame, smallest_L), yOf(frame, count)];
    const spots = [y - 7, y + 17, y - 20].flatMap((own) => [
      { x: x + 6, y: own },
      { x: x - 6, y: own, anchor: 'end' as const },
    ]);
    lettering.set({ text: words.litres(smallest_L), ink: 'second' }, spots, { hasHalo: true });
  }
}

/** That only the points are known, where there is room. */
function letterPoints({ days, years }: CurveFrames, words: CurveWords, lettering: Lettering): void {
  const spots = [14, 30, 46].flatMap((down) => [
    { x: days.right, y: days.top + down, anchor: 'end' as const },
    { x: days.left + 6, y: days.top + down },
  ]);
  const text = { text: words.pointsOnly, ink: 'second' as const };
  if (!lettering.set(text, spots, { hasHalo: true }))
    lettering.set(text, { x: days.right, y: years.bottom + 53, anchor: 'end' });
}

/** Letters stand off the lines of the curves, read every few px. */
function keepOffCurves({ days, years }: CurveFrames, curve: WaterCurve, lettering: Lettering): void {
  if (!curve.isExact) return;
  const step = 6;
  const count = Math.max(0, Math.floor((days.right - days.left) / step));
  const volumes = Array.from({ length: count }, (_, index) => ((index + 0.5) / count) * days.end_L);
  for (const [index, { dryDays_per_year, goodYears }] of readSizes(curve, volumes).entries()) {
    const x = days.left + index * step;
    if (dryDays_per_year !== null && dryDays_per_year <= days.most)
      lettering.keepOff({ x, y: yOf(days, dryDays_per_year) - 1, width: step, height: 2 });
    if (goodYears !== null) lettering.keepOff({ x, y: yOf(years, goodYears) - 1, width: step, height: 2 });
  }
}

/** The chosen tank, a line of cut weight, and the proposed one, dashed; each with its marks where it meets the curves. */
export function drawChosen(
  frames: CurveFrames,
  input: CurveInput,
  words: CurveWords,
  lettering: Lettering,
): readonly Shape[] {
  const { tankVolume_L, verdict, proposed } = input;
  const shapes: Shape[] = [];
  if (proposed !== null && proposed.tankVolume_L !== tankVolume_L) {
    shapes.push(lineAt(frames, proposed.tankVolume_L, true));
    keepOffLine(frames, proposed.tankVolume_L, lettering);
  }
  shapes.push(lineAt(frames, tankVolume_L, false));
  keepOffLine(frames, tankVolume_L, lettering);
  const isLarger = proposed !== null && proposed.tankVolume_L > tankVolume_L;
  const marks = marksAt(frames, input, { tankVolume_L, verdict }, words, isLarger ? 'left' : 'right');
  if (proposed !== null && proposed.tankVolume_L !== tankVolume_L)
    marks.push(...marksAt(frames, input, proposed, words, isLarger ? 'right' : 'left'));
  for (const { x, y, height } of marks) {
    const half = halfOf(height);
    lettering.keepOff({ x: x - half, y: y - height, width: 2 * half, height });
  }
  for (const mark of marks) letterMark(mark, lettering);
  return [...shapes, ...marks.flatMap(drawMark)];
}

function lineAt({ days, years }: CurveFrames, tankVolume_L: number, isProposed: boolean): Shape {
  const own = isProposed ? pen('edge', 'water', 'proposed') : pen('cut', 'ink');
  return stroke(down(xOf(days, tankVolume_L), days.top, years.bottom), own);
}

function keepOffLine({ days, years }: CurveFrames, tankVolume_L: number, lettering: Lettering): void {
  lettering.keepOff({ x: xOf(days, tankVolume_L) - 1.3, y: days.top, width: 2.6, height: years.bottom - days.top });
}

interface Tank {
  readonly tankVolume_L: number;
  readonly verdict: Verdict;
}

/** A mark where a tank's line meets a curve: its foot's middle, and what is lettered beside it. */
interface CurveMark extends Pick<MarkShape, 'x' | 'y' | 'height' | 'verdict'> {
  readonly frame: CurveFrame;
  readonly text: string;
  /** On which side its letters are looked for first: away from the other tank. */
  readonly side: 'left' | 'right';
}

const halfOf = (height: number) => (height * 10) / 24;

function marksAt(
  { days, years }: CurveFrames,
  { curve }: CurveInput,
  tank: Tank,
  words: CurveWords,
  side: CurveMark['side'],
): CurveMark[] {
  const { dryDays_per_year, goodYears } = readCurve(curve, tank.tankVolume_L);
  const mark = (frame: CurveFrame, count: number, verdict: Verdict, text: string): CurveMark => {
    const height = verdict === 'holds' ? holdsHeight_px : markHeight_px;
    const lowest = frame.bottom + Math.min(height / 2, belowAxis_px);
    const y = Math.min(lowest, Math.max(frame.top + height / 2, yOf(frame, count) + height / 2));
    return { frame, x: xOf(frame, tank.tankVolume_L), y, height, verdict, text, side };
  };
  const found: CurveMark[] = [];
  if (dryDays_per_year !== null) {
    const verdict = daysVerdict(curve, tank, dryDays_per_year);
    found.push(mark(days, dryDays_per_year, verdict, words.daysAt(dryDays_per_year)));
  }
  if (goodYears !== null)
    found.push(mark(years, goodYears, yearsVerdict(curve, tank, goodYears), words.yearsAt(goodYears)));
  return found;
}

/** The mark on paper of its own, so that the lines under it do not run through it. */
function drawMark({ x, y, height, verdict }: CurveMark): readonly Shape[] {
  const half = halfOf(height);
  const under = fill(`M${x - half + 1} ${y - 1}v${-height + 3}h${2 * half - 2}v${height - 3}Z`, 'paper');
  return [under, { kind: 'mark', verdict, x, y, height }];
}

function letterMark({ frame, x, y, height, verdict, text, side }: CurveMark, lettering: Lettering): void {
  const half = halfOf(height);
  const middle = y - height / 2;
  const rows = [middle - 6, middle + 18, middle - 16, middle + 28, middle + 5].filter((row) => row < frame.bottom - 3);
  const right = rows.map((row) => ({ x: x + half + 6, y: row }));
  const left = rows.map((row) => ({ x: x - half - 6, y: row, anchor: 'end' as const }));
  const ink = verdict === 'short' ? 'brick' : verdict === 'tight' ? 'ochre' : 'ink';
  const spots = side === 'left' ? [...left, ...right] : [...right, ...left];
  lettering.set({ text, isStrong: verdict !== 'holds', ink }, spots, { hasHalo: true });
}

/** What one half of the target says of a tank: short where it misses it, and holding where its whole range reaches it. */
export function daysVerdict(curve: WaterCurve, { tankVolume_L, verdict }: Tank, dryDays_per_year: number): Verdict {
  const isMet = dryDays_per_year <= curve.daysAllowed_per_year + slack;
  const range = bandAt(curve.band, tankVolume_L);
  return halfVerdict(verdict, isMet, range !== null && range.high <= curve.daysAllowed_per_year + slack);
}

export function yearsVerdict(curve: WaterCurve, { tankVolume_L, verdict }: Tank, goodYears: number): Verdict {
  const range = curve.yearsBand === null ? null : bandAt(curve.yearsBand, tankVolume_L);
  return halfVerdict(verdict, goodYears >= curve.goodYearsNeeded, range !== null && range.low >= curve.goodYearsNeeded);
}

/** What sums of doubles may lose. */
const slack = 1e-9;

function halfVerdict(whole: Verdict, isMet: boolean, isRangeMet: boolean): Verdict {
  if (whole === 'unknown') return 'unknown';
  if (!isMet) return 'short';
  return whole === 'holds' || isRangeMet ? 'holds' : 'tight';
}
