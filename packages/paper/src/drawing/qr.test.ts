import { expect, it } from 'vitest';
import { Canvas } from '../document/canvas.ts';
import { contentsOf } from '../reading/readBack.testing.ts';
import { drawQr, qrOf } from './qr.ts';

/* A reader of the smallest code alone (21 squares a side, one block), from iso-18004 (from memory): it knows nothing of the library that makes them. */

const masks: readonly ((x: number, y: number) => number)[] = [
  (x, y) => (x + y) % 2,
  (_, y) => y % 2,
  (x) => x % 3,
  (x, y) => (x + y) % 3,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2,
  (x, y) => ((x * y) % 2) + ((x * y) % 3),
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2,
];
const letters = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
const side = 21;

function read(isBlack: (x: number, y: number) => boolean): { readonly text: string; readonly level: number } {
  let format = 0;
  const put = (bit: number, x: number, y: number) => {
    if (isBlack(x, y)) format |= 1 << bit;
  };
  for (let bit = 0; bit < 6; bit++) put(bit, 8, bit);
  put(6, 8, 7);
  put(7, 8, 8);
  put(8, 7, 8);
  for (let bit = 9; bit < 15; bit++) put(bit, 14 - bit, 8);
  format ^= 0b101010000010010;
  const mask = masks[(format >> 10) & 7]!;
  const isFixed = (x: number, y: number) =>
    x === 6 || y === 6 || (x < 9 && y < 9) || (x >= side - 8 && y < 9) || (x < 9 && y >= side - 8);
  const bits: number[] = [];
  for (let right = side - 1; right >= 1; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < side; step++)
      for (const x of [right, right - 1]) {
        const y = ((right + 1) & 2) === 0 ? side - 1 - step : step;
        if (!isFixed(x, y)) bits.push(Number(isBlack(x, y) !== (mask(x, y) === 0)));
      }
  }
  let at = 0;
  const take = (count: number) => {
    let value = 0;
    for (let nth = 0; nth < count; nth++) value = value * 2 + bits[at++]!;
    return value;
  };
  const mode = take(4);
  let text = '';
  if (mode === 2) {
    let count = take(9);
    for (; count >= 2; count -= 2) {
      const pair = take(11);
      text += letters[Math.floor(pair / 45)]! + letters[pair % 45]!;
    }
    if (count === 1) text += letters[take(6)]!;
  } else if (mode === 4) for (let count = take(8); count > 0; count--) text += String.fromCharCode(take(8));
  return { text, level: format >> 13 };
}

it('the squares drawn on the page are those of a code that reads as the id, a quarter of which may be lost', () => {
  for (const id of ['P1', 'S021', 'halo-3']) {
    const canvas = new Canvas({ title: 't', author: 'a', language: 'en', madeAt_ms: 0 });
    canvas.addPage();
    const code = qrOf(id);
    expect(code.size).toBe(side + 8);
    canvas.unread(() => drawQr(canvas, code, 0, 0, code.size * 10));
    const drawn = new Set(
      [...contentsOf(canvas.finish())[0]!.matchAll(/([\d.]+) ([\d.]+) 10 10 re/g)].map(
        ([, x, y]) => `${Math.round(Number(x) / 10) - 4},${Math.round(Number(y) / 10) - 4}`,
      ),
    );
    const { text, level } = read((x, y) => drawn.has(`${x},${y}`));
    expect(text).toBe(id);
    // Q is 3 of L 1, M 0, Q 3, H 2: a code has the highest it has room for, Q or H.
    expect([3, 2]).toContain(level);
    // White all round it, as many squares as the standard asks for.
    for (const at of drawn) for (const one of at.split(',')) expect(Number(one) >= 0 && Number(one) < side).toBe(true);
  }
});
