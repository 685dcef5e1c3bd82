import type { Problem, RainReading } from '@eavewell/engine';
import { rain, readRain, tableProblem } from '@eavewell/tables';
import { plainRain } from './plainRain.ts';
import type { RainFileRead } from './rainFileRead.ts';
import { readCsvFile } from './readCsvFile.ts';
import { readFileBytes } from './readFileBytes.ts';
import { readDlyFile, readStationCsv } from './readStationFile.ts';
import { isStationCsv } from './stationCsv.ts';

/**
 * Which readings stand in the bytes of a rain file, whatever is wrong with it?
 *
 * @param bytes - the file [byte]
 * @param gaugeId - the gauge [text]
 * @param file - its path within the folder [text]
 * @returns readings, problems and what was not used
 * @definition ours
 */
export function fullRain(bytes: Uint8Array, gaugeId: string, file: string): RainFileRead {
  const asked = { file, columns: Object.keys(rain.columns), needed: true, place: { gaugeId } };
  const csv = readCsvFile(bytes, asked);
  if (csv.header.length === 0) return { file, readings: [], problems: csv.problems, notUsed: csv.notUsed, rows: 0 };
  if (isStationCsv(csv.header)) return readStationCsv(csv, gaugeId, file);
  const read = readRain(gaugeId, csv.header, csv.rows, { file, decimalComma: csv.decimalComma });
  return {
    file,
    readings: read.readings,
    problems: [...csv.problems, ...read.problems],
    notUsed: [...csv.notUsed, ...read.notUsed],
    rows: read.count + csv.notUsed.length,
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
  };
}

function noReadings(file: string, problem: Problem): RainFileRead {
  return { file, readings: [], problems: [problem], notUsed: [], rows: 0 };
}

/**
 * Which readings has a gauge? From its table of days, of which plain ones go the fast way, or from a station file of GHCN-Daily.
 *
 * @param folder - the programme folder [text]
 * @param gaugeId - the gauge, an id that may name a file [text]
 * @returns readings, problems and what was not used
 * @problem rainFile.missing - the gauge has no file, so no rain
 * @problem rainFile.two_files - it has one of each kind, and nobody can tell which holds; neither is used
 * @definition ours: docs/decisions/0014-station-files.md
 */
export async function readRainFile(folder: string, gaugeId: string): Promise<RainFileRead> {
  const [file, dly] = [`rain/${gaugeId}.csv`, `rain/${gaugeId}.dly`];
  const table = await readFileBytes(folder, file);
  const station = await readFileBytes(folder, dly);
  if (table.bytes !== null && station.bytes !== null) {
    const facts = { value: file, other: dly, expected: 'one file for a gauge' };
    return noReadings(file, tableProblem('rainFile.two_files', { file, gaugeId }, facts));
  }
  if (table.bytes !== null) return plainRainRead(table.bytes, gaugeId, file) ?? fullRain(table.bytes, gaugeId, file);
  if (station.bytes !== null) return readDlyFile(station.bytes, gaugeId, dly);
  const refused = table.problem ?? station.problem;
  if (refused) return noReadings(refused.place.file!, { ...refused, place: { ...refused.place, gaugeId } });
  return noReadings(file, tableProblem('rainFile.missing', { file, gaugeId }, { value: file, expected: file }));
}
