import type { RolloutSheet } from '@eavewell/tables';
import { useId, useState } from 'react';
import { NotDone } from '../../../api/client.ts';
import { useWho } from '../../../api/useWho.ts';
import { askForName } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { freeName } from './planWords.ts';
import { useSearchForPlan } from './useSearch.ts';

/** How long may be searched at one press [s]. Ours. */
const offered_s = [10, 60, 300] as const;
/** What the server takes at the least and at the most [s]. */
const [least_s, most_s] = [0.2, 600];

/** What the server said why no search was begun. */
export function NotBegun({ error }: { readonly error: Error | null }) {
  const { say } = useLanguage();
  if (error === null) return null;
  const problems = error instanceof NotDone ? (error.body?.problems ?? []) : [];
  const said = problems.map(({ what, todo }) => `${what} ${todo}`).join(' ');
  return <p className="trouble">{said || say('forms.not_saved_unreachable')}</p>;
}

/** Asks for a plan: how long is searched, from what it goes on, and what it is called. */
// long: one form
export function MakePlan({ programmeId, sheet }: { readonly programmeId: string; readonly sheet: RolloutSheet }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const id = useId();
  const who = useWho();
  const { state, begin } = useSearchForPlan(programmeId);
  const [chosen, setChosen] = useState<number | null>(offered_s[0]);
  const [own, setOwn] = useState('');
  // Where trips left, who plans on goes on from there.
  const hasLeft = sheet.crews.some(({ trips }) => trips.some(({ state }) => state !== 'planned'));
  const [isFrom, setFrom] = useState(hasLeft);
  const [name, setName] = useState('');
  const [isTried, setTried] = useState(false);
  const read = numbers.parse(own);
  const owned = read.kind === 'number' && read.value >= least_s && read.value <= most_s ? read.value : null;
  const seconds = chosen ?? owned;
  const isBusy = state?.taskId != null || begin.isPending;
  const offered = freeName(
    sheet.plans.map((plan) => plan.name),
    language,
  );
  const make = () => {
    setTried(true);
    if (who === '') askForName();
    if (seconds === null || who === '') return;
    const called = name.trim() || offered;
    begin.mutate({
      ...{ from: isFrom ? sheet.planId : null, into: null, name: called, seconds, onlyCrews: null },
    });
  };
  return (
    <form
      className="make-plan"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        make();
      }}
    >
      <fieldset>
        <legend>{say('rolloutPlans.how_long')}</legend>
        {offered_s.map((one) => (
          <label key={one}>
            <input type="radio" name={id} checked={chosen === one} onChange={() => setChosen(one)} />
            {say('rolloutPlans.seconds', { count: one })}
          </label>
        ))}
        <label>
          <input type="radio" name={id} checked={chosen === null} onChange={() => setChosen(null)} />
          {say('rolloutPlans.own_seconds')}
        </label>
        <input
          inputMode="decimal"
          size={6}
          aria-label={say('rolloutPlans.own_seconds_field')}
          aria-invalid={isTried && seconds === null}
          aria-describedby={`${id}-own`}
          value={own}
          onChange={(event) => {
            setOwn(event.target.value);
            setChosen(null);
          }}
        />
      </fieldset>
      <p id={`${id}-own`} className={isTried && seconds === null ? 'field-wanting' : 'small'}>
        {isTried && seconds === null ? say('rolloutPlans.fault_seconds') : say('rolloutPlans.how_long_about')}
      </p>
      {sheet.planId === null ? null : (
        <label>
          <input type="checkbox" checked={isFrom} onChange={(event) => setFrom(event.target.checked)} />
          {say('rolloutPlans.from_this')}
        </label>
      )}
      <label className="plan-name">
        {say('rolloutPlans.new_name')}{' '}
        <input value={name} placeholder={offered} maxLength={200} onChange={(event) => setName(event.target.value)} />
      </label>
      <NotBegun error={begin.error} />
      <p className="presses">
        <button type="submit" className="button main" disabled={isBusy}>
          {say('rolloutPlans.make')}
        </button>
      </p>
    </form>
  );
}
