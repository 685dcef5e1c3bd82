import type { Part } from './cast.ts';
import { chanceFor } from './chance.ts';
import type { LaterTable, Row } from './draft.ts';
import type { Particular } from './particulars.ts';
import type { MadeSite } from './sites.ts';

/** So many of a programme's sites are handed over; the others are surveyed and drawn, and to be fitted over the coming year [fraction]. Ours. */
const handedOver_fraction = 36 / 60;
const round_sites = 60;

/** A site like this shows nothing that only a unit in use shows: it can as well be one that is to be fitted. */
const mayWait: ReadonlySet<Part> = new Set<Part>(['untreated', 'sound']);

/**
 * Which sites are still to be fitted? First those that have no unit, then those that roof or tank hardly suits, then those whose survey has
 * a slip, and then others: what was plain was built first.
 *
 * @param seed - of the demo
 * @param made - its sites
 * @param cast - what each shows of its water
 * @param particulars - what sets a site apart; one that grows is counted from its hand-over
 * @param inDoubt - sites that a fault is planted in
 * @returns their ids
 */
export function toBeFitted(
  seed: number,
  made: readonly MadeSite[],
  cast: ReadonlyMap<string, Part>,
  particulars: ReadonlyMap<string, Particular>,
  inDoubt: ReadonlySet<string>,
): ReadonlySet<string> {
  const waiting = new Set<string>();
  for (let start = 0; start < made.length; start += round_sites) {
    const round = made.slice(start, start + round_sites);
    const chance = chanceFor(seed, `which wait from a ${start}`);
    const groupOf = ({ siteId, lot }: MadeSite) => {
      if ((cast.get(siteId) ?? 'untreated') === 'untreated') return 0;
      return lot !== 'ample' ? 1 : inDoubt.has(siteId) ? 2 : 3;
    };
    const inOrder = round
      .map((site) => ({ site, group: groupOf(site), at: chance.share() }))
      .filter(({ site: { siteId } }) => {
        return mayWait.has(cast.get(siteId) ?? 'untreated') && particulars.get(siteId) !== 'growing';
      })
      .sort((a, b) => a.group - b.group || a.at - b.at);
    const count = round.length - Math.round(round.length * handedOver_fraction);
    for (const { site } of inOrder.slice(0, count)) waiting.add(site.siteId);
  }
  return waiting;
}

/**
 * What stands in the tables of treatment of a site that is to be fitted: the units it is to have, and nothing that is seen of them in use.
 *
 * @param rows - of a site that is handed over
 * @returns the rows of the plan
 */
export function asPlanned(
  rows: Partial<Record<LaterTable, readonly Row[]>>,
): Partial<Record<LaterTable, readonly Row[]>> {
  const { treatmentUnits = [], rawWater = [] } = rows;
  return { treatmentUnits: treatmentUnits.map((unit) => ({ ...unit, installedOn: null })), rawWater };
}
