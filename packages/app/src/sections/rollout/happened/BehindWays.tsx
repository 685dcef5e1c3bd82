import { useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { type AroundClosed, behindClosed } from './behindClosed.ts';
import { chosenStretches, stretchesOf, takenOff } from './closedWays.ts';
import { wayNames } from './formParts.tsx';
import type { EnteredCells } from './happenedChanges.ts';

/** Names said in the sentence itself; more are asked for. Ours. */
const named_most = 8;

/** The stretches that would close, each to be taken off, and who lies behind them: said before it is entered. */
// long: what is chosen, and its sentences
export function BehindWays(
  props: AroundClosed & { readonly cells: EnteredCells; onTakeOff(ids: readonly string[]): void },
) {
  const { rows, sheet, cells, onTakeOff } = props;
  const { say, numbers } = useLanguage();
  const { what = null, start = null, end = null, without = null, from = null, to = null } = cells;
  const chosen = useMemo(
    () => chosenStretches(stretchesOf(rows), { what, start, end }).chosen,
    [rows, what, start, end],
  );
  const off = useMemo(() => takenOff({ without }), [without]);
  const behind = useMemo(() => {
    const closed = new Set(chosen.flatMap(({ wayId }) => (off.has(wayId) ? [] : [wayId])));
    return behindClosed({ rows, sheet }, closed, { from, to });
  }, [rows, sheet, chosen, off, from, to]);
  if (chosen.length === 0) return null;
  const names = wayNames(rows);
  const count = chosen.filter(({ wayId }) => !off.has(wayId)).length;
  const isSlower = (cells['slower_factor'] ?? null) !== null;
  const people = behind.sites.reduce((sum, site) => sum + (site.people ?? 0), 0);
  const tripsNamed = behind.trips.map(({ crew, leaves }) => `${crew} (${numbers.date(leaves)})`);
  return (
    <div className="behind-ways">
      {chosen.length === 1 ? null : (
        <fieldset>
          <legend>{say(isSlower ? 'rolloutHappened.stretches_slower' : 'rolloutHappened.stretches', { count })}</legend>
          {chosen.map(({ wayId }) => (
            <label key={wayId}>
              <input
                type="checkbox"
                checked={!off.has(wayId)}
                onChange={() => onTakeOff(off.has(wayId) ? [...off].filter((id) => id !== wayId) : [...off, wayId])}
              />{' '}
              {names.way(wayId)}
            </label>
          ))}
        </fieldset>
      )}
      <div role="status">
        {isSlower ? <p>{say('rolloutHappened.behind_slower')}</p> : null}
        {isSlower || count === 0 || behind.sites.length > 0 ? null : <p>{say('rolloutHappened.behind_none')}</p>}
        {isSlower || behind.sites.length === 0 ? null : (
          <p>
            <b className="w-tight">
              {say('rolloutHappened.behind_sites', {
                count: behind.sites.length,
                people: numbers.people(people),
              })}
            </b>{' '}
            <Names of={behind.sites.map(({ name }) => name)} />
          </p>
        )}
        {isSlower
          ? null
          : behind.crewsOut.map((crew) => (
              <p key={crew}>
                <b className="w-tight">{say('rolloutHappened.behind_crew', { crew })}</b>
              </p>
            ))}
        {isSlower
          ? null
          : behind.stores.map(({ store, from: filled }) => (
              <p key={store.key}>
                {say('rolloutHappened.behind_store', { store: names.end(store.key), from: names.end(filled.key) })}
              </p>
            ))}
        {tripsNamed.length === 0 ? null : (
          <p>
            {say('rolloutHappened.behind_trips', { count: tripsNamed.length })} <Names of={tripsNamed} />
          </p>
        )}
      </div>
    </div>
  );
}

function Names({ of: names }: { readonly of: readonly string[] }) {
  const { say } = useLanguage();
  const rest = names.slice(named_most);
  return (
    <>
      {names.slice(0, named_most).join(', ')}
      {rest.length === 0 ? '.' : null}
      {rest.length === 0 ? null : (
        <details className="more-names">
          <summary className="press">{say('rolloutHappened.names_more', { count: rest.length })}</summary>
          {rest.join(', ')}.
        </details>
      )}
    </>
  );
}
