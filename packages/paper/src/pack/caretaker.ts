import type { Language } from '@eavewell/words';
import { laterTop_pt } from '../document/heads.ts';
import { drawLines, type Setter } from '../document/setter.ts';
import { bodyEnd_pt, mm } from '../document/sheetSize.ts';
import { drawQr, qrOf } from '../drawing/qr.ts';
import { setLetters, shapesOnPaper } from '../drawing/shapesOnPaper.ts';
import { type Band, band, heading } from '../flow/index.ts';
import type { CaretakerPicture, SitePackContent } from './content.ts';

/** Side of a picture: made to be read at so much; where there are many, no less than the least [mm]. */
const side_mm = 30;
const least_mm = 24;
const gap_pt = mm(3);
const code_pt = mm(24);

/**
 * The caretaker's sheet: pictures that need no words, two in a row, each with its word beside it; and the code of the site.
 *
 * @param setter - lays its letters
 * @param width - of the body [pt]
 * @param content - of the pack
 * @param language - words
 */
export function caretaker(
  setter: Setter,
  width: number,
  { pictures, siteId }: SitePackContent,
  { say }: Language,
): readonly Band[] {
  if (pictures.length === 0) return [];
  const rows = Math.ceil(pictures.length / 2);
  const title = heading(setter, width - code_pt, say('pack.pictures'), 0);
  const room = bodyEnd_pt - laterTop_pt - code_pt - rows * gap_pt - 1;
  const side = Math.max(mm(least_mm), Math.min(mm(side_mm), room / rows));
  const id = setter.lines(siteId, 9, code_pt * 1.4, 'strong');
  const code = qrOf(siteId);
  const head = band(
    code_pt,
    (canvas, under, { x, y }) => {
      title.draw(canvas, under, { x: setter.place(x, width, 0, width - code_pt), y, width: width - code_pt }, false);
      const left = setter.place(x, width, width - code_pt, code_pt);
      canvas.within(canvas.branch(under, 'Figure', siteId), 'Figure', () =>
        drawQr(canvas, code, left, y - mm(2), code_pt),
      );
      const beside = { x: setter.place(x, width, 0, width - code_pt), y: y + code_pt - mm(9), width: width - code_pt };
      canvas.within(canvas.branch(under, 'P'), 'P', () => drawLines(canvas, setter, id, beside, 'end'));
    },
    { keepsNext: true },
  );
  return [
    head,
    ...Array.from({ length: rows }, (_, row) => rowOf(setter, width, pictures.slice(2 * row, 2 * row + 2), side)),
  ];
}

function rowOf(setter: Setter, width: number, pictures: readonly CaretakerPicture[], side: number): Band {
  const column = (width - mm(8)) / 2;
  const beside = column - side - mm(4);
  const set = pictures.map(({ picture, title }) => ({
    picture,
    letters: setLetters(setter, picture.shapes),
    title,
    lines: setter.lines(title, 11, beside),
  }));
  return band(
    side,
    (canvas, under, { x, y }) =>
      set.forEach(({ picture, letters, title, lines }, nth) => {
        const from = nth * (column + mm(8));
        const left = setter.place(x, width, from, side);
        const scale = side / Math.max(picture.width, picture.height);
        canvas.within(canvas.branch(under, 'Figure', title), 'Figure', () =>
          shapesOnPaper(canvas, picture, letters, { x: left, y, scale }),
        );
        const room = {
          x: setter.place(x, width, from + side + mm(4), beside),
          y: y + (side - lines.height_pt) / 2,
          width: beside,
        };
        canvas.within(canvas.branch(under, 'P'), 'P', () => drawLines(canvas, setter, lines, room));
      }),
    { before_pt: gap_pt },
  );
}
