import { folderTables } from '@eavewell/tables';
import type { ReactNode } from 'react';
import type { RowNow } from '../../../forms/draft.ts';
import type { Option } from '../../../forms/options.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { againEntry } from './happenedChanges.ts';
import { Opens } from './Opens.tsx';
import type { FieldAsked } from './ShortField.tsx';
import { ShortForm } from './ShortForm.tsx';

/** What each kind of form is given. */
export interface OfRows {
  readonly programmeId: string;
  readonly rows: readonly RowNow[];
  readonly today: string;
}

export const of = (rows: readonly RowNow[], table: string) => rows.filter((row) => row.table === table);

/** Rows of a table that may be chosen, by name. */
export const optionsIn = (rows: readonly RowNow[], table: string): readonly Option[] =>
  of(rows, table).map(({ key, cells }) => ({ id: key, name: cells['name'] ?? null }));

export const nameIn = (rows: readonly RowNow[], table: string, key: string | undefined): string =>
  of(rows, table).find((row) => row.key === key)?.cells['name'] ?? key ?? '';

/** Names of ways and of their ends. */
export function wayNames(rows: readonly RowNow[]) {
  const end = (id: string | undefined) => nameIn(rows, 'sites', nameIn(rows, 'places', id));
  const way = ({ cells }: RowNow) => cells['name'] ?? `${end(cells['from'])} – ${end(cells['to'])}`;
  const byId = new Map(of(rows, 'ways').map((row) => [row.key, way(row)]));
  return { end, way: (wayId: string) => byId.get(wayId) ?? wayId };
}

/** Something that is away or closed for some days, and when it is there again; rows that were entered together are told as one. */
export function AwayRow({
  programmeId,
  rows,
  said,
  isAsked = false,
  children,
}: {
  readonly programmeId: string;
  readonly rows: readonly [RowNow, ...RowNow[]];
  readonly said: string;
  /** Its day to look again has come. */
  readonly isAsked?: boolean;
  readonly children?: ReactNode;
}) {
  const { say, numbers } = useLanguage();
  const { to: column } = folderTables.carriersAway.columns;
  const [{ table, key, cells }] = rows;
  const { from = '', to, reason = '' } = cells;
  const isGuess = cells['isToGuessed'] === 'yes';
  const until = to === undefined ? say('rolloutHappened.until_open') : numbers.date(to);
  const formId = `again ${table} ${key}`;
  const values = { what: said, from: numbers.date(from), until, reason };
  return (
    <li>
      <p>
        {isAsked ? (
          <b>{say('rolloutHappened.ask_open', { what: said, day: until })}</b>
        ) : (
          say('rolloutHappened.away', { ...values, hasReason: reason === '' ? 'no' : 'yes' })
        )}
        {isGuess && !isAsked ? ` ${say('rolloutHappened.is_guess')}` : null}
      </p>
      <Opens press={say(table === 'closures' ? 'rolloutHappened.again_open' : 'rolloutHappened.again')} formId={formId}>
        {(close) => (
          <ShortForm
            {...{ programmeId, formId }}
            press={say('rolloutHappened.enter')}
            fields={[
              {
                ...{ field: 'again', column, label: say('rolloutHappened.field_again') },
                about: say('rolloutHappened.again_about'),
              },
            ]}
            make={(typed) => againEntry(rows, typed)}
            onDone={close}
          />
        )}
      </Opens>
      {children}
    </li>
  );
}

/** Fields of a table by their columns. */
export function useFields() {
  const { say } = useLanguage();
  return (table: 'carriersAway' | 'closures' | 'workCalendars', fields: readonly string[]): readonly FieldAsked[] =>
    fields.map((field) => ({
      field,
      column: (folderTables[table].columns as Record<string, FieldAsked['column']>)[field]!,
      label: say(`rolloutHappened.field_${field as 'from' | 'to' | 'reason' | 'count' | 'slower_factor'}`),
    }));
}

/** Forms of one kind of thing, under its heading. */
export function Kind({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="happened-kind">
      <h2>{title}</h2>
      {children}
    </section>
  );
}
