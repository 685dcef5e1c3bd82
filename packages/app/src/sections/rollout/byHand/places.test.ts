import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Held, homeOf, isSamePlace, type Place, type Step, stepped } from './places.ts';
import { planForTests } from './planForTests.ts';

const plan = planForTests();
const site = (siteId: string): Held => ({ kind: 'site', siteId });
const trip = (tripId: string): Held => ({ kind: 'trip', tripId });
const inTrip = (tripId: string, position: number): Place => ({ kind: 'inTrip', tripId, position });
const newTrip = (crewId: string, index: number): Place => ({ kind: 'newTrip', crewId, index });

/** Places met by going on one way, that one begins at first. */
function walk(held: Held, from: Place, step: Step): Place[] {
  const met = [from];
  for (let count = 0; count < 50; count++) {
    const next = stepped(plan, held, met.at(-1)!, step);
    if (isSamePlace(next, met.at(-1)!)) return met;
    met.push(next);
  }
  throw new Error('it goes on for ever');
}

describe('where a site is moved by keys', () => {
  it('begins where it lies', () => {
    expect(homeOf(plan, site('A2'))).toEqual(inTrip('A', 1));
    expect(homeOf(plan, site('F'))).toEqual({ kind: 'tray' });
    expect(homeOf(plan, site('nobody'))).toBeNull();
  });

  it('goes through every place of its crew, past what has left and what is locked', () => {
    expect(walk(site('A1'), newTrip('1', 0), 'later')).toEqual([
      newTrip('1', 0),
      inTrip('A', 0),
      inTrip('A', 1),
      newTrip('1', 1),
      inTrip('B', 0),
      inTrip('B', 1),
      newTrip('1', 2),
      newTrip('1', 3),
    ]);
    expect(walk(site('A1'), newTrip('1', 3), 'earlier').toReversed()).toEqual(
      walk(site('A1'), newTrip('1', 0), 'later'),
    );
  });

  it('goes a trip on at once', () => {
    expect(stepped(plan, site('A1'), inTrip('A', 0), 'laterFar')).toEqual(inTrip('B', 0));
    expect(stepped(plan, site('A1'), inTrip('B', 1), 'earlierFar')).toEqual(inTrip('A', 0));
    expect(stepped(plan, site('A1'), inTrip('B', 1), 'laterFar')).toEqual(newTrip('1', 3));
  });

  it('goes to the other crew at about the same day, and below the last into no trip', () => {
    expect(stepped(plan, site('B1'), inTrip('B', 0), 'crewBelow')).toEqual(inTrip('C', 1));
    expect(stepped(plan, site('B1'), inTrip('C', 1), 'crewBelow')).toEqual({ kind: 'tray' });
    expect(stepped(plan, site('B1'), { kind: 'tray' }, 'crewBelow')).toEqual({ kind: 'tray' });
    expect(stepped(plan, site('F'), { kind: 'tray' }, 'crewAbove')).toMatchObject({ kind: 'inTrip', tripId: 'C' });
    expect(stepped(plan, site('A1'), inTrip('A', 0), 'crewAbove')).toEqual(inTrip('A', 0));
  });
});

describe('where a trip is moved by keys', () => {
  const at = (crewId: string, index: number, notBefore: string | null = null): Place => ({
    kind: 'amongTrips',
    crewId,
    index,
    notBefore,
  });

  it('goes among the other planned trips of its crew, and to the other', () => {
    expect(homeOf(plan, trip('B'))).toEqual(at('1', 1));
    expect(walk(trip('B'), at('1', 0), 'later')).toEqual([at('1', 0), at('1', 1), at('1', 2)]);
    expect(stepped(plan, trip('B'), at('1', 1), 'crewBelow')).toMatchObject({ kind: 'amongTrips', crewId: '2' });
    // A trip is not laid in no trip.
    expect(stepped(plan, trip('C'), at('2', 0), 'crewBelow')).toEqual(at('2', 0));
  });

  it('leaves a week later or earlier, never before the plan begins', () => {
    expect(stepped(plan, trip('B'), at('1', 1), 'laterFar')).toEqual(at('1', 1, '2026-07-06'));
    expect(stepped(plan, trip('B'), at('1', 1, '2026-07-06'), 'laterFar')).toEqual(at('1', 1, '2026-07-13'));
    expect(walk(trip('B'), at('1', 1, '2026-07-06'), 'earlierFar')).toEqual(
      ['2026-07-06', '2026-06-29', '2026-06-22', '2026-06-15'].map((day) => at('1', 1, day)).concat(at('1', 1, null)),
    );
  });
});

it('no key leads to a place there is not', () => {
  const steps = ['earlier', 'later', 'earlierFar', 'laterFar', 'crewAbove', 'crewBelow'] as const;
  fc.assert(
    fc.property(
      fc.constantFrom('A1', 'A2', 'B1', 'C1', 'F'),
      fc.array(fc.constantFrom(...steps), { maxLength: 30 }),
      (siteId, way) => {
        let place = homeOf(plan, site(siteId))!;
        for (const step of way) {
          place = stepped(plan, site(siteId), place, step);
          if (place.kind === 'inTrip') {
            const found = plan.crews
              .flatMap((crew) => crew.trips)
              .find(({ tripId }) => tripId === (place as { tripId: string }).tripId)!;
            expect(found.state).toBe('planned');
            expect(found.isLocked).toBe(false);
            expect(place.position).toBeLessThanOrEqual(found.stops.filter((stop) => stop.siteId !== siteId).length);
          } else if (place.kind === 'newTrip') expect(place.index).toBeLessThanOrEqual(place.crewId === '1' ? 3 : 1);
        }
      },
    ),
    { seed: 20261126 },
  );
});
