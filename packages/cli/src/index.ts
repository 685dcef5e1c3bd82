import { openAddress } from './openAddress.ts';
import { run } from './run.ts';

export { type ExitCode, exitCodes } from './exitCodes.ts';
export type { Surroundings } from './print/terminal.ts';
export { run } from './run.ts';

/** The command line, as it is started from a terminal. */
export async function main(): Promise<void> {
  const { stdout, stderr, env, platform, argv } = process;
  // A reader that goes away, as `head` does, is told of by the next write; nothing is to be said of it here.
  stdout.on('error', () => undefined);
  process.exitCode = await run(argv.slice(2), { stdout, stderr, env, platform, untilStopped, openAddress });
}

/** Ctrl+C, or the system's word to end. */
function untilStopped(): Promise<void> {
  return new Promise((stopped) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => stopped());
  });
}
