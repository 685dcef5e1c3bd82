import { Link } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Overview, SiteEntry } from '../sites/index.ts';
import { standings } from '../sites/index.ts';

/** Back to the list, and the sites before and after among those that need her, in its order. */
export function Among({
  programmeId,
  overview,
  siteKey,
}: {
  readonly programmeId: string;
  readonly overview: Overview | undefined;
  readonly siteKey: string;
}) {
  const { say } = useLanguage();
  const needing = useMemo(() => needingOf(overview), [overview]);
  const at = overview === undefined ? -1 : needing.indexOf(overview.placeOf(siteKey));
  const siteAt = (i: number) => overview?.siteAt(needing[i] ?? -1);
  const to = (site: SiteEntry | undefined, key: 'site.before' | 'site.next') =>
    site === undefined || at < 0 ? null : (
      <Link to="/p/$programmeId/sites/$siteId" params={{ programmeId, siteId: site.siteId }}>
        {say(key, { name: site.name || site.siteId })}
      </Link>
    );
  return (
    <nav className="among on-screen" aria-label={say('app.sites')}>
      <Link to="/p/$programmeId/sites" params={{ programmeId }} search={{}}>
        <span aria-hidden="true">‹ </span>
        {say('site.back', { count: needing.length })}
      </Link>
      {at < 0 ? null : <span>{say('site.place_among', { place: at + 1, count: needing.length })}</span>}
      {to(siteAt(at - 1), 'site.before')}
      {to(siteAt(at + 1), 'site.next')}
    </nav>
  );
}

/** Places of the sites that need her, in the order of the list. */
function needingOf(overview: Overview | undefined): Uint32Array {
  const holds = standings.indexOf('holds');
  const all = Uint32Array.from({ length: overview?.count ?? 0 }, (_, place) => place);
  return all.filter((place) => overview!.numbers.standing[place] !== holds);
}
