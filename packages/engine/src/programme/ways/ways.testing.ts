import type { Carrier, CarrierMode, PlaceFacts, WayFacts, WayMode } from '../../kernel/index.ts';
import { readIsoDay } from '../../kernel/index.ts';
import type { WayStop, WaysAsked } from './waysFacts.ts';

/** A place of a test. */
export const place = (placeId: string, changeOver_h: number | null = null): PlaceFacts => ({
  ...{ placeId, name: placeId, kind: null, latitude_deg: null, longitude_deg: null, changeOver_h },
  ...{ maySleep: true, filledFrom: null, filledBy: null, setUp_amount: null },
});

/** A way of a test. */
export const way = (
  wayId: string,
  [from, to]: readonly [string, string],
  mode: WayMode,
  rest: Partial<WayFacts> = {},
): WayFacts => ({
  ...{ wayId, name: null, from, to, mode, length_km: null, there_h: null, back_h: null, limit_kg: null, limit_L: null },
  ...{ longest_m: null, porters_count: 0, fuel_L_per_km: null, weatherArea: null, riverGaugeId: null },
  ...rest,
});

/** A carrier of a test. */
export const carrier = (
  carrierId: string,
  mode: CarrierMode,
  limit_kg: number | null,
  rest: Partial<Carrier> = {},
): Carrier => ({
  ...{ carrierId, name: carrierId, mode, limit_kg, limit_L: null, longest_m: null, stowage_fraction: 1 },
  ...{
    carriers_count: 1,
    freeboard_cm: null,
    leastFreeboard_cm: null,
    freeboardEmpty_cm: null,
    length_m: null,
    limitSetBy: null,
    limitSetOn: null,
  },
  ...rest,
});

/** Truck, boat and bearer. */
export const carriers = [
  carrier('truck', 'truck', 2000),
  carrier('boat', 'boat', 600),
  carrier('bearer', 'person', 20),
];

/** Two years from New Year 2027 on. */
export const asked = (rest: Partial<WaysAsked>): WaysAsked => ({
  ...{ places: [], siteIds: [], ways: [], closures: [], riverLevels: [], wayLevels: [], carriers },
  travel: [
    { carrierId: 'truck', speed_km_per_h: 30, fuel_L_per_km: 0.2, cost_per_day: 40 },
    { carrierId: 'boat', speed_km_per_h: 10, fuel_L_per_km: 0.5, cost_per_day: 20 },
    { carrierId: 'bearer', speed_km_per_h: 4, fuel_L_per_km: null, cost_per_day: 8 },
  ],
  firstDay: readIsoDay('2027-01-01')!,
  horizon_days: 730,
  settings: { changeOver_h: 1, porterLoad_kg: 25, openChance_fraction: 0.8 },
  ...rest,
});

/** A crew with four porters. */
export const crew = { partyId: 'crew', carrierIds: ['truck', 'boat', 'bearer'], porters_count: 4 };

/** A stop to which nothing must come. */
export const stop = (placeId: string): WayStop => ({ stopId: placeId, place: placeId, load: null });

/** A stop to which so much must come. */
export const loaded = (placeId: string, kg: number, longest_m = 0): WayStop => ({
  ...{ stopId: placeId, place: placeId },
  load: { kg, litres: 0, longest_m },
});
