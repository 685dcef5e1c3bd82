import { randomBytes } from 'node:crypto';
import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Checked, Problem } from '@eavewell/engine';
import { type Absent, type ChangeRecord, recordProblem, recordsOfCopy } from '@eavewell/records';
import { type Job, Stopped } from '@eavewell/work';
import type { Changed, OpenProgramme } from '../openProgramme.ts';
import type { Programmes } from '../programmes.ts';
import type { RunningTasks } from '../runningTasks.ts';
import { type Decided, decidedBy, type Step } from './decided.ts';
import { changesFile, type LookAsked, type Looked, type Mend, takenFile } from './lookTask.ts';
import { type ComingFile, receive, type SentFile } from './sentFiles.ts';

/** How long a review waits for somebody to look at it [ms], and how many wait at a time. Ours. */
const expires_ms = 3_600_000;
const most = 20;

/** Files that were sent, compared with what stands. Nothing of them is written. */
export interface Review {
  readonly importId: string;
  /** Null: they are to become a programme of their own. */
  readonly programmeId: string | null;
  /** The names they were sent under. */
  readonly sent: readonly string[];
  readonly absent: Absent;
  /** How far they are read; 1 where `looked` stands. */
  readonly done_fraction: number;
  readonly looked: Looked | null;
  /** The cells that were mended, the last one last, and those whose mending was taken back. */
  readonly mends: readonly Mend[];
  readonly undone: readonly Mend[];
}

interface Waiting {
  readonly importId: string;
  readonly programme: OpenProgramme | null;
  readonly folder: string;
  readonly absent: Absent;
  decided: Decided;
  job: Job<Checked<Looked>> | null;
  done_fraction: number;
  looked: Looked | null;
  /** The other programmes it was compared with. */
  others: string;
  /** Why nothing of it can be taken in. */
  refused: readonly Problem[] | null;
  /** Our own fault, for whoever asks next. */
  fault: unknown;
  turn: Promise<unknown>;
  touched_ms: number;
}

/** How files are to be taken. */
export interface BeginAsked {
  readonly absent: Absent;
  /** For a table alone whose name does not say which it is. */
  readonly table: string | null;
  readonly gaugeId: string | null;
  /** Answer before they are read? */
  readonly isWaitedFor: boolean;
}

/** How files are taken in. */
export interface AcceptAsked {
  readonly by: string;
  /** What a programme that is made of them is called. */
  readonly name: string | null;
  /** Where a programme here has these records already: are they to become a second one beside it? */
  readonly isBeside: boolean;
}

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/** Imports that wait for a person's word. They live in this program and its passing folder, and end with either. */
export class Reviews {
  private readonly programmes: Programmes;
  private readonly tasks: RunningTasks;
  private readonly clock_ms: () => number;
  private readonly waiting = new Map<string, Waiting>();

  constructor(programmes: Programmes, tasks: RunningTasks, clock_ms: () => number = Date.now) {
    this.programmes = programmes;
    this.tasks = tasks;
    this.clock_ms = clock_ms;
  }

  /**
   * Takes files in to be looked at: nothing of the programme changes.
   *
   * @problem import.kind_unknown - and the other codes of lookTask
   */
  async begin(
    programme: OpenProgramme | null,
    coming: AsyncIterable<ComingFile>,
    asked: BeginAsked,
  ): Promise<Checked<Review>> {
    await this.sweep();
    const folder = await this.programmes.passingFolder('imports');
    const received = await receive(coming, join(folder, 'sent')).catch(async (error: unknown) => {
      await rm(folder, { recursive: true, force: true });
      throw error;
    });
    if (!received.ok) {
      await rm(folder, { recursive: true, force: true });
      return received;
    }
    const { table, gaugeId, absent } = asked;
    const sent = received.value.map((one) => ({ ...one, table, gaugeId }));
    const waiting = this.wait(programme, folder, absent, sent);
    const looking = this.inTurn(waiting, () => this.look(waiting)).catch((error: unknown) => {
      waiting.fault = error;
    });
    if (asked.isWaitedFor) await looking;
    return asked.isWaitedFor ? this.told(waiting) : { ok: true, value: reviewOf(waiting), problems: [] };
  }

  /** The reviews that wait for a programme, or for one of their own. */
  list(programme: OpenProgramme | null): readonly Review[] {
    return [...this.waiting.values()].filter((one) => one.programme === programme).map(reviewOf);
  }

  /** @problem import.gone - it was taken in, cancelled, or waited too long */
  async review(programme: OpenProgramme | null, importId: string): Promise<Checked<Review>> {
    const found = await this.find(programme, importId);
    if (!found.ok) return found;
    const waiting = found.value;
    if (waiting.job === null && isBehind(waiting)) await this.inTurn(waiting, () => this.look(waiting));
    return this.told(waiting);
  }

  /**
   * Mends a cell, takes that back, says what a header or a sheet stands for, or which table a file is. All is read again.
   *
   * @problem positions.table_broken - there is no such cell
   * @problem import.nothing_to_undo - nothing was mended
   */
  async step(programme: OpenProgramme | null, importId: string, step: Step): Promise<Checked<Review>> {
    const found = await this.find(programme, importId);
    if (!found.ok) return found;
    const waiting = found.value;
    return this.inTurn(waiting, async () => {
      const before = waiting.decided;
      const decided = decidedBy(before, step);
      if (decided === null) return refused(recordProblem('import.nothing_to_undo', {}, { value: importId }));
      waiting.decided = decided;
      await this.look(waiting);
      if (waiting.refused === null) return { ok: true, value: reviewOf(waiting), problems: [] };
      const problems = waiting.refused;
      [waiting.decided, waiting.refused] = [before, null];
      return { ok: false, problems };
    });
  }

  /**
   * Takes files in: the records of an export first, then their changes as one record.
   *
   * @problem import.changed_since - the programme changed, so that the comparison is another; nothing is written
   * @problem import.programme_there - it is another programme's here, and was not to become a second one; nothing is written
   * @problem import.not_a_table - a file cannot be compared; nothing is written
   */
  async accept(
    programme: OpenProgramme | null,
    importId: string,
    { by, name, isBeside }: AcceptAsked,
  ): Promise<{ readonly made: Changed; readonly programme: OpenProgramme | null }> {
    const found = await this.find(programme, importId);
    if (!found.ok) return { made: found, programme };
    const waiting = found.value;
    return this.inTurn(waiting, async () => {
      const wrong = await this.whyNot(waiting, isBeside);
      if (wrong !== null) return { made: { ok: false, problems: wrong }, programme };
      const target = programme ?? (await this.newProgramme(waiting, by, name));
      if (!('version' in target)) return { made: target, programme };
      const made = await this.write(waiting, target, by);
      if (made.ok) await this.drop(waiting);
      return { made, programme: target };
    });
  }

  /** @problem import.gone - it is not there any more */
  async cancel(programme: OpenProgramme | null, importId: string): Promise<Checked<null>> {
    const found = await this.find(programme, importId);
    if (!found.ok) return found;
    await this.drop(found.value);
    return { ok: true, value: null, problems: [] };
  }

  /** Lets go of what waited too long, and of the oldest where too many wait. */
  async sweep(): Promise<void> {
    await this.sweepOld();
    const byAge = [...this.waiting.values()].sort((a, b) => a.touched_ms - b.touched_ms);
    for (const waiting of byAge.slice(0, Math.max(0, byAge.length - most + 1))) await this.drop(waiting);
  }

  private wait(programme: OpenProgramme | null, folder: string, absent: Absent, sent: readonly SentFile[]): Waiting {
    const waiting: Waiting = {
      importId: randomBytes(8).toString('hex'),
      ...{ programme, folder, absent },
      decided: { sent, mends: [], undone: [], accepted: { columns: [], sheets: [] }, taken: [] },
      ...{ job: null, done_fraction: 0, looked: null, others: '', refused: null, fault: null },
      turn: Promise.resolve(),
      touched_ms: this.clock_ms(),
    };
    this.waiting.set(waiting.importId, waiting);
    return waiting;
  }

  private async look(waiting: Waiting): Promise<void> {
    const { programme, folder, absent, decided, importId } = waiting;
    const programmeId = programme?.entry.programmeId ?? null;
    const { sent, mends, accepted, taken } = decided;
    const asked: LookAsked = {
      ...{ dataFolder: this.programmes.folder, programmeId, version: programme?.version ?? 0 },
      ...{ folder, sent, absent, mends, accepted, taken },
      others: await this.othersOf(waiting),
    };
    waiting.others = namesOf(asked.others);
    const about = { kind: 'import', programmeId, name: sent[0]?.name ?? null, importId } as const;
    waiting.done_fraction = 0;
    waiting.job = this.tasks.start<Checked<Looked>>(about, 'look', asked, (done_fraction) => {
      waiting.done_fraction = Math.min(done_fraction, 0.99);
    });
    try {
      const looked = await waiting.job.result;
      if (looked.ok) waiting.looked = looked.value;
      waiting.refused = looked.ok ? null : looked.problems;
    } finally {
      waiting.job = null;
    }
  }

  /** The review; where nothing of it can be taken in, why, and it is let go. */
  private async told(waiting: Waiting): Promise<Checked<Review>> {
    if (waiting.fault !== null) {
      await this.drop(waiting);
      if (waiting.fault instanceof Stopped)
        return refused(recordProblem('import.gone', {}, { value: waiting.importId }));
      throw waiting.fault;
    }
    if (waiting.refused === null) return { ok: true, value: reviewOf(waiting), problems: [] };
    await this.drop(waiting);
    return { ok: false, problems: waiting.refused };
  }

  /** Why it cannot be taken in now; null where it can. */
  private async whyNot(waiting: Waiting, isBeside: boolean): Promise<readonly Problem[] | null> {
    const { importId, looked, job } = waiting;
    if (job !== null || looked === null) return [recordProblem('import.reading', {}, { value: importId })];
    const isOneMore = looked.hasRecords && namesOf(await this.othersOf(waiting)) !== waiting.others;
    if (isBehind(waiting) || isOneMore) {
      await this.look(waiting);
      if (waiting.refused) return waiting.refused;
      // What the person saw is not what would be written.
      if (waiting.looked!.changesName !== looked.changesName)
        return [recordProblem('import.changed_since', {}, { value: waiting.decided.sent[0]?.name ?? '' })];
    }
    const now = waiting.looked!;
    if (now.there !== null && !isBeside) {
      const file = waiting.decided.sent[0]?.name ?? '';
      return [recordProblem('import.programme_there', { file }, { value: file, other: now.there.name })];
    }
    return now.mayBeAccepted ? null : now.problems.filter(({ code }) => code.startsWith('import.'));
  }

  private async othersOf({ programme }: Waiting): Promise<LookAsked['others']> {
    const own = programme?.entry.programmeId;
    return (await this.programmes.list()).filter(({ programmeId }) => programmeId !== own);
  }

  private async newProgramme(
    waiting: Waiting,
    by: string,
    name: string | null,
  ): Promise<OpenProgramme | Extract<Changed, { ok: false }>> {
    const called = name ?? waiting.looked!.programmeName ?? waiting.decided.sent[0]?.name ?? '';
    const made = await this.programmes.make(called, by, null, null);
    return made.ok ? made.value : made;
  }

  private async write(waiting: Waiting, target: OpenProgramme, by: string): Promise<Changed> {
    const looked = waiting.looked!;
    const changes = await readFile(join(waiting.folder, changesFile), 'utf8');
    const name = waiting.decided.sent[0]?.name ?? null;
    if (looked.hasRecords) {
      const lines = (await readFile(join(waiting.folder, takenFile), 'utf8')).split('\n').slice(0, -1);
      const records = lines.map((line) => JSON.parse(line) as ChangeRecord);
      // A second programme has its own names for what is the first one's history.
      const own = looked.there === null ? records : recordsOfCopy(records, randomBytes(4).toString('hex'));
      const taken = await target.take(own);
      if (!taken.ok) return taken;
    }
    const version = looked.hasRecords || waiting.programme === null ? target.version : looked.version;
    return target.changeByText({ by, source: { kind: 'import', name } }, changes, version);
  }

  private async find(programme: OpenProgramme | null, importId: string): Promise<Checked<Waiting>> {
    await this.sweepOld();
    const waiting = this.waiting.get(importId);
    if (!waiting || waiting.programme !== programme)
      return refused(recordProblem('import.gone', {}, { value: importId }));
    waiting.touched_ms = this.clock_ms();
    return { ok: true, value: waiting, problems: [] };
  }

  private async sweepOld(): Promise<void> {
    for (const waiting of this.waiting.values())
      if (this.clock_ms() - waiting.touched_ms > expires_ms) await this.drop(waiting);
  }

  private async drop(waiting: Waiting): Promise<void> {
    this.waiting.delete(waiting.importId);
    const { job } = waiting;
    job?.cancel();
    // What still writes into the folder is waited for.
    await job?.result.catch(() => undefined);
    await rm(waiting.folder, { recursive: true, force: true });
  }

  private inTurn<T>(waiting: Waiting, work: () => Promise<T>): Promise<T> {
    const mine = waiting.turn.then(work);
    waiting.turn = mine.catch(() => undefined);
    return mine;
  }
}

const namesOf = (others: LookAsked['others']) => others.map(({ programmeId }) => programmeId).join();

/** Was the programme changed since it was compared? */
function isBehind({ programme, looked }: Waiting): boolean {
  return looked !== null && programme !== null && programme.version !== looked.version;
}

function reviewOf({ importId, programme, absent, decided, done_fraction, looked, job }: Waiting): Review {
  return {
    importId,
    programmeId: programme?.entry.programmeId ?? null,
    sent: decided.sent.map(({ name }) => name),
    absent,
    done_fraction: job === null && looked !== null ? 1 : done_fraction,
    looked,
    mends: decided.mends,
    undone: decided.undone,
  };
}
