import type { AppMessageKey } from '@eavewell/words/app';
import { memo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Frame } from './frame.ts';
import { type MapSites, mapVerdicts } from './mapSites.ts';
import type { Outline } from './outline.ts';
import type { TileFault } from './TileSheet.tsx';
import type { MapFile } from './useMapFiles.ts';
import type { MapPlace, WaysDrawn } from './ways.ts';

/** Most names told at once. Ours. */
const most = 200;

interface WordsAsked {
  readonly frame: Frame;
  readonly ways: WaysDrawn;
  readonly places: readonly MapPlace[];
  readonly outline: Outline | 'reading' | 'failed';
  readonly underCount: number;
  readonly tiles: MapFile | null;
  readonly tileFault: TileFault | null;
  onSelect(key: string): void;
}

/** What stands under the map: what its lines mean, whose outlines they are, and which sites it does not show. */
export const MapWords = memo(function MapWords(asked: WordsAsked) {
  const { frame, ways, places, underCount, onSelect } = asked;
  const { say } = useLanguage();
  const line = linesOf(ways, places, frame).map((key) => say(key));
  return (
    <div className="map-words small">
      {underCount > 0 && <p>{say('map.under', { count: underCount })}</p>}
      <NotShown
        sites={frame.near.sites}
        left={Array.from(frame.without.subarray(0, most), (place) => ({ place, away_km: null }))}
        count={frame.without.length}
        title={say('map.without', { count: frame.without.length })}
        onSelect={onSelect}
      />
      <NotShown
        sites={frame.near.sites}
        left={frame.far.slice(0, most)}
        count={frame.far.length}
        title={say('map.far', { count: frame.far.length })}
        onSelect={onSelect}
      />
      <p>{line.join(' ')}</p>
      {ways.without > 0 && <p>{say('map.ways_without', { count: ways.without })}</p>}
      <Beneath {...asked} />
    </div>
  );
});

const holds = mapVerdicts.indexOf('holds');

/** What is to be said of the lines that are there. */
function linesOf(ways: WaysDrawn, places: readonly MapPlace[], { near }: Frame): readonly AppMessageKey[] {
  const has = (kind: MapPlace['kind']) => places.some((place) => place.kind === kind);
  const lines: readonly (readonly [boolean, AppMessageKey])[] = [
    [ways.paths.road !== '', 'map.line_road'],
    [ways.paths.river !== '', 'map.line_river'],
    [ways.paths.foot !== '', 'map.line_foot'],
    [ways.paths.other !== '', 'map.line_other'],
    [has('landing'), 'map.line_landing'],
    [has('store'), 'map.line_store'],
    [has('other'), 'map.line_place'],
    [near.places.some((_, i) => near.verdictAt(i) === holds), 'map.line_holds'],
  ];
  return lines.flatMap(([isThere, key]) => (isThere ? [key] : []));
}

/** Whose outlines or tiles lie under the sites. */
function Beneath({ outline, tiles, tileFault }: WordsAsked) {
  const { say } = useLanguage();
  if (tiles === null) return <p>{say(outlineSaid(outline))}</p>;
  const { file, attribution } = tiles;
  if (tileFault === 'all') return <p>{say('map.tiles_failed', { file })}</p>;
  return (
    <p>
      {say('map.tiles', { file, attribution: attribution ?? 'none' })} {tileFault === 'some' && say('map.tiles_some')}
    </p>
  );
}

function outlineSaid(outline: WordsAsked['outline']): AppMessageKey {
  if (outline === 'reading') return 'map.outline_reading';
  if (outline === 'failed') return 'map.outline_failed';
  return outline.isNear ? 'map.outline' : 'map.outline_none';
}

interface NotShownAsked {
  readonly sites: MapSites;
  /** Places of those that are told, and how far they are off where that is why. */
  readonly left: readonly { readonly place: number; readonly away_km: number | null }[];
  /** All there are. */
  readonly count: number;
  readonly title: string;
  onSelect(key: string): void;
}

/** Sites that are not in the picture, each to be chosen. */
function NotShown({ sites, left, count, title, onSelect }: NotShownAsked) {
  const { say, numbers } = useLanguage();
  if (count === 0) return null;
  return (
    <details>
      <summary>{title}</summary>
      <ul>
        {left.map(({ place, away_km }) => (
          <li key={place}>
            <button type="button" className="press" onClick={() => onSelect(sites.keyAt(place))}>
              {sites.nameAt(place)}
            </button>
            {away_km === null ? '' : ` ${say('map.away', { amount: numbers.fixed(away_km, 0) })}`}
          </li>
        ))}
      </ul>
      {count > left.length && <p>{say('map.and_more', { count: count - left.length })}</p>}
    </details>
  );
}
