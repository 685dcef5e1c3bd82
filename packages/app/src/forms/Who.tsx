import { useState } from 'react';
import { sayWho, useWho } from '../api/useWho.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';

/** The id of the field that asks for a name, so that what needs one can lead to it. */
export const whoId = 'who-changes';

/** Under whose name a change is recorded: asked once, shown and changeable beside every press that saves. */
export function Who() {
  const { say } = useLanguage();
  const who = useWho();
  const [isAsked, setAsked] = useState(who === '');
  const [typed, setTyped] = useState(who);
  if (!isAsked && who !== '')
    return (
      <p className="who">
        {say('forms.recorded_as', { who })}{' '}
        <button type="button" className="button plain" onClick={() => setAsked(true)}>
          {say('forms.other_name')}
        </button>
      </p>
    );
  const done = () => {
    sayWho(typed);
    if (typed.trim() !== '') setAsked(false);
  };
  return (
    <p className="who">
      <label htmlFor={whoId}>{say('forms.your_name')}</label>
      <input
        id={whoId}
        value={typed}
        autoComplete="name"
        maxLength={200}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={done}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          event.preventDefault();
          done();
        }}
      />
    </p>
  );
}
