import { useSuspenseQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';

/** Every site, exceptions first. */
export function Sites() {
  const { say } = useLanguage();
  const { programmeId } = useParams({ from: '/p/$programmeId/sites' });
  const { data } = useSuspenseQuery(queries.sites(programmeId));
  return (
    <>
      <h1>{say('sites.title', { count: data.sites.length })}</h1>
      <ul>
        {data.sites.map(({ key, cells, design }) => (
          <li key={key}>
            <VerdictMark verdict={design?.verdict ?? 'unknown'} /> {cells['name'] ?? key} {design?.finding}
          </li>
        ))}
      </ul>
    </>
  );
}
