import { CellHistory } from '../../forms/CellHistory.tsx';
import { cellText } from '../../forms/cellText.ts';
import { type RowNow, rowId } from '../../forms/draft.ts';
import { formTable } from '../../forms/formTables.ts';
import { RowTitle } from '../../forms/RowFields.tsx';
import { siteTables } from '../../forms/siteTables.ts';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** The facts of a site as they stand. Every one opens to who put it there and what stood before. */
export function FactsRead({ programmeId, rows }: { readonly programmeId: string; readonly rows: readonly RowNow[] }) {
  const words = useFieldWords();
  return (
    <>
      {siteTables.map((table) => {
        const own = rows.filter((row) => row.table === table);
        if (own.length === 0) return null;
        return (
          <section key={table} className="facts-table">
            <h3>{words.table(table)}</h3>
            {own.map((row) => (
              <FactsOfRow key={rowId(row)} programmeId={programmeId} row={row} isAlone={table === 'sites'} />
            ))}
          </section>
        );
      })}
    </>
  );
}

function FactsOfRow(props: { readonly programmeId: string; readonly row: RowNow; readonly isAlone: boolean }) {
  const { programmeId, row, isAlone } = props;
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const contract = formTable(row.table)!;
  const own = Object.keys(row.cells).filter((column) => contract.columns[column] === undefined);
  const columns = [...Object.keys(contract.columns), ...own].filter((column) => !contract.key.includes(column));
  const filled = columns.filter((column) => row.cells[column] !== undefined);
  const empty = columns.filter((column) => row.cells[column] === undefined);
  return (
    <>
      {isAlone ? null : (
        <h4>
          <RowTitle row={row} hidden={['siteId']} />
        </h4>
      )}
      <dl className="facts-list">
        {filled.map((column) => {
          const label = words.label(row.table, column);
          const place = { table: row.table, key: row.key, column };
          return (
            <div key={column}>
              <dt>{label}</dt>
              <dd>
                <CellHistory programmeId={programmeId} place={place} label={label}>
                  {cellText(place, row.cells[column]!, numbers, words)}
                </CellHistory>
              </dd>
            </div>
          );
        })}
      </dl>
      {empty.length === 0 ? null : (
        <p className="small">
          {say('forms.empty_here', { fields: empty.map((column) => words.label(row.table, column)).join(', ') })}
        </p>
      )}
    </>
  );
}
