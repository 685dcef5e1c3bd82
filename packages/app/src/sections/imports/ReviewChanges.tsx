import { cellText } from '../../forms/cellText.ts';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { ChangesOfRecord } from '../../history/ChangesOfRecord.tsx';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Review } from './importsApi.ts';
import { rowSeen, sheetOf } from './reviewRows.ts';

/** What taking the files in would change, a table at a time: rows that come, change and go, cell by cell. */
export function ReviewChanges({ review }: { readonly review: Review }) {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const telling = {
    say,
    words,
    cell: (place: { table: string; column: string }, cell: string | null) =>
      cellText(place, cell, numbers, words) ?? say('forms.not_known'),
    siteName: () => null,
    find: () => undefined,
  };
  const { changes, notUsed } = review;
  return (
    <section aria-labelledby="would-change">
      <h2 id="would-change">{say('imports.changes')}</h2>
      {changes.length === 0 ? <p>{say('imports.changes_none')}</p> : null}
      {changes.map(({ table, added, edited, removed, rows }) => (
        <details key={table} className="table-changes">
          <summary className="press">
            <b>{words.table(table === 'sites' ? 'sitesAll' : table)}</b>:{' '}
            {say('imports.table_changes', { added, edited, removed })}
          </summary>
          <ChangesOfRecord changes={rows} telling={telling} />
          {added + edited + removed > rows.length ? (
            <p className="small">{say('history.first_only', { count: rows.length, of: added + edited + removed })}</p>
          ) : null}
        </details>
      ))}
      {notUsed.length === 0 ? null : (
        <details>
          <summary className="press">{say('imports.not_used', { count: notUsed.length })}</summary>
          <p className="small">{say('imports.not_used_about')}</p>
          <ul>
            {notUsed.slice(0, 200).map(({ file, row, column, value }) => (
              <li key={`${file} ${row} ${column}`}>
                {say('imports.not_used_cell', {
                  file: sheetOf(review, file)?.sheet ?? file,
                  row: rowSeen(review, file, row),
                  column: column ?? say('imports.whole_row'),
                  value,
                })}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
