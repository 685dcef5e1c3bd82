import { memo, type ReactNode } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { monthsBetween, type WeekAxis, weekStep, weeksBetween, xOf } from './axis.ts';
import type { Seen } from './useSeen.ts';

/** What every band is drawn on: its days, what of them is on the page, today. */
export interface OnAxis {
  readonly axis: WeekAxis;
  readonly seen: Seen;
  /** Days since 1970-01-01. */
  readonly today: number;
}

/** The drawn part of a band: the lines of its weeks, and today through it. What is said of it stands beside it in words. */
export function Ground({
  on: { axis, seen, today },
  height,
  top = 0,
  children,
  letters,
}: {
  readonly on: OnAxis;
  readonly height: number;
  readonly top?: number;
  readonly children?: ReactNode;
  /** What is written: over the line of today. */
  readonly letters?: ReactNode;
}) {
  const now = xOf(axis, today + 0.5);
  return (
    <svg
      className="band-drawing"
      width={axis.width_px}
      height={height}
      viewBox={`0 ${top} ${axis.width_px} ${height}`}
      aria-hidden="true"
      focusable="false"
    >
      <WeekLines axis={axis} seen={seen} top={top} height={height} />
      {children}
      {now < 0 || now > axis.width_px ? null : <path className="b-today" d={`M${now} ${top}v${height}`} />}
      {letters}
    </svg>
  );
}

/** Higher than any heading of a band [px]; what is over is cut off. */
const tall_px = 400;

/** The heading of a band over its weeks: it stays where it is while they pass behind it. */
export function BandTitle({
  on,
  title,
  about,
  children,
}: {
  readonly on: OnAxis;
  readonly title: string;
  readonly about: string;
  readonly children?: ReactNode;
}) {
  return (
    <div className="band-title">
      <div className="band-title-ground">
        <Ground on={on} height={tall_px} />
      </div>
      <div className="band-title-words">
        <h2>{title}</h2>
        {children}
        <p className="about">{about}</p>
      </div>
    </div>
  );
}

const WeekLines = memo(function WeekLines({
  axis,
  seen,
  top,
  height,
}: Pick<OnAxis, 'axis' | 'seen'> & { readonly top: number; readonly height: number }) {
  const step = weekStep(axis);
  const lines = weeksBetween(axis, seen.from, seen.to).filter(({ week }) => week % step === 0 || step === 1);
  return <path className="b-week" d={lines.map(({ x_px }) => `M${x_px} ${top}v${height}`).join('')} />;
});

/** Room a letter of a month's name takes [px], for the middling letter of the typeface at its size. */
const letter_px = 9;

/** Months over weeks. */
export const AxisHead = memo(function AxisHead({ on }: { readonly on: OnAxis }) {
  const { say, numbers } = useLanguage();
  const { axis, seen, today } = on;
  const step = weekStep(axis);
  const weeks = weeksBetween(axis, seen.from, seen.to).filter(({ week }) => step === 1 || week % step === 0);
  let free = Number.NEGATIVE_INFINITY;
  // From the first month of all, so that the same are named wherever one has scrolled to.
  const months = monthsBetween(axis, 0, axis.width_px - 1).flatMap(({ year, month, x_px, end_px }) => {
    const name = `${numbers.quantity(month, 'month')}${month === 1 || x_px === 0 ? ` ${year}` : ''}`;
    const width = name.length * letter_px;
    if (x_px < free || Math.min(end_px, axis.width_px) - x_px < 16 || x_px + width > axis.width_px + 24) return [];
    free = x_px + width;
    return x_px < seen.to && free > seen.from ? [{ x_px, name }] : [];
  });
  const now = xOf(axis, today + 0.5);
  return (
    <div className="band-row axis-head">
      <div className="band-name week-word">{say('rolloutBands.week')}</div>
      <svg className="band-drawing" width={axis.width_px} height={42} aria-hidden="true" focusable="false">
        {months.map(({ x_px, name }) => (
          <text key={x_px} className="b-month" x={x_px + 3} y={16}>
            {name}
          </text>
        ))}
        {weeks.map(({ x_px, monday, week }) => (
          <text key={monday} className="b-letters" x={x_px + axis.week_px / 2} y={36} textAnchor="middle">
            {week}
          </text>
        ))}
        {now < 0 || now > axis.width_px ? null : <path className="b-today" d={`M${now} 38V42`} />}
      </svg>
    </div>
  );
});
