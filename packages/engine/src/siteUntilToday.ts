import { type DayIndex, engineProblem, type Problem, type SiteFacts, type UnusableTest } from './kernel/index.ts';

/** Clocks and calendars of a site and of the computer may be a day apart. */
const clocksApart_days = 1;

/** A site as it is known today. */
export interface SiteUntilToday {
  /** The site itself where nothing of it is dated ahead. */
  readonly site: SiteFacts;
  readonly problems: readonly Problem[];
}

/**
 * What was measured at a site until today: a sample, a walk, a test with air or a reading of a day that is still to come was written down wrongly, and may not speak before one that was taken. A sample
 * stays among those that cannot be used.
 *
 * @param site - the site's facts
 * @param today - the day it is asked on; null where that is not known
 * @returns the site without rows of days to come, and how many there were of each table
 * @problem site.dated_ahead - rows of a day that is still to come
 * @definition ours: docs/decisions/0216-which-samples-count.md
 */
export function siteUntilToday(site: SiteFacts, today: DayIndex | null): SiteUntilToday {
  if (today === null) return { site, problems: [] };
  const last = today + clocksApart_days;
  const { safety, treatment, siteId } = site;
  const tests = safety.tests.filter(({ takenOn }) => takenOn <= last);
  const inspections = safety.inspections.filter(({ inspectedOn }) => inspectedOn <= last);
  const pressureTests = treatment.pressureTests.filter(({ testedOn }) => testedOn <= last);
  const flowReadings = treatment.flowReadings.filter(({ readOn }) => readOn <= last);
  const ahead: readonly (readonly [string, string, number])[] = [
    ['waterTests.csv', 'takenOn', safety.tests.length - tests.length],
    ['inspections.csv', 'inspectedOn', safety.inspections.length - inspections.length],
    ['pressureTests.csv', 'testedOn', treatment.pressureTests.length - pressureTests.length],
    ['flowReadings.csv', 'readOn', treatment.flowReadings.length - flowReadings.length],
  ];
  const problems = ahead.flatMap(([file, column, count]) =>
    count > 0 ? [engineProblem('site.dated_ahead', { file, siteId, column }, { count })] : [],
  );
  if (problems.length === 0) return { site, problems };
  const unusable = safety.tests
    .filter(({ takenOn }) => takenOn > last)
    .map(({ testId, point, portions }): UnusableTest => {
      const at = { file: 'waterTests.csv', siteId, column: 'takenOn' };
      return { testId, because: 'dayToCome', at, point, portions };
    });
  const unusableTests = [...safety.unusableTests, ...unusable];
  const until = {
    ...site,
    safety: { ...safety, tests, inspections, unusableTests },
    treatment: { ...treatment, pressureTests, flowReadings },
  };
  return { site: until, problems };
}
