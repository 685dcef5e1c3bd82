import { describe, expect, it } from 'vitest';
import { axisEnd_L, curveChart } from './curveChart.ts';
import { bandPath, type CurveFrame, stepPath, yOf } from './curveLines.ts';
import { daysVerdict, yearsVerdict } from './curveMarks.ts';
import { curveWords, drawer, madeUpCurve } from './madeUp.testing.ts';
import { bandAt, readCurve, readSizes, type WaterCurve } from './waterCurve.ts';

const countOver = (list: Float64Array, size: number) => list.filter((one) => one > size * (1 + 1e-9)).length;
const chosen = { tankVolume_L: 5000, verdict: 'short', proposed: null, longestDryRun_days: 7 } as const;

describe('the curve', () => {
  it('by hand: two judged years, days that need 0, 3, 3 and 5 L, years that need 4 and more than any tank', () => {
    const curve: WaterCurve = {
      ...madeUpCurve(1, 2),
      critical_L: Float64Array.of(0, 3, 3, 5),
      needs_L: Float64Array.of(4, Infinity),
    };
    expect([0, 2.9, 3, 4.9, 5, 1e9].map((size) => readCurve(curve, size))).toEqual([
      { dryDays_per_year: 1.5, goodYears: 0 },
      { dryDays_per_year: 1.5, goodYears: 0 },
      { dryDays_per_year: 0.5, goodYears: 0 },
      { dryDays_per_year: 0.5, goodYears: 1 },
      { dryDays_per_year: 0, goodYears: 1 },
      { dryDays_per_year: 0, goodYears: 1 },
    ]);
  });

  it('read at, and a millionth beside, every critical volume and need it is the count by brute force', () => {
    for (const [seed, infinite] of [
      [1, 0],
      [2, 3],
      [3, 40],
    ] as const) {
      const curve = madeUpCurve(seed, 6, infinite);
      const around = new Set([...curve.critical_L, ...curve.needs_L].filter(Number.isFinite));
      expect(around.size).toBeGreaterThan(30);
      const sizes = [...around].flatMap((size) => [size * (1 - 1e-6), size, size * (1 + 1e-6)]).sort((a, b) => a - b);
      for (const [index, found] of readSizes(curve, sizes).entries()) {
        expect(found.dryDays_per_year).toBe(countOver(curve.critical_L, sizes[index]!) / 6);
        expect(found.goodYears).toBe(6 - countOver(curve.needs_L, sizes[index]!));
      }
    }
  });

  it('the line drawn is at each px where the curve has it', () => {
    const frame: CurveFrame = { left: 40, right: 600, top: 20, bottom: 220, most: 400, end_L: 11000 };
    for (const seed of [4, 5, 6]) {
      const place = drawer(seed * 7);
      const critical_L = Float64Array.from({ length: 1825 }, () => place(30_000)).sort();
      const curve = { ...madeUpCurve(seed, 5, 2), critical_L };
      const total = critical_L.length;
      const line = stepsOf(stepPath(frame, curve.critical_L, (reached) => (total - reached) / 5));
      const draw = drawer(seed);
      for (let trial = 0; trial < 400; trial++) {
        const x = 40 + draw(559) + 0.5;
        const size = ((x - 40) / 560) * 11000;
        const near = [-0.26, 0, 0.26].map((off) =>
          yOf(frame, countOver(curve.critical_L, size + (off / 560) * 11000) / 5),
        );
        const y = line.findLast((step) => step.x <= x)!.y;
        expect(y).toBeGreaterThanOrEqual(Math.min(...near) - 0.01);
        expect(y).toBeLessThanOrEqual(Math.max(...near) + 0.01);
      }
    }
  });

  it('is cut where it leaves the frame above, and is no line at all where it never comes into it', () => {
    const frame: CurveFrame = { left: 0, right: 100, top: 0, bottom: 100, most: 10, end_L: 100 };
    expect(stepPath(frame, Float64Array.of(50), (reached) => (reached === 0 ? 20 : 5))).toBe('M50 0V50H100');
    expect(stepPath(frame, Float64Array.of(Infinity, Infinity), () => 20)).toBe('');
    expect(stepPath(frame, Float64Array.of(), () => 0)).toBe('M0 100V100H100');
    expect(bandPath(frame, [{ tankVolume_L: 10, low: 5, high: 8 }])).toBe('');
    const band = [0, 100].map((tankVolume_L) => ({
      tankVolume_L,
      low: tankVolume_L === 0 ? 5 : 0,
      high: tankVolume_L === 0 ? 20 : 0,
    }));
    // High falls from 20 to 0 over 100 L: it crosses the top, 10, at 50 L.
    expect(bandPath(frame, band)).toBe('M0 0L50 0L100 100L100 100L0 50Z');
  });

  it('the band is straight between the sizes it was drawn at, and not known outside them', () => {
    const band = [
      { tankVolume_L: 100, low: 4, high: 8 },
      { tankVolume_L: 200, low: 2, high: 6 },
    ];
    expect(bandAt(band, 150)).toEqual({ low: 3, high: 7 });
    expect(bandAt(band, 100)).toMatchObject({ low: 4, high: 8 });
    expect(bandAt(band, 99)).toBeNull();
    expect(bandAt(band, 201)).toBeNull();
  });

  it('each half has its own mark: short where missed, tight where only the point reaches it', () => {
    const curve: WaterCurve = {
      ...madeUpCurve(1, 10),
      band: [
        { tankVolume_L: 0, low: 1, high: 18 },
        { tankVolume_L: 9000, low: 1, high: 20 },
      ],
    };
    expect(daysVerdict(curve, { tankVolume_L: 0, verdict: 'short' }, 10)).toBe('holds');
    expect(daysVerdict(curve, { tankVolume_L: 9000, verdict: 'short' }, 10)).toBe('tight');
    expect(daysVerdict(curve, { tankVolume_L: 0, verdict: 'short' }, 18.3)).toBe('short');
    expect(yearsVerdict(curve, { tankVolume_L: 0, verdict: 'holds' }, 8)).toBe('holds');
    expect(yearsVerdict(curve, { tankVolume_L: 0, verdict: 'tight' }, 8)).toBe('tight');
    expect(yearsVerdict(curve, { tankVolume_L: 0, verdict: 'tight' }, 7)).toBe('short');
    expect(yearsVerdict(curve, { tankVolume_L: 0, verdict: 'unknown' }, 10)).toBe('unknown');
  });

  it('the axis holds what is chosen, wanted and for sale, and says what is beyond it', () => {
    const curve = madeUpCurve(1, 10);
    expect(axisEnd_L({ ...chosen, curve })).toBeCloseTo(12000 * 1.08, 9);
    const far = { ...curve, tankForRuns_L: 1e6 };
    expect(axisEnd_L({ ...chosen, curve: far })).toBeCloseTo(96000 * 1.08, 9);
    const chart = curveChart({ ...chosen, curve: far }, curveWords, { width: 606 });
    expect(
      chart.shapes.some((shape) => shape.kind === 'letter' && shape.text === '1,000,000 L wanted, beyond this'),
    ).toBe(true);
    const none = { ...curve, sizes: [], tankForDays_L: null, tankForRuns_L: null, tankToHold_L: null };
    expect(axisEnd_L({ ...chosen, tankVolume_L: 0, curve: none })).toBeGreaterThan(0);
  });

  it('of two tanks near each other, the smaller is lettered to the left and the larger to the right', () => {
    for (const [own, other] of [
      [7000, 7400],
      [7400, 7000],
    ] as const) {
      const proposed = { tankVolume_L: other, verdict: 'short' } as const;
      const curve = { ...madeUpCurve(1, 10), critical_L: Float64Array.from({ length: 3650 }, (_, day) => day * 3) };
      const chart = curveChart({ ...chosen, curve, tankVolume_L: own, proposed }, curveWords, { width: 606 });
      const at = (size: number) => {
        const text = curveWords.daysAt(readCurve(curve, size).dryDays_per_year!);
        const letter = chart.shapes.find((shape) => shape.kind === 'letter' && shape.text === text);
        return letter?.kind === 'letter' ? letter.x - chart.placeOfSize(size)!.x : Number.NaN;
      };
      expect(at(7000)).toBeLessThan(0);
      expect(at(7400)).toBeGreaterThan(0);
    }
  });

  it('a size pointed at is the size of its place, and lights up with what it does', () => {
    const chart = curveChart({ ...chosen, curve: madeUpCurve(1, 10) }, curveWords, { width: 606 });
    for (const size of [0, 3300, 12000]) {
      const box = chart.placeOfSize(size)!;
      expect(chart.sizeAt(box.x, box.y + 1)).toBeCloseTo(size, 6);
      expect(chart.overlayOfSize(size).length).toBeGreaterThan(1);
    }
    expect(chart.placeOfSize(1e6)).toBeNull();
    expect(chart.sizeAt(0, 50)).toBeNull();
  });

  it('sizes run one by one are points, and said to be', () => {
    const curve = {
      ...madeUpCurve(1, 10),
      isExact: false,
      critical_L: new Float64Array(0),
      needs_L: new Float64Array(0),
    };
    expect(readCurve(curve, 5000)).toEqual({ dryDays_per_year: 4, goodYears: 5 });
    expect(readCurve(curve, 5001)).toEqual({ dryDays_per_year: null, goodYears: null });
    const chart = curveChart({ ...chosen, curve }, curveWords, { width: 606 });
    expect(chart.shapes.some((shape) => shape.kind === 'letter' && shape.text === curveWords.pointsOnly)).toBe(true);
  });
});

/** Corners of a path of M, H and V. */
function stepsOf(d: string): readonly { readonly x: number; readonly y: number }[] {
  const steps: { x: number; y: number }[] = [];
  let [x, y] = [0, 0];
  for (const [, letter, one, two] of d.matchAll(/([MHV])(-?[\d.]+)(?: (-?[\d.]+))?/g)) {
    if (letter === 'M') [x, y] = [Number(one), Number(two)];
    else if (letter === 'H') x = Number(one);
    else y = Number(one);
    steps.push({ x, y });
  }
  return steps;
}
