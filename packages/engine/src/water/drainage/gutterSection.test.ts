import { describe, expect, it } from 'vitest';
import { gutterSection, type SectionFacts, sectionFaults, waterway_mm2 } from './gutterSection.ts';

const section = (
  shape: SectionFacts['shape'],
  width_mm: number,
  depth_mm: number,
  baseWidth_mm: number | null = null,
) => gutterSection({ shape, width_mm, depth_mm, baseWidth_mm })!;

describe('waterway_mm2', () => {
  it('of a half round is half its circle, and of a pipe cut in half the same', () => {
    expect(waterway_mm2(section('halfRound', 100, 50))).toBeCloseTo((Math.PI * 100 ** 2) / 8, 9);
    expect(waterway_mm2(section('cutPipe', 100, 50))).toBeCloseTo((Math.PI * 100 ** 2) / 8, 9);
  });

  // A circle of radius 50: cut 20 above its sole it is 80 wide; cut 80 above, too; both cuts together are the whole circle.
  it('of a pipe cut low and one cut high add up to the whole pipe', () => {
    const low = waterway_mm2(section('cutPipe', 80, 20));
    const high = waterway_mm2(section('cutPipe', 80, 80));
    expect(low + high).toBeCloseTo(Math.PI * 50 ** 2, 8);
  });

  it('of a deep half round has upright sides', () => {
    expect(waterway_mm2(section('halfRound', 100, 80))).toBeCloseTo((Math.PI * 100 ** 2) / 8 + 100 * 30, 9);
  });

  it('of a rectangle and a trapezium is the mean width × the depth', () => {
    expect(waterway_mm2(section('rectangular', 120, 75))).toBe(9000);
    expect(waterway_mm2(section('trapezoidal', 120, 75, 80))).toBe(7500);
  });
});

describe('the water in a section', () => {
  const sections = {
    'half round': section('halfRound', 110, 55),
    'deep half round': section('halfRound', 110, 90),
    'shallow cut': section('cutPipe', 110, 30),
    'deep cut': section('cutPipe', 80, 80),
    rectangle: section('rectangular', 120, 75),
    trapezium: section('trapezoidal', 120, 75, 60),
  };

  // The slow twin: thin layers from the sole up.
  it.each(Object.entries(sections))('%s: area and moment are those of thin layers', (_, one) => {
    const layers = 20_000;
    const level = one.depth_mm * 0.8;
    let area = 0;
    let moment = 0;
    for (let i = 0; i < layers; i++) {
      const height = ((i + 0.5) * level) / layers;
      const layer = (one.at(height).width_mm * level) / layers;
      area += layer;
      moment += layer * (level - height);
    }
    expect(one.at(level).area_mm2 / area).toBeCloseTo(1, 5);
    expect(one.at(level).moment_mm3 / moment).toBeCloseTo(1, 5);
  });

  it('is as wide at the brim as the gutter is', () => {
    for (const [width, one] of [
      [110, sections['half round']],
      [80, sections['deep cut']],
    ] as const)
      expect(one.at(one.depth_mm).width_mm).toBeCloseTo(width, 9);
  });

  it('wets sole and sides', () => {
    expect(sections['half round'].wetted_mm).toBeCloseTo((Math.PI * 110) / 2, 9);
    expect(sections.rectangle.wetted_mm).toBe(270);
    expect(sections['deep half round'].wetted_mm).toBeCloseTo((Math.PI * 110) / 2 + 70, 9);
  });
});

describe('sectionFaults', () => {
  it('names every column that is missing', () => {
    const nothing = { shape: null, width_mm: null, depth_mm: null, baseWidth_mm: null };
    expect(sectionFaults(nothing)).toEqual(['shape', 'width_mm', 'depth_mm']);
    expect(gutterSection(nothing)).toBeNull();
  });

  it('wants the sole of a trapezium, no wider than its top; asks no other shape for it', () => {
    const facts = { width_mm: 100, depth_mm: 60 };
    expect(sectionFaults({ ...facts, shape: 'trapezoidal', baseWidth_mm: null })).toEqual(['baseWidth_mm']);
    expect(sectionFaults({ ...facts, shape: 'trapezoidal', baseWidth_mm: 101 })).toEqual(['baseWidth_mm']);
    expect(sectionFaults({ ...facts, shape: 'trapezoidal', baseWidth_mm: 100 })).toEqual([]);
    expect(sectionFaults({ ...facts, shape: 'rectangular', baseWidth_mm: null })).toEqual([]);
  });

  it('takes 0, below 0 and endless measures for missing', () => {
    for (const width_mm of [0, -5, Infinity, Number.NaN])
      expect(sectionFaults({ shape: 'rectangular', width_mm, depth_mm: 50, baseWidth_mm: null })).toEqual(['width_mm']);
  });
});
