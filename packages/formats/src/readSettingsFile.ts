import { type DesignSettings, defaultSettings, type Place, type Problem } from '@eavewell/engine';
import { readSettings, tableProblem } from '@eavewell/tables';
import { decodeText } from './decodeText.ts';
import { takenProblem } from './readCsvFile.ts';
import { readFileBytes } from './readFileBytes.ts';

/** The settings of a folder, and the faults in them that bear on every site. */
export interface SettingsOfFolder {
  readonly settings: DesignSettings;
  readonly problems: readonly Problem[];
  readonly doubtsOfAll: readonly Place[];
}

const file = 'settings.json';

function parse(
  bytes: Uint8Array,
): { readonly given: unknown; readonly problems: readonly Problem[] } | { readonly problem: Problem } {
  const decoded = decodeText(bytes);
  if ('encoding' in decoded) {
    const facts = { value: file, encoding: decoded.encoding, expected: 'UTF-8 text' };
    return { problem: tableProblem('file.wrong_encoding', { file }, facts) };
  }
  try {
    return { given: JSON.parse(decoded.text), problems: takenProblem(decoded, { file }) };
  } catch (error) {
    const facts = { value: file, expected: 'JSON', reason: (error as SyntaxError).message };
    return { problem: tableProblem('settings.not_json', { file }, facts) };
  }
}

/**
 * Which settings has the programme in this folder? The defaults where there is no settings.json.
 *
 * @param folder - the programme folder [text]
 * @returns settings, problems, and places of the blockers that bear on a verdict
 * @problem settings.not_json - the defaults are used, and every site is in doubt
 * @definition ours
 */
export async function readSettingsFile(folder: string): Promise<SettingsOfFolder> {
  const found = await readFileBytes(folder, file);
  if (found.bytes === null) {
    const problems = found.problem ? [found.problem] : [];
    return { settings: defaultSettings, problems, doubtsOfAll: problems.map(({ place }) => place) };
  }
  const parsed = parse(found.bytes);
  if ('problem' in parsed)
    return { settings: defaultSettings, problems: [parsed.problem], doubtsOfAll: [parsed.problem.place] };
  const read = readSettings(parsed.given, file);
  const grave = read.problems.filter(({ severity, place }) => severity === 'blocker' && place.column !== 'programme');
  return { ...read, problems: [...parsed.problems, ...read.problems], doubtsOfAll: grave.map(({ place }) => place) };
}
