import { Writable } from 'node:stream';
import { run } from './run.ts';

/** A stream that keeps what it is told; a slow one takes a moment for each piece. */
export class Kept extends Writable {
  readonly pieces: string[] = [];
  largestWaiting = 0;
  readonly #slow: boolean;
  constructor(slow = false) {
    super({ highWaterMark: slow ? 1024 : 16_384 });
    this.#slow = slow;
  }
  override _write(chunk: Buffer, _encoding: string, done: (error?: Error | null) => void): void {
    this.pieces.push(chunk.toString('utf8'));
    this.largestWaiting = Math.max(this.largestWaiting, this.writableLength);
    if (this.#slow) setImmediate(done);
    else done();
  }
  text(): string {
    return this.pieces.join('');
  }
}

/** Runs the command as a shell would, in plain characters unless the environment says otherwise, and keeps what it says. For tests. */
export async function keptRun(
  args: readonly string[],
  env: Readonly<Record<string, string>> = { LANG: 'C.UTF-8' },
  stdout = new Kept(),
) {
  const stderr = new Kept();
  const code = await run(args, { stdout, stderr, env, platform: 'linux' });
  if (stdout.errored === null) await new Promise<void>((ended) => stdout.end(ended));
  return { code, out: stdout.text(), err: stderr.text(), stdout };
}
