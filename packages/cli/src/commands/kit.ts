import { stat } from 'node:fs/promises';
import {
  type Carrier,
  costAtSite,
  costOfProgramme,
  type DayIndex,
  dayOnClock,
  kitAtSite,
  kitsBought,
  kitsCarried,
  loadsBy,
  type Piece,
  type Problem,
  type ProgrammeFacts,
  piecesOfKit,
  type ReadyKit,
  readIsoDay,
  readyKit,
  readyProgramme,
  type SiteCost,
  type SiteKit,
  setDatesAt,
  setsOf,
  stowedIn,
} from '@eavewell/engine';
import { plainWorkbook, writeFileWhole } from '@eavewell/formats';
import { type KitGiven, kitReport, kitSheets, siteKitReport } from '@eavewell/report';
import type { KitReport, SiteKitReport } from '@eavewell/tables';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { kitsPage } from '../print/kitsPage.ts';
import { countProblems } from '../print/problemList.ts';
import { Sheet } from '../print/sheet.ts';
import { siteKitPage } from '../print/siteKitPage.ts';
import { write } from '../print/terminal.ts';
import { tripPage } from '../print/tripPage.ts';
import { json } from '../report/jsonReport.ts';
import type { Context } from './context.ts';
import { factsOfSite, gaugesOf } from './design.ts';
import type { FolderFound, FromData } from './folderOrData.ts';
import { nearestIds } from './nearestIds.ts';
import { readFolder } from './readFolder.ts';

const { check, design, kit: words } = spoken.commandLine;

export interface KitOptions extends FromData {
  /** As often as it was typed. */
  readonly site?: readonly string[];
  readonly neededOn?: string;
  readonly by?: string;
  readonly workbook?: string;
  readonly overwrite?: boolean;
  readonly json?: boolean;
}

/** What the command was asked, once it is known to make sense. */
interface Asked {
  readonly sites: readonly string[] | null;
  readonly carriers: readonly Carrier[];
  readonly carrier: string | null;
  readonly neededOn: DayIndex | null;
  readonly today: DayIndex;
}

/** Which parts sites need, what is bought, how it is carried and what it costs: of the programme, of one site, of a trip. */
export async function kitCommand(
  { path: folder, shown }: FolderFound,
  options: KitOptions,
  context: Context,
): Promise<ExitCode> {
  const neededOn = options.neededOn === undefined ? null : readIsoDay(options.neededOn);
  if (options.neededOn !== undefined && neededOn === null) throw new WrongUse(words.neededOnForm);
  if (options.workbook !== undefined) await refuseWorkbook(options.workbook, options.overwrite === true);
  const read = await readFolder(folder, context);
  const asked: Asked = {
    ...carriersAsked(read.facts, options.by),
    ...{ sites: sitesAsked(options.site), neededOn, today: dayOnClock(new Date()) },
  };
  const facts = factsAsked(read.facts, asked.sites);
  const report = kitReport(await foundAt(facts, asked, context), spoken);
  context.progress.done();
  if (options.workbook !== undefined) {
    const names = new Map(facts.kit.carriers.map(({ carrierId, name }) => [carrierId, name]));
    await writeFileWhole(options.workbook, await plainWorkbook(kitSheets(report, names, spoken)));
  }
  if (options.json) await write(context.around.stdout, `${json(report)}\n`);
  else
    await write(
      context.around.stdout,
      printed(report, { facts, problems: read.problems, shown, workbook: options.workbook }, context),
    );
  return hasBlocker(report) ? exitCodes.blocker : exitCodes.done;
}

/** A workbook is named as one, and replaces nothing unless that is asked for. */
async function refuseWorkbook(path: string, mayReplace: boolean): Promise<void> {
  if (!path.toLowerCase().endsWith('.xlsx')) throw new WrongUse(words.ending(path));
  const found = await stat(path).catch(() => null);
  if (found !== null && (!mayReplace || found.isDirectory())) throw new WrongUse(words.isThere(path));
}

function sitesAsked(sites: readonly string[] | undefined): readonly string[] | null {
  if (sites === undefined) return null;
  const twice = sites.find((id, at) => sites.indexOf(id) !== at);
  if (twice !== undefined) throw new WrongUse(words.twice(twice));
  return sites;
}

function carriersAsked({ kit }: ProgrammeFacts, by: string | undefined): Pick<Asked, 'carriers' | 'carrier'> {
  if (by === undefined) return { carriers: kit.carriers, carrier: null };
  if (kit.carriers.length === 0) throw new WrongUse(words.noCarriers);
  const carriers = kit.carriers.filter(({ carrierId }) => carrierId === by);
  const ids = kit.carriers.map(({ carrierId }) => carrierId);
  if (carriers.length === 0) throw new WrongUse(words.unknownCarrier(by, nearestIds(by, ids)));
  return { carriers, carrier: by };
}

/** Of a trip: its sites in the order they are come to. */
function factsAsked(facts: ProgrammeFacts, sites: readonly string[] | null): ProgrammeFacts {
  return sites === null ? facts : { ...facts, sites: sites.flatMap((id) => factsOfSite(facts, id).sites) };
}

async function foundAt(facts: ProgrammeFacts, asked: Asked, context: Context): Promise<KitGiven> {
  const { today, sites, carrier, neededOn } = asked;
  const gauges = sites === null ? null : gaugesOf(facts);
  const ready = readyKit(facts, today);
  const rain = readyProgramme(facts, { today, ...(gauges && { gauges }) });
  const found = { kits: [] as SiteKit[], reports: [] as SiteKitReport[], carried: [] as KitGiven['carried'][number][] };
  const costs: SiteCost[] = [];
  const stops: { siteId: string; pieces: readonly Piece[] }[] = [];
  for (const [at, site] of facts.sites.entries()) {
    context.progress.at(() => words.working(at + 1, facts.sites.length));
    const kit = kitAtSite(site, ready);
    const pieces = piecesOfKit(kit, ready);
    const loads = asked.carriers.map((one) => loadsBy(pieces, one, ready));
    const cost = costAtSite(site, setsOf(site, { finding: setDatesAt(site, rain) }, ready), ready);
    const full = { loads: sites !== null || carrier !== null, working: sites !== null };
    found.kits.push(kit);
    found.reports.push(siteKitReport({ site, kit, loads, cost }, ready, full, spoken));
    if (pieces.length > 0) found.carried.push(kitsCarried(pieces, ready));
    costs.push(cost);
    stops.push({ siteId: site.siteId, pieces });
  }
  return {
    ...{ eavewell: context.version, today, neededOn, asked: { sites, carrier }, ready },
    bought: kitsBought(found.kits, ready, neededOn),
    carried: found.carried,
    trip: sites === null || sites.length < 2 ? null : tripOf(stops, asked, ready),
    cost: costOfProgramme(costs, ready),
    sites: found.reports,
  };
}

/** All pieces of the trip together, by boat or truck unless a carrier was named. */
function tripOf(
  stops: readonly { readonly siteId: string; readonly pieces: readonly Piece[] }[],
  { carriers, carrier }: Asked,
  ready: ReadyKit,
): KitGiven['trip'] {
  const pieces = stops.flatMap((stop) => stop.pieces);
  const taking = carriers.filter(({ mode }) => carrier !== null || mode === 'boat' || mode === 'truck');
  return {
    stops: stops.map(({ siteId }) => siteId),
    carriers: taking.map((one) => {
      const loads = loadsBy(pieces, one, ready);
      return { loads, stowed: stowedIn(stops, loads) };
    }),
  };
}

/** What is told beside the report. */
interface Beside {
  readonly facts: ProgrammeFacts;
  /** Of the tables. */
  readonly problems: readonly Problem[];
  readonly shown: string;
  readonly workbook: string | undefined;
}

function printed(report: KitReport, { facts, problems, shown, workbook }: Beside, { look }: Context): string {
  const sheet = new Sheet(look);
  if (facts.kit.rules.length === 0) sheet.line(words.noRules);
  if (facts.kit.carriers.length === 0) sheet.line(words.noCarriersYet);
  const isAll = report.asked.sites === null;
  const [only] = report.sites;
  if (report.trip !== null) tripPage(sheet, report);
  else if (!isAll && only !== undefined) siteKitPage(sheet, only, report);
  else kitsPage(sheet, report, facts, shown);
  if (problems.length > 0) {
    const { blocker, warning, note } = countProblems(problems);
    sheet.blank();
    sheet.line(`${check.counted(blocker, warning, note)}. ${design.seeProblems(shown)}`, 0, 2);
  }
  if (workbook !== undefined) {
    sheet.blank();
    sheet.line(words.written(workbook), 0, 2);
  }
  return sheet.text();
}

function hasBlocker({ problems, sites, trip }: KitReport): boolean {
  const loads = [...sites.flatMap((site) => site.loads ?? []), ...(trip?.carriers.map((one) => one.loads) ?? [])];
  const all = [...problems, ...sites.flatMap((site) => site.problems), ...loads.flatMap((one) => one.problems)];
  return all.some(({ severity }) => severity === 'blocker');
}
