import type { RolloutComparison } from '@eavewell/tables';
import { useId } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

type Anew = NonNullable<RolloutComparison['anew']>;
type Site = Anew['toldOtherwise'][number];

/** Sites that stand open before the rest is asked for. Ours. */
const open_most = 8;

/** Whom to tell another day than they were told, should the plan that was found be kept. */
export function ToldOtherwise({ anew }: { readonly anew: Anew }) {
  const { say } = useLanguage();
  const id = useId();
  const { toldOtherwise: sites, since } = anew;
  const rest = sites.slice(open_most);
  const hasTold = sites.length > 0 || since.lastToldDay !== null;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{say('rolloutPlans.anew_told')}</h2>
      {sites.length > 0 ? (
        <>
          <p className="small">{say('rolloutPlans.anew_told_about')}</p>
          <List sites={sites.slice(0, open_most)} />
        </>
      ) : hasTold ? (
        <p>{say('rolloutPlans.anew_told_same')}</p>
      ) : null}
      {rest.length === 0 ? null : (
        <details>
          <summary className="press">{say('rolloutPlans.anew_told_more', { count: rest.length })}</summary>
          <List sites={rest} />
        </details>
      )}
      {since.untold_count === 0 ? null : (
        <p className="small">{say('rolloutPlans.anew_told_nothing', { count: since.untold_count })}</p>
      )}
    </section>
  );
}

function List({ sites }: { readonly sites: readonly Site[] }) {
  return (
    <ul className="plain-list later-sites">
      {sites.map((site) => (
        <li key={site.siteId}>
          <b>{site.name}</b> <Told site={site} />
        </li>
      ))}
    </ul>
  );
}

function Told({ site }: { readonly site: Site }) {
  const { say, numbers } = useLanguage();
  const { toldDay, newDay, later_days } = site;
  const people = site.people === null ? say('rolloutPlans.people_unknown') : numbers.people(site.people);
  const dayOf = (day: string | null) => (day === null ? '' : numbers.date(day));
  const [was, now] = [dayOf(toldDay), dayOf(newDay)];
  if (toldDay === null) return say('rolloutPlans.anew_told_first', { people, now });
  if (newDay === null || later_days === null) return say('rolloutPlans.anew_told_none', { people, was });
  const days = numbers.days(Math.abs(later_days));
  return say('rolloutPlans.anew_told_by', { people, was, now, days, how: later_days > 0 ? 'later' : 'sooner' });
}
