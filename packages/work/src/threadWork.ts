import { Worker } from 'node:worker_threads';
import { type Job, Stopped, type Work, type WorkOptions } from './work.ts';
import type { Asked, Said } from './workerSide.ts';

/** One job, waiting or running. */
interface Waiting {
  readonly asked: Asked;
  readonly options: WorkOptions;
  readonly done: (value: never) => void;
  readonly failed: (error: Error) => void;
  thread: Worker | null;
  isOver: boolean;
}

/** Runs one job in a thread of its own; `over` is called once, however it ends. */
function run(file: URL, job: Waiting, over: () => void): void {
  // The file is a built one: how this thread was started, from the sources say, is not for it.
  const thread = new Worker(file, { workerData: job.asked, execArgv: [] });
  job.thread = thread;
  const fail = (error: Error) => {
    if (!job.isOver) job.failed(error);
    job.isOver = true;
  };
  thread.on('message', (said: Said) => {
    if (job.isOver) return;
    if (said.kind === 'report') job.options.onReport?.(said.done_fraction, said.piece);
    else if (said.kind === 'error') {
      const { message, stack, code } = said;
      fail(Object.assign(new Error(message), { stack }, code === undefined ? {} : { code }));
    } else {
      job.isOver = true;
      job.done(said.value as never);
    }
  });
  thread.on('error', (error) => fail(error instanceof Error ? error : new Error(String(error))));
  thread.on('exit', (code) => {
    fail(new Error(`the thread ended with ${code}`));
    over();
  });
}

/**
 * Runs long jobs in threads, so that whoever asks for them stays free for others. Each job has a thread to itself, which ends
 * with it; those beyond the number of threads wait for their turn.
 *
 * @param file - the file a thread is started with: it calls answerWork
 * @param most_threads - how many run at a time [count]
 * @returns where they run
 * @definition ours: docs/decisions/0104-long-work.md
 */
export function threadWork(file: URL, most_threads = 2): Work {
  const waiting: Waiting[] = [];
  const running = new Set<Waiting>();
  let isClosed = false;
  const next = () => {
    while (!isClosed && running.size < most_threads && waiting.length > 0) {
      const job = waiting.shift()!;
      running.add(job);
      run(file, job, () => {
        running.delete(job);
        next();
      });
    }
  };
  const stop = async (job: Waiting) => {
    if (job.isOver) return;
    job.isOver = true;
    const at = waiting.indexOf(job);
    if (at >= 0) waiting.splice(at, 1);
    // Told only once nothing of it writes any more.
    await job.thread?.terminate();
    job.failed(new Stopped());
  };
  return {
    start<T>(name: string, input: unknown, options: WorkOptions = {}): Job<T> {
      let job!: Waiting;
      const result = new Promise<T>((done, failed) => {
        job = { asked: { name, input }, options, done: done as Waiting['done'], failed, thread: null, isOver: false };
      });
      if (isClosed) void stop(job);
      else waiting.push(job);
      next();
      return { result, cancel: () => void stop(job) };
    },
    async close() {
      isClosed = true;
      await Promise.all([...waiting, ...running].map(stop));
    },
  };
}
