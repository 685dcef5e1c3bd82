import type { RolloutSheet } from '@eavewell/tables';
import { memo, useMemo } from 'react';
import { cellLinesOf, crewRow, type HullBox, type HullsLaid, hullsOf, outlineOf } from '../bands/hulls.ts';
import { crewsAsMoved, tripsChanged } from './asMoved.ts';
import type { CrewAsMoved } from './moveAnswer.ts';
import type { Held } from './places.ts';

/** The hulls as they would be, dashed over those there are. Rows that stay as they are are left. */
export const Proposed = memo(function Proposed({
  sheet,
  laid,
  crews,
  held,
}: {
  readonly sheet: RolloutSheet;
  readonly laid: HullsLaid;
  readonly crews: readonly CrewAsMoved[];
  readonly held: Held;
}) {
  const after = useMemo(() => {
    const moved = crewsAsMoved(sheet, crews);
    return { laid: hullsOf({ crews: [...moved] }, laid.axis), changed: tripsChanged(sheet.crews, moved) };
  }, [sheet, crews, laid.axis]);
  const rows = after.laid.rows.filter(({ hulls }) => hulls.some(({ tripId }) => after.changed.has(tripId)));
  const touched = new Set(crews.map(({ crewId }) => crewId));
  const faded = laid.rows.filter(({ crewId }) => touched.has(crewId));
  return (
    <svg className="by-hand-hulls" width={laid.axis.width_px} height={laid.height} aria-hidden="true">
      {faded.map(({ crewId, y, hulls }) =>
        hulls
          .filter(({ tripId, state }) => state === 'planned' && !isSame(after.laid, laid, tripId, after.changed))
          .map(({ tripId, x, width }) => (
            <rect
              key={`${crewId} ${tripId}`}
              className="by-hand-was"
              x={x - 1}
              y={y}
              width={width + 2}
              height={crewRow.height_px}
            />
          )),
      )}
      {rows.flatMap(({ hulls }) =>
        hulls
          .filter(({ tripId }) => after.changed.has(tripId))
          .map((hull) => <Outline key={hull.tripId} {...{ hull, held }} />),
      )}
    </svg>
  );
});

/** Is a trip drawn as before? One that is gone is not. */
const isSame = (after: HullsLaid, _before: HullsLaid, tripId: string, changed: ReadonlySet<string>) =>
  after.hullOf.has(tripId) && !changed.has(tripId);

function Outline({ hull, held }: { readonly hull: HullBox; readonly held: Held }) {
  const isOwn = held.kind === 'trip' && hull.tripId === held.tripId;
  const cell = held.kind === 'site' ? hull.cells.find(({ siteId }) => siteId === held.siteId) : undefined;
  return (
    <g className={isOwn ? 'by-hand-hull is-held' : 'by-hand-hull'}>
      <path d={outlineOf(hull)} />
      <path className="by-hand-cells" d={cellLinesOf(hull)} />
      {cell === undefined ? null : (
        <rect className="by-hand-cell" x={cell.x} y={cell.y} width={cell.width} height={cell.height} />
      )}
    </g>
  );
}
