import type { components } from '../../api/apiTypes.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { placeWords } from './siteFigures.ts';

type Problem = components['schemas']['problem'];
const severities = ['blocker', 'warning', 'note'] as const;

/** What was found in the tables about a site: what is wrong, what to do, and where it stands. */
export function Problems({ problems }: { readonly problems: readonly Problem[] }) {
  const { say } = useLanguage();
  const sorted = [...problems].sort((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));
  return (
    <section className="problems-found">
      <h2>{say('site.problems', { count: problems.length })}</h2>
      <ul>
        {sorted.map((problem, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: one code may stand at one place twice
          <li key={`${problem.code} ${i}`} className={problem.severity}>
            <b>{say(`site.problem_${problem.severity}`)}</b> {problem.what} {problem.todo}{' '}
            <span className="small">{placeWords(problem.place, say)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The problems of tables and of the design of a site, each once. */
export function problemsOnce(...lists: readonly (readonly Problem[])[]): readonly Problem[] {
  const known = new Map<string, Problem>();
  for (const problem of lists.flat())
    known.set(JSON.stringify([problem.code, problem.place.file, problem.place.row, problem.what]), problem);
  return [...known.values()];
}
