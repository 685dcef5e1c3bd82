import type { DesignSettings, GaugeFinding, SiteFacts } from '../kernel/index.ts';
import { type Programme, type SiteSizes, siteSizes } from '../site.ts';
import { changedSite } from './changedSite.ts';
import type { FewerLitres, LessFirstFlush, MoreGutter, RemedyChange, TankChange } from './changes.ts';
import { remedyCost, type ToBuy } from './cost.ts';
import type { Market } from './market.ts';
import type { Remedy } from './remedy.ts';

/** Everything a site's remedies are looked for with. */
export interface RemedyCase {
  readonly site: SiteFacts;
  readonly gauge: GaugeFinding | undefined;
  readonly programme: Programme;
  readonly market: Market;
}

/** Changes that leave the tank alone: roof and litres. `cut_count` is the step down of the litres, 0 where there is none. */
export interface BesidesTank {
  readonly roof: readonly (MoreGutter | LessFirstFlush)[];
  readonly litres: FewerLitres | null;
  readonly cut_count: number;
}

/** No change. */
export const asItIs: BesidesTank = { roof: [], litres: null, cut_count: 0 };

interface Chain {
  readonly sizes: SiteSizes;
  readonly toBuy: ToBuy;
}

/**
 * One site with this and that changed, each set of changes to inflow or litres run once: every size of tank is then read off
 * the same curve.
 */
export class Chains {
  readonly #given: RemedyCase;
  readonly #known = new Map<string, Chain | null>();

  constructor(given: RemedyCase) {
    this.#given = given;
  }

  get settings(): DesignSettings {
    return this.#given.programme.settings;
  }

  /** The site with every size of tank answered; null where a change has nothing to change. */
  sizes(besides: BesidesTank): SiteSizes | null {
    return this.#chain(besides)?.sizes ?? null;
  }

  /** Of these tanks, each one or two or none, those with which the site holds or is tight. */
  judged(besides: BesidesTank, tanks: readonly (readonly TankChange[])[]): readonly Remedy[] {
    const chain = this.#chain(besides);
    if (chain === null || tanks.length === 0) return [];
    const volumes = tanks.map((changes) => volumeWith(changes, chain.sizes.tankVolume_L));
    const wanted = [...new Set(volumes)].map((tankVolume_L) => ({ partId: null, tankVolume_L }));
    const found = new Map(chain.sizes.verdictsAt(wanted).map((one) => [one.point.tankVolume_L, one]));
    return tanks.flatMap((changes, index) => {
      const { point, verdict } = found.get(volumes[index]!)!;
      if (verdict !== 'holds' && verdict !== 'tight') return [];
      const all: RemedyChange[] = [...besides.roof, ...changes];
      if (besides.litres !== null) all.push(besides.litres);
      const partIds = changes.map((change) => change.partId);
      return {
        changes: all,
        verdict,
        promiseCut_count: besides.cut_count,
        tankVolume_L: point.tankVolume_L,
        dryDays_per_year: point.dryDays_per_year,
        goodYears: point.goodYears,
        cost: remedyCost({ ...chain.toBuy, partIds }, this.#given.market),
      };
    });
  }

  #chain(besides: BesidesTank): Chain | null {
    const key = JSON.stringify([besides.roof, besides.litres]);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const chain = this.#run(besides);
    this.#known.set(key, chain);
    return chain;
  }

  #run({ roof, litres }: BesidesTank): Chain | null {
    const { site, gauge, programme } = this.#given;
    const changed = changedSite(site, litres === null ? roof : [...roof, litres], programme.settings);
    const sizes = changed && siteSizes(changed.site, gauge, programme);
    return changed && sizes ? { sizes, toBuy: changed.toBuy } : null;
  }
}

/** Usable volume once these tanks are set: beside what stands, or instead of it. */
function volumeWith(changes: readonly TankChange[], now_L: number): number {
  let volume_L = now_L;
  for (const change of changes) volume_L = change.kind === 'largerTank' ? change.volume_L : volume_L + change.volume_L;
  return volume_L;
}
