import type { Problem, RainReading } from '@eavewell/engine';
import {
  type FileMatching,
  KeptReadings,
  type Matchings,
  matchingOf,
  mostKept,
  rain,
  readRain,
  tableProblem,
} from '@eavewell/tables';
import { nearFile } from './nearFile.ts';
import { plainRain } from './plainRain.ts';
import type { RainFileRead } from './rainFileRead.ts';
import { readCsvFile } from './readCsvFile.ts';
import { fileSize, readFileBytes } from './readFileBytes.ts';
import { readDlyFile, readStationCsv } from './readStationFile.ts';
import { isStationCsv } from './stationCsv.ts';
import { streamRain } from './streamRain.ts';

/** A table of rain larger than this is streamed [byte]: 13 years of hours, or 60 gauges in one, are smaller. Ours. */
export const streamedFrom_bytes = 32e6;

/**
 * Which readings stand in the bytes of a rain file, whatever is wrong with it?
 *
 * @param bytes - the file [byte]
 * @param gaugeId - the gauge [text]
 * @param file - its path within the folder [text]
 * @param matching - what was accepted for its headers
 * @returns readings, problems and what was not used
 * @definition ours
 */
export function fullRain(
  bytes: Uint8Array,
  gaugeId: string,
  file: string,
  matching: FileMatching | null = null,
): RainFileRead {
  const columns = [...Object.keys(rain.columns), ...(matching?.columns.keys() ?? [])];
  const asked = { file, columns, needed: true, place: { gaugeId } };
  const csv = readCsvFile(bytes, asked);
  if (csv.header.length === 0) return { ...nothing, file, problems: csv.problems, notUsed: csv.notUsed };
  if (isStationCsv(csv.header)) return readStationCsv(csv, gaugeId, file);
  const read = readRain(gaugeId, csv.header, csv.rows, { file, decimalComma: csv.decimalComma, matching });
  return {
    file,
    readings: read.readings,
    problems: [...csv.problems, ...read.problems],
    notUsed: [...csv.notUsed, ...read.notUsed],
    rows: read.count + csv.notUsed.length,
    unlistedRows: read.unlistedRows,
  };
}

/** Readings in the order of their rows, from two lists that each are. */
function byRow(plain: readonly RainReading[], others: readonly RainReading[]): readonly RainReading[] {
  if (others.length === 0) return plain;
  const merged: RainReading[] = [];
  let i = 0;
  for (const reading of plain) {
    while (i < others.length && others[i]!.row < reading.row) merged.push(others[i++]!);
    merged.push(reading);
  }
  while (i < others.length) merged.push(others[i++]!);
  return merged;
}

/**
 * Which readings stand in the bytes of a rain file of the ordinary form? Only its odd lines go through the reader of faults.
 *
 * @param bytes - the file [byte]
 * @param gaugeId - the gauge [text]
 * @param file - its path within the folder [text]
 * @returns readings, problems and what was not used; null where the file is not of this form
 * @law gives what fullRain gives, or null
 * @definition ours
 */
export function plainRainRead(bytes: Uint8Array, gaugeId: string, file: string): RainFileRead | null {
  const lines = plainRain(bytes);
  if (lines === null) return null;
  const odd = readRain(gaugeId, Object.keys(rain.columns), lines.odd, { file, decimalComma: false });
  return {
    file,
    readings: byRow(lines.readings, odd.readings),
    problems: odd.problems,
    notUsed: odd.notUsed,
    rows: lines.readings.length + odd.count,
    unlistedRows: odd.unlistedRows,
  };
}

const nothing = { readings: [], notUsed: [], rows: 0, unlistedRows: 0 } as const;

function noReadings(file: string, problem: Problem): RainFileRead {
  return { ...nothing, file, problems: [problem] };
}

/** What a table of rain comes to, read whole. */
function wholeRain(bytes: Uint8Array, gaugeId: string, file: string, matching: FileMatching | null): RainFileRead {
  const plain = matching === null ? plainRainRead(bytes, gaugeId, file) : null;
  const read = plain ?? fullRain(bytes, gaugeId, file, matching);
  if (read.readings.length <= mostKept) return read;
  const kept = new KeptReadings();
  for (const reading of read.readings) kept.add(reading);
  return { ...read, readings: kept.readings, problems: [...read.problems, ...kept.problems({ file, gaugeId })] };
}

/** What is asked of the reader of rain files. */
export interface RainAsked {
  readonly matchings: Matchings;
  /** Tables larger than this are streamed [byte]. */
  readonly streamedFrom_bytes?: number;
  /** How much of a streamed file is held at a time [byte]. */
  readonly piece_bytes?: number;
  /** The names in the folder and in its folder `rain`, to propose one where a file is missing [text]. */
  readonly entries: readonly string[];
  readonly rainEntries: readonly string[];
}

/** What the system said, half way through a file. */
function unread(file: string, error: unknown): RainFileRead {
  const reason = (error as NodeJS.ErrnoException).code;
  if (reason === undefined) throw error;
  const facts = { value: file, expected: 'a file that can be read', reason };
  return noReadings(file, tableProblem('file.unreadable', { file }, facts));
}

/** A gauge's file that is not there, with one that is nearly it. */
function missing(gaugeId: string, file: string, asked: RainAsked): Problem {
  const name = `${gaugeId}.csv`;
  const inRain = nearFile(name, asked.rainEntries);
  const inFolder = asked.entries.find((entry) => entry.toLowerCase() === name.toLowerCase());
  const likely = inRain === null ? (inFolder ?? '') : `rain/${inRain}`;
  return tableProblem('rainFile.missing', { file, gaugeId }, { value: file, expected: file, likely });
}

/**
 * Which readings has a gauge? From its table of days, of which plain ones go the fast way and large ones are streamed, or
 * from a station file of GHCN-Daily.
 *
 * @param folder - the programme folder [text]
 * @param gaugeId - the gauge, an id that may name a file [text]
 * @param asked - what was accepted for headers, and the names there are
 * @returns readings, problems and what was not used
 * @problem rainFile.missing - the gauge has no file, so no rain
 * @problem rainFile.two_files - it has one of each kind, and nobody can tell which holds; neither is used
 * @definition ours: docs/decisions/0014-station-files.md
 */
export async function readRainFile(folder: string, gaugeId: string, asked: RainAsked): Promise<RainFileRead> {
  const [file, dly] = [`rain/${gaugeId}.csv`, `rain/${gaugeId}.dly`];
  const matching = matchingOf(asked.matchings, file);
  const table = await fileSize(folder, file);
  const station = await fileSize(folder, dly);
  if (table.size_bytes !== null && station.size_bytes !== null) {
    const facts = { value: file, other: dly, expected: 'one file for a gauge' };
    return noReadings(file, tableProblem('rainFile.two_files', { file, gaugeId }, facts));
  }
  if (table.size_bytes !== null && table.size_bytes > (asked.streamedFrom_bytes ?? streamedFrom_bytes)) {
    const streamed = await streamRain(folder, gaugeId, file, matching, asked.piece_bytes).catch((error: unknown) =>
      unread(file, error),
    );
    if (streamed !== null) return streamed;
  }
  const found = table.size_bytes === null ? null : await readFileBytes(folder, file);
  if (found?.bytes) return wholeRain(found.bytes, gaugeId, file, matching);
  const foundDly = station.size_bytes === null ? null : await readFileBytes(folder, dly);
  if (foundDly?.bytes) return readDlyFile(foundDly.bytes, gaugeId, dly);
  const refused = [found, foundDly, table, station].flatMap((one) => (one && 'problem' in one ? [one.problem] : []));
  const refusal = refused.find((problem) => problem !== null);
  if (refusal) return noReadings(refusal.place.file!, { ...refusal, place: { ...refusal.place, gaugeId } });
  return noReadings(file, missing(gaugeId, file, asked));
}
