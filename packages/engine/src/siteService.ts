import { type GaugeFinding, neverServes_days, type SiteFacts, type WaitsByYear } from './kernel/index.ts';
import { type Programme, siteWater } from './siteWater.ts';
import { firstServiceWaits, middleWaits, rulesOf } from './water/storage/index.ts';

/** Days from a site's hand-over to its first day of service, by day of a leap year. */
export interface SiteWaits {
  /** The middle one of the judged years; null where it never serves. */
  readonly middle_days: readonly (number | null)[];
  /** As each year of the record would have it; null: it serves on no day. */
  readonly byYear: WaitsByYear | null;
}

/**
 * How many days after hand-over does a site first serve everybody, for each day of the year on which it may be handed over? The day its last body of water serves.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined where the site names none that is known
 * @param programme - settings, catalogue and shared stores
 * @returns days [day] by day of a leap year, 366 of them, in the middle and by year; null where the site's water is not known
 * @law each in the middle is the wait of `designSite` for a hand-over on that day
 * @definition ours: docs/methods/storage.md, first day of service
 */
export function siteServiceWaits(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
): SiteWaits | null {
  const water = siteWater(site, gauge, programme, { restated: [], own: [] }, []);
  if (water === null || water.groups.length === 0) return null;
  const { record, years } = water.rain;
  const each = water.groups.map(({ balance, tankVolume_L, ration }) =>
    firstServiceWaits(balance, record.firstDay, tankVolume_L, years, rulesOf(water.settings.dayOrder, ration)),
  );
  const middle_days = each
    .map(middleWaits)
    .reduce((last, one) =>
      last.map((wait, day) => (wait === null || one[day] === null ? null : Math.max(wait, one[day]!))),
    );
  const [first, ...others] = each;
  const byYear = others.reduce(laterOf, first!);
  return { middle_days, byYear: byYear.wait_days.some((wait) => wait < neverServes_days) ? byYear : null };
}

/** Of two bodies of water of one record, the one that serves later; what is no wait is later than any. */
const laterOf = (one: WaitsByYear, other: WaitsByYear): WaitsByYear => ({
  ...one,
  wait_days: one.wait_days.map((wait, at) => Math.max(wait, other.wait_days[at]!)),
});
