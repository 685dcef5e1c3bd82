import type { AppLanguage } from '@eavewell/words/app';
import { isAsked, type Question } from '../../../water/index.ts';

/**
 * Which question do the charts answer? On paper nothing else tells that they are not of the record as it was.
 *
 * @param question - what is asked of the rain and of the day
 * @param words - the language of the page
 * @returns a sentence; null where nothing is asked
 */
export function questionSaid(
  question: Question,
  { say, numbers, code }: Pick<AppLanguage, 'say' | 'numbers' | 'code'>,
): string | null {
  if (!isAsked(question)) return null;
  const { scenario, order } = question;
  const { wetDays_fraction, wetDayRain_fraction, lastYears } = scenario;
  const parts = [
    wetDays_fraction === 1 ? null : say('water.asked_wetDays', { share: numbers.percent(wetDays_fraction) }),
    wetDayRain_fraction === 1 ? null : say('water.asked_wetDayRain', { share: numbers.percent(wetDayRain_fraction) }),
    lastYears === null ? null : say('water.asked_lastYears', { years: lastYears }),
    order === null ? null : say('water.asked_order', { order: say(`water.order_${order}`) }),
  ].filter((part) => part !== null);
  return say('water.charts_asked', { question: new Intl.ListFormat(code, { type: 'conjunction' }).format(parts) });
}
