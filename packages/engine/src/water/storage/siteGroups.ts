import {
  engineProblem,
  type Place,
  type Problem,
  type SiteFacts,
  type TankFacts,
  type TankGroup,
  tankGroups,
} from '../../kernel/index.ts';
import { sharesSlack_fraction } from './constants.ts';

/** A body of water people draw from, with its roofs and its share of the people. */
export interface SiteGroup extends TankGroup {
  /** Roofs that lead to it, in the order given. */
  readonly roofIds: readonly string[];
  /** Share of the site's people; null where it is not known. All shares that are known sum to 1. */
  readonly peopleFraction: number | null;
}

/** The bodies of water of a site, and what is missing or odd about them. */
export interface SiteGroups {
  readonly groups: readonly SiteGroup[];
  readonly problems: readonly Problem[];
}

/**
 * Into which bodies of water does this site's rain run, and who draws from each? Tanks joined at the foot are one; each of the
 * others is a balance of its own, with its own roofs and a stated share of the people. With one body of water neither has to
 * be said. A tank whose share is 0 is a reserve: nobody draws from it, so it is not judged.
 *
 * @param site - siteId [text], its tanks with peopleFraction [fraction] and its roofs with the tank each leads to [text]
 * @returns the bodies of water people draw from, in the order of their first tanks: tankIds [text], roofIds [text],
 *   peopleFraction [fraction]; and every problem found
 * @problem site.tank_none - the site has no tank
 * @problem site.tank_shares_unknown - several bodies of water, and of some nobody said what share of the people draws there
 * @problem site.tank_shares_differ - two tanks of one body of water have different shares
 * @problem site.tank_shares_sum - the shares do not sum to 1
 * @problem site.roof_tank_unknown - several bodies of water, and a roof with gutters whose tank is not known
 * @problem site.tank_no_roof - no roof leads to it
 * @problem site.tank_reserve - nobody draws from it
 * @law the shares of the groups sum to 1 where there is no blocker
 * @definition ours: docs/decisions/0090-several-tanks.md
 */
export function siteGroups(site: Pick<SiteFacts, 'siteId' | 'tanks' | 'roofs'>): SiteGroups {
  const problems: Problem[] = [];
  const place = { file: 'tanks.csv', siteId: site.siteId };
  const groups = tankGroups(site.tanks);
  if (groups.length === 0) problems.push(engineProblem('site.tank_none', place));
  const shares = sharesOf(groups, { ...place, column: 'peopleFraction' }, problems);
  if (groups.length > 1) noteRoofs(site, groups, problems);
  const found = groups.map((group, index): SiteGroup => {
    const leading = site.roofs.filter(({ tankId }) => groups.length === 1 || group.tankIds.includes(tankId ?? ''));
    return { ...group, roofIds: leading.map(({ roofId }) => roofId), peopleFraction: shares[index]! };
  });
  const drawnFrom = found.filter(({ tankIds, peopleFraction, roofIds }) => {
    if (peopleFraction === 0) problems.push(engineProblem('site.tank_reserve', place, { tanks: tankIds }));
    else if (roofIds.length === 0 && site.roofs.length > 0)
      problems.push(engineProblem('site.tank_no_roof', place, { tanks: tankIds }));
    return peopleFraction !== 0;
  });
  return { groups: drawnFrom, problems };
}

/** Each group's share of the people, drawn up to a sum of exactly 1; null where it is not known. */
function sharesOf(groups: readonly TankGroup[], place: Place, problems: Problem[]): readonly (number | null)[] {
  const given = groups.map(({ tanks }) => shareOf(tanks, place, problems));
  if (given.includes('differ')) return given.map(() => null);
  const known = given.filter((share) => typeof share === 'number');
  if (groups.length === 1 && known.length === 0) return [1];
  if (known.length < groups.length) {
    const tanks = groups.flatMap(({ tankIds }, index) => (given[index] === null ? tankIds.slice(0, 1) : []));
    problems.push(engineProblem('site.tank_shares_unknown', place, { tanks }));
    return given.map(() => null);
  }
  const sum = known.reduce((total, share) => total + share, 0);
  if (Math.abs(sum - 1) <= sharesSlack_fraction) return known.map((share) => share / sum);
  if (groups.length > 0) problems.push(engineProblem('site.tank_shares_sum', place, { sum_fraction: sum }));
  return given.map(() => null);
}

/** The share said of any of these tanks. */
function shareOf(tanks: readonly TankFacts[], place: Place, problems: Problem[]): number | null | 'differ' {
  const said = tanks.filter(({ peopleFraction }) => peopleFraction !== null);
  const [first] = said;
  if (first === undefined) return null;
  if (said.every(({ peopleFraction }) => peopleFraction === first.peopleFraction)) return first.peopleFraction;
  problems.push(engineProblem('site.tank_shares_differ', place, { tanks: said.map(({ tankId }) => tankId) }));
  return 'differ';
}

/** A roof without gutters leads nowhere; of every other one the tank has to be known. */
function noteRoofs(
  { siteId, roofs, tanks }: Pick<SiteFacts, 'siteId' | 'tanks' | 'roofs'>,
  groups: readonly TankGroup[],
  problems: Problem[],
): void {
  const known = new Set(tanks.map(({ tankId }) => tankId));
  const to = groups.map(({ tankIds }) => tankIds[0]!);
  for (const { roofId, tankId, gutteredFraction } of roofs) {
    if (gutteredFraction === 0 || (tankId !== null && known.has(tankId))) continue;
    const place = { file: 'roofs.csv', siteId, column: 'tankId' };
    problems.push(engineProblem('site.roof_tank_unknown', place, { roof: roofId, tanks: to }));
  }
}
