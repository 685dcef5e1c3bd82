import type { SiteDesign, SiteRemedies } from '@eavewell/engine';
import type { SiteShort } from '@eavewell/tables';
import { type Language, problemSentence } from '@eavewell/words';
import { findingOf } from './siteReport.ts';

/** The sentences a list tells of one site, in one language. */
export interface SiteSaid {
  readonly finding: string;
  /** The fault that keeps it from a verdict; null where none does. */
  readonly withheldBy: string | null;
  /** The smallest change, and the sentence of it; null where none mends it. */
  readonly about: string | null;
  readonly sentence: string | null;
  readonly notMended: string | null;
}

/**
 * What a list says of one site, in one language.
 *
 * @param design - what it came to
 * @param remedies - what would mend it; null where it is neither short nor tight
 * @returns its sentences
 * @definition ours
 */
export function siteSaid(design: SiteDesign, remedies: SiteRemedies | null, language: Language): SiteSaid {
  const first = remedies?.remedies[0];
  const blocker = design.problems.find(({ severity }) => severity === 'blocker');
  return {
    finding: findingOf(design, language),
    withheldBy: blocker ? problemSentence(blocker, language).what : null,
    about: first ? language.remedies.remedy(first) : null,
    sentence: first ? language.remedies.smallest(first) : null,
    notMended: !first && remedies?.notMended ? language.remedies.notMended(remedies.notMended) : null,
  };
}

/** What a list tells of a site, with its sentences in another language. */
export function shortSaid(short: SiteShort, { about, sentence, ...said }: SiteSaid): SiteShort {
  const { remedy } = short;
  const isSaid = remedy !== null && about !== null && sentence !== null;
  return { ...short, ...said, remedy: isSaid ? { ...remedy, about, sentence } : remedy };
}
