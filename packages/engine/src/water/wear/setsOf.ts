import type { DayIndex, SiteFacts, TreatmentUnitFacts } from '../../kernel/index.ts';
import { farthest_days } from './constants.ts';

/** What wear is worked out from of a site. */
export type WearSite = Pick<SiteFacts, 'siteId' | 'treatment' | 'secondSource' | 'handOverDay'>;

/** The sets a unit has had, and has. */
export interface SetsOf {
  /** The days a set was new, the first one first; a day that is still to come among them. */
  readonly since: readonly DayIndex[];
  /** The day the set in it was, or will be, new; null where nobody says. */
  readonly setSince: DayIndex | null;
}

/**
 * When was the set of a unit new? On the last day cartridges were put in that are in it still; where none is named, on the day the unit was installed, else on the day the site is handed over.
 */
export function setsOf(site: WearSite, unit: TreatmentUnitFacts): SetsOf {
  const isOnly = site.treatment.units.length === 1;
  const own = site.treatment.cartridges.filter(({ unitSerial }) =>
    unitSerial === null ? isOnly : unitSerial === unit.serial,
  );
  const inIt = own.filter(({ removedOn }) => removedOn === null);
  const begun = dayOrNull(unit.installedOn ?? site.handOverDay);
  const changes = own.flatMap(({ installedOn }) => dayOrNull(installedOn) ?? []);
  const ofNow = inIt.flatMap(({ installedOn }) => dayOrNull(installedOn) ?? []);
  const setSince = inIt.length > 0 ? latest(ofNow) : own.length > 0 ? null : begun;
  const days = [...changes, ...(begun === null ? [] : [begun])];
  const since = [...new Set(days)].sort((a, b) => a - b);
  return { since, setSince };
}

/** A day one can reckon with; null else. */
export function dayOrNull(day: DayIndex | null): DayIndex | null {
  return day !== null && Number.isInteger(day) && Math.abs(day) <= farthest_days ? day : null;
}

function latest(days: readonly DayIndex[]): DayIndex | null {
  return days.length === 0 ? null : Math.max(...days);
}
