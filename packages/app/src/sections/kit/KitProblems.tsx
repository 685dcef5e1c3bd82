import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { SiteKitAnswer } from './kitQuery.ts';

type Problem = SiteKitAnswer['problems'][number];

/** What was found, what hinders first; what is only worth knowing is folded away. */
export function KitProblems({ problems }: { readonly problems: readonly Problem[] }) {
  const { say } = useLanguage();
  const once = [...new Map(problems.map((one) => [`${one.code} ${one.what}`, one])).values()];
  const grave = once.filter(({ severity }) => severity !== 'note');
  const notes = once.filter(({ severity }) => severity === 'note');
  if (once.length === 0) return null;
  return (
    <section className="kit-problems" aria-labelledby="kit-found">
      <h2 id="kit-found">{say('kit.found')}</h2>
      {grave.length === 0 ? null : <ProblemList problems={grave} />}
      {notes.length === 0 ? null : (
        <details>
          <summary>{say('kit.notes', { count: notes.length })}</summary>
          <ProblemList problems={notes} />
        </details>
      )}
    </section>
  );
}

function ProblemList({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <ul>
      {problems.map(({ code, what, todo, severity }) => (
        <li key={`${code} ${what}`} className={severity}>
          <b>{what}</b> {todo}
        </li>
      ))}
    </ul>
  );
}
