import type { RolloutSheet } from '@eavewell/tables';
import { useCallback, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { PictureHatches } from '../../../look/PictureView.tsx';
import { useIsPrinting } from '../../../look/useIsPrinting.ts';
import { DrinkingTable, StockTable } from './BandTables.tsx';
import { CrewList } from './CrewList.tsx';
import type { ByHandOnBands } from './CrewsBand.tsx';
import { Drawn } from './Drawn.tsx';
import { Exceptions } from './Exceptions.tsx';
import { HaulOpened } from './HaulKnown.tsx';
import { LeavingNext } from './LeavingNext.tsx';
import { OnPaper } from './OnPaper.tsx';
import { OnPhone } from './OnPhone.tsx';
import { TripOpened } from './TripOpened.tsx';
import { tripsOf } from './tripWords.ts';
import './bands.css';

/** Below this width weeks do not stand side by side: bands.css has the same. */
const slim = '(max-width: 700px)';

const subscribe = (listener: () => void) => {
  const asked = matchMedia(slim);
  asked.addEventListener('change', listener);
  return () => asked.removeEventListener('change', listener);
};

/**
 * Ways that close, crews with their trips, people who drink, stock: on one axis of weeks.
 *
 * What moves trips by hand is given as `byHand`: a layer over the hulls, what stands in a trip that is opened, what a pointer and
 * a key do. It is drawn from the sheet it is given, so a sheet in which a site was moved shows that.
 */
export function Bands({
  sheet,
  programmeId,
  byHand,
}: {
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
  readonly byHand?: ByHandOnBands;
}) {
  const { say } = useLanguage();
  const isPrinting = useIsPrinting();
  const isSlim = useSyncExternalStore(subscribe, () => matchMedia(slim).matches);
  const [part, choosePart] = useState<string | null>(null);
  const stock = useMemo(() => ({ key: part, onChoose: choosePart }), [part]);
  const [opened, setOpened] = useState<string | null>(null);
  const near = useRef<HTMLElement | null>(null);
  const open = useCallback((tripId: string, element: HTMLElement) => {
    near.current = element;
    setOpened(tripId);
  }, []);
  const close = useCallback(() => setOpened(null), []);
  const trips = tripsOf(sheet);
  const of = trips.find(({ trip }) => trip.tripId === opened);
  const haul = sheet.hauls.find(({ haulId }) => haulId === opened);
  return (
    <section className="bands" aria-label={say('rolloutBands.name')}>
      <PictureHatches />
      <Exceptions sheet={sheet} onShow={open} />
      {trips.length === 0 ? <p>{say('rolloutBands.no_trips')}</p> : null}
      {sheet.crews.length === 0 ? null : isPrinting ? (
        <OnPaper sheet={sheet} stock={stock} />
      ) : isSlim ? (
        <OnPhone sheet={sheet} programmeId={programmeId} inTrip={byHand?.inTrip} />
      ) : (
        <Drawn sheet={sheet} stock={stock} byHand={byHand} onOpen={open} />
      )}
      {isSlim || sheet.crews.length === 0 ? null : <AsList sheet={sheet} programmeId={programmeId} />}
      <DrinkingTable sheet={sheet} />
      {isSlim ? null : <StockTable sheet={sheet} chosen={part} />}
      {isSlim && !isPrinting ? null : <LeavingNext sheet={sheet} programmeId={programmeId} />}
      {haul === undefined ? null : <HaulOpened {...{ haul, sheet, programmeId, near }} onClose={close} />}
      {of === undefined ? null : (
        <TripOpened {...{ of, sheet, programmeId, near }} onClose={close}>
          {byHand?.inTrip?.(of.trip, of.crew, close)}
        </TripOpened>
      )}
    </section>
  );
}

/** All trips in words, crew by crew; made when it is asked for. */
function AsList({ sheet, programmeId }: { readonly sheet: RolloutSheet; readonly programmeId: string }) {
  const { say } = useLanguage();
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="band-table on-screen" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{say('rolloutBands.as_list')}</summary>
      {isOpen ? <CrewList sheet={sheet} programmeId={programmeId} /> : null}
    </details>
  );
}
