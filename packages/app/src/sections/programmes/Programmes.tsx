import { useSuspenseQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { Head } from '../../sheet/Head.tsx';

/** The programmes of this computer. */
export function Programmes() {
  const { say } = useLanguage();
  const { data } = useSuspenseQuery(queries.programmes());
  return (
    <>
      <Head />
      <main id="sheet" className="sheet" tabIndex={-1}>
        <h1>{say('programmes.title', { count: data.programmes.length })}</h1>
        <ul>
          {data.programmes.map(({ programmeId, name }) => (
            <li key={programmeId}>
              <Link to="/p/$programmeId/sites" params={{ programmeId }}>
                {name}
              </Link>
            </li>
          ))}
        </ul>
      </main>
    </>
  );
}
