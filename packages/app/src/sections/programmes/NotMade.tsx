import { NotDone } from '../../api/client.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** Why a programme was not made or changed, in words. */
export function NotMade({ error }: { readonly error: Error }) {
  const { say } = useLanguage();
  if (!(error instanceof NotDone)) return <p role="alert">{say('app.our_fault', { message: error.message })}</p>;
  if (error.reason === 'unreachable') return <p role="alert">{say('app.unreachable')}</p>;
  if (error.reason === 'refused') return <p role="alert">{say('app.refused')}</p>;
  return (
    <ul role="alert">
      {(error.body?.problems ?? []).map(({ what, todo }) => (
        <li key={what}>
          {what} {todo}
        </li>
      ))}
    </ul>
  );
}
