import { folderTables } from '@eavewell/tables';
import { useState } from 'react';
import type { RowNow } from '../../../forms/draft.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { Kind, nameIn, type OfRows } from './formParts.tsx';
import { cameEntry, type EnteredCells, goodsLaterEntry } from './happenedChanges.ts';
import { openArrivals } from './happenedRows.ts';
import { Opens } from './Opens.tsx';
import type { FieldAsked } from './ShortField.tsx';
import { ShortForm } from './ShortForm.tsx';
import { useTypedForms } from './typedHere.ts';

/** Arrivals shown before one asks for more. Ours. */
const first = 5;

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
  const asked = (field: 'cameOn' | 'quantity' | 'dueOn', initial: string | null = null): FieldAsked => ({
    ...{ field, column: field === 'quantity' ? quantity : dueOn, initial },
    label: say(`rolloutHappened.field_${field}`),
  });
  const form = { programmeId, press: say('rolloutHappened.enter') };
  const promised = cells['quantity'] ?? null;
  const cameFields = useCameFields(Number(promised));
  return (
    <li>
      <p>{said}</p>
      <div className="presses">
        <Opens press={say('rolloutHappened.tell_came')} formId={`came ${row.key}`}>
          {(close) => (
            <ShortForm
              {...form}
              formId={`came ${row.key}`}
              fields={(typed) => [asked('cameOn'), asked('quantity', promised), ...cameFields(typed)]}
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
              fields={[asked('dueOn')]}
              make={(typed: EnteredCells) => goodsLaterEntry(row, typed, today)}
              onDone={close}
            />
          )}
        </Opens>
      </div>
    </li>
  );
}

/** What is asked of goods of which fewer came than were promised: whether the others still come, and when. */
function useCameFields(promised: number): (typed: EnteredCells) => readonly FieldAsked[] {
  const { say, numbers } = useLanguage();
  const { reason } = folderTables.closures.columns;
  const { dueOn } = folderTables.arrivals.columns;
  return ({ quantity = null, rest = null }) => {
    const missing = quantity === null ? 0 : promised - Number(quantity);
    if (!(missing > 0)) return [];
    const isGuess = rest === 'unknown';
    const asksRest: FieldAsked = {
      ...{ field: 'rest', column: reason },
      label: say('rolloutHappened.field_rest', { quantity: numbers.quantity(missing, '') }),
      options: (['on', 'unknown', 'none'] as const).map((id) => ({
        ...{ id, name: say(`rolloutHappened.rest_${id}`), isBare: true },
      })),
    };
    const asksDay: FieldAsked = {
      ...{ field: 'restOn', column: { ...dueOn, required: false } },
      label: say(isGuess ? 'rolloutHappened.field_askOn' : 'rolloutHappened.field_restOn'),
      ...(isGuess ? { about: say('rolloutHappened.rest_guess') } : {}),
    };
    return rest === 'on' || isGuess ? [asksRest, asksDay] : [asksRest];
  };
}
