import type { Job, JobAround, WorkOptions } from './work.ts';

/** What a thread that stays may be asked, by name. What goes in and comes out is plain data, for it travels. */
export type Asks = Readonly<Record<string, (input: never, around: JobAround) => Promise<unknown>>>;

/** A thread that stays, and keeps what it made from one ask to the next. */
export interface Keeping {
  /** Asks something; asks are answered one after the other, in the order they came. */
  ask<T>(name: string, input: unknown, options?: WorkOptions): Job<T>;
  /** Calls off what is asked, and ends the thread with all it holds. */
  close(): Promise<void>;
}
