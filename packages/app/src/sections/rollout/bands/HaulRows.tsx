import type { RolloutSheet } from '@eavewell/tables';
import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import type { OnOpen } from './CrewRow.tsx';
import { Ground, type OnAxis } from './Ground.tsx';
import { type HaulBox, type HaulRow, haulsLaid, tiesOf } from './haulBoxes.ts';
import { cellLinesOf, crewRow, type HullsLaid } from './hulls.ts';
import { firstTrip, tripAfterKey } from './roving.ts';
import { haulLabel, nightsOut, type SheetHaul } from './tripWords.ts';

type SheetOf = Pick<RolloutSheet, 'hauls' | 'places' | 'crews'>;

/** Under the crews: each store that is filled from another, and what is brought to it. One stop of Tab; arrows go on. */
export function HaulRows({
  sheet,
  on,
  trips,
  onOpen,
}: {
  readonly sheet: SheetOf;
  readonly on: OnAxis;
  /** The crews' rows, to which the lines lead. */
  readonly trips: HullsLaid;
  readonly onOpen: OnOpen;
}) {
  const { say } = useLanguage();
  const laid = useMemo(() => haulsLaid(sheet, on.axis), [sheet, on.axis]);
  const [held, setHeld] = useState<string | null>(null);
  const active = held !== null && laid.hullOf.has(held) ? held : firstTrip(laid);
  const rows = useRef<HTMLDivElement>(null);
  const wanted = useRef<string | null>(null);
  useEffect(() => {
    if (wanted.current === null) return;
    const at = rows.current?.querySelector<HTMLElement>(`[data-haul="${CSS.escape(wanted.current)}"]`);
    wanted.current = null;
    at?.focus();
  });
  if (laid.rows.length === 0) return null;
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const next = active === null ? null : tripAfterKey(laid, active, event.key, event.ctrlKey || event.metaKey);
    if (next === null) return;
    event.preventDefault();
    wanted.current = next;
    setHeld(next);
  };
  return (
    <>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: what is pressed and has the focus are the runs in it */}
      <div ref={rows} className="haul-rows" onKeyDown={onKeyDown}>
        <ul className="band-list" aria-label={say('rolloutBands.hauls')}>
          {laid.rows.map((row) => (
            <li key={row.storeId} className="band-row crew-row">
              <HaulName row={row} sheet={sheet} />
              <div className="crew-trips">
                <HaulDrawing row={row} on={on} />
                <ul aria-label={say('rolloutBands.hauls_to', haulValuesOf(row, sheet))}>
                  {seenOf(row, on, active).map((box) => (
                    <HaulCell
                      key={box.tripId}
                      {...{ box, sheet, onOpen }}
                      count={row.hulls.length}
                      isActive={box.tripId === active}
                      onHold={setHeld}
                    />
                  ))}
                </ul>
              </div>
            </li>
          ))}
        </ul>
      </div>
      <svg
        className="band-drawing haul-ties"
        width={on.axis.width_px}
        height={trips.height + laid.height}
        aria-hidden="true"
        focusable="false"
      >
        <path className="b-tie" d={tiesOf(laid, trips)} />
      </svg>
    </>
  );
}

const haulValuesOf = ({ first, storeId }: HaulRow, { places }: SheetOf) => {
  const name = (id: string) => places.find(({ placeId }) => placeId === id)?.name ?? id;
  return {
    ...{ store: name(storeId), from: name(first.from) },
    by: first.by ?? '',
    hasBy: first.by === null ? 'no' : 'yes',
  };
};

const seenOf = ({ hulls }: HaulRow, { seen }: OnAxis, active: string | null): readonly HaulBox[] =>
  hulls.filter(({ x, width, tripId }) => tripId === active || (x <= seen.to && x + width >= seen.from));

/** Which store is filled, from where, by what. */
export function HaulName({ row, sheet }: { readonly row: HaulRow; readonly sheet: SheetOf }) {
  const { say } = useLanguage();
  const values = haulValuesOf(row, sheet);
  const to = say('rolloutBands.hauls_to', values);
  return (
    <div className="band-name">
      <span className="crew-name" title={to}>
        {to}
      </span>
      <span className="about">{say('rolloutBands.hauls_from', values)}</span>
    </div>
  );
}

/** The row's line with what is brought: filled while it is loaded, empty on the way back. */
export function HaulDrawing({
  row,
  on,
  isPaper = false,
}: {
  readonly row: HaulRow;
  readonly on: OnAxis;
  /** Nothing opens on paper: boxes are numbered. */
  readonly isPaper?: boolean;
}) {
  const middle = row.y + crewRow.hullTop_px + crewRow.hull_px / 2;
  const boxes = row.hulls.filter(({ x, width }) => x <= on.seen.to && x + width >= on.seen.from);
  return (
    <Ground on={on} height={row.height} top={row.y} letters={<HaulLetters {...{ row, boxes, isPaper }} />}>
      <path className="b-crew" d={`M0 ${middle}H${on.axis.width_px}`} />
      {boxes.map((box) => (
        <g key={box.tripId} className="haul">
          <rect className="h-empty" x={box.x} y={box.y} width={box.width} height={box.height} />
          {box.loaded.map(({ x, width }) => (
            <rect key={x} className="h-loaded" x={x} y={box.y} width={width} height={box.height} />
          ))}
          <path className="h-cells" d={cellLinesOf(box)} />
        </g>
      ))}
    </Ground>
  );
}

/** Room a figure takes [px], and how far letters may stand out over the ends of their box [px]. */
const [figure_px, beyond_px] = [7.2, 14] as const;

/** Texts in the middle of their boxes: none that is wider than there is room for it, or would touch the one before. */
function lettersOf<T>(
  boxes: readonly HaulBox[],
  textOf: (box: HaulBox) => string,
  set: (at: number, text: string) => T,
): T[] {
  let free = Number.NEGATIVE_INFINITY;
  return boxes.flatMap((box) => {
    const text = textOf(box);
    const [width, middle] = [text.length * figure_px, box.x + box.width / 2];
    if (text === '' || width > box.width + 2 * beyond_px || middle - width / 2 < free) return [];
    free = middle + width / 2;
    return [set(middle, text)];
  });
}

/** Above what it weighs, below its nights; on paper the number under which it stands in the list. */
function HaulLetters({
  row,
  boxes,
  isPaper,
}: {
  readonly row: HaulRow;
  readonly boxes: readonly HaulBox[];
  readonly isPaper: boolean;
}) {
  const { say, numbers } = useLanguage();
  const top = row.y + crewRow.hullTop_px;
  const nightsOf = (haul: SheetHaul) => {
    const count = nightsOut(haul);
    return count === null ? '' : say('rolloutBands.nights_short', { count });
  };
  const masses = lettersOf(
    boxes,
    ({ haul }) => numbers.quantity(Math.round(haul.loaded_kg), 'kg'),
    (x, text) => (
      <text key={`above ${x}`} className="b-figure" x={x} y={top - 5} textAnchor="middle">
        {text}
      </text>
    ),
  );
  const below = lettersOf(
    boxes,
    ({ haul, index }) => (isPaper ? numbers.fixed(index + 1, 0) : nightsOf(haul)),
    (x, text) => (
      <text key={`below ${x}`} className="b-letters" x={x} y={top + crewRow.hull_px + 13} textAnchor="middle">
        {text}
      </text>
    ),
  );
  return [...masses, ...below];
}

function HaulCell({
  box,
  count,
  isActive,
  sheet,
  onHold,
  onOpen,
}: {
  readonly box: HaulBox;
  readonly count: number;
  readonly isActive: boolean;
  readonly sheet: SheetOf;
  readonly onHold: (haulId: string) => void;
  readonly onOpen: OnOpen;
}) {
  const language = useLanguage();
  const { haul, x, width, index } = box;
  return (
    <li
      className="haul-cell"
      aria-posinset={index + 1}
      aria-setsize={count}
      style={{ insetInlineStart: x, inlineSize: width }}
    >
      <button
        type="button"
        data-haul={haul.haulId}
        tabIndex={isActive ? 0 : -1}
        aria-haspopup="dialog"
        aria-label={haulLabel(haul, sheet, language)}
        onFocus={() => onHold(haul.haulId)}
        onClick={(event) => onOpen(haul.haulId, event.currentTarget)}
      />
    </li>
  );
}
