import { useFieldWords } from '../forms/useFieldWords.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { type ChangeTold, type RecordWords, rowInWords } from './recordSentence.ts';
import './rowChanges.css';

/** Changes of rows, cell by cell: before → after. */
export function ChangesOfRecord(props: { readonly changes: readonly ChangeTold[]; readonly telling: RecordWords }) {
  const { say } = useLanguage();
  const { changes, telling } = props;
  return (
    <ul className="row-changes">
      {changes.map((change) => (
        <li key={`${change.table}/${change.key}`}>
          <b>{rowInWords(change, telling)}</b> {change.kind === 'edited' ? null : say(`history.${change.kind}_mark`)}
          <Cells change={change} telling={telling} />
        </li>
      ))}
    </ul>
  );
}

function Cells({ change, telling }: { readonly change: ChangeTold; readonly telling: RecordWords }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const before: Readonly<Record<string, string | null>> = change.kind === 'added' ? {} : change.before;
  const after: Readonly<Record<string, string | null>> = change.kind === 'removed' ? {} : change.after;
  const columns = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  const { table, key } = change;
  const label = (column: string) => (table === 'settings' ? words.label('settings', key) : words.label(table, column));
  const text = (column: string, cell: string | null | undefined) => telling.cell({ table, column }, cell ?? null);
  return (
    <ul className="cell-changes">
      {columns.map((column) => (
        <li key={column}>
          {label(column)}:{' '}
          {change.kind === 'edited'
            ? say('history.before_after', { before: text(column, before[column]), after: text(column, after[column]) })
            : text(column, change.kind === 'added' ? after[column] : before[column])}
        </li>
      ))}
    </ul>
  );
}
