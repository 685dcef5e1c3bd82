import {
  aboardForSites,
  aboardOfTrip,
  areasWeather,
  budgetOfTries,
  costWithin_fraction,
  type DayIndex,
  dayOnClock,
  finishDates,
  haulRunLegs,
  type Problem,
  type ProgrammeFacts,
  pairedVariants,
  type ReadyRollout,
  type RolloutPlan,
  type RolloutProblem,
  type RolloutVariant,
  readIsoDay,
  readyKit,
  readyProgramme,
  readyRollout,
  rolloutSites,
  rolloutVariants,
  type SearchBudget,
  type SearchProgress,
  tripLegs,
  type WaitingBounds,
  waitingBounds,
} from '@eavewell/engine';
import { loadSolveLinear } from '@eavewell/linear';
import {
  crewsOnPaper,
  isOfPlans,
  isOfRollout,
  type OnPaperGiven,
  type RolloutGiven,
  rolloutReport,
} from '@eavewell/report';
import { threadWork } from '@eavewell/work';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { paperLanguageOf } from '../packs/paperLanguage.ts';
import { rolloutPage } from '../print/rolloutPage.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import { json } from '../report/jsonReport.ts';
import type { PlanMade, PlanWanted } from '../threads/tasks.ts';
import type { Context } from './context.ts';
import type { FolderFound } from './folderOrData.ts';
import { readFolder } from './readFolder.ts';
import { boundsAndStrong } from './rolloutBound.ts';
import { keptOf, planFollowed, searchedFrom } from './rolloutFrom.ts';
import {
  type FoundToKeep,
  type KeepOptions,
  keepAsked,
  keepFound,
  refuseTaken,
  writePlanTables,
} from './rolloutKeep.ts';
import { refuseFolder, writeAll, writePdfs } from './rolloutOut.ts';
import { tellProblems } from './tellProblems.ts';

const { rollout: words } = spoken.commandLine;

export interface RolloutOptions extends KeepOptions {
  readonly seconds?: string;
  readonly tries?: string;
  readonly seed?: string;
  readonly from?: string;
  readonly today?: string;
  readonly plan?: string;
  readonly anew?: boolean;
  readonly futures?: string;
  readonly strongBound?: string;
  readonly compare?: boolean;
  readonly overwrite?: boolean;
  /** A language of paper, or true: that of the terminal. */
  readonly pdf?: string | true;
  readonly json?: boolean;
}

/** What the command was asked, once it is known to make sense. */
interface Asked {
  readonly seconds: number | null;
  readonly tries: number | null;
  readonly seed: number;
  readonly firstDay: DayIndex | null;
  readonly futures_count: number;
  /** Null: no strong bound. */
  readonly strong_seconds: number | null;
  readonly isCompared: boolean;
  readonly today: DayIndex;
  readonly planId: string | null;
  readonly isAnew: boolean;
}

/** Seconds of search, futures and columns of the bound where nothing else is asked. */
const usual = { seconds: 10, futures_count: 2000, seed: 1, mostColumns: 15_000 } as const;

/** Variants are planned side by side. */
const threads_count = 2;

/** Who goes where, when, by which way: a plan with its dates, what bounds it, and how sure it is. */
export async function rolloutCommand(
  folder: FolderFound,
  options: RolloutOptions,
  context: Context,
): Promise<ExitCode> {
  const asked = whatIsAsked(options);
  const keeping = await keepAsked(options, folder);
  if (options.pdf !== undefined && options.out === undefined) throw new WrongUse(words.pdfNeedsOut);
  if (typeof options.pdf === 'string') paperLanguageOf(options.pdf);
  if (options.out !== undefined) await refuseFolder(options.out, options.overwrite === true);
  const read = await readFolder(folder.path, context);
  refuseTaken(keeping, read.facts);
  const found = await foundAt(read.facts, asked, context);
  const bears = (problem: Problem) => isOfRollout(problem) || (found.replanned != null && isOfPlans(problem));
  const given = { ...found, problems: [...read.problems.filter(bears), ...found.problems] };
  const report = rolloutReport(given, spoken);
  context.progress.done();
  const sheet = new Sheet(context.look);
  rolloutPage(sheet, report);
  const planOn = words.planOn(spoken.numbers.date(report.day));
  const { name } = keeping;
  const kept = name === null ? null : await keepFound(found, { ...keeping, name }, folder);
  if (options.out !== undefined) {
    const crews = crewsOnPaper(report, found, name ?? planOn, spoken);
    await writeAll(options.out, report, crews);
    const tables = await writePlanTables(options.out, found, keeping, planOn);
    sheet.blank();
    if (options.pdf !== undefined) await writePdfs(options.out, { report, crews, pdf: options.pdf }, sheet);
    sheet.line(words.written(options.out));
    if (tables !== null) sheet.line(words.keep.tables(tables));
  }
  if (kept !== null && 'said' in kept) {
    sheet.blank();
    sheet.line(kept.said);
  }
  await write(context.around.stdout, options.json ? `${json(report)}\n` : sheet.text());
  const isRefused = kept !== null && 'problems' in kept;
  if (isRefused) tellProblems(kept.problems, context.around);
  const { blocker, done } = exitCodes;
  return isRefused || report.problems.some(({ severity }) => severity === 'blocker') ? blocker : done;
}

function whatIsAsked(options: RolloutOptions): Asked {
  if (options.seconds !== undefined && options.tries !== undefined) throw new WrongUse(words.either);
  const tries = wholeNumber(options.tries, '--tries', 1, 1e9);
  return {
    seconds: tries === null ? (wholeNumber(options.seconds, '--seconds', 1, 86_400) ?? usual.seconds) : null,
    ...{ tries, firstDay: dayOf(options.from), planId: options.plan ?? null, isAnew: options.anew === true },
    seed: wholeNumber(options.seed, '--seed', 0, 4_294_967_295) ?? usual.seed,
    futures_count: wholeNumber(options.futures, '--futures', 0, 100_000) ?? usual.futures_count,
    strong_seconds: wholeNumber(options.strongBound, '--strong-bound', 1, 86_400),
    isCompared: options.compare === true,
    today: dayOf(options.today) ?? dayOnClock(new Date()),
  };
}

function dayOf(text: string | undefined): DayIndex | null {
  const day = text === undefined ? null : readIsoDay(text);
  if (text !== undefined && day === null) throw new WrongUse(words.dayForm);
  return day;
}

function wholeNumber(text: string | undefined, option: string, least: number, most: number): number | null {
  if (text === undefined) return null;
  const value = Number(text);
  if (!/^\d+$/.test(text) || value < least || value > most) throw new WrongUse(words.number(option, least, most));
  return value;
}

async function foundAt(
  facts: ProgrammeFacts,
  asked: Asked,
  context: Context,
): Promise<RolloutGiven & OnPaperGiven & FoundToKeep> {
  const { today, firstDay, seed, isAnew } = asked;
  const followed = planFollowed(facts, asked.planId);
  const kit = readyKit(facts, today);
  const sites = [];
  const programme = readyProgramme(facts, { today });
  for (const site of rolloutSites(facts.sites, programme, kit)) {
    sites.push(site);
    context.progress.at(() => words.judging(sites.length, facts.sites.length));
  }
  const from = { today, firstDay, planId: followed?.planId ?? null };
  const ready = readyRollout(facts, sites, from);
  const bounds = await boundsOf(ready);
  const kept = keptOf({ ready, facts, today }, followed);
  const budget = budgetOf(asked, bounds, context);
  const found = searchedFrom(ready, { followed, kept, isAnew }, { budget, seed, costWithin_fraction });
  const linesOf = new Map(sites.map(({ site, lines }) => [site.siteId, lines]));
  return {
    ...found,
    ...{ eavewell: context.version, today, seed, facts, problem: ready.problem, leftOut: ready.leftOut },
    bounds: boundsAndStrong(bounds, ready.problem, found.outcome, asked.strong_seconds, context),
    futures: futuresOf(ready, found.plan, areasWeather(ready, facts.sites, programme), asked, context),
    legsOf: (crew, trip) => tripLegs(ready, found.outcome, crew, trip),
    haulLegsOf: (haul) => haulRunLegs(ready, haul),
    aboardOf: (crew, trip) => aboardOfTrip(ready.problem, found.plan.trips[crew]![trip]!.stops, linesOf, kit),
    aboardFor: (siteIds) => aboardForSites(siteIds, linesOf, kit),
    compared: asked.isCompared
      ? await comparedOf(
          ready.problem,
          readyRollout(facts, sites, { ...from, hasPossibleStores: true }).problem,
          found.plan,
          asked,
          context,
        )
      : null,
    problems: [...ready.problems, ...found.problems],
  };
}

/** The same with other crews, carriers and stores, two at a time, each searched on from the plan for as long again: one crew more is never worse for being searched for too shortly. */
async function comparedOf(
  problem: RolloutProblem,
  possible: RolloutProblem,
  start: RolloutPlan,
  { seed, seconds, tries }: Asked,
  { progress }: Context,
): Promise<RolloutGiven['compared']> {
  const work = threadWork(new URL('../threads/thread.js', import.meta.url), threads_count);
  let [done, all] = [0, 0];
  const each = (variants: readonly RolloutVariant[]) => {
    all += variants.length;
    return Promise.all(
      variants.map(async (variant) => {
        const wanted: PlanWanted = { problem: variant.problem, start, seed, seconds, tries };
        const made = await work.start<PlanMade>('plan', wanted).result;
        done += 1;
        progress.at(() => words.comparing(done, all));
        return { ...made, change: variant.change, crews_count: variant.problem.crews.length };
      }),
    );
  };
  try {
    const tried = await each(rolloutVariants(problem, possible));
    return [...tried, ...(await each(pairedVariants(possible, tried)))];
  } finally {
    await work.close();
  }
}

async function boundsOf({ problem }: ReadyRollout): Promise<WaitingBounds | null> {
  const solve = await loadSolveLinear();
  return waitingBounds(problem, { solve, mostColumns: usual.mostColumns });
}

/** So many seconds of the clock, or so many tries; told as it goes. */
function budgetOf({ seconds, tries }: Asked, bounds: WaitingBounds | null, { progress }: Context): SearchBudget {
  const report = ({ left_fraction, best_amount }: SearchProgress) =>
    progress.at(() =>
      words.searching(
        left_fraction,
        best_amount,
        bounds === null ? null : Math.max(0, best_amount / bounds.best.waiting - 1),
      ),
    );
  if (tries !== null) return { ...budgetOfTries(tries), report };
  const started = Date.now();
  return { left: () => 1 - (Date.now() - started) / (1000 * seconds!), report, stopped: () => false };
}

function futuresOf(
  { problem }: ReadyRollout,
  plan: RolloutGiven['plan'],
  weather: ReturnType<typeof areasWeather>,
  { seed, futures_count }: Asked,
  { progress }: Context,
): RolloutGiven['futures'] {
  if (futures_count === 0 || problem.jobs.length === 0) return null;
  return finishDates(problem, plan, {
    ...{ seed, replicates_count: futures_count, weather },
    budget: {
      left: () => 1,
      report: (done) => progress.at(() => words.drawing(Math.round(done * futures_count), futures_count)),
      stopped: () => false,
    },
  });
}
