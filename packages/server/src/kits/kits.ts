import { randomBytes } from 'node:crypto';
import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { dayOnClock, isoDay } from '@eavewell/engine';
import { Stopped, type Work } from '@eavewell/work';
import { readLines } from '../designs/designFiles.ts';
import type { Designs } from '../designs/designs.ts';
import type { OpenProgramme } from '../openProgramme.ts';
import { programBuild } from '../programBuild.ts';
import type { Programmes } from '../programmes.ts';
import { type KitsKept, nameOfKits, readKits, readSiteKits } from './keptKits.ts';
import type { KitSumAsked } from './kitSumTask.ts';
import type { KitsAsked } from './kitsTask.ts';
import type { KitWorkbookAsked } from './kitWorkbookTask.ts';
import type { PackAsked, PackMade } from './packTask.ts';

/** Kits that are there: what they are called, where they stand, and what all of them come to. */
export interface KitsFound {
  readonly name: string;
  readonly folder: string;
  readonly kept: KitsKept;
}

/** Answers kept for those who ask again. Ours. */
const mostTexts = 24;

/** The kits of programmes, made in a thread, kept for each state of facts and design. */
export class Kits {
  private readonly making = new Map<string, Promise<KitsFound>>();
  private readonly texts = new Map<string, Promise<string>>();

  constructor(
    private readonly programmes: Programmes,
    private readonly designs: Designs,
    private readonly work: Work,
    private readonly programVersion: string,
  ) {}

  /** The kits of the present facts; where they are not there they are made. */
  async of(programme: OpenProgramme): Promise<KitsFound> {
    const { version } = programme;
    // Asking begins a design where there is none, so that wear comes to be known.
    await this.designs.state(programme);
    const name = await this.nameOf(programme, version);
    const known = this.making.get(name) ?? this.found(programme, version, name);
    this.making.set(name, known);
    void known.catch(() => this.making.delete(name));
    for (const other of [...this.making.keys()].slice(0, -mostKits)) this.making.delete(other);
    return known;
  }

  /** The answer for a programme or a trip as JSON, put together in a thread. */
  sum(programme: OpenProgramme, asked: Omit<KitSumAsked, 'folder'>): Promise<string> {
    return this.orAnew(programme, (kits) => this.sumOf(kits, asked));
  }

  /** The kit of a programme or a trip as a workbook, written in a thread. */
  workbook(programme: OpenProgramme, asked: Omit<KitWorkbookAsked, 'folder' | 'eavewell'>): Promise<Uint8Array> {
    return this.orAnew(programme, async ({ folder }) => {
      const given = { ...asked, folder, eavewell: this.programVersion } satisfies KitWorkbookAsked;
      return this.work.start<Uint8Array>('kitWorkbook', given).result;
    });
  }

  /** The kit of one site, and what all share; null where there is no such site. */
  site(programme: OpenProgramme, siteId: string) {
    return this.orAnew(programme, async ({ kept, folder }) => {
      const place = kept.sites.find((listed) => listed.siteId === siteId);
      if (place === undefined) return null;
      const [site] = (await readSiteKits(folder, [place])) ?? [];
      if (site === undefined) throw new Error('the kits that are kept cannot be read');
      return { kept, site };
    });
  }

  /** Does something with kits; where they do not stand as they were written they are made anew, once. */
  private async orAnew<T>(programme: OpenProgramme, work: (kits: KitsFound) => Promise<T>): Promise<T> {
    const kits = await this.of(programme);
    try {
      return await work(kits);
    } catch (error) {
      if (error instanceof Stopped) throw error;
      this.making.delete(kits.name);
      await rm(kits.folder, { recursive: true, force: true });
      return work(await this.of(programme));
    }
  }

  /** What kits are called: by the facts, the design whose wear they take, the day and the program. */
  private async nameOf(programme: OpenProgramme, version: number): Promise<string> {
    const design = await this.designs.keptList(programme);
    const { programmeId } = programme.entry;
    const build = await programBuild();
    return nameOfKits([programmeId, version, design?.list.stamp ?? null, dayOnClock(new Date()), build]);
  }

  private async sumOf(kits: KitsFound, asked: Omit<KitSumAsked, 'folder'>): Promise<string> {
    const key = JSON.stringify([kits.name, asked]);
    const text =
      this.texts.get(key) ??
      this.work.start<string>('kitSum', { ...asked, folder: kits.folder } satisfies KitSumAsked).result;
    this.texts.delete(key);
    this.texts.set(key, text);
    void text.catch(() => this.texts.delete(key));
    for (const old of [...this.texts.keys()].slice(0, -mostTexts)) this.texts.delete(old);
    return text;
  }

  /**
   * The pack of one site in a language, laid in a thread: the file, or the letters no face has.
   *
   * @returns `notYet` before the site is judged; `unknown` where there is no such site
   */
  async pack(programme: OpenProgramme, siteId: string, language: string): Promise<PackMade | 'notYet' | 'unknown'> {
    const kits = await this.of(programme);
    if (!kits.kept.sites.some((site) => site.siteId === siteId)) return 'unknown';
    const design = await this.designs.keptList(programme);
    const listed = design?.list.sites.find(({ short }) => short.siteId === siteId);
    // What is printed is of one state: the pack waits for the design of the present facts.
    if (design === null || listed === undefined || design.list.version !== kits.kept.version) return 'notYet';
    const [facts, report] = await readLines(design.folder, async (lines) => [
      await lines.line(listed.facts),
      await lines.line(listed),
    ]);
    if (facts == null || report == null) return 'notYet';
    const now = new Date();
    const asked = { facts, report, faults: design.list.rest.problems, kits: kits.folder, siteId, language };
    const two = (value: number) => String(value).padStart(2, '0');
    const printed = {
      printedOn: isoDay(dayOnClock(now)),
      printedAt: `${two(now.getHours())}:${two(now.getMinutes())}`,
    };
    return this.work.start<PackMade>('pack', { ...asked, ...printed } satisfies PackAsked).result;
  }

  private async found(programme: OpenProgramme, version: number, name: string): Promise<KitsFound> {
    const { programmeId } = programme.entry;
    const all = this.programmes.derivedFolder(join('kits', programmeId));
    const folder = join(all, name);
    const there = await readKits(folder);
    if (there !== null) return { name, folder, kept: there };
    await rm(folder, { recursive: true, force: true });
    await mkdir(all, { recursive: true });
    const passing = await this.programmes.passingFolder('designs');
    try {
      await this.work.start('kits', {
        ...{ dataFolder: this.programmes.folder, programmeId, version },
        ...{ passing: join(passing, randomBytes(4).toString('hex')), build: await programBuild() },
        designs: this.programmes.derivedFolder(join('designs', programmeId)),
        ...{ folder, today: dayOnClock(new Date()) },
      } satisfies KitsAsked).result;
    } finally {
      await rm(passing, { recursive: true, force: true });
    }
    const kept = await readKits(folder);
    if (kept === null) throw new Error('the kits that were made are not there');
    await clearOthers(all, [...this.making.keys(), name]);
    return { name, folder, kept };
  }
}

/** Kits that are held at a time: those of a few programmes, or of one before and after a change. Ours. */
const mostKits = 6;

async function clearOthers(folder: string, wanted: readonly string[]): Promise<void> {
  for (const name of await readdir(folder))
    if (!wanted.includes(name)) await rm(join(folder, name), { recursive: true, force: true });
}
