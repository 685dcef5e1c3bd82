/**
 * Settings to stand for those that could not be read: a target that is none, so that no site gets a verdict on the defaults.
 *
 * @param file - where they stood [text]
 * @returns the settings to write
 * @definition ours: docs/decisions/0073-converting.md
 */
export function settingsLost(file: string): Readonly<Record<string, unknown>> {
  return { target: `${file} could not be read` };
}
