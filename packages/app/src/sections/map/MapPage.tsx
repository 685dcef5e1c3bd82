import { useSuspenseQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { overviewQuery } from '../sites/overviewQuery.ts';
import { MapFiles } from './MapFiles.tsx';
import { SitesMap } from './SitesMap.tsx';
import { useMapFiles } from './useMapFiles.ts';

/** The map on a page of its own, with what is chosen said under its name. */
export function MapPage() {
  const { say, code } = useLanguage();
  const { programmeId } = useParams({ from: '/p/$programmeId/map' });
  const { data: overview } = useSuspenseQuery(overviewQuery(programmeId, code, false));
  const maps = useMapFiles();
  const [selected, setSelected] = useState<string | null>(null);
  const place = selected === null ? -1 : overview.placeOf(selected);
  const chosen = overview.siteAt(place);
  const verdict = chosen?.verdict ?? 'notJudged';
  return (
    <div className="map-page">
      <h1>{say('map.title')}</h1>
      <p className="map-chosen" role="status">
        {chosen ? (
          <>
            <VerdictMark verdict={verdict} /> <b>{overview.nameAt(place)}</b>{' '}
            <span className={`w-${verdict}`}>{say('map.verdict', { verdict })}</span> {chosen.finding}
          </>
        ) : (
          say('map.choose')
        )}
      </p>
      <SitesMap
        programmeId={programmeId}
        sites={overview.map}
        selected={selected}
        onSelect={setSelected}
        isWhole
        tiles={maps.chosen}
      />
      <MapFiles maps={maps} />
    </div>
  );
}
