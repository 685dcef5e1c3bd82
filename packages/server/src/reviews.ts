import { randomBytes } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Checked, Problem } from '@eavewell/engine';
import { type CellPlace, mendCell, programmeOfRows, writeProgramme } from '@eavewell/formats';
import {
  type Absent,
  type ChangeRecord,
  foldRecords,
  type RowChange,
  recordName,
  recordProblem,
  recordText,
} from '@eavewell/records';
import type { NotUsed } from '@eavewell/tables';
import type { Job, Work } from '@eavewell/work';
import type { Changed, OpenProgramme } from './openProgramme.ts';
import type { Programmes } from './programmes.ts';
import { type Brought, changesOfFiles } from './rowsCompared.ts';
import type { FolderRows, ReadAsked } from './tasks.ts';
import { layInto, type Unpacked, type Upload, unpack } from './uploads.ts';

/** How long a review waits for somebody to look at it [ms], and how many wait at a time. Ours. */
const expires_ms = 3_600_000;
const most = 20;

/** A file that was sent, compared with what stands. Nothing of it is written. */
export interface Review {
  readonly importId: string;
  readonly file: string;
  readonly programmeId: string;
  readonly absent: Absent;
  readonly isReading: boolean;
  /** Rows each file brings. */
  readonly files: FolderRows['files'];
  /** What is wrong in the files, and what stands against taking them in. */
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  readonly changes: readonly RowChange[];
  /** Records of an export that are not here yet [count]. */
  readonly freshRecords: number;
  readonly mayBeAccepted: boolean;
}

interface Waiting {
  readonly importId: string;
  readonly programme: OpenProgramme;
  readonly folder: string;
  readonly upload: Pick<Upload, 'name'>;
  readonly unpacked: Unpacked;
  readonly absent: Absent;
  readonly records: readonly ChangeRecord[];
  readonly said: readonly Problem[];
  job: Job<FolderRows> | null;
  read: FolderRows | null;
  review: Review | null;
  version: number;
  touched_ms: number;
}

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/** Imports that wait for a person's word. They live in this program and its passing folder, and end with either. */
export class Reviews {
  private readonly programmes: Programmes;
  private readonly work: Work;
  private readonly clock_ms: () => number;
  private readonly waiting = new Map<string, Waiting>();

  constructor(programmes: Programmes, work: Work, clock_ms: () => number = Date.now) {
    this.programmes = programmes;
    this.work = work;
    this.clock_ms = clock_ms;
  }

  /**
   * Takes a file in to be looked at: nothing of the programme changes.
   *
   * @problem import.kind_unknown - and the other codes of unpack
   * @problem import.programme_there - its records belong to another programme that is here
   */
  async begin(programme: OpenProgramme, upload: Upload, absent: Absent): Promise<Checked<Review>> {
    await this.sweep();
    const unpacked = unpack(upload);
    if (!unpacked.ok) return unpacked;
    const history = await this.historyOf(programme, unpacked.value, upload.name);
    if (!history.ok) return history;
    const folder = await this.programmes.passingFolder('imports');
    const waiting: Waiting = {
      importId: randomBytes(8).toString('hex'),
      programme,
      folder,
      upload: { name: upload.name },
      unpacked: unpacked.value,
      absent,
      records: history.value,
      said: [...unpacked.value.problems, ...history.problems],
      job: null,
      read: null,
      review: null,
      version: -1,
      touched_ms: this.clock_ms(),
    };
    this.waiting.set(waiting.importId, waiting);
    try {
      // The tables that were not sent stand beside those that were, so that links between them can be followed.
      await writeProgramme(join(folder, 'programme'), programmeOfRows(programme.facts));
      await layInto(join(folder, 'programme'), unpacked.value.files);
      await this.readAgain(waiting);
    } catch (error) {
      await this.drop(waiting);
      throw error;
    }
    return { ok: true, value: this.reviewOf(waiting), problems: [] };
  }

  /** @problem import.gone - it was taken in, cancelled, or waited too long */
  async review(programme: OpenProgramme, importId: string): Promise<Checked<Review>> {
    const found = await this.find(programme, importId);
    return found.ok ? { ok: true, value: this.reviewOf(found.value), problems: [] } : found;
  }

  /**
   * Mends a cell of a file that waits.
   *
   * @problem positions.table_broken - there is no such cell
   */
  async mend(
    programme: OpenProgramme,
    importId: string,
    cell: CellPlace & { readonly value: string },
  ): Promise<Checked<Review>> {
    const found = await this.find(programme, importId);
    if (!found.ok) return found;
    const waiting = found.value;
    const isOfFile = waiting.unpacked.files.has(cell.file);
    const problem = isOfFile
      ? await mendCell(join(waiting.folder, 'programme'), cell, cell.value)
      : recordProblem('import.table_unknown', { file: cell.file }, { value: cell.file });
    if (problem) return refused(problem);
    await this.readAgain(waiting);
    return { ok: true, value: this.reviewOf(waiting), problems: [] };
  }

  /**
   * Takes a file in: the records of an export first, then its changes as one record.
   *
   * @problem import.changed_since - the programme changed, so that the comparison is another; nothing is written
   * @problem import.not_a_table - a file cannot be compared; nothing is written
   */
  async accept(programme: OpenProgramme, importId: string, by: string): Promise<Changed> {
    const found = await this.find(programme, importId);
    if (!found.ok) return found;
    const waiting = found.value;
    if (waiting.read === null) return refused(recordProblem('import.reading', {}, { value: importId }));
    // What the person saw last, before it is compared anew.
    const wanted = JSON.stringify(waiting.review?.changes ?? null);
    const seen = this.reviewOf(waiting);
    if (!seen.mayBeAccepted)
      return { ok: false, problems: seen.problems.filter(({ code }) => code.startsWith('import.')) };
    if (waiting.records.length > 0) {
      const taken = await programme.take(waiting.records);
      if (!taken.ok) return taken;
    }
    const origin = { by, source: { kind: 'import', name: waiting.upload.name } } as const;
    const made = await programme.changeBy(origin, (facts) => {
      if (waiting.records.length > 0) return { ok: true, value: seen.changes, problems: [] };
      const now = changesOfFiles(facts, this.broughtOf(waiting));
      if (now.ok && JSON.stringify(now.value) !== wanted)
        return refused(recordProblem('import.changed_since', {}, { value: waiting.upload.name }));
      return now;
    });
    if (made.ok) await this.drop(waiting);
    else waiting.review = null;
    return made;
  }

  /** @problem import.gone - it is not there any more */
  async cancel(programme: OpenProgramme, importId: string): Promise<Checked<null>> {
    const found = await this.find(programme, importId);
    if (!found.ok) return found;
    await this.drop(found.value);
    return { ok: true, value: null, problems: [] };
  }

  /** Lets go of what waited too long, and of the oldest where too many wait. */
  async sweep(): Promise<void> {
    const byAge = [...this.waiting.values()].sort((a, b) => a.touched_ms - b.touched_ms);
    const tooMany = Math.max(0, byAge.length - most + 1);
    for (const [i, waiting] of byAge.entries())
      if (i < tooMany || this.clock_ms() - waiting.touched_ms > expires_ms) await this.drop(waiting);
  }

  private async find(programme: OpenProgramme, importId: string): Promise<Checked<Waiting>> {
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
    waiting.job?.cancel();
    await rm(waiting.folder, { recursive: true, force: true });
  }

  private async readAgain(waiting: Waiting): Promise<void> {
    const input: ReadAsked = { folder: join(waiting.folder, 'programme') };
    waiting.job = this.work.start<FolderRows>('read', input);
    waiting.read = await waiting.job.result;
    [waiting.job, waiting.review] = [null, null];
  }

  private broughtOf({ read, unpacked, absent }: Waiting): Brought {
    const { rows, columns } = read!;
    return { rows, columns, absent, paths: [...unpacked.files.keys()] };
  }

  /** What the file is, against the facts as they stand now. */
  private reviewOf(waiting: Waiting): Review {
    const { programme, read, unpacked, records } = waiting;
    if (waiting.review !== null && waiting.version === programme.version) return waiting.review;
    // With the records of an export, its tables are compared with what they say: the difference was made by hand since.
    const facts = records.length > 0 ? foldRecords(records) : programme.facts;
    const compared = read === null ? null : changesOfFiles(facts, this.broughtOf(waiting));
    const known = new Set(programme.records.map(recordName));
    const isSent = (file: string | undefined) => file !== undefined && unpacked.files.has(file);
    const review: Review = {
      importId: waiting.importId,
      file: waiting.upload.name,
      programmeId: programme.entry.programmeId,
      absent: waiting.absent,
      isReading: read === null,
      files: (read?.files ?? []).filter(({ file }) => isSent(file)),
      problems: [
        ...waiting.said,
        ...(compared && !compared.ok ? compared.problems : []),
        ...(read?.problems ?? []).filter(({ place }) => isSent(place.file)),
      ],
      notUsed: (read?.notUsed ?? []).filter(({ file }) => isSent(file)),
      changes: compared?.ok ? compared.value : [],
      freshRecords: records.filter((record) => !known.has(recordName(record))).length,
      mayBeAccepted: compared?.ok === true,
    };
    [waiting.review, waiting.version] = [review, programme.version];
    return review;
  }

  /** The records in an export, where they are this programme's, or it has none yet. */
  private async historyOf(
    programme: OpenProgramme,
    { records }: Unpacked,
    file: string,
  ): Promise<Checked<readonly ChangeRecord[]>> {
    if (records === null || records.length === 0) return { ok: true, value: [], problems: [] };
    const texts = new Set(records.map(recordText));
    const shares = (one: OpenProgramme) => one.records.some((record) => texts.has(recordText(record)));
    if (shares(programme)) return { ok: true, value: records, problems: [] };
    if (programme.records.length > 0) {
      const problem = recordProblem('import.records_of_another', { file }, { value: file });
      return { ok: true, value: [], problems: [problem] };
    }
    for (const entry of await this.programmes.list()) {
      const other = await this.programmes.programme(entry.programmeId);
      if (other.ok && shares(other.value))
        return refused(recordProblem('import.programme_there', { file }, { value: file, other: entry.name }));
    }
    return { ok: true, value: records, problems: [] };
  }
}
