import type { RolloutSheet } from '@eavewell/tables';
import { memo, useMemo } from 'react';
import { useFieldWords } from '../../../forms/useFieldWords.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../../look/VerdictMark.tsx';
import { keyOf, leaningOn, notUsed, tableOf } from './leaning.ts';
import { MendedInLink } from './MendedInLink.tsx';
import './leaning.css';

type Problem = RolloutSheet['problems'][number];

interface At {
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
}

/** Sentences that stand open; the rest is folded. Ours. */
const open_most = 3;

/** What the plan leans on that nobody has stated, or that is not used as it was entered: the heaviest first, each with what to do. */
export const LeansOn = memo(function LeansOn(props: At) {
  const problems = useMemo(() => leaningOn(props.sheet.problems), [props.sheet.problems]);
  return <Told problems={problems} head="leans_head" programmeId={props.programmeId} />;
});

/** Of what happened the rows that were entered and are not used: they stand in lists as if they counted. */
export function NotUsed(props: At) {
  const problems = useMemo(() => leaningOn(notUsed(props.sheet.problems)), [props.sheet.problems]);
  return <Told problems={problems} head="leans_unused" programmeId={props.programmeId} />;
}

function Told(props: {
  readonly problems: readonly Problem[];
  readonly head: 'leans_head' | 'leans_unused';
  readonly programmeId: string;
}) {
  const { say } = useLanguage();
  const { problems, head, programmeId } = props;
  if (problems.length === 0) return null;
  const rest = problems.slice(open_most);
  return (
    <section className="leans-on" aria-labelledby="leans-on">
      <VerdictMark verdict="tight" size={30} />
      <div>
        <h2 id="leans-on">{say(`rolloutPlans.${head}`, { count: problems.length })}</h2>
        <Sentences problems={problems.slice(0, open_most)} programmeId={programmeId} />
        {rest.length === 0 ? null : (
          <details>
            <summary>{say('rolloutPlans.leans_more', { count: rest.length })}</summary>
            <Sentences problems={rest} programmeId={programmeId} />
          </details>
        )}
      </div>
    </section>
  );
}

function Sentences({ problems, programmeId }: { readonly problems: readonly Problem[]; readonly programmeId: string }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  // What is said of a row names neither the row, nor its table, nor its column.
  const where = (problem: Problem) => {
    const { row, column } = problem.place;
    const table = tableOf(problem);
    if (row === undefined || table === '') return null;
    const { rowName } = problem.facts;
    return [
      ...(typeof rowName === 'string' ? [rowName] : []),
      words.tableOfAll(table),
      ...(column === undefined ? [] : [words.label(table, column)]),
    ].join(', ');
  };
  return (
    <ul>
      {problems.map((problem) => {
        const at = where(problem);
        return (
          <li key={keyOf(problem)}>
            {at === null ? null : <b>{say('rolloutPlans.leans_in', { where: at })} </b>}
            {problem.what} {problem.todo} <MendedInLink problem={problem} programmeId={programmeId} />
          </li>
        );
      })}
    </ul>
  );
}
