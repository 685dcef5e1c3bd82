import {
  type DayIndex,
  dayOrNull,
  isOfUnit,
  type SiteFacts,
  setNewOn,
  type TreatmentUnitFacts,
} from '../../kernel/index.ts';

/** What wear is worked out from of a site. */
export type WearSite = Pick<SiteFacts, 'siteId' | 'treatment' | 'secondSource' | 'handOverDay'>;

/** The sets a unit has had, and has. */
export interface SetsOf {
  /** The days a set was new, the first one first; a day that is still to come among them. */
  readonly since: readonly DayIndex[];
  /** The day the set in it was, or will be, new; null where nobody says. */
  readonly setSince: DayIndex | null;
}

/** The days a unit had a new set, and the day the one in it was new. */
export function setsOf({ treatment, handOverDay }: WearSite, unit: TreatmentUnitFacts): SetsOf {
  const own = treatment.cartridges.filter(({ unitSerial }) => isOfUnit(treatment, unit, unitSerial));
  const changes = own.flatMap(({ installedOn }) => dayOrNull(installedOn) ?? []);
  const begun = dayOrNull(unit.installedOn ?? handOverDay);
  const days = [...changes, ...(begun === null ? [] : [begun])];
  const since = [...new Set(days)].sort((a, b) => a - b);
  return { since, setSince: setNewOn(treatment, unit, handOverDay) };
}
