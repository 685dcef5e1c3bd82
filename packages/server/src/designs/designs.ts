import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { machineProblem } from '@eavewell/database';
import { recordName } from '@eavewell/records';
import { reportedFaults, restIn, siteReportIn } from '@eavewell/report';
import type { SiteReport } from '@eavewell/tables';
import { english, type Language } from '@eavewell/words';
import { Stopped } from '@eavewell/work';
import type { OpenProgramme } from '../openProgramme.ts';
import { programBuild } from '../programBuild.ts';
import type { Programmes } from '../programmes.ts';
import type { RunningTasks } from '../runningTasks.ts';
import {
  type DesignList,
  type DesignRest,
  isWhole,
  LineReader,
  readHead,
  readLines,
  readList,
  removeDesigns,
  type SiteTold,
} from './designFiles.ts';
import type { DesignAsked, DesignDone } from './designTask.ts';

/** How far the design of a programme is. */
export interface DesignState {
  /** The version of the facts it is of; null where there is none yet. */
  readonly version: number | null;
  /** What it says beside its sites; null where there is none yet. */
  readonly rest: DesignRest | null;
  /** What it says of each site, in short: the last whole design, and over it what is judged already of the present facts. */
  readonly sites: ReadonlyMap<string, SiteTold>;
  /** A name for what `sites` and `rest` hold: another where they are others. */
  readonly name: string;
  /** How far the design of the present facts is; 1 where it is there. */
  readonly done_fraction: number;
  /** It could not be made: our own fault, told on the screen of the program. */
  readonly isFailed: boolean;
  /** A person called it off: it is begun again where that is asked for, or where the facts change. */
  readonly isCalledOff: boolean;
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
  list: DesignList | null;
  sites: Map<string, SiteTold>;
  /** How often `sites` has changed since the list was read [count]. */
  told_count: number;
  failedVersion: number | null;
  calledOffVersion: number | null;
  running: Running | null;
  /** Done when no design of it runs. */
  ended: Promise<void>;
}

/** So long after the machine refused a design it is tried again where it is asked for [ms]. Ours. */
const again_ms = 5000;

/** The designs of programmes, worked out beside the requests. The last whole one of each is kept in the data folder. */
export class Designs {
  /** Called as a design gets on, and when it is done. */
  onProgress: (programmeId: string, version: number, done_fraction: number) => void = () => undefined;
  onFault: (error: unknown) => void = () => undefined;
  /** Called with what was carried over of a design that is done. */
  onDone: (done: DesignDone) => void = () => undefined;
  private readonly programmes: Programmes;
  private readonly tasks: RunningTasks;
  private readonly programVersion: string;
  private readonly kept = new Map<string, Promise<Kept>>();

  constructor(programmes: Programmes, tasks: RunningTasks, programVersion: string) {
    this.programmes = programmes;
    this.tasks = tasks;
    this.programVersion = programVersion;
  }

  /** The design as far as it is. Where it is not of the present facts, it is begun; the last one is given meanwhile. */
  async state(programme: OpenProgramme): Promise<DesignState> {
    const kept = await this.keptOf(programme);
    const { version } = programme;
    const isFailed = kept.failedVersion === version;
    const isPresent = kept.list?.version === version;
    const isCalledOff = !isPresent && kept.calledOffVersion === version;
    const isWaiting = isPresent || isFailed || isCalledOff;
    if (!isWaiting && kept.running?.version !== version) this.begin(programme, kept);
    return {
      version: kept.list?.version ?? null,
      rest: kept.list?.rest ?? null,
      sites: kept.sites,
      name: `${kept.list?.stamp ?? 'none'}-${kept.told_count}`,
      done_fraction: isPresent ? 1 : (kept.running?.done_fraction ?? 0),
      isFailed,
      isCalledOff,
    };
  }

  /** How many sites and people the kept design of a programme has, where it is of all its records; it need not be open. */
  async keptHead({ programmeId, version }: { readonly programmeId: string; readonly version: number }) {
    const folder = this.programmes.derivedFolder(join('designs', programmeId));
    const head = await readHead(folder, await programBuild());
    return head?.version === version ? head.rest.programme : null;
  }

  /** The whole report of one site in a language; null where it was not judged, or is not kept any more: then it is judged anew. */
  async site(programme: OpenProgramme, siteId: string, language: Language): Promise<SiteReport | null> {
    const kept = await this.keptOf(programme);
    const listed = kept.list?.sites.find(({ short }) => short.siteId === siteId);
    if (!listed) return null;
    const text = await readLines(this.folderOf(programme), (lines) => lines.line(listed));
    if (text !== null) return this.siteIn(kept, JSON.parse(text) as SiteReport, language);
    await this.forget(programme);
    return null;
  }

  /** A report that is kept in English, in a language. */
  private siteIn({ list }: Kept, site: SiteReport, language: Language): SiteReport {
    return language === english ? site : siteReportIn(site, language, reportedFaults(list?.rest.problems ?? []));
  }

  /** The whole report in a language as JSON, site by site; null where there is none. */
  async *reportText(programme: OpenProgramme, language: Language): AsyncGenerator<string> {
    const kept = await this.keptOf(programme);
    const { list } = kept;
    if (list === null) {
      yield 'null';
      return;
    }
    const {
      eavewell,
      schema,
      programme: head,
      settings,
      gauges,
      ...after
    } = language === english ? list.rest : restIn(list.rest, language);
    yield `${JSON.stringify({ eavewell, schema, programme: head, settings, gauges }).slice(0, -1)},"sites":[`;
    const lines = new LineReader(this.folderOf(programme));
    try {
      for (const [i, one] of list.sites.entries()) {
        const text = await lines.line(one);
        if (text === null) {
          await this.forget(programme);
          throw new Error('the kept design does not hold together; it is made anew');
        }
        const said =
          language === english ? text : JSON.stringify(this.siteIn(kept, JSON.parse(text) as SiteReport, language));
        yield `${i === 0 ? '' : ','}${said}`;
      }
    } finally {
      await lines.close();
    }
    yield `],${JSON.stringify(after).slice(1)}`;
  }

  /** The last whole design, and the folder it is kept in; null where there is none. */
  async keptList(programme: OpenProgramme): Promise<{ readonly list: DesignList; readonly folder: string } | null> {
    const { list } = await this.keptOf(programme);
    return list && { list, folder: this.folderOf(programme) };
  }

  /** Calls the running design off. It stays so for these facts until it is begun again; what was judged so far is kept. */
  async cancel(programme: OpenProgramme): Promise<void> {
    const kept = await this.keptOf(programme);
    if (kept.running === null) return;
    kept.calledOffVersion = kept.running.version;
    kept.running.cancel();
    kept.running = null;
  }

  /** Begins a design again that was called off or failed. */
  async again(programme: OpenProgramme): Promise<void> {
    const kept = await this.keptOf(programme);
    [kept.calledOffVersion, kept.failedVersion] = [null, null];
  }

  /** Calls off what runs, and is done when nothing of it is left. */
  async close(): Promise<void> {
    for (const found of this.kept.values()) {
      const kept = await found;
      kept.running?.cancel();
      await kept.ended;
    }
  }

  private folderOf({ entry }: OpenProgramme): string {
    return this.programmes.derivedFolder(join('designs', entry.programmeId));
  }

  private keptOf(programme: OpenProgramme): Promise<Kept> {
    const { programmeId } = programme.entry;
    const known = this.kept.get(programmeId) ?? this.load(programme);
    this.kept.set(programmeId, known);
    return known;
  }

  private async load(programme: OpenProgramme): Promise<Kept> {
    const list = await this.readPresent(programme);
    return {
      ...{ list, sites: sitesOf(list), told_count: 0, failedVersion: null, calledOffVersion: null },
      ...{ running: null, ended: Promise.resolve() },
    };
  }

  /** The list that is kept, where it is of facts this programme has or had. */
  private async readPresent(programme: OpenProgramme): Promise<DesignList | null> {
    const list = await readList(this.folderOf(programme), await programBuild());
    if (list === null) return null;
    if (!(await isWhole(this.folderOf(programme), list))) {
      await removeDesigns(this.folderOf(programme));
      return null;
    }
    const last = programme.records.at(-1);
    const isOfNow = list.version !== programme.version || list.lastRecord === (last ? recordName(last) : null);
    return isOfNow && list.version <= programme.version ? list : null;
  }

  /** What is kept does not hold together: it is made anew. */
  async forget(programme: OpenProgramme): Promise<void> {
    const kept = await this.keptOf(programme);
    kept.running?.cancel();
    [kept.list, kept.sites, kept.told_count] = [null, new Map(), kept.told_count + 1];
    await removeDesigns(this.folderOf(programme));
  }

  private begin(programme: OpenProgramme, kept: Kept): void {
    kept.running?.cancel();
    const { version } = programme;
    const running: Running = { version, done_fraction: 0, isCancelled: false, cancel: () => undefined };
    running.cancel = () => {
      running.isCancelled = true;
    };
    kept.running = running;
    // Two that write in one folder would take each other's files away.
    kept.ended = kept.ended.then(() => this.run(programme, kept, running)).catch(this.onFault);
  }

  private async run(programme: OpenProgramme, kept: Kept, running: Running): Promise<void> {
    if (running.isCancelled) return;
    const { programmeId } = programme.entry;
    const { version } = running;
    const folder = await this.programmes.passingFolder('designs');
    try {
      const about = { kind: 'design', programmeId, name: null, importId: null } as const;
      const asked = await this.asked(programme, version, folder);
      const hear = (done_fraction: number, piece: unknown) =>
        this.hear(kept, running, programmeId, done_fraction, piece as SiteTold[]);
      const job = this.tasks.start<DesignDone>(about, 'design', asked, hear);
      running.cancel = job.cancel;
      if (running.isCancelled) job.cancel();
      const done = await job.result;
      const list = await readList(this.folderOf(programme), await programBuild());
      if (list?.version !== version) throw new Error('the design that was made is not there');
      [kept.list, kept.sites, kept.told_count] = [list, sitesOf(list), 0];
      this.onDone(done);
      this.onProgress(programmeId, version, 1);
    } catch (error) {
      if (error instanceof Stopped) return;
      kept.failedVersion = version;
      // What the machine refused, a full disk say, is tried again after a while: it may be mended meanwhile.
      if (machineProblem(error, '') !== null) setTimeout(() => tryAgain(kept, version), again_ms).unref();
      this.onFault(error);
    } finally {
      if (kept.running === running) kept.running = null;
      await rm(folder, { recursive: true, force: true });
    }
  }

  private async asked(programme: OpenProgramme, version: number, folder: string): Promise<DesignAsked> {
    return {
      dataFolder: this.programmes.folder,
      programmeId: programme.entry.programmeId,
      version,
      folder: join(folder, 'programme'),
      kept: this.folderOf(programme),
      build: await programBuild(),
      programVersion: this.programVersion,
    };
  }

  private hear(kept: Kept, running: Running, programmeId: string, done_fraction: number, fresh: SiteTold[] = []): void {
    for (const told of fresh) kept.sites.set(told.short.siteId, told);
    if (fresh.length > 0) kept.told_count++;
    running.done_fraction = Math.min(done_fraction, nearlyDone);
    this.onProgress(programmeId, running.version, running.done_fraction);
  }
}

function tryAgain(kept: Kept, version: number): void {
  if (kept.failedVersion === version) kept.failedVersion = null;
}

const sitesOf = (list: DesignList | null): Map<string, SiteTold> =>
  new Map((list?.sites ?? []).map(({ short, said, years, cup }) => [short.siteId, { short, said, years, cup }]));
