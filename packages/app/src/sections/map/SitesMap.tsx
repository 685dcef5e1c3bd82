import { useId, useMemo, useRef, useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { FindSite } from './FindSite.tsx';
import { type Frame, frameOf, type MapSite, type SitePoint } from './frame.ts';
import { MapButtons } from './MapButtons.tsx';
import { MapSheet } from './MapSheet.tsx';
import { MapWords } from './MapWords.tsx';
import { mapNames } from './mapNames.ts';
import { marksOf, siteAt } from './marks.ts';
import { NorthAndScale } from './NorthAndScale.tsx';
import { useMapMoves } from './useMapMoves.ts';
import { useMapRows } from './useMapRows.ts';
import { useMapView } from './useMapView.ts';
import { useOutline } from './useOutline.ts';
import { useSize } from './useSize.ts';
import { useSteps } from './useSteps.ts';
import './map.css';

/** What the map is given. */
export interface SitesMapProps {
  readonly programmeId: string;
  /** All sites that are to be seen, those that need her most first. */
  readonly sites: readonly MapSite[];
  /** Keys of those the list shows now: larger marks, and names. Where it is not given, the first twelve. */
  readonly listed?: readonly string[];
  readonly selected: string | null;
  /** Called when a site is pressed; the list brings its row into view. */
  onSelect(key: string): void;
  /** On a page of its own it takes the page's height, and fingers move it instead of the page. */
  readonly isWhole?: boolean;
}

/** Sites named where the list does not say which it shows, and names at most, beside the list and on a page. Ours. */
const [first, fewNames, manyNames] = [12, 14, 40] as const;
/** A press means the site within this distance [px]: half of what a fingertip covers. Ours. */
const within = 22;

/** The sites where they lie, drawn from what the program carries: no network is asked. */
export function SitesMap(props: SitesMapProps) {
  const { say } = useLanguage();
  const frame = useMemo(() => frameOf(props.sites), [props.sites]);
  if (frame === null) return props.sites.length === 0 ? null : <p className="small">{say('map.none_placed')}</p>;
  return <Drawn {...props} frame={frame} />;
}

function Drawn({ frame, ...props }: SitesMapProps & { readonly frame: Frame }) {
  const { say } = useLanguage();
  const { selected, onSelect, isWhole = false } = props;
  const [element, sheet, help] = [useRef<HTMLDivElement>(null), useRef<SVGSVGElement>(null), useId()];
  const size = useSize(element);
  const { ways, places } = useMapRows(props.programmeId, frame.plane);
  const points = useMemo(() => places.map(({ point }) => point), [places]);
  const seen = useMapView(frame, points, size);
  const outline = useOutline(frame.plane, frame.box);
  const steps = useSteps(frame.near, seen, onSelect);
  const [pointed, setPointed] = useState<SitePoint | null>(null);
  const { view } = seen;
  const find = (at: readonly [number, number]) => (size ? siteAt(frame.near, view, size, at, within) : null);
  const hand = useMapMoves(element, sheet, {
    move: seen.move,
    zoom: seen.zoom,
    press: (at) => {
      const site = find(at);
      if (site) onSelect(site.key);
    },
    point: (at) => setPointed(at && find(at)),
  });
  const listed = useMemo(
    () => new Set(props.listed ?? props.sites.slice(0, first).map(({ key }) => key)),
    [props.listed, props.sites],
  );
  const drawn = useMemo(() => size && marksOf(frame.near, listed, view, size), [frame, listed, view, size]);
  const chosen = frame.near.find(({ key }) => key === selected) ?? null;
  const named = [...new Set([steps.told, pointed, chosen].filter((site) => site !== null))];
  const names =
    drawn && size ? mapNames({ drawn, named, places, ways, most: isWhole ? manyNames : fewNames }, view, size) : [];
  return (
    <section className={isWhole ? 'sites-map whole' : 'sites-map'} aria-label={say('map.title')}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields; this is a picture with keys of its own */}
      <div
        ref={element}
        className={pointed ? 'map-frame on-site' : 'map-frame'}
        role="group"
        aria-label={say('map.picture', { count: frame.near.length })}
        aria-describedby={help}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys of the map act on what has the focus
        tabIndex={0}
        onKeyDown={steps.onKeyDown}
        {...hand}
      >
        {size && drawn && (
          <MapSheet
            sheet={sheet}
            {...{ view, size, ways, places, drawn, names, selected: chosen, told: steps.told ?? pointed }}
            outline={typeof outline === 'string' ? null : outline}
          />
        )}
        {size && <NorthAndScale view={view} plane={frame.plane} wide={size.wide} />}
        <MapButtons seen={seen} />
        <p className="said-only" id={help}>
          {say('map.keys')}
        </p>
        <p className="said-only" role="status">
          {steps.told && say('map.told', { ...saidOf(steps.told), place: steps.place + 1, count: frame.near.length })}
        </p>
      </div>
      {isWhole && (
        <FindSite
          sites={props.sites}
          onFound={(key) => {
            const site = frame.near.find((one) => one.key === key);
            if (site) seen.show(site.point);
            onSelect(key);
          }}
        />
      )}
      <MapWords {...{ frame, ways, places, outline, onSelect }} underCount={drawn?.underCount ?? 0} />
    </section>
  );
}

const saidOf = ({ name, verdict }: SitePoint) => ({ name, verdict });
