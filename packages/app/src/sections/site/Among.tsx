import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Overview, SiteEntry } from '../sites/index.ts';
import { standingOf } from '../sites/index.ts';

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
  const needing = overview?.sites.filter((site) => standingOf(site) !== 'holds') ?? [];
  const at = needing.findIndex(({ key }) => key === siteKey);
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
      {to(needing[at - 1], 'site.before')}
      {to(needing[at + 1], 'site.next')}
    </nav>
  );
}
