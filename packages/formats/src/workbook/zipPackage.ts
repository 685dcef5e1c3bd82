import { crc32, createInflateRaw } from 'node:zlib';
import { overLimit, ratioFrom_bytes, Unreadable, workbookLimits } from './workbookLimits.ts';
import { packedBytes, type ZipEntry, zipEntries } from './zipEntries.ts';

const bytes_per_MB = 1e6;
const piece_bytes = 1 << 18;

/** May this name of an entry be believed? A workbook's parts have plain relative paths. */
function isPlainName(name: string): boolean {
  const isOdd = name.startsWith('/') || /[\\:\0\uFFFD]/.test(name);
  return !isOdd && !name.split('/').includes('..');
}

/** A zip whose entries can be read, each within the limits. */
export class Package {
  /** Names of entries that lead out of a folder, or are no names: never opened. */
  readonly unsafe: readonly string[];
  private readonly bytes: Uint8Array;
  private readonly entries = new Map<string, ZipEntry>();
  private inflated_bytes = 0;

  constructor(bytes: Uint8Array, entries: readonly ZipEntry[]) {
    this.bytes = bytes;
    if (entries.length > workbookLimits.entries) throw overLimit('entries', entries.length);
    this.unsafe = entries.map(({ name }) => name).filter((name) => !isPlainName(name));
    for (const entry of entries) {
      if (!isPlainName(entry.name)) continue;
      const key = entry.name.toLowerCase();
      if (this.entries.has(key)) throw new Unreadable(`two entries are called ${entry.name}`);
      this.entries.set(key, entry);
    }
  }

  /** Names of parts are compared without regard to capitals (ISO/IEC 29500-2, from memory). */
  has(part: string): boolean {
    return this.entries.has(part.toLowerCase());
  }

  get names(): readonly string[] {
    return [...this.entries.values()].map(({ name }) => name);
  }

  get isEncrypted(): boolean {
    return [...this.entries.values()].some((entry) => entry.isEncrypted);
  }

  /** Counts what comes out of an entry, before it is handed on. */
  private count(entry: ZipEntry, out_bytes: number, piece: number): void {
    this.inflated_bytes += piece;
    if (this.inflated_bytes > workbookLimits.inflated_MB * bytes_per_MB)
      throw overLimit('inflated_MB', Math.ceil(this.inflated_bytes / bytes_per_MB));
    const most = Math.max(ratioFrom_bytes, entry.packed_bytes * workbookLimits.inflation);
    if (out_bytes > most) throw overLimit('inflation', Math.ceil(out_bytes / Math.max(1, entry.packed_bytes)));
  }

  /** The bytes of a part, piece by piece, counted against the limits and checked against the sum the zip has of them. */
  async *read(part: string): AsyncGenerator<Uint8Array> {
    const entry = this.entries.get(part.toLowerCase());
    if (entry === undefined) throw new Unreadable(`${part} is not there`);
    if (entry.method !== 0 && entry.method !== 8) throw new Unreadable('packed in a way that is not read');
    const packed = packedBytes(this.bytes, entry);
    let sum = 0;
    let out_bytes = 0;
    try {
      for await (const piece of entry.method === 0 ? [packed] : inflated(packed)) {
        out_bytes += piece.length;
        this.count(entry, out_bytes, piece.length);
        sum = crc32(piece, sum);
        if (piece.length > 0) yield piece;
      }
    } catch (error) {
      if (error instanceof Error && 'code' in error && String(error.code).startsWith('Z_'))
        throw new Unreadable('it cannot be unpacked');
      throw error;
    }
    if (out_bytes !== entry.size_bytes || sum !== entry.crc) throw new Unreadable('it is not what was packed');
  }
}

function inflated(packed: Uint8Array): AsyncIterable<Uint8Array> {
  const stream = createInflateRaw({ chunkSize: piece_bytes });
  stream.end(packed);
  return stream;
}

/**
 * Opens the zip that a workbook is.
 *
 * @param bytes - the file [byte]
 * @returns its entries, ready to be read; null where the zip has no end: the file was cut off
 * @source zip-appnote, 4.3 (from memory)
 */
export function openPackage(bytes: Uint8Array): Package | null {
  const entries = zipEntries(bytes);
  return entries === null ? null : new Package(bytes, entries);
}
