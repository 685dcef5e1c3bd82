/**
 * Made programmes: invented sites behind roads, rivers and footpaths, as numbers. Their rules stand in bench/README.md; the same seed
 * gives the same programme on every machine. `kind` is 'free' (nothing but boats, days away and the ways) or 'bound' (sites that open
 * and close, feasts and rest days, a season of low water, kits that arrive over time, deadlines).
 */
export function madeProgramme({ sites, crews, seed, kind = 'free' }) {
  const next = dice(seed);
  const ways = madeWays(next);
  const places = Array.from({ length: sites }, () => madeSite(next, ways));
  const bound = kind === 'bound' ? dice(seed + 7919) : null;
  const periods = bound ? [0, 110, 170, 475, 535].map((from) => ({ from })) : [{ from: 0 }];
  const legs = (index) => legTable(ways, places, bound && index % 2 === 1 ? 1.5 : 1);
  const tables = [legs(0)];
  if (bound) tables.push(legs(1), tables[0]);
  const byPeriod = periods.map((_, index) => tables[bound ? (index % 2 === 1 ? 1 : 0) : 0]);
  return {
    ...{ firstDay: 20_454, horizon_days: horizon, placeIds: ['store'], areaIds: [], pools: [], learning_fraction: 1 },
    ...{ riverEnds_h: 10, fuelPrice_per_L: 1.2, periods, travels: [{ nodes: sites + 1, byPeriod }] },
    jobs: places.map((place, index) => madeJob(place, index, bound)),
    crews: Array.from({ length: crews }, (_, index) => madeCrew(index, bound)),
    goods: bound ? [{ partId: 'kit' }] : [],
    stores: [{ node: 0, filledBy: null, arrivals: bound ? madeArrivals(places, crews) : [] }],
  };
}

const horizon = 730;
const kitsPerBoat = 6;
const kg_per_kit = 120;
const noWait = new Float64Array(366);
const changeOver_h = 1;

/** Six to nine road heads round the store, each with a river tree of landings behind it. */
function madeWays(next) {
  const heads = Array.from({ length: 6 + Math.floor(next() * 4) }, () => {
    const road_h = between(next, 20, 110) / 30;
    const turn = next() * 2 * Math.PI;
    const landings = [{ parent: -1, down_h: 0, up_h: 0 }];
    const count = 8 + Math.floor(next() * 10);
    while (landings.length < count) {
      const km = between(next, 3, 14);
      const parent = Math.max(0, landings.length - 1 - Math.floor(next() ** 2 * landings.length));
      landings.push({ parent, down_h: km / 12, up_h: km / 8 });
    }
    return { road_h, turn, landings };
  });
  return heads.map((head) => ({ ...head, water: waterHours(head.landings) }));
}

/** River hours from each landing of a tree to each: down to where the branches meet, and up. */
function waterHours(landings) {
  const path = (at) => (at < 0 ? [] : [at, ...path(landings[at].parent)]);
  const paths = landings.map((_, at) => path(at));
  return paths.map((from) =>
    paths.map((to) => {
      const meet = from.find((at) => to.includes(at));
      const down = from.slice(0, from.indexOf(meet)).reduce((sum, at) => sum + landings[at].down_h, 0);
      return down + to.slice(0, to.indexOf(meet)).reduce((sum, at) => sum + landings[at].up_h, 0);
    }),
  );
}

function madeSite(next, ways) {
  const head = Math.floor(next() * ways.length);
  const onRoad = next() < 0.2;
  const landing = Math.floor(next() * ways[head].landings.length);
  const kits = 1 + Math.floor(next() * 3);
  let days = 1;
  for (let kit = 0; kit < kits; kit++) days += between(next, 0.75, 1.25);
  return {
    ...{ head, landing: onRoad ? -1 : landing, kits, days },
    land_h: onRoad ? between(next, 0, 15) / 15 + between(next, 0, 2) / 3 : between(next, 0, 5) / 3,
    people: Math.max(30, Math.round(250 * Math.exp(0.7 * normal(next)))),
  };
}

function legTable(ways, places, slower) {
  const nodes = places.length + 1;
  const size = nodes * nodes;
  const table = {
    ...{ landBefore_h: new Float32Array(size), river_h: new Float32Array(size), landAfter_h: new Float32Array(size) },
    ...{ cost: new Float32Array(size), fuel_L: new Float32Array(size), limitOf: new Uint16Array(size) },
    ...{ areaOf: new Uint8Array(size), limits: [{ kg: 1e9, litres: 1e9, longest_m: 1e9, porters_count: 0 }] },
  };
  for (let from = 0; from < nodes; from++)
    for (let to = 0; to < nodes; to++) {
      if (from === to) continue;
      const at = from * nodes + to;
      const [before, river, after] = legHours(ways, places[from - 1], places[to - 1], slower);
      table.landBefore_h[at] = before;
      table.river_h[at] = river;
      table.landAfter_h[at] = after;
      table.cost[at] = 2 * (before + after) + 3 * river;
      table.fuel_L[at] = before + after + 4 * river;
    }
  return table;
}

/** Hours of land, river (with whatever land lies between two rivers) and land; the store is where nobody is given. */
function legHours(ways, from, to, slower) {
  if (from && to && from.head === to.head) {
    if (from.landing < 0 && to.landing < 0) return [from.land_h + to.land_h, 0, 0];
    if (from.landing < 0) return [from.land_h + changeOver_h, slower * ways[to.head].water[0][to.landing], to.land_h];
    if (to.landing < 0) return [from.land_h, slower * ways[to.head].water[from.landing][0], changeOver_h + to.land_h];
    return [from.land_h, slower * ways[to.head].water[from.landing][to.landing], to.land_h];
  }
  const road = between2(ways, from, to);
  const outOf = from && from.landing >= 0 ? slower * ways[from.head].water[from.landing][0] : 0;
  const into = to && to.landing >= 0 ? slower * ways[to.head].water[0][to.landing] : 0;
  const fromBoat = from && from.landing >= 0;
  const toBoat = to && to.landing >= 0;
  const before = from ? from.land_h : 0;
  const after = to ? to.land_h : 0;
  if (fromBoat && toBoat) return [before, outOf + changeOver_h + road + changeOver_h + into, after];
  if (fromBoat) return [before, outOf, changeOver_h + road + after];
  if (toBoat) return [before + road + changeOver_h, into, after];
  return [before + road + after, 0, 0];
}

/** Hours by road between two road heads, or from the store to one: straight where that is shorter than past the store. */
function between2(ways, from, to) {
  if (!from || !to) return ways[(from ?? to).head].road_h;
  const a = ways[from.head];
  const b = ways[to.head];
  const straight = Math.sqrt(a.road_h ** 2 + b.road_h ** 2 - 2 * a.road_h * b.road_h * Math.cos(a.turn - b.turn));
  return Math.min(a.road_h + b.road_h, 1.3 * straight);
}

function madeJob(place, index, bound) {
  const days = place.days;
  const windows = bound ? madeWindows(bound) : [{ from: 0, to: horizon - 1 }];
  const finishBy = bound && bound() < 0.1 ? windows[0].from + 60 + Math.floor(bound() * 120) : null;
  return {
    ...{ siteId: `S${index + 1}`, people: place.people, weight: place.people, windows, finishBy },
    install_days: { low: 0.8 * days, likely: days, high: 1.6 * days },
    ...{ kg: place.kits * kg_per_kit, litres: place.kits * 400, longest_m: 2, skills: 0, area: -1 },
    ...{ needs: bound ? [place.kits] : [], serviceWait_days: noWait, serviceWaits: null, kits: place.kits },
  };
}

/** One site in three is ready later, one in five is closed for a time. */
function madeWindows(bound) {
  const ready = bound() < 1 / 3 ? Math.floor(bound() * 90) : 0;
  if (bound() >= 0.2) return [{ from: ready, to: horizon - 1 }];
  const closes = ready + 25 + Math.floor(bound() * 60);
  const opens = closes + 20 + Math.floor(bound() * 30);
  return [
    { from: ready, to: closes },
    { from: opens, to: horizon - 1 },
  ];
}

function madeCrew(index, bound) {
  const works = new Uint8Array(horizon).fill(1);
  if (bound) for (let day = 0; day < horizon; day++) if (day % 7 === index % 7 || day % 120 >= 115) works[day] = 0;
  return {
    ...{ crewId: `C${index + 1}`, base: 0, store: 0, travel: 0, skills: 0, works, work_h_per_day: 8, mostDaysAway: 14 },
    ...{ maySleepAtSites: true, freeFrom: 0, pace_factor: 1, turnaround_days: 1, cost_per_day: 120 },
    ...{ limit_kg: kitsPerBoat * kg_per_kit, limit_L: 1e6, longest_m: 6, pools: [], done_count: 0 },
  };
}

/** Kits come in four shipments, each as much as the crews put up until the next comes, the last with all that is wanted still. */
function madeArrivals(places, crews) {
  const wanted = places.reduce((sum, one) => sum + one.kits, 0);
  const quantities = [0.3, 0.25, 0.25].map((share) => Math.round(share * wanted));
  quantities.push(wanted - quantities.reduce((sum, one) => sum + one, 0));
  const all_days = (3 * places.length) / crews;
  return quantities.map((quantity_count, index) => ({
    ...{ arrivalId: `A${index + 1}`, day: Math.round(index * 0.28 * all_days), goods: 0, quantity_count },
    slip_days: { low: 0, likely: 0, high: 20 },
  }));
}

function between(next, least, most) {
  return least + (most - least) * next();
}

function normal(next) {
  return Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

/** Seeded fractions: a counter mixed by the 32-bit finaliser of murmurhash3. */
function dice(seed) {
  let state = Math.imul(seed + 1, 0x9e3779b1);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let hash = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
    return ((hash ^ (hash >>> 16)) >>> 0) / 2 ** 32;
  };
}
