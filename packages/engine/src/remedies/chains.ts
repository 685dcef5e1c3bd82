import type { DesignSettings, GaugeFinding, SiteFacts } from '../kernel/index.ts';
import { type Programme, type SiteSizes, siteSizes } from '../site.ts';
import { compareStorages, type SizeVerdict } from '../water/storage/index.ts';
import { changedSite } from './changedSite.ts';
import { changeKinds, type RemedyChange, type RoofChange, type SiteChange, type TankChange } from './changes.ts';
import { remedyCost } from './cost.ts';
import type { Market } from './market.ts';
import { compareRemedies, type Remedy } from './remedy.ts';

/** Everything a site's remedies are looked for with. */
export interface RemedyCase {
  readonly site: SiteFacts;
  readonly gauge: GaugeFinding | undefined;
  readonly programme: Programme;
  readonly market: Market;
}

/** A change to one body of water. */
export interface Placed {
  /** Its first tank, by the letters. */
  readonly group: string;
  readonly change: RoofChange | TankChange;
}

/** Changes made together. `cut_count` is the step down of the litres, 0 where there is none. */
export interface Plan {
  readonly placed: readonly Placed[];
  /** A change to the whole site. */
  readonly ofSite: SiteChange | null;
  readonly cut_count: number;
}

/** No change. */
export const asItIs: Plan = { placed: [], ofSite: null, cut_count: 0 };

/** What stands for the judgement of a plan that is only compared. */
const unjudged = { verdict: 'holds', dryDays_per_year: 0, goodYears: 0, sourceDays_per_year: null } as const;

/** One body of water under changes to its roofs and the whole site, and the verdicts read off its curve so far, by volume [L]. */
interface Chain {
  readonly sizes: SiteSizes;
  readonly known: Map<number, SizeVerdict>;
}

/** One body of water of a plan: its chain, and the volume asked about. */
interface Asked {
  readonly chain: Chain;
  readonly volume_L: number;
}

/**
 * One site with this and that changed, each set of changes to inflow or litres run once for each body of water: every size of
 * tank is then read off the same curve.
 */
export class Chains {
  readonly #given: RemedyCase;
  readonly #known = new Map<string, Chain | null>();
  /** The bodies of water as they are. */
  readonly groups: readonly SiteSizes[];

  constructor(given: RemedyCase) {
    this.#given = given;
    this.groups = siteSizes(given.site, given.gauge, given.programme);
    for (const sizes of this.groups) this.#known.set(keyOf(sizes.tankIds[0]!, [], null), { sizes, known: new Map() });
  }

  get settings(): DesignSettings {
    return this.#given.programme.settings;
  }

  /** One body of water with every size of tank answered; null where a change has nothing to change. */
  sizes(group: string, plan: Plan): SiteSizes | null {
    return this.#chain(group, plan)?.sizes ?? null;
  }

  /** Of these plans, those with which the site holds or is tight. */
  judged(plans: readonly Plan[]): readonly Remedy[] {
    const asked = this.#ask(
      plans,
      this.groups.map(({ tankIds }) => tankIds[0]!),
    );
    return plans.flatMap((plan, index) => {
      const groups = asked[index];
      return groups ? (this.#remedy(plan, groups) ?? []) : [];
    });
  }

  /** Does the whole site get this verdict with these changes, or a better one? Asked of many plans once, so nothing of it is kept. */
  isAtLeast(verdict: 'holds' | 'tight', plan: Plan): boolean {
    const { site, gauge, programme } = this.#given;
    const changed = changedSite(site, changesOf(plan), programme.settings);
    if (changed === null) return false;
    return siteSizes(changed.site, gauge, programme).every(({ tankVolume_L, verdictAt, meetsAt }) =>
      verdict === 'holds' ? verdictAt(tankVolume_L) === 'holds' : meetsAt(tankVolume_L),
    );
  }

  /** Could a plan come before this remedy, which holds, were it to hold itself? Nothing is run for that. */
  couldPrecede(plan: Plan, first: Remedy): boolean {
    const asked = this.#asAsked(plan);
    return asked !== null && compareRemedies({ ...asked, ...unjudged }, first) < 0;
  }

  /** Would one body of water hold with any of these plans, whatever becomes of the others? */
  holdsAlone(group: string, plans: readonly Plan[]): boolean {
    return this.#ask(plans, [group]).some((one) => one !== null && found(one[0]!).verdict === 'holds');
  }

  /** The wanted bodies of water of each plan, all volumes asked for at once; null where a change has nothing to change. */
  #ask(plans: readonly Plan[], groups: readonly string[]): readonly (readonly Asked[] | null)[] {
    const wanted = new Map<Chain, Set<number>>();
    const asked = plans.map((plan) => {
      const all: Asked[] = [];
      for (const group of groups) {
        const chain = this.#chain(group, plan);
        if (chain === null) return null;
        const volume_L = volumeWith(tanksOf(group, plan), chain.sizes.tankVolume_L);
        if (!chain.known.has(volume_L)) wanted.set(chain, (wanted.get(chain) ?? new Set()).add(volume_L));
        all.push({ chain, volume_L });
      }
      return all;
    });
    for (const [{ sizes, known }, volumes] of wanted) {
      const tanks = [...volumes].map((tankVolume_L) => ({ partId: null, tankVolume_L }));
      for (const one of sizes.verdictsAt(tanks)) known.set(one.point.tankVolume_L, one);
    }
    return asked;
  }

  /** The plan as a remedy, by its worst body of water; null where the site would still be short. */
  #remedy(plan: Plan, asked: readonly Asked[]): Remedy | null {
    const [worst] = asked
      .map((one) => {
        const { point, verdict } = found(one);
        return { ...point, verdict, tankIds: one.chain.sizes.tankIds };
      })
      .sort(compareStorages);
    if (worst === undefined || (worst.verdict !== 'holds' && worst.verdict !== 'tight')) return null;
    return {
      ...this.#asAsked(plan)!,
      verdict: worst.verdict,
      dryDays_per_year: worst.dryDays_per_year,
      goodYears: worst.goodYears,
      sourceDays_per_year: plan.ofSite?.kind === 'secondSource' ? mostSourceDays(asked) : null,
    };
  }

  /** What a plan asks for, whatever becomes of the site; null where a change has nothing to change. */
  #asAsked(plan: Plan): Pick<Remedy, 'changes' | 'promiseCut_count' | 'tankVolume_L' | 'cost'> | null {
    const changes = changesOf(plan);
    const { site, programme, market } = this.#given;
    const changed = changedSite(site, changes, programme.settings);
    if (changed === null) return null;
    return {
      changes,
      promiseCut_count: plan.cut_count,
      tankVolume_L: this.groups.reduce(
        (sum, { tankIds, tankVolume_L }) => sum + volumeWith(tanksOf(tankIds[0]!, plan), tankVolume_L),
        0,
      ),
      cost: remedyCost(changed.toBuy, market),
    };
  }

  #chain(group: string, { placed, ofSite }: Plan): Chain | null {
    const roof = placed.flatMap((one) => (one.group === group && isOfRoof(one.change) ? [one.change] : []));
    const key = keyOf(group, roof, ofSite);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const { site, gauge, programme } = this.#given;
    const changed = changedSite(site, ofSite === null ? roof : [...roof, ofSite], programme.settings);
    const sizes = changed && siteSizes(changed.site, gauge, programme).find(({ tankIds }) => tankIds[0] === group);
    const chain = sizes ? { sizes, known: new Map<number, SizeVerdict>() } : null;
    this.#known.set(key, chain);
    return chain;
  }
}

function keyOf(group: string, roof: readonly RoofChange[], ofSite: SiteChange | null): string {
  return JSON.stringify([group, roof, ofSite]);
}

function found({ chain, volume_L }: Asked): SizeVerdict {
  return chain.known.get(volume_L)!;
}

/** Days a year from the second source, of the body of water that leans on it most. */
function mostSourceDays(asked: readonly Asked[]): number {
  return Math.max(...asked.map(({ chain, volume_L }) => chain.sizes.sourceDays_per_year(volume_L)));
}

function isOfRoof(change: RoofChange | TankChange): change is RoofChange {
  return change.kind === 'gutter' || change.kind === 'firstFlush';
}

function tanksOf(group: string, { placed }: Plan): readonly TankChange[] {
  return placed.flatMap((one) => (one.group === group && !isOfRoof(one.change) ? [one.change] : []));
}

function changesOf({ placed, ofSite }: Plan): readonly RemedyChange[] {
  const changes: RemedyChange[] = inOrder(placed.map(({ change }) => change));
  return ofSite === null ? changes : [...changes, ofSite];
}

/** The way of the water down; changes of one kind stay in their order. */
function inOrder<T extends RemedyChange>(changes: readonly T[]): T[] {
  return [...changes].sort((a, b) => changeKinds.indexOf(a.kind) - changeKinds.indexOf(b.kind));
}

/** Usable volume once these tanks are set: beside what stands, or instead of it. */
function volumeWith(changes: readonly TankChange[], now_L: number): number {
  let volume_L = now_L;
  for (const change of changes) volume_L = change.kind === 'largerTank' ? change.volume_L : volume_L + change.volume_L;
  return volume_L;
}
