import type { LetterShape, Shape } from '../sheet/shapes.ts';
import type { Frame } from './frame.ts';
import { radius_px } from './frame.ts';
import { type Circle, gutterCircle, timesLarger } from './gutterCircle.ts';
import { gutterRun } from './gutterRun.ts';
import type { PlacedRoof } from './layout.ts';
import { alongHair } from './marks.ts';
import { gutteredRoof } from './notes.ts';
import { boxOfLetter, type Placer, widthOf } from './placer.ts';
import { group } from './sectionParts.ts';
import type { SectionInput, SectionWords } from './sectionTypes.ts';
import { line, plain, type View } from './view.ts';

const flat: View = { k: 30, x0: 0, y0: 0 };

/**
 * The gutter of the picture in a detail circle, with a hair to where it hangs and how many times as large. In the whole it stands where there is
 * room for it, while it is pressed.
 */
export function circleShapes(frame: Frame, { words, pressed = null }: SectionInput, placer: Placer): readonly Shape[] {
  const { view, all, circle, detail } = frame;
  const roof = gutteredRoof(all);
  if (!roof) return [];
  const at: Spot = [roof.x + roof.outline.rightPipe_m * view.k, view.y0 - roof.outline.eaveHeight_m * view.k];
  if (circle !== null) return inCircle(frame, roof, at, circle, words, placer);
  if (detail !== 'whole' || pressed !== 'gutter' || !frame.hasDimensions) return [];
  const width = Math.max(2 * radius_px, widthOf(words.larger(100), 'lettering', false));
  const box = placer.near(at, [60, -60], { width, height: 2 * radius_px + letter_px }, 300);
  if (box === null) return [];
  for (const one of alongHair(at, box)) placer.take(one);
  return inCircle(frame, roof, at, { x: box.x + width / 2, y: box.y + radius_px, radius: radius_px }, words, placer);
}

type Spot = readonly [number, number];
/** Room for the letters under a circle [px]. */
const letter_px = 18;

function inCircle(
  { view, width, detail }: Frame,
  { roof }: PlacedRoof,
  at: Spot,
  circle: Circle,
  words: SectionWords,
  placer: Placer,
): readonly Shape[] {
  const times = timesLarger(roof.gutter, circle.radius, view.k);
  if (times === null) return [];
  const { x, y, radius } = circle;
  const away = Math.hypot(at[0] - x, at[1] - y) || 1;
  const edge: Spot = [x + ((at[0] - x) / away) * radius, y + ((at[1] - y) / away) * radius];
  if (detail !== 'whole') placer.take({ x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius });
  const text = words.larger(times);
  const letter = letterAt(x, y + radius + 13, text, 'middle');
  const box = boxOfLetter(letter);
  const kept = detail === 'whole' ? box.x >= 0 && box.x + box.width <= width : placer.takeIfFree(box);
  return [
    group(`detail:${roof.roofId}`, 'gutter', [
      line(flat, 'hair', plain, [
        [at[0] / flat.k, -at[1] / flat.k],
        [edge[0] / flat.k, -edge[1] / flat.k],
      ]),
      ...gutterCircle(roof.gutter, circle, times * view.k),
      ...(kept ? [letter] : []),
    ]),
  ];
}

/** In a cut-out, under its list: the gutter along its run, with its fall. */
export function runShapes({ width, all, circle, rows }: Frame, words: SectionWords, placer: Placer): readonly Shape[] {
  const roof = circle && gutteredRoof(all)?.roof;
  if (!circle || !roof) return [];
  const { gutter } = roof;
  const y = rows.foot + 14;
  const fall = gutter.fall_mm_per_m;
  const shapes = gutterRun(gutter, 14, y, width - 28);
  if (fall === null || fall === 0) return [group(`run:${roof.roofId}`, 'gutter', shapes)];
  const { value, how } = gutter.run_m;
  const letter = letterAt(14, y + 26, words.fallOver((Math.abs(fall) * value) / 1000, value, how), 'start');
  const told = placer.takeIfFree(boxOfLetter(letter)) ? [letter] : [];
  return [group(`run:${roof.roofId}`, 'gutter', [...shapes, ...told])];
}

const letterAt = (x: number, y: number, text: string, anchor: LetterShape['anchor']): LetterShape => ({
  kind: 'letter',
  x,
  y,
  text,
  size: 'lettering',
  anchor,
  ink: 'second',
  isStrong: false,
  hasHalo: true,
  turn_deg: 0,
});
