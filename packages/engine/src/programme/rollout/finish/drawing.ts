import type { RolloutProblem } from '../problem.ts';
import type { Retiming } from '../retiming.ts';
import { arriveLate } from '../stockState.ts';
import { type AreaWeather, drawWeather, readyWeather } from './areaWeather.ts';
import { yearDrawn_days } from './constants.ts';
import { NamedDice } from './namedDice.ts';
import { recordYears } from './recordYears.ts';
import { type ReadyWaits, readyWaits, waitOf } from './serviceWaits.ts';
import { type Distribution, type SpreadKind, spreadDraw, spreadOf } from './spread.ts';

/** How far a long reckoning may go. The caller owns clock and cancel. */
export interface FinishBudget {
  /** What is left, 1 at the start, 0 or less when spent. */
  left(): number;
  /** So much of what was asked is done, 0 to 1. */
  report(done_fraction: number): void;
  stopped(): boolean;
}

export interface FinishAsked {
  readonly seed: number;
  /** Given none: 2,000. */
  readonly replicates_count?: number;
  /** How install days and lateness of goods are spread between low, likely and high. Given none: PERT. */
  readonly spread?: SpreadKind;
  /** What all work of a crew takes times as long, the same for all its jobs of one replicate; given none: as planned. */
  readonly pace?: Distribution;
  /** What all legs take times as long; given none: as planned. */
  readonly legs?: Distribution;
  /** By area, as the problem's; given none: no area is closed. */
  readonly weather?: readonly AreaWeather[];
  readonly budget?: FinishBudget;
}

/** What replicates are drawn with. */
export interface Drawing {
  readonly install: readonly Distribution[];
  readonly installDice: readonly NamedDice[];
  readonly paceDice: readonly NamedDice[];
  readonly pace: Distribution;
  readonly legs: Distribution;
  readonly legsDice: NamedDice;
  readonly slips: readonly (readonly Distribution[])[];
  readonly slipDice: readonly (readonly NamedDice[])[];
  readonly slip_days: readonly Float64Array[];
  readonly maySlip: readonly boolean[];
  readonly weather: ReturnType<typeof readyWeather>;
  readonly yearDice: NamedDice;
  /** What was thrown for each year of the rollout: which year of the records stands for it. */
  readonly thrown: Float64Array;
  readonly waits: ReadyWaits;
  /** Years of each job's record to draw from. */
  readonly waitYears: readonly (readonly number[])[];
  readonly areaDice: readonly NamedDice[];
}

const asPlanned: Distribution = { kind: 'fixed', value: 1 };

/** Makes ready what is drawn: each thing with dice of its own name. */
export function readyDrawing(problem: RolloutProblem, asked: FinishAsked): Drawing {
  const { seed, spread = 'pert', pace = asPlanned, legs = asPlanned, weather = [] } = asked;
  const { jobs, crews, stores, areaIds, horizon_days } = problem;
  const waits = readyWaits(problem);
  const years = recordYears(problem, weather, waits);
  const slips = stores.map(({ arrivals }) => arrivals.map(({ slip_days }) => spreadOf(slip_days, spread)));
  return {
    install: jobs.map(({ install_days }) => spreadOf(install_days, spread)),
    installDice: jobs.map(({ siteId }) => new NamedDice(seed, `install ${siteId}`)),
    paceDice: crews.map(({ crewId }) => new NamedDice(seed, `pace ${crewId}`)),
    ...{ pace, legs, slips },
    legsDice: new NamedDice(seed, 'legs'),
    slipDice: stores.map(({ arrivals }) => arrivals.map(({ arrivalId }) => new NamedDice(seed, `slip ${arrivalId}`))),
    slip_days: stores.map(({ arrivals }) => new Float64Array(arrivals.length)),
    maySlip: slips.map((own) => own.some(({ kind }) => kind !== 'fixed')),
    weather: readyWeather(problem, weather, years.ofAreas),
    ...{ waits, waitYears: years.ofJobs, thrown: new Float64Array(Math.ceil(horizon_days / yearDrawn_days)) },
    yearDice: new NamedDice(seed, 'years of weather'),
    areaDice: areaIds.map((areaId) => new NamedDice(seed, `weather ${areaId}`)),
  };
}

/** Draws one replicate into what is timed from. */
export function drawAll(ready: Retiming, drawing: Drawing): void {
  const { problem } = ready;
  const { install, installDice, paceDice, pace, slips, slipDice, slip_days, weather } = drawing;
  for (let job = 0; job < install.length; job++) ready.days[job] = spreadDraw(install[job]!, installDice[job]!);
  for (let crew = 0; crew < paceDice.length; crew++)
    ready.pace[crew] = problem.crews[crew]!.pace_factor * spreadDraw(pace, paceDice[crew]!);
  ready.leg_factor = spreadDraw(drawing.legs, drawing.legsDice);
  for (let year = 0; year < drawing.thrown.length; year++) drawing.thrown[year] = drawing.yearDice.fraction();
  drawWeather(weather, drawing.thrown, drawing.areaDice);
  for (let area = 0; area < weather.closed.length; area++)
    if (weather.drawnBy[area] !== 'none') ready.closed[area] = weather.closed[area]!;
  for (let store = 0; store < slips.length; store++) {
    if (!drawing.maySlip[store]) continue;
    const { arrivals } = problem.stores[store]!;
    for (let at = 0; at < arrivals.length; at++)
      slip_days[store]![at] = spreadDraw(slips[store]![at]!, slipDice[store]![at]!);
    for (let goods = 0; goods < ready.goods; goods++)
      arriveLate(ready.stock[store * ready.goods + goods]!, arrivals, slip_days[store]!);
  }
}

/** The first day of service of a site, by the rain of the year that was drawn; of a record that does not say, by the middle wait. */
export function serviceOf({ waits, waitYears, thrown }: Drawing, ready: Retiming, job: number): number {
  const day = ready.handOver[job]!;
  const own = waits.ofJobs[job]!;
  const years = waitYears[job]!;
  if (own === null || years.length === 0 || day >= ready.horizon_days) return ready.service[job]!;
  const year = years[Math.floor(thrown[Math.floor(day / yearDrawn_days)]! * years.length)]!;
  const wait = waitOf(waits, own, year, day);
  return wait === null ? ready.service[job]! : day + wait;
}
