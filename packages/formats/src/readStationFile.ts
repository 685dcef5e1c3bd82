import type { Problem } from '@eavewell/engine';
import { readStationRain, shown, tableProblem } from '@eavewell/tables';
import { decodeText } from './decodeText.ts';
import type { RainFileRead } from './rainFileRead.ts';
import { type CsvFile, takenProblem } from './readCsvFile.ts';
import { stationCsvLines } from './stationCsv.ts';
import { dlyLines } from './stationDly.ts';

const nothing = { readings: [], notUsed: [], rows: 0, unlistedRows: 0 } as const;

/**
 * Which readings stand in the bytes of a station file of fixed width?
 *
 * @param bytes - the file [byte]
 * @param gaugeId - the gauge [text]
 * @param file - its path within the folder [text]
 * @returns readings, problems and what was not used
 * @problem file.cut_off - the last line stops within its month; it is not used
 * @source ghcn-daily, readme section III
 */
export function readDlyFile(bytes: Uint8Array, gaugeId: string, file: string): RainFileRead {
  const place = { file, gaugeId };
  const decoded = decodeText(bytes);
  if ('encoding' in decoded) {
    const facts = { value: file, encoding: decoded.encoding, expected: 'UTF-8 text' };
    return { ...nothing, file, problems: [tableProblem('file.wrong_encoding', place, facts)] };
  }
  if (decoded.text.trim() === '')
    return { ...nothing, file, problems: [tableProblem('file.empty', place, { value: file, expected: 'its lines' })] };
  const { lines, cut, ended } = dlyLines(decoded.text);
  const problems: Problem[] = [...takenProblem(decoded, place)];
  const notUsed = [];
  if (cut !== null) {
    const value = shown(cut.line);
    const facts = { value, expected: 'a line to the end of its month' };
    problems.push(tableProblem('file.cut_off', { ...place, row: cut.row }, facts));
    notUsed.push({ file, row: cut.row, value, code: 'file.cut_off', cells: [cut.line] } as const);
  } else if (!ended) {
    const facts = { value: file, expected: 'a line end' };
    problems.push(tableProblem('file.no_last_line_end', { ...place, row: lines.at(-1)!.row }, facts));
  }
  const read = readStationRain(gaugeId, file, lines);
  return {
    file,
    readings: read.readings,
    problems: [...problems, ...read.problems],
    notUsed: [...notUsed, ...read.notUsed],
    rows: read.count + notUsed.length,
    unlistedRows: 0,
  };
}

/**
 * Which readings stand in a station file whose cells were parted already?
 *
 * @param csv - header and rows
 * @param gaugeId - the gauge [text]
 * @param file - its path within the folder [text]
 * @returns readings, problems and what was not used
 * @problem header.column_missing - a column is not there without which no value may be used
 * @source ghcn-daily, readme of the files by station and by year
 */
export function readStationCsv(csv: CsvFile, gaugeId: string, file: string): RainFileRead {
  const found = stationCsvLines(csv.header, csv.rows);
  if ('missing' in found) {
    const facts = { value: '', likely: '', found: csv.header.map(shown) };
    const missing = found.missing.map((column) =>
      tableProblem('header.column_missing', { file, gaugeId, row: 1, column }, { ...facts, expected: column }),
    );
    const rows = csv.rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
    const notUsed = rows.map(({ row, cells }) => {
      return { file, row, value: shown(cells.join(',')), code: 'header.column_missing', cells } as const;
    });
    const lost = [...csv.notUsed, ...notUsed];
    return {
      file,
      readings: [],
      problems: [...csv.problems, ...missing],
      notUsed: lost,
      rows: lost.length,
      unlistedRows: 0,
    };
  }
  const read = readStationRain(gaugeId, file, found.lines);
  return {
    file,
    readings: read.readings,
    problems: [...csv.problems, ...read.problems],
    notUsed: [...csv.notUsed, ...read.notUsed],
    rows: read.count + csv.notUsed.length,
    unlistedRows: 0,
  };
}
