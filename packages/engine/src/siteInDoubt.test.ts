import { describe, expect, it } from 'vitest';
import { defaultSettings, noKit, noRollout, noSafety, type SiteFacts, unmeasuredSite } from './kernel/index.ts';
import { designSites, readyProgramme } from './plan.ts';

function designOf(change: Partial<SiteFacts>) {
  const site: SiteFacts = {
    ...{ ...unmeasuredSite, siteId: 'S1', name: 'Hall', siteClass: null, target: null, presence: null },
    ...{ secondSource: null, nearSecondSource: null, latitude_deg: null, longitude_deg: null, people: 30 },
    ...{ peopleCountedOn: null, households_count: null, growthFraction_per_year: null, designYear: null },
    ...{ gaugeId: null, rainFactor: 1, handOverDay: null, ration: null, roofs: [], tanks: [], demand: [] },
    doubts: [],
    ...change,
  };
  const ready = readyProgramme({
    ...{ settings: defaultSettings, sites: [site], gauges: [], parts: [], prices: [], kit: noKit, rollout: noRollout },
  });
  return { design: [...designSites([site], ready)][0]! };
}

const codes = (problems: readonly { code: string }[]) => problems.map(({ code }) => code);

describe('samples speak alone', () => {
  const tubes = { kind: 'tubes', volume_mL: 100, portions_count: 1, colonies_count: null } as const;
  const sample = (positive_count: number) => ({
    ...{ testId: 'W1', takenOn: 20_000, point: 'tap' as const, turbidity_NTU: null, freeChlorine_mg_per_L: null },
    ...{ pH: null, waterTemperature_C: null, laboratory: null },
    portions: [{ ...tubes, positive_count, uncountable_count: 0, uncountableFrom_count: null }],
  });
  const safety = (positive: number) => ({ ...noSafety, altitude_m: 1000, tests: [sample(positive)] });
  const presence = { file: 'presence.csv', row: 9 };

  it('where a row of the whole site could not be used: germs mean do not drink, and the row is named', () => {
    const { design } = designOf({ doubts: [presence], safety: safety(1) });
    expect(design.stations).toMatchObject({ cup: 'short', storage: 'unknown', treatmentUnit: 'notJudged' });
    expect(design.safety).toMatchObject({
      ...{ verdict: 'short', mayDrink: 'no', isReckoned: false, withheldBy: [presence], risks: [], barriers: [] },
      reasons: ['found', 'withheld'],
      needsTest: ['failed'],
    });
    expect(design.safety!.boilsAt_C).toBeCloseTo(96.7, 0);
    expect(codes(design.problems)).toEqual(expect.arrayContaining(['safety.do_not_drink', 'waterTests.all_positive']));
  });

  it('and a clean one leaves it unknown, withheld by that row', () => {
    const { design } = designOf({ doubts: [presence], safety: safety(0) });
    expect(design.stations.cup).toBe('unknown');
    expect(design.safety).toMatchObject({ mayDrink: 'notShown', reasons: ['withheld'], withheldBy: [presence] });
    expect(designOf({ doubts: [presence] }).design).toMatchObject({ safety: null, stations: { cup: 'notJudged' } });
  });

  it('where a figure of the site is no number', () => {
    const { design } = designOf({ rainFactor: Number.NaN, safety: safety(1) });
    expect(design.safety).toMatchObject({ mayDrink: 'no', withheldBy: [{ file: 'sites.csv', column: 'rainFactor' }] });
  });

  it('where a row of samples or of its unit could not be used', () => {
    for (const of of ['safety', 'treatment'] as const) {
      const doubtsBeside = { ...unmeasuredSite.doubtsBeside, [of]: [{ file: 'inspections.csv', row: 3 }] };
      const { design } = designOf({ doubtsBeside, safety: safety(1) });
      expect(design.stations.cup).toBe('short');
      expect(design.safety).toMatchObject({ mayDrink: 'no', reasons: expect.arrayContaining(['found', 'withheld']) });
    }
  });
});
