import { useId } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import type { WeekChosen } from './useWeek.ts';

/** Chooses a week: one earlier, one later, or any by a slider, which the arrow keys move too. */
export function WeekChooser({ chosen }: { readonly chosen: WeekChosen }) {
  const { say, numbers } = useLanguage();
  const id = useId();
  const { weeks, at, today, go } = chosen;
  const said = (place: number) => say('rolloutMap.week', { day: numbers.date(weeks[place]?.from ?? '') });
  return (
    <div className="week-chooser on-screen">
      <button type="button" className="button" onClick={() => go(at - 1)} disabled={at === 0}>
        {say('rolloutMap.earlier')}
      </button>
      <button type="button" className="button" onClick={() => go(at + 1)} disabled={at === weeks.length - 1}>
        {say('rolloutMap.later')}
      </button>
      {today === null || today === at ? null : (
        <button type="button" className="button plain" onClick={() => go(today)}>
          {say('rolloutMap.this_week')}
        </button>
      )}
      <label htmlFor={id}>{say('rolloutMap.choose')}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={weeks.length - 1}
        value={at}
        aria-valuetext={said(at)}
        onChange={({ target }) => go(Number(target.value))}
      />
      <span className="small ends">
        <span>{numbers.date(weeks[0]?.from ?? '')}</span>
        <span>{numbers.date(weeks.at(-1)?.to ?? '')}</span>
      </span>
    </div>
  );
}
