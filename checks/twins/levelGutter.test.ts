import { describe, expect, it } from 'vitest';
import {
  gutterCapacity,
  gutterSection,
  idealGutterFlow,
  longGutterFactor,
  type SectionFacts,
} from '../../packages/engine/src/water/drainage/index.ts';

const g = 9.80665;

/** A level half round as the slow twin sees it: metres, water at a depth. */
function water(diameter: number, depth: number) {
  const angle = 2 * Math.acos(1 - (2 * depth) / diameter);
  return {
    area: ((diameter * diameter) / 8) * (angle - Math.sin(angle)),
    top: 2 * Math.sqrt(depth * (diameter - depth)),
    wetted: (diameter * angle) / 2,
  };
}

/**
 * How deep is a level half round at its far end, if so much leaves at its outlet at the depth of least energy? The equation of flow with side inflow,
 * from the outlet up in short steps (Runge and Kutta's): dy ÷ dx = (−friction − 2 Q q ÷ (g A²)) ÷ (1 − Q² T ÷ (g A³)). Without `roughness` no friction.
 */
function farDepth(diameter: number, flow: number, length: number, roughness: number): number {
  let low = 1e-5;
  let high = diameter / 2;
  for (let i = 0; i < 60; i++) {
    const depth = (low + high) / 2;
    const { area, top } = water(diameter, depth);
    if (Math.sqrt((g * area ** 3) / top) < flow) low = depth;
    else high = depth;
  }
  const steps = 4000;
  const inflow = flow / length;
  // x is the way from the outlet; the first step leaves the point where the slope is endless.
  const slope = (x: number, y: number) => {
    const q = inflow * (length - x);
    const { area, top, wetted } = water(diameter, Math.min(y, diameter * 0.999));
    const friction = ((q * roughness) / (area * (area / wetted) ** (2 / 3))) ** 2;
    const froude = (q * q * top) / (g * area ** 3);
    return (friction + (2 * q * inflow) / (g * area * area)) / Math.max(1e-6, 1 - froude);
  };
  let depth = ((low + high) / 2) * 1.0005;
  for (let i = 0; i < steps; i++) {
    // Short steps near the outlet, where the surface is steep.
    const x = length * (i / steps) ** 2;
    const step = length * ((i + 1) / steps) ** 2 - x;
    const a = slope(x, depth);
    const b = slope(x + step / 2, depth + (a * step) / 2);
    const c = slope(x + step / 2, depth + (b * step) / 2);
    const d = slope(x + step, depth + c * step);
    depth += ((a + 2 * b + 2 * c + d) * step) / 6;
  }
  return depth;
}

/** The flow that just fills it to the brim. */
function fullFlow_L_per_s(diameter: number, length: number, roughness: number): number {
  let low = 0;
  let high = 0.02;
  for (let i = 0; i < 40; i++) {
    const flow = (low + high) / 2;
    if (farDepth(diameter, flow, length, roughness) < diameter / 2) low = flow;
    else high = flow;
  }
  return 1000 * ((low + high) / 2);
}

const halfRound = (width_mm: number): SectionFacts => ({
  shape: 'halfRound',
  width_mm,
  depth_mm: width_mm / 2,
  baseWidth_mm: null,
});
const square = (width_mm: number): SectionFacts => ({
  shape: 'rectangular',
  width_mm,
  depth_mm: width_mm,
  baseWidth_mm: null,
});

describe('a level gutter', () => {
  it.each([75, 100, 125, 150])(
    'half round of %d mm: the balance at its ends is what comes of stepping along it',
    (width) => {
      const ideal = idealGutterFlow(gutterSection(halfRound(width))!).flow_L_per_s;
      expect(fullFlow_L_per_s(width / 1000, 1, 0) / ideal).toBeCloseTo(1, 2);
    },
  );

  // Worked out apart by another program: momentum balance in closed form and by numbers.
  it.each([
    [75, 0.5253],
    [100, 1.0783],
    [125, 1.8838],
    [150, 2.9716],
  ])('half round of %d mm carries %f L/s without friction', (width, flow) => {
    expect(idealGutterFlow(gutterSection(halfRound(width))!).flow_L_per_s / flow).toBeCloseTo(1, 3);
  });

  it('a rectangle carries b √g (y ÷ √3)^1.5 and pours at y ÷ √3', () => {
    const { flow_L_per_s, outletDepth_mm } = idealGutterFlow(gutterSection(square(100))!);
    expect(flow_L_per_s).toBeCloseTo(1000 * 0.1 * Math.sqrt(g) * (0.1 / Math.sqrt(3)) ** 1.5, 9);
    expect(flow_L_per_s).toBeCloseTo(4.3443, 3);
    expect(outletDepth_mm).toBeCloseTo(100 / Math.sqrt(3), 9);
  });

  it.each([60, 75, 100, 125, 150, 200])('the standard gives 0.801 of it at %d mm, half round and square', (width) => {
    for (const facts of [halfRound(width), square(width)]) {
      const share = gutterCapacity(facts, 1, 0)!.nominal_L_per_s / idealGutterFlow(gutterSection(facts)!).flow_L_per_s;
      expect(share).toBeCloseTo(0.801, 3);
    }
  });

  // Friction by Manning's 0.011: a long gutter loses less than the standard takes off, so that the table is on the safe side.
  it.each([
    [100, 0.955],
    [150, 0.916],
    [200, 0.882],
  ])('%d times its depth long, friction takes off less than the table', (depths, apart) => {
    const left = fullFlow_L_per_s(0.1, depths * 0.05, 0.011) / fullFlow_L_per_s(0.1, 50 * 0.05, 0.011);
    expect(Math.abs(left - apart)).toBeLessThan(0.004);
    expect(left).toBeGreaterThan(longGutterFactor(depths * 0.05, 50)!);
  });
});
