import { foldRecords } from '@eavewell/records';
import type { RolloutWorking } from '@eavewell/tables';
import { loadLanguage } from '@eavewell/words';
import { expect, it } from 'vitest';
import { withEntered } from './enteredCells.ts';

const added = (table: string, key: string, after: Record<string, string>) => ({
  kind: 'added' as const,
  table,
  key,
  after,
});
const facts = foldRecords([
  {
    ...{ device: 'office', number: 1, clock: 1, at: '2027-01-01T00:00:00.000Z', offset_min: 0, by: 'Nadi' },
    ...{ source: { kind: 'form', name: null }, takesBack: null },
    changes: [
      added('sites', 'osk', { siteId: 'osk', name: 'Osk landing', people: '120', installLikely_days: '2,5' }),
      added('sites', 'bel', { siteId: 'bel', people: '80' }),
      added('crews', 'A', { crewId: 'A', name: 'Crew Ada', from: '2027-05-03' }),
      added('settings', 'installLikely_days', { value: '4' }),
    ],
  },
]);

type Input = RolloutWorking['working'][number]['inputs'][number];
const input = (value: Input['value'], from: Input['from'], said?: string): Input => ({
  ...{ name: 'x', label: 'x', value, unit: 'day', from },
  ...(said === undefined ? {} : { said }),
});
const cell = (table: string, key: string, column: string) => ({ table, key, column });
const said = async (one: Input, tag = 'en') => {
  const line = { code: 'rollout.ends', label: '', value: 1, unit: '', formula: '', source: '', sourceSaid: '' };
  const working = { stamp: '', planId: null, opens: '', said: [], working: [{ ...line, inputs: [one] }] };
  const [found] = withEntered(working, facts, await loadLanguage(tag)).working[0]!.inputs;
  return found!.from?.map((each) => each.said);
};

it('says in which cell an input was entered, and in no other case', async () => {
  const likely = (siteId: string) => [
    cell('sites', siteId, 'installLikely_days'),
    cell('settings', 'installLikely_days', 'installLikely_days'),
  ];
  expect(await said(input(2.5, likely('osk')))).toEqual(['Work most likely of Osk landing']);
  // A site that states none takes that of the settings; one that is named by nothing else, by its id.
  expect(await said(input(4, likely('bel')))).toEqual(['Work at a site most likely, in the settings']);
  expect(await said(input(80, [cell('sites', 'bel', 'people')]))).toEqual(['People of bel']);
  // People as they will be by growth are not those that were entered.
  expect(await said(input(131, [cell('sites', 'osk', 'people')]))).toBeUndefined();
  expect(await said(input(1, [cell('crews', 'A', 'pace_factor')]))).toBeUndefined();
});

it('knows a day by the calendar', async () => {
  const from = [cell('crews', 'A', 'from')];
  for (const tag of ['en', 'es']) {
    const { numbers } = await loadLanguage(tag);
    expect(await said(input(2, from, numbers.date('2027-05-03')), tag)).toHaveLength(1);
    expect(await said(input(3, from, numbers.date('2027-05-04')), tag)).toBeUndefined();
  }
});
