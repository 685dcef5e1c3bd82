import { readFileSync } from 'node:fs';
import { dashes, grounds, inks, type Shape, weights } from '@eavewell/drawing';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { PictureHatches, PictureView } from './PictureView.tsx';

const css = readFileSync(new URL('picture.css', import.meta.url), 'utf8');
const screen = css.slice(0, css.indexOf('@media print'));
const [print, forced] = [
  css.slice(screen.length).split('@media (forced-colors')[0]!,
  css.split('@media (forced-colors')[1]!,
];

/** Selectors of a style sheet, apart from each other. */
const selectors = (text: string) =>
  new Set([...text.matchAll(/(\.picture [^{},]+?)\s*(?=[,{])/g)].map((found) => found[1]!));

describe('the dress of pictures', () => {
  test('has a rule for every line and ground on the screen', () => {
    const known = selectors(screen);
    const wanted = [
      ...weights.map((weight) => `.picture .p-${weight}`),
      ...inks.map((ink) => `.picture .i-${ink}`),
      ...dashes.filter((dash) => dash !== 'none').map((dash) => `.picture .d-${dash}`),
      ...grounds.filter((ground) => ground !== 'none').map((ground) => `.picture .g-${ground}`),
    ];
    expect(wanted.length).toBeGreaterThan(25);
    expect(wanted.filter((one) => !known.has(one))).toEqual([]);
  });

  test('says on paper, and under colours of the reader, what each tone of water and each solid becomes', () => {
    const filled = grounds.filter((ground) => /level|water|low|likely|brick|mark|ochre/.test(ground));
    for (const text of [print, forced]) {
      const known = selectors(text);
      expect(filled.filter((ground) => !known.has(`.picture .g-${ground}`))).toEqual([]);
    }
  });

  test('asks for no hatch that the page does not have', () => {
    const asked = new Set([...css.matchAll(/url\("#([\w-]+)"\)/g)].map((found) => found[1]!));
    const markup = renderToStaticMarkup(<PictureHatches />);
    expect(asked.size).toBeGreaterThan(8);
    expect([...asked].filter((id) => !markup.includes(`<pattern id="${id}"`))).toEqual([]);
  });
});

test('a picture is an image with a name, its parts named, what is pointed at laid over it', () => {
  const line: Shape = { kind: 'path', d: 'M0 0H9', pen: { weight: 'cut', ink: 'ink', dash: 'none' }, ground: 'none' };
  const word: Shape = {
    kind: 'letter',
    x: 1,
    y: 9,
    text: 'dry < 7',
    size: 'lettering',
    anchor: 'end',
    ink: 'brick',
    isStrong: true,
    hasHalo: true,
    turn_deg: 0,
  };
  const shapes: readonly Shape[] = [{ kind: 'group', part: 'year:1998', station: null, shapes: [line, word] }];
  const markup = renderToStaticMarkup(
    <PictureView picture={{ width: 90, height: 40, shapes }} name="Water in the tank" overlay={[line]} />,
  );
  expect(markup).toContain('role="img"');
  expect(markup).toContain('aria-label="Water in the tank"');
  expect(markup).toContain('viewBox="0 0 90 40"');
  expect(markup).toContain('data-part="year:1998"');
  expect(markup).toContain('class="p-cut i-ink d-none g-none"');
  expect(markup).toContain('text-anchor="end"');
  expect(markup).toContain('dry &lt; 7');
  expect(markup.indexOf('class="pointed"')).toBeGreaterThan(markup.indexOf('data-part'));
});
