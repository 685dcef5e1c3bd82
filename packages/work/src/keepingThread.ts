import { Worker } from 'node:worker_threads';
import type { AskedOfThread, SaidByThread } from './answerAsks.ts';
import type { Keeping } from './keeping.ts';
import { type Job, Stopped, type WorkOptions } from './work.ts';

/** One ask, waiting or being answered. */
interface Ask {
  readonly id: number;
  readonly name: string;
  readonly input: unknown;
  readonly options: WorkOptions;
  /** 1 once it is called off: read by the thread while it works. */
  readonly stop: Int32Array;
  readonly done: (value: never) => void;
  readonly failed: (error: Error) => void;
  isOver: boolean;
}

/**
 * A thread that stays: what it made for one ask it has for the next. It is started with the first ask; where it ends by itself (its memory ran out, say) what was
 * being answered fails, what waits is asked of a new one, which has nothing yet. An ask that fails ends no thread.
 *
 * @param file - the file it is started with: it calls answerAsks
 * @returns how it is asked
 * @law asks are answered one after the other, in their order
 * @definition ours: docs/decisions/0353-a-thread-that-stays.md
 */
export function keepingThread(file: URL): Keeping {
  return new ThreadKept(file);
}

class ThreadKept implements Keeping {
  private thread: Worker | null = null;
  private readonly waiting: Ask[] = [];
  private running: Ask | null = null;
  private isClosed = false;
  private asks_count = 0;

  constructor(private readonly file: URL) {}

  ask<T>(name: string, input: unknown, options: WorkOptions = {}): Job<T> {
    let ask!: Ask;
    const result = new Promise<T>((done, failed) => {
      const stop = new Int32Array(new SharedArrayBuffer(4));
      this.asks_count += 1;
      ask = {
        ...{ id: this.asks_count, name, input, options, stop, done: done as Ask['done'], failed },
        isOver: false,
      };
    });
    if (this.isClosed) this.fail(ask, new Stopped());
    else this.waiting.push(ask);
    this.next();
    return { result, cancel: () => this.cancel(ask) };
  }

  async close(): Promise<void> {
    this.isClosed = true;
    const { thread } = this;
    this.thread = null;
    await thread?.terminate();
    for (const ask of [...this.waiting.splice(0), ...(this.running === null ? [] : [this.running])])
      this.fail(ask, new Stopped());
    this.running = null;
  }

  /** Tells the thread to leave off; until it has, nothing else is asked of it. */
  private cancel(ask: Ask): void {
    Atomics.store(ask.stop, 0, 1);
    const at = this.waiting.indexOf(ask);
    if (at >= 0) this.waiting.splice(at, 1);
    this.fail(ask, new Stopped());
  }

  private fail(ask: Ask, error: Error): void {
    if (!ask.isOver) ask.failed(error);
    ask.isOver = true;
  }

  private next(): void {
    if (this.isClosed || this.running !== null) return;
    const ask = this.waiting.shift();
    if (ask === undefined) return;
    this.running = ask;
    const { id, name, input, stop } = ask;
    try {
      this.started().postMessage({ id, name, input, stop } satisfies AskedOfThread);
    } catch (error) {
      // What cannot travel is the fault of who asked.
      this.fail(ask, error instanceof Error ? error : new Error(String(error)));
      this.over();
    }
  }

  private over(): void {
    this.running = null;
    this.next();
  }

  private started(): Worker {
    if (this.thread !== null) return this.thread;
    // The file is a built one: how this thread was started, from the sources say, is not for it.
    const thread = new Worker(this.file, { execArgv: [] });
    this.thread = thread;
    thread.on('message', (said: SaidByThread) => this.hear(said));
    const ended = (error: Error) => {
      if (this.thread !== thread) return;
      this.thread = null;
      if (this.running !== null) this.fail(this.running, error);
      this.over();
    };
    thread.on('error', (error) => ended(error instanceof Error ? error : new Error(String(error))));
    thread.on('exit', (code) => ended(new Error(`the thread ended with ${code}`)));
    return thread;
  }

  private hear(said: SaidByThread): void {
    const ask = this.running;
    if (ask === null || ask.id !== said.id) return;
    if (said.kind === 'report') {
      if (!ask.isOver) ask.options.onReport?.(said.done_fraction, said.piece);
      return;
    }
    if (said.kind === 'error') {
      const { message, stack, code } = said;
      this.fail(ask, Object.assign(new Error(message), { stack }, code === undefined ? {} : { code }));
    } else if (!ask.isOver) {
      ask.isOver = true;
      ask.done(said.value as never);
    }
    this.over();
  }
}
