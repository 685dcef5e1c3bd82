import type { GeoPosition } from '@eavewell/engine';
import type { RolloutSheet, SheetTrip } from '@eavewell/tables';
import type { OwnMap, WayLine } from '../../map/index.ts';
import { servedBy, type WeekHappens } from './weekHappens.ts';
import { type LegLine, middleOf, type PositionOf, tripLines, type WaysKnown } from './weekLines.ts';
import type { Week } from './weeks.ts';

/** What is the matter with a way; unsure: the last day of it was a guess, and is over. */
export type Kind = RolloutSheet['strips'][number]['spans'][number]['kind'] | 'unsure';

/** What is drawn of a week over ways and places. */
export interface WeekPicture {
  readonly closed: readonly { readonly key: string; readonly kind: Kind; readonly line: readonly GeoPosition[] }[];
  readonly trips: readonly {
    readonly key: string;
    readonly state: SheetTrip['state'];
    /** The place of its crew among those that are out: lines of crews lie beside each other. */
    readonly place: number;
    readonly lines: readonly LegLine[];
  }[];
  isServed(siteId: string): boolean;
  /** Sites a crew works at in the week. */
  readonly worked: ReadonlySet<string>;
}

/** What a picture of a week is made from. */
export interface PictureAsked {
  readonly sheet: RolloutSheet;
  readonly week: Week;
  readonly happens: WeekHappens;
  readonly lines: readonly WayLine[];
  readonly ways: WaysKnown;
  readonly positionOf: PositionOf;
}

/** What is drawn of a week: ways that are closed, the way of each trip that is out, which villages drink. */
export function weekPicture({ sheet, week, happens, lines, ways, positionOf }: PictureAsked): WeekPicture {
  const kindOf = new Map<string, Kind>();
  // Those that cannot be gone stand first, and stay.
  for (const one of happens.closed)
    for (const wayId of one.strip.wayIds) if (!kindOf.has(wayId)) kindOf.set(wayId, kindIn(one));
  return {
    closed: lines.flatMap(({ key, pieces }) => {
      const kind = kindOf.get(key);
      return kind === undefined ? [] : pieces.map((line) => ({ key, kind, line }));
    }),
    trips: happens.crews.flatMap(({ trips }, place) =>
      trips.map((trip) => ({
        ...{ key: trip.tripId, state: trip.state, place },
        lines: tripLines(trip, ways, positionOf, week),
      })),
    ),
    isServed: servedBy(sheet, week),
    worked: new Set(happens.crews.flatMap(({ events }) => events.flatMap(({ stop }) => stop?.siteId ?? []))),
  };
}

const kindIn = ({ span, isUnsure }: WeekHappens['closed'][number]): Kind =>
  isUnsure && span.kind !== 'slower' ? 'unsure' : span.kind;

/** How the words on the map are said. */
export interface LabelWords {
  /** A village with the day work begins. */
  village(name: string, day: string): string;
  kind(kind: Kind): string;
}

/** What is lettered on the map of a week: villages with their days, crews along their ways, what is the matter with ways. */
export function weekLabels(
  { happens, lines, week, ways, positionOf }: PictureAsked,
  words: LabelWords,
): OwnMap['labels'] {
  const at = (key: string, text: string, position: GeoPosition | undefined) =>
    position === undefined ? [] : [{ key, text, ...position }];
  const villages = happens.crews.flatMap(({ crew, events }) =>
    events.flatMap(({ stop, from }) =>
      stop === null
        ? []
        : at(`village ${crew.crewId} ${stop.siteId}`, words.village(stop.name, from), positionOf(stop.siteId)).map(
            (label) => ({ ...label, site: stop.siteId }),
          ),
    ),
  );
  const crews = happens.crews.flatMap(({ crew, trips }) => {
    const legs = trips.flatMap((trip) => tripLines(trip, ways, positionOf, week));
    const leg = legs.find(({ isOfWeek }) => isOfWeek) ?? legs[0];
    return leg === undefined ? [] : at(`crew ${crew.crewId}`, crew.name, middleOf(leg.line));
  });
  const closed = happens.closed.flatMap((one) => {
    const kind = kindIn(one);
    if (kind === 'slower') return [];
    const { strip } = one;
    const line = lines.find(({ key }) => key === strip.wayIds[0])?.pieces[0] ?? [];
    return at(`way ${strip.stripId}`, words.kind(kind), middleOf(line));
  });
  return [...villages, ...crews, ...closed];
}
