import { createWriteStream, type WriteStream } from 'node:fs';
import { rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { finished } from 'node:stream/promises';
import { makeFolder } from '@eavewell/formats';
import { write } from '../print/terminal.ts';

/** A file written piece by piece under another name, and renamed when it is whole: a reader never finds half of it. */
export class WholeFile {
  readonly path: string;
  readonly #unfinished: string;
  readonly #stream: WriteStream;
  readonly #end: Promise<void>;

  private constructor(path: string) {
    this.path = path;
    this.#unfinished = `${path}.${process.pid}.unfinished`;
    this.#stream = createWriteStream(this.#unfinished, { encoding: 'utf8', flush: true });
    this.#end = finished(this.#stream);
    // Told again by close(); a failure on the way must not end the program unheard.
    this.#end.catch(() => undefined);
  }

  static async open(path: string): Promise<WholeFile> {
    await makeFolder(dirname(path));
    return new WholeFile(path);
  }

  async write(text: string): Promise<void> {
    if (this.#stream.errored) throw this.#stream.errored;
    await write(this.#stream, text);
  }

  async close(): Promise<void> {
    this.#stream.end();
    await this.#end;
    await rename(this.#unfinished, this.path);
  }

  /** Gives up: nothing is left behind. */
  async drop(): Promise<void> {
    this.#stream.destroy();
    await this.#end.catch(() => undefined);
    await rm(this.#unfinished, { force: true });
  }
}

/** Writes a whole file at once. */
export async function writeWhole(path: string, text: string): Promise<void> {
  const file = await WholeFile.open(path);
  try {
    await file.write(text);
    await file.close();
  } catch (error) {
    await file.drop();
    throw error;
  }
}
