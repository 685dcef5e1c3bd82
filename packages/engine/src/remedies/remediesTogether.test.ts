import { expect, it } from 'vitest';
import type { RemedyCost } from './cost.ts';
import { remediesTogether } from './remediesTogether.ts';
import type { Remedy } from './remedy.ts';

const tank = { kind: 'secondTank', tankId: null, partId: 'T', volume_L: 900, mass_kg: null } as const;
const gutter = { kind: 'gutter', tankId: null, gutteredFraction: 1 } as const;
const remedy = (changes: Remedy['changes'], amount: number | null, currency: string | null = 'XTS'): Remedy => ({
  changes,
  verdict: 'holds',
  promiseCut_count: 0,
  tankVolume_L: 1800,
  dryDays_per_year: 1,
  goodYears: 30,
  sourceDays_per_year: null,
  besides: [],
  standGate: 'notNeeded',
  cost: { amount, currency: amount === null ? null : currency, reason: null, bought: [] } as RemedyCost,
});
const site = (siteId: string, people: number | null, smallest: Remedy | null) => ({
  siteId,
  people,
  smallest,
  notMended: smallest === null || smallest.verdict === 'tight' ? ('tank' as const) : null,
});

it('counts sites, people and costs by kind of change and by currency, and leaves unknown costs out of the sums', () => {
  const sites = [
    site('B', 40, remedy([tank], 500)),
    site('A', 30, remedy([tank], 700)),
    site('C', null, remedy([tank], 90, 'XXX')),
    site('D', 20, remedy([tank, gutter], null)),
    site('F', 10, null),
    site('E', 10, { ...remedy([tank], 5), verdict: 'tight' }),
  ];
  const found = remediesTogether(sites);
  expect(found.looked).toMatchObject({ sites: 6, people: 110, withoutPeople_count: 1, withoutCost_count: 1 });
  expect(found.mended).toEqual({
    sites: 4,
    people: 90,
    withoutPeople_count: 1,
    costs: [
      { amount: 1200, currency: 'XTS' },
      { amount: 90, currency: 'XXX' },
    ],
    withoutCost_count: 1,
  });
  expect(found.groups.map(({ kinds, verdict, sites: count }) => [kinds.join('+'), verdict, count])).toEqual([
    ['secondTank', 'holds', 3],
    ['gutter+secondTank', 'holds', 1],
    ['secondTank', 'tight', 1],
  ]);
  expect(found.notMended).toEqual([{ reason: 'tank', siteIds: ['E', 'F'] }]);
  expect(remediesTogether([...sites].reverse())).toEqual(found);
});
