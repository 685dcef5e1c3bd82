import {
  type Carrier,
  type CarrierAway,
  type CarrierTravel,
  type CrewFacts,
  engineProblem,
  type Problem,
  type ProgrammeFacts,
} from './kernel/index.ts';
import { type Crew, leastThere, type Pool } from './programme/rollout/index.ts';
import { type PlanDays, workingDays } from './programmeRolloutDays.ts';
import { crewPast, type PastTrip } from './programmeRolloutPast.ts';
import { filledStores } from './programmeRolloutStock.ts';

/** What crews are made from. */
export interface CrewMarket {
  readonly facts: ProgrammeFacts;
  readonly plan: PlanDays;
  readonly crews: readonly CrewFacts[];
  readonly stores: readonly string[];
  readonly placeIds: readonly string[];
  readonly skillIds: readonly string[];
  /** Place in the travels, as `travelKey`. */
  readonly travelOf: ReadonlyMap<string, number>;
  /** Trips that left. */
  readonly past: readonly PastTrip[];
}

/** Crews of one key travel alike: by the same carriers, with as many porters, as long on a river each day. */
export function travelKey(crew: CrewFacts, riverEnds_h: number): string {
  return [crew.porters_count, riverDayOf(crew, riverEnds_h), ...[...new Set(crew.carrierIds)].sort()].join(' ');
}

/** Hours of a crew's day in which its boats may be out. */
export function riverDayOf({ work_h_per_day }: CrewFacts, riverEnds_h: number): number {
  return Math.max(0, Math.min(work_h_per_day, riverEnds_h));
}

/** A crew as the rollout sees it. */
export function crewOf(crew: CrewFacts, market: CrewMarket, problems: Problem[]): Crew {
  const { facts, plan, stores, placeIds, skillIds, travelOf } = market;
  const works = workingDays(crew, facts.rollout.calendars, plan);
  if (!works.includes(1) || !(crew.work_h_per_day > 0))
    problems.push(engineProblem('rollout.crew_never_works', { file: 'crews.csv' }, { crew: crew.crewId }));
  const before = crewPast(crew, market.past, facts.rollout.calendars, plan);
  const skills = crew.skills.filter((skill) => skillIds.includes(skill));
  return {
    ...{ crewId: crew.crewId, base: placeIds.indexOf(crew.base), store: stores.indexOf(crew.store), works },
    travel: travelOf.get(travelKey(crew, facts.settings.riverEnds_h))!,
    skills: skills.reduce((bits, skill) => bits + 2 ** skillIds.indexOf(skill), 0),
    work_h_per_day: Math.max(0, crew.work_h_per_day),
    mostDaysAway: crew.mostDaysAway ?? plan.horizon_days,
    maySleepAtSites: crew.maySleepAtSites,
    freeFrom: Math.max(before.freeFrom, (crew.from ?? plan.firstDay) - plan.firstDay),
    pace_factor: crew.pace_factor > 0 ? crew.pace_factor : 1,
    turnaround_days: Math.max(0, crew.turnaround_days),
    cost_per_day: costOf(crew, facts, problems),
    ...limitsOf(crew, facts),
    pools: poolsOf(market).flatMap(({ carrierId }, at) => (crew.carrierIds.includes(carrierId) ? [at] : [])),
    done_count: before.done_count,
  };
}

/** A crew's own day, and that of the trucks and boats it has with it; what is not known is told and counts as nothing. */
function costOf(crew: CrewFacts, { rollout, kit }: ProgrammeFacts, problems: Problem[]): number {
  const unknown = (of: string) => problems.push(engineProblem('rollout.cost_unknown', {}, { of }));
  if (crew.cost_per_day === null) unknown(crew.crewId);
  const own = new Set(crew.carrierIds);
  return kit.carriers.reduce((sum, carrier) => {
    if (!own.has(carrier.carrierId) || !isVehicle(carrier)) return sum;
    const cost = costOfCarrier(carrier.carrierId, rollout.travel);
    if (cost === null) unknown(carrier.carrierId);
    return sum + (cost ?? 0);
  }, crew.cost_per_day ?? 0);
}

/** What a carrier costs a day; null: not known. */
export function costOfCarrier(carrierId: string, travel: readonly CarrierTravel[]): number | null {
  return travel.find((one) => one.carrierId === carrierId)?.cost_per_day ?? null;
}

/** Is it one of which a crew takes one along? */
export const isVehicle = ({ mode }: Carrier): boolean => mode === 'boat' || mode === 'truck';

/** The most that any of its carriers takes, porters together; the legs take less where they must. */
function limitsOf(crew: CrewFacts, { kit, settings }: ProgrammeFacts) {
  const own = kit.carriers.filter(({ carrierId }) => crew.carrierIds.includes(carrierId));
  const onFoot = own.filter(({ mode }) => mode === 'person' || mode === 'twoPeople');
  const porters = {
    limit_kg: crew.porters_count * settings.porterLoad_kg,
    limit_L: Number.POSITIVE_INFINITY,
    longest_m: Number.POSITIVE_INFINITY,
  };
  const each = [
    ...own.filter(isVehicle).map((carrier) => limitOf(carrier, 1, 0)),
    ...onFoot.map((carrier) => {
      const perCarrier = carrier.mode === 'twoPeople' ? 2 : 1;
      return limitOf(carrier, Math.floor(crew.porters_count / perCarrier), settings.porterLoad_kg * perCarrier);
    }),
    ...(onFoot.length === 0 && crew.porters_count > 0 ? [porters] : []),
  ];
  const most = (of: (one: typeof porters) => number) => each.reduce((least, one) => Math.max(least, of(one)), 0);
  return {
    limit_kg: most((one) => one.limit_kg),
    limit_L: most((one) => one.limit_L),
    longest_m: most((one) => one.longest_m),
  };
}

function limitOf({ limit_kg, limit_L, longest_m, stowage_fraction }: Carrier, times: number, unstated_kg: number) {
  return {
    limit_kg: times * (limit_kg ?? unstated_kg),
    limit_L: limit_L === null ? Number.POSITIVE_INFINITY : times * limit_L * stowage_fraction,
    longest_m: longest_m ?? Number.POSITIVE_INFINITY,
  };
}

/** Trucks and boats that more crews and stores want than there are, or would on days on which some of them are away. */
export function poolsOf({ facts, crews, stores, plan, past }: Omit<CrewMarket, 'placeIds' | 'skillIds' | 'travelOf'>) {
  const filled = filledStores(facts.rollout.places);
  return facts.kit.carriers.filter(isVehicle).flatMap(({ carrierId, carriers_count }): readonly Pool[] => {
    const fills_count = stores.filter((store) => filled.get(store)?.by === carrierId).length;
    const wanted = fills_count + crews.filter(({ carrierIds }) => carrierIds.includes(carrierId)).length;
    const there = Math.max(0, carriers_count);
    const stated = facts.rollout.carriersAway.filter((one) => one.carrierId === carrierId);
    const away = stated.flatMap((one) => daysAway(one, plan));
    const isShort = wanted > there && wanted > 1;
    const pool: Pool = { carrierId, carriers_count: there, away };
    if (!isShort && (wanted === 0 || leastThere(pool) >= wanted)) return [];
    const held = withCrews(carrierId, crews, past).flatMap((one) => daysAway(one, plan));
    const all = [...away, ...held];
    return [all.length === 0 ? { carrierId, carriers_count: there } : { ...pool, away: all }];
  });
}

type Absence = Pick<CarrierAway, 'from' | 'to' | 'carriers_count'>;

/** A trip under way has one of each of its crew's carriers with it until it is back. */
function withCrews(carrierId: string, crews: readonly CrewFacts[], past: readonly PastTrip[]): readonly Absence[] {
  const own = new Set(crews.flatMap((crew) => (crew.carrierIds.includes(carrierId) ? [crew.crewId] : [])));
  return past
    .filter(({ state, crewId }) => state === 'underWay' && own.has(crewId))
    .map(({ leftOn, back }) => ({ from: leftOn, to: back, carriers_count: 1 }));
}

/** An absence in days of the plan; none where it is over before, or begins after the last. */
function daysAway({ from, to, carriers_count }: Absence, { firstDay, horizon_days }: PlanDays) {
  const first = Math.max(0, from - firstDay);
  const last = to === null ? horizon_days - 1 : Math.min(horizon_days - 1, to - firstDay);
  return first > last ? [] : [{ from: first, to: last, carriers_count }];
}
