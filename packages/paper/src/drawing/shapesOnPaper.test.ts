import { dashes, grounds as groundNames, inks, type Shape, svgText, weights } from '@eavewell/drawing';
import { expect, it } from 'vitest';
import { Canvas } from '../document/canvas.ts';
import { Setter } from '../document/setter.ts';
import { section } from '../pack/madeUpPack.testing.ts';
import { contentsOf } from '../reading/readBack.testing.ts';
import { dashes_px, grounds, inkColors, weights_mm } from './dress.ts';
import { pathBox } from './pathBox.ts';
import { setLetters, shapesOnPaper } from './shapesOnPaper.ts';

const facts = { title: 't', author: 'a', language: 'en', madeAt_ms: 0 };

function drawn(shapes: readonly Shape[], place = { x: 0, y: 0 }): string {
  const canvas = new Canvas(facts);
  canvas.addPage();
  const setter = new Setter('ltr');
  const letters = setLetters(setter, shapes);
  canvas.unread(() => shapesOnPaper(canvas, { width: 600, height: 400, shapes }, letters, place));
  return contentsOf(canvas.finish())[0]!;
}

const path = (ground: (typeof groundNames)[number], weight: (typeof weights)[number] = 'edge'): Shape => ({
  kind: 'path',
  d: 'M10 10H90V60H10Z',
  pen: { weight, ink: 'ink', dash: 'none' },
  ground,
});

it('every weight, ink, dash and ground of a drawing has its dress on paper', () => {
  expect(Object.keys(weights_mm).sort()).toEqual([...weights].sort());
  expect(Object.keys(inkColors).sort()).toEqual([...inks].sort());
  expect(Object.keys(dashes_px).sort()).toEqual([...dashes].sort());
  expect(Object.keys(grounds).sort()).toEqual([...groundNames].sort());
  for (const ground of groundNames) expect(drawn([path(ground)])).not.toMatch(/NaN|undefined|Infinity/);
});

it('lines are as thick as the look has them, whatever the scale: .13, .18, .35 and .50 mm', () => {
  const thick = (weight: (typeof weights)[number]) => {
    const found = [...drawn([path('none', weight)]).matchAll(/([\d.]+) w\b/g)].map(({ 1: one }) => Number(one));
    // In px of the picture, which are drawn at 72/96 of a point.
    return ((found[found.length - 1]! * 72) / 96 / 72) * 25.4;
  };
  expect([...weights].map((one) => Math.round(thick(one) * 100) / 100)).toEqual([0.13, 0.18, 0.35, 0.5]);
});

it('water is a hatch of level lines within its outline', () => {
  const content = drawn([path('water')]);
  const lines = [...content.matchAll(/([\d.]+) ([\d.]+) m\n([\d.]+) ([\d.]+) l/g)].map(([, ...four]) =>
    four.map(Number),
  );
  expect(lines.length).toBeGreaterThan(10);
  for (const [, fromY, , toY] of lines) expect(toY).toBe(fromY);
  expect(content).toContain('W n');
  // Black and white alone: no colour has three unlike parts.
  for (const [, r, g, b] of content.matchAll(/([\d.]+) ([\d.]+) ([\d.]+) (?:scn|SCN)/g)) expect([g, b]).toEqual([r, r]);
});

it('a metre of the building is a metre over the scale on paper', () => {
  const { picture, oneTo } = section;
  expect([150, 200]).toContain(oneTo);
  const perM_pt = (picture as { readonly pxPerM?: number }).pxPerM! * 0.75;
  expect((perM_pt / 72) * 25.4 * oneTo).toBeCloseTo(1000, 6);
});

it('the same lines are drawn as on the screen', () => {
  const { picture } = section;
  const onScreen = svgText({ ...picture, pxPerM: 1, handles: [] }, 'section');
  const count = (all: readonly Shape[]): number =>
    all.reduce(
      (sum, one) =>
        sum +
        (one.kind === 'group' ? count(one.shapes) : one.kind === 'path' && one.pen !== null && one.d !== '' ? 1 : 0),
      0,
    );
  expect(count(picture.shapes)).toBeGreaterThan(50);
  expect(onScreen).not.toContain('NaN');
  const content = drawn(picture.shapes);
  const strokes = content.match(/\nS\n/g)?.length ?? 0;
  expect(strokes).toBeGreaterThanOrEqual(count(picture.shapes));
  expect(content).not.toMatch(/NaN|undefined|Infinity/);
});

it('the box of a path holds all of it', () => {
  expect(pathBox('M1 2L5 9H7V1Z')).toEqual({ left: 1, top: 1, right: 7, bottom: 9 });
  expect(pathBox('m1 2l4 7h2v-8z')).toEqual({ left: 1, top: 1, right: 7, bottom: 9 });
  expect(pathBox('')).toBeNull();
  const round = pathBox('M0 0A5 5 0 1 0 10 0')!;
  expect(round.top).toBeLessThanOrEqual(-5);
  expect(round.bottom).toBeGreaterThanOrEqual(5);
  expect(pathBox('M0 0Q5 20 10 0T20 0')!.right).toBe(20);
});
