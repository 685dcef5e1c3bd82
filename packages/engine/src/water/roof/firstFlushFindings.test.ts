import { describe, expect, it } from 'vitest';
import { type DiverterFacts, unmeasuredRoof, unmeasuredSite } from '../../kernel/index.ts';
import { firstFlushFindings } from './firstFlushFindings.ts';

/** 60 L in a pipe of 200 mm: 1.91 m tall. */
const diverter: DiverterFacts = {
  firstFlush_mm: null,
  chamber_L: 60,
  drainHole: 'open',
  chamberBore_mm: 200,
  drainHole_mm: 4,
};
const found = (change: Partial<DiverterFacts> | null, area_m2 = 120) => {
  const roof = {
    ...unmeasuredRoof,
    roofId: 'R1',
    roofPlanArea_m2: area_m2,
    gutteredFraction: 1,
    diverter: change === null ? null : { ...diverter, ...change },
  };
  const site = {
    ...unmeasuredSite,
    ...{ siteId: 'S1', name: 'Hall', latitude_deg: null, longitude_deg: null, siteClass: null, target: null },
    ...{ people: 30, peopleCountedOn: null, households_count: null, growthFraction_per_year: null, designYear: null },
    ...{ presence: null, secondSource: null, nearSecondSource: null, ration: null, gaugeId: 'A', rainFactor: 1 },
    ...{ handOverDay: null, demand: [], doubts: [], tanks: [], roofs: [roof] },
  };
  return firstFlushFindings({ site, settings: { firstFlush_mm: 0.5 } });
};
const codes = (change: Partial<DiverterFacts>, area_m2?: number) =>
  found(change, area_m2).problems.map(({ code }) => code);

describe('firstFlushFindings', () => {
  it('tells what a chamber lets go, without a word where it is as it should be', () => {
    const { finding, problems } = found({});
    expect(problems).toEqual([]);
    expect(finding).toHaveLength(1);
    expect(finding![0]).toMatchObject({ roofId: 'R1', diverted_mm: 0.5, chamberWanted_L: 60, isBlocked: false });
    expect(finding![0]!.loadLeft_fraction).toBeCloseTo(Math.SQRT1_2, 12);
    // Worked out apart: 2 × 0.0314159 m² × √1.90986 m ÷ (0.62 × 12.5664 mm² × √(2 × 9.80665)) = 2516 s.
    expect(finding![0]!.emptying_h).toBeCloseTo(0.699, 3);
  });

  it('warns of one that is small, slow, or lets a rain through, each by its own problem', () => {
    expect(codes({}, 134)).toEqual(['drainage.first_flush_small']);
    expect(codes({}, 133)).toEqual([]);
    expect(codes({ drainHole_mm: 0.35 })).toEqual(['drainage.first_flush_slow']);
    expect(codes({ drainHole_mm: 5 })).toEqual([]);
    expect(codes({ drainHole_mm: 6 })).toEqual(['drainage.first_flush_fast']);
  });

  it('counts a blocked hole as no diversion, and does not ask when it empties', () => {
    const { finding, problems } = found({ drainHole: 'blocked' });
    expect(finding![0]).toMatchObject({ isBlocked: true, diverted_mm: 0, loadLeft_fraction: 1, emptying_h: null });
    expect(problems).toEqual([]);
  });

  it('notes what was not measured, and leaves out a roof without a diverter or of unknown size', () => {
    const { problems } = found({ chamberBore_mm: null, drainHole_mm: null });
    expect(problems.map(({ code, facts }) => [code, facts['missing']])).toEqual([
      ['drainage.first_flush_not_measured', ['chamberBore_mm', 'drainHole_mm']],
    ]);
    expect(found(null).finding).toEqual([]);
    expect(found({}, 0).finding).toEqual([]);
  });
});
