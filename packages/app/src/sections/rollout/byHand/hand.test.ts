import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyHand, type Hand, type HandEvent, handAfter } from './hand.ts';
import type { BreakTold, MoveAnswer } from './moveAnswer.ts';
import type { Held, Place } from './places.ts';
import { planForTests } from './planForTests.ts';

const plan = planForTests();
const without = (siteId: string) => ({
  ...plan,
  crews: plan.crews.map((crew) => ({
    ...crew,
    trips: crew.trips.map((trip) => ({ ...trip, stops: trip.stops.filter((stop) => stop.siteId !== siteId) })),
  })),
  candidates: plan.candidates.filter((one) => one.siteId !== siteId),
});
const site = (siteId: string): Held => ({ kind: 'site', siteId });
const place: Place = { kind: 'inTrip', tripId: 'B', position: 0 };
const answerWith = (...breaks: BreakTold[]): MoveAnswer => ({
  ...{ crews: [], moved: [], day: null, later_days: null, waiting_personDays: 0, finish_days: 0, cost: 0 },
  breaks,
});
const heavy: BreakTold = { kind: 'tooHeavy', siteId: 'B1', by: 40, partId: null };
const late: BreakTold = { kind: 'late', siteId: 'B1', by: 3, partId: null };
const after = (...events: HandEvent[]): Hand => events.reduce(handAfter, emptyHand);
const take = (held: Held, by: 'keys' | 'pointer' = 'keys'): HandEvent => ({ kind: 'takeUp', held, by, plan });
const to = (at: Place): HandEvent => ({ kind: 'moveTo', place: at, plan });
const answered = (at: Place, answer: MoveAnswer): HandEvent => ({ kind: 'answered', place: at, answer });

describe('taking up', () => {
  it.each([
    [site('Z'), 'done'],
    [site('Y'), 'underWay'],
    [{ kind: 'trip', tripId: 'U' } as const, 'underWay'],
    [site('L1'), 'locked'],
    [site('N'), 'notToBePlanned'],
    [site('nobody'), 'gone'],
    [{ kind: 'trip', tripId: 'none' } as const, 'gone'],
  ])('is refused with the reason: %o %s', (held, why) => {
    expect(after(take(held))).toMatchObject({ phase: 'empty', told: { kind: 'cannotTake', why: { why } } });
  });

  it('holds a site where it lies, and one that is in no trip', () => {
    expect(after(take(site('A1')))).toMatchObject({ phase: 'held', at: { kind: 'inTrip', tripId: 'A', position: 0 } });
    expect(after(take(site('F')))).toMatchObject({ phase: 'held', home: { kind: 'tray' } });
  });
});

describe('laying down', () => {
  it('waits for what would become of it, and is then saved', () => {
    const waiting = after(take(site('A1')), to(place), { kind: 'letGo' });
    expect(waiting).toMatchObject({ phase: 'held', isLetGo: true });
    expect(handAfter(waiting, answered(place, answerWith()))).toMatchObject({ phase: 'laying', at: place });
  });

  it('of what would be late is told and done', () => {
    expect(after(take(site('A1')), to(place), answered(place, answerWith(late)), { kind: 'letGo' }).phase).toBe(
      'laying',
    );
  });

  it('of what cannot be is refused, and the nearest that can is kept for it alone', () => {
    const refused = after(take(site('A1')), to(place), answered(place, answerWith(heavy, late)), { kind: 'letGo' });
    expect(refused).toMatchObject({ phase: 'refused', cannot: { why: 'breaks', breaks: [heavy] } });
    const found = { place: { kind: 'newTrip', crewId: '1', index: 0 }, commonest: null } as const;
    expect(handAfter(refused, { kind: 'nearest', place, found })).toMatchObject({ nearest: found });
    const moved = handAfter(refused, to({ kind: 'tray' }));
    expect(handAfter(moved, { kind: 'nearest', place, found })).toMatchObject({ phase: 'held', nearest: null });
  });

  it('in a trip that has left or is locked is refused before anything is worked out', () => {
    for (const tripId of ['U', 'L'] as const) {
      const at: Place = { kind: 'inTrip', tripId, position: 0 };
      expect(after(take(site('A1')), to(at), { kind: 'letGo' })).toMatchObject({ phase: 'refused', answer: null });
    }
  });

  it('where it was is no change', () => {
    expect(after(take(site('A1')), { kind: 'letGo' })).toEqual({
      phase: 'empty',
      told: { kind: 'putBack', held: site('A1'), why: null },
    });
  });

  it('that was not saved leaves it in hand', () => {
    const laying = after(take(site('A1')), to(place), answered(place, answerWith()), { kind: 'letGo' });
    expect(handAfter(laying, { kind: 'notLaid' })).toMatchObject({ phase: 'held', at: place, isLetGo: false });
    expect(handAfter(laying, { kind: 'putBack' })).toBe(laying);
  });
});

describe('answers', () => {
  it('of another place are left', () => {
    const held = after(take(site('A1')), to(place));
    expect(handAfter(held, answered({ kind: 'tray' }, answerWith(heavy)))).toBe(held);
  });

  it('that do not come are told', () => {
    const held = after(take(site('A1')), to(place), { kind: 'notAnswered', place, why: { why: 'noAnswer' } });
    expect(held).toMatchObject({ phase: 'refused', cannot: { why: 'noAnswer' } });
  });
});

describe('another plan under the hand', () => {
  it('is tried again where it is held', () => {
    const held = after(take(site('A1')), to(place), answered(place, answerWith()), { kind: 'planChanged', plan });
    expect(held).toMatchObject({ phase: 'held', at: place, answer: null });
  });

  it('puts back what is gone, with the reason', () => {
    const gone = after(take(site('A1')), to(place), { kind: 'planChanged', plan: without('A1') });
    expect(gone).toMatchObject({ phase: 'empty', told: { kind: 'putBack', why: { why: 'gone' } } });
  });

  it('takes it home where its place is gone, and lays nothing down there', () => {
    const at: Place = { kind: 'inTrip', tripId: 'C', position: 2 };
    const held = after(take(site('A1')), to(at), { kind: 'letGo' }, { kind: 'planChanged', plan: without('C2') });
    expect(held).toMatchObject({ phase: 'held', at: { kind: 'inTrip', tripId: 'A', position: 0 }, isLetGo: false });
  });
});

it('never lays down what breaks, whatever happens in whatever order', () => {
  const event = fc.constantFrom<HandEvent>(
    take(site('A1')),
    take(site('F'), 'pointer'),
    to(place),
    to({ kind: 'tray' }),
    answered(place, answerWith(heavy)),
    answered({ kind: 'tray' }, answerWith()),
    { kind: 'letGo' },
    { kind: 'putBack' },
    { kind: 'notLaid' },
    { kind: 'planChanged', plan },
    { kind: 'heard' },
  );
  fc.assert(
    fc.property(fc.array(event, { maxLength: 40 }), (events) => {
      let hand = emptyHand;
      for (const one of events) {
        hand = handAfter(hand, one);
        if (hand.phase !== 'laying') continue;
        expect(hand.cannot).toBeNull();
        expect(hand.answer?.breaks).toEqual([]);
      }
    }),
    { seed: 20261126, numRuns: 300 },
  );
});
