import { randomBytes } from 'node:crypto';
import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { writeFileWhole } from '@eavewell/formats';
import { type Job, Stopped, type Work } from '@eavewell/work';

/** What a long job is about. */
export interface TaskAbout {
  readonly kind: 'import' | 'export' | 'design' | 'rollout';
  readonly programmeId: string | null;
  /** The file that is read or written, or the plan that is searched for; null for a design. */
  readonly name: string | null;
  /** The import it belongs to. */
  readonly importId: string | null;
}

/** A long job, as the page is told of it. */
export interface Task extends TaskAbout {
  readonly taskId: string;
  readonly begunAt: string;
  readonly done_fraction: number;
  /** `cutOff`: it ran when the program ended, and nothing of it counts. */
  readonly state: 'running' | 'done' | 'cancelled' | 'failed' | 'cutOff';
}

/** How often a page is told how far a job is [ms]. Ours. */
const told_ms = 200;

/** The long jobs that run, with a mark on disk for each, so that a restart can say what was cut off. */
export class RunningTasks {
  /** Called as jobs begin, get on and end. */
  onTask: (task: Task) => void = () => undefined;
  private readonly folder: string;
  private readonly work: { readonly others: Work; readonly design: Work };
  private readonly at: () => string;
  private readonly tasks = new Map<string, Task>();
  private readonly jobs = new Map<string, Job<unknown>>();

  constructor(folder: string, work: { readonly others: Work; readonly design: Work }, at: () => string) {
    this.folder = folder;
    this.work = work;
    this.at = at;
  }

  /** Reads what was cut off when the program last ended. */
  async open(): Promise<void> {
    const names = await readdir(this.folder).catch(() => []);
    // A mark that was not finished is none.
    for (const name of names.filter((one) => !one.endsWith('.json')))
      await rm(join(this.folder, name), { force: true });
    for (const name of names.filter((one) => one.endsWith('.json'))) {
      try {
        const task = JSON.parse(await readFile(join(this.folder, name), 'utf8')) as Task;
        // A design is begun again by itself, with what it had done; nobody need hear of it.
        if (task.kind === 'design') await rm(join(this.folder, name), { force: true });
        else this.tasks.set(task.taskId, { ...task, state: 'cutOff' });
      } catch {
        await rm(join(this.folder, name), { force: true });
      }
    }
  }

  /** The jobs that run, and those that were cut off and not yet dismissed; the oldest first. */
  list(): readonly Task[] {
    return [...this.tasks.values()];
  }

  /** Begins a job. */
  start<T>(
    about: TaskAbout,
    name: string,
    input: unknown,
    onReport?: (done_fraction: number, piece: unknown) => void,
  ): Job<T> & { readonly taskId: string } {
    const taskId = randomBytes(8).toString('hex');
    this.tell({ ...about, taskId, begunAt: this.at(), done_fraction: 0, state: 'running' });
    const marked = this.mark(taskId);
    let told = 0;
    const where = about.kind === 'design' ? this.work.design : this.work.others;
    const job = where.start<T>(name, input, {
      onReport: (done_fraction, piece) => {
        onReport?.(done_fraction, piece);
        const now = performance.now();
        const task = this.tasks.get(taskId);
        if (task === undefined) return;
        const fresh = { ...task, done_fraction };
        this.tasks.set(taskId, fresh);
        if (now - told < told_ms) return;
        told = now;
        this.onTask(fresh);
      },
    });
    this.jobs.set(taskId, job);
    const end = async (state: Task['state']) => {
      const task = this.tasks.get(taskId)!;
      this.tasks.delete(taskId);
      this.jobs.delete(taskId);
      this.onTask({ ...task, state, done_fraction: state === 'done' ? 1 : task.done_fraction });
      await marked;
      await rm(join(this.folder, `${taskId}.json`), { force: true });
    };
    const result = job.result.then(
      async (value) => {
        await end('done');
        return value;
      },
      async (error: unknown) => {
        await end(error instanceof Stopped ? 'cancelled' : 'failed');
        throw error;
      },
    );
    return { result, cancel: job.cancel, taskId };
  }

  /** Calls a job off, or puts away the word of one that was cut off; false where there is none of that id. */
  async dismiss(taskId: string): Promise<boolean> {
    const task = this.tasks.get(taskId);
    if (task === undefined) return false;
    if (task.state === 'running') this.jobs.get(taskId)?.cancel();
    else {
      this.tasks.delete(taskId);
      await rm(join(this.folder, `${taskId}.json`), { force: true });
    }
    return true;
  }

  private tell(task: Task): void {
    this.tasks.set(task.taskId, task);
    this.onTask(task);
  }

  private async mark(taskId: string): Promise<void> {
    try {
      await writeFileWhole(join(this.folder, `${taskId}.json`), JSON.stringify(this.tasks.get(taskId)));
    } catch {
      // Where the mark cannot stand, nothing is lost but the word of it after a restart.
    }
  }
}
