import type { AboardLine } from '@eavewell/report';
import type { RolloutTripAnswer } from '@eavewell/tables';
import type { PaperOptions, TripOnPaper } from './given.ts';

/* A trip by road and river to three villages, made up for the tests beside. */

type Leg = RolloutTripAnswer['legs'][number];
type Stretch = Leg['stretches'][number];

export const stretch = (mode: Stretch['mode'], from: string, to: string, hours_h: number): Stretch => ({
  ...{ wayId: `${from}-${to}`, from, to, mode, hours_h, changeOver_h: 0 },
  carrierId: mode === 'river' ? 'longboat' : mode === 'road' ? 'truck' : null,
});

export const leg = (from: string, to: string, days: readonly [string, string], stretches: readonly Stretch[]): Leg => ({
  ...{ from, to, leaves: days[0], arrives: days[1], stretches: [...stretches], porters_count: 2, said: 'a leg' },
  hours_h: stretches.reduce((sum, one) => sum + one.hours_h, 0),
  ...{ limit_kg: 1600, limitBy: null },
});

const stop = (siteId: string, name: string, people: number, days: readonly [string, string, string]) => ({
  ...{ siteId, name, people, arrives: days[0], starts: days[0], handOver: days[1], served: days[2] },
  futures: { p10: days[1], p50: days[2], p90: '2026-07-20' },
  ...{ kept: null, isHandedOver: false, isWayUp: true, isKitInPart: false, isUnweighed: false, isUntreated: false },
});

export const part = (
  siteId: string,
  name: string,
  count: number,
  each_kg: number | null,
  longest_m: number | null,
  danger: AboardLine['danger'] = null,
): AboardLine => ({
  ...{ siteId, partId: name.replaceAll(' ', '-'), name, count, each_count: 1, danger, longest_m, isPresumed: false },
  mass_kg: each_kg === null ? null : each_kg * count,
  lift_people: each_kg === null ? null : each_kg > 23 ? 2 : 1,
});

const each = (siteId: string): readonly AboardLine[] => [
  part(siteId, 'unit, three cartridges, crated', 1, 46, 1.1),
  part(siteId, 'hand pump', 2, 9.5, 1.2),
  part(siteId, 'taps, rail and fittings, bag', 1, 18, 1.4),
  part(siteId, 'downpipe 90 mm, 3 m', 2, 4.1, 3),
  part(siteId, 'gutter 150 mm, 4 m', 5, 6.2, 4),
];

const legs = [
  leg(
    'foot',
    'S3',
    ['2026-06-10', '2026-06-11'],
    [stretch('road', 'foot', 'landing', 2.5), stretch('river', 'landing', 'S3', 7.2)],
  ),
  leg('S3', 'S2', ['2026-06-15', '2026-06-15'], [stretch('river', 'S3', 'S2', 3)]),
  leg('S2', 'S1', ['2026-06-18', '2026-06-18'], [stretch('foot', 'S2', 'S1', 1.5)]),
  leg(
    'S1',
    'foot',
    ['2026-06-21', '2026-06-22'],
    [stretch('river', 'S1', 'landing', 6), stretch('road', 'landing', 'foot', 2.5)],
  ),
];

const truck = {
  ...{ carrierId: 'truck', name: 'truck', mode: 'truck', limit_kg: 4000, leastFreeboard_m: null },
  ...{ freeboard_m: null, freeboardEmpty_m: null, length_m: null, limitSetBy: null },
};
const longboat = {
  ...{ carrierId: 'longboat', name: 'longboat', mode: 'boat', limit_kg: 1600, leastFreeboard_m: 0.25 },
  ...{ freeboard_m: 0.35, freeboardEmpty_m: 0.55, length_m: 9.6, limitSetBy: 'B. Orrane' },
};

/** Forty litres of fuel for one run by boat, three times as much for three by truck. */
export const haul: TripOnPaper['hauls'][number] = {
  ...{ haulId: 'C1-4-foot', store: 'foot', from: 'port', carrierId: 'longboat', by: 'longboat', carrier: longboat },
  ...{ leaves: '2026-06-05', arrives: '2026-06-06', back: '2026-06-08', trips_count: 1, forTrip: 'C1-4' },
  ...{ kg: 722.1, fuel_L: 40, fuel_kg: 30, loaded_kg: 752.1, limit_kg: 1600, left_kg: 847.9 },
  runs: [{ leaves: '2026-06-05', arrives: '2026-06-06', returns: '2026-06-07', back: '2026-06-08' }],
  legs: [
    leg('port', 'foot', ['2026-06-05', '2026-06-06'], [stretch('river', 'port', 'foot', 9)]),
    leg('foot', 'port', ['2026-06-07', '2026-06-08'], [stretch('river', 'foot', 'port', 11)]),
  ],
};
export const haulByRoad: TripOnPaper['hauls'][number] = {
  ...{ ...haul, haulId: 'C1-4-port', store: 'port', from: 'depot', carrierId: 'truck', by: 'truck', carrier: truck },
  ...{ trips_count: 3, limit_kg: 300, fuel_L: 120, fuel_kg: 90, loaded_kg: 812.1, left_kg: 87.9, back: null },
  runs: [
    { leaves: '2026-06-05', arrives: '2026-06-05', returns: '2026-06-05', back: '2026-06-05' },
    { leaves: '2026-06-05', arrives: '2026-06-05', returns: '2026-06-06', back: '2026-06-06' },
    { leaves: '2026-06-06', arrives: '2026-06-06', returns: null, back: null },
  ],
  legs: [
    leg('depot', 'port', ['2026-06-05', '2026-06-05'], [stretch('road', 'depot', 'port', 2)]),
    leg('port', 'depot', ['2026-06-05', '2026-06-05'], [stretch('road', 'port', 'depot', 2)]),
    leg('depot', 'port', ['2026-06-05', '2026-06-05'], [stretch('road', 'depot', 'port', 2)]),
    leg('port', 'depot', ['2026-06-06', '2026-06-06'], [stretch('road', 'port', 'depot', 2)]),
    leg('depot', 'port', ['2026-06-06', '2026-06-06'], [stretch('road', 'depot', 'port', 2)]),
  ],
};

/** A trip of three stops; `limit_kg` and freeboards are stated. */
export const trip: TripOnPaper = {
  ...{ programme: 'Lumevara Rivers', plan: 'after the rains', crew_kg: 360, fuel_kg: 82 },
  crew: {
    ...{ crewId: 'C1', name: 'Crew one', people: 4, base: 'foot', store: 'foot', goesBy: 'longboat', from: null },
  },
  trip: {
    ...{ tripId: 'C1-4', state: 'planned', order: 4, notBefore: null, isLocked: false },
    ...{ leaves: '2026-06-10', back: '2026-06-22', nights_count: 12, waitsFor: 'nothing', waited_days: 0 },
    ...{
      kg: 731,
      loaded_kg: 813,
      litres: 9000,
      cost: 2400,
      fuel_L: 110,
      legs: [],
      broken: [],
      isTight: false,
      tightSaid: null,
      overdueSaid: null,
    },
    ...{ isOverdue: false, said: 'a trip' },
    stops: [
      stop('S3', 'Pellanta', 90, ['2026-06-11', '2026-06-14', '2026-06-16']),
      stop('S2', 'Ruvela', 144, ['2026-06-15', '2026-06-17', '2026-06-19']),
      stop('S1', 'Vennaro', 71, ['2026-06-18', '2026-06-20', '2026-06-22']),
    ],
  },
  legs,
  aboard: [
    ...each('S1'),
    ...each('S2'),
    part('S2', 'cement, 25 kg', 4, 25, 0.6),
    ...each('S3'),
    part('S3', 'tank 12,000 L in four shells', 4, 58, 2.6),
    part('S3', 'pipe 110 mm, 6 m', 1, 11.5, 6),
    part('S3', 'chlorine, drum', 1, 12, 0.5, 'chlorine'),
  ],
  carriers: [truck, longboat],
  hauls: [],
  cautions: [],
  days: [
    { day: '2026-06-10', said: [], sleeps: 'landing', siteIds: [] },
    { day: '2026-06-11', said: [], sleeps: 'S3', siteIds: ['S3'] },
  ],
  places: [
    { placeId: 'foot', name: 'Tavilo Foot' },
    { placeId: 'landing', name: 'Tavilo landing' },
  ],
};

/** The same on a road alone. */
export const roadTrip: TripOnPaper = {
  ...trip,
  legs: [
    leg('foot', 'S3', ['2026-06-10', '2026-06-11'], [stretch('road', 'foot', 'S3', 2.5)]),
    leg('S3', 'foot', ['2026-06-21', '2026-06-22'], [stretch('road', 'S3', 'foot', 2.5)]),
  ],
  carriers: trip.carriers.slice(0, 1),
};

export const options: PaperOptions = { printedOn: '2026-06-09', printedAt: '17:20' };
