import { crewsTogether, crewTripsOf, finishDates, lognormalOfMean, retiming, spreadOf } from '@eavewell/engine';
import { madeProgramme } from './made.mjs';

/**
 * Finish dates of a made programme: seconds of CPU of 2,000 replicates with install days, pace, legs, two areas of weather, lateness and 31 years of rain drawn, beside as many bare timings of the same
 * plan with nothing drawn. `node bench/rollout/finish.mjs [sites] [rounds]`, after `npm run build`.
 */
const [sites, rounds] = [Number(process.argv[2] ?? 300), Number(process.argv[3] ?? 5)];
const replicates = 2000;
const crews = Math.max(1, Math.round(sites / 50));
const months = (value) => new Array(12).fill(value);
const chain = { afterOpen_fraction: months(0.1), afterClosed_fraction: months(0.6) };
const asked = {
  ...{ seed: 1, replicates_count: replicates, pace: lognormalOfMean(1, 0.15) },
  legs: spreadOf({ low: 0.9, likely: 1, high: 1.3 }, 'pert'),
};

const cpu_s = (work) => {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
};
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

console.log(`${sites} sites, ${crews} crews, ${replicates} replicates, ${rounds} rounds [CPU s]`);
for (const kind of ['free', 'bound'])
  for (const weather of ['dry', 'wet']) {
    const problem = withWeather(withRain(madeProgramme({ sites, crews, seed: 1, kind })), weather === 'wet');
    const plan = inTurn(problem);
    const ready = retiming(problem);
    const trips = plan.trips.map(crewTripsOf);
    const all = trips.map((_, crew) => crew);
    const [bare, drawn] = [[], []];
    for (let round = 0; round < rounds; round++) {
      bare.push(cpu_s(() => repeat(replicates, () => crewsTogether(ready, all, trips))));
      const areas = problem.areaIds.map(() => ({ days: null, chain }));
      drawn.push(cpu_s(() => finishDates(problem, plan, { ...asked, weather: areas })));
    }
    const [one, other] = [median(bare), median(drawn)];
    const all_s = drawn.map((value) => value.toFixed(2)).join(' ');
    console.log(
      `${kind}, ${weather}: ${other.toFixed(2)} (${all_s}); bare timings ${one.toFixed(2)}; ratio ${(other / one).toFixed(2)}`,
    );
  }

function repeat(times, work) {
  for (let at = 0; at < times; at++) work();
}

/** Every site with a record of its own, of 31 years. */
function withRain(problem) {
  const serviceWaits = () => ({
    ...{ firstYear: 1990, years_count: 32 },
    wait_days: Uint16Array.from({ length: 366 * 32 }, (_, at) => (at * 7919) % 60),
  });
  return { ...problem, jobs: problem.jobs.map((job) => ({ ...job, serviceWaits: serviceWaits() })) };
}

/** Every second site and leg in either of two areas. */
function withWeather(problem, isWet) {
  if (!isWet) return problem;
  const areaOf = (legs) => ({ ...legs, areaOf: legs.areaOf.map((_, at) => 1 + (at % 2)) });
  return {
    ...{ ...problem, areaIds: ['one', 'other'], jobs: problem.jobs.map((job, at) => ({ ...job, area: at % 2 })) },
    travels: problem.travels.map((travel) => ({ ...travel, byPeriod: travel.byPeriod.map(areaOf) })),
  };
}

/** A plan that is good for nothing but its size: sites in turn to crews, three a trip. */
function inTurn({ crews: all, jobs }) {
  const trips = all.map(() => []);
  for (const job of jobs.keys()) {
    const own = trips[job % all.length];
    if (own.length === 0 || own.at(-1).stops.length >= 3) own.push({ stops: [], notBefore: 0, isLocked: false });
    own.at(-1).stops.push(job);
  }
  return { trips };
}
