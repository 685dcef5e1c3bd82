import { describe, expect, it } from 'vitest';
import type { RoofFacts, WorkingLine } from '../../kernel/index.ts';
import { unmeasuredRoof } from '../../kernel/index.ts';
import { siteRoofs } from './siteRoofs.ts';

const roof: RoofFacts = {
  ...unmeasuredRoof,
  roofId: 'R1',
  length_m: 12,
  width_m: 6,

  material: 'corrugatedMetal',

  runoffFraction: 0.8,
  gutteredFraction: 0.5,

  diverter: { firstFlush_mm: null, chamber_L: 18, drainHole: 'open', chamberBore_mm: null, drainHole_mm: null },
};
const read = (roofs: readonly RoofFacts[], working: WorkingLine[] = []) =>
  siteRoofs({ siteId: 'S1', roofs }, 0.5, working);
const codes = (found: ReturnType<typeof read>) => found.problems.map((problem) => problem.code);

describe('siteRoofs', () => {
  it('reads a roof that was surveyed whole without a word', () => {
    const found = read([roof]);
    expect(found.problems).toEqual([]);
    expect(found.ok && found.value).toEqual([
      {
        roofId: 'R1',
        roofPlanArea_m2: 72,
        gutteredFraction: 0.5,
        runoffFraction: 0.8,
        firstFlush_mm: 0.5,
        drainHole: 'open',
      },
    ]);
  });

  it('has no answer without a roof or without an area', () => {
    expect(read([])).toMatchObject({ ok: false, problems: [{ code: 'site.roof_none', severity: 'blocker' }] });
    const found = read([roof, { ...roof, roofId: 'R2', width_m: null }]);
    expect(found.ok).toBe(false);
    expect(found.problems).toMatchObject([{ code: 'site.roof_area_unknown', facts: { roof: 'R2' } }]);
  });

  it('says what it assumed', () => {
    const found = read([{ ...roof, runoffFraction: null, gutteredFraction: null, diverter: null, material: null }]);
    expect(codes(found)).toEqual(['site.gutters_assumed', 'site.runoff_assumed', 'site.first_flush_assumed']);
    expect(found.ok && found.value[0]).toMatchObject({ gutteredFraction: 1, runoffFraction: 0.5, firstFlush_mm: 0.5 });
  });

  it('doubts a roof far larger than roofs are until sides and area say the same', () => {
    const long = { ...roof, length_m: 120, width_m: 6 };
    const found = read([long]);
    expect(found.problems).toMatchObject([
      { code: 'site.roof_very_large', place: { column: 'length_m' }, facts: { value: 120, most: 60 } },
    ]);
    expect(found.ok && found.value[0]!.roofPlanArea_m2).toBe(720);
    expect(codes(read([{ ...long, roofPlanArea_m2: 730 }]))).toEqual([]);
    expect(codes(read([{ ...long, roofPlanArea_m2: 72 }]))).toEqual(['site.roof_area_differs']);
    expect(codes(read([{ ...roof, length_m: null, width_m: null, roofPlanArea_m2: 2100 }]))).toContain(
      'site.roof_very_large',
    );
    expect(
      codes(
        read([
          { ...roof, length_m: 60 },
          { ...roof, roofId: 'R2', length_m: 1 },
        ]),
      ),
    ).not.toContain('site.roof_very_large');
  });

  it('warns of coverings that ask for care and of a blocked drain hole', () => {
    const blocked = {
      firstFlush_mm: 1,
      chamber_L: null,
      drainHole: 'blocked',
      chamberBore_mm: null,
      drainHole_mm: null,
    } as const;
    expect(
      codes(
        read([{ ...roof, material: 'thatch', form: null, pitch_deg: null, eaveHeight_m: null, diverter: blocked }]),
      ),
    ).toEqual(['site.roof_material_unsafe', 'site.diverter_blocked']);
    expect(codes(read([{ ...roof, material: 'fibreCement' }]))).toEqual(['site.roof_material_unsafe']);
  });

  it('writes area, runoff and first flush of each roof into the working', () => {
    const working: WorkingLine[] = [];
    read([roof, { ...roof, roofId: 'R2' }], working);
    const each = ['roof.area', 'roof.runoff', 'roof.firstFlush'];
    expect(working.map((line) => line.code)).toEqual([...each, ...each]);
    expect(working[2]).toMatchObject({ value: 0.5, unit: 'mm', source: 'survey' });
  });
});
