import { folderTables } from '@eavewell/tables';
import { type ReactNode, useState } from 'react';
import type { RowNow } from '../../../forms/draft.ts';
import type { Option } from '../../../forms/options.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { crewAwayEntry } from './crewAway.ts';
import {
  againEntry,
  areaChoice,
  brokeEntry,
  cameEntry,
  closedEntry,
  type EnteredCells,
  goodsLaterEntry,
} from './happenedChanges.ts';
import { openArrivals, stillAway } from './happenedRows.ts';
import { Opens } from './Opens.tsx';
import { type FieldAsked, ShortForm } from './ShortForm.tsx';
import { useTypedForms } from './typedHere.ts';

interface OfRows {
  readonly programmeId: string;
  readonly rows: readonly RowNow[];
  readonly today: string;
}

/** Arrivals shown before one asks for more. Ours. */
const first = 5;

const of = (rows: readonly RowNow[], table: string) => rows.filter((row) => row.table === table);

/** Rows of a table that may be chosen, by name. */
const optionsIn = (rows: readonly RowNow[], table: string): readonly Option[] =>
  of(rows, table).map(({ key, cells }) => ({ id: key, name: cells['name'] ?? null }));

const nameIn = (rows: readonly RowNow[], table: string, key: string | undefined): string =>
  of(rows, table).find((row) => row.key === key)?.cells['name'] ?? key ?? '';

/** Something that is away or closed for some days, and when it is there again. */
function AwayRow({
  programmeId,
  row,
  said,
}: {
  readonly programmeId: string;
  readonly row: RowNow;
  readonly said: string;
}) {
  const { say, numbers } = useLanguage();
  const { to } = folderTables.carriersAway.columns;
  const until = row.cells['to'] === undefined ? say('rolloutHappened.until_open') : numbers.date(row.cells['to']);
  const formId = `again ${row.table} ${row.key}`;
  const values = { what: said, from: numbers.date(row.cells['from'] ?? ''), until, reason: row.cells['reason'] ?? '' };
  return (
    <li>
      <p>{say('rolloutHappened.away', { ...values, hasReason: values.reason === '' ? 'no' : 'yes' })}</p>
      <Opens press={say('rolloutHappened.again')} formId={formId}>
        {(close) => (
          <ShortForm
            {...{ programmeId, formId }}
            press={say('rolloutHappened.enter')}
            fields={[
              {
                field: 'again',
                column: to,
                label: say('rolloutHappened.field_again'),
                about: say('rolloutHappened.again_about'),
              },
            ]}
            make={(cells) => againEntry(row, cells)}
            onDone={close}
          />
        )}
      </Opens>
    </li>
  );
}

function useFields() {
  const { say } = useLanguage();
  return (table: 'carriersAway' | 'closures' | 'workCalendars', fields: readonly string[]): readonly FieldAsked[] =>
    fields.map((field) => ({
      field,
      column: (folderTables[table].columns as Record<string, FieldAsked['column']>)[field]!,
      label: say(`rolloutHappened.field_${field as 'from' | 'to' | 'reason' | 'count' | 'slower_factor'}`),
    }));
}

/** A boat or truck broke, or is there again. */
export function CarrierForms({ programmeId, rows, today }: OfRows) {
  const { say } = useLanguage();
  const fields = useFields();
  const { carrierId } = folderTables.carriersAway.columns;
  const which = { field: 'carrierId', column: carrierId, label: say('rolloutHappened.field_carrierId') };
  const away = stillAway(rows, 'carriersAway', today);
  return (
    <Kind title={say('rolloutHappened.carriers')}>
      {away.length === 0 ? null : (
        <ul className="plain-list">
          {away.map((row) => (
            <AwayRow
              key={row.key}
              {...{ programmeId, row }}
              said={say('rolloutHappened.so_many', {
                count: Number(row.cells['count'] ?? '1'),
                name: nameIn(rows, 'carriers', row.cells['carrierId']),
              })}
            />
          ))}
        </ul>
      )}
      <Opens press={say('rolloutHappened.tell_broke')} formId="broke">
        {(close) => (
          <ShortForm
            programmeId={programmeId}
            formId="broke"
            press={say('rolloutHappened.enter')}
            fields={[
              { ...which, options: optionsIn(rows, 'carriers') },
              ...fields('carriersAway', ['count', 'from', 'to', 'reason']),
            ]}
            make={(cells) => brokeEntry(rows, cells)}
            onDone={close}
          />
        )}
      </Opens>
    </Kind>
  );
}

/** Goods came, or come later. */
export function GoodsForms({ programmeId, rows, today }: OfRows) {
  const { say } = useLanguage();
  const open = openArrivals(rows, today);
  const typed = useTypedForms();
  const isTyped = ({ key }: RowNow) => typed.has(`came ${key}`) || typed.has(`goodsLate ${key}`);
  const [isMoreOpen] = useState(() => open.slice(first).some(isTyped));
  return (
    <Kind title={say('rolloutHappened.goods')}>
      {open.length === 0 ? <p className="small">{say('rolloutHappened.no_goods')}</p> : null}
      <Arrivals of={open.slice(0, first)} {...{ programmeId, rows, today }} />
      {open.length <= first ? null : (
        <details open={isMoreOpen}>
          <summary className="press">{say('rolloutHappened.more_goods', { count: open.length - first })}</summary>
          <Arrivals of={open.slice(first)} {...{ programmeId, rows, today }} />
        </details>
      )}
    </Kind>
  );
}

/** Arrivals, each with what may be told of it. */
export function Arrivals({ of: arrivals, ...all }: OfRows & { readonly of: readonly RowNow[] }) {
  if (arrivals.length === 0) return null;
  return (
    <ul className="plain-list">
      {arrivals.map((row) => (
        <ArrivalRow key={row.key} row={row} {...all} />
      ))}
    </ul>
  );
}

/** Goods that are on their way: what was promised, and what may be told of them. */
function ArrivalRow({ programmeId, rows, today, row }: OfRows & { readonly row: RowNow }) {
  const { say, numbers } = useLanguage();
  const { dueOn, quantity } = folderTables.arrivals.columns;
  const { cells } = row;
  const due = cells['dueOn'] ?? today;
  const said = say(due < today ? 'rolloutHappened.ask_goods' : 'rolloutHappened.goods_due', {
    quantity: numbers.quantity(Number(cells['quantity']), ''),
    part: nameIn(rows, 'parts', cells['partId']),
    store: nameIn(rows, 'places', cells['store']),
    day: numbers.date(due),
  });
  const asked = (field: string, initial: string | null): FieldAsked => ({
    ...{ field, column: field === 'quantity' ? quantity : dueOn, initial },
    label: say(`rolloutHappened.field_${field as 'cameOn' | 'quantity' | 'restOn' | 'dueOn'}`),
  });
  const form = { programmeId, press: say('rolloutHappened.enter') };
  const rest = {
    ...asked('restOn', null),
    column: { ...dueOn, required: false },
    about: say('rolloutHappened.rest_about'),
  };
  return (
    <li>
      <p>{said}</p>
      <div className="presses">
        <Opens press={say('rolloutHappened.tell_came')} formId={`came ${row.key}`}>
          {(close) => (
            <ShortForm
              {...form}
              formId={`came ${row.key}`}
              fields={[asked('cameOn', null), asked('quantity', cells['quantity'] ?? null), rest]}
              make={(typed: EnteredCells) => cameEntry(row, rows, typed, today)}
              onDone={close}
            />
          )}
        </Opens>
        <Opens press={say('rolloutHappened.tell_goodsLate')} formId={`goodsLate ${row.key}`}>
          {(close) => (
            <ShortForm
              {...form}
              formId={`goodsLate ${row.key}`}
              fields={[asked('dueOn', null)]}
              make={(typed: EnteredCells) => goodsLaterEntry(row, typed, today)}
              onDone={close}
            />
          )}
        </Opens>
      </div>
    </li>
  );
}

/** A way is closed for some days, or open again. */
export function WayForms({ programmeId, rows, today }: OfRows) {
  const { say } = useLanguage();
  const fields = useFields();
  // A way or an area is chosen from a list: the text of it is judged by nothing else.
  const { reason } = folderTables.closures.columns;
  const areas = new Map<string, number>();
  for (const { cells } of of(rows, 'ways')) {
    const area = cells['weatherArea'];
    if (area !== undefined) areas.set(area, (areas.get(area) ?? 0) + 1);
  }
  const ends = ({ cells }: RowNow) =>
    [cells['from'], cells['to']]
      .map((end) => nameIn(rows, 'places', end))
      .map((end) => nameIn(rows, 'sites', end))
      .join(' – ');
  const nameOf = (row: RowNow) => row.cells['name'] ?? ends(row);
  const choices: readonly Option[] = [
    ...[...areas].map(([area, count]) => ({
      id: areaChoice(area),
      name: say('rolloutHappened.all_of_area', { count }),
    })),
    ...of(rows, 'ways').map((row) => ({ id: row.key, name: nameOf(row) })),
  ];
  const what = ({ cells }: RowNow) => {
    if (cells['wayId'] === undefined) return cells['weatherArea'] ?? '';
    const way = of(rows, 'ways').find(({ key }) => key === cells['wayId']);
    return way === undefined ? cells['wayId'] : nameOf(way);
  };
  return (
    <Kind title={say('rolloutHappened.ways')}>
      <ul className="plain-list">
        {stillAway(rows, 'closures', today).map((row) => (
          <AwayRow key={row.key} {...{ programmeId, row }} said={what(row)} />
        ))}
      </ul>
      <Opens press={say('rolloutHappened.tell_closed')} formId="closed">
        {(close) => (
          <ShortForm
            programmeId={programmeId}
            formId="closed"
            press={say('rolloutHappened.enter')}
            fields={[
              { field: 'what', column: reason, label: say('rolloutHappened.field_what'), options: choices },
              ...fields('closures', ['from', 'to', 'slower_factor', 'reason']),
            ]}
            make={(cells) => closedEntry(rows, cells)}
            onDone={close}
          />
        )}
      </Opens>
    </Kind>
  );
}

/** A crew does not work for some days. */
export function CrewForms({ programmeId, rows }: OfRows) {
  const { say } = useLanguage();
  const fields = useFields();
  const { crewId } = folderTables.crewCarriers.columns;
  return (
    <Kind title={say('rolloutHappened.crews')}>
      <p className="small">{say('rolloutHappened.crews_about')}</p>
      <Opens press={say('rolloutHappened.tell_crewAway')} formId="crewAway">
        {(close) => (
          <ShortForm
            programmeId={programmeId}
            formId="crewAway"
            press={say('rolloutHappened.enter')}
            fields={[
              {
                ...{ field: 'crewId', column: crewId, label: say('rolloutHappened.field_crewId') },
                options: optionsIn(rows, 'crews'),
              },
              ...fields('workCalendars', ['from', 'to', 'reason']),
            ]}
            make={(cells) => crewAwayEntry(rows, cells)}
            onDone={close}
          />
        )}
      </Opens>
    </Kind>
  );
}

function Kind({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="happened-kind">
      <h2>{title}</h2>
      {children}
    </section>
  );
}
