import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useId, useState } from 'react';
import type { components } from '../../api/apiTypes.ts';
import { answerOf, api } from '../../api/client.ts';
import { useWho } from '../../api/useWho.ts';
import { Who } from '../../forms/Who.tsx';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { NotMade } from './NotMade.tsx';

type Listed = components['schemas']['programmeListed'];

/** Gives a programme another name, sets it aside or brings it back. */
function useProgramme(programmeId: string) {
  const by = useWho();
  const client = useQueryClient();
  return useMutation({
    mutationFn: (change: { name?: string; isSetAside?: boolean }) => {
      const params = { path: { programmeId } };
      return answerOf(api.PATCH('/api/programmes/{programmeId}', { params, body: { by, ...change } }));
    },
    onSuccess: async () => {
      await client.invalidateQueries({ queryKey: ['programmes'] });
      await client.invalidateQueries({ queryKey: ['programme', programmeId] });
    },
  });
}

/** One programme of the list: what it holds, and what can be done with it. */
export function OneProgramme({ programme }: { readonly programme: Listed }) {
  const { say } = useLanguage();
  const { programmeId, name, isSetAside } = programme;
  const who = useWho();
  const change = useProgramme(programmeId);
  const [isNamed, setNamed] = useState(false);
  const isOff = who === '' || change.isPending;
  return (
    <li>
      <h2>
        {isSetAside ? (
          name
        ) : (
          <Link to="/p/$programmeId/sites" params={{ programmeId }}>
            {name}
          </Link>
        )}
      </h2>
      <FactsOf programme={programme} />
      <p className="programme-presses on-screen">
        {isSetAside ? null : <Links programmeId={programmeId} />}
        <button
          type="button"
          className="button plain"
          aria-label={say('programmes.rename_one', { name })}
          onClick={() => setNamed(!isNamed)}
        >
          {say('programmes.rename')}
        </button>
        <button
          type="button"
          className="button plain"
          disabled={isOff}
          onClick={() => change.mutate({ isSetAside: !isSetAside })}
        >
          {say(isSetAside ? 'programmes.bring_back' : 'programmes.set_aside')}
        </button>
      </p>
      {isNamed ? (
        <NewName
          name={name}
          isOff={isOff}
          onNamed={(wanted) => change.mutate({ name: wanted }, { onSuccess: () => setNamed(false) })}
        />
      ) : null}
      {change.error === null ? null : <NotMade error={change.error} />}
    </li>
  );
}

function FactsOf({ programme }: { readonly programme: Listed }) {
  const { say, numbers } = useLanguage();
  const { sites, people, withoutPeople_count, lastChange, madeAt } = programme;
  const unknown =
    (withoutPeople_count ?? 0) > 0 ? ` ${say('programmes.facts_unknown', { count: withoutPeople_count ?? 0 })}` : '';
  return (
    <p className="small">
      {sites === null ? null : `${say('programmes.facts', { sites, people: people ?? 0 })}${unknown}; `}
      {lastChange === null
        ? say('programmes.made', { when: numbers.moment(madeAt) })
        : say('programmes.last_change', { when: numbers.moment(lastChange.at), who: lastChange.by })}
    </p>
  );
}

function Links({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  const params = { programmeId };
  return (
    <>
      <Link to="/p/$programmeId/take-in" params={params} search={{}}>
        {say('programmeMenu.take_in')}
      </Link>
      <Link to="/p/$programmeId/changes" params={params} search={{}}>
        {say('programmeMenu.changes')}
      </Link>
      <Link to="/p/$programmeId/settings" params={params}>
        {say('programmeMenu.settings')}
      </Link>
      <a href={`/api/programmes/${programmeId}/export.zip`} download>
        {say('programmeMenu.export')}
      </a>
    </>
  );
}

function NewName(props: { readonly name: string; readonly isOff: boolean; onNamed(name: string): void }) {
  const { say } = useLanguage();
  const id = useId();
  const [typed, setTyped] = useState(props.name);
  const wanted = typed.trim();
  return (
    <form
      className="new-name"
      onSubmit={(event) => {
        event.preventDefault();
        if (wanted !== '' && !props.isOff) props.onNamed(wanted);
      }}
    >
      <label htmlFor={id}>{say('programmes.new_name')}</label>
      <input id={id} value={typed} maxLength={200} onChange={(event) => setTyped(event.target.value)} />
      <Who />
      <button type="submit" className="button main" disabled={props.isOff || wanted === ''}>
        {say('programmes.rename')}
      </button>
    </form>
  );
}
