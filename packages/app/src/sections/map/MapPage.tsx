import { useSuspenseQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import type { MapSite } from './frame.ts';
import { SitesMap } from './SitesMap.tsx';
import { degreesOf } from './useMapRows.ts';

/** What needs her comes first. */
const order = ['short', 'unknown', 'tight', 'notJudged', 'holds'] as const;

/** The map on a page of its own, with what is chosen said under its name. */
export function MapPage() {
  const { say, numbers } = useLanguage();
  const { programmeId } = useParams({ from: '/p/$programmeId/map' });
  const { data } = useSuspenseQuery(queries.sites(programmeId));
  const [selected, setSelected] = useState<string | null>(null);
  const sites = useMemo(
    () =>
      data.sites
        .map(({ key, cells, design }): MapSite & { readonly finding: string } => ({
          key,
          name: cells['name'] ?? key,
          latitude_deg: degreesOf(cells['latitude_deg'] ?? '', numbers.parse),
          longitude_deg: degreesOf(cells['longitude_deg'] ?? '', numbers.parse),
          verdict: design?.verdict ?? 'notJudged',
          finding: design?.finding ?? '',
        }))
        .sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict)),
    [data, numbers],
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
      <SitesMap programmeId={programmeId} sites={sites} selected={selected} onSelect={setSelected} isWhole />
    </div>
  );
}
