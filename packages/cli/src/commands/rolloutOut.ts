import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { plainCsv, writeFileWhole } from '@eavewell/formats';
import { type CrewOfPaper, rolloutSheets } from '@eavewell/report';
import { folderTables, type RolloutReport } from '@eavewell/tables';
import { WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { rolloutPage } from '../print/rolloutPage.ts';
import { rolloutPapers } from '../print/rolloutPapers.ts';
import { rolloutPdfs } from '../print/rolloutPdfs.ts';
import { Sheet } from '../print/sheet.ts';
import { paperLook } from '../print/terminal.ts';
import { makeOutFolder } from './outFolder.ts';

const { rollout: words } = spoken.commandLine;

/** Files that are in the folder of a programme alone. */
const ofProgramme: readonly string[] = [folderTables.sites.file, 'settings.json', 'datapackage.json'];

/** A folder for the tables is no programme's, and replaces none that are there unless that is asked for. */
export async function refuseFolder(path: string, mayReplace: boolean): Promise<void> {
  for (const file of ofProgramme)
    if (await isThere(join(path, file))) throw new WrongUse(words.outIsProgramme(path, file));
  if (!mayReplace && (await isThere(join(path, 'plan.csv')))) throw new WrongUse(words.isThere(path));
  await makeOutFolder(path);
}

const isThere = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );

/** Tables for other programs, and texts for crews: without colours, whatever the screen has. */
export async function writeAll(out: string, report: RolloutReport, crews: readonly CrewOfPaper[]): Promise<void> {
  await removePapers(out);
  for (const one of rolloutSheets(report)) await writeFileWhole(join(out, `${one.name}.csv`), plainCsv(one));
  const page = new Sheet(paperLook);
  rolloutPage(page, report);
  const papers = [{ file: 'rollout.txt', text: page.text() }, ...rolloutPapers(report, crews, paperLook)];
  for (const { file, text } of papers) await writeFileWhole(join(out, file), text);
}

/** Manifests and itineraries to be printed; what has a letter no face has is told, and not written. */
export async function writePdfs(
  out: string,
  { report, crews, pdf }: { report: RolloutReport; crews: readonly CrewOfPaper[]; pdf: string | true },
  sheet: Sheet,
): Promise<void> {
  const options = { printedOn: report.day, printedAt: null };
  for await (const made of rolloutPdfs(crews, pdf === true ? spoken.code : pdf, options))
    if ('bytes' in made) await writeFileWhole(join(out, made.file), made.bytes);
    else for (const said of made.said) sheet.line(words.pdfNotMade(made.file, said));
}

/** Papers of an older plan must not lie among those of this one: somebody would load by them. */
async function removePapers(out: string): Promise<void> {
  for (const file of await readdir(out))
    if (/^((itinerary|manifest)-.+\.(txt|pdf)|changes\.csv)$/.test(file)) await rm(join(out, file));
}
