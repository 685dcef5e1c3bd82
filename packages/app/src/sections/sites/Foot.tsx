import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { type Asked, askedOf, writtenStandings } from './asked.ts';
import type { Standing } from './overview.ts';

/** Under the list: the sites that hold, and what can be done with the list. */
export function Foot({
  asked,
  shown,
  holds,
}: {
  readonly asked: Asked;
  readonly shown: readonly Standing[];
  readonly holds: number;
}) {
  const { say } = useLanguage();
  if (holds === 0 || shown.includes('holds')) return null;
  return (
    <p className="foot">
      <Link from="/p/$programmeId/sites" to="." search={askedOf({ ...asked, verdict: writtenStandings(['holds']) })}>
        {say('sites.that_hold', { count: holds })}
      </Link>
    </p>
  );
}
