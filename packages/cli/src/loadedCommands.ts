/**
 * A command that is loaded when it is asked for: who asks for one does not wait for what the others need.
 *
 * @param load - loads it
 * @returns the command
 * @definition ours
 */
const later =
  <Given extends readonly unknown[], Ended>(load: () => Promise<(...given: Given) => Promise<Ended>>) =>
  async (...given: Given): Promise<Ended> =>
    (await load())(...given);

export const checkCommand = later(async () => (await import('./commands/check.ts')).checkCommand);
export const columnsCommand = later(async () => (await import('./commands/columns.ts')).columnsCommand);
export const convertCommand = later(async () => (await import('./commands/convert.ts')).convertCommand);
export const demoCommand = later(async () => (await import('./commands/demo.ts')).demoCommand);
export const designCommand = later(async () => (await import('./commands/design.ts')).designCommand);
export const kitCommand = later(async () => (await import('./commands/kit.ts')).kitCommand);
export const mapCommand = later(async () => (await import('./commands/map.ts')).mapCommand);
export const packCommand = later(async () => (await import('./commands/pack.ts')).packCommand);
export const positionsCommand = later(async () => (await import('./commands/positions.ts')).positionsCommand);
export const programmesCommand = later(async () => (await import('./commands/programmes.ts')).programmesCommand);
export const rainCommand = later(async () => (await import('./commands/rain.ts')).rainCommand);
export const rolloutCommand = later(async () => (await import('./commands/rollout.ts')).rolloutCommand);
export const safetyCommand = later(async () => (await import('./commands/safety.ts')).safetyCommand);
export const serveCommand = later(async () => (await import('./commands/serve.ts')).serveCommand);
export const wearCommand = later(async () => (await import('./commands/wear.ts')).wearCommand);
export const wordsExportCommand = later(async () => (await import('./commands/words.ts')).wordsExportCommand);
export const wordsImportCommand = later(async () => (await import('./commands/words.ts')).wordsImportCommand);
