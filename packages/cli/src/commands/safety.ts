import {
  type CupRanked,
  compareCups,
  type DayIndex,
  dayOnClock,
  isoDay,
  judgedSites,
  type MayDrink,
  type ReadyProgramme,
  readyProgramme,
  type SafetyFinding,
  type SiteDesign,
  type SiteFacts,
  wearOf,
} from '@eavewell/engine';
import { faultFinder, faultNamer, problemReport, safetyReport, siteCup } from '@eavewell/report';
import { type SafetyListReport, type SiteCup, safetySchemaVersion } from '@eavewell/tables';
import { type ExitCode, exitCodes } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { safetySection } from '../print/safetySection.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import { problemsSection, workingSection } from '../print/workings.ts';
import { json } from '../report/jsonReport.ts';
import type { Context } from './context.ts';
import { factsOfSite, gaugesOf } from './design.ts';
import type { FolderFound } from './folderOrData.ts';
import { readFolder } from './readFolder.ts';
import type { OfSitesOptions } from './wear.ts';

const { safety: words } = spoken.commandLine;
const { numbers } = spoken;

/** The worst first. */
const mayDrinkOrder: readonly MayDrink[] = ['no', 'notShown', 'yes'];

/** Rooms whose working and problems tell of what is drunk. */
const rooms = /^(?:safety|waterTests|chlorine)\./;

/** A site whose safety is judged. */
interface SafetyOfSite {
  readonly design: SiteDesign;
  readonly safety: SafetyFinding;
  /** What a list tells of it, with sets of cartridges that are overdue. */
  readonly cup: SiteCup;
}

/** Says whether the water of sites is fit to drink, the worst first; of one site with the working. */
export async function safetyCommand(
  { path: folder }: FolderFound,
  options: OfSitesOptions,
  context: Context,
): Promise<ExitCode> {
  const read = await readFolder(folder, context);
  const facts = options.site === undefined ? read.facts : factsOfSite(read.facts, options.site);
  const gauges = gaugesOf(facts);
  const today = dayOnClock(new Date());
  const ready = readyProgramme(facts, { today, ...(gauges && { gauges }) });
  const named = faultNamer(faultFinder(read.problems), spoken);
  const all = judgedAt(facts.sites, ready, named, context);
  context.progress.done();
  const sites = facts.sites.length;
  if (options.json) await write(context.around.stdout, reported(all, today, context.version));
  else await write(context.around.stdout, printed(all, sites, options.site !== undefined, context));
  return all.some(({ safety }) => safety.mayDrink === 'no') ? exitCodes.blocker : exitCodes.done;
}

function judgedAt(
  sites: readonly SiteFacts[],
  ready: ReadyProgramme,
  named: (design: SiteDesign) => SiteDesign,
  { progress }: Context,
): readonly SafetyOfSite[] {
  const found: SafetyOfSite[] = [];
  let done = 0;
  for (const { design: designed } of judgedSites(sites, ready)) {
    const design = named(designed);
    const site = sites[done]!;
    const at = ++done;
    progress.at(() => words.working(at, sites.length));
    if (design.safety === null) continue;
    const wear = wearOf(site, ready, designed).finding;
    found.push({ design, safety: design.safety, cup: siteCup(design, wear, ready.today ?? null)! });
  }
  return found.sort(worstFirst);
}

/** The worst first, as compareCups has it. */
function worstFirst(a: SafetyOfSite, b: SafetyOfSite): number {
  return compareCups(rankedOf(a), rankedOf(b));
}

function rankedOf({ design: { stations, people }, safety: { mayDrink, reasons, risks } }: SafetyOfSite): CupRanked {
  return {
    ...{ mayDrink, reasons, verdict: stations.cup, people },
    burden_DALY_per_person_per_year: risks[0]?.DALYHigh_per_person_per_year ?? null,
  };
}

const problemsOf = ({ problems }: SiteDesign) => problems.filter(({ code }) => rooms.test(code));

function reported(all: readonly SafetyOfSite[], today: DayIndex, eavewell: string): string {
  const sites = all.map(({ design, safety }) => ({
    ...{ siteId: design.siteId, name: design.name, safety: safetyReport(safety, spoken) },
    problems: problemsOf(design).map((one) => problemReport(one, spoken)),
  }));
  const report: SafetyListReport = { eavewell, schema: safetySchemaVersion, day: isoDay(today), sites };
  return `${json(report)}\n`;
}

function printed(all: readonly SafetyOfSite[], sites: number, isOne: boolean, { look }: Context): string {
  const sheet = new Sheet(look);
  const [first] = all;
  if (first === undefined) sheet.line(isOne ? words.noneHere : words.none);
  else if (isOne) onePage(sheet, first);
  else listed(sheet, all, sites);
  return sheet.text();
}

function onePage(sheet: Sheet, { design, safety }: SafetyOfSite): void {
  sheet.verdict(design.stations.cup, [`${design.name}, ${design.siteId}`]);
  safetySection(sheet, safety);
  workingSection(
    sheet,
    design.working.filter(({ code }) => rooms.test(code)),
  );
  problemsSection(sheet, problemsOf(design));
}

function listed(sheet: Sheet, all: readonly SafetyOfSite[], sites: number): void {
  sheet.line(words.programme(all.length, sites));
  for (const mayDrink of mayDrinkOrder) {
    const group = all.filter(({ safety }) => safety.mayDrink === mayDrink);
    if (group.length === 0) continue;
    sheet.heading(words.groups(mayDrink, group.length));
    for (const { design, safety, cup } of group) {
      const { last } = safety.waterTests;
      const tested = last === null ? words.noTest : words.lastTest(numbers.date(last.takenOn));
      sheet.verdict(design.stations.cup, [
        `${design.name}, ${design.siteId}: ${tested}`,
        spoken.findings.safety(safety),
        ...(last === null && safety.waterTests.unusable.length === 0
          ? []
          : [spoken.findings.waterTests(safety.waterTests)]),
        ...(cup.notes.includes('setOverdue') && mayDrink === 'yes' ? [words.setOverdue] : []),
        ...(cup.needsTest.length === 0 ? [] : [words.testWanted(cup.needsTest)]),
      ]);
    }
  }
  sheet.blank();
  const wanting = all.filter(({ cup }) => cup.needsTest.length > 0).length;
  if (wanting > 0) sheet.line(words.needsTest(wanting), 0, 2);
  if (all.length < sites) sheet.line(words.notJudged(sites - all.length), 0, 2);
  sheet.line(words.testFails, 0, 2);
}
