import type { GeoPosition } from '@eavewell/engine';
import { Link } from '@tanstack/react-router';
import { lazy, type ReactNode, Suspense, useDeferredValue, useId, useMemo, useRef, useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Frame, Near, SitePoint } from './frame.ts';
import { MapButtons } from './MapButtons.tsx';
import { MapSheet } from './MapSheet.tsx';
import { MapWords } from './MapWords.tsx';
import { mapNames, type PointLabel } from './mapNames.ts';
import type { MapSites } from './mapSites.ts';
import { siteAt } from './marks.ts';
import { NorthAndScale } from './NorthAndScale.tsx';
import type { Plane, PlanePoint } from './plane.ts';
import type { TileFault } from './TileSheet.tsx';
import { useFrame } from './useFrame.ts';
import type { MapFile } from './useMapFiles.ts';
import { useMapMoves } from './useMapMoves.ts';
import { useMapRows } from './useMapRows.ts';
import { useMapView } from './useMapView.ts';
import { useMarks } from './useMarks.ts';
import { useOutline } from './useOutline.ts';
import { useSize } from './useSize.ts';
import { useSteps } from './useSteps.ts';
import type { MapGround } from './ways.ts';
import './map.css';

/** What the map is given. */
export interface SitesMapProps {
  readonly programmeId: string;
  /** All sites that are to be seen, those that need her most first. */
  readonly sites: MapSites;
  /** Keys of those the list shows now: larger marks, and names. Where it is not given, the first twelve. */
  readonly listed?: readonly string[];
  readonly selected: string | null;
  /** Called when a site is pressed; the list brings its row into view. */
  onSelect(key: string): void;
  /** On a page of its own it takes the page's height, and fingers move it instead of the page. */
  readonly isWhole?: boolean;
  /** What is drawn and told instead of verdicts. */
  readonly own?: OwnMap;
  /** A map file that lies under the sites; null or not given: the outlines the program carries. */
  readonly tiles?: MapFile | null;
}

/** Where things fall in the picture. */
export interface MapOn {
  readonly plane: Plane;
  /** The sites with a place on the map. */
  readonly near: Near;
  /** Where a point of the plane falls [px]. */
  at(point: PlanePoint): PlanePoint;
}

/** A map that shows something else of the sites than their verdicts. */
export interface OwnMap {
  readonly title: string;
  readonly ground: MapGround;
  /** Words at places, most wanted first. */
  readonly labels: readonly (Omit<PointLabel, 'point'> & GeoPosition)[];
  /** What is said of a site the keys are at. */
  tell(key: string, place: number, count: number): string;
  /** What is drawn over land, ways and places, as parts of an SVG picture. */
  draw(on: MapOn): ReactNode;
}

/** Beside the list its own field finds a site. */
const FindSite = lazy(() => import('./FindSite.tsx').then((loaded) => ({ default: loaded.FindSite })));

/** A large piece that only a map file needs. */
const TileSheet = lazy(() => import('./TileSheet.tsx').then((loaded) => ({ default: loaded.TileSheet })));

/** Sites named where the list does not say which it shows, and names at most, beside the list and on a page. Ours. */
const [first, fewNames, manyNames] = [12, 14, 40] as const;
/** A press means the site within this distance [px]: half of what a fingertip covers. Ours. */
const within = 22;

/** The sites where they lie, drawn from what the program carries: no network is asked. */
export function SitesMap(props: SitesMapProps) {
  const { say } = useLanguage();
  const laid = props.tiles ? 'mercator' : 'stereographic';
  const frame = useFrame(props.programmeId, props.sites, laid);
  if (frame === 'laying') return <div className="map-to-come" />;
  if (frame === null) return props.sites.count === 0 ? null : <p className="small">{say('map.none_placed')}</p>;
  return <Drawn key={props.tiles?.file ?? ''} {...props} frame={frame} />;
}

function Drawn({ frame, ...props }: SitesMapProps & { readonly frame: Frame }) {
  const { say } = useLanguage();
  const { onSelect, isWhole = false, tiles = null } = props;
  const map = useMap(frame, props);
  const outline = useOutline(frame.plane, frame.box);
  const [tileFault, setTileFault] = useState<TileFault | null>(null);
  const found = (key: string) => {
    const site = frame.near.at(frame.near.indexOf(key));
    if (site) map.seen.show(site.point);
    onSelect(key);
  };
  const { ways, places } = map;
  return (
    <section className={isWhole ? 'sites-map whole' : 'sites-map'} aria-label={props.own?.title ?? say('map.title')}>
      <MapFrame frame={frame} map={map} tell={props.own?.tell}>
        {map.size && (
          <div ref={map.sheet} className="map-sheets">
            {tiles && tileFault !== 'all' && (
              <Suspense fallback={null}>
                <TileSheet
                  map={tiles}
                  view={map.seen.view}
                  size={map.size}
                  plane={frame.plane}
                  onFault={(what) => setTileFault((known) => (known === 'all' ? known : what))}
                />
              </Suspense>
            )}
            <MapSheet
              {...{ ...map, size: map.size, view: map.seen.view }}
              outline={tiles || typeof outline === 'string' ? null : outline}
            >
              {props.own?.draw({ ...frame, at: map.seen.at })}
            </MapSheet>
          </div>
        )}
      </MapFrame>
      {isWhole ? (
        <Suspense fallback={null}>
          <FindSite sites={props.sites} onFound={found} />
        </Suspense>
      ) : props.own ? null : (
        <p className="small on-screen to-whole">
          <Link to="/p/$programmeId/map" params={{ programmeId: props.programmeId }}>
            {say('map.whole')}
          </Link>
        </p>
      )}
      <MapWords {...{ frame, ways, places, outline, onSelect, tiles, tileFault }} underCount={map.drawn.underCount} />
    </section>
  );
}

/** The picture with its keys, its buttons, and what is told of the site the keys are at. */
function MapFrame({
  frame,
  map,
  tell,
  children,
}: {
  readonly frame: Frame;
  readonly map: UsedMap;
  readonly tell: OwnMap['tell'] | undefined;
  readonly children: ReactNode;
}) {
  const { say } = useLanguage();
  const help = useId();
  const count = frame.near.count;
  const { element, hand, steps, seen, size, told } = map;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields; this is a picture with keys of its own
    <div
      ref={element}
      className={told === null ? 'map-frame' : 'map-frame on-site'}
      role="group"
      aria-label={say('map.picture', { count })}
      aria-describedby={help}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys of the map act on what has the focus
      tabIndex={0}
      onKeyDown={steps.onKeyDown}
      {...hand}
    >
      {children}
      {size && <NorthAndScale view={seen.view} plane={frame.plane} wide={size.wide} />}
      <MapButtons seen={seen} />
      <p className="said-only" id={help}>
        {say('map.keys')}
      </p>
      <p className="said-only" role="status">
        {steps.told &&
          (tell?.(steps.told.key, steps.place + 1, count) ??
            say('map.told', { name: steps.told.name, verdict: steps.told.verdict, place: steps.place + 1, count }))}
      </p>
    </div>
  );
}

type UsedMap = ReturnType<typeof useMap>;

/** What is seen of the map, what is drawn in it, and what hands and keys do to it. */
function useMap(frame: Frame, { programmeId, sites, listed, selected, isWhole = false, own, onSelect }: SitesMapProps) {
  const [element, sheet] = [useRef<HTMLDivElement>(null), useRef<HTMLDivElement>(null)];
  const { ways, places, isRead } = useMapRows(programmeId, frame.plane, own?.ground);
  const laidOut = useSize(element);
  // Places move what is seen: marks are not made twice.
  const size = isRead ? laidOut : null;
  const points = useMemo(() => places.map(({ point }) => point), [places]);
  const seen = useMapView(frame, points, size);
  const { view } = seen;
  const steps = useSteps(frame.near, seen, onSelect);
  const [pointedKey, setPointed] = useState<string | null>(null);
  const pointed = usePoint(frame, pointedKey);
  const find = (at: PlanePoint) => (size ? siteAt(frame.near, view, size, at, within) : null);
  const hand = useMapMoves(element, sheet, {
    move: seen.move,
    zoom: seen.zoom,
    press: (at) => {
      const site = find(at);
      if (site) onSelect(site.key);
    },
    point: (at) => setPointed((at && find(at)?.key) ?? null),
  });
  const large = useMemo(() => {
    const places = listed?.map((key) => sites.placeOf(key)) ?? Array.from({ length: first }, (_, place) => place);
    return new Set(places);
  }, [listed, sites]);
  const drawn = useMarks(own ? null : frame.near, large, view, size);
  const chosen = usePoint(frame, selected);
  const told = steps.told ?? pointed;
  const most = isWhole ? manyNames : fewNames;
  // Letters are measured when the marks stand.
  const labels = useMemo(() => labelsOn(frame.plane, own?.labels ?? []), [frame.plane, own?.labels]);
  const isLettered = useDeferredValue(drawn.marks.length > 0 || drawn.specks !== '' || own !== undefined, false);
  const names = useMemo(() => {
    if (!size || !isLettered) return [];
    const named = new Map([steps.told, pointed, chosen].flatMap((site) => (site === null ? [] : [[site.key, site]])));
    return mapNames({ drawn, named: [...named.values()], labels, places, ways, most }, view, size);
  }, [size, isLettered, steps.told, pointed, chosen, drawn, labels, places, ways, most, view]);
  return { element, sheet, size, ways, places, seen, steps, hand, drawn, names, selected: chosen, told };
}

/** The site with a key, where it is in the picture: the same thing as long as both are. */
const usePoint = ({ near }: Frame, key: string | null): SitePoint | null =>
  useMemo(() => (key === null ? null : near.at(near.indexOf(key))), [near, key]);

const labelsOn = (plane: Plane, labels: OwnMap['labels']): readonly PointLabel[] =>
  labels.flatMap(({ latitude_deg, longitude_deg, ...label }) => {
    const point = plane.at({ latitude_deg, longitude_deg });
    return point ? [{ ...label, point }] : [];
  });
