import { folderTableNames } from '@eavewell/tables';
import { useState } from 'react';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Review, Step } from './importsApi.ts';
import type { ReviewStep } from './useReviewStep.ts';

/** What the files bring, a line a table; and files that do not say which table they are. */
export function Brought({ review, step }: { readonly review: Review; readonly step: ReviewStep }) {
  const { say, numbers } = useLanguage();
  const { files, unplaced, absent, freshRecords } = review;
  return (
    <section aria-labelledby="brought">
      <h2 id="brought">{say('imports.brought')}</h2>
      {files.length === 0 ? <p>{say('imports.brought_nothing')}</p> : null}
      <ul className="brought">
        {files.map(({ file, from, rows, used, sheet }) => (
          <li key={file}>
            <b>{sheet === null ? file : say('imports.sheet_in', { sheet, file: from })}</b>{' '}
            {say('imports.rows_used', { count: rows, used: numbers.given(used, ''), all: numbers.given(rows, '') })}
            {sheet !== null || from === file || from === '' ? null : (
              <span className="small"> {say('imports.sent_in', { from })}</span>
            )}
          </li>
        ))}
      </ul>
      {freshRecords > 0 ? <p>{say('imports.fresh_records', { count: freshRecords })}</p> : null}
      <p className="small">{say(absent === 'go' ? 'imports.absent_go_said' : 'imports.absent_stay_said')}</p>
      {unplaced.map((one) => (
        <Unplaced key={one.name} one={one} step={step} />
      ))}
    </section>
  );
}

type Placed = Extract<Step, { place: unknown }>['place']['table'];

function Unplaced({ one, step }: { readonly one: Review['unplaced'][number]; readonly step: ReviewStep }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const [table, setTable] = useState(one.table ?? '');
  const [gaugeId, setGaugeId] = useState(one.gaugeId ?? '');
  const isRain = table === 'rain';
  const place = () =>
    step.mutate({ place: { name: one.name, table: table as Placed, gaugeId: isRain ? gaugeId.trim() : null } });
  return (
    <form
      className="heed matching"
      onSubmit={(event) => {
        event.preventDefault();
        place();
      }}
    >
      <label>
        {say('imports.which_table', { file: one.name })}{' '}
        <select value={table} onChange={(event) => setTable(event.target.value)}>
          <option value="">{say('imports.leave_alone')}</option>
          {['rain', ...folderTableNames].map((name) => (
            <option key={name} value={name}>
              {words.table(name)}
            </option>
          ))}
        </select>
      </label>
      {isRain ? (
        <label>
          {say('imports.of_gauge')}{' '}
          <input value={gaugeId} onChange={(event) => setGaugeId(event.target.value)} size={12} />
        </label>
      ) : null}
      <button
        type="submit"
        className="button"
        disabled={table === '' || (isRain && gaugeId.trim() === '') || step.isPending}
      >
        {say('imports.it_is')}
      </button>
    </form>
  );
}
