import {
  type CrewFacts,
  type DayIndex,
  engineProblem,
  isoDay,
  type Problem,
  type ProgrammeFacts,
  type SiteFacts,
  type Verdict,
} from './kernel/index.ts';
import { type ReadyProgramme, rainOfSite } from './plan.ts';
import type { Goods, Job, RolloutProblem, Store } from './programme/rollout/index.ts';
import {
  type ExplainedWay,
  explainedWay,
  type NoWay,
  type Party,
  readyWays,
  travelBetween,
  type WayStop,
} from './programme/ways/index.ts';
import { kitAtSite, type ReadyKit } from './programmeKit.ts';
import { type CrewMarket, crewOf, poolsOf, riverDayOf, travelKey } from './programmeRolloutCrews.ts';
import type { PlanDays } from './programmeRolloutDays.ts';
import type { ReadyRollout, RolloutAsked, RolloutSite } from './programmeRolloutFacts.ts';
import { fillingWays, type HaulMarket, haulLegs, haulOf, placeStop } from './programmeRolloutHauls.ts';
import { type DraftJob, jobsOf } from './programmeRolloutJobs.ts';
import { happenedBy, planOf, takenByTrips } from './programmeRolloutPast.ts';
import { ofNodes, unreachable } from './programmeRolloutReach.ts';
import { filledStores, stockOf } from './programmeRolloutStock.ts';
import { designSite } from './site.ts';
import { siteServiceWaits } from './siteService.ts';
import { countedPeople } from './water/people/index.ts';

export {
  type LeftOutReason,
  type LeftOutSite,
  leftOutReasons,
  type ReadyRollout,
  type RolloutAsked,
  type RolloutSite,
} from './programmeRolloutFacts.ts';

/**
 * What does the rollout want to know of each site: does it hold, what is its kit, how long until it serves? One site at a time; of one that is handed over nothing
 * is worked out.
 *
 * @param sites - the sites' facts
 * @param ready - the programme, ready to be judged, with today [day]
 * @param kit - the programme, ready for kits
 * @param verdicts - of sites that are judged already, by their ids
 * @returns for each site its verdict, people, kit [count] and waits from hand-over to service [day]
 * @law the verdict is that of `designSite`
 * @definition ours
 */
export function* rolloutSites(
  sites: readonly SiteFacts[],
  ready: ReadyProgramme,
  kit: ReadyKit,
  verdicts: ReadonlyMap<string, Verdict> = new Map(),
): Generator<RolloutSite, void> {
  const today = ready.today ?? null;
  for (const site of sites) {
    const people_count = countedPeople(site, ready.settings);
    if (site.handOverDay !== null && today !== null && site.handOverDay <= today) {
      yield { site, verdict: 'unknown', people_count, lines: [], serviceWaits: null };
      continue;
    }
    const gauge = rainOfSite(site, ready);
    const verdict = verdicts.get(site.siteId) ?? designSite(site, gauge, ready).verdict;
    const { lines } = kitAtSite(site, kit);
    yield { site, verdict, people_count, lines, serviceWaits: siteServiceWaits(site, gauge, ready) };
  }
}

/**
 * Makes a rollout ready to be planned: sites as jobs, crews, ways as legs, stock as goods that are short.
 *
 * @param facts - the programme
 * @param sites - what `rolloutSites` found of its sites [count, day]
 * @param asked - today, first day, days looked ahead [day], which sites
 * @returns the rollout as numbers, the sites that are not planned and why, and what the legs were made from
 * @problem rollout.crew_base_unknown - a crew's base is no place of the ways: it is not planned with
 * @problem rollout.crew_never_works - a crew works on no day that is looked at
 * @problem rollout.no_crews - nobody is there to go
 * @problem rollout.no_agreements - no site states when it was agreed on, so none is left out for it
 * @problem rollout.tight - sites that are planned hold at the point value alone
 * @problem rollout.short_planned - sites that do not hold are planned, as the settings say
 * @problem rollout.kit_in_part - of a kit something could not be counted
 * @problem rollout.mass_unknown - parts of kits have no mass, and count as nothing in the loads
 * @problem rollout.service_unknown - nobody knows when a site first serves: at once is taken
 * @problem rollout.stock_never_enough - stock and arrivals together are fewer than the sites need
 * @problem rollout.stock_overdrawn - trips that left took more of a part than was there
 * @problem rollout.stock_unknown - of parts neither stock nor arrivals are stated: they are taken as there
 * @problem rollout.main_store_unknown - several stores, and none said to be the one of the table of parts
 * @problem rollout.haul_unknown - nobody says what fills a forward store, or no way leads there
 * @problem rollout.begins_in_past - the first day of the plan is before today
 * @problem rollout.cost_unknown - what a crew or carrier costs a day is not known
 * @problem rollout.fuel_price_unknown - what fuel costs is not known
 * @law every site is a job or left out, and never both
 * @definition ours: docs/decisions/0329-what-is-planned-and-with-what.md
 */
// long: one step after the other, each a line or two
export function readyRollout(facts: ProgrammeFacts, sites: readonly RolloutSite[], asked: RolloutAsked): ReadyRollout {
  const { settings, rollout } = facts;
  const kept = planOf(facts, asked.planId);
  const past = happenedBy(facts, kept, asked.today);
  const begins = asked.firstDay ?? kept?.from ?? settings.rolloutStart ?? asked.today;
  const plan: PlanDays = {
    firstDay: kept === undefined ? begins : Math.max(begins, asked.today),
    horizon_days: Math.max(1, Math.floor(asked.horizon_days ?? settings.rolloutHorizon_days)),
  };
  const siteAreas = [...new Set(rollout.work.flatMap(({ weatherArea }) => weatherArea ?? []))];
  const { carriers } = facts.kit;
  const siteIds = facts.sites.map(({ siteId }) => siteId);
  const ways = readyWays({ ...rollout, ...plan, carriers, siteIds, siteAreas, settings });
  const problems: Problem[] = [...ways.problems];
  if (plan.firstDay < asked.today)
    problems.push(engineProblem('rollout.begins_in_past', {}, { from: isoDay(plan.firstDay) }));
  const crews = usableCrews(facts, ways.nodeOf, problems);
  const forward = filledStores(rollout.places);
  const inUse = storesOf(crews, forward);
  const stores = asked.hasPossibleStores === true ? withPossible(inUse, forward, ways.nodeOf) : inUse;
  const placeIds = [...new Set([...crews.map(({ base }) => base), ...stores])].sort();
  const skillIds = [...new Set(crews.flatMap(({ skills }) => skills))].sort().slice(0, mostSkills_count);
  const found = jobsOf(sites, {
    ...plan,
    asked,
    facts: rollout,
    settings,
    parts: facts.parts,
    areaIds: ways.areaIds,
    skillIds,
    underWay: new Set(past.flatMap(({ state, stops }) => (state === 'underWay' ? stops.map((one) => one.siteId) : []))),
  });
  problems.push(...found.problems);
  const byKey = partiesOf(crews, settings.riverEnds_h);
  const parties = [...byKey.values()];
  const travelOf = new Map([...byKey.keys()].map((key, at) => [key, at]));
  const stops = [...placeIds.map(placeStop), ...found.jobs.map(jobStop)];
  const hauls = stores.flatMap((store) => haulLegs(store, forward.get(store), facts));
  const single = hauls.map(({ leg }) => leg);
  const legs = travelBetween(ways, stops, parties, single);
  problems.push(...legs.problems);
  const market: CrewMarket = { facts, plan, crews, stores, placeIds, skillIds, travelOf, past };
  const pools = poolsOf(market);
  const draft: HaulMarket = { ...market, forward, hauls, single: legs.single, pools };
  const readied = crews.map((crew) => crewOf(crew, market, problems));
  const storeNodes_positions = stores.map((store) => placeIds.indexOf(store));
  const reach = { crews: readied, storeNodes_positions, travels: legs.travels };
  const against = found.jobs.map((job, at) => unreachable(job, placeIds.length + at, reach));
  const reached = against.flatMap((left, at) => (left === null ? [at] : []));
  const nodes = [...placeIds.map((_, at) => at), ...reached.map((at) => placeIds.length + at)];
  const jobs = reached.map((at) => found.jobs[at]!);
  const { goods, stores: filled } = storesWith(jobs, draft, problems, { sites, today: asked.today });
  const isWhole = reached.length === found.jobs.length;
  const problem: RolloutProblem = {
    ...{ ...plan, placeIds, areaIds: ways.areaIds, periods: legs.periods, goods, stores: filled, crews: readied },
    jobs: jobs.map((job) => withNeeds(job, goods)),
    travels: isWhole ? legs.travels : legs.travels.map((travel) => ofNodes(travel, nodes)),
    pools,
    ...{ learning_fraction: settings.learning_fraction, riverEnds_h: settings.riverEnds_h },
    fuelPrice_per_L: settings.fuelPrice_per_L ?? 0,
  };
  if (settings.fuelPrice_per_L === null && jobs.length > 0)
    problems.push(engineProblem('rollout.fuel_price_unknown', {}));
  return {
    ...{ problem, problems, ways, states: legs.states, filling: stores.map((store) => fillingWays(store, draft)) },
    leftOut: [...found.leftOut, ...against.flatMap((left) => left ?? [])],
    crewsLeftOut: rollout.crews.flatMap(({ crewId }) => (crews.some((one) => one.crewId === crewId) ? [] : [crewId])),
    stops: nodes.map((at) => stops[at]!),
    parties,
  };
}

/**
 * By which way does a crew go from one node to another, stretch by stretch?
 *
 * @param ready - the rollout, ready
 * @param leg - the crew's place in the problem, nodes, and the period [count]
 * @returns stretches with hours [h], fuel [L] and limits [kg, L, m], or why there is none
 * @definition ours: docs/methods/rollout.md, ways
 */
export function rolloutWay(
  ready: ReadyRollout,
  leg: { readonly crew: number; readonly from: number; readonly to: number; readonly period: number },
): ExplainedWay | NoWay {
  const { travel } = ready.problem.crews[leg.crew]!;
  const [from, to] = [ready.stops[leg.from]!, ready.stops[leg.to]!];
  const state = ready.states[leg.period]!;
  const known = waysFound.get(ready) ?? new Map<string, ExplainedWay | NoWay>();
  waysFound.set(ready, known);
  const key = `${travel} ${leg.from} ${leg.to} ${state.causes_positions.join()}`;
  const way = known.get(key) ?? explainedWay(ready.ways, { from, to, party: ready.parties[travel]!, state });
  known.set(key, way);
  return way;
}

/** Ways that were asked for, each reckoned once: sheets and papers ask for the same ones again and again. */
const waysFound = new WeakMap<ReadyRollout, Map<string, ExplainedWay | NoWay>>();

/** Skills are bits of a whole number of 32. */
const mostSkills_count = 31;

const jobStop = ({ siteId, place, kg, litres, longest_m }: DraftJob): WayStop => ({
  ...{ stopId: siteId, place },
  load: { kg, litres, longest_m },
});

function usableCrews(
  facts: ProgrammeFacts,
  nodeOf: ReadonlyMap<string, number>,
  problems: Problem[],
): readonly CrewFacts[] {
  const at = { file: 'crews.csv' };
  const crews = facts.rollout.crews.flatMap((crew): readonly CrewFacts[] => {
    if (!nodeOf.has(crew.base)) {
      problems.push(engineProblem('rollout.crew_base_unknown', at, { crew: crew.crewId, base: crew.base }));
      return [];
    }
    return [nodeOf.has(crew.store) ? crew : { ...crew, store: crew.base }];
  });
  if (crews.length === 0) problems.push(engineProblem('rollout.no_crews', at));
  return crews;
}

/** Stores that crews load at, and those that fill them. */
function storesOf(crews: readonly CrewFacts[], forward: HaulMarket['forward']): readonly string[] {
  const found = new Set<string>();
  for (const { store } of crews)
    for (let at: string | undefined = store; at !== undefined && !found.has(at); at = forward.get(at)?.from)
      found.add(at);
  return [...found].sort();
}

/** With places at which nobody loads, which can be filled, one from the other, from a store that there is. */
function withPossible(
  stores: readonly string[],
  forward: HaulMarket['forward'],
  nodeOf: ReadonlyMap<string, number>,
): readonly string[] {
  const isFilled = (store: string): boolean => {
    if (stores.includes(store)) return true;
    const behind = forward.get(store);
    return behind !== undefined && nodeOf.has(store) && isFilled(behind.from);
  };
  return [...new Set([...stores, ...[...forward.keys()].filter(isFilled)])].sort();
}

/** What the crews of each key travel as. */
function partiesOf(crews: readonly CrewFacts[], riverEnds_h: number): ReadonlyMap<string, Party> {
  const found = new Map<string, Party>();
  for (const crew of crews) {
    const key = travelKey(crew, riverEnds_h);
    const known = found.get(key);
    const partyId = known === undefined ? crew.crewId : `${known.partyId}, ${crew.crewId}`;
    const carrierIds = [...new Set(crew.carrierIds)].sort();
    const porters_count = Math.max(0, crew.porters_count);
    found.set(key, { partyId, carrierIds, porters_count, riverDay_h: riverDayOf(crew, riverEnds_h) });
  }
  return found;
}

/** Stores with what comes to them, and goods that are short. */
function storesWith(
  jobs: readonly DraftJob[],
  draft: HaulMarket,
  problems: Problem[],
  { sites, today }: { readonly sites: readonly RolloutSite[]; readonly today: DayIndex },
) {
  const { facts, plan, stores, forward, placeIds, past } = draft;
  const rootStores = stores.filter((store) => !forward.has(store));
  const mainStore = facts.settings.mainStore ?? rootStores[0] ?? '';
  if (!rootStores.includes(mainStore) || (facts.settings.mainStore === null && rootStores.length > 1))
    if (rootStores.length > 0) problems.push(engineProblem('rollout.main_store_unknown', {}, { store: mainStore }));
  const needed = new Map<string, number>();
  for (const { parts } of jobs) for (const [partId, all] of parts) needed.set(partId, (needed.get(partId) ?? 0) + all);
  const { parts } = facts;
  const rootOf = (store: string): string => {
    const behind = forward.get(store);
    return behind === undefined ? store : rootOf(behind.from);
  };
  const taken = takenByTrips(past, facts, { sites, today, rootOf });
  const { arrivals } = facts.rollout;
  const found = stockOf({ ...plan, today, parts, arrivals, rootStores, mainStore, needed, taken });
  problems.push(...found.problems);
  const made = stores.map(
    (store): Store => ({
      node: placeIds.indexOf(store),
      arrivals: found.byStore.get(store) ?? [],
      filledBy: haulOf(store, draft, problems),
    }),
  );
  return { goods: found.goods, stores: made };
}

function withNeeds({ place: _place, skill: _skill, parts, ...job }: DraftJob, goods: readonly Goods[]): Job {
  return { ...job, needs: goods.map(({ partId }) => parts.get(partId) ?? 0) };
}
