import {
  type DayIndex,
  dayOnClock,
  isoDay,
  type Judged,
  type ReadyProgramme,
  readyProgramme,
  type SiteFacts,
  type WearFinding,
  wearOf,
} from '@eavewell/engine';
import { problemReport, wearReport } from '@eavewell/report';
import { type WearListReport, wearSchemaVersion } from '@eavewell/tables';
import { problemSentence } from '@eavewell/words';
import { type ExitCode, exitCodes } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { countProblems } from '../print/problemList.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import { wearSection } from '../print/treatmentSection.ts';
import { problemsSection, workingSection } from '../print/workings.ts';
import { json } from '../report/jsonReport.ts';
import type { Context } from './context.ts';
import { factsOfSite, gaugesOf } from './design.ts';
import type { FolderFound, FromData } from './folderOrData.ts';
import { readFolder } from './readFolder.ts';

const { wear: words } = spoken.commandLine;
const { numbers } = spoken;

/** What `wear` and `safety` may be asked with. */
export interface OfSitesOptions extends FromData {
  readonly site?: string;
  readonly json?: boolean;
}

/** What was found of one site. */
interface WearOfSite {
  readonly site: SiteFacts;
  readonly found: Judged<readonly WearFinding[]>;
}

/** Says when cartridges are due, the soonest first; of one site with the working. */
export async function wearCommand(
  { path: folder }: FolderFound,
  options: OfSitesOptions,
  context: Context,
): Promise<ExitCode> {
  const read = await readFolder(folder, context);
  const facts = options.site === undefined ? read.facts : factsOfSite(read.facts, options.site);
  const gauges = gaugesOf(facts);
  const today = dayOnClock(new Date());
  const ready = readyProgramme(facts, { today, ...(gauges && { gauges }) });
  const all = foundAt(facts.sites, ready, context);
  context.progress.done();
  if (options.json) await write(context.around.stdout, reported(all, today, context.version));
  else await write(context.around.stdout, printed(all, options.site !== undefined, today, context));
  const problems = all.flatMap(({ found }) => found.problems);
  return countProblems(problems).blocker > 0 ? exitCodes.blocker : exitCodes.done;
}

/** Site after site, those without a unit in use left out. */
function foundAt(sites: readonly SiteFacts[], ready: ReadyProgramme, { progress }: Context): readonly WearOfSite[] {
  return sites.flatMap((site, i) => {
    progress.at(() => words.working(i + 1, sites.length));
    const found = wearOf(site, ready);
    return found.finding === null ? [] : [{ site, found }];
  });
}

function reported(all: readonly WearOfSite[], today: DayIndex, eavewell: string): string {
  const sites = all.map(({ site: { siteId, name }, found: { finding, problems } }) => ({
    ...{ siteId, name, wear: finding!.map((one) => wearReport(one, spoken)) },
    problems: problems.map((one) => problemReport(one, spoken)),
  }));
  const report: WearListReport = { eavewell, schema: wearSchemaVersion, day: isoDay(today), sites };
  return `${json(report)}\n`;
}

function printed(all: readonly WearOfSite[], isOne: boolean, today: DayIndex, { look }: Context): string {
  const sheet = new Sheet(look);
  const [first] = all;
  if (first === undefined) sheet.line(isOne ? words.noneHere : words.none);
  else if (isOne) onePage(sheet, first);
  else listed(sheet, all, today);
  return sheet.text();
}

function onePage(sheet: Sheet, { site, found }: WearOfSite): void {
  sheet.line(`${site.name}, ${site.siteId}`);
  for (const finding of found.finding!) wearSection(sheet, finding);
  workingSection(sheet, found.working);
  problemsSection(sheet, found.problems);
}

interface SetOfSite {
  readonly site: SiteFacts;
  readonly set: WearFinding;
}

/** Those with a date by their middle day, then those without, each with what is missing. */
function listed(sheet: Sheet, all: readonly WearOfSite[], today: DayIndex): void {
  const sets = all.flatMap(({ site, found }) => found.finding!.map((set): SetOfSite => ({ site, set })));
  const dated = sets.filter(({ set }) => set.endsOn !== null);
  dated.sort((a, b) => a.set.endsOn!.p50 - b.set.endsOn!.p50 || a.set.endsOn!.p10 - b.set.endsOn!.p10);
  sheet.line(words.programme(sets.length, all.length));
  const overdue = dated.filter(({ set }) => set.endsOn!.p50 <= today).length;
  if (overdue > 0) sheet.line(words.overdue(overdue));
  if (dated.length > 0) {
    sheet.blank();
    sheet.table(
      words.columns.map((head) => ({ head, align: 'left' }) as const),
      dated.map(({ site, set }) => [
        `${site.name}, ${site.siteId}`,
        set.serial,
        numbers.date(set.endsOn!.p50),
        words.between(set.endsOn!.p10, set.endsOn!.p90),
      ]),
      0,
    );
  }
  if (dated.length < sets.length) undated(sheet, all, sets.length - dated.length);
}

function undated(sheet: Sheet, all: readonly WearOfSite[], count: number): void {
  sheet.heading(words.noDate(count));
  for (const { site, found } of all) {
    for (const set of found.finding!.filter(({ endsOn }) => endsOn === null)) {
      const problem = found.problems.find(({ code }) => code === set.unknownBy);
      const why = problem === undefined ? spoken.findings.wear(set) : problemSentence(problem, spoken).what;
      sheet.line(`${site.name}, ${site.siteId}, ${set.serial}: ${words.why(why)}`, 2, 2);
    }
  }
}
