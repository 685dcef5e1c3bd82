import { stat } from 'node:fs/promises';
import { basename, dirname, extname, resolve } from 'node:path';
import { type MapKind, writeFileWhole, writtenMap } from '@eavewell/formats';
import { mapContent, wayLinesFile } from '@eavewell/tables';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';
import type { FromData } from './folderOrData.ts';
import { readPlaces } from './positions.ts';

const { maps: words } = spoken.commandLine;

const kinds: readonly MapKind[] = ['geojson', 'kml', 'kmz', 'gpx'];
const fewNames = 10;

export interface MapOptions extends FromData {
  readonly out?: string;
  readonly replace?: boolean;
}

/** What form the file is to have; refuses a name that does not say, and one that is taken. */
async function kindOf(folder: string, { out, replace }: MapOptions): Promise<{ path: string; kind: MapKind }> {
  if (out === undefined || out === '') throw new WrongUse(words.trouble.outMissing);
  const ending = extname(out).slice(1).toLowerCase();
  const kind = kinds.find((one) => one === ending);
  if (kind === undefined) throw new WrongUse(words.trouble.ending(out));
  if (basename(out) === wayLinesFile && resolve(dirname(out)) === resolve(folder))
    throw new WrongUse(words.trouble.isLines);
  const found = await stat(out).catch(() => null);
  if (found !== null && replace !== true) throw new WrongUse(words.trouble.isThere(out));
  return { path: out, kind };
}

/** Writes the sites, gauges, places and ways of a folder as a map. */
export async function mapCommand(folder: string, options: MapOptions, context: Context): Promise<ExitCode> {
  const { path, kind } = await kindOf(folder, options);
  const { programme, tables, lines } = await readPlaces(folder);
  const content = mapContent(tables, lines);
  const { points, ways, withoutPosition, withoutLine } = content;
  const sheet = new Sheet(context.look);
  const isEmpty = points.length + ways.length === 0;
  if (isEmpty) sheet.line(words.nothingToShow);
  else {
    const creator = `eavewell ${context.version}`;
    await writeFileWhole(path, writtenMap(content, kind, { title: programme, creator, people: words.people }));
    sheet.line(words.onMap(points.length, ways.length, path), 0, 2);
  }
  if (withoutPosition.length > 0)
    sheet.line(words.notOnMap(withoutPosition.length, words.few(withoutPosition, fewNames)), 0, 2);
  if (withoutLine.length > 0)
    sheet.line(words.waysNotOnMap(withoutLine.length, words.few(withoutLine, fewNames)), 0, 2);
  await write(context.around.stdout, sheet.text());
  return isEmpty ? exitCodes.blocker : exitCodes.done;
}
