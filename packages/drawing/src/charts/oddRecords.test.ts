import { dayIndexOf } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import type { LetterShape, Picture, Shape } from '../sheet/shapes.ts';
import { svgText } from '../sheet/svgText.ts';
import { curveChart } from './curveChart.ts';
import { boxOf, Lettering } from './lettering.ts';
import {
  curveWords,
  drawer,
  madeUpCurve,
  madeUpRecord,
  monthsWords,
  rasterWords,
  seriesOf,
  traceWords,
  yearsFrom,
  yearsInputOf,
  yearsWords,
} from './madeUp.testing.ts';
import { monthsChart } from './monthsChart.ts';
import { rasterChart } from './rasterChart.ts';
import { type RecordInput, recordFacts } from './record.ts';
import { traceChart } from './traceChart.ts';
import type { WaterCurve } from './waterCurve.ts';
import { yearsChart } from './yearsChart.ts';

const all = (length: number, value: number) => new Array<number>(length).fill(value);
const first = dayIndexOf(2001, 1, 1);
const year = yearsFrom(2001, 1, 1);
const record = (
  content: readonly number[],
  given: Parameters<typeof seriesOf>[2],
  tankVolume_L: number,
): RecordInput => ({
  series: seriesOf(first, content, given),
  years: year,
  tankVolume_L,
  longestDryRun_days: 7,
});

const odd: Readonly<Record<string, RecordInput>> = {
  'no demand': record(all(365, 100), { inflow_L: all(365, 5), spill_L: all(365, 5) }, 100),
  'no dry day': madeUpRecord({ asked_L: 1, tankVolume_L: 90_000 }),
  'every day dry': record(all(365, 0), { dry: all(365, 1), judgedAsked_L: all(365, 10) }, 100),
  'every day of 32 years dry': madeUpRecord({ years: 32, roof_L_per_mm: 0 }),
  'one year': madeUpRecord({ years: 1 }),
  '100 made years': madeUpRecord({ years: 100, year: 1, state: () => 4 }),
  'leap years': madeUpRecord({ years: 9, year: 1996, month: 3 }),
  'a tank of 0 L': record(
    all(365, 0),
    { dry: all(365, 1), judgedAsked_L: all(365, 10), inflow_L: all(365, 9), spill_L: all(365, 9) },
    0,
  ),
  'a tank never filled': record(all(365, 0), {}, 1e9),
  'no day at all': { ...record([], {}, 100), years: [] },
  'days without years': { ...record(all(40, 10), {}, 100), years: [] },
  'no year judged': madeUpRecord({ years: 4, notJudged: [0, 1, 2, 3] }),
  'half a year': { ...record(all(181, 20), {}, 100), years: [{ ...year[0]!, to: 181 }] },
  'a day': { ...record([50], {}, 100), years: [{ ...year[0]!, to: 1 }] },
  'all unknown': madeUpRecord({ years: 3, state: () => 1 }),
};

const curves: Readonly<Record<string, WaterCurve>> = {
  usual: madeUpCurve(1, 30),
  'all infinite': {
    ...madeUpCurve(2, 3, 3),
    critical_L: new Float64Array(900).fill(Infinity),
    tankForDays_L: null,
    tankForRuns_L: null,
    tankToHold_L: null,
  },
  'no dry day in any tank': {
    ...madeUpCurve(2, 3),
    critical_L: new Float64Array(900),
    needs_L: new Float64Array(3),
    tankForDays_L: 0,
    tankForRuns_L: 0,
  },
  'no year judged': { ...madeUpCurve(2, 0), goodYearsNeeded: 0, band: [], daysAllowed_per_year: 0 },
  'one by one': {
    ...madeUpCurve(4, 12),
    isExact: false,
    critical_L: new Float64Array(0),
    needs_L: new Float64Array(0),
    band: [],
  },
  'nothing for sale': { ...madeUpCurve(5, 9), sizes: [], band: [] },
  'far off': { ...madeUpCurve(6, 9), tankForRuns_L: 9e6, tankToHold_L: 2e7 },
};

const widths = [280, 328, 606, 1216] as const;

function picturesOf(input: RecordInput, width: number): readonly (readonly [string, Picture, readonly Shape[]])[] {
  const { firstDay, content_L } = input.series;
  const day = firstDay + Math.floor(content_L.length / 2);
  const window = { from: day - 90, to: day + 90 };
  const trace = traceChart(input, traceWords, { width });
  const strips = traceChart(input, traceWords, { width, strips: 4 });
  const near = traceChart(input, traceWords, { width, window });
  const raster = rasterChart(input, rasterWords, { width });
  const years = yearsChart(yearsInputOf(input), yearsWords, { width });
  const months = monthsChart(input, monthsWords, { width });
  return Object.entries({ trace, strips, near, raster, years, months }).map(([name, chart]) => [
    name,
    chart,
    chart.overlayOf(day),
  ]);
}

/** Letters that stand outside a picture, and pairs that stand in each other's place. */
function faultsOf(
  { shapes, width, height }: Pick<Picture, 'shapes' | 'width' | 'height'>,
  isOverlay = false,
): readonly string[] {
  const set = lettersOf(shapes).map((letter) => ({ text: letter.text, ...boxOf(letter) }));
  const slack = 0.01;
  const outside = set.filter(
    (box) =>
      box.x < -slack || box.y < -slack || box.x + box.width > width + slack || box.y + box.height > height + slack,
  );
  const over = set.flatMap((box, index) =>
    set.slice(index + 1).flatMap((next) => {
      const isApart =
        box.x + box.width <= next.x + slack ||
        next.x + next.width <= box.x + slack ||
        box.y + box.height <= next.y + slack ||
        next.y + next.height <= box.y + slack;
      return isApart || isOverlay ? [] : [`${box.text} over ${next.text}`];
    }),
  );
  return [...outside.map(({ text }) => `${text} outside`), ...over];
}

const lettersOf = (shapes: readonly Shape[]): readonly LetterShape[] =>
  shapes.flatMap((shape) =>
    shape.kind === 'letter' ? [shape] : shape.kind === 'group' ? lettersOf(shape.shapes) : [],
  );

describe('charts of odd records', () => {
  it.each(Object.entries(odd))('%s: whole figures, letters inside and apart', (name, input) => {
    for (const width of widths)
      for (const [kind, picture, overlay] of picturesOf(input, width)) {
        const text = svgText({ ...picture, shapes: [...picture.shapes, ...overlay] }, name);
        expect(text, `${name} ${kind} ${width}`).not.toMatch(/NaN|Infinity|undefined|null/);
        expect(picture.height).toBeGreaterThan(0);
        expect(faultsOf(picture), `${kind} ${width}`).toEqual([]);
        expect(lettersOf(picture.shapes).length, `${kind} ${width}`).toBeGreaterThan(1);
        expect(faultsOf({ ...picture, shapes: overlay }, true), `${kind} ${width}`).toEqual([]);
      }
    expect(JSON.stringify(recordFacts(input))).not.toMatch(/NaN|Infinity/);
  });

  it.each(Object.entries(curves))('curve, %s: whole figures, letters inside and apart', (name, curve) => {
    for (const width of widths)
      for (const tankVolume_L of [0, 5000, 12000, 400_000])
        for (const proposed of [null, { tankVolume_L: 8000, verdict: 'holds' as const }]) {
          const chart = curveChart(
            { curve, tankVolume_L, verdict: 'short', proposed, longestDryRun_days: 7 },
            curveWords,
            { width },
          );
          const text = svgText({ ...chart, shapes: [...chart.shapes, ...chart.overlayOfSize(tankVolume_L)] }, name);
          expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
          expect(faultsOf(chart), `${width} ${tankVolume_L}`).toEqual([]);
          expect(
            lettersOf(chart.shapes).map(({ text }) => text),
            `${width} ${tankVolume_L}`,
          ).toContain(curveWords.size(tankVolume_L));
          expect(faultsOf({ ...chart, shapes: chart.overlayOfSize(tankVolume_L) }, true)).toEqual([]);
        }
  });

  it('records drawn at random: letters inside and apart', () => {
    const draw = drawer(11);
    for (let trial = 0; trial < 25; trial++) {
      const years = 1 + draw(40);
      const input = madeUpRecord({
        seed: trial,
        years,
        year: 1950 + draw(60),
        month: 1 + draw(12),
        tankVolume_L: 500 + draw(90_000),
        asked_L: 50 + draw(900),
        notJudged: [draw(years)],
        state: (day) => (day % 97 < draw(3) ? 2 : 0),
      });
      for (const [kind, picture] of picturesOf(input, 260 + draw(1000)))
        expect(faultsOf(picture), `${trial} ${kind}`).toEqual([]);
    }
  });
});

describe('lettering', () => {
  it('sets a text at the first place that is free, and nowhere where none is', () => {
    const lettering = new Lettering(100, 40);
    expect(lettering.set('one', { x: 0, y: 15 })).toBe(true);
    expect(lettering.set('two', { x: 5, y: 15 })).toBe(false);
    expect(
      lettering.set('two', [
        { x: 5, y: 15 },
        { x: 5, y: 33 },
      ]),
    ).toBe(true);
    expect(lettering.set('outside', { x: 90, y: 15 })).toBe(false);
    lettering.keepOff({ x: 60, y: 0, width: 40, height: 40 });
    expect(lettering.set('x', { x: 70, y: 15 })).toBe(false);
    expect(lettering.letters.map(({ text, y }) => [text, y])).toEqual([
      ['one', 15],
      ['two', 33],
    ]);
  });
});
