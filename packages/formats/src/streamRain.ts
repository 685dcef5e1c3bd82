import { join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import {
  bare,
  type FileMatching,
  isDecimalComma,
  KeptReadings,
  RainRows,
  type RawRow,
  rain,
  tableProblem,
} from '@eavewell/tables';
import { chunk_bytes, fileChunks, fileLines, type Surveyed, surveyFile } from './fileChunks.ts';
import { findSeparator } from './findSeparator.ts';
import { afterHeader, plainLines } from './plainRain.ts';
import type { RainFileRead } from './rainFileRead.ts';
import { type CsvAsked, lastRow, noRows, separatorProblem, takenProblem } from './readCsvFile.ts';
import { type Separator, splitLine } from './splitCsv.ts';
import { isStationCsv } from './stationCsv.ts';

type Text = Extract<Surveyed, { text: string }>;

/** What is known of a rain file before its rows are read. */
interface Start {
  readonly path: string;
  readonly asked: CsvAsked;
  readonly gaugeId: string;
  readonly matching: FileMatching | null;
  readonly survey: Text;
  readonly header: readonly string[];
  readonly separator: Separator;
  readonly piece_bytes: number;
}

async function firstLine(path: string, encoding: Text['text'], piece_bytes: number): Promise<string> {
  let text = '';
  for await (const { lines, unended } of fileLines(path, encoding, piece_bytes)) {
    if (lines.length > 0) return lines[0]!;
    text = unended ?? text;
  }
  return text;
}

/** Is a comma the decimal mark in this file? Asked only where commas do not part its cells. */
async function seesComma({ path, survey, separator, piece_bytes }: Start, rainAt: number): Promise<boolean> {
  for await (const { lines, unended } of fileLines(path, survey.text, piece_bytes))
    for (const line of unended === null ? lines : [...lines, unended])
      if (isDecimalComma(bare(splitLine(line, 0, separator).cells[rainAt] ?? ''))) return true;
  return false;
}

/** Rows taken from a file, one after the other. */
interface Taken {
  readonly rows: RainRows;
  readonly kept: KeptReadings;
  /** Plain readings taken past the reader of faults. */
  plain: number;
  filled: number;
}

/** Line by line, in any encoding and with any separator. Gives the last line where it has no end. */
async function takeLines(start: Start, taken: Taken): Promise<RawRow | undefined> {
  let row = 0;
  for await (const { lines, unended } of fileLines(start.path, start.survey.text, start.piece_bytes)) {
    for (const line of lines) if (++row > 1) takeRow(taken, splitLine(line, row, start.separator));
    if (unended !== null && ++row > 1) return splitLine(unended, row, start.separator, false);
  }
  return undefined;
}

function takeRow(taken: Taken, raw: RawRow): void {
  if (raw.broken === true || raw.cells.some((text) => text.trim() !== '')) taken.filled++;
  taken.rows.take(raw);
}

const newLine = 0x0a;

/** From the bytes: plain lines at once, the others through the reader of faults. Gives the last line where it has no end. */
async function takeBytes(start: Start, taken: Taken): Promise<RawRow | undefined> {
  const decoder = new TextDecoder('utf-8', { ignoreBOM: true });
  let [row, isFirst] = [2, true];
  let rest: Uint8Array = new Uint8Array(0);
  for await (const bytes of fileChunks(start.path, start.piece_bytes)) {
    const all: Uint8Array = rest.length === 0 ? bytes : Buffer.concat([rest, bytes]);
    const end = all.lastIndexOf(newLine) + 1;
    const from = isFirst ? Math.max(afterHeader(all), 0) : 0;
    isFirst = false;
    const whole = all.subarray(0, end);
    row = plainLines(whole, from, row, {
      plain: (reading) => {
        taken.plain++;
        taken.kept.add(reading);
      },
      odd: (oddRow, at, to) => {
        takeRow(taken, { row: oddRow, cells: decoder.decode(whole.subarray(at, to)).split(',') });
        return true;
      },
    })!;
    rest = all.slice(end);
  }
  return rest.length === 0 ? undefined : { row, cells: decoder.decode(rest).split(',') };
}

/** Does the file begin with the plain header, and are its lines told apart by their bytes? */
async function isOfPlainForm({ path, survey, matching, piece_bytes }: Start): Promise<boolean> {
  if (!survey.isPlain || matching !== null) return false;
  for await (const bytes of fileChunks(path, piece_bytes)) return afterHeader(bytes) >= 0;
  return false;
}

async function read(start: Start): Promise<RainFileRead> {
  const { asked, gaugeId, header, separator, matching, survey } = start;
  const { file } = asked;
  const kept = new KeptReadings();
  const rowsOf = (commaSeen: boolean) =>
    new RainRows(gaugeId, header, { file, decimalComma: separator !== ',', commaSeen, matching }, kept);
  const first = rowsOf(false);
  const commaSeen = separator !== ',' && (await seesComma(start, first.rainAt));
  const taken: Taken = { rows: commaSeen ? rowsOf(true) : first, kept, plain: 0, filled: 0 };
  const last = (await isOfPlainForm(start)) ? await takeBytes(start, taken) : await takeLines(start, taken);
  const isBlank = [...header, ...(last?.cells ?? [])].every((text) => text.trim() === '');
  if (isBlank && last?.broken !== true && taken.plain + taken.filled === 0) return empty(asked, gaugeId);
  const end = lastRow(asked, header.length, last);
  if (last !== undefined && end.notUsed.length === 0) takeRow(taken, last);
  const found = taken.rows.finish();
  const place = { ...asked.place, file };
  const decoded = { text: '', ...(survey.text === 'utf-8' ? {} : { taken: takenNames[survey.text] }) };
  const isEmpty = taken.plain + taken.filled === 0 && end.notUsed.length === 0;
  const problems: readonly Problem[] = [
    ...takenProblem(decoded, place),
    ...separatorProblem(separator, place),
    ...end.problems,
    ...(isEmpty ? [noRows(asked)] : []),
    ...found.problems,
    ...kept.problems({ file, gaugeId }),
  ];
  return {
    file,
    readings: kept.readings,
    problems,
    notUsed: [...end.notUsed, ...found.notUsed],
    rows: taken.plain + found.count + end.notUsed.length,
    unlistedRows: found.unlistedRows,
  };
}

function empty({ file, columns }: CsvAsked, gaugeId: string): RainFileRead {
  const problems = [tableProblem('file.empty', { gaugeId, file }, { value: file, expected: columns })];
  return { file, readings: [], problems, notUsed: [], rows: 0, unlistedRows: 0 };
}

const takenNames = { 'utf-16le': 'UTF-16LE', 'utf-16be': 'UTF-16BE', 'windows-1252': 'Windows-1252' } as const;

/**
 * Which readings stand in a large table of rain? Read piece by piece, so that only the days take room: however long the file
 * is, there are no more of them than days in the calendar.
 *
 * @param folder - the programme folder [text]
 * @param gaugeId - the gauge [text]
 * @param file - its path within the folder [text]
 * @param matching - what was accepted for its headers
 * @param piece_bytes - how much of it is held at a time [byte]
 * @returns readings, problems and what was not used; null where it is a station file, which is read whole
 * @law gives what reading the file whole gives, but for a quoted cell with a line end in it: its lines count as broken
 * @definition ours: docs/decisions/0082-rain-streamed.md
 */
export async function streamRain(
  folder: string,
  gaugeId: string,
  file: string,
  matching: FileMatching | null,
  piece_bytes: number = chunk_bytes,
): Promise<RainFileRead | null> {
  const path = join(folder, file);
  const columns = [...Object.keys(rain.columns), ...(matching?.columns.keys() ?? [])];
  const asked = { file, columns, needed: true, place: { gaugeId } };
  const survey = await surveyFile(path, piece_bytes);
  if ('encoding' in survey) {
    const facts = { value: file, encoding: survey.encoding, expected: 'UTF-8 text' };
    const problems = [tableProblem('file.wrong_encoding', { gaugeId, file }, facts)];
    return { file, readings: [], problems, notUsed: [], rows: 0, unlistedRows: 0 };
  }
  const line = await firstLine(path, survey.text, piece_bytes);
  const separator = findSeparator(line, columns);
  const header = splitLine(line, 1, separator).cells;
  if (isStationCsv(header)) return null;
  return read({ path, asked, gaugeId, matching, survey, header, separator, piece_bytes });
}
