import type { PlanMove, TripAt } from '@eavewell/records';
import { expect, it } from 'vitest';
import { loadLanguage, planRecordSaid } from './index.ts';

const names = { siteOf: (id: string) => `Site ${id}`, crewOf: (id: string) => `Crew ${id}` };
const [a, b]: TripAt[] = [
  { crewId: 'A', nth: 3 },
  { crewId: 'B', nth: 1 },
];
const went: PlanMove = { kind: 'siteWent', siteId: 'osk', from: a!, to: b! };
const said = async (moves: readonly PlanMove[], more: { ofPlan?: string; others_count?: number } = {}, tag = 'en') =>
  planRecordSaid({ moves, ofPlan: null, others_count: 0, ...more }, names, await loadLanguage(tag));

it('says what moved, the first two of many, and what else there is', async () => {
  expect(await said([went])).toBe('Site osk went from trip 3 of Crew A to trip 1 of Crew B');
  expect(await said([{ ...went, to: { crewId: 'A', nth: 2 } }])).toBe('Site osk went from trip 3 to trip 2 of Crew A');
  expect(
    await said([
      { ...went, to: null },
      { ...went, from: null },
    ]),
  ).toBe('Site osk was taken out of trip 3 of Crew A; Site osk was put into trip 1 of Crew B');
  const five = await said([went, { kind: 'inForce', name: 'Summer' }, went, went, went], { others_count: 1 });
  expect(five).toMatch(/Crew B; plan Summer is in force; and 3 more; 1 row beside the plan$/);
  expect(await said([{ kind: 'tripWent', from: a!, to: b! }], { ofPlan: 'Winter' })).toBe(
    'Winter: trip 3 of Crew A went to Crew B, as its trip 1',
  );
});

it('says days by the calendar, and days that are no more', async () => {
  const { numbers } = await loadLanguage('en');
  const [before, after] = ['2027-05-01', '2027-05-03'];
  expect(await said([{ kind: 'leaves', trip: a!, before, after }])).toBe(
    `Trip 3 of Crew A leaves on ${numbers.date(after)}, in place of ${numbers.date(before)}`,
  );
  expect(await said([{ kind: 'left', trip: a!, day: null }])).toBe(
    'Trip 3 of Crew A is not said to have left any more',
  );
});

it('has words in every language for every kind of move', async () => {
  const day = '2027-05-01';
  const each: readonly PlanMove[] = [
    went,
    { kind: 'sitePlace', siteId: 'osk', trip: a!, nth: 2 },
    { kind: 'handedOver', siteId: 'osk', day },
    { kind: 'handedOver', siteId: 'osk', day: null },
    { kind: 'tripWent', from: a!, to: b! },
    { kind: 'tripPlace', from: a!, to: b! },
    ...(['left', 'cameBack', 'notBefore'] as const).map((kind) => ({ kind, trip: a!, day })),
    ...(['leaves', 'back'] as const).map((kind) => ({ kind, trip: a!, before: null, after: day })),
    { kind: 'locked', trip: a!, isLocked: false },
    ...(['kept', 'removed'] as const).map((kind) => ({ kind, name: 'Sommer', trips_count: 2, sites_count: 1 })),
    ...(['inForce', 'notInForce', 'timed'] as const).map((kind) => ({ kind, name: 'Sommer' })),
    { kind: 'named', before: 'Sommer', after: 'Herbst' },
  ];
  for (const tag of ['en', 'es'])
    for (const move of each) {
      const one = await said([move], {}, tag);
      expect(one, move.kind).toMatch(/osk|Crew A|Sommer/i);
      expect(one).not.toMatch(/[{}]|undefined/);
    }
});
