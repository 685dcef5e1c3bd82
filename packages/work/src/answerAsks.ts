import { parentPort } from 'node:worker_threads';
import { type FaultSaid, faultSaid } from './faultSaid.ts';
import type { Asks } from './keeping.ts';

/** What a thread that stays is asked. */
export interface AskedOfThread {
  readonly id: number;
  readonly name: string;
  readonly input: unknown;
  readonly stop: Int32Array;
}

/** What it says: how far it is, what the ask came to, or what went wrong. */
export type SaidByThread = { readonly id: number } & (
  | { readonly kind: 'report'; readonly done_fraction: number; readonly piece: unknown }
  | { readonly kind: 'result'; readonly value: unknown }
  | ({ readonly kind: 'error' } & FaultSaid)
);

/**
 * Answers whatever this thread is asked, until it is ended. Called once, by the file a thread is started with.
 *
 * @param asks - what may be asked, by name
 * @definition ours: docs/decisions/0353-a-thread-that-stays.md
 */
export function answerAsks(asks: Asks): void {
  const say = (said: SaidByThread) => parentPort?.postMessage(said);
  parentPort?.on('message', ({ id, name, input, stop }: AskedOfThread) => {
    const around = {
      report: (done_fraction: number, piece?: unknown) => say({ id, kind: 'report', done_fraction, piece }),
      stopped: () => Atomics.load(stop, 0) === 1,
    };
    const answered = async () => {
      const ask = asks[name];
      if (ask === undefined) throw new RangeError(`nothing is asked by the name ${name}`);
      say({ id, kind: 'result', value: await ask(input as never, around) });
    };
    answered().catch((error: unknown) => say({ id, kind: 'error', ...faultSaid(error) }));
  });
}
