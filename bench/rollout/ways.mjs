import { readIsoDay, readyWays, travelBetween } from '@eavewell/engine';

/*
 * Legs between 1,500 sites: `node bench/rollout/ways.mjs [leaf|chain] [parties]`. `leaf`: each site hangs by one way on a landing; `chain`: sites
 * lie on rivers one after the other, with footpaths across. Twenty road ends, six areas closed or slower in months of their own, four gauges with
 * 26 years of levels. Seconds of CPU and the most memory; run by hand.
 */
const [kind = 'leaf', parties = '1'] = process.argv.slice(2);
let state = 1;
const chance = () => {
  state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
  return state / 0x7fffffff;
};
const oneOf = (list) => list[Math.floor(chance() * list.length)];

const places = [];
const ways = [];
const addPlace = (placeId) => {
  const none = { kind: null, latitude_deg: null, longitude_deg: null, changeOver_h: null };
  places.push({ placeId, name: placeId, ...none, maySleep: true, filledFrom: null, filledBy: null });
  return placeId;
};
const addWay = (from, to, mode, more = {}) => {
  const at = ways.length;
  const none = { name: null, there_h: null, back_h: null, limit_kg: null, limit_L: null, longest_m: null };
  const rest = {
    porters_count: 0,
    fuel_L_per_km: null,
    weatherArea: `area ${at % 6}`,
    riverGaugeId: `gauge ${at % 4}`,
  };
  ways.push({ wayId: `W${at}`, from, to, mode, length_km: 1 + Math.round(chance() * 20), ...none, ...rest, ...more });
};

const store = addPlace('store');
const ends = [];
for (let i = 0; i < 20; i++) {
  const end = addPlace(`end ${i}`);
  addWay(i < 3 ? store : oneOf(ends), end, 'road');
  ends.push(end);
}
const landings = [...ends];
for (let i = 0; i < (kind === 'leaf' ? 200 : 20); i++) {
  const landing = addPlace(`landing ${i}`);
  addWay(oneOf(landings), landing, 'river');
  landings.push(landing);
}
const siteIds = Array.from({ length: 1500 }, (_, i) => `S${i}`);
const along = [...landings];
siteIds.forEach((site, i) => {
  const limit = { limit_kg: chance() < 0.1 ? 200 : null };
  if (kind === 'leaf') {
    addWay(oneOf(landings), site, chance() < 0.5 ? 'foot' : 'river', limit);
    return;
  }
  addWay(oneOf(along), site, i % 3 > 0 ? 'river' : 'foot', limit);
  if (i % 2 > 0) addWay(site, oneOf(along), 'foot');
  along.push(site);
});

const closures = Array.from({ length: 6 }, (_, i) => ({
  ...{
    closureId: `C${i}`,
    wayId: null,
    weatherArea: `area ${i}`,
    months: [((i * 2) % 12) + 1, ((i * 2 + 1) % 12) + 1],
  },
  ...{ from: null, to: null, slower_factor: i % 2 > 0 ? null : 1.5, reason: null },
}));
const firstLevel = readIsoDay('2000-01-01');
const riverLevels = [];
for (let day = 0; day < 365 * 26; day++)
  for (let gauge = 0; gauge < 4; gauge++) {
    const level_m = 2 + 1.5 * Math.sin((2 * Math.PI * (day + gauge * 20)) / 365.25) + chance();
    riverLevels.push({ riverGaugeId: `gauge ${gauge}`, day: firstLevel + day, level_m });
  }
const wayLevels = ways
  .filter(({ mode }) => mode === 'river')
  .map(({ wayId }) => ({ wayId, carrierId: 'boat', least_m: 1, greatest_m: null }));
const carriers = [
  ['truck', 'truck', 900],
  ['boat', 'boat', 900],
  ['canoe', 'boat', 900],
  ['bearer', 'person', 25],
].map(([carrierId, mode, limit_kg]) => ({
  ...{ carrierId, name: carrierId, mode, limit_kg, limit_L: null, longest_m: null, stowage_fraction: 1 },
  ...{ carriers_count: 1, freeboard_cm: null, leastFreeboard_cm: null, limitSetBy: null, limitSetOn: null },
}));
const speeds = [30, 12, 6, 3];
const travel = carriers.map(({ carrierId }, i) => ({
  ...{ carrierId, speed_km_per_h: speeds[i], fuel_L_per_km: 0.5, cost_per_day: 10 },
}));

const seconds = () => process.cpuUsage().user / 1e6;
const before = seconds();
const ready = readyWays({
  ...{ places, siteIds, ways, closures, riverLevels, wayLevels, carriers, travel },
  ...{ firstDay: readIsoDay('2027-01-01'), horizon_days: 730 },
  settings: { changeOver_h: 1, porterLoad_kg: 25, openChance_fraction: 0.8 },
});
const stops = [
  ...[...ends, store].map((id) => ({ stopId: id, place: id, load: null })),
  ...siteIds.map((id, i) => ({ stopId: id, place: id, load: { kg: 150 + 50 * (i % 3), litres: 900, longest_m: 3 } })),
];
const all = [
  { partyId: 'first', carrierIds: ['truck', 'boat', 'bearer'], porters_count: 12 },
  { partyId: 'second', carrierIds: ['truck', 'canoe', 'boat', 'bearer'], porters_count: 12 },
];
const found = travelBetween(ready, stops, all.slice(0, Number(parties)));
const tables = found.travels.map(({ byPeriod }) => new Set(byPeriod).size);
console.log(
  `${kind}: ${stops.length} stops, ${ways.length} ways, ${parties} parties: ${(seconds() - before).toFixed(1)} s CPU, ` +
    `${found.periods.length} periods, ${tables.join(' + ')} tables, ${Math.round(process.resourceUsage().maxRSS / 1024)} MB`,
);
