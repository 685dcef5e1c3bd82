import { expect, test } from 'vitest';
import { draftProblems } from './draftProblems.ts';

type Problem = Parameters<typeof draftProblems>[0]['problems'][number];

const problem = (code: string, severity: Problem['severity'], what = code): Problem =>
  ({ code, severity, what, todo: '', place: {}, facts: {} }) as unknown as Problem;

test('what the draft brings up is told, once; what stood before and what is only worth knowing is not', () => {
  const levels = problem('site.tank_levels_differ', 'warning', 'They hold 50,000 L, not 98,000 L.');
  const blocked = problem('site.diverter_blocked', 'warning');
  const before = { problems: [blocked] };
  const after = { problems: [problem('site.first_flush_assumed', 'note'), blocked, levels, levels] };
  expect(draftProblems(before, after)).toEqual([levels]);
  expect(draftProblems(after, after)).toEqual([]);
});

test('the same trouble by another figure is told anew', () => {
  const before = { problems: [problem('site.tank_levels_differ', 'warning', '49,000 L')] };
  const after = { problems: [problem('site.tank_levels_differ', 'warning', '30,000 L')] };
  expect(draftProblems(before, after)).toHaveLength(1);
});
