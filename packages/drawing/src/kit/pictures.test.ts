import { describe, expect, it } from 'vitest';
import type { LetterShape, PathShape, Picture, Shape } from '../sheet/shapes.ts';
import { boatPicture, cutsPicture, loadsPicture, rangesPicture, swingsPicture } from './index.ts';

const flat = (shapes: readonly Shape[]): readonly Shape[] =>
  shapes.flatMap((one) => (one.kind === 'group' ? flat(one.shapes) : [one]));
const lettersOf = ({ shapes }: Picture) => flat(shapes).filter((one): one is LetterShape => one.kind === 'letter');
const textsOf = (picture: Picture) => lettersOf(picture).map(({ text }) => text);
const pathsOf = (shapes: readonly Shape[]) => flat(shapes).filter((one): one is PathShape => one.kind === 'path');
const groupOf = ({ shapes }: Picture, part: string) => {
  const found = shapes.find((one) => one.kind === 'group' && one.part === part);
  return found?.kind === 'group' ? found.shapes : [];
};
const isDrawable = (picture: Picture) =>
  pathsOf(picture.shapes).every(({ d }) => !/NaN|Infinity|undefined/.test(d)) &&
  lettersOf(picture).every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y) && x >= -1 && x <= picture.width + 1);

/** How wide and high the first rectangle of a group is [px]. */
const sizeOf = (picture: Picture, part: string): readonly [number, number] => {
  const [, width, height] = /h(-?[\d.]+)v(-?[\d.]+)/.exec(pathsOf(groupOf(picture, part))[0]?.d ?? '') ?? [];
  return [Math.abs(Number(width)), Math.abs(Number(height))];
};

const boatWords = {
  freeboard: (height: number) => `${height} cm`,
  mark: (height: number) => `mark ${height} cm`,
  spare: (mass: number) => `${mass} kg to spare`,
};
const block = (nth: number, mass_kg: number) => ({
  ...{ blockId: `stop:${nth}`, label: `Stop ${nth}`, nth: String(nth), mass_kg, said: `${mass_kg} kg` },
});
const boat = { limit_kg: 1200, freeboard_cm: 38, atLimit_cm: 38, leastFreeboard_cm: 25 };

describe('a boat from the side', () => {
  for (const width of [328, 640, 900])
    it(`is drawable at ${width} px, each block as long as it is heavy, with the mark it may not sink under`, () => {
      const picture = boatPicture({ ...boat, blocks: [block(2, 300), block(1, 600)] }, boatWords, { width });
      expect(isDrawable(picture)).toBe(true);
      const [second] = sizeOf(picture, 'stop:2');
      const [first] = sizeOf(picture, 'stop:1');
      expect(first / second).toBeCloseTo(2, 1);
      for (const told of ['300 kg', '600 kg', 'mark 25 cm']) expect(textsOf(picture)).toContain(told);
    });

  for (const width of [328, 640, 900])
    it(`at ${width} px has a number for every block, however narrow, and its mark all the same`, () => {
      const stops = [600, 8, 5, 300, 6, 4].map((mass_kg, at) => block(6 - at, mass_kg));
      const fuel = { blockId: 'fuel', label: 'fuel', nth: null, mass_kg: 9, said: '9 kg' };
      const picture = boatPicture({ ...boat, blocks: [fuel, ...stops] }, boatWords, { width });
      expect(isDrawable(picture)).toBe(true);
      for (const told of ['fuel', '1', '2', '3', '4', '5', '6', 'mark 25 cm']) expect(textsOf(picture)).toContain(told);
    });

  it('lies higher with less aboard, in proportion to its freeboard, and never out of the water', () => {
    const waterAt = (freeboard_cm: number) => {
      const picture = boatPicture({ ...boat, freeboard_cm, blocks: [] }, boatWords, { width: 900 });
      const line = picture.shapes.find((shape) => 'pen' in shape && JSON.stringify(shape).includes('waterline'));
      return Number(/M0 ([\d.]+)/.exec(JSON.stringify(line))?.[1]);
    };
    const [laden, half, empty] = [38, 45, 52].map(waterAt) as [number, number, number];
    expect(half - laden).toBeGreaterThan(1);
    expect(empty - laden).toBeCloseTo(2 * (half - laden), 1);
    expect(waterAt(4000)).toBeLessThanOrEqual(140);
  });

  it('what nobody states is left out, and an empty boat is a boat', () => {
    const none = { limit_kg: null, freeboard_cm: null, atLimit_cm: null, leastFreeboard_cm: null };
    const picture = boatPicture({ ...none, blocks: [] }, boatWords, { width: 640 });
    expect(isDrawable(picture)).toBe(true);
    expect(textsOf(picture)).toEqual([]);
  });
});

describe('loads as boxes', () => {
  const words = { mass: (mass: number) => String(mass), limit: (mass: number) => `may ${mass} kg`, nth: String };
  for (const width of [328, 980])
    it(`as high as they weigh, at ${width} px`, () => {
      const masses = Array.from({ length: 40 }, (_, nth) => 10 + (nth % 3) * 10);
      const loads = masses.map((mass_kg) => ({ mass_kg, isFragile: mass_kg === 10 }));
      const picture = loadsPicture(loads, 30, 'two', words, { width });
      expect(isDrawable(picture)).toBe(true);
      expect(sizeOf(picture, 'load:3')[1] / sizeOf(picture, 'load:1')[1]).toBeCloseTo(3, 1);
      for (let nth = 1; nth <= 40; nth++) expect(textsOf(picture)).toContain(String(nth));
      expect(textsOf(picture)).toContain('may 30 kg');
      expect(textsOf(picture).filter((text) => text === '30')).toHaveLength(
        masses.filter((mass) => mass === 30).length + 1,
      );
    });
});

describe('bars with their cuts', () => {
  it('each cut as long as it is, what is left named', () => {
    const rows = [{ bars_count: 2, bar_m: 4, cuts: [{ runId: 'G1', length_m: 2.5 }], offcut_m: 1.5 }];
    const words = {
      bars: (count: number) => `${count} bars`,
      cut: (runId: string, length: number) => `${runId} ${length} m`,
      length: (length: number) => `${length} m`,
      offcut: (length: number) => `${length} m over`,
    };
    const picture = cutsPicture(rows, words, { width: 640 });
    expect(isDrawable(picture)).toBe(true);
    const [cut] = sizeOf(picture, 'bar:0');
    expect(cut / (picture.pxPerM ?? 0)).toBeCloseTo(2.5, 2);
    expect(textsOf(picture)).toEqual(['2 bars', 'G1 2.5 m', '1.5 m over']);
  });
});

describe('amounts with their ranges, and what moves them', () => {
  const row = (value: number | null, isAtLeast = false) => ({
    ...{ rowId: `row:${value}`, label: 'water', said: value === null ? 'not known' : String(value), value, isAtLeast },
    ...{ low: value === null ? null : value * 0.9, high: value === null ? null : value * 1.2, isStrong: false },
  });
  it('bars from nought to scale; what is not known is an outline and no bar', () => {
    const picture = rangesPicture([row(10), row(20, true), row(null)], { tick: String }, { width: 400 });
    expect(isDrawable(picture)).toBe(true);
    expect(sizeOf(picture, 'row:20')[0] / sizeOf(picture, 'row:10')[0]).toBeCloseTo(2, 1);
    expect(pathsOf(groupOf(picture, 'row:null')).map(({ ground, pen }) => [ground, pen?.dash])).toEqual([
      ['none', 'unknown'],
    ]);
    expect(textsOf(picture)).toContain('not known');
  });

  it('a name that has no room beside its figure stands above it, whole', () => {
    const long = { ...row(10), label: 'Gastos menores de operación y mantenimiento', said: '1.234 USD (900 a 1.500)' };
    const at = (width: number) => {
      const letters = lettersOf(rangesPicture([long, row(20)], { tick: String }, { width }));
      const [name, figure] = [long.label, long.said].map((text) => letters.find((one) => one.text === text));
      expect([name?.text, figure?.text]).toEqual([long.label, long.said]);
      return figure!.y - name!.y;
    };
    expect(at(328)).toBeGreaterThan(12);
    expect(at(820)).toBe(0);
  });

  it('an input that lowers the result when it is high stands the right way round', () => {
    const swing = {
      rowId: 'swing:life',
      label: 'life of a tank',
      atLow: 40,
      atHigh: 30,
      saidLow: '40',
      saidHigh: '30',
    };
    const picture = swingsPicture([swing], 33, { likely: 'likely 33' }, { width: 400 });
    expect(isDrawable(picture)).toBe(true);
    const at = (text: string) => lettersOf(picture).find((one) => one.text === text)!.x;
    expect(at('30')).toBeLessThan(at('40'));
  });

  it('nothing at all is drawable too', () => {
    expect(isDrawable(rangesPicture([], { tick: String }, { width: 328 }))).toBe(true);
    expect(isDrawable(swingsPicture([], 0, { likely: '' }, { width: 328 }))).toBe(true);
    expect(
      isDrawable(cutsPicture([], { bars: String, cut: String, length: String, offcut: String }, { width: 328 })),
    ).toBe(true);
    expect(
      isDrawable(loadsPicture([], null, 'one', { mass: String, limit: String, nth: String }, { width: 328 })),
    ).toBe(true);
  });
});
