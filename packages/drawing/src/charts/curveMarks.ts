import type { Verdict } from '@eavewell/engine';
import type { MarkShape, Shape } from '../sheet/shapes.ts';
import type { CurveFrames, CurveInput, CurveWords } from './curveChart.ts';
import { type CurveFrame, xOf, yOf } from './curveLines.ts';
import type { Lettering } from './lettering.ts';
import { across, down, fill, pen, ring, stroke } from './strokes.ts';
import { bandAt, readCurve, type WaterCurve } from './waterCurve.ts';

const markHeight_px = 20;
const holdsHeight_px = 13;

/** The targets, dashed and lettered on the line, and the smallest sizes that reach them as small rings. */
export function drawTargets(
  { days, years }: CurveFrames,
  { curve }: CurveInput,
  words: CurveWords,
  lettering: Lettering,
): readonly Shape[] {
  const { daysAllowed_per_year, goodYearsNeeded, judgedYears } = curve;
  const shapes: Shape[] = [];
  const target = (frame: CurveFrame, count: number, text: string, smallest_L: number | null) => {
    const y = yOf(frame, count);
    shapes.push(stroke(across(frame.left, y, frame.right), pen('hair', 'ink', 'unknown')));
    lettering.keepOff({ x: frame.left, y: y - 0.5, width: frame.right - frame.left, height: 1 });
    const spots = [y + 14, y - 5].flatMap((own) => [
      { x: frame.left + 8, y: own },
      { x: frame.right - 2, y: own, anchor: 'end' as const },
    ]);
    if (smallest_L !== null && smallest_L <= frame.end_L) {
      const x = xOf(frame, smallest_L);
      shapes.push(fill(ring(x, y, 3.4), 'paper', pen('edge', 'ink')));
      lettering.keepOff({ x: x - 4, y: y - 4, width: 8, height: 8 });
    }
    return { text, spots };
  };
  const own = [
    target(days, daysAllowed_per_year, words.daysTarget(daysAllowed_per_year), curve.tankForDays_L),
    target(years, goodYearsNeeded, words.yearsTarget(goodYearsNeeded, judgedYears), curve.tankForRuns_L),
  ];
  keepOffCurves({ days, years }, curve, lettering);
  for (const { text, spots } of own) lettering.set(text, spots, { hasHalo: true });
  return shapes;
}

/** Letters stand off the lines of the curves, read every few px. */
function keepOffCurves(
  { days, years }: Pick<CurveFrames, 'days' | 'years'>,
  curve: WaterCurve,
  lettering: Lettering,
): void {
  if (!curve.isExact) return;
  const step = 6;
  for (let x = days.left; x < days.right; x += step) {
    const volume_L = ((x + step / 2 - days.left) / (days.right - days.left)) * days.end_L;
    const { dryDays_per_year, goodYears } = readCurve(curve, volume_L);
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
  shapes.push(...marksAt(frames, input, { tankVolume_L, verdict }, words, lettering));
  if (proposed !== null) shapes.push(...marksAt(frames, input, proposed, words, lettering));
  return shapes;
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

function marksAt(
  { days, years }: CurveFrames,
  { curve }: CurveInput,
  tank: Tank,
  words: CurveWords,
  lettering: Lettering,
): readonly Shape[] {
  const { dryDays_per_year, goodYears } = readCurve(curve, tank.tankVolume_L);
  const shapes: Shape[] = [];
  const mark = (frame: CurveFrame, count: number, verdict: Verdict, text: string) => {
    const isCalm = verdict === 'holds';
    const height = isCalm ? holdsHeight_px : markHeight_px;
    const x = xOf(frame, tank.tankVolume_L);
    const y = Math.min(frame.bottom + height / 2, Math.max(frame.top + height / 2, yOf(frame, count) + height / 2));
    const half = (height * 10) / 24;
    shapes.push(fill(`M${x - half + 1} ${y - 1}v${-height + 3}h${2 * half - 2}v${height - 3}Z`, 'paper'));
    shapes.push({ kind: 'mark', verdict, x, y, height } satisfies MarkShape);
    lettering.keepOff({ x: x - half, y: y - height, width: 2 * half, height });
    const middle = y - height / 2;
    const spots = [middle - 6, middle + 18, middle - 16, middle + 28, middle + 5].flatMap((own) => [
      { x: x + half + 6, y: own },
      { x: x - half - 6, y: own, anchor: 'end' as const },
    ]);
    const ink = verdict === 'short' ? 'brick' : verdict === 'tight' ? 'ochre' : 'ink';
    lettering.set({ text, isStrong: !isCalm, ink }, spots, { hasHalo: true });
  };
  if (dryDays_per_year !== null)
    mark(days, dryDays_per_year, daysVerdict(curve, tank, dryDays_per_year), words.daysAt(dryDays_per_year));
  if (goodYears !== null) mark(years, goodYears, yearsVerdict(curve, tank, goodYears), words.yearsAt(goodYears));
  return shapes;
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
