import { describe, expect, it } from 'vitest';
import {
  type ChlorinationFacts,
  defaultSettings,
  noSafety,
  readIsoDay,
  type SiteFacts,
  unmeasuredSite,
  type WaterTest,
} from '../../kernel/index.ts';
import { boilingAtHeight } from './boiling.ts';
import { chlorineFinding } from './chlorineFinding.ts';

const facts: ChlorinationFacts = {
  product: 'bleach',
  active_fraction: 0.05,
  stock_g_per_L: 10,
  dose_mg_per_L: 2,
  residual_mg_per_L: 0.6,
  contact_min: 60,
  baffling_fraction: 0.5,
  pH: 7,
  waterTemperature_C: 25,
  batch_L: 1000,
};
const sample = (change: Partial<WaterTest>): WaterTest => ({
  ...{ testId: 'A', takenOn: readIsoDay('2026-03-01')!, point: 'tap', portions: [] },
  ...{ turbidity_NTU: 0.5, freeChlorine_mg_per_L: null, pH: null, waterTemperature_C: null, laboratory: null },
  ...change,
});
const site = (change: Partial<ChlorinationFacts> | null, tests: readonly WaterTest[] = [sample({})]): SiteFacts =>
  ({
    ...unmeasuredSite,
    siteId: 'S1',
    safety: { ...noSafety, tests, chlorination: change === null ? null : { ...facts, ...change } },
  }) as unknown as SiteFacts;
const judged = (...args: Parameters<typeof site>) => chlorineFinding(site(...args), defaultSettings);
const one = (...args: Parameters<typeof site>) => judged(...args).finding!;
const codes = (...args: Parameters<typeof site>) => judged(...args).problems.map(({ code }) => code);
const recipe = 'chlorine.stock_recipe';

describe('chlorineFinding', () => {
  it('is null where water is not chlorinated', () => {
    expect(judged(null)).toEqual({ finding: null, problems: [], working: [] });
  });

  it('tells contact, logs, stock and product of a site with everything measured', () => {
    const got = one({});
    expect(got).toMatchObject({
      ct_mg_min_per_L: 18,
      ctForGiardia_mg_min_per_L: 36,
      giardia_log10: 1.5,
      viruses_log10: 4,
    });
    expect(got).toMatchObject({
      stock_mL: 200,
      product_per_L: 200,
      residualBand: 'good',
      wait_min: 30,
      isTooTurbid: false,
    });
    expect(got.ctForGiardiaRegression_mg_min_per_L! > 36).toBe(true);
    expect(got.credited).toMatchObject({ bacteria_log10: 4, viruses_log10: 4 });
    expect(got.credited.protozoa_log10).toBeLessThan(0.01);
    expect(codes({})).toEqual([recipe]);
  });

  it('takes a tank without walls where nothing is said of them', () => {
    expect(one({ baffling_fraction: null }).ct_mg_min_per_L).toBeCloseTo(3.6, 12);
  });

  it('credits nothing for protozoa either where acidity is not known or outside the tables', () => {
    for (const pH of [null, 4.9, 10.1]) expect(one({ pH }).credited.protozoa_log10).toBe(0);
  });

  it('counts the turbidity of a second source where neither unit nor filter clears it', () => {
    const secondSource = { turbidity_NTU: 60 } as SiteFacts['secondSource'];
    const unit = { removedOn: null } as SiteFacts['treatment']['units'][number];
    const filter = { kind: 'filter' } as SiteFacts['safety']['barriers'][number];
    const muddy = { ...site({}), secondSource };
    const isTooTurbid = (facts: SiteFacts) => chlorineFinding(facts, defaultSettings).finding!.isTooTurbid;
    expect(isTooTurbid(muddy)).toBe(true);
    expect(isTooTurbid({ ...muddy, treatment: { ...muddy.treatment, units: [unit] } })).toBe(false);
    expect(isTooTurbid({ ...muddy, treatment: { ...muddy.treatment, units: [{ ...unit, removedOn: 1 }] } })).toBe(true);
    expect(isTooTurbid({ ...muddy, safety: { ...muddy.safety, barriers: [filter] } })).toBe(false);
  });

  it('credits nothing while residual, contact or acidity are not known', () => {
    const nothing = { bacteria_log10: 0, viruses_log10: 0, protozoa_log10: 0 };
    expect(one({ residual_mg_per_L: null })).toMatchObject({
      ct_mg_min_per_L: null,
      residualBand: null,
      credited: nothing,
    });
    expect(codes({ residual_mg_per_L: null })).toEqual(['chlorine.residual_unknown', recipe]);
    expect(one({ contact_min: null }).credited).toEqual(nothing);
    expect(codes({ contact_min: null })).toEqual(['chlorine.contact_unknown', recipe]);
    expect(one({ pH: null })).toMatchObject({ viruses_log10: null, wait_min: null });
    expect(one({ pH: null }).credited.viruses_log10).toBe(0);
    expect(codes({ pH: null })).toEqual(['chlorine.ph_unknown', recipe]);
  });

  it('takes acidity and temperature of the last sample of the site where its row has none', () => {
    const tests = [sample({ pH: 8.2, waterTemperature_C: 15 }), sample({ pH: 9.9, point: 'secondSource' })];
    expect(one({ pH: null, waterTemperature_C: null }, tests)).toMatchObject({
      wait_min: 60,
      ctForGiardia_mg_min_per_L: 122,
    });
    expect(codes({ waterTemperature_C: null }, [sample({})])).toEqual(['chlorine.temperature_unknown', recipe]);
  });

  it('no chlorine left earns nothing, is told as that and not as a hole of the table', () => {
    expect(one({ residual_mg_per_L: 0 })).toMatchObject({
      ct_mg_min_per_L: 0,
      giardia_log10: 0,
      viruses_log10: 0,
      residualBand: 'none',
    });
    expect(codes({ residual_mg_per_L: 0 })).toEqual(['chlorine.residual_low', recipe]);
  });

  it('tells what is outside the table, and reads nothing there', () => {
    expect(one({ pH: 9.4 })).toMatchObject({ ctForGiardia_mg_min_per_L: null, giardia_log10: null, viruses_log10: 4 });
    expect(codes({ pH: 9.4 })).toEqual(['chlorine.residual_low', 'chlorine.outside_table', 'chlorine.ph_high', recipe]);
    expect(one({ pH: 4.5 })).toMatchObject({ giardia_log10: null, viruses_log10: null });
    expect(one({ pH: 11 }).credited.viruses_log10).toBe(0);
  });

  it('credits nothing in turbid water, and says where turbidity is not known', () => {
    expect(one({}, [sample({ turbidity_NTU: 5 })])).toMatchObject({
      isTooTurbid: true,
      credited: { bacteria_log10: 0, viruses_log10: 0, protozoa_log10: 0 },
    });
    expect(codes({}, [sample({ turbidity_NTU: 5 })])).toEqual(['chlorine.too_turbid', recipe]);
    expect(one({}, []).isTooTurbid).toBeNull();
    expect(codes({}, [])).toEqual(['chlorine.turbidity_unknown', recipe]);
  });

  it('tells alkaline water, short contact, too much left, more left than given, and impossible stock', () => {
    expect(codes({ pH: 8, residual_mg_per_L: 1 })).toEqual(['chlorine.ph_high', recipe]);
    expect(codes({ contact_min: 20 })).toEqual(['chlorine.contact_short', recipe]);
    expect(one({ residual_mg_per_L: 1.5 }).residualBand).toBe('high');
    expect(codes({ residual_mg_per_L: 6 })).toEqual(['chlorine.residual_high', 'chlorine.residual_over_dose', recipe]);
    expect(codes({ stock_g_per_L: 60 })).toEqual(['chlorine.stock_differs', recipe]);
  });

  it('knows the usual strength of products, and no strength of others', () => {
    const product = (change: Partial<ChlorinationFacts>) => one({ active_fraction: null, ...change }).product_per_L;
    expect(product({ product: 'calciumHypochlorite' })).toBeCloseTo(14.286, 3);
    expect(product({ product: 'chlorinatedLime' })).toBeCloseTo(33.333, 3);
    expect([product({ product: 'tablets' }), product({ product: 'other' }), product({ product: null })]).toEqual([
      null,
      null,
      null,
    ]);
    expect(one({ batch_L: null }).stock_mL).toBeNull();
  });

  it('has a working with the figures of the finding', () => {
    const { finding, working } = judged({});
    const value = (code: string) => working.find((line) => line.code === code)!.value;
    expect([value('chlorine.ct'), value('chlorine.giardia'), value('chlorine.viruses')]).toEqual([
      ...[finding!.ct_mg_min_per_L, finding!.giardia_log10, finding!.viruses_log10],
    ]);
    expect([value('chlorine.stock'), value('chlorine.product')]).toEqual([200, 200]);
  });
});

describe('boilingAtHeight', () => {
  it('kills germs at every height where people live, by the careful advice after 3 minutes above 2,000 m', () => {
    for (let height_m = -400; height_m <= 6000; height_m += 100)
      expect(boilingAtHeight(height_m)).toMatchObject({
        killsBacteria: true,
        killsVirusesAndProtozoa: true,
        carefully_min: height_m > 2000 ? 3 : 1,
      });
    expect(boilingAtHeight(10_000)).toBeNull();
  });
});
