import { cautionsOf } from './cautionsOf.ts';
import type {
  EngineProblemCode,
  FirstService,
  GaugeFinding,
  Problem,
  SiteDesign,
  SiteFacts,
  SourceDaysOfBody,
  Station,
  StationVerdict,
  StorageFinding,
  StorageSeries,
  WaterYear,
  WorkingLine,
} from './kernel/index.ts';
import { worstVerdict } from './kernel/index.ts';
import { heaviestPiece } from './parts/index.ts';
import { cupInDoubt, type OtherStations, otherStations, standGateOf, withheldByOf } from './siteStations.ts';
import {
  drawnYears,
  type GroupWater,
  ownFacts,
  type Programme,
  type SiteWater,
  siteWater,
  targetOf,
  type WaterProblems,
} from './siteWater.ts';
import { countedPeople, headcount } from './water/people/index.ts';
import { isSafetyJudged } from './water/safety/index.ts';
import {
  type Balance,
  type BandAtSize,
  balanceUnder,
  bandAtSize,
  compareStorages,
  dayByDay,
  fromSecondSource,
  type KnownToHold,
  rulesOf,
  type SizeVerdict,
  type StorageCurve,
  sizeReader,
  storageCurve,
  storageFinding,
  type TankSize,
} from './water/storage/index.ts';

export type { Programme } from './siteWater.ts';

/**
 * Does this site hold? Follows the water from rain to tank: each stop gives what the next one needs, with its problems and
 * its working; a blocker on the way leaves the site `unknown`. Tanks that are not joined are judged each on its own, and the
 * worst decides.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined where the site names none that is known
 * @param programme - settings, catalogue and shared stores
 * @returns verdict, stations, the storage findings, the worst first (volumes [L], days a year [day/year]), problems and working
 * @problem site.facts_in_doubt - when a row about the site could not be used
 * @problem site.target_of_programme - when its class has no target of its own
 * @problem site.gauge_unknown - when it names no gauge that is known
 * @law the same facts give the same design, whatever other sites there are; a tank's finding is that of a site of its own with
 *   its roofs and its people
 * @definition ours: docs/methods
 */
export function designSite(site: SiteFacts, gauge: GaugeFinding | undefined, programme: Programme): SiteDesign {
  return siteInFull(site, gauge, programme).design;
}

/** One body of water as it was judged, with what is drawn of it. */
export interface JudgedWater {
  readonly finding: StorageFinding;
  /** Its tank day by day, as `siteSeries` has it. */
  series(): StorageSeries;
  /** What tanks of every size do. */
  curve(): StorageCurve;
  /** How sure a tank of so many litres is; null where sizes are run one by one. */
  bandAt(tankVolume_L: number): BandAtSize | null;
  /** The water years of its record, judged or not. */
  readonly years: readonly WaterYear[];
}

/** A site's design, and each of its bodies of water in the order of the design's storages. */
export interface SiteInFull {
  readonly design: SiteDesign;
  /** Of the design's problems those of the site's own facts, as `siteProblems` has them. */
  readonly ownProblems: readonly Problem[];
  readonly waters: readonly JudgedWater[];
}

/**
 * Does this site hold, and what is there to draw of it? `designSite` with the days and the curve behind each finding, so that the record is
 * made ready once for all of them.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined where the site names none that is known
 * @param programme - settings, catalogue and shared stores
 * @returns the design, and for each of its storages, in their order, the daily series [mm, L], the curve of sizes [L] and the water years,
 *   each worked out when it is asked for; none where the site is `unknown`
 * @law the design is that of `designSite`, the series those of `siteSeries`, its own problems those of `siteProblems`
 * @definition ours: docs/decisions/0155-one-run-for-verdict-and-drawing.md
 */
export function siteInFull(site: SiteFacts, gauge: GaugeFinding | undefined, programme: Programme): SiteInFull {
  const told: WaterProblems = { restated: [], own: [] };
  const working: WorkingLine[] = [];
  const water = siteWater(site, gauge, programme, told, working);
  const waters = (water?.groups ?? []).map((group) => {
    const found = judgedGroup(group, water!, site, programme);
    working.push(...group.working, ...found.working);
    return found.judged;
  });
  waters.sort((a, b) => compareStorages(a.finding, b.finding));
  const storages = waters.map(({ finding }) => finding);
  const rest = stationsBeside(site, gauge, programme, demandOf(water), sourceDaysOf(storages));
  const found = rest ?? cupInDoubt(site, programme);
  const ownProblems = [...told.own, ...found.problems];
  working.push(...found.working);
  const stations = { ...notJudged, ...found.verdicts, storage: worstVerdict(storages.map(({ verdict }) => verdict)) };
  const partIds = site.tanks.map(({ partId }) => partId);
  const heaviest = heaviestPiece(partIds, programme.parts);
  const design: SiteDesign = {
    siteId: site.siteId,
    name: site.name,
    people: finiteOrNull(countedPeople(site, programme.settings)),
    design_people: finiteOrNull(headcount(site, programme.settings).design_people),
    gaugeId: site.gaugeId,
    siteClass: site.siteClass,
    target: targetOf(site, programme.settings),
    targetFrom: site.target === null ? 'programme' : 'class',
    verdict: worstVerdict(Object.values(stations)),
    stations,
    storages,
    storm: gauge?.storm ?? null,
    drainage: rest?.drainage ?? null,
    settling: rest?.settling ?? [],
    head: rest?.head ?? [],
    stands: rest?.stands ?? [],
    treatment: rest?.treatment ?? [],
    safety: found.safety,
    standGate: standGateOf(site, programme.today ?? null),
    cautions: cautionsOf(site, heaviest, (rest?.stands ?? []).length > 0),
    heaviestPiece: heaviest,
    firstService: lastToServe(storages),
    problems: [...told.restated, ...ownProblems],
    working,
  };
  return { design, ownProblems, waters };
}

/** One body of water judged; its working beside it. */
function judgedGroup(group: GroupWater, water: SiteWater, site: SiteFacts, programme: Programme) {
  const { rain, settings } = water;
  const { finding, working, sized } = storageFinding({
    ...group,
    rain,
    catalogue: programme.catalogue,
    settings,
    drawn: drawnYears(programme, rain.judgedYears),
    handOverDay: site.handOverDay,
    secondSource: site.secondSource,
  });
  const judged: JudgedWater = {
    finding,
    series: () => groupSeries(group, water, site.rainFactor),
    curve: () => storageCurve(sized, finding),
    bandAt: (tankVolume_L) => bandAtSize(sized, tankVolume_L),
    years: rain.years,
  };
  return { judged, working };
}

function finiteOrNull(value: number | null): number | null {
  return Number.isFinite(value) ? value : null;
}

/** Everybody is served once the last tank serves; null where one never does. */
function lastToServe(storages: readonly StorageFinding[]): FirstService | null {
  let last: FirstService | null = null;
  for (const { firstService } of storages) {
    if (firstService === null) return null;
    if (last === null || firstService.firstServiceDay > last.firstServiceDay) last = firstService;
  }
  return last;
}

/**
 * What happens in this site's tanks, day by day? The plain run behind the trace and the raster.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined
 * @param programme - settings, catalogue and shared stores
 * @returns for each body of water, in the order of its first tank: daily rain [mm], inflow, content, taken and spill [L] and dry
 *   days over the judged record; none where the site is `unknown`
 * @definition ours: docs/methods/storage.md, the settings' order of the day, second pass
 */
export function siteSeries(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
): readonly StorageSeries[] {
  return siteSizes(site, gauge, programme).map((sizes) => sizes.series());
}

function groupSeries(
  { tankIds, balance, tankVolume_L, ration }: GroupWater,
  { rain, settings }: SiteWater,
  rainFactor: number,
): StorageSeries {
  const { record, years } = rain;
  const rules = rulesOf(settings.dayOrder, ration);
  const run = dayByDay(balance, tankVolume_L, rules, true);
  return {
    tankIds,
    firstDay: record.firstDay,
    rain_mm: record.rain_mm.map((depth) => depth * rainFactor),
    inflow_L: balance.inflow_L,
    judgedAsked_L: balance.judged_L,
    ...run.series!,
    secondSource_L: fromSecondSource(balance, tankVolume_L, years, rules).byDay_L,
    dry: run.dry,
    state: record.state,
  };
}

/** One body of water with every size of tank answered at once. */
export interface SiteSizes {
  readonly tankIds: readonly string[];
  /** What its tanks give now. */
  readonly tankVolume_L: number;
  /** Smallest tank that meets the target, without a second source, as the finding has it; null where no tank would do, or where sizes are run one by one. */
  readonly tankForTarget_L: number | null;
  /** Would some tank meet the target, however large? Known even where the smallest is not. */
  readonly hasTank: boolean;
  /** What tanks of these sizes would do here, smallest first. */
  verdictsAt(sizes: readonly TankSize[]): readonly SizeVerdict[];
  /** Would a tank of so many litres meet the target, whatever the doubt? Quicker than `verdictsAt` for one size. */
  meetsAt(tankVolume_L: number): boolean;
  /** What a tank of so many litres would do. Quicker than `verdictsAt` for one size. */
  verdictAt(tankVolume_L: number): SizeVerdict;
  /** Could a tank of so many litres hold, were only the years drawn again to say so too? */
  couldHoldAt(tankVolume_L: number): boolean;
  /** Takes over what is known of sizes that hold without a second source [L]. */
  learn(known: Readonly<KnownToHold>): void;
  /** Has it, on every day, no less inflow and no more asked of it than this one? */
  isNoWorseThan(other: SiteSizes): boolean;
  /** What its days were made from, for a site like it. */
  readonly water: GroupWater;
  /** The tank there is, day by day [L], [mm]. */
  series(): StorageSeries;
  /** Days of a judged year on which water comes from the second source, with a tank of so many litres. */
  sourceDays_per_year(tankVolume_L: number): number;
  /** The same of each judged year, with the people who draw from it. */
  sourceDays(tankVolume_L: number): SourceDaysOfBody;
}

/**
 * What would tanks of other sizes do at this site? The same way of the water as `designSite`, run once for every size.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined
 * @param programme - settings, catalogue and shared stores
 * @param like - a site like it, such as the same one before a change; it only saves work
 * @returns for each body of water, in the order of its first tank: the present tank [L], the smallest for the target [L], and
 *   the verdict at any size [L], worked out when first asked for; none where the site is `unknown`
 * @law the verdict at a size is that of `designSite` for the same site with a tank of that size
 * @definition ours: docs/methods/storage.md, every size at once
 */
export function siteSizes(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
  like: readonly SiteSizes[] = [],
): readonly SiteSizes[] {
  const before = like.map((sizes) => sizes.water);
  const water = siteWater(site, gauge, programme, { restated: [], own: [] }, [], before);
  return water === null ? [] : water.groups.map((group) => groupSizes(group, water, site.rainFactor, programme));
}

function groupSizes(group: GroupWater, water: SiteWater, rainFactor: number, programme: Programme): SiteSizes {
  const { tankIds, tankVolume_L, balance, cappedBy, ration } = group;
  const { rain, settings } = water;
  const rules = rulesOf(settings.dayOrder, ration);
  const drawn = drawnYears(programme, rain.judgedYears);
  const readerOf = (whole: Balance, cap: EngineProblemCode | null) =>
    sizeReader({ balance: balanceUnder(whole, rules), rain, settings, drawn, rules }, tankVolume_L, cap);
  const isCovered = balance.covered !== undefined;
  // With a second source a size is tight at best, unless it holds without it.
  const reader = readerOf(balance, isCovered ? (cappedBy ?? 'site.second_source') : cappedBy);
  const alone = isCovered ? readerOf({ ...balance, covered: undefined }, cappedBy) : null;
  return {
    tankIds,
    tankVolume_L,
    water: group,
    couldHoldAt: (volume_L) => (alone ?? reader).couldHoldAt(volume_L),
    learn: (known) => (alone ?? reader).learn(known),
    isNoWorseThan: (other) => isNoWorse(balance, other.water.balance),
    series: () => groupSeries(group, water, rainFactor),
    get tankForTarget_L() {
      return (alone ?? reader).curveAt(tankVolume_L).tankForTarget_L;
    },
    get hasTank() {
      return reader.hasTank();
    },
    meetsAt: (volume_L) => reader.meetsAt(volume_L),
    verdictAt: (volume_L) => {
      const found = reader.verdictAt(volume_L);
      return alone?.verdictAt(volume_L).verdict === 'holds' ? { ...found, verdict: 'holds' } : found;
    },
    sourceDays_per_year: (volume_L) => fromSecondSource(balance, volume_L, rain.years, rules).days / rain.judgedYears,
    sourceDays: (volume_L) => ({
      people: group.people,
      days_by_year: fromSecondSource(balance, volume_L, rain.years, rules).days_by_year,
    }),
    verdictsAt: (sizes) => {
      const found = reader.verdictsAt(sizes);
      if (alone === null) return found;
      const held = alone.verdictsAt(sizes);
      return found.map((one, index) => (held[index]!.verdict === 'holds' ? { ...one, verdict: 'holds' } : one));
    },
  };
}

/** Does the first bring no less, and ask no more, on every day? */
function isNoWorse(one: Balance, other: Balance): boolean {
  for (let day = 0; day < one.inflow_L.length; day++)
    if (
      one.inflow_L[day]! < other.inflow_L[day]! ||
      one.judged_L[day]! > other.judged_L[day]! ||
      one.other_L[day]! > other.other_L[day]!
    )
      return false;
  return true;
}

const notJudged: Readonly<Record<Station, StationVerdict>> = {
  roof: 'notJudged',
  gutter: 'notJudged',
  settling: 'notJudged',
  storage: 'notJudged',
  stand: 'notJudged',
  treatmentUnit: 'notJudged',
  tap: 'notJudged',
  cup: 'notJudged',
};

/** What the day that asks for most asks of each body of water, by its first tank [L/day]. */
function demandOf(water: SiteWater | null): ReadonlyMap<string, number> {
  return new Map(
    (water?.groups ?? []).map(({ tankIds, judgedDemandHighest_L_per_day, otherDemand_L_per_day }) => [
      tankIds[0]!,
      judgedDemandHighest_L_per_day + otherDemand_L_per_day,
    ]),
  );
}

/** On how many days each body of water leaves people to the second source; null where none was judged, or there is none. */
function sourceDaysOf(storages: readonly StorageFinding[]): readonly SourceDaysOfBody[] | null {
  const found = storages.flatMap(({ people, secondSource }) =>
    secondSource === null ? [] : [{ people, days_by_year: secondSource.days_by_year }],
  );
  return found.length === 0 ? null : found;
}

/** The same by the balance alone, nothing judged; null where no safety hangs on it. */
function sourceDaysAlone(site: SiteFacts, gauge: GaugeFinding | undefined, programme: Programme) {
  if (site.secondSource === null || !isSafetyJudged(site, programme.settings)) return null;
  const sizes = siteSizes(site, gauge, programme);
  return sizes.length === 0 ? null : sizes.map((one) => one.sourceDays(one.tankVolume_L));
}

/** The stations no day is run for; null while a row or a figure of the site is in doubt, which is told already. */
function stationsBeside(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  { settings, parts, today = null }: Programme,
  demandHighest_L_per_day: ReadonlyMap<string, number>,
  sourceDays: readonly SourceDaysOfBody[] | null,
): OtherStations | null {
  if (withheldByOf(site).length > 0) return null;
  const { storm, stormTold, rainByIntensity } = gauge ?? { storm: null, stormTold: null, rainByIntensity: null };
  const ofGauge = { storm, stormTold, rainByIntensity };
  return otherStations(site, { settings, parts, ...ofGauge, demandHighest_L_per_day, sourceDays, today });
}

/**
 * What is missing or assumed in this site's facts? The part of `designSite` that runs no day, but where the days of a second source bear on what may be drunk.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined
 * @param programme - settings, catalogue and shared stores
 * @returns the problems of the site's own facts; those of its samples alone while a row about it is in doubt, since that is told of the row
 * @definition ours
 */
export function siteProblems(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
): readonly Problem[] {
  const { problems, demandHighest_L_per_day } = ownFacts(site, gauge, programme);
  const sourceDays = sourceDaysAlone(site, gauge, programme);
  const rest = stationsBeside(site, gauge, programme, demandHighest_L_per_day, sourceDays);
  return [...problems, ...(rest ?? cupInDoubt(site, programme)).problems];
}
