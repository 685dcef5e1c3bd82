import { useQueryClient } from '@tanstack/react-query';
import { type ErrorComponentProps, useRouter } from '@tanstack/react-router';
import { NotDone } from '../api/client.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { Main } from './Main.tsx';

/** What a page shows where it could not be made: what happened, what to do, and a way to try again. */
export function ErrorSheet({ error }: ErrorComponentProps) {
  const { say } = useLanguage();
  const router = useRouter();
  const client = useQueryClient();
  const again = () => {
    void client.resetQueries();
    void router.invalidate();
  };
  return (
    <Main>
      <h1>{say('app.trouble')}</h1>
      <Reason error={error} />
      <button type="button" className="button" onClick={again}>
        {say('app.again')}
      </button>
    </Main>
  );
}

/** Why it could not be made, in words. */
function Reason({ error }: { readonly error: unknown }) {
  const { say } = useLanguage();
  if (!(error instanceof NotDone)) return <p>{say('app.our_fault', { message: String(error) })}</p>;
  if (error.reason === 'unreachable') return <p>{say('app.unreachable')}</p>;
  if (error.reason === 'refused') return <p>{say('app.refused')}</p>;
  return (
    <ul>
      {(error.body?.problems ?? []).map(({ what, todo }) => (
        <li key={what}>
          {what} {todo}
        </li>
      ))}
    </ul>
  );
}
