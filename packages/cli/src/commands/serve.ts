import { serve } from '@eavewell/server';
import { type ExitCode, exitCodes } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { write } from '../print/terminal.ts';
import { printable } from '../print/text.ts';
import type { Context } from './context.ts';
import { dataFolderOf } from './dataFolder.ts';
import { pagesFolder } from './pagesFolder.ts';
import { tellProblems } from './tellProblems.ts';

const { commandLine } = spoken;
const words = commandLine.serve;

export interface ServeOptions {
  readonly data?: string;
  readonly port?: number;
  readonly open?: boolean;
  readonly from?: string;
}

/** Answers a browser on this computer until the person ends it. */
export async function serveCommand(options: ServeOptions, { around, version }: Context): Promise<ExitCode> {
  const folder = options.data ?? dataFolderOf(around);
  const started = await serve({
    folder,
    port: options.port ?? null,
    pages: pagesFolder(),
    version,
    demoName: words.demoName,
    by: words.madeBy,
    from: options.from ?? null,
    onProblem: (problem) => tellProblems([problem], around),
    onFault: (error) => {
      around.stderr.write(`${commandLine.trouble.ourFault(error instanceof Error ? error.message : String(error))}\n`);
    },
  });
  if (!started.ok) {
    tellProblems(started.problems, around);
    return exitCodes.blocker;
  }
  const { address, programmes, close } = started.value;
  try {
    tellProblems(started.problems, around);
    if (options.from !== undefined)
      await write(around.stdout, `${words.broughtIn(programmes, printable(options.from))}\n`);
    // Whoever ends the program as soon as it says its address is heard.
    const stopped = around.untilStopped?.();
    await write(around.stdout, `${words.opened(folder, programmes)}\n${address}\n`);
    if (options.open) around.openAddress?.(address);
    await stopped;
  } finally {
    await close();
  }
  await write(around.stdout, `${words.ended}\n`);
  return exitCodes.done;
}
