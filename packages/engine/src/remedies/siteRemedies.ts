import { type SiteDesign, type Station, type StorageFinding, worstVerdict } from '../kernel/index.ts';
import { purposesOf } from '../water/people/index.ts';
import { BesideStorage } from './besideStorage.ts';
import { asItIs, Chains, type Placed, type Plan } from './chains.ts';
import { isFitting, type RemedyChange } from './changes.ts';
import { judgeOthers } from './judgeOthers.ts';
import { type LeaveIt, worstYear } from './leaveIt.ts';
import { type NotMendedReason, whyNotBeside, whyNotStorage } from './notMended.ts';
import { kindsAtTank, laddersOf, type Open, openChanges, pairsOf } from './openChanges.ts';
import type { PeopleCarried } from './peopleCarried.ts';
import { litreSteps } from './promisedLitres.ts';
import { compareRemedies, type Remedy } from './remedy.ts';
import type { RemedyCase } from './remedyCase.ts';
import { type StationBeside, stationsBeside } from './stationsBeside.ts';
import {
  carriedAsItStands,
  openToWholeSite,
  sourcePairs,
  sourcePlans,
  splitPairs,
  splitPlans,
  type WholeSite,
} from './wholeSite.ts';

/** What would mend one site that is short or tight. */
export interface SiteRemedies {
  readonly siteId: string;
  /** The first is the smallest change that mends it. */
  readonly remedies: readonly Remedy[];
  readonly judgedYears: number;
  /** Null where one of them makes it hold. */
  readonly notMended: NotMendedReason | null;
  /** Stations that stay short, tight or unknown whatever is changed. */
  readonly besides: readonly Station[];
  /** Told where the tanks do not hold; else null. */
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
  /** No change but to gutters and pipes; none where these want nothing. */
  readonly alone: readonly Plan[];
}

/**
 * What is the smallest change that would mend this site? Every single change, and pairs of them, judged as the site itself
 * was; of each kind of change the first that makes it hold, and the first that makes it tight where that asks for less. A pair
 * is told only where it comes before every single change (one that ends tight only where it asks for less than the first that
 * holds); one that sends people away only where nothing that keeps everybody makes the site hold, and one that cuts what was promised
 * only where nothing that keeps it does. Where the site has several bodies of water, a change is made to one of them, a pair may be made to two, and the
 * litres are those of all. Each is completed by the gutters and pipes it takes; stations that nothing moves are told beside.
 *
 * @param design - the site's design: volumes [L], dry days a year [day/year]
 * @param given - the site, its gauge [mm], the programme and the market [currency]
 * @returns remedies in their order: volumes [L], dry days a year [day/year], good years [year], cost [currency]; and what a dry
 *   year brings [day], [L]; null where no station is short or tight
 * @law the verdict of each remedy is the worst of `designSite` for the site with the changes made, the stations it leaves out apart
 * @definition ours: docs/methods/remedies.md
 */
export function siteRemedies(design: SiteDesign, given: RemedyCase): SiteRemedies | null {
  const [worst] = design.storages;
  const { stations } = design;
  const wanting = [stations.storage, ...stationsBeside.map((one) => stations[one])];
  if (!worst || !wanting.some((verdict) => verdict === 'short' || verdict === 'tight')) return null;
  const beside = besideOf(design, given);
  const isDry = worst.verdict !== 'holds';
  const besides = beside?.besides ?? [];
  if (!isDry && beside!.fittings.length === 0) return onlyBeside(design, worst.judgedYears, besides);
  const chains = new Chains(given, design.storages, beside);
  const found = isDry ? drySite(design, given, chains, beside) : onlyFittings(chains, beside!, isLift(design, beside));
  const { remedies } = found;
  const alone = remedies.length === 0 && isDry ? chains.fittingsAlone() : null;
  return {
    siteId: design.siteId,
    remedies: alone === null ? remedies : [alone],
    judgedYears: worst.judgedYears,
    notMended: found.notMended ?? whyNotBeside(besides, design),
    besides: alone === null ? besides : [...besides, 'storage'],
    leaveIt: isDry ? leftAsItIs(worst, given, chains, design.storages.length > 1) : null,
    peopleCarried: found.peopleCarried,
  };
}

/** The other stations; null where none is judged, so that they cost nothing. */
function besideOf(design: SiteDesign, given: RemedyCase): BesideStorage | null {
  const isJudged = stationsBeside.some((one) => design.stations[one] !== 'notJudged');
  return isJudged ? new BesideStorage(given.site, design, given.market, judgeOthers(given)) : null;
}

/** What a site comes to that has water enough, and whose other stations no part of the catalogue lifts. */
function onlyBeside(design: SiteDesign, judgedYears: number, besides: readonly StationBeside[]): SiteRemedies {
  const { siteId } = design;
  const notMended = whyNotBeside(besides, design);
  return { siteId, remedies: [], judgedYears, notMended, besides, leaveIt: null, peopleCarried: null };
}

type FoundOfSite = Pick<SiteRemedies, 'remedies' | 'peopleCarried' | 'notMended'>;

/** A site that has water enough: its gutters and pipes alone. */
function onlyFittings(chains: Chains, beside: BesideStorage, isBetter: (remedy: Remedy) => boolean): FoundOfSite {
  const remedies = chains.firsts([asItIs], isBetter);
  const isHeld = remedies[0]?.verdict === 'holds';
  return { remedies, peopleCarried: null, notMended: isHeld ? null : whyNotBeside(beside.stillWanting, beside.fitted) };
}

/** A site whose water does not last. */
function drySite(design: SiteDesign, given: RemedyCase, chains: Chains, beside: BesideStorage | null): FoundOfSite {
  const storage = design.storages[0]!;
  const isBetter = isLift(design, beside);
  // On made-up rain nothing holds, so there is nothing to look for at a site that is tight already.
  if (storage.verdict === 'tight' && storage.cappedBy === 'rain.made_up') {
    const remedies = beside === null || beside.fittings.length === 0 ? [] : chains.firsts([asItIs], isBetter);
    return { remedies, peopleCarried: null, notMended: 'madeRain' };
  }
  const wanting = design.storages.filter(({ verdict }) => verdict !== 'holds');
  const open = openChanges(chains, given, wanting);
  const litres = litreSteps(purposesOf(given.site, given.programme.settings)).map(
    (change, index): Plan => ({ placed: [], ofSite: change, cut_count: index + 1 }),
  );
  const alone = beside !== null && beside.fittings.length > 0 ? [asItIs] : [];
  const whole = openToWholeSite(design, given.site);
  const { remedies, carried } = ranked(chains, open, { ...whole, litres, alone }, isBetter);
  const isSplitTold = remedies.some(
    ({ changes }) => !changes.some(isOfStorage) && changes.some(({ kind }) => kind === 'people'),
  );
  return {
    remedies,
    peopleCarried: isSplitTold ? null : (carried[0] ?? null),
    notMended: remedies[0]?.verdict === 'holds' ? null : whyNotStorage(chains, open, wanting, given, design),
  };
}

/** Is a change made to roofs or tanks for their water? */
function isOfStorage({ kind }: RemedyChange): boolean {
  return kindsAtTank.some((one) => one === kind);
}

/** Does a remedy lift the site: by itself, and where it asks for more than gutters and pipes, more than they do? */
function isLift({ stations }: SiteDesign, beside: BesideStorage | null): (remedy: Remedy) => boolean {
  const { storage } = stations;
  const moved = [...(beside?.moved ?? [])];
  const now = worstVerdict([storage, ...moved.map((one) => stations[one])]);
  const withFittings = worstVerdict([storage, ...moved.map((one) => beside!.lifted[one])]);
  return ({ verdict, changes }) => {
    const isOfFittings = changes.every(isFitting);
    if (verdict === 'holds' || (isOfFittings && beside?.isAssumedLeft)) return true;
    return (isOfFittings ? now : withFittings) === 'short';
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
  const singles = [...best([...forAll.alone, ...single, ...sourcePlans(forAll)]), ...cuts([])].sort(compareRemedies);
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
