import {
  type DesignSettings,
  type EngineProblemCode,
  jeffreysRange,
  type SiteDesign,
  type StorageFinding,
  type Target,
} from '../kernel/index.ts';
import { tankSizes } from '../parts/index.ts';
import { purposesOf } from '../water/people/index.ts';
import { asItIs, Chains, type Placed, type Plan, type RemedyCase } from './chains.ts';
import { gutterSteps_fraction } from './constants.ts';
import { type LeaveIt, worstYear } from './leaveIt.ts';
import type { PeopleCarried } from './peopleCarried.ts';
import { litreSteps } from './promisedLitres.ts';
import { compareRemedies, type Remedy } from './remedy.ts';
import {
  carriedAsItStands,
  type Ladder,
  openToWholeSite,
  sourcePairs,
  sourcePlans,
  splitPairs,
  splitPlans,
  type WholeSite,
} from './wholeSite.ts';

/** Why no change, and no two, make a site hold. */
export type NotMendedReason =
  | 'assumed'
  | 'growth'
  | 'roofSize'
  | 'madeRain'
  | 'record'
  | 'noTanks'
  | 'tank'
  | 'water'
  | 'apart';

/** What the assumption that caps a site comes to, where it is one of its own kind. */
const cappedReasons: Partial<Record<EngineProblemCode, NotMendedReason>> = {
  'site.growth_not_used': 'growth',
  'site.roof_very_large': 'roofSize',
  'rain.made_up': 'madeRain',
};

/** What would mend one site that is short or tight. */
export interface SiteRemedies {
  readonly siteId: string;
  /** The first is the smallest change that mends it. */
  readonly remedies: readonly Remedy[];
  readonly judgedYears: number;
  /** Null where one of them makes it hold. */
  readonly notMended: NotMendedReason | null;
  readonly leaveIt: LeaveIt | null;
  /**
   * Told of a site that is short and that nothing makes hold for everybody, where more than half would have to go, so that it is no
   * remedy; else null, as where it carries nobody.
   */
  readonly peopleCarried: PeopleCarried | null;
}

/** What may be done to the whole site. */
interface ForAll extends WholeSite {
  /** Cuts of the litres, the mildest first. */
  readonly litres: readonly Plan[];
}

/** The single changes open to one body of water, each list the mildest first. */
interface Open {
  readonly secondTank: readonly Placed[];
  readonly largerTank: readonly Placed[];
  readonly gutter: readonly Placed[];
  readonly firstFlush: readonly Placed[];
}

const kindsAtTank = ['secondTank', 'largerTank', 'gutter', 'firstFlush'] as const;

/**
 * What is the smallest change that would mend this site? Every single change, and pairs of them, judged as the site itself
 * was; of each kind of change the first that makes it hold, and the first that makes it tight where that asks for less. A pair
 * is told only where it comes before every single change (one that ends tight only where it asks for less than the first that
 * holds); one that sends people away only where nothing that keeps everybody makes the site hold, and one that cuts what was promised
 * only where nothing that keeps it does. Where the site has several bodies of water, a change is made to one of them, a pair may be made to two, and the
 * litres are those of all.
 *
 * @param design - the site's design
 * @param given - the site, its gauge, the programme and the market
 * @returns remedies in their order: volumes [L], dry days a year [day/year], good years [year], cost [currency]; and what a dry
 *   year brings [day], [L]; null where the site is neither short nor tight
 * @law the verdict of each remedy is that of `designSite` for the site with the changes made
 * @definition ours: docs/methods/remedies.md
 */
export function siteRemedies(design: SiteDesign, given: RemedyCase): SiteRemedies | null {
  const [worst] = design.storages;
  if (!worst || (design.verdict !== 'short' && design.verdict !== 'tight')) return null;
  const { siteId } = design;
  const { judgedYears } = worst;
  const chains = new Chains(given, design.storages);
  const leaveIt = leftAsItIs(worst, given, chains, design.storages.length > 1);
  // On made-up rain nothing holds, so there is nothing to look for at a site that is tight already.
  if (design.verdict === 'tight' && worst.cappedBy === 'rain.made_up')
    return { siteId, remedies: [], judgedYears, notMended: 'madeRain', leaveIt, peopleCarried: null };
  const wanting = design.storages.filter(({ verdict }) => verdict !== 'holds');
  const open = openChanges(chains, given, wanting);
  const isBetter = (remedy: Remedy) => remedy.verdict === 'holds' || design.verdict === 'short';
  const litres = litreSteps(purposesOf(given.site, given.programme.settings)).map(
    (change, index): Plan => ({ placed: [], ofSite: change, cut_count: index + 1 }),
  );
  const whole = openToWholeSite(design, given.site);
  const { remedies, carried } = ranked(chains, open, { ...whole, litres }, isBetter);
  const isSplitTold = remedies.some(({ changes }) => changes[0]!.kind === 'people');
  // A second source is no such cap: a site that leans on one holds once it holds without it.
  const cap = wanting.find(({ cappedBy }) => cappedBy !== null && cappedBy !== 'site.second_source')?.cappedBy ?? null;
  return {
    siteId,
    remedies,
    judgedYears,
    notMended:
      remedies[0]?.verdict === 'holds'
        ? null
        : cap === null
          ? whyNot(chains, open, given, judgedYears, design.target)
          : (cappedReasons[cap] ?? 'assumed'),
    leaveIt,
    peopleCarried: isSplitTold ? null : (carried[0] ?? null),
  };
}

/** What a dry year brings at the tank that is worst off. */
function leftAsItIs(
  worst: StorageFinding,
  { gauge }: RemedyCase,
  { groups }: Chains,
  isOneOfMany: boolean,
): LeaveIt | null {
  const series = groups.find(({ tankIds }) => tankIds[0] === worst.tankIds[0])?.series();
  if (!series || !gauge?.rain) return null;
  return worstYear(worst.years, series, gauge.rain, isOneOfMany ? worst.tankIds : null);
}

/** What may be done to each body of water that does not hold; the others need nothing. */
function openChanges(
  chains: Chains,
  { site, programme, market }: RemedyCase,
  wanting: readonly StorageFinding[],
): readonly Open[] {
  const tanks = tankSizes(market.parts);
  const { firstFlush_mm } = programme.settings;
  return chains.groups.flatMap(({ tankIds, tankVolume_L }) => {
    const group = tankIds[0]!;
    if (!wanting.some((finding) => finding.tankIds[0] === group)) return [];
    const tankId = tankIds.length === site.tanks.length ? null : group;
    const place = (change: Placed['change']): Placed => ({ group, change });
    const ofCatalogue = (kind: 'secondTank' | 'largerTank', over_L: number) =>
      tanks
        .filter((tank) => tank.tankVolume_L > over_L)
        .map(({ partId, tankVolume_L: volume_L }) => place({ kind, tankId, partId, volume_L }));
    return {
      secondTank: ofCatalogue('secondTank', 0),
      largerTank: ofCatalogue('largerTank', tankVolume_L),
      gutter: gutterSteps_fraction.map((gutteredFraction) => place({ kind: 'gutter', tankId, gutteredFraction })),
      firstFlush: [place({ kind: 'firstFlush', tankId, firstFlush_mm })],
    };
  });
}

/** What was found for a site. */
interface Found {
  readonly remedies: readonly Remedy[];
  /** How many people it carries as it stands, `holds` first; none where that is not asked. */
  readonly carried: readonly PeopleCarried[];
}

function ranked(chains: Chains, open: readonly Open[], forAll: ForAll, isBetter: (remedy: Remedy) => boolean): Found {
  const best = (plans: readonly Plan[]) => chains.firsts(plans, isBetter);
  const cuts = (placed: readonly Placed[]) => {
    const plansOf = (step: Plan) => (placed.length === 0 ? [step] : placed.map((one) => ({ ...step, placed: [one] })));
    return best(forAll.litres.flatMap(plansOf));
  };
  const ofKind = (kind: keyof Open) => open.flatMap((group) => group[kind]);
  const placed = kindsAtTank.flatMap(ofKind);
  const single = placed.map((one): Plan => ({ ...asItIs, placed: [one] }));
  const singles = [...best([...single, ...sourcePlans(forAll)]), ...cuts([])].sort(compareRemedies);
  const pairs = [...best(pairsWorthJudging(chains, open, singles[0]))];
  const isKept = () => [...singles, ...pairs].some((one) => one.verdict === 'holds' && one.promiseCut_count === 0);
  const isHeldByAll = isKept();
  const carried = isHeldByAll ? [] : carriedAsItStands(chains, forAll);
  singles.push(...best(splitPlans(forAll, carried)));
  singles.sort(compareRemedies);
  pairs.push(...best(sourcePairs(placed, forAll, singles[0])));
  if (!isHeldByAll) pairs.push(...best(splitPairs(chains, open.flatMap(laddersOf), forAll, singles[0])));
  if (!isKept())
    pairs.push(
      ...kindsAtTank.flatMap((kind) => {
        const some = ofKind(kind);
        return some.length === 0 ? [] : cuts(some);
      }),
    );
  return { remedies: [...singles, ...pairsToTell(singles, pairs)].sort(compareRemedies), carried };
}

/** Where a single change holds, a pair is told only before it: most pairs cost more, and need no run. */
function pairsWorthJudging(chains: Chains, open: readonly Open[], first: Remedy | undefined): readonly Plan[] {
  const pairs = pairsOf(open);
  return first?.verdict === 'holds' ? pairs.filter((pair) => chains.couldPrecede(pair, first)) : pairs;
}

/**
 * Changes of one kind, the one that does most last. No larger tank: the same part set beside what stands gives no less water and
 * costs no more, so it sends nobody more away.
 */
function laddersOf({ secondTank, gutter, firstFlush }: Open): readonly Ladder[] {
  return [secondTank, gutter, firstFlush];
}

/** Two changes to one body of water, or one to each of two. */
function pairsOf(open: readonly Open[]): readonly Plan[] {
  const pairs: Plan[] = [];
  const cross = (some: readonly Placed[], others: readonly Placed[]) => {
    for (const one of some) for (const other of others) pairs.push({ ...asItIs, placed: [one, other] });
  };
  for (const [index, group] of open.entries()) {
    group.secondTank.forEach((one, at) => {
      cross([one], group.secondTank.slice(at));
    });
    cross(group.gutter, [...group.secondTank, ...group.largerTank, ...group.firstFlush]);
    cross(group.firstFlush, [...group.secondTank, ...group.largerTank]);
    for (const other of open.slice(index + 1))
      cross(
        kindsAtTank.flatMap((kind) => group[kind]),
        kindsAtTank.flatMap((kind) => other[kind]),
      );
  }
  return pairs;
}

/** Pairs that come before every single change; of those that end tight, the ones that ask for less than the first that holds. */
function pairsToTell(singles: readonly Remedy[], pairs: readonly Remedy[]): readonly Remedy[] {
  const [first] = singles;
  const told = pairs.filter((pair) => first === undefined || compareRemedies(pair, first) < 0);
  const [best] = [...singles, ...told].filter(({ verdict }) => verdict === 'holds').sort(compareRemedies);
  return told.filter((pair) => pair.verdict === 'holds' || best === undefined || asksForLess(pair, best));
}

/** Would it come before the other one, were their verdicts the same? */
function asksForLess(remedy: Remedy, other: Remedy): boolean {
  return compareRemedies({ ...remedy, verdict: other.verdict }, other) < 0;
}

function whyNot(
  chains: Chains,
  open: readonly Open[],
  { market }: RemedyCase,
  judgedYears: number,
  target: Target,
): NotMendedReason {
  if (isRecordTooShort(chains.settings, target, judgedYears)) return 'record';
  if (tankSizes(market.parts).length === 0) return 'noTanks';
  const hasTank = ({ gutter }: Open) => {
    const { group } = gutter[0]!;
    const plans = [asItIs, ...gutter.map((one): Plan => ({ ...asItIs, placed: [one] }))];
    return plans.some((plan) => chains.sizes(group, plan)?.hasTank === true);
  };
  if (!open.every(hasTank)) return 'water';
  const isMendedAlone = (group: Open) => {
    const single = kindsAtTank.flatMap((kind) => group[kind].map((one): Plan => ({ ...asItIs, placed: [one] })));
    return chains.holdsAlone(group.gutter[0]!.group, [...single, ...pairsOf([group])]);
  };
  return open.length > 1 && open.every(isMendedAlone) ? 'apart' : 'tank';
}

/** Could this many years hold if every one of them were good? */
function isRecordTooShort(
  { leastYears, range_fraction }: DesignSettings,
  target: Target,
  judgedYears: number,
): boolean {
  if (judgedYears < leastYears) return true;
  return jeffreysRange(judgedYears, judgedYears, range_fraction).low < target.goodYears_fraction;
}
