import type { Pdf } from '../document/canvas.ts';
import type { Hatch } from './dress.ts';
import { type PathBox, pathBox } from './pathBox.ts';

/**
 * Fills a path with a hatch on white. Its lines lie on a grid of the whole picture, so that those of neighbours meet.
 *
 * @param pdf - scaled to px of the picture
 * @param d - the path
 * @param hatch - which lines [px]
 */
export function fillHatched(pdf: Pdf, d: string, hatch: Hatch): void {
  pdf.path(d).fill('#fff');
  const box = pathBox(d);
  if (box === null) return;
  pdf.save();
  pdf.path(d).clip();
  drawn[hatch.kind](pdf, box, hatch.apart);
  if (hatch.kind === 'dots') pdf.fill('#000');
  else pdf.lineWidth(hatch.thick).undash().stroke('#000');
  pdf.restore();
}

/** Multiples of a step within two bounds. */
function* steps(from: number, to: number, step: number): Generator<number> {
  for (let nth = Math.ceil(from / step); nth * step <= to; nth++) yield nth * step;
}

type Laid = (pdf: Pdf, box: PathBox, apart: number) => void;

const level: Laid = (pdf, { left, right, top, bottom }, apart) => {
  for (const y of steps(top, bottom, apart)) pdf.moveTo(left, y).lineTo(right, y);
};

const leaning: Laid = (pdf, { left, right, top, bottom }, apart) => {
  const high = bottom - top;
  const across = apart * Math.SQRT2;
  for (const sum of steps(left + top, right + bottom, across))
    pdf.moveTo(sum - top, top).lineTo(sum - top - high, bottom);
};

const courses: Laid = (pdf, box, apart) => {
  level(pdf, box, apart);
  const brick = apart * 2.8;
  for (const y of steps(box.top - apart, box.bottom, apart)) {
    const shift = Math.round(y / apart) % 2 === 0 ? 0 : brick / 2;
    for (const x of steps(box.left - brick, box.right, brick)) pdf.moveTo(x + shift, y).lineTo(x + shift, y + apart);
  }
};

const dots: Laid = (pdf, { left, right, top, bottom }, apart) => {
  for (const y of steps(top, bottom, apart)) {
    const shift = Math.round(y / apart) % 2 === 0 ? 0 : apart / 2;
    for (const x of steps(left - apart, right, apart)) pdf.rect(x + shift, y, 0.8, 0.8);
  }
};

const drawn: Readonly<Record<Hatch['kind'], Laid>> = { level, leaning, courses, dots };
