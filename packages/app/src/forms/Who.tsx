import { useEffect, useRef, useState } from 'react';
import { sayWho, useWho } from '../api/useWho.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';

/** The id of the field that asks for a name, so that what needs one can lead to it. */
export const whoId = 'who-changes';

/** Asked of the field when something cannot be done without a name. */
const wantedEvent = 'wanted';

/** Leads to the field that asks for a name, which says why. */
export function askForName(): void {
  const field = document.getElementById(whoId);
  field?.dispatchEvent(new Event(wantedEvent));
  field?.focus();
}

/** Under whose name a change is recorded: asked once, shown and changeable beside every press that saves. */
export function Who() {
  const { say } = useLanguage();
  const who = useWho();
  const [isAsked, setAsked] = useState(who === '');
  const [typed, setTyped] = useState(who);
  const [isWanted, setWanted] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const isShown = isAsked || who === '';
  useEffect(() => {
    const input = field.current;
    if (!isShown || input === null) return;
    const heed = () => setWanted(true);
    input.addEventListener(wantedEvent, heed);
    return () => input.removeEventListener(wantedEvent, heed);
  }, [isShown]);
  if (!isShown)
    return (
      <p className="who">
        {say('forms.recorded_as', { who })}{' '}
        <button type="button" className="button plain" onClick={() => setAsked(true)}>
          {say('forms.other_name')}
        </button>
      </p>
    );
  const isMissing = isWanted && typed.trim() === '';
  const done = () => {
    sayWho(typed);
    if (typed.trim() !== '') setAsked(false);
  };
  return (
    <p className="who">
      <label htmlFor={whoId}>{say('forms.your_name')}</label>
      <input
        ref={field}
        id={whoId}
        value={typed}
        autoComplete="name"
        maxLength={200}
        aria-invalid={isMissing}
        aria-describedby={isMissing ? `${whoId}-wanted` : undefined}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={done}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          event.preventDefault();
          done();
        }}
      />
      {isMissing ? (
        <span id={`${whoId}-wanted`} className="field-wanting">
          {say('forms.name_needed')}
        </span>
      ) : null}
    </p>
  );
}
