import { randomBytes } from 'node:crypto';
import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type Database, deviceFile, openDatabase, type ProgrammeListed } from '@eavewell/database';
import type { Checked, Problem } from '@eavewell/engine';
import { makeFolder, type ProgrammeTables, rowsOfProgramme, writeFileWhole } from '@eavewell/formats';
import { recordProblem } from '@eavewell/records';
import { bringIn } from './bringIn.ts';
import { behindExports, withLastExports } from './folderProblems.ts';
import { changesOfRows } from './imports/rowsCompared.ts';
import { type Now, OpenProgramme } from './openProgramme.ts';

const deviceForm = /^[A-Za-z0-9_-]{1,64}$/;

/** Where files pass through, within the data folder. Emptied at every start: nothing in it counts. */
const passing = 'passing';

/** What follows from the records, kept so that it need not be made again. Safe to delete. */
const derived = 'derived';

const random = (bytes: number) => randomBytes(bytes).toString('hex');

/** The device's name, made once. */
async function deviceOf(folder: string): Promise<string> {
  const path = join(folder, deviceFile);
  const known = await readFile(path, 'utf8').then(
    (text) => text.trim(),
    () => '',
  );
  if (deviceForm.test(known)) return known;
  const made = `computer-${random(6)}`;
  await writeFileWhole(path, `${made}\n`);
  return made;
}

/** The programmes of a data folder. Each is folded once, when it is first asked for, and kept. */
export class Programmes {
  /** Called after each change of a programme. */
  onChange: (programmeId: string) => void = () => undefined;
  /** Called after a programme was made, named, set aside or brought back. */
  onList: () => void = () => undefined;
  /** Called after each change with the programme: what is kept beside it follows. */
  onKept: (programme: OpenProgramme) => void = () => undefined;
  readonly database: Database;
  readonly folder: string;
  private readonly device: string;
  private readonly now: Now;
  private readonly open = new Map<string, Promise<Checked<OpenProgramme>>>();

  private constructor(database: Database, folder: string, device: string, now: Now) {
    this.database = database;
    this.folder = folder;
    this.device = device;
    this.now = now;
  }

  /**
   * Opens a data folder, made where there is none. What passed through when the program last ended is taken away.
   *
   * @problem database.in_use - and the other codes of openDatabase
   * @problem database.behind - it holds less than was exported from it
   */
  static async open(folder: string, now: Now): Promise<Checked<Programmes>> {
    const opened = await openDatabase(folder);
    if (!opened.ok) return { ok: false, problems: await withLastExports(folder, opened.problems) };
    const behind = await behindExports(opened.value, folder);
    if (behind.length > 0) {
      await opened.value.close();
      return { ok: false, problems: await withLastExports(folder, behind) };
    }
    await rm(join(folder, passing), { recursive: true, force: true });
    const value = new Programmes(opened.value, folder, await deviceOf(folder), now);
    return { ok: true, value, problems: opened.problems };
  }

  list(): Promise<readonly ProgrammeListed[]> {
    return this.database.listed();
  }

  /**
   * Gives a programme another name, sets it aside or brings it back. Nothing of it goes.
   *
   * @problem database.programme_unknown - there is none of that id
   */
  async changeEntry(
    programmeId: string,
    by: string,
    { name, isSetAside }: { readonly name?: string | undefined; readonly isSetAside?: boolean | undefined },
  ): Promise<Checked<ProgrammeListed>> {
    const before = (await this.list()).find((one) => one.programmeId === programmeId);
    if (!before) return unknown(programmeId);
    const wanted = { name: name ?? before.name, isSetAside: isSetAside ?? before.isSetAside };
    if (wanted.name !== before.name || wanted.isSetAside !== before.isSetAside) {
      const changed = await this.database.changeProgramme(programmeId, { at: this.now.at(), by, ...wanted });
      if (!changed.ok) return changed;
    }
    const open = await this.open.get(programmeId);
    if (open?.ok) open.value.entry = { ...open.value.entry, name: wanted.name };
    this.onList();
    return { ok: true, value: { ...before, ...wanted }, problems: [] };
  }

  /** Is it open already? Then what it holds is known without reading it. */
  async openOne(programmeId: string): Promise<OpenProgramme | null> {
    const found = await this.open.get(programmeId);
    return found?.ok ? found.value : null;
  }

  /** Brings in programmes with their history, where there is none yet; see bringIn. */
  bringIn(from: string): Promise<Checked<{ readonly programmes: number }>> {
    return bringIn(this.database, this.folder, from, this.now.at());
  }

  /**
   * Makes a programme: empty, or of tables.
   *
   * @problem database.programme_twice - there is one of that id
   */
  async make(
    name: string,
    by: string,
    tables: ProgrammeTables | null,
    source: string | null,
  ): Promise<Checked<OpenProgramme>> {
    const entry = { programmeId: `p-${random(6)}`, name, madeAt: this.now.at() };
    const made = await this.database.makeProgramme(entry);
    if (!made.ok) return made;
    this.onList();
    const programme = await this.programme(entry.programmeId);
    if (!programme.ok || tables === null) return programme;
    const filled = await this.fill(programme.value, by, tables, source);
    return filled.ok ? programme : filled;
  }

  /** Puts tables into a programme that is empty, as one record. */
  fill(programme: OpenProgramme, by: string, tables: ProgrammeTables, source: string | null) {
    const rows = rowsOfProgramme(tables);
    const origin = { by, source: { kind: 'import', name: source } } as const;
    return programme.changeBy(origin, (facts) => changesOfRows(facts, rows));
  }

  /**
   * A programme, ready to be asked and changed.
   *
   * @problem database.programme_unknown - there is none of that id
   * @problem record.unreadable - its records were changed by another hand
   */
  programme(programmeId: string): Promise<Checked<OpenProgramme>> {
    const known = this.open.get(programmeId);
    if (known) return known;
    const opening = this.fold(programmeId);
    this.open.set(programmeId, opening);
    void opening.then(
      (found) => {
        if (!found.ok) this.open.delete(programmeId);
      },
      () => this.open.delete(programmeId),
    );
    return opening;
  }

  /** A new place for files that pass through; who takes it takes it away. */
  async passingFolder(kind: 'imports' | 'designs' | 'exports'): Promise<string> {
    const path = join(this.folder, passing, kind, random(8));
    await makeFolder(path);
    return path;
  }

  /** Where things stand that follow from the records: they may be taken away at any time. */
  derivedFolder(name: string): string {
    return join(this.folder, derived, name);
  }

  async close(): Promise<void> {
    await rm(join(this.folder, passing), { recursive: true, force: true });
    await this.database.close();
  }

  private async fold(programmeId: string): Promise<Checked<OpenProgramme>> {
    const entry = (await this.database.programmes()).find((one) => one.programmeId === programmeId);
    if (!entry) return unknown(programmeId);
    const records = await this.database.records(programmeId);
    if (!records.ok) return records;
    const value = new OpenProgramme(entry, this.database, this.device, this.now, records.value);
    value.onChange = () => {
      this.onChange(programmeId);
      this.onKept(value);
    };
    return { ok: true, value, problems: records.problems };
  }
}

function unknown(programmeId: string): { readonly ok: false; readonly problems: readonly Problem[] } {
  return { ok: false, problems: [recordProblem('database.programme_unknown', {}, { value: programmeId })] };
}
