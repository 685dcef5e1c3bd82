import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { machineProblem } from '@eavewell/database';
import type { RowsByTable } from '@eavewell/formats';
import type { Facts } from '@eavewell/records';
import type { DesignReport } from '@eavewell/tables';
import { Stopped, type Work } from '@eavewell/work';
import type { OpenProgramme } from './openProgramme.ts';
import type { Programmes } from './programmes.ts';
import type { DesignAsked } from './tasks.ts';

/** How far the design of a programme is. */
export interface DesignState {
  /** The version of the facts it is of; null where there is none yet. */
  readonly version: number | null;
  readonly report: DesignReport | null;
  /** How far the design of the present facts is; 1 where `report` is it. */
  readonly done_fraction: number;
  /** It could not be made: our own fault, told on the screen of the program. */
  readonly isFailed: boolean;
}

/** Told until the result is there: only then is it done. */
const nearlyDone = 0.99;

interface Running {
  readonly version: number;
  done_fraction: number;
  isCancelled: boolean;
  cancel: () => void;
}

interface Kept {
  version: number | null;
  report: DesignReport | null;
  failedVersion: number | null;
  running: Running | null;
}

/** So long after the machine refused a design it is tried again where it is asked for [ms]. Ours. */
const again_ms = 5000;

/** All rows of all tables, in the order of their files. */
export function rowsOfFacts(facts: Facts): RowsByTable {
  return new Map(facts.tableNames().map((table) => [table, new Map(facts.rowsAsEntered(table))]));
}

/** The designs of programmes, worked out beside the requests and kept for one version of the facts: the last. */
export class Designs {
  /** Called as a design gets on, and when it is done. */
  onProgress: (programmeId: string, version: number, done_fraction: number) => void = () => undefined;
  onFault: (error: unknown) => void = () => undefined;
  private readonly programmes: Programmes;
  private readonly work: Work;
  private readonly programVersion: string;
  private readonly kept = new Map<string, Kept>();
  private readonly ending = new Set<Promise<void>>();

  constructor(programmes: Programmes, work: Work, programVersion: string) {
    this.programmes = programmes;
    this.work = work;
    this.programVersion = programVersion;
  }

  /** The design as far as it is. Where it is not of the present facts, it is begun; the last one is given meanwhile. */
  state(programme: OpenProgramme): DesignState {
    const kept = this.keptOf(programme);
    const { version } = programme;
    const isFailed = kept.failedVersion === version;
    if (kept.version !== version && kept.running?.version !== version && !isFailed) this.begin(programme, kept);
    const done_fraction = kept.version === version ? 1 : (kept.running?.done_fraction ?? 0);
    return { version: kept.version, report: kept.report, done_fraction, isFailed };
  }

  /** Calls the running design off; asking again begins it anew. */
  cancel(programme: OpenProgramme): void {
    this.keptOf(programme).running?.cancel();
  }

  /** Calls off what runs, and is done when nothing of it is left. */
  async close(): Promise<void> {
    for (const { running } of this.kept.values()) running?.cancel();
    await Promise.all(this.ending);
  }

  private keptOf({ entry }: OpenProgramme): Kept {
    const kept = this.kept.get(entry.programmeId) ?? {
      version: null,
      report: null,
      failedVersion: null,
      running: null,
    };
    this.kept.set(entry.programmeId, kept);
    return kept;
  }

  private forget(kept: Kept, version: number): void {
    if (kept.failedVersion === version) kept.failedVersion = null;
  }

  private begin(programme: OpenProgramme, kept: Kept): void {
    kept.running?.cancel();
    const running: Running = {
      version: programme.version,
      done_fraction: 0,
      isCancelled: false,
      cancel: () => undefined,
    };
    running.cancel = () => {
      running.isCancelled = true;
    };
    kept.running = running;
    const ended = this.run(programme, kept, running).catch(this.onFault);
    this.ending.add(ended);
    void ended.then(() => this.ending.delete(ended));
  }

  private async run(programme: OpenProgramme, kept: Kept, running: Running): Promise<void> {
    const { programmeId } = programme.entry;
    const { version } = running;
    const rows = rowsOfFacts(programme.facts);
    const folder = await this.programmes.passingFolder('designs');
    try {
      if (running.isCancelled) return;
      const input: DesignAsked = { rows, folder: join(folder, 'programme'), version: this.programVersion };
      const onReport = (done_fraction: number) => {
        running.done_fraction = Math.min(done_fraction, nearlyDone);
        this.onProgress(programmeId, version, running.done_fraction);
      };
      const job = this.work.start<DesignReport>('design', input, { onReport });
      running.cancel = job.cancel;
      [kept.report, kept.version] = [await job.result, version];
      this.onProgress(programmeId, version, 1);
    } catch (error) {
      if (error instanceof Stopped) return;
      kept.failedVersion = version;
      // What the machine refused, a full disk say, is tried again after a while: it may be mended meanwhile.
      if (machineProblem(error, '') !== null) setTimeout(() => this.forget(kept, version), again_ms).unref();
      this.onFault(error);
    } finally {
      if (kept.running === running) kept.running = null;
      await rm(folder, { recursive: true, force: true });
    }
  }
}
