import type { Writable } from 'node:stream';
import picocolors from 'picocolors';

/** What the program is given to speak through. */
export interface Surroundings {
  readonly stdout: Writable & { readonly isTTY?: boolean; readonly columns?: number };
  readonly stderr: Writable & { readonly isTTY?: boolean };
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: string;
  /** Ends when the person ends the program: for a command that runs until then. */
  untilStopped?(): Promise<void>;
  /** Opens an address in the person's browser, where there is one. */
  openAddress?(address: string): void;
}

export type Paint = ReturnType<typeof picocolors.createColors>;

/** How output is shown: how wide, with colours or without, drawn or in ASCII. */
export interface Look {
  readonly width: number;
  readonly drawn: boolean;
  readonly paint: Paint;
}

const widest = 80;
const narrowest = 40;

/** Can the terminal show more than ASCII? */
function isDrawn({ env, platform }: Surroundings): boolean {
  if (env['TERM'] === 'dumb') return false;
  const locale = env['LC_ALL'] || env['LC_CTYPE'] || env['LANG'] || '';
  if (/utf-?8/i.test(locale)) return true;
  return platform === 'darwin' || (platform === 'win32' && Boolean(env['WT_SESSION'] || env['TERM_PROGRAM']));
}

function isColoured({ stdout, env }: Surroundings): boolean {
  if (env['NO_COLOR']) return false;
  if (env['FORCE_COLOR'] && env['FORCE_COLOR'] !== '0') return true;
  return stdout.isTTY === true && env['TERM'] !== 'dumb';
}

/** Of a text that is written into a file: UTF-8, as wide as a page, no colours. */
export const paperLook: Look = { width: widest, drawn: true, paint: picocolors.createColors(false) };

/** How output is to look here. NO_COLOR is honoured; no line is ever wider than 80 columns. */
export function lookOf(around: Surroundings): Look {
  const columns = around.stdout.columns ?? widest;
  return {
    width: Math.max(narrowest, Math.min(widest, columns)),
    drawn: isDrawn(around),
    paint: picocolors.createColors(isColoured(around)),
  };
}

/** Writes a text and waits while the reader is behind, so that nothing piles up in memory. */
export async function write(stream: Writable, text: string): Promise<void> {
  if (stream.errored) throw stream.errored;
  if (stream.write(text)) return;
  await new Promise<void>((resolve, reject) => {
    const done = () => {
      stream.off('drain', done);
      stream.off('close', done);
      stream.off('error', failed);
      resolve();
    };
    const failed = (error: Error) => {
      stream.off('drain', done);
      stream.off('close', done);
      reject(error);
    };
    stream.once('drain', done);
    stream.once('close', done);
    stream.once('error', failed);
  });
}
