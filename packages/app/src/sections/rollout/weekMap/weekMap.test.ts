import { describe, expect, it } from 'vitest';
import { candidateWith, crewWith, sheetWith, stopWith, tripWith } from '../sheetForTests.ts';
import { beside } from './beside.ts';
import { isClosed, servedBy, weekHappens } from './weekHappens.ts';
import { positionsOf, tripLines, wayLines, waysKnown } from './weekLines.ts';
import { weekOfDay, weeksBetween } from './weeks.ts';

const week = weekOfDay('2027-06-09')!;
const after = weekOfDay('2027-06-16')!;

describe('weeks', () => {
  it('run from Monday to Sunday', () => {
    expect(week).toEqual({ from: '2027-06-07', to: '2027-06-13' });
    expect(weekOfDay('2027-06-07')).toEqual(week);
    expect(weekOfDay('2027-06-13')).toEqual(week);
    expect(weekOfDay('1969-12-31')).toEqual({ from: '1969-12-29', to: '1970-01-04' });
    expect(weekOfDay('no day')).toBeNull();
  });

  it('hold the first day and the last, over the end of a year', () => {
    expect(weeksBetween('2026-12-31', '2027-01-05').map(({ from }) => from)).toEqual(['2026-12-28', '2027-01-04']);
    expect(weeksBetween('2027-06-09', '2027-06-01')).toEqual([]);
  });
});

describe('what happens in a week', () => {
  const span = (from: string, to: string, kind: 'closed' | 'slower', isToGuessed = false) => ({
    ...{ from, to, kind, said: kind, isToGuessed },
  });
  const strip = (stripId: string, spans: readonly ReturnType<typeof span>[]) => ({
    ...{ stripId, name: stripId, mode: 'river' as const, wayIds: ['W1'], weeks: [] },
    spans: [...spans],
  });
  const sheet = sheetWith({
    crews: [
      crewWith({
        trips: [tripWith({}), tripWith({ tripId: 'T2', leaves: '2027-06-18', back: '2027-06-20', stops: [] })],
      }),
      crewWith({ crewId: 'C3', name: 'Crew 3', trips: [] }),
    ],
    strips: [
      strip('slow', [span('2027-06-01', '2027-06-08', 'slower')]),
      strip('shut', [span('2027-06-13', '2027-06-30', 'closed'), span('2027-06-14', '2027-06-15', 'closed')]),
    ],
  });

  it('a crew leaves, works and is back, each in the week of its day', () => {
    const kinds = (of: typeof week) =>
      weekHappens(sheet, of).crews.flatMap(({ events }) => events.map(({ kind, from }) => [kind, from]));
    expect(kinds(week)).toEqual([
      ['leaves', '2027-06-07'],
      ['works', '2027-06-10'],
    ]);
    expect(kinds(after)).toEqual([
      ['back', '2027-06-16'],
      ['leaves', '2027-06-18'],
      ['back', '2027-06-20'],
    ]);
    expect(weekHappens(sheet, week).idle.map(({ name }) => name)).toEqual(['Crew 3']);
  });

  it('closed ways come before slower ones, and none of another week', () => {
    const { closed } = weekHappens(sheet, week);
    expect(closed.map(({ strip: { stripId } }) => stripId)).toEqual(['shut', 'slow']);
    expect(closed.map(isClosed)).toEqual([true, false]);
    expect(weekHappens(sheet, weekOfDay('2027-07-20')!).closed).toEqual([]);
  });

  it('a way whose last day was a guess may be closed still for two weeks, and is told after those that are', () => {
    const guessed = sheetWith({
      strips: [
        strip('guess', [span('2027-05-20', '2027-06-06', 'closed', true)]),
        strip('shut', [span('2027-06-13', '2027-06-30', 'closed')]),
        strip('known', [span('2027-05-20', '2027-06-06', 'closed')]),
      ],
    });
    const of = (day: string) =>
      weekHappens(guessed, weekOfDay(day)!).closed.map(({ strip: { stripId }, isUnsure }) => [stripId, isUnsure]);
    expect(of('2027-06-01')).toEqual([
      ['guess', false],
      ['known', false],
    ]);
    expect(of('2027-06-09')).toEqual([
      ['shut', false],
      ['guess', true],
    ]);
    expect(weekHappens(guessed, week).closed.map(isClosed)).toEqual([true, false]);
    // The 20th is the fourteenth day after it.
    expect(of('2027-06-20')).toContainEqual(['guess', true]);
    expect(of('2027-06-21')).toEqual([['shut', false]]);
  });

  it('people drink from the week of their first day of service on; a site not in the plan at all drinks already', () => {
    const left = sheetWith({
      crews: [
        crewWith({
          trips: [tripWith({ stops: [stopWith({}), stopWith({ siteId: 'V3', isWayUp: false, served: null })] })],
        }),
      ],
      candidates: [candidateWith({}), candidateWith({ siteId: 'V2', tripId: null }), candidateWith({ siteId: 'V3' })],
    });
    const at = (of: typeof week) => ['V1', 'V2', 'V3', 'V9'].map(servedBy(left, of));
    expect(at(weekOfDay('2027-06-01')!)).toEqual([false, false, false, true]);
    expect(at(week)).toEqual([true, false, false, true]);
    expect(weekHappens(left, week).served.map(({ siteId }) => siteId)).toEqual(['V1']);
    expect(weekHappens(left, after).served).toEqual([]);
  });
});

describe('the way of a trip', () => {
  const place = (placeId: string, latitude_deg: number, longitude_deg: number) => ({
    ...{ placeId, name: placeId, kind: null, latitude_deg, longitude_deg },
  });
  const way = (wayId: string, from: string, to: string, line_deg: number[][] | null) => ({
    ...{ wayId, name: null, mode: 'river' as const, from, to, line_deg },
  });
  const leg = (from: string, to: string, wayIds: string[], leaves: string | null, arrives: string | null) => ({
    ...{ from, to, wayIds, leaves, arrives, hours_h: 3 },
  });
  const sheet = sheetWith({
    places: [place('base', 0, 0), place('fork', 0, 2), place('V1', 1, 2)],
    // The second way is written from the village to the fork, and is gone the other way round.
    ways: [
      way('W1', 'base', 'fork', [
        [0, 0],
        [1, 0.5],
        [2, 0],
      ]),
      way('W2', 'V1', 'fork', null),
    ],
  });
  const positionOf = positionsOf(sheet, null);
  const lines = wayLines(sheet, positionOf);
  const known = waysKnown(sheet, lines);
  const trip = tripWith({
    legs: [
      leg('base', 'V1', ['W1', 'W2'], '2027-06-07', '2027-06-09'),
      leg('V1', 'base', ['W2', 'W1'], '2027-06-15', '2027-06-16'),
    ],
  });
  const flat = (of: ReturnType<typeof tripLines>) =>
    of.map(({ line }) => line.map(({ longitude_deg, latitude_deg }) => [longitude_deg, latitude_deg]));

  it('follows the lines of its ways from stop to stop, turned as they are gone', () => {
    const out = [
      [0, 0],
      [1, 0.5],
      [2, 0],
      [2, 0],
      [2, 1],
    ];
    expect(flat(tripLines(trip, known, positionOf, week))).toEqual([out, [...out].reverse()]);
  });

  it('tells the legs of the week from the others', () => {
    const isOfWeek = (of: typeof week) => tripLines(trip, known, positionOf, of).map((one) => one.isOfWeek);
    expect(isOfWeek(week)).toEqual([true, false]);
    expect(isOfWeek(after)).toEqual([false, true]);
  });

  it('is straight where no way is told, and not drawn where nobody knows where it leads', () => {
    const legs = [leg('base', 'V1', [], null, null), leg('base', 'nowhere', [], null, null)];
    expect(flat(tripLines({ ...trip, legs }, known, positionOf, week))).toEqual([
      [
        [0, 0],
        [2, 1],
      ],
    ]);
  });
});

describe('a line beside another', () => {
  it('lies at its right as it is gone, out and back apart', () => {
    const line = [
      [0, 0],
      [10, 0],
      [10, 10],
    ] as const;
    const near = (of: readonly (readonly [number, number])[]) =>
      of.map(([x, y]) => [Math.round(x * 1e6), Math.round(y * 1e6)]);
    expect(near(beside(line, 2))).toEqual(
      near([
        [0, 2],
        [8, 2],
        [8, 10],
      ]),
    );
    expect(near(beside([...line].reverse(), 2))).toEqual(
      near([
        [12, 10],
        [12, -2],
        [0, -2],
      ]),
    );
  });

  it('of a line that turns round, or of one point, is a number everywhere', () => {
    const all = [
      ...beside(
        [
          [0, 0],
          [5, 0],
          [0, 0],
        ],
        3,
      ),
      ...beside(
        [
          [1, 1],
          [1, 1],
        ],
        3,
      ),
    ].flat();
    expect(all.every(Number.isFinite)).toBe(true);
  });
});
