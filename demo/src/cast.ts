import { chanceFor } from './chance.ts';
import type { MadeSite } from './sites.ts';
import { tapCells } from './taps.ts';

/** What a site with a treatment unit shows of treatment, samples and raw water, beside what most show. */
export type Part =
  | 'sound'
  | 'noSample'
  | 'ecoliAtTap'
  | 'allPositive'
  | 'ecoliBefore'
  | 'rarePattern'
  | 'noViruses'
  | 'chlorine'
  | 'littleChlorine'
  | 'skips'
  | 'daysOff'
  | 'overdue'
  | 'nearDue'
  | 'worn'
  | 'meterBackwards'
  | 'airFalls'
  | 'lead'
  | 'unknownPaint'
  | 'trees'
  /** Raw water was looked at, and there is no unit. */
  | 'untreated';

/**
 * How often each part is given among so many sites [site]. What leaves the cup in doubt comes first, at sites whose rain is not known well enough to hold, then
 * anywhere. A site that has a fault planted in it has no part of its own. Ours.
 */
const parts: readonly (readonly [Part, number])[] = [
  ['noViruses', 2],
  ['ecoliAtTap', 2],
  ['allPositive', 1],
  ['skips', 1],
  ['daysOff', 1],
  ['littleChlorine', 1],
  ['trees', 1],
  ['noSample', 2],
  ['overdue', 1],
  ['chlorine', 1],
  ['ecoliBefore', 1],
  ['rarePattern', 1],
  ['nearDue', 3],
  ['worn', 3],
  ['meterBackwards', 1],
  ['airFalls', 1],
  ['lead', 2],
  ['unknownPaint', 2],
];
const round_sites = 60;
/** So many sites have no unit yet, and raw water that was looked at [site]. Ours. */
const untreated_sites = 2;

/** Of the sites with a hand pump, and of those where nobody said, how many have their unit already [fraction]. Ours. */
const [equipped_fraction, unsaid_fraction] = [0.92, 0.25] as const;

/**
 * Which site has a unit, and what does it show?
 *
 * @param seed - of the demo
 * @param made - its sites
 * @param clean - nothing is wrong anywhere: every site with a unit is sound
 * @param faulty - sites that a fault is planted in
 * @param unread - sites whose gauge is not read yet
 * @returns the part of each site that has a unit, or whose raw water was looked at
 */
export function castOf(
  seed: number,
  made: readonly MadeSite[],
  clean: boolean,
  faulty: ReadonlySet<string>,
  unread: ReadonlySet<string>,
): ReadonlyMap<string, Part> {
  const cast = new Map<string, Part>();
  for (let start = 0; start < made.length; start += round_sites) {
    const round = made.slice(start, start + round_sites);
    const chance = chanceFor(seed, `cast from a ${start}`);
    const drawn = round.map((site) => {
      return { site, at: chance.share(), isUnread: unread.has(site.siteId), hasUnit: isEquipped(seed, site) };
    });
    const order = drawn.sort((a, b) => Number(b.isUnread) - Number(a.isUnread) || a.at - b.at);
    const withUnit = order.filter(({ hasUnit }) => hasUnit);
    for (const { site } of withUnit) cast.set(site.siteId, 'sound');
    const wanted = clean ? [] : parts.flatMap(([part, count]) => Array<Part>(count).fill(part));
    const free = withUnit.filter(({ site }) => !faulty.has(site.siteId)).slice(0, wanted.length);
    free.forEach(({ site }, i) => {
      cast.set(site.siteId, wanted[i]!);
    });
    const without = clean ? [] : order.filter(({ hasUnit }) => !hasUnit).slice(0, untreated_sites);
    for (const { site } of without) cast.set(site.siteId, 'untreated');
  }
  return cast;
}

function isEquipped(seed: number, { siteId }: MadeSite): boolean {
  const isPumped = tapCells(seed, siteId)['handPump'] === true;
  return chanceFor(seed, `is there a unit at ${siteId}`).share() < (isPumped ? equipped_fraction : unsaid_fraction);
}
