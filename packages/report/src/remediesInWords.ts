import type { DesignReport, RemediesInWords } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

/**
 * What would mend the programme, as a table people read: each kind of change, at how many sites, for how much together; and the
 * sites that none mends, with the reason.
 *
 * @param found - the remedies of a design: people [person], costs [currency]
 * @param language - the language of its words
 * @returns the same with its words
 * @definition ours
 */
export function remediesInWords(found: DesignReport['remedies'], language: Language): RemediesInWords {
  const { pricesOn, looked, mended, groups, notMended } = found;
  return {
    pricesOn,
    looked,
    mended: { ...mended, costsInWords: language.remedies.costs(mended) },
    groups: groups.map((group) => ({
      ...group,
      about: language.remedies.kindsTogether(group.kinds),
      costsInWords: language.remedies.costs(group),
    })),
    notMended: notMended.map(({ reason, siteIds }) => ({
      reason,
      sentence: language.remedies.notMended(reason),
      siteIds,
    })),
  };
}
