import type { Asks, Keeping } from './keeping.ts';
import { type Job, Stopped, type WorkOptions } from './work.ts';

/**
 * Answers what is asked in this thread: where there are no threads, and to compare with.
 *
 * @param asks - what may be asked, by name
 * @returns how it is asked
 * @law answers what keepingThread answers
 * @definition ours: docs/decisions/0353-a-thread-that-stays.md
 */
export function keepingHere(asks: Asks): Keeping {
  let isClosed = false;
  let turn: Promise<unknown> = Promise.resolve();
  return {
    ask<T>(name: string, input: unknown, options: WorkOptions = {}): Job<T> {
      let isStopped = isClosed;
      const around = {
        report: (done_fraction: number, piece?: unknown) => {
          if (!isStopped) options.onReport?.(done_fraction, piece);
        },
        stopped: () => isStopped || isClosed,
      };
      const answered = turn.then(async () => {
        const ask = asks[name];
        if (ask === undefined) throw new RangeError(`nothing is asked by the name ${name}`);
        if (around.stopped()) throw new Stopped();
        const value = (await ask(structuredClone(input) as never, around)) as T;
        if (around.stopped()) throw new Stopped();
        return value;
      });
      turn = answered.catch(() => undefined);
      return {
        result: answered,
        cancel: () => {
          isStopped = true;
        },
      };
    },
    async close() {
      isClosed = true;
      await turn;
    },
  };
}
