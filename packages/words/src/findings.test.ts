import { defaultSettings, type StorageFinding, workingCodes } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { english, verdictMarks, verdictText, workingText } from './index.ts';

const held: StorageFinding = {
  tankIds: ['T1'],
  people: 60,
  verdict: 'holds',
  order: 'drawFirst',
  ration: null,
  rationedDays_per_year: null,
  unrationed: null,
  noExactSize: null,
  catalogueForTarget_L: null,
  catalogueToHold_L: null,
  tankVolume_L: 12000,
  judgedDemandHighest_L_per_day: 675,
  askedDays_per_year: 365.25,
  judgedDemand_L_per_day: 675,
  otherDemand_L_per_day: 405,
  inflow_L_per_year: 495_000,
  judgedYears: 30,
  goodYears: 28,
  goodYearsNeeded: 24,
  goodYears_fraction_range: { low: 0.83, high: 0.98 },
  comingGood_years_range: { low: 23, high: 30 },
  daysMet_fraction: 0.97,
  daysMet_fraction_range: { low: 0.96, high: 0.98 },
  dryDays_per_year: 9.1,
  dryDays_per_year_range: { low: 6.2, high: 13.4 },
  shortfall_L_per_year: 4000,
  otherShortDays_per_year: 30,
  tankForDays_L: 9000,
  tankForRuns_L: 10_350,
  tankForTarget_L: 10_350,
  tankToHold_L: null,
  judgedAlone: null,
  secondSource: null,
  cappedBy: null,
  lacks: null,
  longestRun: null,
  dryRuns: [],
  years: [],
  sizes: [],
  yieldBeforeSpill: { dryDays_per_year: 8, goodYears: 28 },
  firstService: null,
};

describe('findings in words', () => {
  it('counts years first', () => {
    expect(english.findings.storage(held)).toBe('Enough water in 28 of 30 years; likely 23 to 30 of the next 30.');
  });

  it('says what tight means here', () => {
    expect(english.findings.storage({ ...held, verdict: 'tight' })).toBe(
      'Meets the target, but not surely: enough water in 28 of 30 years; likely 23 to 30 of the next 30.',
    );
  });

  it('tells short of tank from short of water', () => {
    const short = { ...held, verdict: 'short', goodYears: 17, tankForTarget_L: 16_387.4, lacks: 'tank' } as const;
    expect(english.findings.storage(short)).toMatch(
      /^Short of tank, not of water: enough water in 17 of 30 years; .* A tank of 16,400 L would be tight; none would hold\.$/,
    );
    const assumed = { ...held, verdict: 'tight', cappedBy: 'site.gutters_assumed' } as const;
    expect(english.findings.storage(assumed)).toMatch(
      /only if the whole roof has gutters \(not surveyed\), which may be/,
    );
    expect(english.findings.storage({ ...assumed, cappedBy: 'site.growth_not_used' })).toMatch(/growth is stated/);
    expect(english.findings.storage({ ...short, tankToHold_L: 21_020 })).toMatch(
      / A tank of 16,400 L would be tight, one of 21,100 L would hold\.$/,
    );
    const dry = { ...short, tankForTarget_L: null, lacks: 'water', inflow_L_per_year: 200_000 } as const;
    expect(english.findings.storage(dry)).toMatch(
      /^Short of water: no tank would do; the roof brings 548 L of the 675 L a day asked\./,
    );
    expect(english.findings.storage({ ...dry, inflow_L_per_year: 300_000 })).toMatch(
      /for all that is asked: the roof brings 821 L a day, and 1,080 L are asked, 675 L of them for drinking and cooking\./,
    );
    expect(english.findings.storage({ ...dry, inflow_L_per_year: 500_000, otherDemand_L_per_day: 0 })).toMatch(
      /but not when the 675 L are asked/,
    );
    const alone = { tankVolume_L: 12_000, partId: null, dryDays_per_year: 3, goodYears: 29, meetsTarget: true };
    expect(english.findings.storage({ ...dry, judgedAlone: alone })).toMatch(
      / For drinking and cooking alone this tank would meet the target: enough water in 29 of 30 years\.$/,
    );
  });

  it('puts the target in words', () => {
    expect(english.findings.target(defaultSettings.target)).toBe(
      'enough water on 95 % of days, and no dry run over 7 days in 4 years of 5. A year with enough water has no dry run over 7 days',
    );
    expect(english.findings.target({ daysMet_fraction: 1, longestDryRun_days: 1, goodYears_fraction: 0.977 })).toBe(
      'enough water on every day, and no dry run over 1 day in 97.7 % of years. A year with enough water has no dry run over 1 day',
    );
  });

  it('puts the target of a class in short words', () => {
    const target = { daysMet_fraction: 0.99, longestDryRun_days: 2, goodYears_fraction: 0.9 };
    expect(english.findings.classTarget('clinic', target)).toBe(
      'Target of clinic: 99 % of days, no dry run over 2 days in 9 years of 10',
    );
  });

  it('names the tank that is worst off, and says what the others are', () => {
    const site = {
      siteId: 'S1',
      name: 'Anywhere',
      people: 100,
      design_people: 100,
      gaugeId: 'G',
      siteClass: null,
      target: defaultSettings.target,
      targetFrom: 'programme',
      verdict: 'short',
      stations: {
        roof: 'notJudged',
        gutter: 'notJudged',
        storage: 'short',
        treatmentUnit: 'notJudged',
        tap: 'notJudged',
      },
      firstService: null,
      problems: [],
      working: [],
    } as const;
    const short = { ...held, tankIds: ['T2', 'T3'], verdict: 'short', lacks: 'tank', goodYears: 20 } as const;
    expect(english.findings.site({ ...site, storages: [short, held] }, null)).toMatch(
      /^Tanks T2 and T3: short of tank, not of water: enough water in 20 of 30 years; .* Tank T1 holds\.$/,
    );
    expect(english.findings.site({ ...site, storages: [short, held, held, held] }, null)).toMatch(
      / Of its 3 others, 3 hold\.$/,
    );
  });

  it('never passes a site without facts', () => {
    const design = {
      siteId: 'S1',
      name: 'Anywhere',
      people: null,
      design_people: null,
      gaugeId: null,
      siteClass: null,
      target: defaultSettings.target,
      targetFrom: 'programme',
      verdict: 'unknown',
      stations: {
        roof: 'notJudged',
        gutter: 'notJudged',
        storage: 'unknown',
        treatmentUnit: 'notJudged',
        tap: 'notJudged',
      },
      storages: [],
      firstService: null,
      problems: [],
      working: [],
    } as const;
    expect(english.findings.site(design, 'No tank is listed.')).toBe('No verdict. No tank is listed.');
    expect(english.findings.site(design, null)).toMatch(/Not enough facts/);
  });
});

describe('marks', () => {
  it('is three characters wide, different for each verdict, and plain where it must be', () => {
    for (const form of ['drawn', 'plain'] as const) {
      const marks = Object.values(verdictMarks).map((mark) => mark[form]);
      for (const mark of marks) expect([...mark]).toHaveLength(3);
      expect(new Set(marks).size).toBe(5);
    }
    for (const { plain } of Object.values(verdictMarks)) expect(plain).toMatch(/^[ -~]{3}$/);
    expect(verdictText('tight', false)).toBe('[=] tight');
  });
});

describe('working in words', () => {
  it('has label and formula for every step', () => {
    for (const code of workingCodes) {
      const text = workingText({ code, value: null, unit: 'L', inputs: [], source: 'survey' });
      expect(text.label).not.toBe('');
      expect(text.formula).not.toBe('');
      expect(text.value).toBe('no tank would do');
    }
  });

  it('writes inputs with their units, dates as dates and ranges as ranges', () => {
    const text = workingText({
      code: 'storage.dryDaysRange',
      value: { low: 6.2, high: 13.4 },
      unit: 'day/year',
      inputs: [
        { name: 'runoffFraction', value: 0.85, unit: 'fraction' },
        { name: 'handOverDay', value: '2026-11-25', unit: 'date' },
        { name: 'tankVolume', value: 12000, unit: 'L' },
      ],
      source: 'definition',
    });
    expect(text.value).toBe('6 to 13 days a year');
    expect(text.inputs).toEqual([
      { label: 'runoff fraction', value: '85 %' },
      { label: 'hand-over', value: '25 November 2026' },
      { label: 'tank', value: '12,000 L' },
    ]);
    expect(text.source).toBe('our definition (docs/methods)');
  });
});
