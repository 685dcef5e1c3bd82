import type { Setter } from '../document/setter.ts';
import { lines_pt, mm } from '../document/sheetSize.ts';
import { type Band, columns, paragraph } from '../flow/index.ts';

/** One thing that is read first: its figure, and what it is under it. */
export interface FactSaid {
  readonly figure: string;
  readonly said: string;
}

const [between_pt, inside_pt] = [mm(5), 5] as const;
const figure_pt = 16;
const said_pt = 9.5;

/** Four facts side by side between two ink lines, hairlines between them. */
export function factsBand(setter: Setter, width: number, facts: readonly FactSaid[]): Band {
  const all = columns(
    setter,
    width,
    between_pt,
    facts.map(({ figure, said }) => ({
      share: 1,
      bands: (own: number) => [
        ...paragraph(setter, own, figure, { size: figure_pt }),
        ...paragraph(setter, own, said, { size: said_pt, before_pt: 0 }),
      ],
    })),
  );
  const high = all.height_pt + 2 * inside_pt;
  const column = (width - between_pt * (facts.length - 1)) / facts.length;
  return {
    ...all,
    height_pt: high,
    draw: (canvas, under, { x, y }) => {
      all.draw(canvas, under, { x, y: y + inside_pt, width }, false);
      canvas.unread(() => {
        canvas.rule(x, y + high, width, lines_pt.edge);
        canvas.drawing((pdf) => {
          for (let nth = 1; nth < facts.length; nth++) {
            const at = x + nth * (column + between_pt) - between_pt / 2;
            pdf
              .moveTo(at, y)
              .lineTo(at, y + high)
              .lineWidth(lines_pt.hair)
              .stroke('#444');
          }
        });
      });
    },
  };
}
