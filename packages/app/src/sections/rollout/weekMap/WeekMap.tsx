import type { RolloutSheet } from '@eavewell/tables';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useCallback, useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { type MapOn, type MapSites, mapVerdicts, type OwnMap, SitesMap } from '../../map/index.ts';
import type { Overview } from '../../sites/index.ts';
import { useAllSites } from '../finding/useVillages.ts';
import { rolloutAskedOf } from '../rolloutAsked.ts';
import { PlacesNamed } from './PlacesNamed.tsx';
import { useDayForms } from './useDayForms.ts';
import { useWeek } from './useWeek.ts';
import { WeekChooser } from './WeekChooser.tsx';
import { WeekLayer } from './WeekLayer.tsx';
import { WeekWords } from './WeekWords.tsx';
import { weekHappens } from './weekHappens.ts';
import { positionsOf, wayLines, waysKnown } from './weekLines.ts';
import { type WeekPicture, weekLabels, weekPicture } from './weekPicture.ts';
import type { Week } from './weeks.ts';
import './weekMap.css';

const from = '/p/$programmeId/rollout';

/** One week: what happens, in sentences, and ways and trips on a map. */
export function WeekMap({ sheet, programmeId }: { readonly sheet: RolloutSheet; readonly programmeId: string }) {
  const { say, numbers } = useLanguage();
  const { plan, site } = useSearch({ from });
  const chosen = useWeek(sheet);
  const { week } = chosen;
  const happens = useMemo(() => (week === null ? null : weekHappens(sheet, week)), [sheet, week]);
  if (week === null || happens === null) return null;
  return (
    <section className="week-map" id="week-map" aria-labelledby="week-map-head">
      <h2 id="week-map-head" aria-live="polite">
        {say('rolloutMap.title', { day: numbers.date(week.from) })}
      </h2>
      <WeekChooser chosen={chosen} />
      <div className="week-sheet">
        <WeekWords {...{ sheet, happens, week, programmeId, plan, site }} />
        <OnMap {...{ sheet, programmeId, week, happens }} />
      </div>
    </section>
  );
}

interface OnMapAsked {
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
  readonly week: Week;
  readonly happens: ReturnType<typeof weekHappens>;
}

const noLabels: OwnMap['labels'] = [];
const nothing: WeekPicture = { closed: [], trips: [], isServed: () => false, worked: new Set() };

// long: what a map is given, made step by step
function OnMap({ sheet, programmeId, week, happens }: OnMapAsked) {
  const { say } = useLanguage();
  const { site = null } = useSearch({ from });
  const navigate = useNavigate({ from });
  const days = useDayForms();
  const all = useAllSites(programmeId);
  const sites = useMemo(() => (all === undefined || all.count === 0 ? null : mapSites(sheet, all)), [sheet, all]);
  const ground = useMemo(() => {
    const positionOf = positionsOf(sheet, sites);
    const lines = wayLines(sheet, positionOf);
    const named = namedWays(sheet, lines, sites);
    return { positionOf, lines, ways: waysKnown(sheet, lines), own: { ways: named, places: placesOf(sheet) } };
  }, [sheet, sites]);
  const asked = useMemo(() => ({ sheet, week, happens, ...ground }), [sheet, week, happens, ground]);
  const picture = useMemo(() => (sites === null ? nothing : weekPicture(asked)), [asked, sites]);
  const labels = useMemo(
    () =>
      sites === null
        ? noLabels
        : weekLabels(asked, {
            village: (name, day) => say('rolloutMap.label', { name, day: days.inWeek(day) }),
            kind: (kind) => say('rolloutMap.kind', { kind }),
          }),
    [asked, sites, say, days],
  );
  const select = useCallback(
    (siteId: string) =>
      void navigate({ to: '.', search: (before) => rolloutAskedOf({ ...before, site: siteId }), resetScroll: false }),
    [navigate],
  );
  const own: OwnMap = {
    title: say('rolloutMap.map'),
    ground: ground.own,
    labels,
    tell: (key, place, count) =>
      say('rolloutMap.told', {
        ...{ name: nameIn(sites, key) ?? key, place, count },
        drinks: picture.isServed(key) ? 'yes' : 'no',
      }),
    draw: (on: MapOn) => <WeekLayer picture={picture} on={on} />,
  };
  if (sites === null) return all === undefined ? <p className="small">{say('rolloutMap.reading')}</p> : null;
  return (
    <div className="week-picture">
      <SitesMap programmeId={programmeId} sites={sites} selected={site} onSelect={select} own={own} />
      <p className="small">{say('rolloutMap.lines')}</p>
      <PlacesNamed places={sheet.places} />
    </div>
  );
}

/** Ways whose name is more than those of their ends, which are lettered already. */
function namedWays(
  { ways, places }: RolloutSheet,
  lines: OwnMap['ground']['ways'],
  sites: MapSites | null,
): OwnMap['ground']['ways'] {
  const names = new Map(places.map(({ placeId, name }) => [placeId, name]));
  const ends = new Map(
    ways.map(({ wayId, from, to }) => [wayId, [from, to].map((id) => names.get(id) ?? nameIn(sites, id) ?? id)]),
  );
  return lines.map((line) => {
    const isOfEnds = ends.get(line.key)?.every((end) => line.name?.includes(end));
    return isOfEnds ? { ...line, name: null } : line;
  });
}

/** After every day there is. */
const last = '9999';

/** What a site is called; null where it is none. */
function nameIn(sites: MapSites | null, key: string): string | null {
  const place = sites?.placeOf(key) ?? -1;
  return sites === null || place < 0 ? null : sites.nameAt(place);
}

/** All sites for the map, in the order in which people drink; those of no trip last. */
function mapSites(sheet: RolloutSheet, { count, map }: Overview): MapSites {
  const served = new Array<string>(count).fill(last);
  for (const { trips } of sheet.crews)
    for (const { stops } of trips)
      for (const stop of stops) {
        const place = map.placeOf(stop.siteId);
        if (place >= 0) served[place] = stop.served ?? last;
      }
  const places = Uint32Array.from({ length: count }, (_, place) => place);
  places.sort((a, b) => served[a]!.localeCompare(served[b]!) || a - b);
  const placeIn = new Uint32Array(count);
  for (const [i, place] of places.entries()) placeIn[place] = i;
  return {
    count,
    latitude_deg: Float64Array.from(places, (place) => map.latitude_deg[place]!),
    longitude_deg: Float64Array.from(places, (place) => map.longitude_deg[place]!),
    verdict: new Uint8Array(count).fill(mapVerdicts.indexOf('notJudged')),
    keyAt: (i) => map.keyAt(places[i]!),
    nameAt: (i) => map.nameAt(places[i]!),
    placeOf: (key) => {
      const place = map.placeOf(key);
      return place < 0 ? -1 : placeIn[place]!;
    },
  };
}

const placesOf = ({ places }: RolloutSheet): OwnMap['ground']['places'] =>
  places.flatMap(({ placeId, name, kind, latitude_deg, longitude_deg }) =>
    latitude_deg === null || longitude_deg === null ? [] : [{ key: placeId, name, kind, latitude_deg, longitude_deg }],
  );
