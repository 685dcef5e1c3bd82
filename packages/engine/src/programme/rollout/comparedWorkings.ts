import {
  cellName,
  explain,
  type WorkingCode,
  type WorkingInput,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { serviceDaysOf } from './curves.ts';
import {
  type PlanTimed,
  personDay,
  planCostWorking,
  planDay,
  type RolloutNames,
  siteWaitsLine,
} from './sumWorkings.ts';

/** A plan beside another, timed on the same rollout. */
export interface PlanBeside extends PlanTimed {
  readonly name: string;
  readonly names: RolloutNames;
}

/** What two plans may differ in. */
export type PlanDifference = 'finish' | 'waiting' | 'cost' | 'fuel' | 'trips';

/**
 * How was the difference of two plans reached: what each comes to, or which sites wait longer or less?
 *
 * @param of - what they differ in
 * @param a - the first plan [day, person, L, currency]
 * @param b - the second, of the same rollout [day, person, L, currency]
 * @returns lines of both, and what the second is more or later than the first [day, person-day, currency, L, count]
 * @law the last line is the difference that `planChanges` tells
 * @definition ours: docs/decisions/0389-figures-of-two-plans-open.md
 */
export function differenceWorking(of: PlanDifference, a: PlanBeside, b: PlanBeside): WorkingLine[] {
  const lines: WorkingLine[] = of === 'waiting' ? siteDiffersLines(a, b) : [...planLines(of, a), ...planLines(of, b)];
  const [first, second] = [sumOf(of, a), sumOf(of, b)];
  const unit = of === 'finish' ? planDay : unitOf(of, a);
  explain(lines, {
    ...{ code: 'rollout.differs', value: second - first, unit: unitOf(of, a), source: 'definition' },
    inputs: [
      ...[workingInput('firstPlan', a.name, 'text'), workingInput('underFirst', first, unit)],
      ...[workingInput('secondPlan', b.name, 'text'), workingInput('underSecond', second, unit)],
    ],
  });
  return lines;
}

function unitOf(of: PlanDifference, { names }: PlanBeside): string {
  if (of === 'cost') return names.currency ?? 'number';
  return { finish: 'day', waiting: personDay, fuel: 'L', trips: 'count' }[of];
}

function sumOf(of: PlanDifference, { outcome }: PlanBeside): number {
  if (of === 'trips') return outcome.trips.flat().filter(({ stops }) => stops.length > 0).length;
  return { finish: outcome.finish, waiting: outcome.waiting_personDays, cost: outcome.cost, fuel: outcome.fuel_L }[of];
}

/** What a plan comes to by itself. */
function planLines(of: Exclude<PlanDifference, 'waiting'>, plan: PlanBeside): readonly WorkingLine[] {
  const { problem, outcome, name, names } = plan;
  const ofPlan = workingInput('ofPlan', name, 'text');
  const one = (code: WorkingCode, unit: string, inputs: readonly WorkingInput[]): readonly WorkingLine[] => [
    { code, value: sumOf(of, plan), unit, inputs: [ofPlan, ...inputs], source: 'definition' },
  ];
  switch (of) {
    case 'finish': {
      const stops = outcome.trips.flat().flatMap((trip) => trip.stops);
      const done = stops.filter(({ handOverDay }) => handOverDay < problem.horizon_days);
      const last = done.find(({ handOverDay }) => handOverDay === outcome.finish);
      const site = last === undefined ? [] : [workingInput('ofSite', names.siteOf(last.job), 'text')];
      return one('rollout.lastHandOver', planDay, [...site, workingInput('sitesCounted', done.length, 'count')]);
    }
    case 'cost':
      return planCostWorking(plan, names).map((each) => ({ ...each, inputs: [ofPlan, ...each.inputs] }));
    case 'fuel': {
      const burnt = (all: readonly { readonly fuel_L: number }[]) => all.reduce((sum, { fuel_L }) => sum + fuel_L, 0);
      return one('rollout.fuel', 'L', [
        workingInput('fuelOfTrips', burnt(outcome.trips.flat()), 'L'),
        workingInput('fuelOfHauls', burnt(outcome.hauls), 'L'),
      ]);
    }
    default:
      return one('rollout.trips', 'count', crewsCounted(plan));
  }
}

/** Trips of each crew that has any. */
function crewsCounted({ outcome, names }: PlanBeside): readonly WorkingInput[] {
  return outcome.trips.flatMap((trips, crew) => {
    const count = trips.filter(({ stops }) => stops.length > 0).length;
    return count === 0
      ? []
      : [workingInput('ofCrew', names.crewOf(crew), 'text'), workingInput('tripsOfCrew', count, 'count')];
  });
}

/**
 * Which sites wait longer or less? Where both plans serve on one day nothing is told.
 *
 * @param a - the first plan, and what its sites are called [day, person]
 * @param b - the second, of the same rollout [day]
 * @returns a line for each site: people × days later [person-day]
 * @definition ours: docs/decisions/0389-figures-of-two-plans-open.md
 */
export function siteDiffersLines(
  a: Pick<PlanBeside, 'problem' | 'outcome' | 'names'>,
  b: Pick<PlanBeside, 'problem' | 'outcome'>,
): WorkingLine[] {
  const lines: WorkingLine[] = [];
  const first = serviceDaysOf(a.problem, a.outcome);
  const second = serviceDaysOf(b.problem, b.outcome);
  for (const [job, { siteId, people }] of a.problem.jobs.entries()) {
    const [was, is] = [first[job]!, second[job]!];
    if (was === is) continue;
    explain(lines, {
      ...{ code: 'rollout.siteDiffers', value: people * (is - was), unit: personDay, source: 'definition' },
      inputs: [
        workingInput('ofSite', a.names.siteOf(job), 'text'),
        workingInput('waitingPeople', people, 'person', cellName('sites', siteId, 'people')),
        ...[workingInput('daysUnderFirst', was, 'day'), workingInput('daysUnderSecond', is, 'day')],
      ],
    });
  }
  return lines;
}

/**
 * How was the wait of a person of one area reached?
 *
 * @param timed - a plan [day, person]
 * @param area - which; null: sites of none
 * @param names - what things are called
 * @returns lines of its sites, their sum [person-day] and the mean [day]; none where no site is of it
 * @definition ours: docs/methods/rollout.md
 */
export function areaWorking(
  timed: Pick<PlanTimed, 'problem' | 'outcome'>,
  area: string | null,
  names: Pick<RolloutNames, 'siteOf' | 'areaOf'>,
): WorkingLine[] {
  const { problem, outcome } = timed;
  const lines: WorkingLine[] = [];
  const days = serviceDaysOf(problem, outcome);
  let [waits, people_count] = [0, 0];
  for (const [job, { people }] of problem.jobs.entries()) {
    if (names.areaOf(job) !== area) continue;
    waits += siteWaitsLine(lines, problem, { job, days: days[job]! }, names);
    people_count += people;
  }
  if (lines.length === 0 || people_count === 0) return lines;
  const people = workingInput('waitingPeople', people_count, 'person');
  const ofArea = area === null ? [] : [workingInput('ofArea', area, 'text')];
  explain(lines, {
    ...{ code: 'rollout.areaWaits', value: waits, unit: personDay, source: 'definition' },
    inputs: [...ofArea, people],
  });
  explain(lines, {
    ...{ code: 'rollout.meanWait', value: waits / people_count, unit: 'day', source: 'definition' },
    inputs: [...ofArea, workingInput('totalWaiting', waits, personDay), people],
  });
  return lines;
}
