import { join } from 'node:path';
import {
  type DayOrder,
  dayOnClock,
  dayOrders,
  designSites,
  type Judged as JudgedBy,
  judgedSites,
  type Problem,
  type ProgrammeFacts,
  type ReadyProgramme,
  rainUnder,
  readIsoDay,
  readyProgramme,
  remediesOf,
  remediesTogether,
  type Scenario,
  type SiteDesign,
  type SiteFacts,
  type SiteRemedies,
  type SmallestRemedy,
  type StorageSeries,
  seriesOf,
  type WearFinding,
  wearOf,
} from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { faultFinder, faultNamer, programmeRemediesReport } from '@eavewell/report';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { writeProblemFiles } from '../files/problemFiles.ts';
import { verdictsHead, verdictsLine } from '../files/verdictsCsv.ts';
import { WholeFile, writeWhole } from '../files/wholeFile.ts';
import { spoken } from '../language.ts';
import { Exceptions } from '../print/exceptions.ts';
import { countProblems } from '../print/problemList.ts';
import { programmeHead } from '../print/programmeHead.ts';
import { programmeRemedySection } from '../print/remedies.ts';
import { ScenarioCounts, siteUnderSection } from '../print/scenario.ts';
import { Sheet } from '../print/sheet.ts';
import { hasOtherWater, sitePage } from '../print/sitePage.ts';
import { write } from '../print/terminal.ts';
import { JsonReport } from '../report/jsonReport.ts';
import { scenarioReport } from '../report/scenarioReport.ts';
import { seriesCsv } from '../report/seriesText.ts';
import type { Context } from './context.ts';
import type { FolderFound, FromData } from './folderOrData.ts';
import { nearestIds } from './nearestIds.ts';
import { makeOutFolder } from './outFolder.ts';
import { readFolder } from './readFolder.ts';
import { type ScenarioOptions, scenarioAsked } from './scenarioAsked.ts';

const { check, design, headings, progress: progressWords, trouble } = spoken.commandLine;

export interface DesignOptions extends ScenarioOptions, FromData {
  readonly site?: string;
  readonly out?: string;
  readonly json?: boolean;
  readonly series?: boolean;
  /** The day whose prices count. */
  readonly pricesOn?: string;
  /** The order of each day, in place of the settings'. */
  readonly order?: string;
}

type Wear = JudgedBy<readonly WearFinding[]>;

/** Where a design goes as it is made. */
interface Outputs {
  readonly report: JsonReport | null;
  readonly files: readonly WholeFile[];
  readonly verdicts: WholeFile | null;
}

/** Gives every site its verdict, on the screen, as JSON, as files. */
export async function designCommand(
  { path: folder, shown }: FolderFound,
  options: DesignOptions,
  context: Context,
): Promise<ExitCode> {
  if (options.series && !options.json && options.out === undefined) throw new WrongUse(trouble.seriesAlone);
  const pricesOn = options.pricesOn === undefined ? null : readIsoDay(options.pricesOn);
  if (options.pricesOn !== undefined && pricesOn === null) throw new WrongUse(trouble.pricesOnForm);
  const order = orderOf(options.order);
  const scenario = scenarioAsked(options);
  if (options.out !== undefined) await makeOutFolder(options.out);
  const read = await readFolder(folder, context);
  const all = inOrder(read.facts, order);
  const facts = options.site === undefined ? all : factsOfSite(all, options.site);
  const gauges = options.site === undefined ? null : gaugesOf(facts);
  const ready = readyProgramme(facts, { pricesOn, today: dayOnClock(new Date()), ...(gauges && { gauges }) });
  const outputs = await openOutputs(options, context);
  try {
    const judged = await judgeAll(
      facts,
      ready,
      faultNamer(faultFinder(read.problems), spoken),
      scenario,
      outputs,
      options,
      context,
    );
    context.progress.done();
    const problems = allProblems(read, ready, judged.problems);
    const together = remediesTogether(judged.smallest);
    const asked = scenario && scenarioReport(scenario, judged.under);
    const remedies = programmeRemediesReport(together, ready.market.day);
    await outputs.report?.close({ remedies, asked, problems: read.problems, notUsed: read.notUsed });
    for (const file of outputs.files) await file.close();
    const written = options.out === undefined ? [] : await writeProblemFiles(options.out, problems, read.notUsed);
    if (!options.json) {
      const paths = [...outputs.files.map((file) => file.path), ...written, ...judged.paths];
      await write(context.around.stdout, printed(shown, facts, ready, scenario, judged, problems, paths, context));
    }
    // With one site asked for, only what bears on it counts.
    const counted = judged.one?.problems ?? problems;
    return countProblems(counted).blocker > 0 ? exitCodes.blocker : exitCodes.done;
  } catch (error) {
    for (const file of outputs.files) await file.drop();
    throw error;
  }
}

/** The order asked for, or null where the settings decide. */
function orderOf(text: string | undefined): DayOrder | null {
  if (text === undefined) return null;
  const order = dayOrders.find((one) => one === text);
  if (order === undefined) throw new WrongUse(trouble.orderForm);
  return order;
}

function inOrder(facts: ProgrammeFacts, dayOrder: DayOrder | null): ProgrammeFacts {
  return dayOrder === null ? facts : { ...facts, settings: { ...facts.settings, dayOrder } };
}

/** The programme with one site. Its gauges all stay: they may be neighbours. */
export function factsOfSite(facts: ProgrammeFacts, siteId: string): ProgrammeFacts {
  const site = facts.sites.find((one) => one.siteId === siteId);
  if (!site)
    throw new WrongUse(
      design.unknownSite(
        siteId,
        nearestIds(
          siteId,
          facts.sites.map((one) => one.siteId),
        ),
      ),
    );
  return { ...facts, sites: [site] };
}

/** The gauges the sites use; null where a site without one may use any. */
export function gaugesOf({ sites }: ProgrammeFacts): ReadonlySet<string> | null {
  if (sites.some(({ gaugeId }) => gaugeId === null)) return null;
  return new Set(sites.flatMap(({ gaugeId }) => (gaugeId === null ? [] : [gaugeId])));
}

async function openOutputs(options: DesignOptions, { around }: Context): Promise<Outputs> {
  const files: WholeFile[] = [];
  const open = async (name: string) => {
    const file = await WholeFile.open(join(options.out!, name));
    files.push(file);
    return file;
  };
  const verdicts = options.out === undefined ? null : await open('verdicts.csv');
  const json = options.out === undefined ? null : await open('design.json');
  const sinks = [
    ...(options.json ? [(text: string) => write(around.stdout, text)] : []),
    ...(json ? [(text: string) => json.write(text)] : []),
  ];
  return { report: sinks.length === 0 ? null : new JsonReport(sinks), files, verdicts };
}

interface Judged {
  readonly exceptions: Exceptions;
  /** The site asked for with --site. */
  readonly one: SiteDesign | null;
  /** The same site under the scenario, where one is asked for. */
  readonly oneUnder: SiteDesign | null;
  readonly under: ScenarioCounts;
  /** What would mend it. */
  readonly remedies: SiteRemedies | null;
  /** When its cartridges are due; null where that is not told. */
  readonly wear: Wear | null;
  /** The smallest remedy of each site that is short or tight. */
  readonly smallest: readonly SmallestRemedy[];
  /** What was found in the sites' own facts. */
  readonly problems: readonly Problem[];
  /** Files of daily series. */
  readonly paths: readonly string[];
}

/** Judges site after site, handing each on before the next is begun. */
async function judgeAll(
  facts: ProgrammeFacts,
  ready: ReadyProgramme,
  named: (design: SiteDesign) => SiteDesign,
  scenario: Scenario | null,
  { report, verdicts }: Outputs,
  options: DesignOptions,
  context: Context,
): Promise<Judged> {
  await report?.open(context.version, facts, ready.gauges.values());
  await verdicts?.write(verdictsHead(scenario !== null));
  const exceptions = new Exceptions();
  const problems: Problem[] = [];
  const smallest: SmallestRemedy[] = [];
  const readyUnder = scenario && rainUnder(ready, scenario);
  const counts = new ScenarioCounts();
  let one: SiteDesign | null = null;
  let oneUnder: SiteDesign | null = null;
  let remedies: SiteRemedies | null = null;
  let wear: Wear | null = null;
  let done = 0;
  for (const { design: designed, ownProblems } of judgedSites(facts.sites, ready)) {
    const site = named(designed);
    remedies = remediesOf(facts.sites[done]!, ready, site);
    wear = report !== null || options.site !== undefined ? wearOf(facts.sites[done]!, ready, designed) : null;
    exceptions.add(site, remedies);
    if (remedies) smallest.push(smallestOf(site, remedies));
    problems.push(...ownProblems);
    const under = readyUnder && named(designOf(facts.sites[done]!, readyUnder));
    if (under) counts.add(site, under);
    if (options.site !== undefined) [one, oneUnder] = [site, under];
    await verdicts?.write(verdictsLine(site, remedies, under));
    const series = options.series ? seriesOf(facts.sites[done]!, ready) : undefined;
    await report?.site(site, remedies, wear, under, series);
    if (series && options.out !== undefined) await writeSeries(options.out, facts.sites[done]!, series);
    done++;
    const count = done;
    context.progress.at(() => progressWords.judging(count, facts.sites.length));
  }
  const paths = options.series && options.out !== undefined ? [join(options.out, 'series', '*.csv')] : [];
  return { exceptions, one, oneUnder, under: counts, remedies, wear, smallest, problems, paths };
}

/** One site's design. */
function designOf(site: SiteFacts, ready: ReadyProgramme): SiteDesign {
  return [...designSites([site], ready)][0]!;
}

function smallestOf({ siteId, people }: SiteDesign, { remedies, notMended }: SiteRemedies): SmallestRemedy {
  return { siteId, people, smallest: remedies[0] ?? null, notMended };
}

/** A file for each body of water, named by its first tank where there are several: ids have no dot, so no two names are the same. */
async function writeSeries(folder: string, { siteId }: SiteFacts, all: readonly StorageSeries[]): Promise<void> {
  for (const series of all) {
    const name = all.length === 1 ? siteId : `${siteId}.${series.tankIds[0]}`;
    await writeWhole(join(folder, 'series', `${name}.csv`), seriesCsv(series));
  }
}

function gaugeProblems(ready: ReadyProgramme): readonly Problem[] {
  return [...ready.gauges.values()].flatMap((gauge) => gauge.problems);
}

/** What reading found, what the gauges' records show, and what was found at the sites. */
function allProblems(read: ProgrammeRead, ready: ReadyProgramme, ofSites: readonly Problem[]): readonly Problem[] {
  return [...read.problems, ...gaugeProblems(ready), ...ofSites];
}

const noWear: Wear = { finding: null, problems: [], working: [] };

function printed(
  folder: string,
  facts: ProgrammeFacts,
  ready: ReadyProgramme,
  scenario: Scenario | null,
  { exceptions, one, oneUnder, under, remedies, wear, smallest }: Judged,
  problems: readonly Problem[],
  written: readonly string[],
  { look }: Context,
): string {
  const sheet = new Sheet(look);
  programmeHead(sheet, facts, ready.gauges);
  if (scenario) sheet.line(spoken.commandLine.scenario.standsBelow, 0, 2);
  const matched = problems.filter(({ code }) => code === 'columns.used').length;
  if (matched > 0) sheet.line(design.matchingUsed(matched), 0, 2);
  if (one) {
    sitePage(sheet, one, remedies, wear ?? noWear, facts.settings, ready.market, () => {
      if (scenario && oneUnder) siteUnderSection(sheet, one, oneUnder, scenario, ready.gauges.values());
    });
  } else {
    exceptions.print(sheet, folder);
    programmeRemedySection(sheet, remediesTogether(smallest), ready.market);
    if (scenario) under.print(sheet, scenario, ready.gauges.values());
    sheet.blank();
    const { blocker, warning, note } = countProblems(problems);
    if (problems.length > 0)
      sheet.line(`${check.counted(blocker, warning, note)}. ${design.seeProblems(folder)}`, 0, 2);
    sheet.heading(headings.cautions);
    const { drinking, otherWater, stand, plans } = spoken.cautions;
    const hasStands = problems.some(({ code }) => code.startsWith('stand.'));
    const due = [drinking, ...(hasOtherWater(problems) ? [otherWater] : []), ...(hasStands ? [stand] : []), plans];
    for (const caution of due) sheet.line(caution, 2);
  }
  if (written.length > 0) sheet.blank();
  for (const path of written) sheet.line(design.written(path), 0, 2);
  return sheet.text();
}
