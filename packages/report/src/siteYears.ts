import type { SiteDesign } from '@eavewell/engine';
import type { SiteYears } from '@eavewell/tables';

/**
 * How did each water year of a site go? Of several bodies of water the worst counts, so that a year is good only where all are.
 *
 * @param design - what the site came to
 * @returns longest dry run and dry days of each year [day]; null where it has no body of water that was judged
 * @definition ours: docs/decisions/0133-the-whole-programmes-water.md
 */
export function siteYears({ storages, target, problems }: SiteDesign): SiteYears | null {
  const [first] = storages;
  if (first === undefined || first.years.length === 0) return null;
  const labels = first.years;
  const each = (figure: (year: (typeof labels)[number]) => number) =>
    labels.map(({ judged }, i) => (judged ? Math.max(...storages.map(({ years }) => figure(years[i]!))) : null));
  return {
    isMade: problems.some(({ code }) => code === 'rain.made_up'),
    limit_days: target.longestDryRun_days,
    firstYear: first.years[0]!.waterYear,
    longestRun_days: each(({ longestRun_days }) => longestRun_days),
    dryDays: each(({ dryDays }) => dryDays),
  };
}
