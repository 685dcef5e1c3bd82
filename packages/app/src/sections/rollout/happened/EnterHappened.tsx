import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams, useSearch } from '@tanstack/react-router';
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { touchedIn, unsaved } from '../../../forms/unsaved.ts';
import { useDraft } from '../../../forms/useDraft.ts';
import { useKnownRows } from '../../../forms/useKnownRows.ts';
import { Who } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { NotUsed } from '../leaning/LeansOn.tsx';
import { WhileWorkedOut } from '../leaning/WhileWorkedOut.tsx';
import { ChangedSince } from '../plans/ChangedSince.tsx';
import { FoundNotice } from '../plans/FoundNotice.tsx';
import { Searching } from '../plans/Searching.tsx';
import { rolloutQuery } from '../rolloutQuery.ts';
import { toLookAgain } from './closedWays.ts';
import { Arrivals, GoodsForms } from './GoodsForms.tsx';
import { happenedTables, nextTrips, openArrivals, overdueTrips, type TripRows, tripsWithRows } from './happenedRows.ts';
import { CarrierForms, CrewForms } from './OtherForms.tsx';
import { isTypedOf, TripEntry } from './TripEntry.tsx';
import { TypedHere, useTypedForms } from './typedHere.ts';
import { ClosedWays, WayForms } from './WayForms.tsx';
import '../../../forms/forms.css';
import '../plans/plans.css';
import './happened.css';

const from = '/p/$programmeId/rollout/happened';

/** What happened, to be entered: what is asked first, then trips, boats, goods, ways, crews; and what becomes of the plan. */
export function EnterHappened() {
  const { say } = useLanguage();
  const { programmeId } = useParams({ from });
  return (
    <WhileWorkedOut programmeId={programmeId} title={say('rolloutHappened.title')}>
      <Happened />
    </WhileWorkedOut>
  );
}

// long: the page as it is read, part after part
function Happened() {
  const { say, numbers } = useLanguage();
  const { programmeId } = useParams({ from });
  const { plan } = useSearch({ from });
  const { data: sheet } = useSuspenseQuery(rolloutQuery(programmeId, plan));
  const rows = useKnownRows(programmeId, happenedTables);
  const { day: today } = sheet;
  const trips = useMemo(() => (rows === null ? [] : tripsWithRows(sheet, rows)), [sheet, rows]);
  const shown = sheet.plans.find(({ planId }) => planId === sheet.planId);
  const overdue = overdueTrips(trips);
  const late = rows === null ? [] : openArrivals(rows, today).filter(({ cells }) => cells['dueOn']! < today);
  const guessed = rows === null ? [] : toLookAgain(rows, today);
  const next = nextTrips(trips);
  const told = trips.filter(({ trip }) => trip.state !== 'planned');
  const others = trips.filter((one) => one.trip.state === 'planned' && !next.includes(one));
  const { name, draft, dispatch, foundAt } = useDraft(programmeId, 'happened');
  useEffect(() => unsaved.note(name, touchedIn(draft)), [name, draft]);
  return (
    <TypedHere value={{ draft, dispatch }}>
      <div className="happened">
        <h1>{say('rolloutHappened.title')}</h1>
        <p className="rest">
          {shown === undefined
            ? say('rolloutHappened.no_plan')
            : say(shown.isInForce ? 'rolloutHappened.of_plan' : 'rolloutHappened.of_other_plan', {
                name: shown.name,
              })}{' '}
          <Link
            className="on-screen"
            to="/p/$programmeId/rollout"
            params={{ programmeId }}
            search={shown === undefined ? {} : { plan: shown.planId }}
          >
            {say('rolloutPlans.back')}
          </Link>
        </p>
        <Who />
        {foundAt === null || draft.beganAt === null ? null : (
          <p className="heed">
            {say('rolloutHappened.typed_found', { when: numbers.moment(foundAt) })}{' '}
            <button type="button" className="button" onClick={() => dispatch({ kind: 'letGo' })}>
              {say('forms.let_go')}
            </button>
          </p>
        )}
        <Searching programmeId={programmeId} sheet={sheet} />
        {sheet.planId === null ? null : <FoundNotice programmeId={programmeId} planId={sheet.planId} />}
        <ChangedSince programmeId={programmeId} sheet={sheet} />
        <NotUsed programmeId={programmeId} sheet={sheet} />
        {overdue.length + late.length + guessed.length === 0 || rows === null ? null : (
          <section className="asked-first" aria-labelledby="asked-first">
            <h2 id="asked-first">{say('rolloutHappened.asked_first')}</h2>
            <Trips of={overdue} {...{ programmeId, today }} isAsked />
            <Arrivals of={late} {...{ programmeId, rows, today }} />
            <ClosedWays of={guessed} {...{ programmeId, rows, today }} isAsked />
          </section>
        )}
        {trips.length === 0 ? null : (
          <section aria-labelledby="happened-trips">
            <h2 id="happened-trips">{say('rolloutHappened.trips')}</h2>
            <Trips of={next.filter((one) => !overdue.includes(one))} {...{ programmeId, today }} />
            <Folded title={say('rolloutHappened.told_trips', { count: told.length })} of={told}>
              <p className="small">{say('rolloutHappened.past_about')}</p>
              <Trips of={told.filter((one) => !next.includes(one))} {...{ programmeId, today }} />
            </Folded>
            <Folded title={say('rolloutHappened.other_trips', { count: others.length })} of={others}>
              <Trips of={others} {...{ programmeId, today }} />
            </Folded>
          </section>
        )}
        {rows === null ? null : (
          <>
            <CarrierForms {...{ programmeId, rows, today }} />
            <GoodsForms {...{ programmeId, rows, today }} />
            <WayForms {...{ programmeId, rows, today, sheet }} />
            <CrewForms {...{ programmeId, rows, today }} />
          </>
        )}
      </div>
    </TypedHere>
  );
}

/** Trips that are seldom asked for: open where something was typed of one of them and not entered. */
function Folded(props: { readonly title: string; readonly of: readonly TripRows[]; readonly children: ReactNode }) {
  const typed = useTypedForms();
  const [isOpen] = useState(() => props.of.some((one) => isTypedOf(one, typed)));
  if (props.of.length === 0) return null;
  return (
    <details open={isOpen}>
      <summary className="press">{props.title}</summary>
      {props.children}
    </details>
  );
}

function Trips(props: {
  readonly programmeId: string;
  readonly of: readonly TripRows[];
  readonly today: string;
  readonly isAsked?: boolean;
}) {
  const { programmeId, of, today, isAsked = false } = props;
  return (
    <>
      {of.map((one) => (
        <TripEntry key={one.row.key} of={one} {...{ programmeId, today, isAsked }} />
      ))}
    </>
  );
}
