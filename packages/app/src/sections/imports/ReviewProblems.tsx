import { useState } from 'react';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Review } from './importsApi.ts';
import { MendRow } from './MendRow.tsx';
import { problemsByFile, rowAt, rowSeen, sheetOf } from './reviewRows.ts';
import type { ReviewStep } from './useReviewStep.ts';

type Problem = Review['problems'][number];

/** So many problems of a file are shown before a press shows more. Ours. */
const shownAtFirst = 30;

/** What is wrong, by file, row and column. A cell opens and is mended where it stands. */
export function ReviewProblems({ review, step }: { readonly review: Review; readonly step: ReviewStep }) {
  const { say } = useLanguage();
  const { problems, elsewhere, mends, undone } = review;
  return (
    <section aria-labelledby="wrong">
      <h2 id="wrong">{say('imports.wrong', { count: problems.length })}</h2>
      {mends.length + undone.length > 0 ? (
        <p className="mends">
          {say('imports.mended', { count: mends.length })}{' '}
          <button
            type="button"
            className="button"
            disabled={mends.length === 0 || step.isPending}
            onClick={() => step.mutate('undo')}
          >
            {say('imports.undo_mend')}
          </button>{' '}
          <button
            type="button"
            className="button"
            disabled={undone.length === 0 || step.isPending}
            onClick={() => step.mutate('redo')}
          >
            {say('imports.redo_mend')}
          </button>
        </p>
      ) : null}
      {problemsByFile(problems).map(([file, own]) => (
        <OfFile key={file} file={file} problems={own} review={review} step={step} />
      ))}
      {elsewhere.length === 0 ? null : (
        <div className="heed">
          <h3>{say('imports.elsewhere', { count: elsewhere.length })}</h3>
          <ul>
            {elsewhere.slice(0, shownAtFirst).map(({ what, todo, place }) => (
              <li key={`${place.file} ${place.row} ${place.column} ${what}`}>
                {what} {todo}
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}

interface OfFileProps {
  readonly file: string;
  readonly problems: readonly Problem[];
  readonly review: Review;
  readonly step: ReviewStep;
}

function OfFile({ file, problems, review, step }: OfFileProps) {
  const { say } = useLanguage();
  const [most, setMost] = useState(shownAtFirst);
  const sheet = sheetOf(review, file);
  return (
    <>
      {file === '' ? null : <h3>{sheet === null ? file : say('imports.sheet_in', sheet)}</h3>}
      <ul className="faults">
        {problems.slice(0, most).map((problem) => {
          const { row, column } = problem.place;
          return (
            <OneProblem
              key={`${row} ${column} ${problem.code} ${problem.what}`}
              problem={problem}
              review={review}
              step={step}
            />
          );
        })}
      </ul>
      {problems.length > most ? (
        <button type="button" className="button" onClick={() => setMost(most + 200)}>
          {say('imports.more_wrong', { count: problems.length - most })}
        </button>
      ) : null}
    </>
  );
}

function OneProblem(props: { readonly problem: Problem; readonly review: Review; readonly step: ReviewStep }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const { problem, review, step } = props;
  const { place, severity, what, todo } = problem;
  const [isOpen, setOpen] = useState(false);
  const row = rowAt(review, place);
  const table = place.file?.replace(/^rain\/.*/, 'rain').replace(/\.csv$/, '') ?? '';
  const where = [
    place.row === undefined ? null : say('imports.row', { row: rowSeen(review, place.file, place.row) }),
    place.column === undefined ? null : words.label(table, place.column),
  ].filter((text) => text !== null);
  return (
    <li className={`fault-${severity}`}>
      <p>
        <b>{say(`imports.severity_${severity}` as 'imports.severity_blocker')}</b>{' '}
        {where.length === 0 ? null : <span className="fault-where">{where.join(', ')}: </span>}
        {what} {todo}{' '}
        {row === null ? null : (
          <button type="button" className="button plain" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            {say(isOpen ? 'imports.close_row' : 'imports.open_row', { row: rowSeen(review, row.file, row.row) })}
          </button>
        )}
      </p>
      {row !== null && isOpen ? (
        <MendRow row={row} column={place.column} facts={problem.facts} step={step} onMended={() => setOpen(false)} />
      ) : null}
    </li>
  );
}
