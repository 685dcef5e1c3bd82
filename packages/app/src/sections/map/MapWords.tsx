import type { AppMessageKey } from '@eavewell/words/app';
import { memo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { FarSite, Frame, MapSite } from './frame.ts';
import type { Outline } from './outline.ts';
import type { TileFault } from './TileSheet.tsx';
import type { MapFile } from './useMapFiles.ts';
import type { MapPlace, WaysDrawn } from './ways.ts';

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
      <NotShown sites={frame.without} title={say('map.without', { count: frame.without.length })} onSelect={onSelect} />
      <NotShown sites={frame.far} title={say('map.far', { count: frame.far.length })} onSelect={onSelect} />
      <p>{line.join(' ')}</p>
      {ways.without > 0 && <p>{say('map.ways_without', { count: ways.without })}</p>}
      <Beneath {...asked} />
    </div>
  );
});

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
    [near.some(({ verdict }) => verdict === 'holds'), 'map.line_holds'],
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

/** Most names told at once. Ours. */
const most = 200;

interface NotShownAsked {
  readonly sites: readonly (MapSite | FarSite)[];
  readonly title: string;
  onSelect(key: string): void;
}

/** Sites that are not in the picture, each to be chosen. */
function NotShown({ sites, title, onSelect }: NotShownAsked) {
  const { say, numbers } = useLanguage();
  if (sites.length === 0) return null;
  const away = (site: MapSite | FarSite) =>
    'away_km' in site ? ` ${say('map.away', { amount: numbers.fixed(site.away_km, 0) })}` : '';
  return (
    <details>
      <summary>{title}</summary>
      <ul>
        {sites.slice(0, most).map((site) => (
          <li key={site.key}>
            <button type="button" className="press" onClick={() => onSelect(site.key)}>
              {site.name}
            </button>
            {away(site)}
          </li>
        ))}
      </ul>
      {sites.length > most && <p>{say('map.and_more', { count: sites.length - most })}</p>}
    </details>
  );
}
