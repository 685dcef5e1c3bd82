import { folderTables } from '@eavewell/tables';
import { useMemo } from 'react';
import type { RowNow } from '../../../forms/draft.ts';
import type { Option } from '../../../forms/options.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { BehindWays } from './BehindWays.tsx';
import type { AroundClosed } from './behindClosed.ts';
import {
  areaChoice,
  asksEnds,
  closedEntry,
  closedTogether,
  modeChoice,
  modes,
  nameChoice,
  otherEndEntry,
  type Stretch,
  stretchesOf,
  toLookAgain,
} from './closedWays.ts';
import { AwayRow, Kind, type OfRows, useFields, wayNames } from './formParts.tsx';
import type { EnteredCells } from './happenedChanges.ts';
import { stillAway } from './happenedRows.ts';
import { Opens } from './Opens.tsx';
import type { FieldAsked } from './ShortField.tsx';
import { ShortForm } from './ShortForm.tsx';
import { useTyped } from './typedHere.ts';

/** A way is closed for some days, or open again. */
export function WayForms({ programmeId, rows, today, sheet }: OfRows & Pick<AroundClosed, 'sheet'>) {
  const { say } = useLanguage();
  const asked = toLookAgain(rows, today);
  const others = stillAway(rows, 'closures', today).filter((row) => !asked.includes(row));
  return (
    <Kind title={say('rolloutHappened.ways')}>
      <ClosedWays {...{ programmeId, rows, today }} of={others} />
      <Opens press={say('rolloutHappened.tell_closed')} formId="closed">
        {(close) => <ClosedForm {...{ programmeId, rows, today, sheet }} onDone={close} />}
      </Opens>
    </Kind>
  );
}

/** Ways that are closed, those that closed together as one: open again, or closed on. */
export function ClosedWays(props: OfRows & { readonly of: readonly RowNow[]; readonly isAsked?: boolean }) {
  const { programmeId, rows, today, of: closures, isAsked = false } = props;
  const { say } = useLanguage();
  const ends = useEnds();
  const names = wayNames(rows);
  if (closures.length === 0) return null;
  return (
    <ul className="plain-list">
      {closedTogether(closures).map((own) => {
        const [first] = own;
        const { wayId, weatherArea } = first.cells;
        const name = wayId === undefined ? (weatherArea ?? '') : names.way(wayId);
        const formId = `otherEnd ${first.key}`;
        return (
          <AwayRow
            key={first.key}
            {...{ programmeId, rows: own, isAsked }}
            said={own.length === 1 ? name : say('rolloutHappened.and_more', { name, count: own.length - 1 })}
          >
            <Opens press={say('rolloutHappened.tell_otherEnd')} formId={formId}>
              {(close) => (
                <ShortForm
                  {...{ programmeId, formId }}
                  press={say('rolloutHappened.enter')}
                  fields={ends}
                  make={(cells) => otherEndEntry(own, cells, today)}
                  onDone={close}
                />
              )}
            </Opens>
          </AwayRow>
        );
      })}
    </ul>
  );
}

/** Is the last day known? A day that is not is one to look again. */
function useEnds(): (cells: EnteredCells) => readonly FieldAsked[] {
  const { say } = useLanguage();
  const { to, reason } = folderTables.closures.columns;
  return ({ ends = null }) => [
    {
      ...{ field: 'ends', column: reason, label: say('rolloutHappened.field_ends'), initial: 'known' },
      options: (['known', 'guess'] as const).map((id) => ({
        ...{ id, name: say(`rolloutHappened.ends_${id}`), isBare: true },
      })),
    },
    {
      ...{ field: 'to', column: to },
      label: say(ends === 'guess' ? 'rolloutHappened.field_lookOn' : 'rolloutHappened.field_to'),
      ...(ends === 'guess' ? { about: say('rolloutHappened.ends_about') } : {}),
    },
  ];
}

const ofClosed = 'closed';

/** What is closed, all of it at once, and who lies behind it. */
function ClosedForm(props: OfRows & Pick<AroundClosed, 'sheet'> & { onDone(): void }) {
  const { programmeId, rows, today, sheet, onDone } = props;
  const { say } = useLanguage();
  const fields = useFields();
  const ends = useEnds();
  const choices = useChoices(rows);
  const typed = useTyped(ofClosed);
  const without = typed.cells['without']?.typed ?? null;
  const { from } = folderTables.ways.columns;
  const { reason } = folderTables.closures.columns;
  const endField = (field: 'start' | 'end', what: string | null): FieldAsked => ({
    ...{ field, column: from, label: say(`rolloutHappened.field_${field}`), options: choices.endsOf(what) },
    ...(field === 'start' && asksEnds(what) === 'may' ? { about: say('rolloutHappened.ends_may') } : {}),
  });
  return (
    <ShortForm
      programmeId={programmeId}
      formId={ofClosed}
      press={say('rolloutHappened.enter')}
      fields={(cells) => {
        const { what = null } = cells;
        return [
          { field: 'what', column: reason, label: say('rolloutHappened.field_what'), options: choices.all },
          ...(asksEnds(what) === 'no' ? [] : [endField('start', what), endField('end', what)]),
          ...fields('closures', ['from']),
          ...ends(cells),
          ...fields('closures', ['slower_factor', 'reason']),
        ];
      }}
      make={(cells) => closedEntry(rows, { ...cells, without }, today)}
      preview={(cells) => (
        <BehindWays
          {...{ rows, sheet, cells: { ...cells, without } }}
          onTakeOff={(ids) => typed.type('without', { typed: ids.join(';'), chosen: null, seen: null })}
        />
      )}
      onDone={onDone}
    />
  );
}

/** What may be closed: from one place to another by river, road or on foot; all of one name, all of an area; one stretch. */
function useChoices(rows: readonly RowNow[]) {
  const { say } = useLanguage();
  return useMemo(() => {
    const stretches = stretchesOf(rows);
    const names = wayNames(rows);
    const bare = (id: string, name: string): Option => ({ id, name, isBare: true });
    const several = (key: (one: Stretch) => string | null) => {
      const counts = new Map<string, number>();
      for (const one of stretches) {
        const of = key(one);
        if (of !== null) counts.set(of, (counts.get(of) ?? 0) + 1);
      }
      return [...counts];
    };
    const all: readonly Option[] = [
      ...modes
        .filter((mode) => stretches.filter((one) => one.mode === mode).length > 1)
        .map((mode) => bare(modeChoice(mode), say(`rolloutHappened.from_to_${mode}`))),
      ...several(({ name }) => name)
        .filter(([, count]) => count > 1)
        .map(([name, count]) => bare(nameChoice(name), say('rolloutHappened.all_of_name', { name, count }))),
      ...several(({ area }) => area).map(([area, count]) =>
        bare(areaChoice(area), say('rolloutHappened.all_of_area', { count, area })),
      ),
      ...stretches.map(({ wayId }) => ({ id: wayId, name: names.way(wayId) })),
    ];
    const endsOf = (what: string | null): readonly Option[] => {
      const own = stretches.filter(
        ({ mode, name }) => what === modeChoice(mode) || (name !== null && what === nameChoice(name)),
      );
      return [...new Set(own.flatMap(({ from, to }) => [from, to]))].map((id) => ({ id, name: names.end(id) }));
    };
    return { all, endsOf };
  }, [rows, say]);
}
