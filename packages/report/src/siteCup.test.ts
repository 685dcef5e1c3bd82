import {
  dayIndexOf,
  type EngineProblemCode,
  engineProblem,
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
  ...{ inspection: null, priority: null },
};

const finding: SafetyFinding = {
  ...{ verdict: 'holds', cappedBy: null, mayDrink: 'yes', barriers: [], credited: none, leaking: null },
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

const problem = (code: EngineProblemCode) => engineProblem(code, {}, {});

const told = (
  safety: SafetyFinding | null,
  cup: Parameters<typeof stations>[0] = safety?.verdict ?? 'notJudged',
  problems: readonly ReturnType<typeof problem>[] = [],
) => siteCup({ safety, stations: stations(cup), problems }, null);

describe('what a list tells of a cup', () => {
  it('is nothing where the cup is not judged', () => {
    expect(told(null)).toBeNull();
    expect(told(finding, 'notJudged')).toBeNull();
  });

  it('is of the form of the schema', () => {
    expect(schema.parse(told(finding))).toEqual(told(finding));
  });

  it('names the first reason: germs before sums, sums before what is not known', () => {
    const because = (more: Partial<SafetyFinding>) => told({ ...finding, ...more })?.because;
    expect(because({})).toBe('shown');
    const over = { verdict: 'short', mayDrink: 'no', risks: [risk(1e-5, 1e-3)] } as const;
    expect(because(over)).toBe('overTarget');
    expect(because({ ...over, waterTests: { ...tests, last: sample('intermediate') } })).toBe('found');
    expect(because({ verdict: 'tight', mayDrink: 'notShown', risks: [risk(1e-8, 1e-5)] })).toBe('overAtWorst');
    expect(because({ verdict: 'tight', mayDrink: 'notShown', cappedBy: 'safety.skipping_unknown' })).toBe(
      'skippingUnknown',
    );
    expect(because({ verdict: 'tight', mayDrink: 'notShown', cappedBy: 'safety.no_clean_sample' })).toBe('noSample');
    expect(because({ verdict: 'tight', cappedBy: 'safety.over_most' })).toBe('assumed');
  });

  it('what leaves it unknown is told by the problems beside it', () => {
    const unknown = { ...finding, verdict: 'unknown', mayDrink: 'notShown', risks: [] } as const;
    expect(told(unknown, 'unknown', [])?.because).toBe('unknown');
    const both = [problem('safety.raw_unknown'), problem('safety.no_evidence')];
    expect(told(unknown, 'unknown', both)?.because).toBe('noEvidence');
    expect(told(unknown, 'unknown', [both[0]!])?.because).toBe('rawUnknown');
  });

  it('never says fit where facts beside it are in doubt', () => {
    expect(told(finding, 'unknown')).toMatchObject({ verdict: 'unknown', mayDrink: 'notShown', because: 'unknown' });
    const found = { ...finding, verdict: 'short', mayDrink: 'no' } as const;
    expect(told(found, 'unknown')?.mayDrink).toBe('no');
  });

  it('tells the sets that are due, the soonest first, and leaves out those without a date', () => {
    const set = (serial: string, p50: number | null) =>
      ({ serial, endsOn: p50 === null ? null : { p10: p50 - 60, p50, p90: p50 + 90 } }) as WearFinding;
    const day = dayIndexOf(2028, 1, 1);
    const wear = [set('B', day + 10), set('A', day), set('C', null)];
    const sets = siteCup({ safety: finding, stations: stations('holds'), problems: [] }, wear)?.sets;
    expect(sets?.map(({ serial }) => serial)).toEqual(['A', 'B']);
    expect(sets?.[0]).toEqual({ serial: 'A', early: '2027-11-02', middle: '2028-01-01', late: '2028-03-31' });
  });
});
