import type { DesignSettings, SiteFacts, TankFacts } from '../kernel/index.ts';
import { purposesOf } from '../water/people/index.ts';
import type { RemedyChange } from './changes.ts';
import type { ToBuy } from './cost.ts';
import { flushRoofs } from './flushRoofs.ts';
import { gutterRoofs } from './gutterRoofs.ts';
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
 * @returns the changed facts and what to buy: metres of gutter [m], diverters [count]; null where a change has nothing to change
 * @definition ours: docs/methods/remedies.md, changes
 */
export function changedSite(
  site: SiteFacts,
  changes: readonly RemedyChange[],
  settings: DesignSettings,
): ChangedSite | null {
  let changed = site;
  let toBuy: ToBuy = { partIds: [], gutter_m: [], diverters_count: 0 };
  for (const change of changes) {
    switch (change.kind) {
      case 'secondTank':
      case 'largerTank': {
        const stay = change.kind === 'secondTank' ? changed.tanks : [];
        changed = { ...changed, tanks: [...stay, boughtTank(change.volume_L, stay)] };
        toBuy = { ...toBuy, partIds: [...toBuy.partIds, change.partId] };
        break;
      }
      case 'gutter': {
        const more = gutterRoofs(changed.roofs, change.gutteredFraction, settings.firstFlush_mm);
        if (!more) return null;
        changed = { ...changed, roofs: more.roofs };
        const diverters_count = toBuy.diverters_count + more.newDiverters_count;
        toBuy = { ...toBuy, gutter_m: more.added_m, diverters_count };
        break;
      }
      case 'firstFlush': {
        const less = flushRoofs(changed.roofs, change.firstFlush_mm);
        if (!less) return null;
        changed = { ...changed, roofs: less.roofs };
        toBuy = { ...toBuy, diverters_count: toBuy.diverters_count + less.newDiverters_count };
        break;
      }
      case 'litres':
        changed = { ...changed, demand: promisedLess(purposesOf(changed, settings), change) };
        break;
    }
  }
  return { site: changed, toBuy };
}

/** A new tank of the catalogue: its volume is the part's, and it is joined to the first of those that stay. */
function boughtTank(volume_L: number, beside: readonly TankFacts[]): TankFacts {
  let tankId = 'new';
  while (beside.some((tank) => tank.tankId === tankId)) tankId += '+';
  return {
    tankId,
    nominal_L: null,
    partVolume_L: volume_L,
    outletHeight_m: null,
    overflowHeight_m: null,
    diameter_m: null,
    joinedTo: beside[0]?.tankId ?? null,
  };
}
