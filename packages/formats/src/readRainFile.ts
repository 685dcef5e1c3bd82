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
  const readings = plainRain(found.bytes);
  if (readings !== null) return { readings, problems: [], notUsed: [], rows: readings.length };
  return fullRain(found.bytes, gaugeId, file);
}
