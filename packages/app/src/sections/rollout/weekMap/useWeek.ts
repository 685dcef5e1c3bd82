import type { RolloutSheet } from '@eavewell/tables';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue, useMemo, useState } from 'react';
import { comingDay } from '../finding/villageFound.ts';
import { rolloutAskedOf } from '../rolloutAsked.ts';
import { type Week, weekOfDay, weeksBetween } from './weeks.ts';

const from = '/p/$programmeId/rollout';

/** Most weeks a slider goes through: ten years. Ours. */
const most = 520;

/** The week that is shown, of those of the plan. */
export interface WeekChosen {
  readonly weeks: readonly Week[];
  /** Its place among them, as the hand has it; what is drawn may follow a moment later. */
  readonly at: number;
  /** The week that is drawn; null where the plan has none. */
  readonly week: Week | null;
  /** The place of the week of today, where it is one of them. */
  readonly today: number | null;
  go(to: number): void;
}

/** The week the address asks for, else that in which a crew comes to the site it asks for, else that of today, else the first. */
export function useWeek(sheet: RolloutSheet): WeekChosen {
  const { week: asked, site } = useSearch({ from });
  const navigate = useNavigate({ from });
  const weeks = useMemo(() => weeksOf(sheet), [sheet]);
  const placeOf = (day: string | undefined) => {
    const monday = day === undefined ? undefined : weekOfDay(day)?.from;
    const found = weeks.findIndex((week) => week.from === monday);
    return found === -1 ? null : found;
  };
  const today = placeOf(sheet.day);
  // Who looks for a village without a week wants to see when somebody comes.
  const coming = site === undefined ? null : comingDay(sheet, site);
  const inAddress = placeOf(asked) ?? placeOf(coming ?? undefined) ?? today ?? 0;
  const [hand, setHand] = useState<{ readonly asked: string | undefined; readonly at: number } | null>(null);
  // The hand goes before the address, until the address says something else.
  const at = Math.min(weeks.length - 1, hand !== null && hand.asked === asked ? hand.at : inAddress);
  const drawn = useDeferredValue(at);
  const go = (to: number) => {
    const wanted = Math.max(0, Math.min(weeks.length - 1, to));
    const week = weeks[wanted]?.from;
    if (week === undefined) return;
    setHand({ asked: week, at: wanted });
    void navigate({
      to: '.',
      search: (before) => rolloutAskedOf({ ...before, week }),
      resetScroll: false,
      replace: true,
    });
  };
  return { weeks, at, week: weeks[Math.min(drawn, weeks.length - 1)] ?? null, today, go };
}

/** The weeks of a plan: from the first trip, or the first day planned, to the last day drawn. */
export function weeksOf({
  from: first,
  until,
  crews,
}: Pick<RolloutSheet, 'from' | 'until' | 'crews'>): readonly Week[] {
  const leaves = crews.flatMap(({ trips }) => trips.map((trip) => trip.leaves));
  const [begin = first] = [first, ...leaves].sort();
  return weeksBetween(begin, until).slice(-most);
}
