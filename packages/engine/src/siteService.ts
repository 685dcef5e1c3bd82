import type { GaugeFinding, SiteFacts } from './kernel/index.ts';
import { type Programme, siteWater } from './siteWater.ts';
import { firstServiceWaits, rulesOf } from './water/storage/index.ts';

/**
 * How many days after hand-over does a site first serve everybody, for each day of the year on which it may be handed over? The day its last body of water serves.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined where the site names none that is known
 * @param programme - settings, catalogue and shared stores
 * @returns days [day] by day of a leap year, 366 of them, null where it never serves; null where the site's water is not known
 * @law each is the wait of `designSite` for a hand-over on that day
 * @definition ours: docs/methods/storage.md, first day of service
 */
export function siteServiceWaits(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
): readonly (number | null)[] | null {
  const water = siteWater(site, gauge, programme, { restated: [], own: [] }, []);
  if (water === null || water.groups.length === 0) return null;
  const { record, years } = water.rain;
  const each = water.groups.map(({ balance, tankVolume_L, ration }) =>
    firstServiceWaits(balance, record.firstDay, tankVolume_L, years, rulesOf(water.settings.dayOrder, ration)),
  );
  return each.reduce((last, one) =>
    last.map((wait, day) => (wait === null || one[day] === null ? null : Math.max(wait, one[day]!))),
  );
}
