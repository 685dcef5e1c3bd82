import {
  engineProblem,
  type LegLimit,
  type Problem,
  type ProgrammeFacts,
  type RolloutSettings,
} from './kernel/index.ts';
import { afterDays, afterRiver, endDay, type Haul, type Pool, workDays } from './programme/rollout/index.ts';
import type { ExplainedWay, NoWay, SingleLeg, WayStop } from './programme/ways/index.ts';
import { type CrewMarket, costOfCarrier, isVehicle } from './programmeRolloutCrews.ts';
import type { FillingWays } from './programmeRolloutFacts.ts';
import type { filledStores } from './programmeRolloutStock.ts';

/** What stores are filled with: legs there and back, and by which ways they are gone. */
export interface HaulMarket extends CrewMarket {
  readonly forward: ReturnType<typeof filledStores>;
  readonly hauls: readonly HaulLeg[];
  readonly single: readonly (readonly (ExplainedWay | NoWay)[])[];
  readonly pools: readonly Pool[];
}

/** A leg by which a store is filled, or the way back. */
export interface HaulLeg {
  readonly store: string;
  readonly isBack: boolean;
  readonly leg: SingleLeg;
}

/** A place as a stop, without a load of its own. */
export const placeStop = (placeId: string): WayStop => ({ stopId: placeId, place: placeId, load: null });

/** Hours of a day on which a store is filled, common practice without a source. */
const haulDay_h = 8;
/** A haul that takes longer is not gone [day]. Ours: no programme waits a hundred years. */
const mostHaul_days = 36_500;

/** A store is filled by the carrier that is named for it, and on stretches of other kinds by whatever truck or boat there is. */
export function haulLegs(
  store: string,
  filled: { readonly from: string; readonly by: string | null } | undefined,
  { kit: { carriers }, settings }: Pick<ProgrammeFacts, 'kit' | 'settings'>,
): readonly HaulLeg[] {
  if (filled === undefined) return [];
  const named = carriers.find(({ carrierId }) => carrierId === filled.by);
  const others = carriers.filter((one) => isVehicle(one) && named !== undefined && one.mode !== named.mode);
  const carrierIds = named === undefined ? [] : [named, ...others].map(({ carrierId }) => carrierId);
  const party = { partyId: store, carrierIds, porters_count: 0, riverDay_h: haulRiver_h(settings) };
  const [here, there] = [placeStop(filled.from), placeStop(store)];
  return [
    { store, isBack: false, leg: { party, from: here, to: there } },
    { store, isBack: true, leg: { party, from: there, to: here } },
  ];
}

/** How a forward store is filled; null: goods come there themselves. */
export function haulOf(
  store: string,
  { facts, forward, hauls, single, stores, pools }: HaulMarket,
  problems: Problem[],
): Haul | null {
  const filled = forward.get(store);
  if (filled === undefined) return null;
  const daysOf = (way: ExplainedWay | NoWay) => haulDays(way, haulRiver_h(facts.settings));
  const { there, back } = fillingWays(store, { hauls, single })!;
  const limits = there.flatMap((way) => (way.stretches === null ? [] : [haulLimit(way, filled.by)]));
  if (limits.length === 0 || !back.some(({ stretches }) => stretches !== null))
    problems.push(engineProblem('rollout.haul_unknown', { file: 'places.csv' }, { store, from: filled.from }));
  const cost = filled.by === null ? null : costOfCarrier(filled.by, facts.rollout.travel);
  if (filled.by !== null && cost === null) problems.push(engineProblem('rollout.cost_unknown', {}, { of: filled.by }));
  const costOf = (way: ExplainedWay | NoWay) =>
    way.stretches === null || daysOf(way) === Number.POSITIVE_INFINITY
      ? 0
      : daysOf(way) * (cost ?? 0) + way.cost_amount;
  const fuelOf = (way: ExplainedWay | NoWay) => (way.stretches === null ? 0 : way.fuel_L);
  const pool = pools.findIndex(({ carrierId }) => carrierId === filled.by);
  return {
    ...{ store: stores.indexOf(filled.from), pool: pool < 0 ? null : pool },
    there_days: there.map(daysOf),
    back_days: back.map(daysOf),
    limit_kg: limits.reduce((least, { kg }) => Math.min(least, kg), Number.POSITIVE_INFINITY),
    limit_L: limits.reduce((least, { litres }) => Math.min(least, litres), Number.POSITIVE_INFINITY),
    ...{ there_cost: there.map(costOf), back_cost: back.map(costOf) },
    ...{ there_fuel_L: there.map(fuelOf), back_fuel_L: back.map(fuelOf) },
  };
}

/** By which ways a store is filled; null: goods come there themselves. */
export function fillingWays(
  store: string,
  { hauls, single }: Pick<HaulMarket, 'hauls' | 'single'>,
): FillingWays | null {
  const byPeriod = (isBack: boolean) => single[hauls.findIndex((one) => one.store === store && one.isBack === isBack)];
  const [there, back] = [byPeriod(false), byPeriod(true)];
  return there === undefined || back === undefined ? null : { there, back };
}

/** What passes in one go by the carrier that is named; others go to and fro on their stretches as often as it takes. */
function haulLimit({ stretches, limit }: ExplainedWay, by: string | null): Pick<LegLimit, 'kg' | 'litres'> {
  const own = stretches.filter(({ carrierId }) => carrierId === by).map((one) => one.limit);
  if (own.length === 0) return limit;
  return { kg: Math.min(...own.map(({ kg }) => kg)), litres: Math.min(...own.map(({ litres }) => litres)) };
}

/** Hours of a day in which a boat that fills a store may be out. */
const haulRiver_h = ({ riverEnds_h }: RolloutSettings): number => Math.max(0, Math.min(haulDay_h, riverEnds_h));

/** Whole days of a haul one way, on a river as a crew goes; Infinity: it cannot be gone. */
function haulDays(way: ExplainedWay | NoWay, river_h: number): number {
  if (way.stretches === null) return Number.POSITIVE_INFINITY;
  const hours_h = way.landBefore_h + way.river_h + way.landAfter_h;
  const days = Math.min(
    mostHaul_days,
    4 + Math.ceil(hours_h / haulDay_h) + Math.ceil(way.river_h / Math.max(1, river_h)),
  );
  const everyDay = workDays(new Uint8Array(days).fill(1), days);
  const afloat = afterDays(everyDay, null, 0, way.landBefore_h / haulDay_h);
  const ashore = afterRiver(everyDay, null, afloat, way.river_h, haulDay_h, river_h);
  return endDay(ashore + way.landAfter_h / haulDay_h) + 1;
}
