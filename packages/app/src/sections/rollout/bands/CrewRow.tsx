import type { RolloutSheet, SheetCrew, SheetTrip } from '@eavewell/tables';
import { memo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../../look/VerdictMark.tsx';
import { Ground, type OnAxis } from './Ground.tsx';
import { Hull, HullLetters } from './Hull.tsx';
import { crewRow, type HullBox, type RowBox } from './hulls.ts';
import { crewWords, lookOf, tripLabel } from './tripWords.ts';

/** A trip that is pressed, and its place on the page. */
export type OnOpen = (tripId: string, element: HTMLElement) => void;

interface RowOf {
  readonly sheet: Pick<RolloutSheet, 'from'>;
  readonly crew: SheetCrew;
  readonly box: RowBox;
  readonly on: OnAxis;
}

/** The hulls of a row that are on the page; always that which the keyboard is at. */
function hullsSeen({ hulls }: RowBox, { from, to }: OnAxis['seen'], active: string | null): readonly HullBox[] {
  return hulls.filter(({ x, width, tripId }) => tripId === active || (x <= to && x + width >= from));
}

/** A crew: its name, and what is seen of its trips. A row that is not on the page has its name alone. */
export const CrewRow = memo(function CrewRow({
  active,
  isSeen,
  onHold,
  onOpen,
  ...of
}: RowOf & {
  readonly active: string | null;
  readonly isSeen: boolean;
  readonly onHold: (tripId: string) => void;
  readonly onOpen: OnOpen;
}) {
  const { say } = useLanguage();
  const { crew, box, on } = of;
  const hulls = isSeen ? hullsSeen(box, on.seen, active) : box.hulls.filter(({ tripId }) => tripId === active);
  return (
    <li className="band-row crew-row">
      <CrewName {...of} />
      <div className="crew-trips">
        <CrewDrawing {...of} hulls={hulls} />
        {crew.trips.length === 0 ? <p className="no-trips small">{say('rolloutBands.crew_no_trips')}</p> : null}
        <ul aria-label={crew.name}>
          {hulls.map((hull) => (
            <TripCell
              key={hull.tripId}
              {...{ hull, crew, onHold, onOpen }}
              trip={crew.trips[hull.index]!}
              isActive={hull.tripId === active}
            />
          ))}
        </ul>
      </div>
    </li>
  );
});

/** Who it is, how many, by what. */
export function CrewName({ sheet, crew }: Pick<RowOf, 'sheet' | 'crew'>) {
  const language = useLanguage();
  return (
    <div className="band-name">
      <span className="crew-name" title={crew.name}>
        {crew.name}
      </span>
      <span className="about">{crewWords(crew, sheet, language)}</span>
    </div>
  );
}

/** The row's line, with the hulls on it. */
export function CrewDrawing({
  crew,
  box,
  on,
  hulls,
}: Pick<RowOf, 'crew' | 'box' | 'on'> & { readonly hulls: readonly HullBox[] }) {
  const middle = box.y + crewRow.hullTop_px + crewRow.hull_px / 2;
  return (
    <Ground
      on={on}
      height={box.height}
      top={box.y}
      letters={hulls.map((hull) => <HullLetters key={hull.tripId} hull={hull} trip={crew.trips[hull.index]!} />)}
    >
      <path className="b-crew" d={`M0 ${middle}H${on.axis.width_px}`} />
      {hulls.map((hull) => (
        <Hull key={hull.tripId} hull={hull} trip={crew.trips[hull.index]!} />
      ))}
    </Ground>
  );
}

/** What is pressed of a trip: all of its hull, with its people and nights. */
function TripCell({
  hull,
  trip,
  crew,
  isActive,
  onHold,
  onOpen,
}: {
  readonly hull: HullBox;
  readonly trip: SheetTrip;
  readonly crew: SheetCrew;
  readonly isActive: boolean;
  readonly onHold: (tripId: string) => void;
  readonly onOpen: OnOpen;
}) {
  const language = useLanguage();
  return (
    <li
      className="trip-cell"
      aria-posinset={hull.index + 1}
      aria-setsize={crew.trips.length}
      style={{ insetInlineStart: hull.x, inlineSize: hull.width }}
    >
      <button
        type="button"
        data-trip={trip.tripId}
        tabIndex={isActive ? 0 : -1}
        aria-haspopup="dialog"
        aria-label={tripLabel(trip, crew, language)}
        onFocus={() => onHold(trip.tripId)}
        onClick={(event) => onOpen(trip.tripId, event.currentTarget)}
      />
    </li>
  );
}

/** The mark of a trip that is tight or cannot be as planned. */
export function TripMark({ trip }: { readonly trip: SheetTrip }) {
  const look = lookOf(trip);
  if (look === 'broken') return <VerdictMark verdict="short" size={18} />;
  return look === 'tight' ? <VerdictMark verdict="tight" size={18} /> : null;
}
