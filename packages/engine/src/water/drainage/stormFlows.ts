import type { DesignSettings, DesignStorm, SiteFacts } from '../../kernel/index.ts';
import type { Notes } from './notes.ts';
import { roofStorms } from './roofStorms.ts';
import { siteStorm } from './siteStorm.ts';

/**
 * What does the storm bring to each tank? All that the roofs bring whose gutters lead to it; where it is not said to which of joined tanks a roof
 * leads, it counts at each of them.
 *
 * @param given - the site's facts, its storm [mm/h] and the settings
 * @returns flow by tankId [L/s]; a tank is left out where no storm is known, or a roof that may lead to it is not
 * @definition ours: docs/methods/drainage.md
 */
export function stormFlows_L_per_s(given: {
  readonly site: SiteFacts;
  readonly storm: DesignStorm | null;
  readonly settings: DesignSettings;
}): ReadonlyMap<string, number> {
  const { site, storm, settings } = given;
  const flows = new Map<string, number>();
  if (storm === null) return flows;
  const silent: Notes = { siteId: site.siteId, problems: [], working: [] };
  const roofs = roofStorms(site, siteStorm(storm, site.rainFactor, settings, silent), silent);
  for (const { tankId } of site.tanks) {
    const own = roofs.filter(({ roof }) => roof.tankId === null || roof.tankId === tankId);
    if (own.every(({ flow }) => flow !== null))
      flows.set(
        tankId,
        own.reduce((sum, { flow }) => sum + flow!.flow_L_per_s, 0),
      );
  }
  return flows;
}
