import type { Branch, Canvas } from '../document/canvas.ts';
import type { Room } from '../document/setter.ts';

/** A strip of the page that is not broken: a heading, a row, a few lines. */
export interface Band {
  readonly height_pt: number;
  /** White over it, where it does not begin a page. */
  readonly before_pt: number;
  /** It does not end a page: what follows is needed with it. */
  readonly keepsNext: boolean;
  /** Drawn again over it where it begins a page: the head of its table. */
  readonly head: Band | null;
  /** `isAgain`: it was read out before. */
  draw(canvas: Canvas, under: Branch, room: Room, isAgain: boolean): void;
}

export const band = (height_pt: number, draw: Band['draw'], more: Partial<Omit<Band, 'draw'>> = {}): Band => ({
  height_pt,
  before_pt: 0,
  keepsNext: false,
  head: null,
  ...more,
  draw,
});

/** A place of the tree that several bands share: made when the first of them is drawn. */
export function branchOnce(role: Parameters<Canvas['branch']>[1]): (canvas: Canvas, under: Branch) => Branch {
  let made: Branch | null = null;
  return (canvas, under) => {
    made ??= canvas.branch(under, role);
    return made;
  };
}
