import type { Facts, Place, Problem } from '@eavewell/engine';
import { decodeText } from './decodeText.ts';
import { jsonFaults, type KeyTwice } from './jsonFault.ts';
import { takenProblem } from './readCsvFile.ts';
import { readFileBytes } from './readFileBytes.ts';

/** What a JSON file of the folder holds; null where it is not there or is none. */
export interface JsonFile {
  readonly given: unknown;
  readonly isThere: boolean;
  readonly text: string | null;
  readonly twice: readonly KeyTwice[];
  readonly problems: readonly Problem[];
}

/** How the faults of a file are made: of its encoding, and of its JSON. */
export interface JsonProblems {
  encoding(place: Place, facts: Facts): Problem;
  notJson(place: Place, facts: Facts): Problem;
}

const nothing = { given: null, text: null, twice: [] } as const;

/**
 * What stands in a JSON file of the folder, and what keeps it from being read, in words and with its line?
 *
 * @param folder - the programme folder [text]
 * @param file - the file's path within it [text]
 * @param make - makes the problems
 * @returns what it holds, its text, the keys that stand twice, and the problems
 * @source ecma-404
 */
export async function readJsonFile(folder: string, file: string, make: JsonProblems): Promise<JsonFile> {
  const found = await readFileBytes(folder, file);
  if (found.bytes === null)
    return { ...nothing, isThere: found.problem !== null, problems: found.problem ? [found.problem] : [] };
  const decoded = decodeText(found.bytes);
  if ('encoding' in decoded) {
    const facts = { value: file, encoding: decoded.encoding, expected: 'UTF-8 text' };
    return { ...nothing, isThere: true, problems: [make.encoding({ file }, facts)] };
  }
  const { fault, twice } = jsonFaults(decoded.text);
  if (fault !== null) {
    const { kind, line, column, found: stands } = fault;
    const facts = { value: file, what: kind, line, column, found: stands, expected: 'JSON' };
    return { ...nothing, text: decoded.text, isThere: true, problems: [make.notJson({ file }, facts)] };
  }
  const given: unknown = JSON.parse(decoded.text);
  return { given, text: decoded.text, isThere: true, twice, problems: takenProblem(decoded, { file }) };
}
