import { isReaderGone, run } from './run.ts';

export { type ExitCode, exitCodes } from './exitCodes.ts';
export type { Surroundings } from './print/terminal.ts';
export { run } from './run.ts';

/** The command line, as it is started from a terminal. */
export async function main(): Promise<void> {
  const { stdout, stderr, env, platform, argv } = process;
  stdout.on('error', (error) => {
    if (!isReaderGone(error)) throw error;
    process.exit(0);
  });
  process.exitCode = await run(argv.slice(2), { stdout, stderr, env, platform });
}
