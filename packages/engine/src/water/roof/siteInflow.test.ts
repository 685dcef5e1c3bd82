import { describe, expect, it } from 'vitest';
import type { RainRecord } from '../../kernel/index.ts';
import { yieldsKept_count } from './constants.ts';
import { siteInflow_L, type YieldsByRecord } from './siteInflow.ts';
import type { RoofCatch } from './siteRoofs.ts';

const record: RainRecord = {
  gaugeId: 'G1',
  firstDay: 0,
  rain_mm: Float64Array.of(10, 0, 0, 0, 10, 4, 0, 0, 0),
  state: new Uint8Array(9),
};
const roof: RoofCatch = {
  roofId: 'R1',
  roofPlanArea_m2: 50,
  gutteredFraction: 0.5,
  runoffFraction: 0.8,
  firstFlush_mm: 1,
  drainHole: 'open',
};

describe('siteInflow_L', () => {
  it('is area × guttered share × net depth, the record ending dry', () => {
    // 25 m² × (8 − 1) mm, and again after the dry days; 25 m² × 3.2 mm on the day after.
    const inflow = Array.from(siteInflow_L(record, [roof], 1));
    expect(inflow).toEqual([175, 0, 0, 0, 175, 80, 0, 0, 0]);
  });

  it('adds the roofs', () => {
    const inflow = siteInflow_L(record, [roof, { ...roof, roofPlanArea_m2: 100, firstFlush_mm: 0 }], 1);
    expect(inflow[0]).toBe(175 + 400);
  });

  it('gives nothing from a roof without gutters', () => {
    expect(siteInflow_L(record, [{ ...roof, gutteredFraction: 0 }], 1).every((litres) => litres === 0)).toBe(true);
  });

  it('is the same with shared yields as without, however many are asked for', () => {
    const yields: YieldsByRecord = new WeakMap();
    for (let i = 0; i < 2 * yieldsKept_count; i++) {
      for (const asked of [{ ...roof, firstFlush_mm: i / 10 }, roof, { ...roof, drainHole: 'blocked' as const }]) {
        for (const factor of [1, 0.5]) {
          expect(siteInflow_L(record, [asked], factor, yields)).toEqual(siteInflow_L(record, [asked], factor));
        }
      }
    }
    expect(yields.get(record)?.size).toBe(yieldsKept_count);
  });
});
