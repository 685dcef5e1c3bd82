import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams, useSearch } from '@tanstack/react-router';
import { useDeferredValue, useMemo, useState } from 'react';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { Progress, SiteFinder } from '../sites/index.ts';
import { SafetyCaution } from './Caution.tsx';
import { CupRows } from './CupRows.tsx';
import { chosenCups, drinks, dueSets, foundCups, safetyTally, todayHere } from './cups.ts';
import { tallyWords } from './cupWords.ts';
import { DueSets } from './DueSets.tsx';
import { SafetyTools } from './SafetyTools.tsx';
import { safetyQuery } from './safetyQuery.ts';
import './safety.css';

/** Whether the water of each site is fit to drink, the worst first. */
// long: the sheet as it is read, part after part
export function Safety() {
  const language = useLanguage();
  const { say } = language;
  const { programmeId } = useParams({ from: '/p/$programmeId/safety' });
  const { data: state } = useSuspenseQuery(queries.programme(programmeId));
  const isRunning = state.done_fraction < 1 && !state.isFailed && !state.isCalledOff;
  const { data } = useSuspenseQuery(safetyQuery(programmeId, isRunning));
  const asked = useSearch({ from: '/p/$programmeId/safety' });
  const later = useDeferredValue(asked);
  const { sites, head } = data;
  const now = todayHere();
  const tally = useMemo(() => safetyTally(sites, now), [sites, now]);
  const [typed, setTyped] = useState('');
  const wanted = useDeferredValue(typed);
  const finder = useMemo(() => new SiteFinder(sites), [sites]);
  const found = useMemo(() => foundCups(sites, finder, wanted), [sites, finder, wanted]);
  const chosen = useMemo(() => chosenCups(sites, later, now), [sites, later, now]);
  const shown = found ?? chosen;
  const sets = useMemo(() => dueSets(found ?? sites), [found, sites]);
  const undated_count = useMemo(
    () => (found ?? sites).reduce((sum, { cup }) => sum + (cup?.setsUndated_count ?? 0), 0),
    [found, sites],
  );
  const isOfNow = head.designVersion === state.version && state.done_fraction === 1;
  // Before the first site is worked out nothing can be said of any.
  const isYet = !isOfNow && tally.drink.notJudged === sites.length;
  // A site at which nobody may drink may be among those still to come.
  const isOpen = !isOfNow && tally.drink.no === 0;
  const said = tallyWords(tally, language);
  const { first, rest } = isOpen
    ? {
        first: say(isRunning ? 'safety.working_out' : 'safety.not_worked_out'),
        rest: isYet ? '' : [said.first, said.rest].join(' ').trim(),
      }
    : said;
  const left = drinks.filter((one) => one === 'yes' || one === 'notJudged').filter((one) => tally.drink[one] > 0);
  return (
    <div className="programme-safety">
      <h1>{tally.drink.no > 0 ? <strong className="w-short">{first}</strong> : first}</h1>
      {rest === '' ? null : <p className="rest">{rest}</p>}
      {isOfNow || (isYet && !isRunning) ? null : (
        <p role="status" className="small">
          {say(isRunning ? 'safety.running' : 'safety.of_before')}
        </p>
      )}
      {isRunning ? null : <Progress {...{ programmeId, state, count: sites.length, isOfBefore: false }} />}
      <SafetyCaution />
      <SafetyTools {...{ sites, tally, asked, typed }} onType={setTyped} />
      <div className="safety-sheet">
        <section aria-labelledby="cups-head">
          <h2 id="cups-head" className="said-only">
            {say('safety.list')}
          </h2>
          <p role="status" className="small">
            {say('safety.shown', { count: shown.length })}{' '}
            {found === null ? say(later.due === 'set' ? 'safety.order_due' : 'safety.order_worst') : null}
          </p>
          {shown.length === 0 ? null : <CupRows programmeId={programmeId} sites={shown} today={now} />}
          {asked.drink !== undefined || asked.due !== undefined || found !== null ? null : (
            <p className="foot on-screen">
              {left.map((drink) => (
                <Link key={drink} from="/p/$programmeId/safety" to="." search={{ ...asked, drink }} resetScroll={false}>
                  {say(`safety.others_${drink}`, { count: tally.drink[drink] })}
                </Link>
              ))}
            </p>
          )}
        </section>
        <DueSets programmeId={programmeId} sets={sets} undated_count={undated_count} today={now} />
      </div>
    </div>
  );
}
