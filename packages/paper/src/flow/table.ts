import type { StationVerdict } from '@eavewell/engine';
import type { Branch, Canvas } from '../document/canvas.ts';
import { type Align, drawLines, type Room, type SetLines, type Setter } from '../document/setter.ts';
import { lines_pt, mm, sizes_pt } from '../document/sheetSize.ts';
import { drawMark } from '../drawing/mark.ts';
import type { Text, Weight } from '../text/index.ts';
import { type Band, band, branchOnce } from './band.ts';

/** What stands in a cell: a text, a verdict's mark, boxes to tick, or nothing yet: room to write. */
export type Cell =
  /** `span`: over so many columns, the others of which stand empty beside it. */
  | { readonly kind: 'text'; readonly text: Text; readonly weight?: Weight; readonly span?: number }
  | { readonly kind: 'mark'; readonly verdict: StationVerdict; readonly says: string }
  | { readonly kind: 'box' }
  | { readonly kind: 'blank' };

export const text = (said: Text, weight: Weight = 'plain', span = 1): Cell => ({
  ...{ kind: 'text', text: said, weight, span },
});

export interface Column {
  readonly head: string;
  /** Share of the width, against those of the others. */
  readonly share: number;
  readonly align?: Align;
}

export interface TableInput {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** Least height of a row [pt]: more, where somebody writes in it. */
  readonly leastRow_pt?: number;
  /** White over its head [pt]. */
  readonly before_pt?: number;
  /** Its rows alone, where its heads say nothing. */
  readonly isHeadless?: boolean;
  /** Height of its letters; left out: those of the body. */
  readonly size_pt?: number;
}

/** White between columns, and over and under the letters of a row [pt]. */
const gap_pt = mm(2.5);
const padding_pt = 1.8;
const box_pt = mm(3.8);

interface Slot {
  readonly from: number;
  readonly width: number;
  readonly align: Align;
}

function slotsOf(columns: readonly Column[], width: number): readonly Slot[] {
  const all = columns.reduce((sum, { share }) => sum + share, 0);
  const room = width - gap_pt * (columns.length - 1);
  let from = 0;
  return columns.map(({ share, align = 'start' }): Slot => {
    const slot = { from, width: (room * share) / all, align };
    from += slot.width + gap_pt;
    return slot;
  });
}

/** The room of a cell: that of its column, or of as many as it spans. */
function slotOf(slots: readonly Slot[], at: number, cell: Cell): Slot {
  const own = slots[at]!;
  const last = cell.kind === 'text' && cell.span !== undefined ? slots[at + cell.span - 1] : undefined;
  return last === undefined ? own : { ...own, width: last.from + last.width - own.from };
}

/** A cell ready to be drawn: how high it is, and how. */
interface SetCell {
  readonly height_pt: number;
  draw(canvas: Canvas, room: Room): void;
}

function setCell(setter: Setter, cell: Cell, { width, align }: Slot, size_pt: number): SetCell {
  if (cell.kind === 'blank') return { height_pt: 0, draw: () => {} };
  if (cell.kind === 'box')
    return {
      height_pt: box_pt + 2,
      draw: (canvas, { x, y }) =>
        canvas.box(setter.left(x, width, box_pt, align), y + 1, box_pt, box_pt, lines_pt.edge),
    };
  if (cell.kind === 'mark') {
    const height = cell.verdict === 'holds' || cell.verdict === 'notJudged' ? 10 : 13.5;
    return {
      height_pt: height + 1,
      draw: (canvas, { x, y }) => {
        const middle = setter.place(x, width, 7, 0);
        canvas.drawing((pdf) => drawMark(pdf, cell.verdict, middle, y + 13.5, height));
      },
    };
  }
  const set: SetLines = setter.lines(cell.text, size_pt, width, cell.weight ?? 'plain');
  return {
    height_pt: set.height_pt,
    draw: (canvas, room) => drawLines(canvas, setter, set, { ...room, width }, align),
  };
}

/**
 * A table: an ink line under its head, hairlines between rows, figures at the far side of their columns.
 *
 * @param setter - lays its letters; from right to left the first column stands at the right
 * @param width - of the table [pt]
 * @param input - columns and rows
 * @returns its head, which comes again on each page, and its rows
 */
export function table(setter: Setter, width: number, input: TableInput): readonly Band[] {
  const { columns, rows, leastRow_pt = 0, before_pt = 2, isHeadless = false, size_pt = sizes_pt.body } = input;
  const slots = slotsOf(columns, width);
  const branch = branchOnce('Table');
  const head = headBand(setter, width, columns, slots, branch, before_pt);
  const drawn = rows.map((cells, nth): Band => {
    const own = slots.map((_, at) => slotOf(slots, at, cells[at] ?? { kind: 'blank' }));
    const set = own.map((slot, at) => setCell(setter, cells[at] ?? { kind: 'blank' }, slot, size_pt));
    const high = Math.max(leastRow_pt, ...set.map(({ height_pt }) => height_pt)) + 2 * padding_pt;
    return band(
      high,
      (canvas, under, { x, y }) => {
        const row = canvas.branch(branch(canvas, under), 'TR');
        set.forEach((cell, at) => {
          const { from, width: wide } = own[at]!;
          const room = { x: setter.place(x, width, from, wide), y: y + padding_pt, width: wide };
          canvas.within(canvas.branch(row, 'TD', markSays(cells[at])), 'TD', () => cell.draw(canvas, room));
        });
        canvas.unread(() => {
          if (leastRow_pt === 0) canvas.rule(x, y + high, width, lines_pt.hair, '#444');
          // What is written in has a line of its own under each place.
          else
            for (const { from, width: wide } of slots)
              canvas.rule(setter.place(x, width, from, wide), y + high, wide, lines_pt.thin, '#444');
        });
      },
      {
        head: isHeadless ? null : head,
        before_pt: isHeadless && nth === 0 ? before_pt : 0,
        // No page ends with a head and a single row of many.
        keepsNext: nth === 0 && rows.length > 1,
      },
    );
  });
  return isHeadless ? drawn : [head, ...drawn];
}

const markSays = (cell: Cell | undefined): string | undefined => (cell?.kind === 'mark' ? cell.says : undefined);

function headBand(
  setter: Setter,
  width: number,
  columns: readonly Column[],
  slots: readonly Slot[],
  branch: (canvas: Canvas, under: Branch) => Branch,
  before_pt: number,
): Band {
  const sets = columns.map(({ head }, at) => setter.lines(head, 9, slots[at]!.width));
  const high = Math.max(...sets.map(({ height_pt }) => height_pt)) + padding_pt + 1;
  const drawAll = (canvas: Canvas, { x, y }: Room, cell: (at: number, draw: () => void) => void) =>
    sets.forEach((set, at) => {
      const { from, width: own, align } = slots[at]!;
      // Heads of several lines stand on the line under them.
      const room = { x: setter.place(x, width, from, own), y: y + high - padding_pt - set.height_pt, width: own };
      cell(at, () => drawLines(canvas, setter, set, room, align));
    });
  return band(
    high,
    (canvas, under, room, isAgain) => {
      if (isAgain) canvas.unread(() => drawAll(canvas, room, (_, draw) => draw()));
      else {
        const row = canvas.branch(branch(canvas, under), 'TR');
        drawAll(canvas, room, (_, draw) => canvas.within(canvas.branch(row, 'TH'), 'TH', draw));
      }
      canvas.unread(() => canvas.rule(room.x, room.y + high, width, lines_pt.cut));
    },
    { before_pt, keepsNext: true },
  );
}
