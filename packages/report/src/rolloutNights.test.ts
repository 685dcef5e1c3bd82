import type { CrewFacts, RolloutProblem, TripLeg } from '@eavewell/engine';
import type { SheetTrip } from '@eavewell/tables';
import { english } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { nightsOf } from './rolloutNights.ts';

const leg = (
  from: string,
  to: string,
  rest: Pick<TripLeg, 'leaves' | 'arrives' | 'times'>,
  over: readonly string[] = [],
  mode = 'road',
): TripLeg => ({
  ...{ from, to, ...rest },
  way: { stretches: [...over, to].map((one) => ({ to: one, mode })) } as never,
});

/** Nights of a trip from 4 January on, by these legs. */
const nights = (back: string, legs: readonly TripLeg[]) =>
  daysOf(back, legs).map(({ sleeps, said }) => sleeps ?? said.join());

function daysOf(back: string, legs: readonly TripLeg[], works = new Uint8Array(9).fill(1)) {
  const problem = { firstDay: 20_822, crews: [{ crewId: 'east', works }] } as unknown as RolloutProblem;
  const trip = {
    state: 'planned',
    leaves: '2027-01-04',
    back,
    stops: [{ siteId: 'V1' }, { siteId: 'V2' }],
  } as SheetTrip;
  const told = { problem, language: english, nameOf: new Map([['town', 'Town']]), noSleep: new Set(['shoal']) };
  return nightsOf(told, trip, legs, { crewId: 'east', base: 'town' } as CrewFacts);
}

describe('nights of a trip', () => {
  it('are spent where the work was done, until the crew goes on', () => {
    const legs = [
      leg('town', 'V1', { leaves: 0, arrives: 0.25, times: [{ begins: 0, ends: 0.25 }] }),
      leg('V1', 'V2', { leaves: 2, arrives: 2.5, times: [{ begins: 2, ends: 2.5 }] }),
      leg('V2', 'town', { leaves: 3.2, arrives: 3.9, times: [{ begins: 3.2, ends: 3.9 }] }),
    ];
    expect(nights('2027-01-07', legs)).toEqual(['V1', 'V1', 'V2', '']);
  });

  it('are spent at landings, and a day of rest there is none on a river', () => {
    const times = [
      { begins: 0, ends: 0.5 },
      { begins: 2, ends: 2.5 },
    ];
    const legs = [leg('town', 'V1', { leaves: 0, arrives: 2.5, times }, ['landing'], 'river')];
    expect(nights('2027-01-07', legs)).toEqual(['landing', 'landing', 'V1', '']);
    expect(daysOf('2027-01-07', legs).map(({ isAfloat }) => isAfloat)).toEqual([true, false, true, false]);
  });

  it('at a place where nobody may sleep are told with that', () => {
    const times = [
      { begins: 0, ends: 0.5 },
      { begins: 1, ends: 1.5 },
    ];
    const legs = [leg('town', 'V1', { leaves: 0, arrives: 1.5, times }, ['shoal'], 'river')];
    const said =
      'Nobody may sleep at shoal, as places.csv has it: settle where the crew sleeps instead before it leaves.';
    expect(daysOf('2027-01-06', legs).map(({ sleeps, night }) => [sleeps, night ?? null])).toEqual([
      ['shoal', said],
      ['V1', null],
      [null, null],
    ]);
  });

  it('after days of rest are told as such', () => {
    const legs = [leg('town', 'V1', { leaves: 0, arrives: 0.25, times: [{ begins: 0, ends: 0.25 }] })];
    const days = daysOf('2027-01-06', legs, Uint8Array.of(1, 0, 1));
    expect(days.map(({ sleeps, isRest }) => [sleeps, isRest ?? false])).toEqual([
      ['V1', false],
      ['V1', true],
      [null, false],
    ]);
  });

  it('are spent on the bank where one way by river takes longer than a day', () => {
    const legs = [leg('town', 'V1', { leaves: 0, arrives: 1.5, times: [{ begins: 0, ends: 1.5 }] }, [], 'river')];
    const said = 'Night on the bank between Town and V1: ask the skipper where.';
    expect(nights('2027-01-06', legs)).toEqual([said, 'V1', '']);
    expect(daysOf('2027-01-06', legs).map(({ night }) => night ?? null)).toEqual([said, null, null]);
  });

  it('are spent on the way where a crew went on and did not get to the next place', () => {
    const legs = [
      leg('town', 'V1', { leaves: 0, arrives: 0.25, times: [{ begins: 0, ends: 0.25 }] }),
      // Gone on at the middle of the day; at the fork on the next.
      leg(
        'V1',
        'town',
        {
          ...{ leaves: 0.5, arrives: 2.3 },
          times: [
            { begins: 0.5, ends: 1.5 },
            { begins: 2, ends: 2.3 },
          ],
        },
        ['fork'],
      ),
    ];
    expect(nights('2027-01-06', legs)).toEqual(['Night on the way to fork.', 'fork', '']);
  });
});
