import { useSuspenseQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useMemo, useRef, useState } from 'react';
import { queries } from '../../api/queries.ts';
import { cellText } from '../../forms/cellText.ts';
import { type RowNow, rowId } from '../../forms/draft.ts';
import { formTable, tablesOfBoth } from '../../forms/formTables.ts';
import { TablesForm } from '../../forms/TablesForm.tsx';
import { useDraft } from '../../forms/useDraft.ts';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { useKnownRows } from '../../forms/useKnownRows.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { SavedLine } from '../../offline/SavedLine.tsx';
import { NoSuchSheet } from '../../sheet/NoSuchSheet.tsx';
import { TableLinks } from './Settings.tsx';
import { isTableAsked, namedHere, type TableAsked } from './tablesAsked.ts';

/** So many rows are shown of a table; one longer is a file to put in, not a list to read [count]. Ours. */
const mostRows = 500;

/** One table of the whole programme: its rows, and a form for those that are pressed. */
export function TableRows() {
  const { programmeId, table } = useParams({ from: '/p/$programmeId/settings/$table' });
  if (!isTableAsked(table)) return <NoSuchSheet />;
  return <Rows programmeId={programmeId} table={table} key={table} />;
}

// long: one page: a form over the rows it changes
function Rows({ programmeId, table }: { readonly programmeId: string; readonly table: TableAsked }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const { data } = useSuspenseQuery(queries.table(programmeId, table));
  const known = useKnownRows(programmeId, namedHere);
  const { name, draft, dispatch } = useDraft(programmeId, `table-${table}`);
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set());
  const [isSaved, setSaved] = useState(false);
  const top = useRef<HTMLHeadingElement>(null);
  const rows = useMemo(
    () =>
      data.rows
        .filter(({ cells }) => !tablesOfBoth.has(table) || cells['siteId'] === undefined)
        .map((row) => ({ table, ...row })),
    [data.rows, table],
  );
  const hidden = tablesOfBoth.has(table) ? ['siteId'] : [];
  const newRow = () => (table === 'demand' ? { judged: 'no' } : {});
  const isForm = open.size > 0 || draft.beganAt !== null;
  const close = (saved: boolean) => {
    setOpen(new Set());
    setSaved(saved);
    top.current?.focus();
  };
  return (
    <>
      <h1 ref={top} tabIndex={-1}>
        {words.tableOfAll(table)}
      </h1>
      <TableLinks programmeId={programmeId} />
      {isSaved && !isForm ? <SavedLine programmeId={programmeId} /> : null}
      {isForm && known !== null ? (
        <TablesForm
          programmeId={programmeId}
          sections={[{ table, hidden, isGrowing: true, newRow }]}
          rows={rows}
          known={[...known, ...rows]}
          draft={draft}
          draftName={name}
          dispatch={dispatch}
          isShown={(row) => open.has(row.key)}
          onSaved={() => close(true)}
          onLeave={() => close(false)}
        />
      ) : (
        <p>
          <button type="button" className="button" onClick={() => dispatch({ kind: 'add', table, cells: newRow() })}>
            {say('forms.add', { what: words.one(table) })}
          </button>
        </p>
      )}
      <RowsRead
        rows={rows}
        hidden={hidden}
        onOpen={(key) => {
          setSaved(false);
          setOpen(new Set([...open, key]));
          top.current?.focus();
        }}
      />
    </>
  );
}

// long: the markup of one table
function RowsRead(props: {
  readonly rows: readonly RowNow[];
  readonly hidden: readonly string[];
  onOpen(key: string): void;
}) {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const { rows, hidden, onOpen } = props;
  const [first] = rows;
  if (first === undefined) return <p>{say('settings.no_rows')}</p>;
  const { table } = first;
  const used = Object.keys(formTable(table)?.columns ?? {}).filter(
    (column) => !hidden.includes(column) && rows.some(({ cells }) => cells[column] !== undefined),
  );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled by keyboard too
    <section className="wide rows-read" tabIndex={0} aria-label={words.table(table)}>
      {rows.length > mostRows ? <p>{say('settings.first_rows', { shown: mostRows, count: rows.length })}</p> : null}
      <table>
        <thead>
          <tr>
            {used.map((column) => (
              <th key={column} scope="col">
                {words.label(table, column)}
              </th>
            ))}
            <th scope="col">
              <span className="said-only">{say('settings.presses')}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.slice(0, mostRows).map((row) => (
            <tr key={rowId(row)}>
              {used.map((column) => (
                <td key={column} data-label={words.label(table, column)}>
                  {cellText({ table, column }, row.cells[column] ?? null, numbers, words)}
                </td>
              ))}
              <td className="on-screen">
                <button
                  type="button"
                  className="button plain"
                  aria-label={say('settings.change_row', { row: row.cells['name'] ?? row.key })}
                  onClick={() => onOpen(row.key)}
                >
                  {say('settings.change')}
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
