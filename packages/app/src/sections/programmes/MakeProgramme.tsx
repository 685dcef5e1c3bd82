import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useId, useState } from 'react';
import { answerOf, api } from '../../api/client.ts';
import { sayWho, useWho } from '../../api/useWho.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { NotMade } from './NotMade.tsx';

const froms = ['empty', 'files', 'demo'] as const;
type From = (typeof froms)[number];

/** Makes a programme: empty, of files, or invented to try things on. */
// long: one form of three questions
export function MakeProgramme() {
  const { say } = useLanguage();
  const id = useId();
  const known = useWho();
  const [name, setName] = useState('');
  const [who, setWho] = useState(known);
  const [from, setFrom] = useState<From>('empty');
  const [isTried, setTried] = useState(false);
  const make = useMake();
  const navigate = useNavigate();
  const isOfFiles = from === 'files';
  const isWanting = !isOfFiles && (name.trim() === '' || who.trim() === '');
  const submit = () => {
    setTried(true);
    if (isWanting || make.isPending) return;
    sayWho(who);
    if (isOfFiles) {
      void navigate({ to: '/programmes/take-in', search: {} });
      return;
    }
    make.mutate({ name: name.trim(), by: who.trim(), from: from === 'demo' ? 'demo' : 'empty' });
  };
  return (
    <form
      className="make-programme on-screen"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <h2>{say('programmes.make')}</h2>
      <p>
        <label htmlFor={`${id}-name`}>{say('programmes.name')}</label>
        <input
          id={`${id}-name`}
          value={name}
          maxLength={200}
          aria-required
          aria-invalid={isTried && name.trim() === ''}
          aria-describedby={`${id}-told`}
          onChange={(event) => setName(event.target.value)}
        />
      </p>
      <p>
        <label htmlFor={`${id}-who`}>{say('forms.your_name')}</label>
        <input
          id={`${id}-who`}
          value={who}
          maxLength={200}
          autoComplete="name"
          aria-required
          aria-invalid={isTried && who.trim() === ''}
          aria-describedby={`${id}-told`}
          onChange={(event) => setWho(event.target.value)}
        />
      </p>
      <fieldset>
        <legend>{say('programmes.begin_with')}</legend>
        {froms.map((one) => (
          <label key={one}>
            <input type="radio" name={`${id}-from`} checked={from === one} onChange={() => setFrom(one)} />
            {say(`programmes.from_${one}`)}
          </label>
        ))}
      </fieldset>
      <div id={`${id}-told`} role="alert">
        {isTried && isWanting ? <p className="field-wanting">{say('programmes.wanting')}</p> : null}
        {make.error === null ? null : <NotMade error={make.error} />}
      </div>
      <button type="submit" className="button main" disabled={make.isPending}>
        {say(make.isPending ? 'programmes.making' : 'programmes.make_it')}
      </button>
    </form>
  );
}

function useMake() {
  const client = useQueryClient();
  const navigate = useNavigate();
  return useMutation({
    mutationFn: (body: { name: string; by: string; from: 'demo' | 'empty' }) =>
      answerOf(api.POST('/api/programmes', { body })),
    onSuccess: async ({ programmeId }) => {
      await client.invalidateQueries({ queryKey: ['programmes'] });
      await navigate({ to: '/p/$programmeId/sites', params: { programmeId } });
    },
  });
}
