import { useEffect, useId, useRef } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import type { Entered, EntryFault } from './happenedChanges.ts';
import { dayInWords, type FieldAsked } from './ShortField.tsx';

/** All that stands against entering it, where that is more than one thing: each leads to its field. */
export function Faults({
  id,
  told,
}: {
  readonly id: string;
  readonly told: readonly { readonly asked: FieldAsked; readonly said: Pick<EntryFault, 'key' | 'values'> }[];
}) {
  const { say, numbers } = useLanguage();
  if (told.length < 2) return null;
  return (
    <div className="trouble">
      <p>{say('forms.not_saved_faults', { count: told.length })}</p>
      <ul>
        {told.map(({ asked, said }) => (
          <li key={asked.field}>
            <a
              href={`#${id}-${asked.field}`}
              onClick={(event) => {
                event.preventDefault();
                document.getElementById(`${id}-${asked.field}`)?.focus();
              }}
            >
              {asked.label}
            </a>
            {': '}
            {say(said.key, dayInWords(said.values ?? {}, numbers.date))}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** What is asked before it is entered: it is right, or one goes back to its field. */
export function Asks(props: {
  readonly asks: NonNullable<Entered['asks']>;
  readonly isBusy: boolean;
  onYes(): void;
  onBack(): void;
}) {
  const { say } = useLanguage();
  const { asks, isBusy, onYes, onBack } = props;
  const id = useId();
  const yes = useRef<HTMLButtonElement>(null);
  useEffect(() => yes.current?.focus(), []);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset holds fields
    <div className="field-heed asks" role="group" aria-labelledby={id}>
      <p id={id}>
        <b>{say(asks.key, asks.values)}</b>
      </p>
      <p className="presses">
        <button ref={yes} type="button" className="button" disabled={isBusy} onClick={onYes}>
          {say('rolloutHappened.asks_yes')}
        </button>
        <button type="button" className="button" onClick={onBack}>
          {say('rolloutHappened.asks_back')}
        </button>
      </p>
    </div>
  );
}
