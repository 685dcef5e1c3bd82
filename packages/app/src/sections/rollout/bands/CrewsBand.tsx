import type { RolloutSheet, SheetCrew, SheetTrip } from '@eavewell/tables';
import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { CrewRow, type OnOpen } from './CrewRow.tsx';
import { BandTitle, type OnAxis } from './Ground.tsx';
import { HaulRows } from './HaulRows.tsx';
import { crewRow, type HullBox, type HullsLaid, hullsOf, type PlaceOnBands, placeAt } from './hulls.ts';
import { firstTrip, tripAfterKey } from './roving.ts';
import { useSeenDown } from './useSeen.ts';

/** What a hand or a key does to trips, beside opening them. All of it may be left out. */
export interface ByHandOnBands {
  /** Drawn over the hulls, from the left of the axis and the top of the first crew's row. */
  readonly layer?: (laid: HullsLaid) => ReactNode;
  /** At the foot of a trip that is opened. */
  readonly inTrip?: (trip: SheetTrip, crew: SheetCrew, close: () => void) => ReactNode;
  /** A pointer goes down somewhere in the crews' band. Whoever takes it calls `preventDefault`. */
  readonly onPointerDown?: (event: PointerEvent<HTMLElement>, at: PlaceOnBands, laid: HullsLaid) => void;
  /** A key is pressed on a trip. Whoever takes it calls `preventDefault`, and the key leads nowhere else. */
  readonly onKeyDown?: (event: KeyboardEvent<HTMLElement>, hull: HullBox, laid: HullsLaid) => void;
}

/** The crews' rows: each trip a hull. One stop of Tab; arrows go from trip to trip. */
export function CrewsBand({
  sheet,
  on,
  byHand,
  onOpen,
}: {
  readonly sheet: RolloutSheet;
  readonly on: OnAxis;
  readonly byHand?: ByHandOnBands | undefined;
  readonly onOpen: OnOpen;
}) {
  const { say } = useLanguage();
  const laid = useMemo(() => hullsOf(sheet, on.axis), [sheet, on.axis]);
  const [held, setHeld] = useState<string | null>(null);
  const active = held !== null && laid.hullOf.has(held) ? held : firstTrip(laid);
  const rows = useRef<HTMLDivElement>(null);
  const down = useSeenDown(rows);
  const wanted = useRef<string | null>(null);
  useEffect(() => {
    if (wanted.current === null) return;
    const at = rows.current?.querySelector<HTMLElement>(`[data-trip="${CSS.escape(wanted.current)}"]`);
    wanted.current = null;
    at?.focus();
  });
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const hull = active === null ? undefined : laid.hullOf.get(active);
    if (hull === undefined) return;
    byHand?.onKeyDown?.(event, hull, laid);
    if (event.defaultPrevented) return;
    const next = tripAfterKey(laid, hull.tripId, event.key, event.ctrlKey || event.metaKey);
    if (next === null) return;
    event.preventDefault();
    wanted.current = next;
    setHeld(next);
  };
  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    const box = rows.current?.querySelector('.crew-layer')?.getBoundingClientRect();
    const at = box && placeAt(laid, event.clientX - box.left, event.clientY - box.top);
    if (at) byHand?.onPointerDown?.(event, at, laid);
  };
  return (
    <>
      <CrewsHead on={on} sheet={sheet} />
      <div className="crews-and-hauls">
        {/* biome-ignore lint/a11y/noStaticElementInteractions: what is pressed and has the focus are the trips in it */}
        <div ref={rows} className="crew-rows" onKeyDown={onKeyDown} onPointerDown={onPointerDown}>
          <ul className="band-list" aria-label={say('rolloutBands.crews')}>
            {sheet.crews.map((crew, row) => (
              <CrewRow
                key={crew.crewId}
                {...{ sheet, crew, on, onOpen }}
                box={laid.rows[row]!}
                active={crew.trips.some(({ tripId }) => tripId === active) ? active : null}
                isSeen={row * crewRow.height_px < down.to && (row + 1) * crewRow.height_px > down.from}
                onHold={setHeld}
              />
            ))}
          </ul>
          <div className="crew-layer" style={{ inlineSize: on.axis.width_px }}>
            {byHand?.layer?.(laid)}
          </div>
        </div>
        <HaulRows sheet={sheet} on={on} trips={laid} onOpen={onOpen} />
      </div>
    </>
  );
}

/** What the rows are, and how a hull is read. */
export function CrewsHead({ on, sheet }: { readonly on: OnAxis; readonly sheet: Pick<RolloutSheet, 'hauls'> }) {
  const { say } = useLanguage();
  const about = say('rolloutBands.crews_about', { hasHauls: sheet.hauls.length > 0 ? 'yes' : 'no' });
  return <BandTitle on={on} title={say('rolloutBands.crews')} about={about} />;
}
