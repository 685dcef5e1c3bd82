import type { Problem, SiteDesign } from '@eavewell/engine';
import { english, problemSentence } from '@eavewell/words';
import { expect, it } from 'vitest';
import { faultFinder, faultNamer } from './namedFaults.ts';

const place = { file: 'sites.csv', row: 37, column: 'people' };
const fault: Problem = { code: 'cell.not_a_number', severity: 'blocker', place, facts: { value: 'about 120' } };
const designOf = (row: number): SiteDesign => {
  const at = { ...place, row, siteId: 'S036' };
  const doubt: Problem = { code: 'site.facts_in_doubt', severity: 'blocker', place: at, facts: { count: 1 } };
  return { siteId: 'S036', problems: [doubt] } as unknown as SiteDesign;
};

it('names the fault that keeps a site from a verdict, once, and what to do', () => {
  const { what, todo } = problemSentence(faultNamer(faultFinder([fault]), english)(designOf(37)).problems[0]!);
  expect(what).toBe('A row about this site could not be used: sites.csv, row 37, people: "about 120" is not a number.');
  expect(todo).not.toContain('check');
  expect(todo.match(/verdict/g)).toHaveLength(1);
});

it('names nothing where the fault stands elsewhere', () => {
  const { what, todo } = problemSentence(faultNamer(faultFinder([fault]), english)(designOf(38)).problems[0]!);
  expect(what).toBe('A row about this site could not be used: sites.csv, row 38, people.');
  expect(todo).toContain('eavewell check');
});
