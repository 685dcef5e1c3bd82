import type { DesignSettings, DesignStorm, SiteFacts } from '../../kernel/index.ts';

/** Not built yet: what the storm brings to each tank [L/s], by tankId. */
export function stormFlows_L_per_s(_given: {
  readonly site: SiteFacts;
  readonly storm: DesignStorm | null;
  readonly settings: DesignSettings;
}): ReadonlyMap<string, number> {
  return new Map();
}
