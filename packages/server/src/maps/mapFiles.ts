import { createWriteStream } from 'node:fs';
import { link, mkdir, open, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { Checked, Problem } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import { type MapFile, readMapFile } from './readMapFile.ts';

/** What a map file may be called: it becomes part of a path and of an address, so nothing else is let in. */
export const mapFileForm = /^[A-Za-z0-9_-]{1,60}\.pmtiles$/;

/** What a file is called until it is whole and was looked into. */
const partEnd = '.part';

/** What is told of a sending whose sender went away. */
const brokenOff = ['ECONNRESET', 'ERR_STREAM_PREMATURE_CLOSE', 'ECONNABORTED'];

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/** A map file, or what is wrong with it. */
export interface MapFileFound {
  readonly file: string;
  readonly map: MapFile | null;
  readonly problems: readonly Problem[];
}

/** Files of map tiles that stand in the folder `maps` of the data folder: sent from a page, or laid there by hand. */
export class MapFiles {
  constructor(readonly folder: string) {}

  /** The files there, in order, each with what it holds or what is wrong with it. */
  async list(): Promise<readonly MapFileFound[]> {
    const names = await readdir(this.folder).catch(() => []);
    const files = names.filter((name) => name.endsWith('.pmtiles')).sort();
    return Promise.all(files.map((file) => this.found(file)));
  }

  /**
   * Keeps a file that is sent. It is written beside, looked into, and only then has its name: a sending that is cut leaves nothing.
   *
   * @problem map.name_wrong, map.there, map.unreadable
   */
  async add(file: string, content: Readable): Promise<Checked<MapFile>> {
    if (!mapFileForm.test(file)) return refused(recordProblem('map.name_wrong', {}, { value: file }));
    await mkdir(this.folder, { recursive: true });
    const part = join(this.folder, `${file}.${process.hrtime.bigint()}${partEnd}`);
    try {
      await pipeline(content, createWriteStream(part, { flags: 'wx' }));
      await flushed(part);
      const read = await readMapFile(part, file);
      if (!read.ok) return read;
      // A link refuses a name that is taken; a rename would write over it.
      await link(part, join(this.folder, file));
      return read;
    } catch (error) {
      const { code = '' } = error as NodeJS.ErrnoException;
      if (code === 'EEXIST') return refused(recordProblem('map.there', {}, { value: file }));
      if (brokenOff.includes(code)) return refused(recordProblem('map.unreadable', {}, { value: file, reason: 'cut' }));
      throw error;
    } finally {
      await rm(part, { force: true });
    }
  }

  /**
   * Takes a file away.
   *
   * @problem request.not_found - there is none of that name
   */
  async remove(file: string): Promise<Checked<null>> {
    const there = (await this.list()).some((one) => one.file === file);
    if (!there) return refused(recordProblem('request.not_found', {}, { value: file }));
    await rm(join(this.folder, file));
    return { ok: true, value: null, problems: [] };
  }

  /** Takes away what was being sent when the program last ended. */
  async tidy(): Promise<void> {
    const names = await readdir(this.folder).catch(() => []);
    for (const name of names) if (name.endsWith(partEnd)) await rm(join(this.folder, name), { force: true });
  }

  private async found(file: string): Promise<MapFileFound> {
    if (!mapFileForm.test(file))
      return { file, map: null, problems: [recordProblem('map.name_wrong', {}, { value: file })] };
    const read = await readMapFile(join(this.folder, file), file);
    return { file, map: read.ok ? read.value : null, problems: read.problems };
  }
}

/** Waits until a file is on the disk. */
async function flushed(path: string): Promise<void> {
  const handle = await open(path, 'r+');
  await handle.sync().finally(() => handle.close());
}
