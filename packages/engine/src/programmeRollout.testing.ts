import {
  type Carrier,
  type CrewFacts,
  defaultSettings,
  noKit,
  noKitFigures,
  noRollout,
  type PartFacts,
  type PlaceFacts,
  type ProgrammeFacts,
  plainWork,
  type RolloutFacts,
  readIsoDay,
  type SiteFacts,
  type SiteWork,
  unmeasuredPart,
  unmeasuredSite,
  type WayFacts,
} from './kernel/index.ts';
import type { KitLine } from './programme/kit/index.ts';
import type { ReadyRollout, RolloutSite } from './programmeRolloutFacts.ts';

export const thisDay = readIsoDay('2026-11-26')!;
export const firstDay = readIsoDay('2027-01-04')!; // a Monday

export const place = (placeId: string, rest: Partial<PlaceFacts> = {}): PlaceFacts => ({
  ...{ placeId, name: placeId, kind: null, latitude_deg: null, longitude_deg: null, changeOver_h: null },
  ...{ maySleep: true, filledFrom: null, filledBy: null, setUp_amount: null },
  ...rest,
});

export const way = (wayId: string, from: string, to: string, mode: WayFacts['mode'], there_h: number): WayFacts => ({
  ...{ wayId, name: null, from, to, mode, length_km: 20, there_h, back_h: null, limit_kg: null, limit_L: null },
  ...{ longest_m: null, porters_count: 0, fuel_L_per_km: null, weatherArea: null, riverGaugeId: null },
});

export const carrier = (carrierId: string, mode: Carrier['mode'], limit_kg: number, carriers_count = 1): Carrier => ({
  ...{ carrierId, name: carrierId, mode, limit_kg, limit_L: null, longest_m: null, stowage_fraction: 1 },
  ...{
    carriers_count,
    freeboard_cm: null,
    leastFreeboard_cm: null,
    freeboardEmpty_cm: null,
    length_m: null,
    limitSetBy: null,
    limitSetOn: null,
  },
});

export const crew = (crewId: string, rest: Partial<CrewFacts> = {}): CrewFacts => ({
  ...{ crewId, name: crewId, base: 'town', store: 'town', people_count: 4, skills: [], calendarId: null },
  ...{ restDays: [0], work_h_per_day: 8, mostDaysAway: 12, maySleepAtSites: true, from: null, to: null },
  ...{ pace_factor: 1, turnaround_days: 1, cost_per_day: 90, porters_count: 4, carrierIds: ['boat'] },
  ...rest,
});

export const work = (siteId: string, rest: Partial<SiteWork> = {}): SiteWork => ({
  siteId,
  place: siteId,
  ...plainWork,
  ...rest,
});

export const part = (partId: string, mass_kg: number | null, stock_count: number | null): PartFacts => ({
  ...{ ...unmeasuredPart, partId, kind: 'tank', name: partId, length_m: 1.5, mass_kg },
  kit: { ...noKitFigures, stock_count, stockCountedOn: readIsoDay('2026-11-01')! },
});

export const siteFacts = (siteId: string, rest: Partial<SiteFacts> = {}): SiteFacts => ({
  ...unmeasuredSite,
  ...{ siteId, name: siteId, latitude_deg: null, longitude_deg: null, siteClass: null, target: null, people: 100 },
  ...{ peopleCountedOn: null, households_count: 20, growthFraction_per_year: null, designYear: null, gaugeId: null },
  ...{ rainFactor: 1, handOverDay: null, roofs: [], tanks: [], demand: [], ration: null, presence: null },
  ...{ secondSource: null, nearSecondSource: null, doubts: [] },
  ...rest,
});

export const line = (partId: string, total_count: number): KitLine => ({
  ...{ partId, name: partId, kind: 'tank', countedIn: 'piece', needed_count: total_count, rounded_count: total_count },
  ...{ spare_count: 0, total_count, isAtLeast: false, from: 'rule', ruleIds: [], counts: [], cuts: null, working: [] },
});

/** Every year and every day the same. */
const evenWaits = (wait_days: number): RolloutSite['serviceWaits'] => ({
  middle_days: Array(366).fill(wait_days),
  byYear: { firstYear: 2000, years_count: 12, wait_days: new Uint16Array(12 * 366).fill(wait_days) },
});

export const wanted = (siteId: string, rest: Partial<RolloutSite> = {}): RolloutSite => ({
  site: siteFacts(siteId),
  ...{ verdict: 'holds', people_count: 100, lines: [line('tank', 1)], serviceWaits: evenWaits(3) },
  ...rest,
});

/** A town at a river with two villages on it and one on a footpath beyond; a village no way leads to. */
export function programme(
  rollout: Partial<RolloutFacts> = {},
  settings: Partial<ProgrammeFacts['settings']> = {},
): ProgrammeFacts {
  return {
    settings: { ...defaultSettings, fuelPrice_per_L: 2, rolloutStart: firstDay, rolloutHorizon_days: 60, ...settings },
    sites: ['V1', 'V2', 'V3', 'V4'].map((id) => siteFacts(id)),
    ...{ gauges: [], prices: [] },
    parts: [part('tank', 80, 2), part('tap', 1, null)],
    kit: { ...noKit, carriers: [carrier('boat', 'boat', 400), carrier('truck', 'truck', 2000)] },
    rollout: {
      ...noRollout,
      places: [place('town')],
      ways: [way('W1', 'town', 'V1', 'river', 2), way('W2', 'V1', 'V2', 'river', 2), way('W3', 'V2', 'V3', 'foot', 1)],
      travel: [{ carrierId: 'boat', speed_km_per_h: 10, fuel_L_per_km: 0.5, cost_per_day: 30 }],
      crews: [crew('A')],
      work: ['V1', 'V2', 'V3', 'V4'].map((id) => work(id)),
      ...rollout,
    },
  };
}

export const asked = { today: thisDay };
export const sites = (...ids: readonly string[]) => ids.map((id) => wanted(id));
export const codes = (problems: readonly { readonly code: string }[]) => [...new Set(problems.map(({ code }) => code))];
export const reasons = (ready: ReadyRollout) => ready.leftOut.map(({ siteId, reason }) => [siteId, reason]);

/** Tanks on their way to the town. */
export const arrival = (arrivalId: string, dueOn: number, quantity_count: number) => ({
  ...{ arrivalId, store: 'town', partId: 'tank', quantity_count, dueOn },
  slip_days: { low: 0, likely: 2, high: 9 },
});
