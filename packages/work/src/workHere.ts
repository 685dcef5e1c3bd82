import { type Job, type JobAround, Stopped, type Tasks, type Work, type WorkOptions } from './work.ts';

/**
 * Runs long jobs in this thread: where there are no threads, and to compare with.
 *
 * @param tasks - the jobs by name
 * @returns where they run
 * @law gives what threadWork gives
 * @definition ours: docs/decisions/0104-long-work.md
 */
export function workHere(tasks: Tasks): Work {
  let isClosed = false;
  const running = new Set<() => void>();
  const results = new Set<Promise<unknown>>();
  return {
    start<T>(name: string, input: unknown, options: WorkOptions = {}): Job<T> {
      let isStopped = isClosed;
      const cancel = () => {
        isStopped = true;
      };
      running.add(cancel);
      const around: JobAround = {
        report: (done_fraction, piece) => {
          if (!isStopped) options.onReport?.(done_fraction, piece);
        },
        stopped: () => isStopped,
      };
      const run = async (): Promise<T> => {
        const task = tasks[name];
        if (task === undefined) throw new RangeError(`there is no job ${name}`);
        await new Promise(setImmediate);
        const result = isStopped ? null : ((await task(structuredClone(input) as never, around)) as T);
        running.delete(cancel);
        if (isStopped) throw new Stopped();
        return result as T;
      };
      const result = run();
      const settled = result.catch(() => undefined);
      results.add(settled);
      void settled.then(() => results.delete(settled));
      return { result, cancel };
    },
    async close() {
      isClosed = true;
      for (const cancel of running) cancel();
      await Promise.all(results);
    },
  };
}
