import { type DesignSettings, jeffreysRange, type SiteDesign } from '../kernel/index.ts';
import { tankSizes } from '../parts/index.ts';
import { siteSeries } from '../site.ts';
import { purposesOf } from '../water/people/index.ts';
import { asItIs, type BesidesTank, Chains, type RemedyCase } from './chains.ts';
import type { LargerTank, LessFirstFlush, MoreGutter, SecondTank, TankChange } from './changes.ts';
import { gutterSteps_fraction } from './constants.ts';
import { type LeaveIt, worstYear } from './leaveIt.ts';
import { litreSteps } from './promisedLitres.ts';
import { compareRemedies, type Remedy } from './remedy.ts';

/** Why no change, and no two, make a site hold. */
export type NotMendedReason = 'assumed' | 'madeRain' | 'record' | 'noTanks' | 'tank' | 'water';

/** What would mend one site that is short or tight. */
export interface SiteRemedies {
  readonly siteId: string;
  /** The first is the smallest change that mends it. */
  readonly remedies: readonly Remedy[];
  readonly judgedYears: number;
  /** Null where one of them makes it hold. */
  readonly notMended: NotMendedReason | null;
  readonly leaveIt: LeaveIt | null;
}

/** The changes open to one site, each list the mildest first. */
interface Open {
  readonly second: readonly (readonly SecondTank[])[];
  readonly larger: readonly (readonly LargerTank[])[];
  readonly twoMore: readonly (readonly SecondTank[])[];
  readonly gutter: readonly MoreGutter[];
  readonly flush: readonly LessFirstFlush[];
  readonly litres: readonly BesidesTank[];
}

const noTank: readonly (readonly TankChange[])[] = [[]];

/**
 * What is the smallest change that would mend this site? Every single change, and pairs of them, judged as the site itself
 * was; of each kind of change the first that makes it hold, and the first that makes it tight where that asks for less. A pair
 * is told only where it comes before every single change (one that ends tight only where it asks for less than the first that
 * holds), and one that cuts what was promised only where nothing that keeps it
 * makes the site hold.
 *
 * @param design - the site's design
 * @param given - the site, its gauge, the programme and the market
 * @returns remedies in their order: volumes [L], dry days a year [day/year], good years [year], cost [currency]; and what a dry
 *   year brings [day], [L]; null where the site is neither short nor tight
 * @law the verdict of each remedy is that of `designSite` for the site with the changes made
 * @definition ours: docs/methods/remedies.md
 */
export function siteRemedies(design: SiteDesign, given: RemedyCase): SiteRemedies | null {
  const { storage } = design;
  if (!storage || (design.verdict !== 'short' && design.verdict !== 'tight')) return null;
  const chains = new Chains(given);
  const open = openChanges(given, storage.tankVolume_L);
  const isBetter = (remedy: Remedy) => remedy.verdict === 'holds' || design.verdict === 'short';
  const remedies = ranked(chains, open, isBetter);
  const series = siteSeries(given.site, given.gauge, given.programme);
  const rain = given.gauge?.rain;
  return {
    siteId: design.siteId,
    remedies,
    judgedYears: storage.judgedYears,
    notMended:
      remedies[0]?.verdict === 'holds'
        ? null
        : storage.cappedBy === null
          ? whyNot(chains, open, storage.judgedYears)
          : storage.cappedBy === 'rain.made_up'
            ? 'madeRain'
            : 'assumed',
    leaveIt: series && rain ? worstYear(storage.years, series, rain, storage.judgedDemand_L_per_day) : null,
  };
}

function openChanges({ site, programme, market }: RemedyCase, tankVolume_L: number): Open {
  const { settings } = programme;
  const tanks = tankSizes(market.parts);
  const second = tanks.map(({ partId, tankVolume_L: volume_L }) => ({ kind: 'secondTank', partId, volume_L }) as const);
  const larger = second
    .filter(({ volume_L }) => volume_L > tankVolume_L)
    .map((tank) => ({ ...tank, kind: 'largerTank' }) as const);
  return {
    second: second.map((tank) => [tank]),
    larger: larger.map((tank) => [tank]),
    twoMore: second.flatMap((one, index) => second.slice(index).map((other) => [one, other])),
    gutter: gutterSteps_fraction.map((gutteredFraction) => ({ kind: 'gutter', gutteredFraction })),
    flush: [{ kind: 'firstFlush', firstFlush_mm: settings.firstFlush_mm }],
    litres: litreSteps(purposesOf(site, settings)).map((litres, index) => ({ roof: [], litres, cut_count: index + 1 })),
  };
}

function ranked(chains: Chains, open: Open, isBetter: (remedy: Remedy) => boolean): readonly Remedy[] {
  const best = (found: readonly Remedy[]) => firstOfEach(found.filter(isBetter));
  const gutter = open.gutter.map((one) => ({ ...asItIs, roof: [one] }));
  const flush = open.flush.map((one) => ({ ...asItIs, roof: [one] }));
  const both = gutter.flatMap(({ roof }) => open.flush.map((one) => ({ ...asItIs, roof: [...roof, one] })));
  const of = (besides: readonly BesidesTank[], tanks: readonly (readonly TankChange[])[]) =>
    best(besides.flatMap((one) => chains.judged(one, tanks)));
  const cuts = (besides: readonly BesidesTank[], tanks: readonly (readonly TankChange[])[]) =>
    best(upToHolds(open.litres, (step) => besides.flatMap(({ roof }) => chains.judged({ ...step, roof }, tanks))));

  const singles = [
    ...of([asItIs], open.second),
    ...of([asItIs], open.larger),
    ...of(gutter, noTank),
    ...of(flush, noTank),
    ...cuts([asItIs], noTank),
  ].sort(compareRemedies);
  const pairs = [
    ...of([asItIs], open.twoMore),
    ...of(gutter, open.second),
    ...of(gutter, open.larger),
    ...of(flush, open.second),
    ...of(flush, open.larger),
    ...of(both, noTank),
  ];
  if (![...singles, ...pairs].some((one) => one.verdict === 'holds' && one.promiseCut_count === 0))
    pairs.push(
      ...cuts([asItIs], open.second),
      ...cuts([asItIs], open.larger),
      ...cuts(gutter, noTank),
      ...cuts(flush, noTank),
    );
  return [...singles, ...pairsToTell(singles, pairs)].sort(compareRemedies);
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

/** Fewer litres never make a site worse: once it holds, harder cuts come behind. */
function upToHolds(steps: readonly BesidesTank[], judge: (step: BesidesTank) => readonly Remedy[]): readonly Remedy[] {
  const found: Remedy[] = [];
  for (const step of steps) {
    const judged = judge(step);
    found.push(...judged);
    if (judged.some(({ verdict }) => verdict === 'holds')) break;
  }
  return found;
}

/** The first that holds; and the first that is tight, where it would come before that one had it held. */
function firstOfEach(found: readonly Remedy[]): readonly Remedy[] {
  const inOrder = [...found].sort(compareRemedies);
  const holds = inOrder.find((one) => one.verdict === 'holds');
  const tight = inOrder.find((one) => one.verdict === 'tight');
  if (holds === undefined) return tight === undefined ? [] : [tight];
  return tight !== undefined && asksForLess(tight, holds) ? [holds, tight] : [holds];
}

function whyNot(chains: Chains, open: Open, judgedYears: number): NotMendedReason {
  if (isRecordTooShort(chains.settings, judgedYears)) return 'record';
  if (open.second.length === 0) return 'noTanks';
  const roofs = [asItIs, ...open.gutter.map((one) => ({ ...asItIs, roof: [one] }))];
  const some = roofs.some((one) => (chains.sizes(one)?.tankForTarget_L ?? null) !== null);
  return some ? 'tank' : 'water';
}

/** Could this many years hold if every one of them were good? */
function isRecordTooShort({ leastYears, range_fraction, target }: DesignSettings, judgedYears: number): boolean {
  if (judgedYears < leastYears) return true;
  return jeffreysRange(judgedYears, judgedYears, range_fraction).low < target.goodYears_fraction;
}
