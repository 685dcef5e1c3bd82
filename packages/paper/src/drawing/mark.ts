import { svgOf } from '@eavewell/drawing';
import type { StationVerdict } from '@eavewell/engine';
import type { Pdf } from '../document/canvas.ts';

/** Where a mark stands: the scale and place its picture was given. */
const transform = /translate\((\S+) (\S+)\) scale\((\S+)\)/;

/**
 * Draws the mark of a verdict: the same small tank as on the screen.
 *
 * @param pdf - its state is kept by whoever calls
 * @param verdict - which
 * @param x - middle of its foot
 * @param y - its foot
 * @param height - of the mark
 */
export function drawMark(pdf: Pdf, verdict: StationVerdict, x: number, y: number, height: number): void {
  const [group] = svgOf({ shapes: [{ kind: 'mark', verdict, x, y, height }] });
  if (!group) return;
  const [, left, top, scale] = transform.exec(group.attributes['transform'] ?? '') ?? [];
  pdf.save().translate(Number(left), Number(top)).scale(Number(scale));
  // What holds is small and grey; the others are ink.
  const color = verdict === 'holds' || verdict === 'notJudged' ? '#444' : '#000';
  for (const node of group.children) {
    if (typeof node === 'string') continue;
    const kind = node.attributes['class'] ?? '';
    pdf.path(node.attributes['d'] ?? '');
    if (kind === 'm-full') pdf.fill(color);
    else pdf.undash();
    if (kind === 'm-dashed') pdf.dash(3.2, { space: 2.4 });
    if (kind !== 'm-full') pdf.lineWidth(thick[kind] ?? 2).stroke(color);
  }
  pdf.undash().restore();
}

/** Of the lines of a mark 24 high, as on the screen. */
const thick: Readonly<Record<string, number>> = { 'm-line': 2.2, 'm-heavy': 3.6, 'm-dashed': 2 };
