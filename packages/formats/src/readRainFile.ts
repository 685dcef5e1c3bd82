import type { Problem, RainReading } from '@eavewell/engine';
import { type NotUsed, rain, readRain, tableProblem } from '@eavewell/tables';
import { plainRain } from './plainRain.ts';
import { readCsvFile } from './readCsvFile.ts';
import { readFileBytes } from './readFileBytes.ts';

/** What one gauge's file came to. */
export interface RainFileRead {
  readonly readings: readonly RainReading[];
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  readonly rows: number;
}

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
  if (csv.header.length === 0) return { readings: [], problems: csv.problems, notUsed: csv.notUsed, rows: 0 };
  const read = readRain(gaugeId, csv.header, csv.rows, { file, decimalComma: csv.decimalComma });
  return {
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
    readings: byRow(lines.readings, odd.readings),
    problems: odd.problems,
    notUsed: odd.notUsed,
    rows: lines.readings.length + odd.count,
  };
}

/**
 * Which readings has a gauge? Plain files go the fast way; the rest are read in full.
 *
 * @param folder - the programme folder [text]
 * @param gaugeId - the gauge, an id that may name a file [text]
 * @returns readings, problems and what was not used
 * @problem rainFile.missing - the gauge has no file, so no rain
 * @definition ours
 */
export async function readRainFile(folder: string, gaugeId: string): Promise<RainFileRead> {
  const file = `rain/${gaugeId}.csv`;
  const found = await readFileBytes(folder, file);
  if (found.bytes === null) {
    const missing = tableProblem('rainFile.missing', { file, gaugeId }, { value: file, expected: file });
    const problem = found.problem ? { ...found.problem, place: { file, gaugeId } } : missing;
    return { readings: [], problems: [problem], notUsed: [], rows: 0 };
  }
  return plainRainRead(found.bytes, gaugeId, file) ?? fullRain(found.bytes, gaugeId, file);
}
