import {
  backwashShare_fraction,
  type Checked,
  type DayIndex,
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  explain,
  type GaugeFinding,
  type JudgedRain,
  type PartFacts,
  type Problem,
  type Ration,
  type SiteFacts,
  type Target,
  unusableFigures,
  type WorkingLine,
  workingInput,
} from './kernel/index.ts';
import { cappingAssumption, cappingCodes, classWithoutTarget, leansOnSource } from './siteAssumptions.ts';
import { type DailyDemand, dailyDemand, demandOnDays_L, demandWithBackwash, headcount } from './water/people/index.ts';
import { rainWorking } from './water/rain/index.ts';
import { type RoofCatch, siteInflow_L, siteRoofs, type YieldsByRecord, yearlyInflow_L } from './water/roof/index.ts';
import {
  type Balance,
  coveredDays,
  type DrawnYears,
  drawYears,
  rationOf,
  type SiteGroup,
  siteGroups,
  type TankSize,
  usableVolume,
} from './water/storage/index.ts';

/** What all sites of a programme share. The two stores only save work: the answers are the same without what they hold. */
export interface Programme {
  readonly settings: DesignSettings;
  readonly catalogue: readonly TankSize[];
  /** All that can be bought. */
  readonly parts: readonly PartFacts[];
  /** The day it is asked on, for signatures of a day to come; null or left out: not known. */
  readonly today?: DayIndex | null;
  readonly yields: YieldsByRecord;
  readonly drawn: Map<number, DrawnYears>;
}

/** One body of water of a site, ready to be judged. */
export interface GroupWater {
  readonly tankIds: readonly string[];
  readonly people: number;
  readonly balance: Balance;
  readonly tankVolume_L: number;
  readonly judgedDemand_L_per_day: number;
  readonly judgedDemandHighest_L_per_day: number;
  readonly otherDemand_L_per_day: number;
  readonly inflow_L_per_year: number;
  readonly cappedBy: EngineProblemCode | null;
  readonly ration: Ration | null;
  readonly working: readonly WorkingLine[];
  /** What the days of the balance were made from. */
  readonly madeFrom: MadeFrom;
}

/** What runs in, and what is asked, before it is laid out by day. */
interface MadeFrom {
  readonly rain: JudgedRain;
  readonly rainFactor: number;
  readonly roofs: readonly RoofCatch[];
  readonly demand: DailyDemand;
}

/** A site's water, ready to be judged: its bodies of water in the order of their first tanks. */
export interface SiteWater {
  /** The programme's settings, with the target this site is judged by. */
  readonly settings: DesignSettings;
  readonly rain: JudgedRain;
  readonly groups: readonly GroupWater[];
}

/** What one body of water comes to before any day is run; null what is not known. */
interface GroupStops {
  readonly group: SiteGroup;
  readonly people: number | null;
  readonly demand: DailyDemand | null;
  readonly tankVolume_L: number | null;
  readonly problems: readonly Problem[];
  readonly working: WorkingLine[];
}

/** What the stops of the water's way come to before any day is run. */
interface SiteStops {
  /** Problems told elsewhere already, that keep this site from a verdict: a row in doubt, a gauge without rain. */
  readonly restated: readonly Problem[];
  /** Problems of this site's own facts. */
  readonly own: readonly Problem[];
  readonly roofs: readonly RoofCatch[] | null;
  readonly ration: Ration | null;
  readonly groups: readonly GroupStops[];
}

/** What the water's way tells of a site: what is told elsewhere already, and what is of its own facts. */
export interface WaterProblems {
  readonly restated: Problem[];
  readonly own: Problem[];
}

/** What is known of a site's own facts before any day is run. */
export interface OwnFacts {
  /** None while a row about it is in doubt. */
  readonly problems: readonly Problem[];
  /** What the day that asks for most asks of each body of water, by its first tank; empty where `siteWater` has no days. */
  readonly demandHighest_L_per_day: ReadonlyMap<string, number>;
}

/** The problems of the site's own facts that the water's way tells, and what is asked of its tanks. */
export function ownFacts(site: SiteFacts, gauge: GaugeFinding | undefined, { settings }: Programme): OwnFacts {
  const stops = siteStops(site, gauge, settings, []);
  const byTank = new Map<string, number>();
  for (const { group, people, demand, tankVolume_L } of stops.groups)
    if (people !== null && demand !== null && tankVolume_L !== null)
      byTank.set(group.tankIds[0]!, demand.judgedHighest_L_per_day + demand.other_L_per_day);
  const isWhole = hasDays(stops, gauge) && byTank.size === stops.groups.length;
  return { problems: stops.own, demandHighest_L_per_day: isWhole ? byTank : new Map() };
}

/** Can days be run? Not where a blocker stands, or where rain or roofs are not known. */
function hasDays({ restated, own, roofs }: SiteStops, gauge: GaugeFinding | undefined): boolean {
  return gauge?.rain != null && roofs !== null && [...restated, ...own].every(({ severity }) => severity !== 'blocker');
}

/** Rain, roof, people, tanks: what each is known to be. Adds to the working. */
function siteStops(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  settings: DesignSettings,
  working: WorkingLine[],
): SiteStops {
  const [doubt] = site.doubts;
  if (doubt) {
    const place = { ...doubt, siteId: site.siteId };
    const restated = [engineProblem('site.facts_in_doubt', place, { count: site.doubts.length })];
    return { restated, own: [], roofs: null, ration: null, groups: [] };
  }
  const unusable = unusableFigures(site);
  if (unusable.length > 0) return { restated: [], own: unusable, roofs: null, ration: null, groups: [] };
  const place = { file: 'sites.csv', column: 'gaugeId', siteId: site.siteId };
  const noGauge = gauge ? [] : [engineProblem('site.gauge_unknown', place, { gaugeId: site.gaugeId ?? '' })];
  const ofGauge = gauge?.problems ?? [];
  const capping = ofGauge.filter(({ code }) => cappingCodes.some((one) => one === code));
  const told = gauge?.rain === null ? ofGauge.filter((problem) => problem.severity === 'blocker') : capping;
  // Rain made for this site alone has its problems told nowhere else.
  const isOfSite = (problem: Problem) => problem.place.siteId === site.siteId;
  const roofs = siteRoofs(site, settings.firstFlush_mm, working);
  const people = headcount(site, settings);
  working.push(...people.working);
  const peopled = { ...site, people: people.design_people };
  const demand = demandBy(peopled, settings);
  const { ration, problems: ofRation } = rationOf(site);
  const found = siteGroups(site);
  const groups = found.groups.map((group) =>
    groupStops(peopled, group, site.tanks.length > group.tanks.length, demand.by),
  );
  return {
    restated: told.filter((problem) => !isOfSite(problem)),
    own: [
      ...classWithoutTarget(site),
      ...noGauge,
      ...ofGauge.filter(isOfSite),
      ...roofs.problems,
      ...people.problems,
      ...leansOnSource(site),
      ...demand.ofSite.problems,
      ...ofRation,
      ...found.problems,
      ...groups.flatMap(({ problems }) => problems),
    ],
    roofs: roofs.ok ? roofs.value : null,
    ration,
    groups,
  };
}

/** What so many people ask; adds to the working. */
type DemandBy = (people: number | null, working: WorkingLine[]) => Checked<DailyDemand>;

/** The demand of the site, once, so that what is missing or assumed is told once, however many tanks there are; and that of fewer people. */
function demandBy(site: SiteFacts, settings: DesignSettings): { ofSite: Checked<DailyDemand>; by: DemandBy } {
  const lines: WorkingLine[] = [];
  const share = backwashShare_fraction(site.treatment.units);
  const of: DemandBy = (people, working) =>
    demandWithBackwash(dailyDemand({ ...site, people }, settings, working), share, working);
  const ofSite = of(site.people, lines);
  const by: DemandBy = (people, working) => {
    if (people === site.people) working.push(...lines);
    return people === site.people ? ofSite : of(people, working);
  };
  return { ofSite, by };
}

/** Who draws from one body of water, what they ask, and how much it can give. */
function groupStops(site: SiteFacts, group: SiteGroup, isOneOfMany: boolean, demandOf: DemandBy): GroupStops {
  const working: WorkingLine[] = [];
  const { peopleFraction, tankIds, tanks, roofIds } = group;
  const people = site.people === null || peopleFraction === null ? null : site.people * peopleFraction;
  if (people !== null && isOneOfMany)
    explain(working, {
      code: 'storage.group',
      value: tankIds.join(', '),
      unit: 'text',
      inputs: [
        workingInput('people', site.people!, 'person'),
        workingInput('peopleShare', peopleFraction!, 'fraction'),
        workingInput('roofs', roofIds.join(', '), 'text'),
      ],
      source: 'survey',
    });
  const demand = demandOf(people, working);
  const tank = usableVolume(site.siteId, tanks);
  working.push(...tank.working);
  return {
    group,
    people,
    demand: demand.ok ? demand.value : null,
    tankVolume_L: tank.tankVolume_L,
    problems: tank.problems,
    working,
  };
}

/**
 * The way of the water: rain, roof, people, tanks. Adds what it finds to what is told and to the working, the working of each body of
 * water apart; null where a blocker stands. Days are taken over from a body of water like it where they come out the same.
 */
export function siteWater(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
  told: WaterProblems,
  working: WorkingLine[],
  like: readonly GroupWater[] = [],
): SiteWater | null {
  const { restated, own, roofs, ration, groups } = siteStops(site, gauge, programme.settings, working);
  told.restated.push(...restated);
  told.own.push(...own);
  const problems = [...restated, ...own];
  const rain = gauge?.rain;
  if (problems.some((problem) => problem.severity === 'blocker') || !rain || !roofs) {
    for (const group of groups) working.push(...group.working);
    return null;
  }
  working.push(...rainWorking(rain, site.rainFactor, gauge.byDistance));
  const waters = groups.flatMap((stops) => {
    const before = like.find(({ tankIds }) => tankIds[0] === stops.group.tankIds[0]);
    const water = groupWater(stops, roofs, rain, site, programme, problems, before);
    return water === null ? [] : [{ ...water, ration }];
  });
  if (waters.length < groups.length || waters.length === 0) return null;
  const settings = { ...programme.settings, target: targetOf(site, programme.settings) };
  return { settings, rain, groups: waters };
}

/** One body of water: what runs in by day and what is asked of it. Null where a fact is not known. */
function groupWater(
  { group, people, demand, tankVolume_L, working }: GroupStops,
  roofs: readonly RoofCatch[],
  rain: JudgedRain,
  { rainFactor, secondSource }: SiteFacts,
  programme: Programme,
  problems: readonly Problem[],
  like: GroupWater | undefined,
): Omit<GroupWater, 'ration'> | null {
  if (people === null || demand === null || tankVolume_L === null) return null;
  const own = roofs.filter(({ roofId }) => group.roofIds.includes(roofId));
  const madeFrom = { rain, rainFactor, roofs: own, demand };
  const inflow_L =
    like !== undefined && isSameInflow(madeFrom, like.madeFrom)
      ? like.balance.inflow_L
      : siteInflow_L(rain.record, own, rainFactor, programme.yields);
  const [days, { firstDay }] = [inflow_L.length, rain.record];
  const asked_L = (of: 'judged' | 'other') =>
    like !== undefined && like.madeFrom.rain === rain && isSameDemand(demand, like.madeFrom.demand, of)
      ? like.balance[`${of}_L`]
      : demandOnDays_L(demand[`${of}ByDay_L`], firstDay, days);
  const ofOthers = new Set(roofs.filter((roof) => !own.includes(roof)).map(({ roofId }) => roofId));
  return {
    tankIds: group.tankIds,
    people,
    balance: {
      inflow_L,
      judged_L: asked_L('judged'),
      other_L: asked_L('other'),
      covered: secondSource === null ? undefined : coveredDays(secondSource, firstDay, days),
    },
    madeFrom,
    tankVolume_L,
    judgedDemand_L_per_day: demand.judged_L_per_day,
    judgedDemandHighest_L_per_day: demand.judgedHighest_L_per_day,
    otherDemand_L_per_day: demand.other_L_per_day,
    inflow_L_per_year: yearlyInflow_L(inflow_L, rain, own, working),
    cappedBy: cappingAssumption(problems.filter(({ facts }) => !ofOthers.has(String(facts['roof'])))),
    working,
  };
}

function isSameInflow(one: MadeFrom, other: MadeFrom): boolean {
  return (
    one.rain === other.rain &&
    one.rainFactor === other.rainFactor &&
    one.roofs.length === other.roofs.length &&
    one.roofs.every((roof, index) => isSameCatch(roof, other.roofs[index]!))
  );
}

function isSameCatch(one: RoofCatch, other: RoofCatch): boolean {
  return (
    one.roofPlanArea_m2 === other.roofPlanArea_m2 &&
    one.gutteredFraction === other.gutteredFraction &&
    one.runoffFraction === other.runoffFraction &&
    one.firstFlush_mm === other.firstFlush_mm &&
    one.drainHole === other.drainHole
  );
}

function isSameDemand(one: DailyDemand, other: DailyDemand, of: 'judged' | 'other'): boolean {
  const others = other[`${of}ByDay_L`];
  return one[`${of}ByDay_L`].every((litres, index) => litres === others[index]);
}

/** What a site is judged by: the target of its class, else the programme's. */
export function targetOf(site: Pick<SiteFacts, 'target'>, { target }: Pick<DesignSettings, 'target'>): Target {
  return site.target ?? target;
}

/** The years drawn again for so many judged years, drawn once for all sites. */
export function drawnYears(programme: Programme, judgedYears: number): DrawnYears {
  const known = programme.drawn.get(judgedYears);
  if (known) return known;
  const { draws, seed } = programme.settings;
  const drawn = drawYears(judgedYears, draws, seed);
  programme.drawn.set(judgedYears, drawn);
  return drawn;
}
