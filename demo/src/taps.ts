import { chanceFor } from './chance.ts';
import type { Row } from './draft.ts';

/** Taps of a site and where its unit stands: cells of its row. Every site is given the standard kit, whose unit is pumped by hand. */
export function tapCells(seed: number, siteId: string): Row {
  const chance = chanceFor(seed, `taps of ${siteId}`);
  const unitHeight_m = tenths(chance.between(0.5, 0.9));
  const exposure = chance.share();
  return {
    taps: chance.share() < 0.8 ? 1 : 2,
    unitHeight_m,
    tapHeight_m: tenths(unitHeight_m - chance.between(0, 0.2)),
    handPump: chance.share() < 0.85 ? true : null,
    windExposure: exposure < 0.12 ? 'builtUp' : exposure < 0.18 ? 'openWater' : null,
  };
}

/** Bores of pipe that are sold [mm]. Invented, as all of the demo's catalogue. */
const bores_mm = { tankToUnit: [26.2, 26.2, 32.6], unitToTap: [20.4, 26.2] } as const;

/**
 * Pipes from each body of water to the unit and on to the taps.
 *
 * @param seed - of the demo
 * @param siteId - the site
 * @param tankIds - the first tank of each body of water; null where there is but one
 * @returns rows of pipes
 */
export function pipesOf(seed: number, siteId: string, tankIds: readonly (string | null)[]): Row[] {
  const chance = chanceFor(seed, `pipes of ${siteId}`);
  const legs = tankIds.flatMap((tankId) => [
    {
      ...{
        leg: 'tankToUnit',
        tankId,
        bore_mm: chance.pick(bores_mm.tankToUnit),
        length_m: tenths(chance.between(2, 9)),
      },
      ...{ material: 'plastic', elbows: chance.whole(2, 4), valves: 1 },
    },
    {
      ...{
        leg: 'unitToTap',
        tankId,
        bore_mm: chance.pick(bores_mm.unitToTap),
        length_m: tenths(chance.between(0.6, 3)),
      },
      ...{ material: 'plastic', elbows: chance.whole(1, 3), tees: chance.whole(0, 1) },
    },
  ]);
  return legs.map((leg, i) => ({ siteId, pipeId: `P${i + 1}`, ...leg }));
}

const tenths = (value: number) => Math.round(value * 10) / 10;
