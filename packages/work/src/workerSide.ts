import { parentPort, workerData } from 'node:worker_threads';
import { type FaultSaid, faultSaid } from './faultSaid.ts';
import type { Tasks } from './work.ts';

/** What a thread is given to do. */
export interface Asked {
  readonly name: string;
  readonly input: unknown;
}

/** What a thread says: how far it is, what it came to, or what went wrong. */
export type Said =
  | { readonly kind: 'report'; readonly done_fraction: number; readonly piece: unknown }
  | { readonly kind: 'result'; readonly value: unknown }
  | ({ readonly kind: 'error' } & FaultSaid);

/**
 * Does the job this thread was started for, and says what it comes to. Called once, by the file a thread is started with.
 *
 * @param tasks - the jobs by name
 * @returns when it is done
 * @definition ours: docs/decisions/0104-long-work.md
 */
export async function answerWork(tasks: Tasks): Promise<void> {
  const { name, input } = workerData as Asked;
  const say = (said: Said) => parentPort?.postMessage(said);
  try {
    const task = tasks[name];
    if (task === undefined) throw new RangeError(`there is no job ${name}`);
    // A job that is called off ends with its thread, so that it need not ask.
    const around = {
      report: (done_fraction: number, piece?: unknown) => say({ kind: 'report', done_fraction, piece }),
      stopped: () => false,
    };
    say({ kind: 'result', value: await task(input as never, around) });
  } catch (error) {
    say({ kind: 'error', ...faultSaid(error) });
  }
}
