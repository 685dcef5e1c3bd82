import { describe, expect, it } from 'vitest';
import { gutterCapacity } from './gutterCapacity.ts';
import { gutterSection } from './gutterSection.ts';
import { idealGutterFlow } from './idealGutterFlow.ts';
import { longGutterFactor } from './longGutterFactor.ts';

const rectangle = (width_mm: number, depth_mm: number) =>
  ({ shape: 'rectangular', width_mm, depth_mm, baseWidth_mm: null }) as const;
const halfRound = (width_mm: number) =>
  ({ shape: 'halfRound', width_mm, depth_mm: width_mm / 2, baseWidth_mm: null }) as const;

describe('gutterCapacity', () => {
  it('is nine tenths of the nominal flow, less for a long run and for each bend', () => {
    const short = gutterCapacity(halfRound(125), 2, 0)!;
    expect(short.capacity_L_per_s).toBeCloseTo(0.9 * 2.78e-5 * ((Math.PI * 125 ** 2) / 8) ** 1.25, 12);
    // 6.25 m is 100 times the depth of 62.5 mm: 0.93 is left.
    const long = gutterCapacity(halfRound(125), 6.25, 2)!;
    expect(long.capacity_L_per_s / short.capacity_L_per_s).toBeCloseTo(0.93 * 0.85 ** 2, 12);
  });

  it('takes the constant of a square where depth and width are alike to 5 %', () => {
    expect(gutterCapacity(rectangle(100, 105), 1, 0)!.rule).toBe('square');
    const square = gutterCapacity(rectangle(100, 105), 1, 0)!.capacity_L_per_s;
    expect(square).toBeCloseTo(0.9 * 3.48e-5 * 10_500 ** 1.25, 12);
    // A little deeper and it is none; 100 mm by 105 mm of it is one still.
    const deeper = gutterCapacity(rectangle(100, 106), 1, 0)!;
    expect(deeper.capacity_L_per_s).toBeGreaterThanOrEqual(square);
  });

  it('gives any other rectangle no less than the square inside it', () => {
    const wide = gutterCapacity(rectangle(120, 100), 1, 0)!;
    expect(wide.rule).toBe('squareWithin');
    expect(wide.nominal_L_per_s).toBeGreaterThanOrEqual(3.48e-5 * 10_000 ** 1.25);
    // 150 × 100 mm carries more by its area: 2.78 × 15,000^1.25 is over 3.48 × 10,500^1.25.
    expect(gutterCapacity(rectangle(150, 100), 1, 0)!.rule).toBe('asHalfRound');
  });

  it('takes no trapezium for a square', () => {
    const facts = { shape: 'trapezoidal', width_mm: 100, depth_mm: 100, baseWidth_mm: 100 } as const;
    expect(gutterCapacity(facts, 1, 0)!.rule).toBe('asHalfRound');
  });

  it('never gives a wide, shallow gutter more than 0.80 of the flow without friction', () => {
    const found = gutterCapacity(rectangle(200, 30), 1, 0)!;
    const ideal = idealGutterFlow(gutterSection(rectangle(200, 30))!);
    expect(found.rule).toBe('shallow');
    expect(found.nominal_L_per_s / ideal.flow_L_per_s).toBeCloseTo(0.8015, 9);
    expect(found.nominal_L_per_s).toBeLessThan(2.78e-5 * 6000 ** 1.25);
  });

  it('knows nothing where a measure is missing, or the run is beyond the table', () => {
    expect(gutterCapacity({ ...halfRound(100), depth_mm: null }, 1, 0)).toBeNull();
    expect(gutterCapacity(halfRound(100), 25, 0)).not.toBeNull();
    expect(gutterCapacity(halfRound(100), 25.01, 0)).toBeNull();
  });
});

describe('longGutterFactor', () => {
  // en-12056-3, Table 6, from memory beyond 200.
  it.each([
    [0, 1],
    [4.9, 1],
    [25, 0.77],
    [50, 0.6],
    [12.5, 0.895],
  ])('%f m along a gutter 100 mm deep', (run, factor) => {
    expect(longGutterFactor(run, 100)).toBeCloseTo(factor, 9);
  });
});
