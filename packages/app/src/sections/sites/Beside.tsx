import { Link } from '@tanstack/react-router';
import { memo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { SitesMap, type SitesMapProps } from '../map/index.ts';
import { MendingTable } from './MendingTable.tsx';
import type { OverviewHead } from './overview.ts';

/** Beside the list: the map, and what would mend them all. */
export const Beside = memo(function Beside({
  remedies,
  ...map
}: SitesMapProps & { readonly remedies: OverviewHead['remedies'] }) {
  return (
    <aside className="sites-right">
      <SitesMap {...map} />
      {remedies === null ? null : <MendingTable remedies={remedies} />}
    </aside>
  );
});

/** Where there is no room beside the list: what would mend them all is opened where it is wanted, and the map is a page of its own. */
export const BeforeList = memo(function BeforeList({
  programmeId,
  remedies,
}: {
  readonly programmeId: string;
  readonly remedies: OverviewHead['remedies'];
}) {
  const { say } = useLanguage();
  return (
    <div className="before-list">
      {remedies === null || remedies.looked.sites === 0 ? null : (
        <details>
          <summary>{say('sites.mend_table', { count: remedies.looked.sites })}</summary>
          <MendingTable remedies={remedies} />
        </details>
      )}
      <Link to="/p/$programmeId/map" params={{ programmeId }}>
        {say('sites.on_map')}
      </Link>
    </div>
  );
});
