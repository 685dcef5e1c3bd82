import { readFileSync } from 'node:fs';
import { CommanderError } from 'commander';
import type { Context } from './commands/context.ts';
import { type ExitCode, exitCodes, WrongUse } from './exitCodes.ts';
import { speakAsAsked, spoken } from './language.ts';
import { lookOf, type Surroundings } from './print/terminal.ts';
import { printable } from './print/text.ts';
import { program } from './program.ts';
import { Progress } from './progress.ts';

const { trouble } = spoken.commandLine;

function versionOfProgram(): string {
  const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}

/** Has the reader of the output gone away, as `head` does? Then there is nobody to tell. */
export function isReaderGone(error: unknown): boolean {
  return error instanceof Error && 'code' in error && (error.code === 'EPIPE' || error.code === 'ERR_STREAM_DESTROYED');
}

/** What the machine may refuse, and the person can mend: the code of the system, and our words for it. */
function refusalOf(error: unknown): string | null {
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') return null;
  // A file that is not there is our own mistake; a folder that cannot be made is the disk's word.
  if (error.code === 'ENOENT' && !('syscall' in error && error.syscall === 'mkdir')) return null;
  const reason = trouble.refusals[error.code as keyof typeof trouble.refusals];
  if (reason === undefined) return null;
  const path = 'path' in error && typeof error.path === 'string' ? error.path : trouble.theOutput;
  return trouble.cannotWrite(path, reason);
}

/** Runs one command line and gives its exit code. It never throws. */
export async function run(args: readonly string[], around: Surroundings): Promise<ExitCode> {
  const progress = new Progress(around.stderr);
  try {
    await speakAsAsked(args, around.env);
    const context: Context = { around, look: lookOf(around), progress, version: versionOfProgram() };
    let code: ExitCode = exitCodes.done;
    const command = program(context, (ended) => {
      code = ended;
    });
    await command.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    progress.done();
    return codeOf(error, around);
  }
}

/** Says what went wrong and whose fault it is. */
function codeOf(error: unknown, { stderr, env }: Surroundings): ExitCode {
  if (isReaderGone(error)) return exitCodes.done;
  // Commander has said it already; its own code is 0 for help and version that were asked for.
  if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.done : exitCodes.wrongUse;
  if (error instanceof WrongUse) {
    stderr.write(`${printable(error.message)}\n`);
    return exitCodes.wrongUse;
  }
  const refusal = refusalOf(error);
  if (refusal !== null) {
    stderr.write(`${printable(refusal)}\n`);
    return exitCodes.wrongUse;
  }
  const message = error instanceof Error ? error.message : String(error);
  stderr.write(`${trouble.ourFault(printable(message))}\n`);
  if (env['EAVEWELL_TRACE'] === '1' && error instanceof Error) stderr.write(`${error.stack}\n`);
  return exitCodes.ourFault;
}
