import type { Problem, Remedy, SiteDesign, SiteRemedies } from '@eavewell/engine';
import type { SiteShort } from '@eavewell/tables';
import { type Language, problemSentence, type StorageSaid } from '@eavewell/words';
import { type BesideSaid, besideSaid } from './besideSaid.ts';
import { withheld } from './decidingFigure.ts';
import { type FaultAt, withFault } from './namedFaults.ts';
import { findingSaid } from './siteReport.ts';

/** What the sentences of a list are made of, so that they can be said in any language without the whole report. */
export interface SiteSaid {
  readonly storages: readonly StorageSaid[];
  readonly beside: BesideSaid;
  /** The first blocker, or what leaves the worst station unknown; and the fault behind it where it is a doubt about a row. */
  readonly blocker: Problem | null;
  readonly fault: Problem | null;
  readonly remedy: Remedy | null;
  readonly notMended: SiteRemedies['notMended'];
}

/**
 * What must be kept of a site to say its sentences again?
 *
 * @param design - what it came to, its doubts without the words of their faults
 * @param remedies - what would mend it; null where it is neither short nor tight
 * @param faultAt - the fault at a place
 * @returns what the sentences are made of
 * @definition ours
 */
export function siteSaid(design: SiteDesign, remedies: SiteRemedies | null, faultAt: FaultAt): SiteSaid {
  const blocker = withheld(design);
  return {
    storages: design.storages.map(({ sizes: _, years: __, dryRuns: ___, ...said }) => said),
    beside: besideSaid(design),
    blocker,
    fault: blocker?.code === 'site.facts_in_doubt' ? faultAt(blocker.place) : null,
    remedy: remedies?.remedies[0] ?? null,
    notMended: remedies?.notMended ?? null,
  };
}

/**
 * What a list tells of one site, in another language.
 *
 * @param short - what it tells in one language
 * @param said - what its sentences are made of
 * @param language - the other language
 * @returns the same figures with their sentences
 * @definition ours
 */
export function shortIn(short: SiteShort, said: SiteSaid, language: Language): SiteShort {
  const { storages, beside, blocker, fault, remedy, notMended } = said;
  const problems = blocker ? [withFault(blocker, () => fault, language)] : [];
  const words = remedy && { about: language.remedies.remedy(remedy), sentence: language.remedies.smallest(remedy) };
  return {
    ...short,
    finding: findingSaid({ storages, problems, beside }, language),
    withheldBy: problems[0] ? problemSentence(problems[0], language).what : null,
    remedy: short.remedy && words ? { ...short.remedy, ...words } : short.remedy,
    notMended: short.notMended !== null && notMended ? language.remedies.notMended(notMended) : short.notMended,
  };
}
