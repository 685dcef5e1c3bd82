import {
  dayIndexOf,
  type PathogenRisk,
  type SafetyFinding,
  type WaterTestFinding,
  type WearFinding,
} from '@eavewell/engine';
import { siteCup as schema } from '@eavewell/tables';
import { describe, expect, it } from 'vitest';
import { siteCup } from './siteCup.ts';

const none = { bacteria_log10: 0, viruses_log10: 0, protozoa_log10: 0 };

const risk = (typical: number, high: number): PathogenRisk => ({
  pathogen: 'rotavirus',
  waters: [{ secondSourceId: null, days_per_year: 365, raw_per_L: 0.1, rawHigh_per_L: 1, drinking_per_L: 1e-5 }],
  ...{ infection_per_year: 1e-3, illness_per_year: 5e-4, fromSkipping_fraction: 0, needed_log10: 4 },
  ...{ DALY_per_person_per_year: typical, DALYHigh_per_person_per_year: high },
});

const sample = (band: WaterTestFinding['band']): WaterTestFinding => ({
  ...{ testId: 'W1', takenOn: dayIndexOf(2026, 3, 1), point: 'tap' },
  ...(band === 'low'
    ? ({ sign: 'less', count_per_100mL: 1 } as const)
    : ({ sign: 'equal', count_per_100mL: 12 } as const)),
  ...{ low_per_100mL: 3, high_per_100mL: 40, rarity: null, band, isBeforeHandOver: false },
});

const tests: SafetyFinding['waterTests'] = {
  ...{ tests: [], last: null, clean_count: 0, cleanBelow_per_100mL: null, cleanWanted_count: 59 },
  ...{ inspection: null, priority: null, unusable: [], isUnusableOpen: false, lastCleanOn: null },
};

const finding: SafetyFinding = {
  ...{ verdict: 'holds', cappedBy: null, mayDrink: 'yes', barriers: [], credited: none, leaking: null },
  ...{ reasons: ['shown'], notes: [], needsTest: [], failedUnits: [], withheldBy: [], isReckoned: true },
  ...{
    effective: none,
    tier: 2,
    skipping_fraction: 0,
    daysOff_per_year: 0,
    sourceDays: null,
    risks: [risk(1e-8, 1e-7)],
  },
  ...{ target_DALY_per_person_per_year: 1e-6, waterTests: { ...tests, last: sample('low') } },
  ...{ chlorine: null, boilsAt_C: null },
};

const stations = (cup: 'holds' | 'tight' | 'short' | 'unknown' | 'notJudged') => ({
  ...({ roof: 'holds', gutter: 'holds', settling: 'notJudged', storage: 'holds', stand: 'notJudged' } as const),
  ...({ treatmentUnit: 'holds', tap: 'holds' } as const),
  cup,
});

const told = (safety: SafetyFinding | null, cup: Parameters<typeof stations>[0] = safety?.verdict ?? 'notJudged') =>
  siteCup({ safety, stations: stations(cup) }, null, null);

describe('what a list tells of a cup', () => {
  it('is nothing where the cup is not judged', () => {
    expect(told(null)).toBeNull();
    expect(told(finding, 'notJudged')).toBeNull();
  });

  it('is of the form of the schema', () => {
    expect(schema.parse(told(finding))).toEqual(told(finding));
  });

  it('names the first reason, and all the others in their order', () => {
    const reasons = ['found', 'overTarget', 'withheld'] as const;
    expect(told({ ...finding, reasons })).toMatchObject({ because: 'found', reasons });
  });

  it('calls no sample low beside a word that the water must not be drunk', () => {
    const last = sample('low');
    expect(told({ ...finding, waterTests: { ...tests, last } })?.last?.band).toBe('low');
    const over = { ...finding, verdict: 'short', mayDrink: 'no', waterTests: { ...tests, last } } as const;
    expect(told(over)?.last).toMatchObject({ sign: 'less', band: null });
  });

  it('a set past its middle day is told of a fit site and wants a test', () => {
    const day = dayIndexOf(2028, 1, 1);
    const wear = [{ serial: 'A', endsOn: { p10: day - 60, p50: day, p90: day + 90 } } as WearFinding];
    const on = (today: number) => siteCup({ safety: finding, stations: stations('holds') }, wear, today);
    expect(on(day + 1)).toMatchObject({ mayDrink: 'yes', notes: ['setOverdue'], needsTest: ['setOverdue'] });
    expect(on(day)).toMatchObject({ notes: [], needsTest: [] });
  });

  it('tells the sets that are due, the soonest first, and leaves out those without a date', () => {
    const set = (serial: string, p50: number | null) =>
      ({ serial, endsOn: p50 === null ? null : { p10: p50 - 60, p50, p90: p50 + 90 } }) as WearFinding;
    const day = dayIndexOf(2028, 1, 1);
    const wear = [set('B', day + 10), set('A', day), set('C', null)];
    const sets = siteCup({ safety: finding, stations: stations('holds') }, wear, null)?.sets;
    expect(sets?.map(({ serial }) => serial)).toEqual(['A', 'B']);
    expect(sets?.[0]).toEqual({ serial: 'A', early: '2027-11-02', middle: '2028-01-01', late: '2028-03-31' });
  });
});
