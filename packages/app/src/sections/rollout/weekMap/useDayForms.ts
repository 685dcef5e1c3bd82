import { useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

/** Days in few letters, as a map and a list of a week have room for. */
export interface DayForms {
  /** "Thu 10". */
  inWeek(day: string): string;
  /** "Thu, 10 June 2027". */
  inYear(day: string): string;
}

/** How days of a week are written in the language of the page. */
export function useDayForms(): DayForms {
  const { code, numbers } = useLanguage();
  return useMemo(() => {
    const form = (more: Intl.DateTimeFormatOptions) =>
      new Intl.DateTimeFormat(code, { weekday: 'short', numberingSystem: 'latn', timeZone: 'UTC', ...more });
    const [inWeek, ofWeek] = [form({ day: 'numeric' }), form({})];
    const at = (day: string) => new Date(`${day}T00:00:00Z`);
    return {
      inWeek: (day) => inWeek.format(at(day)),
      inYear: (day) => `${ofWeek.format(at(day))}, ${numbers.date(day)}`,
    };
  }, [code, numbers]);
}
