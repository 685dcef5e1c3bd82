import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { repository } from '../rules/repository.ts';
import { Page, withServer } from './served.ts';

/** The program as a person starts it. */
export const program = join(repository, 'packages/cli/bin/eavewell.js');

/** A program that was started. */
export interface Started {
  readonly process: ChildProcess;
  /** Null where it ended before it gave one. */
  readonly address: string | null;
  readonly ended: Promise<number | null>;
  text(): string;
}

/** How it is started: by whom, and through which other program. */
export interface StartOptions {
  readonly uid?: number;
  /** A program and its arguments that start it. */
  readonly through?: readonly string[];
}

/** Starts the program that serves, and waits for its address or its end. */
export async function start(
  folder: string,
  more: readonly string[] = [],
  { uid, through = [] }: StartOptions = {},
): Promise<Started> {
  const [first, ...others] = [...through, process.execPath, program, 'serve', '--data', folder, ...more];
  const started = spawn(first!, others, uid === undefined ? {} : { uid, gid: uid });
  let text = '';
  const ended = new Promise<number | null>((done) => started.on('close', done));
  const address = await new Promise<string | null>((found, failed) => {
    const hear = (piece: Buffer) => {
      text += piece.toString();
      const address = /^http\S+(?=\n)/m.exec(text);
      if (address) found(address[0]);
    };
    started.stdout?.on('data', hear);
    started.stderr?.on('data', hear);
    started.on('error', failed);
    void ended.then(() => found(null));
  });
  return { process: started, address, ended, text: () => text };
}

/**
 * Makes a data folder with a programme of no rows, as the program itself writes it. Started there, the program makes no demo: what
 * is looked at is how it starts, ends or is killed, and the demo would be made anew each time.
 *
 * @returns the folder
 */
export async function begunFolder(folder: string): Promise<string> {
  await withServer((page) => page.empty('Before'), { folder, keep: true });
  return folder;
}

/** Its page. */
export const pageOf = ({ address }: Started) =>
  Page.open({ address: address!, port: Number(new URL(address!).port), programmes: 1, close: async () => undefined });

/** Does the work in a folder of its own, and takes that away. */
export async function inRoom(work: (room: string) => Promise<void>): Promise<void> {
  const room = await mkdtemp(join(tmpdir(), 'eavewell-serve-'));
  try {
    await work(room);
  } finally {
    await rm(room, { recursive: true, force: true });
  }
}
