import type { RolloutSheet } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

type Later = NonNullable<RolloutSheet['changedSince']>['later'];

/** Sites that stand open before the rest is asked for. Ours. */
const open_most = 4;

/** Who is handed over later than was said, and by how much: whom no trip serves any more first. */
export function LaterSites({ later }: { readonly later: Later }) {
  const { say } = useLanguage();
  if (later.length === 0) return null;
  const rest = later.slice(open_most);
  return (
    <>
      <List later={later.slice(0, open_most)} />
      {rest.length === 0 ? null : (
        <details>
          <summary className="press">{say('rolloutPlans.later_more', { count: rest.length })}</summary>
          <List later={rest} />
        </details>
      )}
    </>
  );
}

function List({ later }: { readonly later: Later }) {
  const { say, numbers } = useLanguage();
  const of = (people: number | null) => (people === null ? say('rolloutPlans.people_unknown') : numbers.people(people));
  return (
    <ul className="plain-list later-sites">
      {later.map(({ siteId, name, people, was, now, later_days, why }) => (
        <li key={siteId}>
          <b>{name}</b>{' '}
          {why !== null
            ? `${say('rolloutPlans.later_gone', { people: of(people), was: numbers.date(was) })} ${why}`
            : now === null || later_days === null
              ? say('rolloutPlans.later_never', { people: of(people), was: numbers.date(was) })
              : say('rolloutPlans.later_by', {
                  people: of(people),
                  days: numbers.days(later_days),
                  was: numbers.date(was),
                  now: numbers.date(now),
                })}
        </li>
      ))}
    </ul>
  );
}
