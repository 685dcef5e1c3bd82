import { type DesignSettings, type SizePoint, type StorageFinding, tankGroups, worstVerdict } from '../kernel/index.ts';
import { type SiteSizes, siteSizes } from '../site.ts';
import { compareStorages, holdPrecision_fraction, type SizeVerdict, type StorageRank } from '../water/storage/index.ts';
import type { BesideStorage, WithOthers } from './besideStorage.ts';
import { type ChangedSite, changedSite } from './changedSite.ts';
import {
  changeKinds,
  type RemedyChange,
  type RoofChange,
  type SiteChange,
  type StorageChange,
  type TankChange,
} from './changes.ts';
import { remedyCost } from './cost.ts';
import { compareRemedies, kindsOf, type Remedy } from './remedy.ts';
import type { RemedyCase } from './remedyCase.ts';

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
const unjudged = {
  verdict: 'holds',
  dryDays_per_year: 0,
  goodYears: 0,
  sourceDays_per_year: null,
  besides: [],
  standGate: 'notNeeded',
} as const;

/** One body of water under changes to its roofs and the whole site, and the verdicts read off its curve so far, by volume [L]. */
interface Chain {
  readonly sizes: SiteSizes;
  readonly known: Map<number, SizeVerdict>;
}

/** What a plan asks for, whatever becomes of the site. */
type AsAsked = Pick<Remedy, 'changes' | 'promiseCut_count' | 'tankVolume_L' | 'cost'>;

/** A whole site asked step by step, the quicker question first. */
export interface Probe {
  /** Is the target met, whatever the doubt? */
  isMet(): boolean;
  /** Could it hold, were only the years drawn again to say so too? */
  couldHold(): boolean;
  holds(): boolean;
}

/**
 * One site with this and that changed, each set of changes to inflow or litres run once for each body of water: every size of
 * tank is then read off the same curve.
 */
export class Chains {
  readonly #given: RemedyCase;
  readonly #known = new Map<string, Chain | null>();
  readonly #storages: readonly StorageFinding[];
  readonly #beside: BesideStorage | null;
  /** By body of water: a tank known to hold as the site is [L]. */
  readonly #holdsFrom_L = new Map<string, number>();
  /** The bodies of water as they are. */
  readonly groups: readonly SiteSizes[];

  /** `beside`: null where no station but storage is judged. */
  constructor(given: RemedyCase, storages: readonly StorageFinding[], beside: BesideStorage | null) {
    this.#given = given;
    this.#storages = storages;
    this.#beside = beside;
    this.groups = siteSizes(given.site, given.gauge, given.programme);
    for (const sizes of this.groups) {
      const group = sizes.tankIds[0]!;
      const toHold_L = storages.find(({ tankIds }) => tankIds[0] === group)?.tankToHold_L ?? null;
      if (toHold_L !== null) {
        const from = { from_L: toHold_L, notUpTo_L: toHold_L * (1 - 1.01 * holdPrecision_fraction) };
        sizes.learn(from);
        this.#holdsFrom_L.set(group, toHold_L);
      }
      this.#known.set(keyOf(group, [], null), { sizes, known: new Map() });
    }
  }

  get settings(): DesignSettings {
    return this.#given.programme.settings;
  }

  /** One body of water with every size of tank answered; null where a change has nothing to change. */
  sizes(group: string, plan: Plan): SiteSizes | null {
    return this.#chain(group, plan)?.sizes ?? null;
  }

  /**
   * Of these plans, by kinds of change: the first with which the site holds; and the first with which it is tight, where it would come
   * before that one had it held. They are judged in the order they would be told in, and no further.
   */
  firsts(plans: readonly Plan[], isBetter: (remedy: Remedy) => boolean): readonly Remedy[] {
    const byKinds = new Map<string, { readonly plan: Plan; readonly asked: typeof unjudged & AsAsked }[]>();
    for (const plan of plans) {
      const own = this.#asAsked(plan);
      if (own === null) continue;
      const asked = { ...own, ...unjudged };
      const kinds = kindsOf({ changes: changesOf(plan) });
      const known = byKinds.get(kinds);
      if (known) known.push({ plan, asked });
      else byKinds.set(kinds, [{ plan, asked }]);
    }
    return [...byKinds.values()].flatMap((some) => {
      some.sort((a, b) => compareRemedies(a.asked, b.asked));
      const found: Remedy[] = [];
      for (const { plan, asked } of some) {
        const remedy = this.#remedy(plan, asked);
        if (remedy === null || !isBetter(remedy)) continue;
        if (remedy.verdict === 'holds' || found.length === 0) found.push(remedy);
        if (remedy.verdict === 'holds') break;
      }
      return found;
    });
  }

  /** The whole site with these changes, asked of many plans once, so nothing of it is kept; null where one has nothing to change. */
  probe(plan: Plan): Probe | null {
    const { site, gauge, programme } = this.#given;
    const changed = changedSite(site, changesOf(plan), programme.settings);
    if (changed === null) return null;
    const all = siteSizes(changed.site, gauge, programme, this.groups);
    return {
      isMet: () => all.every((sizes) => sizes.meetsAt(sizes.tankVolume_L)),
      couldHold: () => all.every((sizes) => sizes.couldHoldAt(sizes.tankVolume_L)),
      holds: () => all.every((sizes) => sizes.verdictAt(sizes.tankVolume_L).verdict === 'holds'),
    };
  }

  /** Could a plan come before this remedy, which holds, were it to hold itself? Nothing is run for that. */
  couldPrecede(plan: Plan, first: Remedy): boolean {
    const asked = this.#asAsked(plan);
    return asked !== null && compareRemedies({ ...asked, ...unjudged }, first) < 0;
  }

  /** Would one body of water hold with any of these plans, whatever becomes of the others? */
  holdsAlone(group: string, plans: readonly Plan[]): boolean {
    return plans.some((plan) => this.#verdict(group, plan)?.verdict === 'holds');
  }

  /** One body of water of a plan, with its tanks; null where a change has nothing to change. */
  #verdict(group: string, plan: Plan): SizeVerdict | null {
    const chain = this.#chain(group, plan);
    if (chain === null) return null;
    const tankVolume_L = volumeWith(tanksOf(group, plan), chain.sizes.tankVolume_L);
    const found = chain.known.get(tankVolume_L) ?? readAt(chain, tankVolume_L);
    chain.known.set(tankVolume_L, found);
    return found;
  }

  /** The plan as a remedy, by its worst body of water and the other stations; null where the site would still be short. */
  #remedy(plan: Plan, asked: AsAsked): Remedy | null {
    const worst = this.#worstStorage(plan);
    if (worst === null || worst.verdict === 'short') return null;
    const others = this.#others(plan, asked.changes);
    const verdict = worstVerdict([worst.verdict, others.verdict]);
    if (verdict !== 'holds' && verdict !== 'tight') return null;
    return {
      ...asked,
      verdict,
      besides: others.besides,
      standGate: others.standGate,
      dryDays_per_year: worst.dryDays_per_year,
      goodYears: worst.goodYears,
      sourceDays_per_year: plan.ofSite?.kind === 'secondSource' ? this.#mostSourceDays(plan) : null,
    };
  }

  /** The gutters and pipes by themselves, where nothing lifts the storage: their own stations' verdict. Null where they want nothing, or lift nothing. */
  fittingsAlone(): Remedy | null {
    const asked = this.#asAsked(asItIs);
    const [worst] = this.#storages;
    if (asked === null || worst === undefined || asked.changes.length === 0) return null;
    const others = this.#others(asItIs, asked.changes);
    const { verdict } = others;
    if (verdict !== 'holds' && verdict !== 'tight') return null;
    const { dryDays_per_year, goodYears } = worst;
    const besides = [...others.besides, 'storage' as const];
    return { ...asked, ...others, verdict, besides, dryDays_per_year, goodYears, sourceDays_per_year: null };
  }

  /** Its worst body of water; null where one of them has nothing to change, or is short before the others are looked at. */
  #worstStorage(plan: Plan): (Pick<SizePoint, 'dryDays_per_year' | 'goodYears'> & StorageRank) | null {
    // As it is, it is judged already.
    if (plan.placed.length === 0 && plan.ofSite === null) return this.#storages[0] ?? null;
    const judged: (SizePoint & StorageRank)[] = [];
    for (const { tankIds } of this.groups) {
      const found = this.#verdict(tankIds[0]!, plan);
      if (found === null || found.verdict === 'short') return null;
      judged.push({ ...found.point, verdict: found.verdict, tankIds });
    }
    return judged.sort(compareStorages)[0] ?? null;
  }

  /** How the other stations stand with all changes made. */
  #others(plan: Plan, changes: readonly RemedyChange[]): WithOthers {
    if (this.#beside === null) return { verdict: 'holds', besides: [], standGate: 'notNeeded' };
    const changed = changedSite(this.#given.site, changes, this.settings)!;
    const demand = new Map<string, number>();
    const bodies = tankGroups(changed.site.tanks);
    for (const asItWas of this.groups) {
      const { water } = this.#chain(asItWas.tankIds[0]!, plan)?.sizes ?? asItWas;
      const highest_L_per_day = water.judgedDemandHighest_L_per_day + water.otherDemand_L_per_day;
      const isThere = ({ tankIds }: { readonly tankIds: readonly string[] }) =>
        tankIds.some((id) => asItWas.tankIds.includes(id));
      // One that is replaced as a whole has none of its tanks any more.
      const body =
        bodies.find(isThere) ??
        bodies.find(({ tankIds }) => !this.groups.some((one) => tankIds.some((id) => one.tankIds.includes(id))));
      for (const id of body?.tankIds ?? []) demand.set(id, highest_L_per_day);
    }
    const sourceDays = () =>
      this.groups.map((asItWas) => {
        const group = asItWas.tankIds[0]!;
        const sizes = this.#chain(group, plan)?.sizes ?? asItWas;
        return sizes.sourceDays(volumeWith(tanksOf(group, plan), sizes.tankVolume_L));
      });
    return this.#beside.with(changed.site, demand, sourceDays);
  }

  /** Days a year from the second source, of the body of water that leans on it most. */
  #mostSourceDays(plan: Plan): number {
    const days = this.groups.map(({ tankIds }) => {
      const { sizes } = this.#chain(tankIds[0]!, plan)!;
      return sizes.sourceDays_per_year(volumeWith(tanksOf(tankIds[0]!, plan), sizes.tankVolume_L));
    });
    return Math.max(...days);
  }

  /** What a plan asks for, whatever becomes of the site; null where a change has nothing to change. */
  #asAsked(plan: Plan): AsAsked | null {
    const chosen = changesOf(plan);
    const { site, programme, market } = this.#given;
    const before = changedSite(site, chosen, programme.settings);
    if (before === null) return null;
    const { changes, toBuy } = this.#completed(before, chosen);
    return {
      changes,
      promiseCut_count: plan.cut_count,
      tankVolume_L: this.groups.reduce(
        (sum, { tankIds, tankVolume_L }) => sum + volumeWith(tanksOf(tankIds[0]!, plan), tankVolume_L),
        0,
      ),
      cost: remedyCost(toBuy, market),
    };
  }

  /** The changes chosen with the gutters and pipes they take, and what has to be bought for all. */
  #completed(
    before: ChangedSite,
    chosen: readonly StorageChange[],
  ): Pick<AsAsked, 'changes'> & Pick<ChangedSite, 'toBuy'> {
    const fittings = this.#beside?.fittingsOf(before) ?? [];
    if (fittings.length === 0) return { changes: chosen, toBuy: before.toBuy };
    const changes = inOrder([...chosen, ...fittings]);
    return { changes, toBuy: changedSite(this.#given.site, changes, this.settings)!.toBuy };
  }

  #chain(group: string, { placed, ofSite }: Plan): Chain | null {
    const roof = placed.flatMap((one) => (one.group === group && isOfRoof(one.change) ? [one.change] : []));
    const key = keyOf(group, roof, ofSite);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const { site, gauge, programme } = this.#given;
    const changed = changedSite(site, ofSite === null ? roof : [...roof, ofSite], programme.settings);
    const all = changed && siteSizes(changed.site, gauge, programme, this.groups);
    const sizes = all?.find(({ tankIds }) => tankIds[0] === group);
    const chain = sizes ? { sizes, known: new Map<number, SizeVerdict>() } : null;
    if (sizes) this.#learnFromAsItIs(sizes, group);
    this.#known.set(key, chain);
    return chain;
  }

  /** A tank that holds as the site is holds too where nothing got worse. */
  #learnFromAsItIs(sizes: SiteSizes, group: string): void {
    const from_L = this.#holdsFrom_L.get(group);
    const asIs = this.groups.find(({ tankIds }) => tankIds[0] === group);
    if (from_L !== undefined && asIs && sizes.isNoWorseThan(asIs)) sizes.learn({ from_L, notUpTo_L: -Infinity });
  }
}

function keyOf(group: string, roof: readonly RoofChange[], ofSite: SiteChange | null): string {
  return JSON.stringify([group, roof, ofSite]);
}

/** The first size asked for is run by itself; once there is a second, all are read off the curve. */
function readAt({ sizes, known }: Chain, tankVolume_L: number): SizeVerdict {
  if (known.size === 0 && tankVolume_L === sizes.tankVolume_L) return sizes.verdictAt(tankVolume_L);
  return sizes.verdictsAt([{ partId: null, tankVolume_L }])[0]!;
}

function isOfRoof(change: RoofChange | TankChange): change is RoofChange {
  return change.kind === 'gutter' || change.kind === 'firstFlush';
}

function tanksOf(group: string, { placed }: Plan): readonly TankChange[] {
  return placed.flatMap((one) => (one.group === group && !isOfRoof(one.change) ? [one.change] : []));
}

function changesOf({ placed, ofSite }: Plan): readonly StorageChange[] {
  const changes: StorageChange[] = inOrder(placed.map(({ change }) => change));
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
