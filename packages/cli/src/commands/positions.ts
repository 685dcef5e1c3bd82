import { basename } from 'node:path';
import type { Problem } from '@eavewell/engine';
import {
  type FilesToKeep,
  type MapRead,
  type PositionsOfFolder,
  readMapFile,
  readPositions,
  replaceFiles,
  withPositions,
  withWays,
} from '@eavewell/formats';
import {
  folderTables,
  matchPositions,
  type PositionMatch,
  type PositionsMatched,
  positionTargets,
  samePlace_km,
  type WayOfLine,
  wayEnds,
  wayLinesFile,
  waysKnown,
  waysOfLines,
} from '@eavewell/tables';
import { problemSentence } from '@eavewell/words';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { type MatchesShown, matchesSection, unmatchedSection, waysSection } from '../print/positionsPage.ts';
import { countProblems, problemList } from '../print/problemList.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';
import { type FromData, refuseWithData } from './folderOrData.ts';

const { maps: words, headings } = spoken.commandLine;

/** How far a position may move unquestioned, and how far from a line's end a site or place may be [km]. Ours. */
export const defaults = { far_km: 5, reach_km: 1 } as const;

export interface PositionsOptions extends FromData {
  readonly accept?: boolean;
  readonly acceptLikely?: boolean;
  readonly ways?: boolean;
  readonly far?: number;
  readonly reach?: number;
  readonly all?: boolean;
}

/** Tables and lines of a folder; a folder that is not there is wrong use. */
export async function readPlaces(folder: string): Promise<PositionsOfFolder> {
  const read = await readPositions(folder);
  if ('problem' in read) {
    const { what, todo } = problemSentence(read.problem, spoken);
    throw new WrongUse(`${what} ${todo}`);
  }
  return read;
}

/** The files that bear on a map, and the columns of them that do. */
const files: readonly string[] = [
  ...(['sites', 'gauges', 'places', 'ways'] as const).map((name): string => folderTables[name].file),
  wayLinesFile,
];
const columns = ['siteId', 'gaugeId', 'placeId', 'wayId', 'latitude_deg', 'longitude_deg'];

/** What is wrong in the tables so that a row is not there for the map, or its position is not known. */
function faultsOfTables({ problems }: PositionsOfFolder): readonly Problem[] {
  return problems.filter(
    ({ severity, place: { file, column } }) =>
      severity === 'blocker' && files.includes(file ?? '') && (column === undefined || columns.includes(column)),
  );
}

function sorted({ matches }: PositionsMatched): MatchesShown {
  const isThere = ({ moved_km, isDoubtful }: PositionMatch) =>
    !isDoubtful && moved_km !== null && moved_km <= samePlace_km;
  const open = matches.filter((match) => !isThere(match));
  return {
    sure: open.filter(({ by, isDoubtful }) => !isDoubtful && by !== 'likely'),
    likely: open.filter(({ by, isDoubtful }) => !isDoubtful && by === 'likely'),
    doubtful: open.filter(({ isDoubtful }) => isDoubtful),
    already: matches.length - open.length,
  };
}

/** The lines as ways; an end may be where the map puts a site, if that is to be set. */
function waysOf(read: PositionsOfFolder, map: MapRead, file: string, set: readonly PositionMatch[], reach_km: number) {
  const moved = new Map(set.map(({ target, point }) => [`${target.table} ${target.id}`, point.position]));
  const targets = positionTargets(read.tables).map((target) => ({
    ...target,
    position: moved.get(`${target.table} ${target.id}`) ?? target.position,
  }));
  return waysOfLines(map.lines, waysKnown(read.tables), wayEnds(targets), file, reach_km);
}

interface Planned {
  readonly set: readonly PositionMatch[];
  readonly ways: readonly WayOfLine[];
}

/** Writes what was accepted: all of it, or, where one file cannot be changed surely, nothing. */
async function keep(folder: string, { set, ways }: Planned, read: PositionsOfFolder, sheet: Sheet) {
  const parts: FilesToKeep[] = [await withPositions(folder, set)];
  if (ways.length > 0) parts.push(await withWays(folder, ways, read.tables));
  const problems = parts.flatMap((part) => ('problem' in part ? [part.problem] : []));
  if (problems.length > 0) {
    problemList(sheet, problems, true);
    return problems;
  }
  for (const part of parts) {
    if ('problem' in part) continue;
    for (const path of await replaceFiles(folder, part.files)) {
      const table = (['sites', 'gauges', 'places'] as const).find((name) => path.endsWith(folderTables[name].file));
      const count = set.filter(({ target }) => target.table === table).length;
      sheet.line(table ? words.set(count, path) : words.kept(path), 0, 2);
    }
  }
  return problems;
}

function sayHowToAccept(sheet: Sheet, { sure, likely }: MatchesShown, ways: number): void {
  sheet.blank();
  if (sure.length + likely.length + ways === 0) {
    sheet.line(words.nothingToSet);
    return;
  }
  sheet.line(words.nothingWritten);
  if (sure.length + ways > 0) sheet.line(words.toAccept(sure.length, ways), 0, 2);
  if (likely.length > 0) sheet.line(words.toAcceptLikely(likely.length), 0, 2);
}

/** Reads a map, says what it would set in the tables, and sets it where that is asked for. */
export async function positionsCommand(
  folder: string,
  path: string,
  options: PositionsOptions,
  context: Context,
): Promise<ExitCode> {
  refuseWithData(options, { '--accept': options.accept, '--accept-likely': options.acceptLikely });
  const read = await readPlaces(folder);
  const map = await readMapFile(path);
  const file = basename(path);
  const all = options.all === true;
  const far_km = options.far ?? defaults.far_km;
  const matched = matchPositions(map.points, positionTargets(read.tables), file, { far_km });
  const shown = sorted(matched);
  const isAccepted = options.accept === true || options.acceptLikely === true;
  const set = [...shown.sure, ...(options.acceptLikely === true ? shown.likely : [])];
  const found = waysOf(read, map, file, set, options.reach ?? defaults.reach_km);
  const ways = options.ways === true ? found.ways : [];
  const sheet = new Sheet(context.look);
  if (map.kind !== null) sheet.heading(words.holds(file, words.kinds[map.kind], map.points.length, map.lines.length));
  if (map.points.length > 0) {
    matchesSection(sheet, shown, all);
    unmatchedSection(sheet, matched.unmatchedPoints, matched.unmatchedTargets, all);
  }
  if (options.ways === true) waysSection(sheet, ways, waysKnown(read.tables), all);
  else if (map.lines.length > 0) sheet.line(words.linesNotTaken(map.lines.length), 0, 2);
  const ofWays = options.ways === true ? found.problems : [];
  const problems: Problem[] = [...faultsOfTables(read), ...map.problems, ...matched.problems, ...ofWays];
  if (problems.length > 0) sheet.heading(headings.problems);
  problemList(sheet, problems, all);
  sheet.blank();
  if (isAccepted && set.length + ways.length > 0) problems.push(...(await keep(folder, { set, ways }, read, sheet)));
  else if (map.points.length + map.lines.length > 0) sayHowToAccept(sheet, shown, ways.length);
  if (ways.length > 0) sheet.line(words.waterCaution, 0, 2);
  await write(context.around.stdout, sheet.text());
  return countProblems(problems).blocker > 0 ? exitCodes.blocker : exitCodes.done;
}
