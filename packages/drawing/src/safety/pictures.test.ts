import { dayIndexOf } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import type { LetterShape, PathShape, Picture, Shape } from '../sheet/shapes.ts';
import { duePicture, riskPicture, type SampleDot, samplesPicture, type WayStop, wayPicture } from './index.ts';
import { wayGlyph } from './wayGlyphs.ts';

const flat = (shapes: readonly Shape[]): readonly Shape[] =>
  shapes.flatMap((one) => (one.kind === 'group' ? flat(one.shapes) : [one]));
const lettersOf = ({ shapes }: Picture) => flat(shapes).filter((one): one is LetterShape => one.kind === 'letter');
const textsOf = (picture: Picture) => lettersOf(picture).map(({ text }) => text);
const pathsOf = (shapes: readonly Shape[]) => flat(shapes).filter((one): one is PathShape => one.kind === 'path');
const groupOf = ({ shapes }: Picture, part: string) => {
  const found = shapes.find((one) => one.kind === 'group' && one.part === part);
  return found?.kind === 'group' ? found.shapes : [];
};

/** Numbers of a path, in pairs of its own writing. */
const isDrawable = (picture: Picture) =>
  pathsOf(picture.shapes).every(({ d }) => !/NaN|Infinity|undefined/.test(d)) &&
  lettersOf(picture).every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y) && x >= -1 && x <= picture.width + 1);

const steps = (bacteria: number, viruses: number, protozoa: number) => ({
  ...{ bacteria_log10: bacteria, viruses_log10: viruses, protozoa_log10: protozoa },
});
const stop = (kind: WayStop['kind'], credited: WayStop['credited'], leaking: WayStop['leaking'] = null): WayStop => ({
  ...{ kind, name: kind, credited, leaking },
});
const wayWords = {
  germs: (one: string) => one,
  steps: (count: number) => `${count} steps`,
  needed: (count: number) => `wanted ${count}`,
  leaking: 'dotted: leaks',
};
const stops = [
  stop('roof', null),
  stop('membrane', steps(6, 0, 6), steps(2, 0, 2)),
  stop('chlorine', steps(2, 2.5, 0)),
  stop('cup', null),
];
const needed = { bacteria: 4, viruses: 5, protozoa: null };

describe('the way of the water', () => {
  for (const width of [328, 640, 980])
    it(`is drawable at ${width} px, with the sum of each class and what is wanted`, () => {
      const picture = wayPicture({ stops, needed }, wayWords, { width });
      expect(isDrawable(picture)).toBe(true);
      const texts = textsOf(picture);
      for (const told of ['8 steps', '2.5 steps', '6 steps', 'wanted 4', 'wanted 5', 'dotted: leaks'])
        expect(texts).toContain(told);
    });

  it('the line of a class falls by its steps, the same for each step in every lane', () => {
    const picture = wayPicture({ stops, needed }, wayWords, { width: 980 });
    const falls = (germs: string) => {
      const line = pathsOf(groupOf(picture, `germs:${germs}`)).find(({ pen }) => pen?.weight === 'cut')!;
      const ys = [...line.d.matchAll(/V([\d.]+)/g)].map(([, y]) => Number(y));
      return ys.at(-1)! - ys[0]!;
    };
    expect(falls('bacteria') / 8).toBeCloseTo(falls('viruses') / 2.5, 1);
    expect(falls('protozoa') / 6).toBeCloseTo(falls('bacteria') / 8, 1);
  });

  it('what misses what is wanted is told in brick; a leak has a line of its own where there are cartridges alone', () => {
    const picture = wayPicture({ stops, needed }, wayWords, { width: 980 });
    const inkOf = (text: string) => lettersOf(picture).find((one) => one.text === text)?.ink;
    expect([inkOf('wanted 5'), inkOf('wanted 4')]).toEqual(['brick', 'ink']);
    const dotted = (of: readonly WayStop[]) =>
      pathsOf(wayPicture({ stops: of, needed }, wayWords, { width: 980 }).shapes).filter(
        ({ pen }) => pen?.dash === 'dotted',
      ).length;
    expect(dotted(stops)).toBe(3);
    expect(dotted([stops[0]!, stops[2]!, stops[3]!])).toBe(0);
  });

  it('numbers stand for names where there is no room, and nothing breaks it', () => {
    const many = Array.from({ length: 14 }, (_, nth) => stop(nth === 0 ? 'roof' : 'other', steps(Number.NaN, -3, 1)));
    const picture = wayPicture(
      { stops: many, needed: { bacteria: 0, viruses: Number.POSITIVE_INFINITY, protozoa: 2 } },
      wayWords,
      {
        width: 328,
      },
    );
    expect(pathsOf(picture.shapes).every(({ d }) => !/NaN/.test(d))).toBe(true);
    expect(textsOf(picture)).toEqual(expect.arrayContaining(['1', '14']));
    expect(isDrawable(wayPicture({ stops: [stop('cup', null)], needed }, wayWords, { width: 328 }))).toBe(true);
  });

  it('each kind of stop has a sign of its own', () => {
    const kinds = ['roof', 'source', 'firstFlush', 'settling', 'storageTime', 'filter', 'membrane'] as const;
    const rest = ['chlorine', 'ultraviolet', 'boiling', 'other', 'cup'] as const;
    const drawn = [...kinds, ...rest].map((kind) =>
      pathsOf(wayGlyph(kind, 50, 50))
        .map(({ d, ground }) => `${d} ${ground}`)
        .join(),
    );
    expect(new Set(drawn).size).toBe(kinds.length + rest.length);
  });
});

describe('the risks', () => {
  const words = { times: (ratio: number) => `${ratio} ×`, target: 'target' };
  const dots = (picture: Picture) =>
    picture.shapes.flatMap((one) => {
      if (one.kind !== 'group') return [];
      const d = pathsOf(one.shapes).at(-1)!.d;
      return [Number(/^M([\d.-]+)/.exec(d)![1]) + 3.5];
    });

  it('stand by tenfold steps: each as far from the next', () => {
    const rows = [0.1, 1, 10].map((ratio) => ({ name: 'x', typical_ratio: ratio, high_ratio: ratio }));
    const [a, b, c] = dots(riskPicture(rows, words, { width: 800 }));
    expect(b! - a!).toBeCloseTo(c! - b!, 1);
    expect(c!).toBeGreaterThan(b!);
  });

  it('nothing known to be over the target is in brick alone, and odd figures draw no odd lines', () => {
    const rows = [
      { name: 'over', typical_ratio: 3, high_ratio: 30 },
      { name: 'at worst', typical_ratio: 0.3, high_ratio: 3 },
      { name: 'none', typical_ratio: 0, high_ratio: 0 },
      { name: 'endless', typical_ratio: 1e30, high_ratio: Number.POSITIVE_INFINITY },
    ];
    const picture = riskPicture(rows, words, { width: 328 });
    expect(isDrawable(picture)).toBe(true);
    const inkOf = (text: string) => lettersOf(picture).find((one) => one.text === text)?.ink;
    expect([inkOf('over'), inkOf('at worst'), inkOf('none')]).toEqual(['brick', 'ink', 'ink']);
    expect(isDrawable(riskPicture([], words, { width: 328 }))).toBe(true);
  });

  it('no line is without its name: where the whole has no room the germ alone is told', () => {
    const name = 'Cryptosporidium (protozoa), roof water, and water of a far river on 3.6 days a year';
    const rows = [{ name, short: 'Cryptosporidium', typical_ratio: 0.5, high_ratio: 1.9 }];
    expect(textsOf(riskPicture(rows, words, { width: 328 }))).toContain('Cryptosporidium');
    const wide = textsOf(riskPicture(rows, words, { width: 820 }));
    expect(wide).toContain(name);
    expect(wide).not.toContain('Cryptosporidium');
  });
});

describe('the samples', () => {
  const words = {
    ...{ band: (band: string) => band, count: String, axis: 'E. coli in 100 mL', year: String },
    month: (year: number, month: number) => `${month}/${year}`,
  };
  const sample = (more: Partial<SampleDot>): SampleDot => ({
    ...{ takenOn: dayIndexOf(2026, 3, 1), point: 'tap', sign: 'equal', count_per_100mL: 10 },
    ...{ low_per_100mL: null, high_per_100mL: null, isBeforeHandOver: false },
    ...more,
  });
  const heightOf = (more: Partial<SampleDot>) => {
    const own = sample(more);
    const picture = samplesPicture([own], words, { width: 640 });
    const dot = pathsOf(groupOf(picture, `sample:${own.takenOn}`)).at(-1)!;
    return Number(/^M[\d.-]+ ([\d.-]+)/.exec(dot.d)![1]);
  };

  it('a tenfold count stands a band higher, and none stands under all', () => {
    const [ten, hundred] = [heightOf({}), heightOf({ count_per_100mL: 100 })];
    expect(ten - hundred).toBeCloseTo(heightOf({ count_per_100mL: 1 }) - ten, 1);
    expect(heightOf({ sign: 'less', count_per_100mL: 1 })).toBeGreaterThan(heightOf({ count_per_100mL: 1 }));
  });

  it('what is odd is drawn within the frame', () => {
    const odd = [
      sample({ count_per_100mL: 0 }),
      sample({ sign: 'more', count_per_100mL: 1e12, takenOn: dayIndexOf(2026, 4, 1) }),
      sample({
        isBeforeHandOver: true,
        point: 'tank',
        takenOn: dayIndexOf(1999, 4, 1),
        low_per_100mL: 0,
        high_per_100mL: 1e9,
      }),
    ].sort((a, b) => a.takenOn - b.takenOn);
    for (const width of [328, 820]) expect(isDrawable(samplesPicture(odd, words, { width }))).toBe(true);
    expect(isDrawable(samplesPicture([], words, { width: 328 }))).toBe(true);
  });
});

describe('what is due', () => {
  const today = dayIndexOf(2026, 11, 26);
  const words = { today: 'today', year: String };
  const row = (serial: string, middle: number) => ({
    ...{ serial, early: middle - 60, middle, late: middle + 90, said: 'its age' },
  });

  it('stands on one line of days with today; what has passed is in brick', () => {
    const picture = duePicture([row('A', today - 100), row('B', today + 400)], today, words, { width: 820 });
    expect(isDrawable(picture)).toBe(true);
    const inkOf = (text: string) => lettersOf(picture).find((one) => one.text === text)?.ink;
    expect([inkOf('A'), inkOf('B')]).toEqual(['brick', 'ink']);
    expect(textsOf(picture)).toEqual(expect.arrayContaining(['today', '2027', '2028']));
  });

  it('is drawable on a phone, and with a date that is far away', () => {
    expect(isDrawable(duePicture([row('A', today + 40_000)], today, words, { width: 328 }))).toBe(true);
    expect(isDrawable(duePicture([], today, words, { width: 328 }))).toBe(true);
  });
});
