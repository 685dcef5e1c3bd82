import type { DrainageFinding, Problem, SiteDesign, StationVerdict } from '@eavewell/engine';
import { expect, it } from 'vitest';
import { decidingFigure, withheld } from './decidingFigure.ts';

const stations = {
  ...{ roof: 'notJudged', gutter: 'holds', settling: 'notJudged', storage: 'holds', stand: 'holds' },
  ...{ treatmentUnit: 'notJudged', tap: 'holds', cup: 'notJudged' },
} as const satisfies Readonly<Record<string, StationVerdict>>;

const part = (id: string, flow_L_per_s: number, capacity_L_per_s: number) =>
  ({
    ...{ part: 'gutter', id, roofId: 'R1', flow_L_per_s, flow_L_per_s_range: null, capacity_L_per_s },
    ...{ verdict: 'short', smallestPartId: null, smallest_mm: null },
  }) as unknown as DrainageFinding['parts'][number];

type Given = Parameters<typeof withheld>[0];
const design = (more: Partial<Given>): Given => ({
  ...{ verdict: 'short', stations, drainage: null, settling: [], stands: [], head: [], problems: [] },
  ...more,
});

it('is of the part that is fullest', () => {
  const drainage = { parts: [part('G1', 1, 2), part('G2', 3.456, 2.051)], governing: 1, verdict: 'short' };
  const found = decidingFigure(
    design({ stations: { ...stations, gutter: 'short' }, drainage: drainage as unknown as DrainageFinding }),
  );
  expect(found).toEqual({
    ...{ station: 'gutter', figure: 'gutter', id: 'G2', value: 3.46, range: null, limit: 2.05, unit: 'L/s' },
  });
});

it('is none where the tank is the worst, or nothing is short or tight', () => {
  const drainage = { parts: [part('G1', 3, 2)], governing: 0, verdict: 'short' } as unknown as DrainageFinding;
  expect(decidingFigure(design({ stations: { ...stations, storage: 'short', gutter: 'tight' }, drainage }))).toBeNull();
  expect(decidingFigure(design({ verdict: 'unknown', stations: { ...stations, gutter: 'unknown' } }))).toBeNull();
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
