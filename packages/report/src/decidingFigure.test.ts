import type {
  DrainageFinding,
  Problem,
  SafetyFinding,
  SiteDesign,
  StationVerdict,
  TreatmentFinding,
} from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { decidingFigure, withheld } from './decidingFigure.ts';

const stations = {
  ...{ roof: 'notJudged', gutter: 'holds', settling: 'notJudged', storage: 'holds', stand: 'holds' },
  ...{ treatmentUnit: 'notJudged', tap: 'holds', cup: 'notJudged' },
} as const satisfies Readonly<Record<string, StationVerdict>>;

const limits = { pumping_h_per_day: 8, waitLimit_min: 30 };

const part = (id: string, flow_L_per_s: number, capacity_L_per_s: number) =>
  ({
    ...{ part: 'gutter', id, roofId: 'R1', flow_L_per_s, flow_L_per_s_range: null, capacity_L_per_s },
    ...{ verdict: 'short', smallestPartId: null, smallest_mm: null },
  }) as unknown as DrainageFinding['parts'][number];

type Given = Parameters<typeof withheld>[0];
const design = (more: Partial<Given>): Given => ({
  ...{ verdict: 'short', stations, drainage: null, settling: [], stands: [], head: [], problems: [] },
  ...{ treatment: [], safety: null },
  ...more,
});

it('is of the part that is fullest', () => {
  const drainage = { parts: [part('G1', 1, 2), part('G2', 3.456, 2.051)], governing: 1, verdict: 'short' };
  const found = decidingFigure(
    design({ stations: { ...stations, gutter: 'short' }, drainage: drainage as unknown as DrainageFinding }),
    limits,
  );
  expect(found).toEqual({
    ...{ station: 'gutter', figure: 'gutter', id: 'G2', value: 3.46, range: null, limit: 2.05, unit: 'L/s' },
  });
});

it('is none where the tank is the worst, or nothing is short or tight', () => {
  const drainage = { parts: [part('G1', 3, 2)], governing: 0, verdict: 'short' } as unknown as DrainageFinding;
  expect(
    decidingFigure(design({ stations: { ...stations, storage: 'short', gutter: 'tight' }, drainage }), limits),
  ).toBeNull();
  expect(
    decidingFigure(design({ verdict: 'unknown', stations: { ...stations, gutter: 'unknown' } }), limits),
  ).toBeNull();
});

describe('of the treatment unit', () => {
  const peak = (lastWait_min: number | null, lastWaitWorn_min: number | null) => ({ lastWait_min, lastWaitWorn_min });
  const unit = (more: object) => {
    const found = { serial: 'U1', verdict: 'short', hoursNeeded_h: 9.5, hoursNeededWorn_h: 14, peaks: [], ...more };
    const treatment = [{ verdict: 'holds' }, found] as unknown as TreatmentFinding[];
    const verdict = found.verdict as 'short' | 'tight';
    return decidingFigure(design({ verdict, stations: { ...stations, treatmentUnit: verdict }, treatment }), limits);
  };

  it('is the hours it takes, of a worn set where it is tight', () => {
    expect(unit({})).toMatchObject({ figure: 'hoursNeeded', id: 'U1', value: 9.5, limit: 8, unit: 'h' });
    expect(unit({ verdict: 'tight', hoursNeeded_h: 6 })).toMatchObject({ figure: 'hoursNeededWorn', value: 14 });
  });

  it('is the wait where the hours would do, and none where the line has no end', () => {
    const long = { hoursNeeded_h: 5, peaks: [peak(12, 80), peak(44, 90)] };
    expect(unit(long)).toMatchObject({ figure: 'lastWait', value: 44, limit: 30, unit: 'min' });
    expect(unit({ ...long, verdict: 'tight', hoursNeededWorn_h: 7 })).toMatchObject({
      figure: 'lastWaitWorn',
      value: 90,
    });
    expect(unit({ ...long, peaks: [peak(null, null), peak(44, 90)] })).toBeNull();
  });
});

describe('of the cup', () => {
  const last = { testId: 'W2', sign: 'equal', count_per_100mL: 23 };
  const worst = { pathogen: 'rotavirus', DALY_per_person_per_year: 3.456e-6, DALYHigh_per_person_per_year: 8.13e-5 };
  const cup = (verdict: 'short' | 'tight', found: typeof last | null) => {
    const safety = { verdict, waterTests: { last: found }, risks: [worst], target_DALY_per_person_per_year: 1e-6 };
    const given = { verdict, stations: { ...stations, cup: verdict }, safety: safety as unknown as SafetyFinding };
    return decidingFigure(design(given), limits);
  };

  it('is what the last sample held', () => {
    expect(cup('short', last)).toMatchObject({ station: 'cup', figure: 'germs', id: 'W2', value: 23, limit: null });
  });

  it('is what the worst germ takes where the sample held none, to two figures and never to nothing', () => {
    const none = { ...last, sign: 'less', count_per_100mL: 1 };
    const unit = 'DALY/million/year';
    expect(cup('short', none)).toMatchObject({ figure: 'lostYears', id: 'rotavirus', value: 3.5, limit: 1, unit });
    expect(cup('tight', null)).toMatchObject({ figure: 'lostYears', value: 81, limit: 1 });
  });
});

const problem = (code: string, severity: Problem['severity'] = 'warning'): Problem =>
  ({ code, severity, place: {}, facts: {} }) as unknown as SiteDesign['problems'][number];

it('what leaves a station unknown is of that station, and is no missing signature', () => {
  const problems = [problem('head.bore'), problem('stand.not_signed'), problem('stand.ground'), problem('storage.x')];
  const unknown = design({ verdict: 'unknown', stations: { ...stations, stand: 'unknown' }, problems });
  expect(withheld(unknown)?.code).toBe('stand.ground');
  expect(withheld({ ...unknown, problems: [...problems, problem('site.no_people', 'blocker')] })?.code).toBe(
    'site.no_people',
  );
  expect(withheld({ ...unknown, verdict: 'short' })).toBeNull();
});

it('what leaves the cup unknown comes before what its rooms only warn of', () => {
  const problems = [problem('waterTests.none'), problem('safety.lead'), problem('safety.no_evidence')];
  const unknown = design({ verdict: 'unknown', stations: { ...stations, cup: 'unknown' }, problems });
  expect(withheld(unknown)?.code).toBe('safety.no_evidence');
  expect(withheld({ ...unknown, problems: problems.slice(0, 2) })?.code).toBe('waterTests.none');
});
