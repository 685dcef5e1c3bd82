import {
  type Carrier,
  type CarrierMode,
  engineProblem,
  type LegLimit,
  type Problem,
  type WayFacts,
  type WayMode,
} from '../../kernel/index.ts';
import { portersDay_h, walking_km_per_h } from './constants.ts';
import { LimitTable } from './limitTable.ts';
import type { Party, ReadyWays } from './waysFacts.ts';

/** What a party goes by, one for each carrier. */
export interface PartyCarrier {
  /** Null: on foot, by no carrier of the tables. */
  readonly carrierId: string | null;
  readonly mode: WayMode;
  readonly speed_km_per_h: number | null;
  readonly fuel_L_per_km: number | null;
  /** What it takes of any way. */
  readonly limit: LegLimit;
  readonly cost_amount_per_h: number;
}

/** A party on every way: entries by way x carriers, way-major. */
export interface ReadyParty {
  readonly party: Party;
  readonly carriers: readonly PartyCarrier[];
  /** Its boats may be out so many hours of a day; Infinity: all. */
  readonly riverDay_h: number;
  /** Infinity: it is not gone by this carrier. */
  readonly there_h: Float64Array;
  readonly back_h: Float64Array;
  readonly fuel_L: Float64Array;
  /** Index of `limits`. */
  readonly limitOf_positions: Uint16Array;
  readonly limits: LimitTable;
  readonly problems: readonly Problem[];
}

const modeOf: Readonly<Record<CarrierMode, WayMode | null>> = {
  person: 'foot',
  twoPeople: 'foot',
  boat: 'river',
  truck: 'road',
  pallet: null,
  shippingContainer: null,
};

/** A party's hours, fuel and limits on every way, before anything is closed. */
export function readyParty(ready: ReadyWays, party: Party): ReadyParty {
  const problems: Problem[] = [];
  const carriers = carriersOf(ready, party, problems);
  const { ways } = ready;
  const size = ways.length * carriers.length;
  const there_h = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  const back_h = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  const fuel_L = new Float64Array(size);
  const limitOf_positions = new Uint16Array(size);
  const limits = new LimitTable();
  ways.forEach(({ way }, index) => {
    const able = carriers.flatMap((one, slot) => (one.mode === way.mode ? [slot] : []));
    const hours = able.map((slot) => ({ slot, ...hoursOf(way, carriers[slot]!) }));
    if (able.length > 0 && hours.every((one) => one.there_h === null))
      problems.push(engineProblem('ways.no_hours', { file: 'ways.csv' }, { way: way.wayId, mode: way.mode }));
    for (const one of hours) {
      if (one.there_h === null || one.back_h === null || way.porters_count > party.porters_count) continue;
      const at = index * carriers.length + one.slot;
      there_h[at] = one.there_h;
      back_h[at] = one.back_h;
      fuel_L[at] = fuelOn(way, carriers[one.slot]!, Math.min(one.there_h, one.back_h));
      limitOf_positions[at] = limits.indexOf(limitOn(way, carriers[one.slot]!));
    }
  });
  const riverDay_h =
    party.riverDay_h !== undefined && party.riverDay_h > 0 ? party.riverDay_h : Number.POSITIVE_INFINITY;
  return { party, carriers, riverDay_h, there_h, back_h, fuel_L, limitOf_positions, limits, problems };
}

function carriersOf(ready: ReadyWays, party: Party, problems: Problem[]): readonly PartyCarrier[] {
  const { asked, ways } = ready;
  const byId = new Map(asked.carriers.map((carrier) => [carrier.carrierId, carrier]));
  const found = party.carrierIds.flatMap((carrierId): readonly PartyCarrier[] => {
    const carrier = byId.get(carrierId);
    if (carrier === undefined) {
      problems.push(engineProblem('ways.carrier_unknown', {}, { carrier: carrierId, of: party.partyId }));
      return [];
    }
    const mode = modeOf[carrier.mode];
    return mode === null ? [] : [carrierOf(carrier, mode, ready, party, problems)];
  });
  if (found.some(({ mode }) => mode === 'foot') || !ways.some(({ way }) => way.mode === 'foot')) return found;
  const nobody = { carrierId: null, mode: 'foot', speed_km_per_h: walking_km_per_h, fuel_L_per_km: 0 } as const;
  const kg = party.porters_count * asked.settings.porterLoad_kg;
  if (ways.some(({ way }) => way.mode === 'foot' && (way.there_h === null || way.back_h === null)))
    problems.push(engineProblem('ways.walking_assumed', {}, { speed_km_per_h: walking_km_per_h }));
  return [...found, { ...nobody, limit: { ...noBounds, kg }, cost_amount_per_h: 0 }];
}

const noBounds: LegLimit = {
  kg: Number.POSITIVE_INFINITY,
  litres: Number.POSITIVE_INFINITY,
  longest_m: Number.POSITIVE_INFINITY,
  porters_count: 0,
};

function carrierOf(
  carrier: Carrier,
  mode: WayMode,
  { asked, ways }: ReadyWays,
  party: Party,
  problems: Problem[],
): PartyCarrier {
  const { carrierId, name, limit_kg, limit_L, longest_m, stowage_fraction } = carrier;
  const travel = asked.travel.find((one) => one.carrierId === carrierId);
  const own = ways.filter(({ way }) => way.mode === mode);
  const fuel_L_per_km = usable(travel?.fuel_L_per_km ?? null);
  if (mode !== 'foot' && fuel_L_per_km === null && own.some(({ way }) => way.fuel_L_per_km === null))
    problems.push(engineProblem('ways.fuel_unknown', {}, { carrier: name }));
  const stated = usable(travel?.speed_km_per_h ?? null);
  // A carrier that never moves is one whose speed is not known.
  const speed_km_per_h = stated === 0 ? null : stated;
  const perPair = carrier.mode === 'twoPeople' ? 2 : 1;
  const times = mode === 'foot' ? Math.floor(party.porters_count / perPair) : 1;
  if (mode !== 'foot' && limit_kg === null && own.length > 0)
    problems.push(engineProblem('ways.carrier_no_limit', {}, { carrier: name }));
  const each_kg = limit_kg ?? (mode === 'foot' ? asked.settings.porterLoad_kg * perPair : 0);
  const limit: LegLimit = {
    kg: times * each_kg,
    litres: limit_L === null ? Number.POSITIVE_INFINITY : times * limit_L * stowage_fraction,
    longest_m: longest_m ?? Number.POSITIVE_INFINITY,
    porters_count: 0,
  };
  const perDay = mode === 'foot' ? times * (usable(travel?.cost_per_day ?? null) ?? 0) : 0;
  if (mode === 'foot' && speed_km_per_h === null && own.some(({ way }) => way.there_h === null || way.back_h === null))
    problems.push(engineProblem('ways.walking_assumed', {}, { speed_km_per_h: walking_km_per_h }));
  return {
    ...{ carrierId, mode, fuel_L_per_km, limit, cost_amount_per_h: perDay / portersDay_h },
    speed_km_per_h: speed_km_per_h ?? (mode === 'foot' ? walking_km_per_h : null),
  };
}

function usable(value: number | null): number | null {
  return value !== null && Number.isFinite(value) && value >= 0 ? value : null;
}

/** Hours as stated; where one direction is, and the other not, by the same hours; else by length and speed; null: not known. */
function hoursOf(
  way: WayFacts,
  { speed_km_per_h }: PartyCarrier,
): Readonly<Record<'there_h' | 'back_h', number | null>> {
  const { length_km } = way;
  const bySpeed = length_km !== null && speed_km_per_h !== null ? length_km / speed_km_per_h : null;
  return {
    there_h: way.there_h ?? bySpeed ?? way.back_h,
    back_h: way.back_h ?? way.there_h ?? bySpeed,
  };
}

/** By length; where that is not known, by hours and speed; where neither is, none is counted. */
function fuelOn(way: WayFacts, { mode, fuel_L_per_km, speed_km_per_h }: PartyCarrier, hours_h: number): number {
  if (mode === 'foot') return 0;
  const length_km = way.length_km ?? (speed_km_per_h === null ? 0 : hours_h * speed_km_per_h);
  return length_km * (way.fuel_L_per_km ?? fuel_L_per_km ?? 0);
}

function limitOn(way: WayFacts, { limit }: PartyCarrier): LegLimit {
  return {
    kg: Math.min(way.limit_kg ?? Number.POSITIVE_INFINITY, limit.kg),
    litres: Math.min(way.limit_L ?? Number.POSITIVE_INFINITY, limit.litres),
    longest_m: Math.min(way.longest_m ?? Number.POSITIVE_INFINITY, limit.longest_m),
    porters_count: way.porters_count,
  };
}
