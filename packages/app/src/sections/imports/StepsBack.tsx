import { useId } from 'react';
import { cellText } from '../../forms/cellText.ts';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { rowInWords } from '../../history/recordSentence.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Review } from './importsApi.ts';
import type { ReviewStep } from './useReviewStep.ts';

type One = Review['stepsBack'][number];

const nameOf = ({ table, key, column }: One) => ({ table, key, column });

/** What was changed here since the files were written: it stays, unless somebody says that the file's is to be taken. */
export function StepsBack({ review, step }: { readonly review: Review; readonly step: ReviewStep }) {
  const { say } = useLanguage();
  const { stepsBack: all, stepsBackCount: count } = review;
  if (count === 0) return null;
  const taken = all.filter(({ isTaken }) => isTaken);
  const choose = (one: One, isTaken: boolean) => {
    const others = taken.filter((other) => other !== one).map(nameOf);
    step.mutate({ stepsBack: isTaken ? [...others, nameOf(one)] : others });
  };
  const isAll = taken.length === all.length;
  return (
    <section aria-labelledby="steps-back">
      <h2 id="steps-back">{say('imports.steps_back', { count })}</h2>
      <p>{say('imports.steps_back_about')}</p>
      {count > 1 ? (
        <p>
          <button
            type="button"
            className="button"
            disabled={step.isPending}
            onClick={() => step.mutate({ stepsBack: isAll ? [] : 'all' })}
          >
            {say(isAll ? 'imports.keep_all_here' : 'imports.take_all_of_file')}
          </button>
        </p>
      ) : null}
      <ul className="steps-back">
        {all.map((one) => (
          <OneBack key={JSON.stringify(nameOf(one))} one={one} isOff={step.isPending} onChoose={choose} />
        ))}
      </ul>
      {count > all.length ? (
        <p className="small">{say('history.first_only', { count: all.length, of: count })}</p>
      ) : null}
    </section>
  );
}

function OneBack(props: { readonly one: One; readonly isOff: boolean; onChoose(one: One, isTaken: boolean): void }) {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const id = useId();
  const { table, key, column, stands, older, by, at, isTaken } = props.one;
  const row = rowInWords({ table, key }, { say, words, siteName: () => null });
  const text = (cell: string | null) =>
    cellText({ table, column: column ?? '' }, cell, numbers, words) ?? say('forms.left_empty');
  const label = table === 'settings' ? words.label('settings', key) : words.label(table, column ?? '');
  const since = { row, who: by, when: numbers.moment(at) };
  return (
    <li>
      <p id={`${id}-what`}>
        {column === null
          ? say('imports.row_removed_since', since)
          : table === 'rain'
            ? say('imports.rain_changed_since', since)
            : say('imports.cell_changed_since', { ...since, field: label, stands: text(stands), older: text(older) })}
      </p>
      <label>
        <input
          type="checkbox"
          checked={isTaken}
          disabled={props.isOff}
          aria-describedby={`${id}-what`}
          onChange={(event) => props.onChoose(props.one, event.target.checked)}
        />{' '}
        {say('imports.take_of_file')}
      </label>
    </li>
  );
}
