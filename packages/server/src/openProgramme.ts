import type { Database, ProgrammeEntry } from '@eavewell/database';
import type { Checked, Problem } from '@eavewell/engine';
import {
  type CellHistory,
  type ChangeRecord,
  compareRecords,
  type Facts,
  foldRecords,
  historyOf,
  mergeRecords,
  nextSteps,
  type RowChange,
  readRecord,
  recordFields,
  recordName,
  recordProblem,
  recordTextOf,
  takeBack,
} from '@eavewell/records';
import { refuseChange } from './refuseChange.ts';

/** The clock of this computer, as records note it. */
export interface Now {
  /** The instant, ISO 8601 in UTC. */
  at(): string;
  /** What local time is ahead of UTC [min]. */
  offset_min(): number;
}

export const computerClock: Now = {
  at: () => new Date().toISOString(),
  offset_min: () => -new Date().getTimezoneOffset(),
};

/** Where a record comes from, and what it takes back. */
interface Origin {
  readonly by: string;
  readonly source: ChangeRecord['source'];
  readonly takesBack?: string | null;
}

/** A record that was made, or null where nothing changed; and what is to be said of it. */
export type Changed = Checked<{ readonly record: ChangeRecord | null }>;

const turn = () => new Promise(setImmediate);
/** Is this the name of a sending, kept as the source of the record it made? */
const isSent = ({ kind, name }: ChangeRecord['source'], sendId: string) => kind === 'form' && name === sendId;

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/** A programme that is open: its records, folded once and kept up record by record. One change at a time is written. */
export class OpenProgramme {
  entry: ProgrammeEntry;
  private readonly database: Database;
  private readonly device: string;
  private readonly now: Now;
  private known: readonly ChangeRecord[];
  private folded: Facts;
  private turn: Promise<unknown> = Promise.resolve();
  /** Called after each change. */
  onChange: () => void = () => undefined;

  constructor(entry: ProgrammeEntry, database: Database, device: string, now: Now, records: readonly ChangeRecord[]) {
    this.entry = entry;
    this.database = database;
    this.device = device;
    this.now = now;
    this.known = [...records].sort(compareRecords);
    this.folded = foldRecords(this.known);
  }

  get facts(): Facts {
    return this.folded;
  }

  get records(): readonly ChangeRecord[] {
    return this.known;
  }

  /** Grows with every record. */
  get version(): number {
    return this.known.length;
  }

  /**
   * Makes one record of changes somebody asks for in a form. What was sent before under the same name is not made again.
   *
   * @param sendId - what the sending is called; null: nothing
   * @problem change.row_gone - and the other codes of refuseChange; nothing is written
   */
  change(by: string, changes: readonly RowChange[], sendId: string | null = null): Promise<Changed> {
    return this.inTurn(async () => {
      const made = sendId === null ? undefined : this.known.find(({ source }) => isSent(source, sendId));
      if (made) return { ok: true, value: { record: made }, problems: [] };
      for (const change of changes) {
        const problem = refuseChange(this.folded, change);
        if (problem) return refused(problem);
      }
      return this.write(changes, { by, source: { kind: 'form', name: sendId } });
    });
  }

  /**
   * Makes one record of what is worked out from the facts as they stand then: nothing comes between.
   *
   * @param work - gives the changes; or a problem, and then nothing is written
   */
  changeBy(origin: Origin, work: (facts: Facts) => Checked<readonly RowChange[]>): Promise<Changed> {
    return this.inTurn(async () => {
      const found = work(this.folded);
      return found.ok ? this.write(found.value, origin) : found;
    });
  }

  /**
   * Makes one record of changes that a thread wrote and checked: a large one is put together without keeping others waiting.
   *
   * @param changes - as changesText gives them [text]
   * @param version - the version they were worked out from
   * @problem import.changed_since - the programme was changed since; nothing is written
   */
  changeByText(origin: Origin, changes: string, version: number): Promise<Changed> {
    return this.inTurn(async () => {
      if (this.version !== version)
        return refused(recordProblem('import.changed_since', {}, { value: origin.source.name ?? '' }));
      if (changes === '[]') return { ok: true, value: { record: null }, problems: [] };
      const head = { ...this.nextHead(), by: origin.by, source: origin.source, takesBack: null };
      if (!recordFields.omit({ changes: true }).safeParse(head).success)
        return refused(recordProblem('change.unsound', {}, {}));
      const text = recordTextOf(head, changes);
      const record = JSON.parse(text) as ChangeRecord;
      // Between the pieces of a large change others get their turn; no other change does.
      await turn();
      const written = await this.database.append(this.entry.programmeId, [record], [text]);
      if (!written.ok) return written;
      await turn();
      this.known = [...this.known, record];
      this.folded.add(record);
      this.onChange();
      return { ok: true, value: { record }, problems: [] };
    });
  }

  /**
   * Takes back the last change made on this computer.
   *
   * @problem change.nothing_to_undo - there is none
   * @problem change.changed_since - with the value: cells that stay, for they were changed since
   */
  undo(by: string): Promise<Changed> {
    return this.step(by, 'undo');
  }

  /** @problem change.nothing_to_redo - nothing was undone since the last change */
  redo(by: string): Promise<Changed> {
    return this.step(by, 'redo');
  }

  /** Can the last change be undone, the last undo redone? */
  steps(): { readonly undo: string | null; readonly redo: string | null } {
    const { undo, redo } = nextSteps(this.known, this.device);
    return { undo: undo && recordName(undo), redo: redo && recordName(redo) };
  }

  history(table: string, key: string, column: string): readonly CellHistory[] {
    return historyOf(this.known, table, key, column);
  }

  /**
   * Takes in records made elsewhere.
   *
   * @problem record.name_taken - another record has one of their names; none is taken in
   */
  take(records: readonly ChangeRecord[]): Promise<Checked<{ readonly written: number }>> {
    return this.inTurn(async () => {
      const written = await this.database.append(this.entry.programmeId, records);
      if (!written.ok || written.value.written === 0) return written;
      this.known = mergeRecords(this.known, records).records;
      this.folded = foldRecords(this.known);
      this.onChange();
      return written;
    });
  }

  private step(by: string, kind: 'undo' | 'redo'): Promise<Changed> {
    return this.inTurn(async () => {
      const last = nextSteps(this.known, this.device)[kind];
      if (!last) return refused(recordProblem(`change.nothing_to_${kind}`, {}, {}));
      const { changes, changedSince } = takeBack(last, this.folded);
      const made = await this.write(changes, { by, source: { kind, name: null }, takesBack: recordName(last) }, true);
      if (!made.ok || changedSince.length === 0) return made;
      const problem = recordProblem('change.changed_since', {}, { count: changedSince.length });
      return { ...made, problems: [...made.problems, problem] };
    });
  }

  private async write(changes: readonly RowChange[], origin: Origin, isEmptyToo = false): Promise<Changed> {
    if (changes.length === 0 && !isEmptyToo) return { ok: true, value: { record: null }, problems: [] };
    const { by, source, takesBack = null } = origin;
    // What could not be read again is never written.
    const record = readRecord(JSON.parse(JSON.stringify({ ...this.nextHead(), by, source, takesBack, changes })));
    if (!record) return refused(recordProblem('change.unsound', {}, {}));
    const written = await this.database.append(this.entry.programmeId, [record]);
    if (!written.ok) return written;
    this.known = [...this.known, record];
    this.folded.add(record);
    this.onChange();
    return { ok: true, value: { record }, problems: [] };
  }

  /** What the next record of this device begins with. */
  private nextHead() {
    const number =
      this.known.reduce((most, one) => (one.device === this.device ? Math.max(most, one.number) : most), 0) + 1;
    const clock = (this.known.at(-1)?.clock ?? 0) + 1;
    return { device: this.device, number, clock, at: this.now.at(), offset_min: this.now.offset_min() };
  }

  private inTurn<T>(work: () => Promise<T>): Promise<T> {
    const mine = this.turn.then(work);
    this.turn = mine.catch(() => undefined);
    return mine;
  }
}
