import { createWriteStream } from 'node:fs';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { Checked } from '@eavewell/engine';
import { makeFolder } from '@eavewell/formats';
import { recordProblem } from '@eavewell/records';

/** Most that may be sent at once [byte], and most files. Ours. */
export const largestUpload_bytes = 100e6;
export const mostFiles = 2000;

/** A file that was sent, and where it waits. */
export interface SentFile {
  /** As it was called where it came from, with the folders above it where a folder was sent; never used as a path. */
  readonly name: string;
  readonly path: string;
  /** For a table by itself whose name does not say which it is. */
  readonly table: string | null;
  readonly gaugeId: string | null;
}

/** A file as it comes in. */
export interface ComingFile {
  readonly name: string;
  readonly bytes: Readable;
}

/** Does not fit: what comes in is more than is taken. */
class TooLarge extends Error {}

/** A name that is safe to stand in a folder of its own, so that the person knows it again in problems. */
function safeName(name: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? '';
  const safe = last.replace(/[^\p{L}\p{N} ._-]/gu, '_').replace(/^[. ]+/, '');
  return safe === '' ? 'file' : safe.slice(-100);
}

/**
 * Writes what comes in to disk as it comes, and stops where it is too much. Where it breaks off the error is passed on: who asked
 * takes the folder away.
 *
 * @param coming - the files
 * @param folder - where they are to wait [text]
 * @returns the files
 * @problem import.too_large - more than is taken at once
 * @problem import.too_many - more files than are taken at once
 * @definition ours: docs/decisions/0116-imports-of-several-files.md
 */
export async function receive(
  coming: AsyncIterable<ComingFile>,
  folder: string,
): Promise<Checked<readonly Pick<SentFile, 'name' | 'path'>[]>> {
  const files: Pick<SentFile, 'name' | 'path'>[] = [];
  let all_bytes = 0;
  const counted = async function* (bytes: Readable): AsyncGenerator<Uint8Array> {
    for await (const piece of bytes as AsyncIterable<Uint8Array>) {
      all_bytes += piece.length;
      if (all_bytes > largestUpload_bytes) throw new TooLarge();
      yield piece;
    }
  };
  try {
    for await (const { name, bytes } of coming) {
      if (files.length === mostFiles) {
        bytes.resume();
        return { ok: false, problems: [recordProblem('import.too_many', {}, { most: mostFiles })] };
      }
      const own = join(folder, String(files.length));
      await makeFolder(own);
      const path = join(own, safeName(name));
      await pipeline(counted(bytes), createWriteStream(path));
      files.push({ name, path });
    }
  } catch (error) {
    if (!(error instanceof TooLarge)) throw error;
    const facts = { value: files.at(-1)?.name ?? '', largest_MB: largestUpload_bytes / 1e6 };
    return { ok: false, problems: [recordProblem('import.too_large', {}, facts)] };
  }
  return { ok: true, value: files, problems: [] };
}
