import { useSuspenseQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { MapFiles } from './MapFiles.tsx';
import { SitesMap } from './SitesMap.tsx';
import { useMapFiles } from './useMapFiles.ts';

/** The map on a page of its own, with what is chosen said under its name. */
export function MapPage() {
  const { say } = useLanguage();
  const { programmeId } = useParams({ from: '/p/$programmeId/map' });
  const { data } = useSuspenseQuery(queries.overview(programmeId));
  const maps = useMapFiles();
  const [selected, setSelected] = useState<string | null>(null);
  const sites = useMemo(
    () =>
      data.sites.map(({ key, siteId, name, latitude_deg, longitude_deg, verdict, finding }) => ({
        ...{ key, latitude_deg, longitude_deg, finding },
        name: name ?? siteId ?? key,
        verdict: verdict ?? ('notJudged' as const),
      })),
    [data],
  );
  const chosen = sites.find(({ key }) => key === selected);
  return (
    <div className="map-page">
      <h1>{say('map.title')}</h1>
      <p className="map-chosen" role="status">
        {chosen ? (
          <>
            <VerdictMark verdict={chosen.verdict} /> <b>{chosen.name}</b>{' '}
            <span className={`w-${chosen.verdict}`}>{say('map.verdict', { verdict: chosen.verdict })}</span>{' '}
            {chosen.finding}
          </>
        ) : (
          say('map.choose')
        )}
      </p>
      <SitesMap
        programmeId={programmeId}
        sites={sites}
        selected={selected}
        onSelect={setSelected}
        isWhole
        tiles={maps.chosen}
      />
      <MapFiles maps={maps} />
    </div>
  );
}
