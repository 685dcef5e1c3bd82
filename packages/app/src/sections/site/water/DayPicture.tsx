import type { DayChart } from '@eavewell/drawing';
import type { DayIndex } from '@eavewell/engine';
import type { KeyboardEvent, ReactNode } from 'react';
import { useId } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { PictureView } from '../../../look/PictureView.tsx';
import { dayToward } from './dayToward.ts';
import { usePointedDay } from './pointedDay.ts';

/** Days a key goes. A month is 30 of them: ours. */
const [day, month] = [1, 30] as const;

/**
 * A picture of days: the day pointed at lights up here and in all others. By keys: left and right go by days, with Shift by
 * months.
 */
export function DayPicture({
  chart,
  name,
  span,
  said,
  children,
  onDrag,
}: {
  readonly chart: Pick<DayChart, 'width' | 'height' | 'shapes' | 'overlayOf' | 'dayAt'>;
  readonly name: string;
  /** First and last day of the record. */
  readonly span: { readonly from: DayIndex; readonly to: DayIndex };
  /** What is read out of a day. */
  said(day: DayIndex): string;
  readonly children?: ReactNode;
  /** A stretch of days was dragged over. */
  readonly onDrag?: ((from: DayIndex, to: DayIndex) => void) | undefined;
}) {
  const { say } = useLanguage();
  const [pointed, point] = usePointedDay();
  const help = useId();
  const go = (event: KeyboardEvent) => {
    const way = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0;
    if (event.key === 'Escape') point(null);
    if (way === 0) return;
    event.preventDefault();
    const from = pointed ?? (way > 0 ? span.from - 1 : span.to + 1);
    point(Math.min(span.to, Math.max(span.from, from + way * (event.shiftKey ? month : day))));
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields; this is a picture with keys of its own
    <div
      className="day-picture"
      role="group"
      aria-label={name}
      aria-describedby={help}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys of the picture act on what has the focus
      tabIndex={0}
      onKeyDown={go}
    >
      <PictureView
        picture={chart}
        name={name}
        overlay={pointed === null ? [] : chart.overlayOf(pointed)}
        onPoint={({ x, y }) => point(chart.dayAt(x, y))}
        onPress={({ x, y }, event) => {
          const from = chart.dayAt(x, y);
          if (event.pointerType === 'touch') return point(from);
          if (from === null || onDrag === undefined) return;
          const box = event.currentTarget.getBoundingClientRect();
          const scale = chart.width / box.width;
          const end = (up: globalThis.PointerEvent) => {
            const to = dayToward(x, (up.clientX - box.left) * scale, (at) => chart.dayAt(at, y));
            if (to !== null && Math.abs(to - from) > month) onDrag(Math.min(from, to), Math.max(from, to));
          };
          window.addEventListener('pointerup', end, { once: true });
        }}
        onLeave={() => point(null)}
      />
      {children}
      <p id={help} className="said-only">
        {say('water.day_keys')}
      </p>
      <p className="said-only" role="status">
        {pointed === null ? '' : said(pointed)}
      </p>
    </div>
  );
}
