import { existsSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { Draws } from '../../packages/engine/dist/programme/rollout/search/draws.js';
import {
  loadRules,
  releaseRules,
  windowRules,
} from '../../packages/engine/dist/programme/rollout/search/searchRules.js';
import { slackInduction } from '../../packages/engine/dist/programme/rollout/search/slackInduction.js';
import { TripsByLoad } from '../../packages/engine/dist/programme/rollout/search/tripsByLoad.js';
import { TripsByWindow } from '../../packages/engine/dist/programme/rollout/search/tripsByWindow.js';
import { TripsInTurn } from '../../packages/engine/dist/programme/rollout/search/tripsInTurn.js';
import { instancesIn, readLoads, readReleases, readWindows, valueBeside } from './read.mjs';
import { waitingKinds } from './waiting.mjs';

/**
 * The search on public instances: `node bench/rollout/instances.mjs FOLDER [--seconds 10,60] [--seeds 3] [--from 1] [--only NAME]`, after
 * `npm run build`. The folder holds cvrp/ (.vrp), vrptw/ (.txt) and mtvrptwr/ (.vrp), each with .sol files beside; any may be missing; --only takes files whose names begin so, --from is the first seed. Seconds are CPU of
 * this process. Every seed is printed; the gap is to the .sol file beside.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    seconds: { type: 'string', default: '10' },
    seeds: { type: 'string', default: '3' },
    from: { type: 'string', default: '1' },
    only: { type: 'string', default: '' },
  },
});
const folder = positionals[0];
if (folder === undefined) throw new Error('which folder? node bench/rollout/instances.mjs FOLDER');
if (!existsSync(folder)) {
  console.log(`${folder}: no such folder, nothing measured`);
  process.exit(0);
}
const seeds = Array.from({ length: Number(values.seeds) }, (_, index) => index + Number(values.from));

const kinds = [
  {
    kind: 'load',
    files: instancesIn(join(folder, 'cvrp'), '.vrp'),
    read: readLoads,
    rules: loadRules,
    state: (one, draws) =>
      new TripsByLoad(
        { cost_ratio: one.cost, demand_amount: one.demand, capacity_amount: one.capacity },
        loadRules.blink_fraction,
        draws,
      ),
  },
  {
    kind: 'windows',
    files: instancesIn(join(folder, 'vrptw'), '.txt'),
    read: readWindows,
    rules: windowRules,
    state: (one, draws) =>
      new TripsByWindow(
        {
          cost_ratio: one.cost,
          time_ratio: one.cost,
          demand_amount: one.demand,
          capacity_amount: one.capacity,
          opens_ratio: one.opens,
          closes_ratio: one.closes,
          service_ratio: one.service,
        },
        windowRules.blink_fraction,
        draws,
      ),
  },
  {
    kind: 'releases',
    files: instancesIn(join(folder, 'mtvrptwr'), '.vrp'),
    read: readReleases,
    rules: releaseRules,
    state: (one, draws) =>
      new TripsInTurn(
        {
          cost_ratio: one.cost,
          time_ratio: one.cost,
          demand_amount: one.demand,
          capacity_amount: one.capacity,
          vehicles_count: one.vehicles,
          opens_ratio: one.opens,
          closes_ratio: one.closes,
          service_ratio: one.service,
          release_ratio: one.release,
        },
        releaseRules.blink_fraction,
        draws,
      ),
  },
  ...waitingKinds(folder),
];

for (const seconds of values.seconds.split(',').map(Number)) for (const kind of kinds) measure(kind, seconds);

function measure({ kind, files, read, rules, state, known: knownOf = valueBeside, recount = recounted }, seconds) {
  if (files === null) return console.log(`${kind}: no files in this folder, nothing measured`);
  const means = [];
  for (const path of files.filter((file) => basename(file).startsWith(values.only))) {
    const one = understood(read, path);
    if (one === null) continue;
    const known = knownOf(path);
    const runs = seeds.map((seed) => run(one, seed, { rules, state, recount }, seconds));
    const costs = runs.map(({ cost }) => cost / (one.scale ?? 1));
    const gaps = known === null ? null : costs.map((cost) => (100 * (cost - known)) / known);
    const told = gaps === null ? costs.map(String) : gaps.map((gap) => gap.toFixed(2));
    const pace = runs.map(({ tries, used }) => `${Math.round(tries / used / 1000)}k/s`);
    if (gaps !== null) means.push(mean(gaps));
    const total = gaps === null ? 'no .sol beside: costs' : `mean ${mean(gaps).toFixed(3)} %`;
    console.log(`${seconds} s  ${one.name.padEnd(14)} ${told.join(' ')}  ${total}  ${pace.join(' ')}`);
  }
  if (means.length > 0) console.log(`${seconds} s  ${kind}: mean of ${means.length} ${mean(means).toFixed(3)} %`);
}

/** An instance, or null where the file is not understood, which is told. */
function understood(read, path) {
  try {
    return read(path);
  } catch (error) {
    console.log(`${basename(path)} is left out: ${error.message}`);
    return null;
  }
}

function run(one, seed, { rules, state, recount }, seconds) {
  const from = process.cpuUsage();
  const used = () => {
    const { user, system } = process.cpuUsage(from);
    return (user + system) / 1e6;
  };
  const draws = new Draws(seed);
  const plan = state(one, draws);
  const budget = { left: () => 1 - used() / seconds, report: () => {}, stopped: () => false };
  const { tries_count } = slackInduction(plan, rules, budget, draws);
  const rows = one.vehicles ? plan.vehicles() : plan.trips();
  return { cost: recount(one, rows), tries: tries_count, used: used() };
}

/** Cost counted again from the lists of jobs of each vehicle, or of each trip where vehicles are as many as are wanted, with every job once and no load, window or coming of goods broken; else the run does not count. */
function recounted({ name, cost, demand, capacity, opens, closes, service, release, vehicles }, plan) {
  const stops = demand.length;
  const seen = new Set();
  let sum = 0;
  if (vehicles !== undefined && plan.length > vehicles) throw new Error(`${name}: more vehicles than there are`);
  for (const row of plan) {
    let time = 0;
    for (const trip of vehicles === undefined ? [row] : row) {
      let load = 0;
      let at = 0;
      if (release) time = Math.max(time, ...trip.map((job) => release[job]));
      for (const job of [...trip, 0]) {
        sum += cost[at * stops + job];
        load += demand[job];
        if (opens) {
          time = Math.max(time + service[at] + cost[at * stops + job], opens[job]);
          if (time > closes[job]) throw new Error(`${name}: too late at ${job}`);
        }
        if (job !== 0 && seen.has(job)) throw new Error(`${name}: ${job} twice`);
        seen.add(job);
        at = job;
      }
      if (load > capacity) throw new Error(`${name}: overloaded`);
    }
  }
  seen.add(0);
  if (seen.size !== stops) throw new Error(`${name}: jobs left out`);
  return sum;
}

function mean(numbers) {
  return numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
}
