import type { LetterShape, Shape } from '../sheet/shapes.ts';
import type { Frame } from './frame.ts';
import { type Box, type Placer, widthOf } from './placer.ts';
import { group } from './sectionParts.ts';
import type { GateAt } from './sectionTypes.ts';
import { area, boxOf, plain, type View } from './view.ts';

const flat: View = { k: 30, x0: 0, y0: 0 };

/** Across each tank that may not be filled: a plain band with its words, before any other letters. */
export function gateBands({ view, placed, width }: Frame, gates: readonly GateAt[], placer: Placer): readonly Shape[] {
  return placed.flatMap((one) => {
    const tank = one.kind === 'tank' ? one.tank : null;
    const gate = gates.find(({ tankId, gate: state }) => state === 'closed' && tankId === tank?.tankId);
    if (one.kind !== 'tank' || tank === null || gate === undefined) return [];
    const size = { width: widthOf(gate.words, 'lettering', true) + 16, height: 22 };
    const middle = view.y0 - (tank.standHeight_m.value + tank.height_m.value * 0.62) * view.k;
    const x = Math.min(Math.max(2, one.x - size.width / 2), width - size.width - 2);
    const across: Box = { x, y: middle - size.height / 2, ...size };
    const box = placer.takeIfFree(across) ? across : placer.near([one.x, middle], [0, -30], size);
    return box === null ? [] : [group(`gate:${tank.tankId}`, 'stand', bandOf(box, gate.words))];
  });
}

function bandOf(box: Box, text: string): readonly Shape[] {
  const corners = boxOf(box.x / flat.k, -(box.y + box.height) / flat.k, box.width / flat.k, box.height / flat.k);
  const letter: LetterShape = {
    kind: 'letter',
    x: box.x + box.width / 2,
    y: box.y + 15.5,
    text,
    size: 'lettering',
    anchor: 'middle',
    ink: 'ink',
    isStrong: true,
    hasHalo: false,
    turn_deg: 0,
  };
  return [area(flat, 'paper', ['cut', plain], corners), letter];
}
