import { readIsoDay } from '@eavewell/engine';
import type { RolloutSheet } from '@eavewell/tables';
import { useDeferredValue, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { useWidth } from '../../../look/useWidth.ts';
import { type WeekAxis, xOf } from './axis.ts';
import type { OnOpen } from './CrewRow.tsx';
import { type ByHandOnBands, CrewsBand } from './CrewsBand.tsx';
import { DrinkingBand } from './DrinkingBand.tsx';
import { AxisHead, type OnAxis } from './Ground.tsx';
import { StockBand, type StockChoice } from './StockBand.tsx';
import { axisFor, spanOf, type WeekChoice, weekChoices } from './span.ts';
import { useSeenAcross } from './useSeen.ts';
import { WaysBand } from './WaysBand.tsx';

/** What stands beside the weeks: names of ways and crews [px]; bands.css has the same. */
export const names_px = 224;

/** More crews than this, and the weeks are named again under them. Ours. */
const crewsWithoutWeeks = 8;

/** All bands on one axis of weeks, which scrolls sideways inside its frame. */
export function Drawn({
  sheet,
  stock,
  byHand,
  onOpen,
}: {
  readonly sheet: RolloutSheet;
  readonly stock: StockChoice;
  readonly byHand?: ByHandOnBands | undefined;
  readonly onOpen: OnOpen;
}) {
  const { say } = useLanguage();
  const [choice, choose] = useState<WeekChoice>('half');
  // The press is answered at once; the many hulls are drawn in slices.
  const shown = useDeferredValue(choice);
  const frame = useRef<HTMLDivElement>(null);
  const { width } = useWidth(frame);
  const room = Math.max(200, (width ?? 0) - names_px - 2);
  const { day, from, until, crews } = sheet;
  const span = useMemo(() => spanOf({ day, from, until, crews }), [day, from, until, crews]);
  // The same days are the same axis, however often the sheet is read anew.
  const axis = useMemo(
    () => axisFor({ from: span.from, until: span.until }, shown, room),
    [span.from, span.until, shown, room],
  );
  const seen = useSeenAcross(frame, names_px);
  const today = readIsoDay(day) ?? axis.first;
  const toToday = useScrollKept(frame, axis, today);
  const on: OnAxis = useMemo(() => ({ axis, seen, today }), [axis, seen, today]);
  return (
    <>
      <div className="bands-tools on-screen">
        <WeeksShown choice={choice} onChoose={choose} />
        <button type="button" className="button plain" onClick={toToday}>
          {say('rolloutBands.to_today')}
        </button>
        <span className="small">{say('rolloutBands.crews_keys')}</span>
      </div>
      {/* Names of crews and ways stand still, the weeks pass under them. */}
      <div ref={frame} className="bands-frame" dir="ltr">
        {/* Nothing is drawn before there is room for it, or all would be drawn twice. */}
        {width === null ? null : (
          <div className="bands-sheet" style={{ inlineSize: names_px + axis.width_px }}>
            <AxisHead on={on} />
            <WaysBand strips={sheet.strips} on={on} />
            <CrewsBand {...{ sheet, on, byHand, onOpen }} />
            {crews.length > crewsWithoutWeeks ? <AxisHead on={on} /> : null}
            <DrinkingBand sheet={sheet} on={on} />
            <StockBand sheet={sheet} on={on} choice={stock} />
          </div>
        )}
      </div>
    </>
  );
}

function WeeksShown({
  choice,
  onChoose,
}: {
  readonly choice: WeekChoice;
  readonly onChoose: (choice: WeekChoice) => void;
}) {
  const { say } = useLanguage();
  return (
    <fieldset className="weeks-shown">
      <legend>{say('rolloutBands.weeks_shown')}</legend>
      {weekChoices.map((one) => (
        <label key={one}>
          <input type="radio" name="weeks-shown" checked={choice === one} onChange={() => onChoose(one)} />
          {say(`rolloutBands.weeks_${one}`)}
        </label>
      ))}
    </fieldset>
  );
}

/** A week before today is the first that is shown; where one has scrolled to stays when more or fewer weeks are shown. */
function useScrollKept(frame: { readonly current: HTMLDivElement | null }, axis: WeekAxis, today: number): () => void {
  const left = useRef<number | null>(null);
  useLayoutEffect(() => {
    const at = frame.current;
    if (at === null) return undefined;
    at.scrollLeft = xOf(axis, left.current ?? today - 10);
    const look = () => {
      left.current = axis.first + (at.scrollLeft / axis.week_px) * 7;
    };
    at.addEventListener('scroll', look, { passive: true });
    return () => at.removeEventListener('scroll', look);
  }, [frame, axis, today]);
  return () => {
    left.current = null;
    frame.current?.scrollTo({ left: xOf(axis, today - 10) });
  };
}
