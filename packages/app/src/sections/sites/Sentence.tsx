import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { OverviewHead } from './overview.ts';
import { exceptions } from './overview.ts';

/** A sign no text holds: where the part that stands out goes into its sentence. */
const here = '\u0000';

/** The one sentence: how many need her, and how many people live there. */
export function Sentence({ tally }: { readonly tally: OverviewHead['tally'] }) {
  const { say } = useLanguage();
  const all = Object.values(tally).reduce((sum, { sites }) => sum + sites, 0);
  const needing = exceptions.map((standing) => tally[standing]);
  const count = needing.reduce((sum, { sites }) => sum + sites, 0);
  const people = needing.reduce((sum, one) => sum + one.people, 0);
  const unknown = needing.reduce((sum, one) => sum + one.withoutPeople_count, 0);
  if (tally.notYet.sites === all) return <h1>{say('sites.none_judged', { all })}</h1>;
  if (count === 0)
    return (
      <h1>
        {say('sites.all_hold', { all })} {say('sites.people_there', { people: tally.holds.people })}
      </h1>
    );
  const [before, after] = say('sites.need', { count, part: here }).split(here);
  return (
    <h1>
      {before}
      <strong className={tally.short.sites > 0 ? 'w-short' : ''}>{say('sites.need_part', { count, all })}</strong>
      {after} {say('sites.people_there', { people })}{' '}
      {unknown > 0 ? <small>{say('sites.people_there_not_known', { count: unknown })}</small> : null}
    </h1>
  );
}
