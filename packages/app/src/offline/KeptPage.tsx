import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { queries } from '../api/queries.ts';
import { useFieldWords } from '../forms/useFieldWords.ts';
import { recordSentence, rowInWords } from '../history/recordSentence.ts';
import { useTelling } from '../history/useTelling.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { Head } from '../sheet/Head.tsx';
import { Main } from '../sheet/Main.tsx';
import type { Clash, KeptChange } from './outbox.ts';
import { useKeeping, useKeptChanges } from './useKept.ts';

/** What this browser keeps: changes that are not saved in their programme yet, and what was read of programmes. */
export function KeptPage() {
  const { say } = useLanguage();
  const kept = useKeptChanges();
  const { data } = useQuery(queries.programmes());
  const nameOf = (id: string) => data?.programmes.find(({ programmeId }) => programmeId === id)?.name ?? id;
  return (
    <>
      <Head />
      <Main>
        <h1>{say('offline.title')}</h1>
        <h2>{say('offline.changes_title', { count: kept.length })}</h2>
        {kept.length > 0 && <p>{say('offline.changes_about')}</p>}
        <ol className="kept-list">
          {kept.map((one) => (
            <Kept key={one.sendId} kept={one} programmeName={nameOf(one.programmeId)} />
          ))}
        </ol>
        <Read />
      </Main>
    </>
  );
}

/** One change that waits: what it is, why it waits, and what can be done with it. */
function Kept({ kept, programmeName }: { readonly kept: KeptChange; readonly programmeName: string }) {
  const { say, numbers } = useLanguage();
  const telling = useTelling([]);
  const { outbox } = useKeeping();
  const { programmeId, changes, at, by, state, sendId } = kept;
  const takeBack = async () => {
    await outbox.takeBack(sendId);
    // Others may have waited behind it.
    await outbox.send();
  };
  const told = { device: '', number: 1, clock: 1, at, offset_min: 0, by, takesBack: null, place: 1, said: null };
  const record = { ...told, source: { kind: 'form' as const, name: null }, changes: [...changes] };
  const sentence = recordSentence({ ...record, changeCount: changes.length }, telling);
  return (
    <li>
      <p>
        <b>{sentence}</b>{' '}
        <span className="small">
          <Link to="/p/$programmeId/sites" params={{ programmeId }}>
            {programmeName}
          </Link>
          , {numbers.moment(at)}
        </span>
      </p>
      <Reason kept={kept} />
      <p>
        {state !== 'waits' && (
          <button type="button" className="button main" onClick={() => void outbox.tryAgain(sendId)}>
            {say(state === 'clash' ? 'offline.send_mine' : 'app.again')}
          </button>
        )}
        <button type="button" className="button" onClick={() => void takeBack()}>
          {say('offline.take_back')}
        </button>
      </p>
    </li>
  );
}

/** Why a change waits. */
function Reason({ kept: { state, clashes, problems } }: { readonly kept: KeptChange }) {
  const { say } = useLanguage();
  if (state === 'waits') return <p>{say('offline.waits')}</p>;
  if (state === 'clash')
    return (
      <div className="heed">
        <p>{say('offline.clash', { count: clashes.length })}</p>
        <ul>
          {clashes.map((clash) => (
            <ClashTold key={`${clash.table} ${clash.key} ${clash.column}`} clash={clash} />
          ))}
        </ul>
      </div>
    );
  return (
    <div className="trouble">
      <p>{say('offline.refused')}</p>
      <ul>
        {problems.map(({ what, todo }) => (
          <li key={what}>
            {what} {todo}
          </li>
        ))}
      </ul>
    </div>
  );
}

function ClashTold({ clash: { table, key, column, before, stands, after } }: { readonly clash: Clash }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const cell = (value: string | null) => (value === null ? say('forms.not_known') : words.choice(value));
  const row = rowInWords({ table, key }, { say, words, siteName: () => null });
  const field = words.label(table, table === 'settings' ? key : column);
  const values = { row, field, before: cell(before), stands: cell(stands), after: cell(after) };
  return <li>{say('offline.clash_cell', values)}</li>;
}

/** What was read, and how it is forgotten: on a computer of several people, for one. */
function Read() {
  const { say } = useLanguage();
  const { answers } = useKeeping();
  const [isForgotten, setForgotten] = useState(false);
  const forget = async () => {
    await answers.forget();
    setForgotten(true);
  };
  return (
    <>
      <h2>{say('offline.read_title')}</h2>
      <p>{say('offline.read_about')}</p>
      <p>
        <button type="button" className="button" onClick={() => void forget()}>
          {say('offline.forget')}
        </button>
      </p>
      <p role="status">{isForgotten && say('offline.forgotten')}</p>
    </>
  );
}
