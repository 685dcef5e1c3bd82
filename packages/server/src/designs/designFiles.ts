import { type FileHandle, open, readdir, readFile, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import type { SmallestRemedy, setDatesAt } from '@eavewell/engine';
import { makeFolder, writeFileWhole } from '@eavewell/formats';
import type { SiteSaid } from '@eavewell/report';
import type { DesignReport, SiteCup, SiteShort, SiteYears } from '@eavewell/tables';

/**
 * The designs of a programme, as they are kept beside the database: all of it follows from the records, so the folder may be
 * taken away at any time. In it stand `sites-….jsonl`, a line a site that was judged, only ever added to; `judged.json`, which
 * line is of which facts; and `list.jsonl`, the last whole design. What it followed from stands beside it: keptFacts.ts.
 *
 * @definition ours: docs/decisions/0115-designs-carried-over.md
 */

/** Where the report of a site stands. */
export interface LinePlace {
  readonly file: string;
  readonly from_bytes: number;
  readonly length_bytes: number;
  /** The check sum of the line. */
  readonly crc: number;
}

/** What a list tells of a site, in English, and what its sentences are made of in any language. */
export interface SiteTold {
  readonly short: SiteShort;
  readonly said: SiteSaid;
  /** How each of its water years went; null where nothing was judged. */
  readonly years: SiteYears | null;
  /** What may be said of drinking its water; null where its cup is not judged. */
  readonly cup: SiteCup | null;
}

/** Where the report of a site stands, and where what it follows from. */
interface SitePlaces extends LinePlace {
  readonly facts: LinePlace;
}

/** What is kept of a site beside what is told of it. */
interface SiteBeside extends SitePlaces {
  /** From when to when its sets of cartridges last, as its cost takes them; null where it has no unit in use. */
  readonly sets: ReturnType<typeof setDatesAt>;
}

/** A site as it was last judged, and what of. */
export interface SiteJudged extends SiteBeside, SiteTold {
  readonly hash: string;
  readonly smallest: SmallestRemedy | null;
}

/** A site of a whole design. */
export interface SiteListed extends SiteBeside, SiteTold {}

/** What a design says beside its sites. */
export type DesignRest = Omit<DesignReport, 'sites'>;

/** A whole design: of which facts, and its sites in the order of their table. */
export interface DesignList {
  readonly build: string;
  /** The version of the facts, and the record it ends with: together they name the facts. */
  readonly version: number;
  readonly lastRecord: string | null;
  /** Made once for each design. */
  readonly stamp: string;
  readonly rest: DesignRest;
  readonly sites: readonly SiteListed[];
}

const judgedFile = 'judged.json';
const listFile = 'list.jsonl';
const sitesFile = /^sites-[0-9a-z]+\.jsonl$/;

/** How many lines are taken apart before others get their turn. */
const turn_lines = 200;

/** Lines of sites that nobody names any more are left out once they are more than half, and more than so much [byte]. */
const leastCleared_bytes = 4e6;

/** What was judged, by site, where this program's build wrote it; without what does not stand as it was written. */
async function readJudged(folder: string, build: string): Promise<Map<string, SiteJudged>> {
  try {
    const read = JSON.parse(await readFile(join(folder, judgedFile), 'utf8')) as {
      readonly build: string;
      readonly sites: readonly (readonly [string, SiteJudged])[];
    };
    if (read.build !== build) return new Map();
    return await readLines(folder, async (lines) => {
      const judged = new Map<string, SiteJudged>();
      for (const [siteId, one] of read.sites)
        if (sitesFile.test(one.file) && (await lines.hasBoth(one))) judged.set(siteId, one);
      return judged;
    });
  } catch {
    return new Map();
  }
}

const sizeOf = (path: string): Promise<number> =>
  stat(path).then(
    ({ size }) => size,
    () => 0,
  );

/** Does every line of a design stand as it was written? */
export function isWhole(folder: string, { sites }: DesignList): Promise<boolean> {
  return readLines(folder, async (lines) => {
    for (const one of sites) if (!(await lines.hasBoth(one))) return false;
    return true;
  });
}

/** What the last whole design says beside its sites; null where there is none that can be read. */
export async function readHead(folder: string, build: string): Promise<Omit<DesignList, 'sites'> | null> {
  try {
    const file = await open(join(folder, listFile), 'r');
    for await (const line of file.readLines()) {
      const head = JSON.parse(line) as Omit<DesignList, 'sites'>;
      return head.build === build ? head : null;
    }
    return null;
  } catch {
    return null;
  }
}

/** The last whole design, where this program's build wrote it; null where there is none that can be read. */
export async function readList(folder: string, build: string): Promise<DesignList | null> {
  try {
    const lines = (await readFile(join(folder, listFile), 'utf8')).split('\n');
    const head = JSON.parse(lines[0]!) as Omit<DesignList, 'sites'> & { readonly count: number };
    if (head.build !== build || lines.length !== head.count + 2) return null;
    const sites: SiteListed[] = [];
    for (let i = 1; i <= head.count; i++) {
      sites.push(JSON.parse(lines[i]!) as SiteListed);
      if (i % turn_lines === 0) await new Promise(setImmediate);
    }
    return { ...head, sites };
  } catch {
    return null;
  }
}

/** Reads lines of sites; the files are opened once. */
export class LineReader {
  private readonly folder: string;
  private readonly files = new Map<string, FileHandle>();

  constructor(folder: string) {
    this.folder = folder;
  }

  /** The report of one site as JSON; null where it does not stand as it was written. */
  async line({ file: name, from_bytes, length_bytes, crc }: LinePlace): Promise<string | null> {
    try {
      const file = this.files.get(name) ?? (await open(join(this.folder, name), 'r'));
      this.files.set(name, file);
      const bytes = new Uint8Array(length_bytes);
      const { bytesRead } = await file.read(bytes, 0, bytes.length, from_bytes);
      if (bytesRead !== bytes.length || crc32(bytes) !== crc) return null;
      return new TextDecoder().decode(bytes).slice(0, -1);
    } catch {
      return null;
    }
  }

  /** Do the report and the facts of a site stand as they were written? */
  async hasBoth(one: SitePlaces): Promise<boolean> {
    return (await this.line(one)) !== null && (await this.line(one.facts)) !== null;
  }

  async close(): Promise<void> {
    for (const file of this.files.values()) await file.close();
  }
}

/** Reads lines, and closes their files. */
export async function readLines<T>(folder: string, work: (lines: LineReader) => Promise<T>): Promise<T> {
  const lines = new LineReader(folder);
  try {
    return await work(lines);
  } finally {
    await lines.close();
  }
}

/** Takes all of it away; it is made anew when it is asked for. */
export const removeDesigns = (folder: string): Promise<void> => rm(folder, { recursive: true, force: true });

/** Writes what is judged, site by site, so that a design that is called off leaves what it did to the next. */
export class DesignWriter {
  private readonly folder: string;
  private readonly build: string;
  readonly judged: Map<string, SiteJudged>;
  private readonly file: FileHandle;
  private readonly name: string;
  private end_bytes: number;

  private constructor(
    folder: string,
    build: string,
    judged: Map<string, SiteJudged>,
    file: FileHandle,
    name: string,
    end_bytes: number,
  ) {
    this.folder = folder;
    this.build = build;
    this.judged = judged;
    this.file = file;
    this.name = name;
    this.end_bytes = end_bytes;
  }

  static async open(folder: string, build: string): Promise<DesignWriter> {
    await makeFolder(folder);
    const judged = await readJudged(folder, build);
    const live_bytes = [...judged.values()].reduce((sum, one) => sum + one.length_bytes + one.facts.length_bytes, 0);
    const names = new Set([...judged.values()].map((one) => one.file));
    const last = [...names].at(-1);
    const size_bytes = last === undefined ? 0 : await sizeOf(join(folder, last));
    const isSparse = size_bytes > leastCleared_bytes && size_bytes > 2 * live_bytes;
    const name = last === undefined || names.size > 1 || isSparse ? `sites-${Date.now().toString(36)}.jsonl` : last;
    const file = await open(join(folder, name), 'a');
    const writer = new DesignWriter(folder, build, judged, file, name, (await file.stat()).size);
    if (name !== last) await writer.moveHere();
    return writer;
  }

  /** Copies the lines that are still named into the new file. */
  private async moveHere(): Promise<void> {
    await readLines(this.folder, async (lines) => {
      for (const [siteId, one] of this.judged) {
        const [text, facts] = [await lines.line(one), await lines.line(one.facts)];
        if (text === null || facts === null) this.judged.delete(siteId);
        else this.judged.set(siteId, { ...one, ...(await this.append(text)), facts: await this.append(facts) });
      }
    });
  }

  private async append(text: string): Promise<LinePlace> {
    const bytes = Buffer.from(`${text}\n`);
    await this.file.write(bytes);
    const place = {
      ...{ file: this.name, from_bytes: this.end_bytes, length_bytes: bytes.length },
      crc: crc32(bytes),
    };
    this.end_bytes += bytes.length;
    return place;
  }

  /** Keeps a site that was judged: its report, and what it follows from. */
  async add(
    siteId: string,
    report: string,
    facts: string,
    rest: Pick<SiteJudged, 'hash' | 'short' | 'said' | 'years' | 'cup' | 'smallest' | 'sets'>,
  ): Promise<void> {
    const places = { ...(await this.append(report)), facts: await this.append(facts) };
    this.judged.set(siteId, { ...rest, ...places });
  }

  /** Says what is judged so far. */
  async save(): Promise<void> {
    await this.file.sync();
    await writeFileWhole(join(this.folder, judgedFile), JSON.stringify({ build: this.build, sites: [...this.judged] }));
  }

  /** Says that the design is whole, and takes away what no longer counts. */
  async finish(design: Omit<DesignList, 'build' | 'sites'>, siteIds: readonly string[]): Promise<void> {
    const wanted = new Set(siteIds);
    for (const siteId of this.judged.keys()) if (!wanted.has(siteId)) this.judged.delete(siteId);
    await this.save();
    const head = { build: this.build, ...design, count: siteIds.length };
    const lines = siteIds.map((siteId) => {
      const { file, from_bytes, length_bytes, crc, facts, sets, short, said, years, cup } = this.judged.get(siteId)!;
      return JSON.stringify({ file, from_bytes, length_bytes, crc, facts, sets, short, said, years, cup });
    });
    await writeFileWhole(join(this.folder, listFile), `${[JSON.stringify(head), ...lines].join('\n')}\n`);
    for (const name of await readdir(this.folder))
      if (sitesFile.test(name) && name !== this.name) await rm(join(this.folder, name), { force: true });
  }

  close(): Promise<void> {
    return this.file.close();
  }
}
