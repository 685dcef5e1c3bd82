import type { RolloutSheet } from '@eavewell/tables';
import { memo, type PointerEvent, useEffect, useMemo, useRef } from 'react';
import { cellLinesOf, crewRow, type HullBox, type HullsLaid, hullsOf, outlineOf } from '../bands/hulls.ts';
import { crewsAsMoved, tripsChanged } from './asMoved.ts';
import type { CrewAsMoved } from './moveAnswer.ts';
import type { Held } from './places.ts';

/** What a finger takes hold of is at least so large [px]. */
const handle_px = 44;

interface Drawn {
  readonly sheet: RolloutSheet;
  readonly laid: HullsLaid;
  /** Crews that would change; none while it is being worked out. */
  readonly crews: readonly CrewAsMoved[];
  readonly held: Held;
}

/** The hulls as they would be, dashed over those there are, and what is in hand. Rows that stay as they are are left. */
export const Proposed = memo(function Proposed({
  sheet,
  laid,
  crews,
  held,
  onPointerDown,
}: Drawn & {
  /** The handle by which it is moved on; left out: there is none. */
  readonly onPointerDown?: ((event: PointerEvent<HTMLElement>) => void) | undefined;
}) {
  const after = useMemo(() => {
    const moved = crewsAsMoved(sheet, crews);
    return { laid: hullsOf({ crews: [...moved] }, laid.axis), changed: tripsChanged(sheet.crews, moved) };
  }, [sheet, crews, laid.axis]);
  const touched = new Set(crews.map(({ crewId }) => crewId));
  const isAsBefore = (tripId: string) => after.laid.hullOf.has(tripId) && !after.changed.has(tripId);
  const gone = [...laid.hullOf.values()].filter(
    ({ crewId, tripId, state }) => touched.has(crewId) && state === 'planned' && !isAsBefore(tripId),
  );
  const made = [...after.laid.hullOf.values()].filter(({ tripId }) => after.changed.has(tripId));
  const at = boxOf(after.laid, held) ?? boxOf(laid, held);
  return (
    <>
      <svg className="by-hand-hulls" width={laid.axis.width_px} height={laid.height} aria-hidden="true">
        {gone.map(({ tripId, x, y, width }) => (
          <rect
            key={tripId}
            className="by-hand-was"
            x={x - 1}
            y={y - crewRow.hullTop_px}
            width={width + 2}
            height={crewRow.height_px}
          />
        ))}
        {made.map((hull) => (
          <Outline key={hull.tripId} hull={hull} isHeld={held.kind === 'trip' && hull.tripId === held.tripId} />
        ))}
        {at === null ? null : <rect className="by-hand-held" {...at} />}
      </svg>
      {at === null || onPointerDown === undefined ? null : <Handle at={at} onPointerDown={onPointerDown} />}
    </>
  );
});

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where what is held is drawn. */
function boxOf({ hullOf }: HullsLaid, held: Held): Box | null {
  const found =
    held.kind === 'trip'
      ? hullOf.get(held.tripId)
      : [...hullOf.values()].flatMap(({ cells }) => cells).find(({ siteId }) => siteId === held.siteId);
  if (found === undefined) return null;
  const { x, y, width, height } = found;
  return { x, y, width, height };
}

function Outline({ hull, isHeld }: { readonly hull: HullBox; readonly isHeld: boolean }) {
  return (
    <g className={isHeld ? 'by-hand-hull is-held' : 'by-hand-hull'}>
      <path d={outlineOf(hull)} />
      <path className="by-hand-cells" d={cellLinesOf(hull)} />
    </g>
  );
}

/** What is in hand can be pulled on from here; it is kept in view. */
function Handle({ at, onPointerDown }: { readonly at: Box; onPointerDown(event: PointerEvent<HTMLElement>): void }) {
  const ref = useRef<HTMLDivElement>(null);
  const [left, top] = [at.x + at.width / 2 - handle_px / 2, at.y + at.height / 2 - handle_px / 2];
  // biome-ignore lint/correctness/useExhaustiveDependencies: wherever it goes it is to be seen
  useEffect(() => {
    ref.current?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [left, top]);
  return (
    <div ref={ref} className="by-hand-handle" aria-hidden="true" style={{ left, top }} onPointerDown={onPointerDown} />
  );
}
