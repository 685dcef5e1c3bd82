import { type DesignSettings, defaultSettings, type Place, type Problem } from '@eavewell/engine';
import { readSettings, settingsBeside, tableProblem } from '@eavewell/tables';
import { readJsonFile } from './readJsonFile.ts';

/** The settings of a folder, and the faults in them that bear on every site. */
export interface SettingsOfFolder {
  readonly settings: DesignSettings;
  readonly problems: readonly Problem[];
  readonly doubtsOfAll: readonly Place[];
  /** What the file holds, and its text; null where it is not there or cannot be read. */
  readonly given: unknown;
  readonly text: string | null;
}

const file = 'settings.json';

/**
 * Which settings has the programme in this folder? The defaults where there is no settings.json.
 *
 * @param folder - the programme folder [text]
 * @returns settings, problems, places of the blockers that bear on a verdict, and what the file holds
 * @problem settings.not_json - the defaults are used, and every site is in doubt
 * @problem settings.key_twice - a setting stands twice; which is meant nobody can tell
 * @definition ours
 */
export async function readSettingsFile(folder: string): Promise<SettingsOfFolder> {
  const found = await readJsonFile(folder, file, {
    encoding: (place, facts) => tableProblem('file.wrong_encoding', place, facts),
    notJson: (place, facts) => tableProblem('settings.not_json', place, facts),
  });
  const { given, text, problems } = found;
  if (!found.isThere || problems.some(({ severity }) => severity === 'blocker')) {
    const doubtsOfAll = problems.map(({ place }) => place);
    return { settings: defaultSettings, problems, doubtsOfAll, given, text };
  }
  const read = readSettings(given, file);
  const twice = found.twice.map(({ key, line }) =>
    tableProblem('settings.key_twice', { file, column: key }, { value: key, key, line, expected: 'once' }),
  );
  const own = [...twice, ...read.problems];
  const grave = own.filter(({ severity, place }) => severity === 'blocker' && !settingsBeside.has(place.column ?? ''));
  const doubtsOfAll = grave.map(({ place }) => place);
  return { settings: read.settings, problems: [...problems, ...own], doubtsOfAll, given, text };
}
