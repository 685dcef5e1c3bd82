import { createHash } from 'node:crypto';
import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { PlanCells } from '@eavewell/engine';
import { writeFileWhole } from '@eavewell/formats';
import { type ChangeRecord, type Facts, recordName, rowKey } from '@eavewell/records';
import type { Language } from '@eavewell/words';
import type { OpenProgramme } from '../openProgramme.ts';
import { planRowsOf, touchesPlan } from './planRowsSent.ts';
import type { PlanRowsSent } from './rolloutAt.ts';

/** A plan that was found in place of another, and is not kept: somebody is to look at it first. */
export interface FoundPlan {
  /** The plan it was made anew from, and is kept as. */
  readonly into: string;
  /** What it is called where it is kept beside that one. */
  readonly name: string;
  readonly by: string;
  /** When the search was begun: of then are its days. */
  readonly at: string;
  /** How many records there were then, and the last of them; null: none. */
  readonly version: number;
  readonly lastRecord: string | null;
  readonly from: string;
  readonly planTrips: readonly PlanCells[];
  readonly planStops: readonly PlanCells[];
}

/** What was entered since the tables were as a plan was found for. */
export interface EnteredSince {
  readonly records: readonly ChangeRecord[];
  /** The plan itself was changed, or nobody can say what was: what was found would be laid over it. */
  readonly isPlanChanged: boolean;
}

/** Plans that were found and wait to be looked at: of each plan one, in a file of its own, so that they outlive a restart. */
export class FoundPlans {
  private readonly known = new Map<string, Promise<Map<string, FoundPlan>>>();

  constructor(private readonly folder: string) {}

  /** Those of a programme whose plans are there still. */
  async list({ entry, facts }: OpenProgramme): Promise<readonly FoundPlan[]> {
    const all = [...(await this.read(entry.programmeId)).values()];
    return all.filter(({ into }) => facts.row('plans', into) !== null);
  }

  async of(programme: OpenProgramme, into: string): Promise<FoundPlan | null> {
    return (await this.list(programme)).find((one) => one.into === into) ?? null;
  }

  /** Holds what was found, in place of what was found for the same plan before. */
  async hold({ entry: { programmeId } }: OpenProgramme, found: FoundPlan): Promise<void> {
    const known = await this.read(programmeId);
    await writeFileWhole(this.file(programmeId, found.into), JSON.stringify(found));
    known.set(found.into, found);
  }

  async leave({ entry: { programmeId } }: OpenProgramme, { into }: FoundPlan): Promise<void> {
    (await this.read(programmeId)).delete(into);
    await rm(this.file(programmeId, into), { force: true });
  }

  private read(programmeId: string): Promise<Map<string, FoundPlan>> {
    const known = this.known.get(programmeId) ?? this.readAll(programmeId);
    this.known.set(programmeId, known);
    return known;
  }

  private async readAll(programmeId: string): Promise<Map<string, FoundPlan>> {
    const folder = join(this.folder, programmeId);
    const found = new Map<string, FoundPlan>();
    for (const name of await readdir(folder).catch(() => [])) {
      if (!name.endsWith('.json')) continue;
      try {
        const one = JSON.parse(await readFile(join(folder, name), 'utf8')) as FoundPlan;
        found.set(one.into, one);
      } catch {
        // What cannot be read is searched for once more.
        await rm(join(folder, name), { force: true });
      }
    }
    return found;
  }

  private file(programmeId: string, into: string): string {
    return join(this.folder, programmeId, `${idOfFound(into)}.json`);
  }
}

/** What a plan that was found is asked by: no plan of the tables is called so. */
export function idOfFound(into: string): string {
  return `found-${createHash('sha256').update(into).digest('hex').slice(0, 16)}`;
}

/** What was entered since a plan was found. */
export function enteredSince({ records }: Pick<OpenProgramme, 'records'>, found: FoundPlan): EnteredSince {
  const last = found.lastRecord;
  const at = last === null ? 0 : 1 + records.findLastIndex((record) => recordName(record) === last);
  const since = records.slice(at);
  // Records that came from elsewhere lie among those there were.
  const isSure = at === found.version;
  return { records: since, isPlanChanged: !isSure || since.some((record) => touchesPlan(record, found.into)) };
}

/** The rows of the tables of plans, with those of a plan that was found and is not kept. */
export function rowsWithFound(facts: Facts, found: FoundPlan, { say }: Language): PlanRowsSent {
  const { plans, planTrips, planStops } = planRowsOf(facts);
  const { into, at } = found;
  const planId = idOfFound(into);
  const head = facts.row('plans', into) ?? {};
  const name = say('rolloutAnswers.anew.name', { name: head['name'] ?? into });
  const { note: _, ...rest } = head;
  const plan = { ...rest, planId, name, isInForce: 'no', timedAt: at };
  const own = (rows: readonly PlanCells[], column: string) =>
    rows.map((cells) => [rowKey([planId, cells[column]!]), { ...cells, planId }] as const);
  return {
    plans: [...plans, [rowKey([planId]), plan]],
    planTrips: [...planTrips, ...own(found.planTrips, 'tripId')],
    planStops: [...planStops, ...own(found.planStops, 'siteId')],
  };
}
