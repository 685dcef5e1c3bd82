import { useEffect, useId, useRef, useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Review } from './importsApi.ts';
import { headerOf, type RowShown } from './reviewRows.ts';
import type { ReviewStep } from './useReviewStep.ts';

/** One row of a file that waits: its cells as they stand, and the one that is wrong to be written anew. */
// long: one form: a row, and the cell that is written anew
export function MendRow(props: {
  readonly row: RowShown;
  readonly column: string | undefined;
  readonly facts: Review['problems'][number]['facts'];
  readonly step: ReviewStep;
  onMended(): void;
}) {
  const { say } = useLanguage();
  const { row, column, facts, step, onMended } = props;
  const id = useId();
  const wrong = headerOf(row, column);
  const [header, setHeader] = useState(wrong ?? row.cells[0]?.header ?? '');
  const standing = row.cells.find((cell) => cell.header === header)?.value ?? '';
  const [typed, setTyped] = useState<string | null>(null);
  const value = typed ?? standing;
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  const likely = offersOf(facts).filter((offer) => offer !== value && header === wrong);
  const mend = (text: string) => {
    const cell = { file: row.file, row: row.row, column: header, value: text };
    step.mutate(cell, { onSuccess: onMended });
  };
  return (
    <form
      className="mend-row"
      onSubmit={(event) => {
        event.preventDefault();
        mend(value);
      }}
    >
      <dl className="row-cells">
        {row.cells.map((cell) => (
          <div key={cell.header} className={cell.header === wrong ? 'is-wrong' : ''}>
            <dt>{cell.header}</dt>
            <dd>{cell.value === '' ? say('imports.empty') : cell.value}</dd>
          </div>
        ))}
      </dl>
      <div className="mend-field">
        <label htmlFor={`${id}-column`}>{say('imports.cell')}</label>
        <select
          id={`${id}-column`}
          value={header}
          onChange={(event) => {
            setHeader(event.target.value);
            setTyped(null);
          }}
        >
          {row.cells.map((cell) => (
            <option key={cell.header} value={cell.header}>
              {cell.header}
            </option>
          ))}
        </select>
        <label htmlFor={`${id}-value`}>{say('imports.write')}</label>
        <input
          id={`${id}-value`}
          ref={field}
          value={value}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => setTyped(event.target.value)}
        />
        <button type="submit" className="button main" disabled={step.isPending || value === standing}>
          {say('imports.mend')}
        </button>
        {likely.map((offer) => (
          <button key={offer} type="button" className="button" disabled={step.isPending} onClick={() => mend(offer)}>
            {say('imports.write_likely', { value: offer })}
          </button>
        ))}
      </div>
      <p className="small">{say('imports.point_in_files')}</p>
    </form>
  );
}

/** What the cell is likely meant to be, where the problem says so. */
function offersOf(facts: Review['problems'][number]['facts']): readonly string[] {
  const { likely, readings } = facts as { likely?: unknown; readings?: unknown };
  if (typeof likely === 'string' && likely !== '') return [likely];
  return Array.isArray(readings) ? readings.filter((one): one is string => typeof one === 'string') : [];
}
