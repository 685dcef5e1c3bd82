import { demoProgramme } from '@eavewell/demo';

/** A search that takes no time. */
export const quick = ['--tries', '100', '--futures', '20'] as const;

const { planted: _, gauges_count: _g, rawFiles: _r, ...programme } = demoProgramme({ sites: 3, clean: true });

export const made = programme;

/** Three sites by a river and a path from a store, two crews and a boat. */
export const sites = programme.tables.sites!.map((row, at) => ({
  ...{ siteId: String(row['siteId']), name: ['=1+1', 'Lower Tarn', 'Upper Tarn'][at]!, people: 40 * (at + 1) },
  ...{ latitude_deg: row['latitude_deg']!, longitude_deg: row['longitude_deg']!, gaugeId: row['gaugeId']! },
  ...{ handOverDay: null, place: ['jetty', 'jetty', 'hill'][at]! },
}));
const place = (placeId: string, name: string, kind: string) => ({ placeId, name, kind });
export const carrier = { limit_kg: 900, carriers_count: 1, cost_per_day: 45, currency: 'USD', priceDate: '2026-02-01' };
export const tables = {
  ...{ sites, gauges: programme.tables.gauges! },
  roofs: sites.map(({ siteId }) => ({ siteId, roofId: 'R1', material: 'corrugatedMetal', planArea_m2: 80 })),
  parts: [
    { partId: 'tap', kind: 'tap', name: 'Tap', mass_kg: 0.5, stock_count: 1, stockCountedOn: '2026-01-01' },
    { partId: 'lime', kind: 'other', name: 'Chlorine', mass_kg: 5, danger: 'chlorine' },
    { partId: 'petrol', kind: 'other', name: 'Petrol', mass_kg: 17, danger: 'fuel' },
  ],
  kitRules: ['tap', 'lime', 'petrol'].map((partId) => ({
    ...{ ruleId: `K-${partId}`, partId, countedBy: 'site', each_count: 1 },
    ...{ rounding: 'up', spare_fraction: 0, leastSpare_count: 0 },
  })),
  places: [
    place('store', 'Harbour store', 'store'),
    place('jetty', 'Tarn jetty', 'landing'),
    place('hill', 'Tarn hill', 'other'),
  ],
  ways: [
    { wayId: 'W1', from: 'store', to: 'jetty', mode: 'river', length_km: 12, there_h: 2, back_h: 3 },
    { wayId: 'W2', from: 'jetty', to: 'hill', mode: 'foot', length_km: 4, there_h: 1, back_h: 1, porters: 2 },
  ],
  carriers: [{ carrierId: 'boat', name: 'Boat', mode: 'boat', ...carrier }],
  crews: ['east', 'west'].map((crewId) => ({
    ...{ crewId, name: `Crew ${crewId}`, base: 'store', people: 5, porters: 4, mostDaysAway: 14, cost_per_day: 120 },
    ...{ currency: 'USD', priceDate: '2026-02-01' },
  })),
  crewCarriers: ['east', 'west'].map((crewId) => ({ crewId, carrierId: 'boat' })),
  arrivals: [{ arrivalId: 'A1', store: 'store', partId: 'tap', quantity: 9, dueOn: '2027-02-10' }],
};
export const settings = {
  ...programme.settings,
  currency: 'USD',
  rolloutStart: '2027-01-04',
  mainStore: 'store',
  mustHold: 'no',
};
