import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** A programme without a site yet: what to do. */
export function NoSites({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  return (
    <>
      <h1>{say('sites.empty')}</h1>
      <p>{say('sites.empty_todo')}</p>
      <p>
        <Link className="button main" to="/p/$programmeId/take-in" params={{ programmeId }}>
          {say('sites.take_in')}
        </Link>{' '}
        <Link className="button" to="/p/$programmeId/new-site" params={{ programmeId }}>
          {say('sites.write_first')}
        </Link>
      </p>
    </>
  );
}
