/** What a long job is given to speak with its caller. */
export interface JobAround {
  /** How far it is, from 0 to 1, and a piece of what it found where it has one to give. */
  report(done_fraction: number, piece?: unknown): void;
  /** Was it called off? */
  stopped(): boolean;
}

/** Long jobs by name. What goes in and comes out is plain data, for it may travel to another thread. */
export type Tasks = Readonly<Record<string, (input: never, around: JobAround) => Promise<unknown>>>;

/** A job that was begun. */
export interface Job<T> {
  /** What it comes to; rejects with `Stopped` where it was called off. */
  readonly result: Promise<T>;
  cancel(): void;
}

/** What is asked of a job. */
export interface WorkOptions {
  onReport?(done_fraction: number, piece: unknown): void;
}

/** Where long jobs run. Nothing of them is kept: after a restart they are asked for again. */
export interface Work {
  start<T>(task: string, input: unknown, options?: WorkOptions): Job<T>;
  /** Calls off what runs, and takes no more. */
  close(): Promise<void>;
}

/** The job was called off. */
export class Stopped extends Error {
  constructor() {
    super('the job was called off');
    this.name = 'Stopped';
  }
}
