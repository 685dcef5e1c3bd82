import { folderTableNames } from '@eavewell/tables';
import { useId, useState } from 'react';
import { formTable } from '../../forms/formTables.ts';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Review, Step } from './importsApi.ts';
import type { ReviewStep } from './useReviewStep.ts';

type Header = Review['headers'][number];
type Sheet = Review['sheets'][number];
type Columns = Required<Extract<Step, { columns?: unknown }>>;

const orders = ['dmy', 'mdy', 'ymd'];

/** Headers and sheets that are not understood, each with what it likely is. Nothing is taken so until it is said. */
export function Matchings({ review, step }: { readonly review: Review; readonly step: ReviewStep }) {
  const { say } = useLanguage();
  const { headers, sheets } = review;
  if (headers.length + sheets.length === 0) return null;
  // What a sheet is comes first: until it is said, its headers stay as they are.
  const sure = sheets.length > 0 ? [] : headers.filter(({ column, open }) => column !== null && open === null);
  return (
    <section aria-labelledby="matchings">
      <h2 id="matchings">{say('imports.matchings', { count: headers.length + sheets.length })}</h2>
      <p>{say('imports.matchings_about')}</p>
      {sure.length > 1 ? (
        <p>
          <button
            type="button"
            className="button"
            disabled={step.isPending}
            onClick={() => step.mutate({ columns: sure.map(asProposed), sheets: [] })}
          >
            {say('imports.accept_sure', { count: sure.length })}
          </button>
        </p>
      ) : null}
      <ul className="matchings">
        {sheets.map((sheet) => (
          <OneSheet key={`${sheet.workbook}/${sheet.sheet}`} sheet={sheet} step={step} />
        ))}
        {headers.map((header) => (
          <OneHeader key={`${header.workbook}/${header.file}/${header.header}`} header={header} step={step} />
        ))}
      </ul>
    </section>
  );
}

/** A header as it was proposed. */
function asProposed({ workbook, file, header, column, unit, dateOrder }: Header): Columns['columns'][number] {
  return { workbook, file, header, column, ...how(unit ?? dateOrder ?? '') };
}

/** The unit or the order of dates a column is said to be in. */
function how(said: string): Pick<Columns['columns'][number], 'unit' | 'dateOrder'> {
  if (said === '') return {};
  return orders.includes(said) ? { dateOrder: said as 'dmy' } : { unit: said };
}

/** The table a header is of, by its file or the sheet it stands in; null where that is not plain. */
function tableOfFile(file: string): string | null {
  const bare = file
    .replace(/\.csv$/, '')
    .split('/')[0]!
    .toLowerCase();
  return folderTableNames.find((name) => name.toLowerCase() === bare) ?? (bare === 'rain' ? 'rain' : null);
}

// long: one form of two choices and their presses
function OneHeader({ header, step }: { readonly header: Header; readonly step: ReviewStep }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const id = useId();
  const { file, workbook, choices, why, fits, looked } = header;
  const [column, setColumn] = useState(header.column ?? '');
  const hows = choices.find((choice) => choice.column === column)?.hows ?? [];
  const [said, setSaid] = useState(header.unit ?? header.dateOrder ?? '');
  const table = tableOfFile(file);
  const columns = new Set([
    ...choices.map((choice) => choice.column),
    ...Object.keys(formTable(table ?? '')?.columns ?? {}),
  ]);
  const label = (name: string) => (table === null ? name : `${words.label(table, name)} (${name})`);
  const accept = (chosen: string | null) => {
    const matched = { workbook, file, header: header.header, column: chosen, ...(chosen === null ? {} : how(said)) };
    step.mutate({ columns: [matched], sheets: [] });
  };
  return (
    <li className="matching">
      <p>
        <b>{say('imports.header_in', { header: header.header, file })}</b>{' '}
        <span className="small">
          {why.map((one) => say(`imports.why_${one}` as 'imports.why_unit')).join('; ')}
          {looked > 0 ? `. ${say('imports.fits', { fits, looked })}` : null}
        </span>
      </p>
      <label htmlFor={id}>{say('imports.it_stands_for')}</label>
      <select id={id} value={column} onChange={(event) => setColumn(event.target.value)}>
        <option value="">{say('imports.not_said')}</option>
        {[...columns].map((name) => (
          <option key={name} value={name}>
            {label(name)}
          </option>
        ))}
      </select>
      {hows.length > 0 ? (
        <label>
          {say('imports.written_in')}{' '}
          <select value={said} onChange={(event) => setSaid(event.target.value)}>
            <option value="">{say('imports.not_said')}</option>
            {hows.map((one) => (
              <option key={one} value={one}>
                {orders.includes(one) ? say(`imports.order_${one}` as 'imports.order_dmy') : one}
              </option>
            ))}
          </select>
        </label>
      ) : null}
      <button
        type="button"
        className="button"
        disabled={column === '' || (hows.length > 0 && said === '') || step.isPending}
        onClick={() => accept(column)}
      >
        {say('imports.accept')}
      </button>
      <button type="button" className="button plain" disabled={step.isPending} onClick={() => accept(null)}>
        {say('imports.leave_alone')}
      </button>
    </li>
  );
}

function OneSheet({ sheet, step }: { readonly sheet: Sheet; readonly step: ReviewStep }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const id = useId();
  const [table, setTable] = useState(sheet.likely ?? '');
  const rains = sheet.gauges.map((gauge) => `rain ${gauge}`);
  const put = (chosen: string | null) =>
    step.mutate({ columns: [], sheets: [{ workbook: sheet.workbook, sheet: sheet.sheet, table: chosen }] });
  const shown = (name: string) =>
    name.startsWith('rain ') ? say('imports.rain_of', { gauge: name.slice(5) }) : words.table(name);
  return (
    <li className="matching">
      <p>
        <b>{say('imports.sheet_in', { sheet: sheet.sheet, file: sheet.workbook })}</b>{' '}
        <span className="small">{sheet.headers.slice(0, 6).join(', ')}</span>
      </p>
      <label htmlFor={id}>{say('imports.it_stands_for')}</label>
      <select id={id} value={table} onChange={(event) => setTable(event.target.value)}>
        <option value="">{say('imports.not_said')}</option>
        {[...new Set([...(sheet.likely === null ? [] : [sheet.likely]), ...rains, ...folderTableNames])].map((name) => (
          <option key={name} value={name}>
            {shown(name)}
          </option>
        ))}
      </select>
      <button type="button" className="button" disabled={table === '' || step.isPending} onClick={() => put(table)}>
        {say('imports.accept')}
      </button>
      <button type="button" className="button plain" disabled={step.isPending} onClick={() => put(null)}>
        {say('imports.leave_alone')}
      </button>
    </li>
  );
}
