import { type ChartTable, csvOf } from '@eavewell/drawing';
import { type ReactNode, useId, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { saveAs } from '../../sites/index.ts';
import { type ColumnWords, columnWords } from './columnWords.ts';

/** What a picture says, as tables: what is read on the page, and the whole as a file. */
export interface ChartTables {
  shown(): ChartTable;
  whole(): ChartTable;
  /** The name of the file. */
  readonly file: string;
}

/** A chart with its title, the finding in a sentence, and its table. */
export function ChartBlock({
  title,
  finding,
  tables,
  className = '',
  onHow,
  children,
}: {
  readonly title: string;
  readonly finding: string;
  readonly tables: ChartTables;
  readonly className?: string;
  /** Opens how its figures were reached. */
  readonly onHow?: (() => void) | undefined;
  readonly children: ReactNode;
}) {
  const { say } = useLanguage();
  const [isOpen, setOpen] = useState(false);
  const head = useId();
  return (
    <section className={`chart ${className}`} aria-labelledby={head}>
      <h2 id={head}>{title}</h2>
      <p className="finding">
        {finding}{' '}
        {onHow === undefined ? null : (
          <button
            type="button"
            className="opens how on-screen"
            aria-label={say('site.open_working', { figure: finding })}
            onClick={onHow}
          >
            {say('water.how')}
          </button>
        )}
      </p>
      {children}
      <details className="on-screen" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{say('water.as_table')}</summary>
        {isOpen ? (
          <>
            <button type="button" className="press" onClick={() => saveAs(tables.file, csvOf(tables.whole()))}>
              {say('water.as_csv')}
            </button>
            <Table table={tables.shown()} name={title} />
          </>
        ) : null}
      </details>
    </section>
  );
}

function Table({ table, name }: { readonly table: ChartTable; readonly name: string }) {
  const language = useLanguage();
  const words = table.columns.map((column) => columnWords(column, language));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what runs off the side is reached by keys
    <section className="wide chart-table" tabIndex={0} aria-label={name}>
      <table>
        <thead>
          <tr>
            {words.map(({ head, key }) => (
              <th key={key} scope="col" className="num">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows of a table that is not changed in place
            <tr key={i}>
              {row.map((value, at) => (
                <td key={words[at]!.key} className="num">
                  {shown(value, words[at]!)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function shown(value: number | string | null, { said }: ColumnWords): string {
  return value === null ? '' : said(value);
}
