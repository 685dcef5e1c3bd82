import type { PresenceCalendar, SecondSourceFacts, Target } from '@eavewell/engine';
import type { TablesRead } from './tablesRead.ts';

/** The second sources, by id. */
export function sourcesById({ secondSources }: TablesRead): ReadonlyMap<string, SecondSourceFacts> {
  return new Map(
    (secondSources?.rows ?? []).map(({ values }) => [
      values.secondSourceId!,
      {
        secondSourceId: values.secondSourceId!,
        name: values.name ?? values.secondSourceId!,
        kind: values.kind!,
        months: values.months!,
        turbidity_NTU: values.turbidity_NTU,
      },
    ]),
  );
}

/** The calendars of presence, each with its periods in the order of the year. */
export function calendarsById({ presence }: TablesRead): ReadonlyMap<string, PresenceCalendar> {
  const calendars = new Map<string, PresenceCalendar>();
  for (const { values } of presence?.rows ?? []) {
    const calendarId = values.calendarId!;
    const period = {
      from_dayOfYear: values.from!,
      to_dayOfYear: values.to!,
      presentFraction: values.presentFraction!,
      reason: values.reason,
    };
    const periods = [...(calendars.get(calendarId)?.periods ?? []), period];
    calendars.set(calendarId, { calendarId, periods: periods.sort((a, b) => a.from_dayOfYear - b.from_dayOfYear) });
  }
  return calendars;
}

/** The targets of the classes; what a row leaves empty is the programme's. */
export function targetsByClass({ targets }: TablesRead, ofProgramme: Target): ReadonlyMap<string, Target> {
  return new Map(
    (targets?.rows ?? []).map(({ values }) => [
      values.siteClass!,
      {
        daysMet_fraction: values.daysMet_fraction ?? ofProgramme.daysMet_fraction,
        longestDryRun_days: values.longestDryRun_days ?? ofProgramme.longestDryRun_days,
        goodYears_fraction: values.goodYears_fraction ?? ofProgramme.goodYears_fraction,
      },
    ]),
  );
}
