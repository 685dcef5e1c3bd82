import type { Shape } from '../sheet/shapes.ts';
import { type Box, type Placer, widthOf } from './placer.ts';
import type { SectionWords } from './sectionTypes.ts';
import { area, boxOf, plain, type View } from './view.ts';

const steps_m = [0.25, 0.5, 1, 2, 5, 10, 20, 50, 100] as const;

/** Four steps of round metres, each second one filled, its right end at x, its foot at y [px]; nothing where it is not free. */
export function scaleBar(
  { k }: View,
  right: number,
  foot: number,
  words: SectionWords,
  placer: Placer,
): readonly Shape[] {
  const step = steps_m.find((one) => one * k >= 22) ?? 100;
  const marks = [0, 1, 2, 3, 4].map((nth) => words.scaleMark(nth * step, nth === 4));
  const overhang = widthOf(marks[4]!, 'lettering', false) / 2;
  const left = right - 4 * step * k - overhang - 4;
  const before = widthOf(marks[0]!, 'lettering', false) / 2;
  const box: Box = { x: left - before - 1, y: foot - 21, width: before + 4 * step * k + overhang + 2, height: 22 };
  if (!placer.takeIfFree(box)) return [];
  const shown = lettered(marks, step * k);
  const view: View = { k, x0: left, y0: foot };
  const thick = 4.5 / k;
  const cells = [0, 1, 2, 3].map((nth) => boxOf(nth * step, 0, step, thick));
  return [
    area(view, 'ink', ['hair', plain], cells[0]!, cells[2]!),
    area(view, 'paper', ['hair', plain], cells[1]!, cells[3]!),
    ...shown.map(
      (nth): Shape => ({
        kind: 'letter',
        x: left + nth * step * k,
        y: foot - 9,
        text: marks[nth]!,
        size: 'lettering',
        anchor: 'middle',
        ink: 'ink',
        isStrong: false,
        hasHalo: false,
        turn_deg: 0,
      }),
    ),
  ];
}

/** Which marks have letters: all, or each second, or the ends, as there is room. */
function lettered(marks: readonly string[], step_px: number): readonly number[] {
  const choices = [
    [0, 1, 2, 3, 4],
    [0, 2, 4],
    [0, 4],
  ];
  const half = (nth: number) => widthOf(marks[nth]!, 'lettering', false) / 2;
  const fits = (choice: readonly number[]) =>
    choice.slice(1).every((nth, index) => half(choice[index]!) + half(nth) + 4 <= (nth - choice[index]!) * step_px);
  return choices.find(fits) ?? [];
}
