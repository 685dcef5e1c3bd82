import type { DesignReport, RemediesInWords } from '@eavewell/tables';
import { english } from '@eavewell/words';

/**
 * What would mend the programme, as a table people read: each kind of change, at how many sites, for how much together; and the
 * sites that none mends, with the reason.
 *
 * @param found - the remedies of a design: people [person], costs [currency]
 * @returns the same with its words
 * @definition ours
 */
export function remediesInWords(found: DesignReport['remedies']): RemediesInWords {
  const { pricesOn, looked, mended, groups, notMended } = found;
  return {
    pricesOn,
    looked,
    mended: { ...mended, costsInWords: english.remedies.costs(mended) },
    groups: groups.map((group) => ({
      ...group,
      about: english.remedies.kindsTogether(group.kinds),
      costsInWords: english.remedies.costs(group),
    })),
    notMended: notMended.map(({ reason, siteIds }) => ({
      reason,
      sentence: english.remedies.notMended(reason),
      siteIds,
    })),
  };
}
