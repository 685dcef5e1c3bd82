import { type PresenceCalendar, type WorkingLine, workingInput } from '../../kernel/index.ts';
import type { PresentByDay } from './presentByDay.ts';

/** Writes down who is there when: nothing where everyone always is. It computes nothing but the mean. */
export function presenceWorking(presence: PresenceCalendar | null, present: PresentByDay): readonly WorkingLine[] {
  if (presence === null) return [];
  const { presentFraction } = present;
  return [
    {
      code: 'people.presence',
      value: presentFraction.reduce((sum, share) => sum + share, 0) / presentFraction.length,
      unit: 'fraction',
      inputs: [
        workingInput('calendar', presence.calendarId, 'text'),
        ...presence.periods.flatMap(({ from_dayOfYear, to_dayOfYear, presentFraction: share, reason }) => [
          workingInput('period', reason ?? 'period', 'text'),
          workingInput('firstDayOfPeriod', from_dayOfYear, 'dayOfYear'),
          workingInput('lastDayOfPeriod', to_dayOfYear, 'dayOfYear'),
          workingInput('present', share, 'fraction'),
        ]),
      ],
      source: 'survey',
    },
  ];
}
