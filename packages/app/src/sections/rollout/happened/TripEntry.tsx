import { folderTables } from '@eavewell/tables';
import { useId, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import {
  backEntry,
  backLaterEntry,
  type EnteredCells,
  handOverField,
  laterEntry,
  leftEntry,
  mendedTrip,
} from './happenedChanges.ts';
import { keptDay, type TripRows } from './happenedRows.ts';
import type { FieldAsked } from './ShortField.tsx';
import { ShortForm } from './ShortForm.tsx';
import { useTypedForms } from './typedHere.ts';

const columns = folderTables.planTrips.columns;
const { handOverDay } = folderTables.sites.columns;

/** What may be told of a trip. */
type Tell = 'left' | 'back' | 'later' | 'mend';

const tellsOf: Readonly<Record<TripRows['trip']['state'], readonly Tell[]>> = {
  planned: ['left', 'later', 'back'],
  underWay: ['back', 'later', 'mend'],
  done: ['mend'],
};

/** Names the form of what is told of a trip; how it stands is told by one form before it left and by another after. */
const formOf = ({ row, trip }: TripRows, tell: Tell): string => `${tell} ${trip.state} ${row.key}`;

/** Was something typed of a trip and not entered? */
export const isTypedOf = (of: TripRows, typed: ReadonlySet<string>): boolean =>
  tellsOf[of.trip.state].some((tell) => typed.has(formOf(of, tell)));

interface TripEntryProps {
  readonly programmeId: string;
  readonly of: TripRows;
  readonly today: string;
  /** Is it asked, for it should have left or be back? */
  readonly isAsked: boolean;
}

/** One trip, and what may be told of it: that it left, is back, is late, or was told wrongly. */
export function TripEntry({ programmeId, of, today, isAsked }: TripEntryProps) {
  const { say, numbers } = useLanguage();
  const id = useId();
  const typed = useTypedForms();
  const { crew, trip } = of;
  const tells = isAsked ? tellsOf[trip.state].slice(0, trip.state === 'underWay' ? 2 : 3) : tellsOf[trip.state];
  const [tell, setTell] = useState<Tell | null>(() => tells.find((one) => typed.has(formOf(of, one))) ?? null);
  const word = (one: Tell) =>
    isAsked && one === 'later'
      ? say('rolloutHappened.not_yet')
      : say(`rolloutHappened.tell_${one === 'later' && trip.state === 'underWay' ? 'backLater' : one}`);
  const was = keptDay(of) ?? (trip.state === 'underWay' ? trip.back : trip.leaves);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is no row of a list
    <div className="trip-entry" role="group" aria-labelledby={id}>
      <p id={id}>
        {isAsked ? (
          <>
            <b>
              {say(trip.state === 'underWay' ? 'rolloutHappened.ask_back' : 'rolloutHappened.ask_left', {
                crew: crew.name,
                day: numbers.date(was),
              })}
            </b>{' '}
          </>
        ) : null}
        {/* A trip still to go is told with its crew. */}
        {trip.state === 'planned' ? null : <b>{crew.name}: </b>}
        {trip.said}
      </p>
      <p className="presses on-screen">
        {tells.map((one) => (
          <button
            key={one}
            type="button"
            className="button"
            aria-expanded={tell === one}
            onClick={() => setTell(tell === one ? null : one)}
          >
            {word(one)}
          </button>
        ))}
      </p>
      {tell === null ? null : (
        <TripForm key={tell} {...{ programmeId, of, today, tell }} onDone={() => setTell(null)} />
      )}
    </div>
  );
}

function TripForm(props: Omit<TripEntryProps, 'isAsked'> & { readonly tell: Tell; onDone(): void }) {
  const { say } = useLanguage();
  const { programmeId, of, today, tell, onDone } = props;
  const { row, trip, stops, leftFrom } = of;
  const initial = (column: string) => row.cells[column] ?? null;
  const asked = (field: 'leftOn' | 'backOn' | 'notBefore' | 'back', first = initial(field)): FieldAsked => ({
    ...{ field, column: columns[field], label: say(`rolloutHappened.field_${field}`), initial: first },
  });
  const form = { programmeId, onDone, formId: formOf(of, tell), press: say('rolloutHappened.enter') };
  switch (tell) {
    case 'left':
      return (
        <ShortForm
          {...form}
          fields={[asked('leftOn', leftFirst(of, today))]}
          make={(cells) => leftEntry(row, cells, today, leftFrom)}
        />
      );
    case 'later':
      return trip.state === 'underWay' ? (
        <ShortForm {...form} fields={[asked('back', null)]} make={(cells) => backLaterEntry(row, cells, today)} />
      ) : (
        <ShortForm {...form} fields={[asked('notBefore')]} make={(cells) => laterEntry(row, cells, today)} />
      );
    case 'mend':
      return (
        <ShortForm
          {...form}
          fields={[asked('leftOn'), asked('backOn')]}
          make={(cells) => mendedTrip(row, cells, today, leftFrom)}
        >
          <p className="small">{say('rolloutHappened.mend_about')}</p>
        </ShortForm>
      );
    case 'back':
      return (
        <ShortForm
          {...form}
          fields={[asked('leftOn'), asked('backOn'), ...stops.map(({ site }) => handOverOf(site, say))]}
          make={(cells) => backEntry(row, stops, cells, today, leftFrom)}
          fill={{ press: say('rolloutHappened.as_planned'), cells: asPlanned(of, today) }}
        >
          <p className="small">{say('rolloutHappened.back_about')}</p>
        </ShortForm>
      );
  }
}

/** The day it was to leave, where that has come; else today. */
function leftFirst(of: TripRows, today: string): string {
  const was = keptDay(of) ?? of.trip.leaves;
  return was <= today ? was : today;
}

function handOverOf(site: TripRows['stops'][number]['site'], say: ReturnType<typeof useLanguage>['say']): FieldAsked {
  const name = site.cells['name'] ?? site.key;
  return {
    ...{ field: handOverField(site.key), column: handOverDay, initial: site.cells['handOverDay'] ?? null },
    label: say('rolloutHappened.field_handOver', { site: name }),
  };
}

/** The days as they were planned, as far as they have come. */
function asPlanned({ row, stops }: TripRows, today: string): EnteredCells {
  const past = (day: string | undefined) => (day !== undefined && day <= today ? day : null);
  return {
    leftOn: row.cells['leftOn'] ?? past(row.cells['leaves']),
    backOn: past(row.cells['back']),
    ...Object.fromEntries(stops.map(({ stop, site }) => [handOverField(site.key), past(stop.cells['handOver'])])),
  };
}
