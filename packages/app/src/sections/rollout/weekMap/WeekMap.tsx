import type { RolloutSheet } from '@eavewell/tables';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useCallback, useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { type MapOn, type MapSite, type OwnMap, SitesMap } from '../../map/index.ts';
import { useAllSites } from '../finding/useVillages.ts';
import { rolloutAskedOf } from '../rolloutAsked.ts';
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
        <WeekWords {...{ happens, week, programmeId, plan, site }} />
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
  const sites = useMemo(() => mapSites(sheet, all?.sites ?? []), [sheet, all]);
  const ground = useMemo(() => {
    const positionOf = positionsOf(sheet, sites);
    const lines = wayLines(sheet, positionOf);
    const named = namedWays(sheet, lines, sites);
    return { positionOf, lines, ways: waysKnown(sheet, lines), own: { ways: named, places: placesOf(sheet) } };
  }, [sheet, sites]);
  const asked = useMemo(() => ({ sheet, week, happens, ...ground }), [sheet, week, happens, ground]);
  const picture = useMemo(() => (sites.length === 0 ? nothing : weekPicture(asked)), [asked, sites]);
  const labels = useMemo(
    () =>
      sites.length === 0
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
  const names = useMemo(() => new Map(sites.map(({ key, name }) => [key, name])), [sites]);
  const own: OwnMap = {
    title: say('rolloutMap.map'),
    ground: ground.own,
    labels,
    tell: (key, place, count) =>
      say('rolloutMap.told', {
        ...{ name: names.get(key) ?? key, place, count },
        drinks: picture.isServed(key) ? 'yes' : 'no',
      }),
    draw: (on: MapOn) => <WeekLayer picture={picture} on={on} />,
  };
  if (sites.length === 0) return all === undefined ? <p className="small">{say('rolloutMap.reading')}</p> : null;
  return (
    <div className="week-picture">
      <SitesMap programmeId={programmeId} sites={sites} selected={site} onSelect={select} own={own} />
      <p className="small">{say('rolloutMap.lines')}</p>
    </div>
  );
}

/** Ways whose name is more than those of their ends, which are lettered already. */
function namedWays(
  { ways, places }: RolloutSheet,
  lines: OwnMap['ground']['ways'],
  sites: readonly MapSite[],
): OwnMap['ground']['ways'] {
  const names = new Map([
    ...sites.map(({ key, name }) => [key, name] as const),
    ...places.map(({ placeId, name }) => [placeId, name] as const),
  ]);
  const ends = new Map(ways.map(({ wayId, from, to }) => [wayId, [from, to].map((id) => names.get(id) ?? id)]));
  return lines.map((line) => {
    const isOfEnds = ends.get(line.key)?.every((end) => line.name?.includes(end));
    return isOfEnds ? { ...line, name: null } : line;
  });
}

/** After every day there is. */
const last = '9999';

/** All sites for the map, in the order in which people drink; those of no trip last. */
function mapSites(
  sheet: RolloutSheet,
  all: readonly {
    readonly key: string;
    readonly siteId: string | null;
    readonly name: string | null;
    readonly latitude_deg: number | null;
    readonly longitude_deg: number | null;
  }[],
): readonly MapSite[] {
  const served = new Map(
    sheet.crews.flatMap(({ trips }) =>
      trips.flatMap(({ stops }) => stops.map((stop) => [stop.siteId, stop.served ?? last])),
    ),
  );
  const dayOf = ({ key }: MapSite) => served.get(key) ?? last;
  return all
    .map(
      ({ key, siteId, name, latitude_deg, longitude_deg }): MapSite => ({
        ...{ key: siteId ?? key, latitude_deg, longitude_deg, verdict: 'notJudged' },
        name: name ?? siteId ?? key,
      }),
    )
    .sort((a, b) => dayOf(a).localeCompare(dayOf(b)));
}

const placesOf = ({ places }: RolloutSheet): OwnMap['ground']['places'] =>
  places.flatMap(({ placeId, name, kind, latitude_deg, longitude_deg }) =>
    latitude_deg === null || longitude_deg === null ? [] : [{ key: placeId, name, kind, latitude_deg, longitude_deg }],
  );
