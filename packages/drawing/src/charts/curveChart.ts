import type { Shape } from '../sheet/shapes.ts';
import type { SizeChart } from './chart.ts';
import { letterAxis } from './curveAxis.ts';
import type { CurveFrames, CurveInput, CurveWords } from './curveFrame.ts';
import { bandPath, type CurveFrame, stepPath, xOf, yOf } from './curveLines.ts';
import { drawChosen, drawTargets, letterTargets } from './curveMarks.ts';
import { Lettering, lettersAt } from './lettering.ts';
import { letterWidth_px } from './letterWidth.ts';
import { stepsUp, ticksTo } from './scales.ts';
import { across, down, fill, pen, pointDot, ring, stroke } from './strokes.ts';
import { bandAt, readCurve } from './waterCurve.ts';

/** The axis reaches at most so many times as far as the largest tank chosen, proposed or in the catalogue [count]. Ours. */
const reach_count = 8;
const clearance_fraction = 1.08;

/**
 * What would every size of tank do? Dry days a year above, good years below, over one axis of sizes.
 *
 * @param input - the curve, the chosen and the proposed tank [L]
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px], and its sizes [L] by place
 * @law the line is at each size where `readCurve` has it, to a quarter px
 * @definition ours: docs/decisions/0151
 */
export function curveChart(input: CurveInput, words: CurveWords, layout: { readonly width: number }): SizeChart {
  const frames = framesOf(input, words, layout.width);
  const lettering = new Lettering(frames.width, frames.height);
  const shapes: Shape[] = [
    ...drawFrames(frames, input, words, lettering),
    ...drawCurves(frames, input),
    ...drawTargets(frames, input, words, lettering),
    ...drawChosen(frames, input, words, lettering),
  ];
  letterTargets(frames, input, words, lettering);
  shapes.push(...letterAxis(frames, input, words, lettering));
  const { width, height } = frames;
  return {
    width,
    height,
    pxPerM: null,
    shapes: [...shapes, ...lettering.letters],
    handles: [],
    ...sizesOf(frames, input, words),
  };
}

/** Where the axis of sizes ends: far enough for what is chosen, wanted and for sale. */
export function axisEnd_L({ curve, tankVolume_L, proposed }: CurveInput): number {
  const catalogue = curve.sizes.map((size) => size.tankVolume_L);
  const chosen = Math.max(tankVolume_L, proposed?.tankVolume_L ?? 0, 0);
  const wanted = [curve.tankForDays_L, curve.tankForRuns_L, curve.tankToHold_L].map((size) => size ?? 0);
  const core = Math.max(chosen, ...wanted);
  const forSale = catalogue.filter((size) => size <= Math.max(core, catalogue[0] ?? 0) * 3);
  const known = Math.max(chosen, ...forSale);
  const end = Math.max(known, Math.min(core, known > 0 ? known * reach_count : core));
  if (end > 0) return end * clearance_fraction;
  const last = curve.critical_L.findLast((volume) => Number.isFinite(volume) && volume > 0);
  return last ?? 1000;
}

function framesOf(input: CurveInput, words: CurveWords, width: number): CurveFrames {
  const { curve, tankVolume_L, proposed } = input;
  const end_L = axisEnd_L(input);
  const allowed = curve.daysAllowed_per_year;
  const shown = [tankVolume_L, ...(proposed ? [proposed.tankVolume_L] : [])].flatMap((size) => [
    (readCurve(curve, size).dryDays_per_year ?? 0) * 1.6,
    (bandAt(curve.band, size)?.high ?? 0) * 1.15,
  ]);
  const wanted = Math.max(6, allowed * 2.4, ...shown);
  const most = stepsUp(Math.min(wanted, Math.max(366, ...shown.map((days) => days / 1.6))), 4);
  const left = Math.ceil(letterWidth_px(words.count(Math.max(most, curve.judgedYears)))) + 8;
  const right = width - 8;
  const narrow = width < 420;
  const days = { left, right, top: 26, bottom: narrow ? 186 : 216, most, end_L };
  const yearsTop = days.bottom + 50;
  const years = {
    ...days,
    top: yearsTop,
    bottom: yearsTop + (narrow ? 88 : 104),
    most: Math.max(1, curve.judgedYears),
  };
  return { days, years, width, height: years.bottom + 62 };
}

function drawFrames(
  { days, years, width }: CurveFrames,
  { curve, longestDryRun_days }: CurveInput,
  words: CurveWords,
  lettering: Lettering,
): readonly Shape[] {
  const lines: string[] = [];
  const tick = (frame: CurveFrame, count: number) => {
    const y = yOf(frame, count);
    if (count > 0) lines.push(across(frame.left, y, frame.right));
    lettering.set({ text: words.count(count), ink: 'second' }, { x: frame.left - 6, y: y + 4.5, anchor: 'end' });
  };
  for (const count of ticksTo(days.most, 4)) tick(days, count);
  const all = curve.judgedYears;
  for (const count of all >= 4 ? [0, Math.round(all / 2), all] : [0, Math.max(1, all)]) tick(years, count);
  lettering.set({ text: words.dryDays, isStrong: true }, { x: 1, y: days.top - 11 }, { hasHalo: true });
  const heads = [words.goodYears(all, longestDryRun_days), words.goodYearsNarrow(all, longestDryRun_days)];
  for (const text of heads)
    if (lettering.set({ text, isStrong: true }, { x: 1, y: years.top - 13 }, { hasHalo: true })) break;
  return [
    stroke(lines.join(''), pen('hair', 'rule')),
    stroke(across(days.left, days.bottom, days.right), pen('thin', 'mark')),
    stroke(across(years.left, years.bottom, Math.min(width, years.right)), pen('thin', 'ink')),
  ];
}

function drawCurves({ days, years }: CurveFrames, { curve }: CurveInput): readonly Shape[] {
  const bands = [
    ['days', bandPath(days, curve.band)],
    ['years', curve.yearsBand === null ? '' : bandPath(years, curve.yearsBand)],
  ].flatMap(([, d]) => (d === '' ? [] : [fill(d!, 'likely')]));
  if (!curve.isExact) {
    const dots = curve.sizes
      .filter(({ tankVolume_L }) => tankVolume_L <= days.end_L)
      .flatMap(({ tankVolume_L, dryDays_per_year, goodYears }) => [
        ...(dryDays_per_year <= days.most ? [ring(xOf(days, tankVolume_L), yOf(days, dryDays_per_year), 2.6)] : []),
        ring(xOf(years, tankVolume_L), yOf(years, goodYears), 2.6),
      ]);
    return [...bands, fill(dots.join('') || 'M0 0', 'ink')];
  }
  if (curve.judgedYears === 0) return bands;
  const total = curve.critical_L.length;
  const dry = stepPath(days, curve.critical_L, (reached) => (total - reached) / curve.judgedYears);
  const good = stepPath(years, curve.needs_L, (reached) => reached);
  return [...bands, stroke(dry || 'M0 0', pen('edge', 'ink')), stroke(good || 'M0 0', pen('edge', 'ink'))];
}

function sizesOf(
  { days, years, width }: CurveFrames,
  { curve }: CurveInput,
  words: CurveWords,
): Pick<SizeChart, 'sizeAt' | 'placeOfSize' | 'overlayOfSize'> {
  const placeOfSize = (tankVolume_L: number) =>
    tankVolume_L >= 0 && tankVolume_L <= days.end_L
      ? { x: xOf(days, tankVolume_L), y: days.top, width: 0, height: years.bottom - days.top }
      : null;
  return {
    placeOfSize,
    sizeAt: (x, y) =>
      x < days.left || x > days.right || y < days.top - 20 || y > years.bottom + 40
        ? null
        : ((x - days.left) / (days.right - days.left)) * days.end_L,
    overlayOfSize: (tankVolume_L) => {
      const box = placeOfSize(tankVolume_L);
      if (!box) return [];
      const { dryDays_per_year, goodYears } = readCurve(curve, tankVolume_L);
      const dots = [
        ...(dryDays_per_year === null || dryDays_per_year > days.most
          ? []
          : [pointDot(box.x, yOf(days, dryDays_per_year))]),
        ...(goodYears === null ? [] : [pointDot(box.x, yOf(years, goodYears))]),
      ];
      const text = [{ text: words.at(tankVolume_L, dryDays_per_year, goodYears), isStrong: true }];
      const own = lettersAt(text, { x: 0, y: 0 }).box.width;
      const x = Math.min(Math.max(0, box.x - own / 2), Math.max(0, width - own));
      const letters = lettersAt(text, { x, y: days.top - 11 }, { hasHalo: true }).letters;
      return [stroke(down(box.x, days.top - 4, years.bottom), pen('hair', 'ink')), ...dots, ...letters];
    },
  };
}
