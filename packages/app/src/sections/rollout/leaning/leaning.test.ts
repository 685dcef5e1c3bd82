import type { RolloutSheet } from '@eavewell/tables';
import { loadAppLanguage } from '@eavewell/words/app';
import { describe, expect, it } from 'vitest';
import { candidateWith, sheetWith } from '../sheetForTests.ts';
import { planFigures } from '../working/planFigures.ts';
import { leaningOn, mendedIn, notUsed } from './leaning.ts';

const english = await loadAppLanguage('en');
await english.more();

type Problem = RolloutSheet['problems'][number];

const problem = (code: string, severity: Problem['severity'], place: Problem['place'] = {}): Problem => ({
  ...{
    code,
    severity,
    place,
    facts: {},
    what: `${code} of ${place.file ?? 'all'} ${place.row ?? ''}.`,
    todo: 'Mend it.',
  },
});

describe('what a plan leans on', () => {
  const notUsedRow = problem('rollout.closure_when', 'blocker', { file: 'closures.csv', row: 11, column: 'months' });
  const restDays = problem('cell.not_weekdays', 'blocker', { file: 'crews.csv', row: 5, column: 'restDays' });
  const kit = problem('rollout.kit_in_part', 'warning');
  const presumed = problem('rollout.stock_unknown', 'note');
  const walking = problem('ways.walking_assumed', 'note');

  it('a crew that is not as entered comes first, then what is aboard, then what lies there, then rows, then notes', () => {
    expect(leaningOn([walking, notUsedRow, presumed, kit, restDays])).toEqual([
      restDays,
      kit,
      presumed,
      notUsedRow,
      walking,
    ]);
  });

  it('the same is told once, and what stands at two places twice', () => {
    expect(leaningOn([kit, { ...kit }, restDays, { ...restDays, what: 'Another.' }])).toHaveLength(3);
  });

  it('of what happened the rows that are not used are told, and no others', () => {
    expect(notUsed([walking, notUsedRow, presumed, kit, restDays])).toEqual([notUsedRow]);
  });

  it('leads to the table, the kits, the sites or the site where it is mended', () => {
    expect(mendedIn(notUsedRow)).toEqual({ to: 'table', table: 'closures' });
    expect(mendedIn(kit)).toEqual({ to: 'kit' });
    expect(mendedIn(presumed)).toEqual({ to: 'table', table: 'parts' });
    expect(mendedIn(problem('rollout.short_planned', 'warning'))).toEqual({ to: 'sites' });
    const ofSite = problem('cell.not_date', 'blocker', { file: 'sites.csv', row: 3, siteId: 'S3' });
    expect(mendedIn(ofSite)).toEqual({ to: 'site', siteId: 'S3' });
    expect(mendedIn(problem('rollout.begins_in_past', 'warning'))).toBeNull();
  });
});

describe('the last day of a plan', () => {
  const waiting = { personDays: 1, weighted: 1, mean_days: 1, longest: null, byArea: [], bound: null };
  const finish = { likely: '2027-06-12', futures: null, runs_count: 0, p90Between: null };
  const nameOf = (more: Partial<RolloutSheet>) =>
    planFigures(sheetWith({ waiting, finish, ...more }), english)[0]!.name;

  it('is that of all where all are in trips that get them done, else of the last planned', () => {
    expect(nameOf({})).toMatch(/^All /);
    const left = candidateWith({ siteId: 'V2', tripId: null, reason: 'tooLong' });
    expect(nameOf({ candidates: [candidateWith({}), left] })).toMatch(/^The last planned site /);
    const provisos = [{ kind: 'notDone' as const, siteIds: ['V1'], people_count: 120, said: '' }];
    expect(nameOf({ provisos })).toMatch(/^The last planned site /);
  });
});
