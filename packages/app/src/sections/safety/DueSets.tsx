import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { DueSet } from './cups.ts';
import { dueWords, monthWords } from './cupWords.ts';

/** Sets told before one asks for more. Ours. */
const first = 12;

/** When the sets of cartridges of all sites are due, the soonest first. */
export function DueSets({
  programmeId,
  sets,
  undated_count,
  today,
}: {
  readonly programmeId: string;
  readonly sets: readonly DueSet[];
  /** Sets whose day cannot be told. */
  readonly undated_count: number;
  readonly today: string;
}) {
  const language = useLanguage();
  const { say } = language;
  const [most, setMost] = useState(first);
  if (sets.length === 0 && undated_count === 0) return null;
  return (
    <section className="due-sets" aria-labelledby="due-head">
      <h2 id="due-head">{say('safety.sets_due')}</h2>
      <p className="small">{say('safety.sets_due_about')}</p>
      {undated_count === 0 ? null : <p>{say('safety.sets_undated', { count: undated_count })}</p>}
      <table>
        <thead>
          <tr>
            <th scope="col">{say('safety.head_set')}</th>
            <th scope="col">{say('safety.head_due')}</th>
            <th scope="col">{say('safety.head_middle')}</th>
          </tr>
        </thead>
        <tbody>
          {sets.slice(0, most).map(({ site, set }) => (
            <tr key={`${site.key} ${set.serial}`} className={set.middle < today ? 'past' : undefined}>
              <th scope="row">
                <Link
                  to="/p/$programmeId/sites/$siteId/safety"
                  params={{ programmeId, siteId: site.siteId || site.key }}
                >
                  {site.name || site.key}
                </Link>{' '}
                <span className="small">{set.serial}</span>
              </th>
              <td>{dueWords(set, today, language)}</td>
              <td>{monthWords(set.middle, language)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {sets.length <= most ? null : (
        <button type="button" className="button on-screen" onClick={() => setMost(most + 100)}>
          {say('safety.more_due', { count: Math.min(100, sets.length - most) })}
        </button>
      )}
    </section>
  );
}
