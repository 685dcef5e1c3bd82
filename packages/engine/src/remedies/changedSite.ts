import {
  type DesignSettings,
  type RoofFacts,
  type SiteFacts,
  type TankFacts,
  tankGroups,
  unmeasuredTank,
} from '../kernel/index.ts';
import { headcount, purposesOf } from '../water/people/index.ts';
import type { RemedyChange, TankChange, Where } from './changes.ts';
import { type HungGutter, nothingToBuy, type ToBuy } from './cost.ts';
import { fittedSite, notBuilt } from './fittedSite.ts';
import { flushRoofs } from './flushRoofs.ts';
import { type GutteredRoofs, gutterRoofs } from './gutterRoofs.ts';
import { nextId } from './nextId.ts';
import { promisedLess } from './promisedLitres.ts';

/** A site with changes made, and what has to be bought for them. */
export interface ChangedSite {
  readonly site: SiteFacts;
  readonly toBuy: ToBuy;
}

/**
 * What is a site once these changes are made? The facts as a survey would then find them, so that the site can be judged
 * like any other.
 *
 * @param site - the site's facts
 * @param changes - in the order they are made: gutter before first flush, since the depth of a chamber hangs on what drains to it
 * @param settings - the programme's settings
 * @returns the changed facts and what to buy: metres of gutter [m], pieces [count] and runs [m] of parts, diverters and whole sites [count]; null where a change has nothing to change
 * @definition ours: docs/methods/remedies.md, changes
 */
// long: one change after the other, a few lines each
export function changedSite(
  site: SiteFacts,
  changes: readonly RemedyChange[],
  settings: DesignSettings,
): ChangedSite | null {
  let changed = site;
  let toBuy = nothingToBuy;
  for (const change of changes) {
    switch (change.kind) {
      case 'secondTank':
      case 'largerTank':
        changed = withTank(changed, change);
        toBuy = { ...toBuy, partIds: [...toBuy.partIds, change.partId] };
        break;
      case 'gutter': {
        const more = gutterRoofs(roofsTo(changed, change), change.gutteredFraction, settings.firstFlush_mm);
        if (!more) return null;
        const hung = hungGutters(withRoofs(changed, more.roofs), more.added);
        changed = hung.site;
        const diverters_count = toBuy.diverters_count + more.newDiverters_count;
        toBuy = { ...toBuy, gutter_m: [...toBuy.gutter_m, ...hung.gutter_m], diverters_count };
        break;
      }
      case 'firstFlush': {
        const less = flushRoofs(roofsTo(changed, change), change.firstFlush_mm);
        if (!less) return null;
        changed = withRoofs(changed, less.roofs);
        toBuy = { ...toBuy, diverters_count: toBuy.diverters_count + less.newDiverters_count };
        break;
      }
      case 'litres':
        changed = { ...changed, demand: promisedLess(purposesOf(changed, settings), change) };
        break;
      case 'largerGutter':
      case 'outlet':
      case 'downpipe':
      case 'overflow':
      case 'pipe':
        ({ site: changed, toBuy } = fittedSite(changed, change, toBuy));
        break;
      case 'secondSource':
        changed = { ...changed, secondSource: site.nearSecondSource };
        toBuy = { ...toBuy, isSourceUsed: true };
        break;
      case 'people':
        changed = withPeople(changed, change.carried_people, settings);
        toBuy = { ...toBuy, otherSites_count: toBuy.otherSites_count + 1 };
        break;
    }
  }
  return { site: changed, toBuy };
}

/**
 * New gutter on roofs whose gutters are measured: a run like the longest there, led to the downpipes there. Where no gutter of the
 * roof is measured nothing is known of the new one either.
 */
function hungGutters(
  site: SiteFacts,
  added: GutteredRoofs['added'],
): { readonly site: SiteFacts; readonly gutter_m: readonly HungGutter[] } {
  const gutters = [...site.gutters];
  const gutter_m = added.map(({ roofId, length_m }): HungGutter => {
    const ofRoof = site.gutters.filter((gutter) => gutter.roofId === roofId);
    const [like] = ofRoof.sort((a, b) => (b.length_m ?? 0) - (a.length_m ?? 0));
    if (like === undefined) return { gutterId: null, length_m, leastWidth_mm: null, leastDepth_mm: null };
    const ids = gutters.map((gutter) => gutter.gutterId);
    const gutterId = nextId(ids, 'G');
    gutters.push({ ...notBuilt(like), gutterId, length_m, runToOutlet_m: null, bends_count: 0 });
    return { gutterId, length_m, leastWidth_mm: like.width_mm, leastDepth_mm: like.depth_mm };
  });
  return { site: gutters.length === site.gutters.length ? site : { ...site, gutters }, gutter_m };
}

/** The site with so many people of the design year. Growth that could not be reckoned with stays, so that it is still told of. */
function withPeople(site: SiteFacts, people: number, settings: DesignSettings): SiteFacts {
  const { counted_people, design_people } = headcount(site, settings);
  const isGrown = counted_people !== design_people;
  return { ...site, people, growthFraction_per_year: isGrown ? 0 : site.growthFraction_per_year };
}

/** The tanks a change is made to. */
function tanksAt({ tanks }: SiteFacts, { tankId }: Where): readonly TankFacts[] {
  if (tankId === null) return tanks;
  return tankGroups(tanks).find((group) => group.tankIds.includes(tankId))?.tanks ?? [];
}

/** The roofs that lead to the tanks a change is made to. */
function roofsTo(site: SiteFacts, where: Where): readonly RoofFacts[] {
  if (where.tankId === null) return site.roofs;
  const ids = tanksAt(site, where).map(({ tankId }) => tankId);
  return site.roofs.filter(({ tankId }) => tankId !== null && ids.includes(tankId));
}

function withRoofs(site: SiteFacts, changed: readonly RoofFacts[]): SiteFacts {
  const byId = new Map(changed.map((roof) => [roof.roofId, roof]));
  return { ...site, roofs: site.roofs.map((roof) => byId.get(roof.roofId) ?? roof) };
}

/** The site with a new tank of the catalogue: joined to the first of those it stands beside, or with their roofs and people. */
function withTank(site: SiteFacts, change: TankChange): SiteFacts {
  const there = tanksAt(site, change);
  let tankId = 'new';
  while (site.tanks.some((tank) => tank.tankId === tankId)) tankId += '+';
  const [first] = there;
  const unmeasured: TankFacts = {
    ...unmeasuredTank,
    tankId,
    partVolume_L: change.volume_L,
    partId: change.partId,
    partMass_kg: change.mass_kg,
  };
  if (first === undefined) return { ...site, tanks: [...site.tanks, unmeasured] };
  // Joined at the foot, or joined to the pipes there, it stands as high; its stand is not signed for.
  const bought: TankFacts = {
    ...unmeasured,
    standHeight_m: first.standHeight_m,
    outletHeight_m: first.outletHeight_m,
  };
  if (change.kind === 'secondTank') return { ...site, tanks: [...site.tanks, { ...bought, joinedTo: first.tankId }] };
  const peopleFraction = there.find((tank) => tank.peopleFraction !== null)?.peopleFraction ?? null;
  const leading = new Set(roofsTo(site, change));
  return {
    ...site,
    // In the place of the first it stands for, so that the bodies of water keep their order.
    tanks: site.tanks.flatMap((tank) => {
      if (tank === first) return [{ ...bought, ...inThePlaceOf(first), peopleFraction }];
      return there.includes(tank) ? [] : [tank];
    }),
    roofs: site.roofs.map((roof) => (roof.tankId !== null && leading.has(roof) ? { ...roof, tankId } : roof)),
    pipes: site.pipes.map((pipe) => (there.some((tank) => tank.tankId === pipe.tankId) ? { ...pipe, tankId } : pipe)),
  };
}

/** What a larger tank takes over from the one whose place it takes: its overflow pipe and the stand. */
function inThePlaceOf(tank: TankFacts): Partial<TankFacts> {
  const { overflowBore_mm, overflows_count, overflowScreen } = tank;
  const { standMass_kg, groundClass, pads_count, padSide_m, baseWidth_m } = tank;
  return {
    ...{ overflowBore_mm, overflows_count, overflowScreen },
    ...{ standMass_kg, groundClass, pads_count, padSide_m, baseWidth_m },
  };
}
