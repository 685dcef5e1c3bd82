import type { SheetTrip } from '@eavewell/tables';
import { memo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../../look/VerdictMark.tsx';
import { cellLinesOf, type HullBox, outlineOf } from './hulls.ts';
import { lookOf, peopleOf } from './tripWords.ts';

/** Room a figure takes [px] at the size of drawing letters. */
const figure_px = 7.6;

/** How far letters may stand out over the ends of their hull [px]. */
const beyond_px = 8;

const fits = (text: string, { width }: HullBox) => text.length * figure_px <= width + 2 * beyond_px;

/** A trip: its hull with a cell a site. */
export const Hull = memo(function Hull({ trip, hull }: { readonly trip: SheetTrip; readonly hull: HullBox }) {
  const look = lookOf(trip);
  const { y, height } = hull;
  return (
    <g className={`hull h-${look}${trip.isOverdue ? ' h-overdue' : ''}`}>
      <path className="h-body" d={outlineOf(hull)} />
      {hull.cells.map((cell, position) => {
        const stop = trip.stops[position];
        if (stop === undefined || look === 'done' || !(stop.isHandedOver || !stop.isWayUp)) return null;
        return (
          <rect
            key={cell.siteId}
            className={stop.isHandedOver ? 'h-built' : 'h-not-done'}
            x={cell.x}
            y={y}
            width={cell.width}
            height={height}
          />
        );
      })}
      <path className="h-cells" d={cellLinesOf(hull)} />
    </g>
  );
});

/** What is written at a hull: its people above, its nights below; a lock where it is fixed. */
export const HullLetters = memo(function HullLetters({
  trip,
  hull,
}: {
  readonly trip: SheetTrip;
  readonly hull: HullBox;
}) {
  const { say, numbers } = useLanguage();
  const people = numbers.fixed(peopleOf(trip), 0);
  const nights = say('rolloutBands.nights_short', { count: trip.nights_count });
  const below = trip.isOverdue ? say('rolloutBands.overdue_short') : nights;
  const { x, y, width, height } = hull;
  const middle = x + width / 2;
  const look = lookOf(trip);
  const isLocked = trip.isLocked && look !== 'done';
  // A figure makes room for the mark at its left and the lock at its right, where there is none between.
  const aside = width > 70 ? 0 : (look === 'tight' || look === 'broken' ? 8 : 0) - (isLocked ? 5 : 0);
  return (
    <g>
      {fits(people, hull) ? (
        <text className="b-figure" x={middle + aside} y={y - 5} textAnchor="middle">
          {people}
        </text>
      ) : null}
      {fits(below, hull) || trip.isOverdue ? (
        <text className={trip.isOverdue ? 'b-overdue' : 'b-letters'} x={middle} y={y + height + 13} textAnchor="middle">
          {below}
        </text>
      ) : null}
      {look === 'tight' || look === 'broken' ? (
        <g transform={`translate(${x - 6} ${y - 17})`}>
          <VerdictMark verdict={look === 'tight' ? 'tight' : 'short'} size={18} />
        </g>
      ) : null}
      {isLocked ? <Lock x={x + width - 7} y={y - 14} /> : null}
    </g>
  );
});

/** A padlock. */
function Lock({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <g className="b-lock" transform={`translate(${x} ${y})`}>
      <path className="b-lock-bow" d="M1.7 4.6V2.8a2.3 2.3 0 0 1 4.6 0V4.6" />
      <path d="M0 4.6H8V10.5H0Z" />
    </g>
  );
}
