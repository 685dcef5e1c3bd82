import type { LetterShape, PathShape, Picture, Shape } from '@eavewell/drawing';
import type { Canvas, Pdf } from '../document/canvas.ts';
import type { Setter } from '../document/setter.ts';
import { pt_per_mm } from '../document/sheetSize.ts';
import { dashes_px, grounds, inkColors, letterSizes_px, weights_mm } from './dress.ts';
import { fillHatched } from './hatch.ts';
import { drawMark } from './mark.ts';

/** Points to a px of 1/96 inch: what is to scale in px is to scale on paper. Source: css-values-4, absolute lengths. */
export const pt_per_px = 72 / 96;

/** Where a picture is drawn: its upper left corner, and points to its px. */
export interface PicturePlace {
  readonly x: number;
  readonly y: number;
  readonly scale?: number;
}

/** Letters of a picture, laid before it is drawn, so that what no face has is known. */
export type SetLetters = ReadonlyMap<LetterShape, ReturnType<Setter['lines']>>;

/**
 * Lays the letters of a picture.
 *
 * @param setter - lays them, and tells what no face has
 * @param shapes - the picture
 */
export function setLetters(setter: Setter, shapes: readonly Shape[]): SetLetters {
  const set = new Map<LetterShape, ReturnType<Setter['lines']>>();
  const visit = (all: readonly Shape[]) => {
    for (const shape of all) {
      if (shape.kind === 'group') visit(shape.shapes);
      if (shape.kind !== 'letter') continue;
      const size_pt = letterSizes_px[shape.size] * pt_per_px;
      set.set(shape, setter.lines(shape.text, size_pt, Number.MAX_VALUE, shape.isStrong ? 'strong' : 'plain'));
    }
  };
  visit(shapes);
  return set;
}

/**
 * Draws a picture of the drawing package with the operators of paper: the same lines, black on white, water as a hatch. It is never
 * mirrored; its letters run as their language does.
 *
 * @param canvas - the document
 * @param picture - shapes [px]; a cut-out is cut at its frame
 * @param letters - its letters, laid
 * @param place - where [pt]; left out, its px are true: a picture of 1 : 150 is 1 : 150
 */
export function shapesOnPaper(
  canvas: Canvas,
  picture: Pick<Picture, 'width' | 'height' | 'shapes' | 'isCutOut'>,
  letters: SetLetters,
  { x, y, scale = pt_per_px }: PicturePlace,
): void {
  canvas.drawing((pdf) => {
    pdf.translate(x, y).scale(scale).lineJoin('round').lineCap('butt');
    if (picture.isCutOut === true) pdf.rect(0, 0, picture.width, picture.height).clip();
    const draw = (shape: Shape): void => {
      if (shape.kind === 'group') for (const one of shape.shapes) draw(one);
      else if (shape.kind === 'path') drawPath(pdf, shape, scale);
      else if (shape.kind === 'mark') drawMark(pdf, shape.verdict, shape.x, shape.y, shape.height);
      else drawLetter(canvas, pdf, shape, letters);
    };
    for (const shape of picture.shapes) draw(shape);
  });
}

function drawPath(pdf: Pdf, { d, pen, ground }: PathShape, scale: number): void {
  if (d === '') return;
  const dress = grounds[ground];
  if (typeof dress === 'string') pdf.path(d).fill(dress);
  else if (dress !== null) fillHatched(pdf, d, dress);
  if (pen === null) return;
  const dash = dashes_px[pen.dash];
  if (dash === null) pdf.undash();
  else pdf.dash(dash[0], { space: dash[1] });
  // A line is as thick on paper whatever the scale of the picture.
  pdf
    .path(d)
    .lineWidth((weights_mm[pen.weight] * pt_per_mm) / scale)
    .stroke(inkColors[pen.ink]);
}

/** White round letters, so that lines under them do not cross them [px]. */
const halo_px = 1.5;
/** Height of figures and capitals over the line, and of what hangs under it, as shares of the letters' height. */
const [above, below] = [0.76, 0.2] as const;

function drawLetter(canvas: Canvas, pdf: Pdf, letter: LetterShape, letters: SetLetters): void {
  const set = letters.get(letter);
  const line = set?.lines[0];
  if (!set || !line) return;
  // Letters are laid in points; a picture that is drawn smaller has smaller letters.
  const perPt = 1 / pt_per_px;
  const [long, high] = [line.width_pt * perPt, set.size_pt * perPt];
  const back = { start: 0, middle: 0.5, end: 1 }[letter.anchor] * long;
  pdf.save().translate(letter.x, letter.y);
  if (letter.turn_deg !== 0) pdf.rotate(-letter.turn_deg);
  if (letter.hasHalo)
    pdf
      .rect(-back - halo_px, -above * high - halo_px, long + 2 * halo_px, (above + below) * high + 2 * halo_px)
      .fill('#fff');
  pdf.scale(perPt);
  canvas.letters(line, -back * pt_per_px, 0, set.size_pt, inkColors[letter.ink] === '#fff' ? '#fff' : '#000');
  pdf.restore();
}
