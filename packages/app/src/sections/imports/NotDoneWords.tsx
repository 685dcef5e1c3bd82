import { NotDone } from '../../api/client.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** Why something was not done, in words; the program's own where it has some. */
export function NotDoneWords({ error }: { readonly error: Error | null }) {
  const { say } = useLanguage();
  if (error === null) return null;
  return (
    <div className="trouble" role="alert">
      {error instanceof NotDone && error.body !== null ? (
        error.body.problems.map(({ what, todo }) => (
          <p key={what}>
            {what} {todo}
          </p>
        ))
      ) : (
        <p>
          {error instanceof NotDone ? say(`imports.${error.reason}`) : say('app.our_fault', { message: error.message })}
        </p>
      )}
    </div>
  );
}
