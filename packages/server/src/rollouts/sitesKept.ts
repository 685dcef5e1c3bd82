import {
  type ProgrammeFacts,
  type ReadyKit,
  type ReadyProgramme,
  type RolloutSite,
  rolloutSites,
  type Verdict,
} from '@eavewell/engine';
import { contentHash, siteHasher } from '../designs/siteHash.ts';

/** What was found of a site, and what it follows from. */
interface Kept {
  readonly hash: string;
  readonly found: Omit<RolloutSite, 'site'>;
}

/** What the rollout wants to know of the sites of a programme, kept from one state of its facts to the next: only of sites whose facts changed it is worked out anew. */
export class SitesKept {
  private kept: ReadonlyMap<string, Kept>;
  /** Sites that were worked out, over all states [count]. */
  made_count = 0;

  /** @param before - what was kept of another state; left out: nothing */
  constructor(before?: SitesKept) {
    this.kept = before?.kept ?? new Map();
  }

  /**
   * What `rolloutSites` finds of all sites, one at a time.
   *
   * @param facts - the programme
   * @param programme - the same, ready to be judged, with today [day]
   * @param kit - the same, ready for kits
   * @param verdicts - of sites that are judged already, by their ids
   * @law what is kept is what would be found anew
   */
  *of(
    facts: ProgrammeFacts,
    programme: ReadyProgramme,
    kit: ReadyKit,
    verdicts: ReadonlyMap<string, Verdict>,
  ): Generator<RolloutSite, void> {
    const hashOf = siteHasher(facts, programme, () => null);
    // Kits follow from their rules too.
    const beside = contentHash([facts.settings, facts.kit.rules, programme.today]);
    const now = new Map<string, Kept>();
    for (const site of facts.sites) {
      const hash = `${beside} ${hashOf(site)}`;
      let one = this.kept.get(site.siteId);
      if (one?.hash !== hash) {
        const [made] = rolloutSites([site], programme, kit, verdicts);
        const { site: _, ...found } = made!;
        one = { hash, found };
        this.made_count += 1;
      }
      now.set(site.siteId, one);
      yield { site, ...one.found };
    }
    this.kept = now;
  }
}
