import { type ChlorineFinding, readIsoDay, type WaterTestFinding, type WaterTestsFinding } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { english, loadLanguage } from './index.ts';
import { roundedDown } from './sentences/roundedDown.ts';

const sample = (change: Partial<WaterTestFinding>): WaterTestFinding => ({
  ...{ testId: 'W1', takenOn: readIsoDay('2026-03-02')!, point: 'tap', sign: 'less' },
  ...{ count_per_100mL: 2.9957, low_per_100mL: 0, high_per_100mL: 2.9957, rarity: null, band: 'low' },
  isBeforeHandOver: false,
  ...change,
});
const tests = (change: Partial<WaterTestsFinding>): WaterTestsFinding => ({
  ...{ tests: [], last: sample({}), clean_count: 1, cleanBelow_per_100mL: 2.9957, cleanWanted_count: 38 },
  ...{ inspection: null, priority: 'low', unusable: [], isUnusableOpen: false, lastCleanOn: null },
  ...change,
});
const chlorine: ChlorineFinding = {
  ...{ ct_mg_min_per_L: 18, ctForGiardia_mg_min_per_L: 36, ctForGiardiaRegression_mg_min_per_L: 40 },
  ...{ giardia_log10: 1.5, viruses_log10: 4, stock_mL: 200, product_per_L: 200, residualBand: 'good' },
  ...{ wait_min: 30, isTooTurbid: false, credited: { bacteria_log10: 4, viruses_log10: 4, protozoa_log10: 0.003 } },
};

describe('samples', () => {
  const said = (change: Partial<WaterTestsFinding>) => english.findings.waterTests(tests(change));

  it('say none before the bound, and a count with its range', () => {
    expect(said({})).toMatch(/at the tap, of 2 March 2026, held no E\. coli: fewer than 3(\.0)? in 100 mL/);
    const equal = sample({ sign: 'equal', count_per_100mL: 15, low_per_100mL: 10.3, high_per_100mL: 21 });
    expect(said({ last: equal })).toMatch(/held 15 E\. coli in 100 mL, likely 10(\.3)? to 21\./);
    const found = sample({ sign: 'more', count_per_100mL: 13.53, low_per_100mL: 13.53, high_per_100mL: null });
    expect(said({ last: found })).toContain('how many cannot be told (at least 13 in 100 mL)');
    expect(said({ last: null })).toContain('No sample since hand-over');
  });

  it('add up clean ones, and tell the walk with what both ask for', () => {
    expect(said({ clean_count: 4, cleanBelow_per_100mL: 0.749 })).toContain(
      '4 clean samples in a row: on average 0.749 in 100 mL or fewer.',
    );
    const inspection = { inspectedOn: readIsoDay('2026-03-01')!, score: 7, band: 'high' } as const;
    expect(said({ inspection, priority: 'high' })).toMatch(
      /found 7 of 10 risks: high risk\. Mend what was found soon\.$/,
    );
  });
});

describe('samples that cannot be used', () => {
  const at = { file: 'waterTests.csv', row: 7, siteId: 'S1' };
  it('are told with their row, and with what was found in them', () => {
    const unusable = [{ testId: 'W2', because: 'dayToCome', at, hasGerms: true } as const];
    expect(english.findings.waterTests(tests({ unusable }))).toContain(
      'One sample cannot be used: W2, whose day is still to come, and which held E. coli by what can be read (waterTests.csv, row 7).',
    );
  });

  it('and no walk is called low beside germs that were found', () => {
    const inspection = { inspectedOn: readIsoDay('2026-03-01')!, score: 1, band: 'low' } as const;
    const last = sample({ sign: 'equal', count_per_100mL: 15, low_per_100mL: 10, high_per_100mL: 21, band: 'high' });
    expect(english.findings.waterTests(tests({ inspection, last, priority: 'high' }))).not.toMatch(/low|pressing/);
  });

  it('a bound from below is rounded down', () => {
    expect([13.53, 14, 0.99, 100, 1234].map(roundedDown)).toEqual([13, 14, 0.99, 100, 1200]);
  });
});

describe('chlorine', () => {
  const said = (change: Partial<ChlorineFinding>) => english.findings.chlorine({ ...chlorine, ...change });

  it('says what it does and what it does not, how long to wait, and how to handle it', () => {
    expect(said({})).toMatch(
      /4(\.0)? steps of ten of viruses and 1\.5 of Giardia; to Cryptosporidium it does next to nothing\. Wait 30 min/,
    );
    expect(said({})).toMatch(/gloves, fresh air, plastic vessels, and never with acids/);
    expect(said({ isTooTurbid: true })).toContain('too turbid');
    expect(said({ giardia_log10: null })).toContain('to Giardia is not told by the table');
    expect(said({ viruses_log10: null, giardia_log10: null, wait_min: null })).not.toContain('Wait');
  });

  it('says the same in Spanish', async () => {
    const { findings } = await loadLanguage('es');
    expect(findings.chlorine(chlorine)).toContain('nunca con ácidos');
    expect(findings.waterTests(tests({}))).toContain('no tenía E. coli');
  });
});
