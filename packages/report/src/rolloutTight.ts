import type { TightTrip } from '@eavewell/engine';
import type { SheetTold } from './rolloutSheetTold.ts';
import { brokenSaid, dayAt } from './rolloutTold.ts';

/** Why a trip must not leave later, in words; null: it may. */
export function tightSaid(told: SheetTold, crew: number, trip: number): string | null {
  const tight = told.tight.find((one) => one.crew === crew && one.trip === trip);
  return tight === undefined ? null : said(told, tight);
}

function said(told: SheetTold, { later_days, breaks, waits }: TightTrip): string {
  const { language, problem, nameOf } = told;
  const { say, numbers } = language;
  const days = { days: later_days };
  if (waits !== null) {
    const { siteId } = problem.jobs[waits.job]!;
    const site = nameOf.get(siteId) ?? siteId;
    return say('rolloutAnswers.tight.waits', { ...days, site, day: numbers.date(dayAt(told, waits.handOverDay)) });
  }
  return say('rolloutAnswers.tight.breaks', {
    ...days,
    broken: breaks === null ? '' : brokenSaid(told, breaks.broken),
  });
}
