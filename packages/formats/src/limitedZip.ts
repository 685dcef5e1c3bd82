import { crc32 } from 'node:zlib';
import { Unzip, type UnzipFile, UnzipInflate } from 'fflate';

/** How much may come out of a zip. */
export interface ZipLimits {
  readonly most_entries: number;
  /** Largest size of one entry, expanded [byte]. */
  readonly largestEntry_bytes: number;
  /** Largest size of all entries together, expanded [byte]. */
  readonly largest_bytes: number;
  /** How many times its size in the zip an entry of over 1 MB may grow. */
  readonly most_ratio: number;
}

/** Why a zip was not read, and what about. */
export interface ZipFault {
  readonly code: 'zip.broken' | 'zip.cut_off' | 'zip.too_many' | 'zip.too_large' | 'zip.too_dense' | 'zip.unreadable';
  readonly entry: string;
  readonly facts: Readonly<Record<string, string | number>>;
}

/** The entries asked for, expanded, with the names of all; or why not. */
export type ZipRead =
  | { readonly names: readonly string[]; readonly entries: ReadonlyMap<string, Uint8Array> }
  | { readonly fault: ZipFault };

/** What the list at the end of a zip says of an entry. */
interface Listed {
  readonly name: string;
  readonly crc: number;
  readonly isEncrypted: boolean;
}

const endSignature = 0x06054b50;
const listSignature = 0x02014b50;
const [endSize_bytes, listSize_bytes, longestComment_bytes] = [22, 46, 65535] as const;
/** So few bytes are pushed at once that even the densest of them expand to 4 MB at most. Ours. */
const step_bytes = 4096;
/** Under this size an entry's growth is not judged [byte]: a few repeated lines grow as much as a bomb. Ours. */
const judgedFrom_bytes = 1e6;
/** Written where the place stands in a zip64 record instead: such zips are over 4 GB, and not read. */
const unknownSize = 0xffffffff;

/** The list of entries at the end, or null where there is none. Source: .ZIP File Format Specification, 4.3.12 and 4.3.16, from memory. */
function listedEntries(bytes: Uint8Array): readonly Listed[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const earliest = Math.max(0, bytes.length - endSize_bytes - longestComment_bytes);
  let end = bytes.length - endSize_bytes;
  while (end >= earliest && view.getUint32(end, true) !== endSignature) end--;
  if (end < earliest || end < 0) return null;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (at === unknownSize) return null;
  const listed: Listed[] = [];
  for (let i = 0; i < count; i++) {
    if (at + listSize_bytes > end || view.getUint32(at, true) !== listSignature) return null;
    const flags = view.getUint16(at + 8, true);
    const [nameSize, extraSize, commentSize] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true)) as [
      number,
      number,
      number,
    ];
    const nameBytes = bytes.subarray(at + listSize_bytes, at + listSize_bytes + nameSize);
    const name = new TextDecoder(flags & 0x800 ? 'utf-8' : 'latin1').decode(nameBytes);
    listed.push({ name, crc: view.getUint32(at + 16, true), isEncrypted: (flags & 1) === 1 });
    at += listSize_bytes + nameSize + extraSize + commentSize;
  }
  return listed;
}

/** Collects what comes out, and says stop when a limit is passed. */
class Expanding {
  readonly chunks = new Map<string, Uint8Array[]>();
  readonly whole = new Set<string>();
  readonly seen: string[] = [];
  fault: ZipFault | null = null;
  private readonly sizes_bytes = new Map<string, number>();
  private total_bytes = 0;
  private readonly limits: ZipLimits;
  private readonly wanted: (name: string) => boolean;

  constructor(limits: ZipLimits, wanted: (name: string) => boolean) {
    this.limits = limits;
    this.wanted = wanted;
  }

  stop(code: ZipFault['code'], entry: string, facts: ZipFault['facts']): void {
    this.fault ??= { code, entry, facts };
  }

  entry(file: UnzipFile, pushed_bytes: () => number): void {
    const { name } = file;
    this.seen.push(name);
    if (this.seen.length > this.limits.most_entries)
      this.stop('zip.too_many', name, { count: this.seen.length, most: this.limits.most_entries });
    if (this.fault || !this.wanted(name)) return;
    this.chunks.set(name, []);
    const from_bytes = pushed_bytes();
    file.ondata = (error, data, final) => {
      if (this.fault) return;
      if (error) this.stop('zip.broken', name, { reason: 'packing' });
      else this.grown(name, data, pushed_bytes() - from_bytes + step_bytes);
      if (final) this.whole.add(name);
    };
    if (file.compression === 0 || file.compression === 8) file.start();
    else this.stop('zip.unreadable', name, { reason: `compression ${file.compression}` });
  }

  /** One piece more of an entry, which took so many bytes of the zip until now. */
  private grown(name: string, data: Uint8Array, packed_bytes: number): void {
    const size_bytes = (this.sizes_bytes.get(name) ?? 0) + data.length;
    this.sizes_bytes.set(name, size_bytes);
    this.total_bytes += data.length;
    const { largestEntry_bytes, largest_bytes, most_ratio } = this.limits;
    if (size_bytes > largestEntry_bytes || this.total_bytes > largest_bytes)
      this.stop('zip.too_large', name, { largest_MB: Math.min(largestEntry_bytes, largest_bytes) / 1e6 });
    else if (size_bytes > judgedFrom_bytes && size_bytes > most_ratio * packed_bytes)
      this.stop('zip.too_dense', name, { most: most_ratio });
    else this.chunks.get(name)!.push(data.slice());
  }
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

const faulty = (code: ZipFault['code'], entry: string, facts: ZipFault['facts']): ZipRead => ({
  fault: { code, entry, facts },
});

/** Do the entries found agree with the list at the end, and their bytes with its sums? */
function checked(expanding: Expanding, listed: readonly Listed[]): ZipRead {
  const seen = new Set(expanding.seen);
  if (listed.length !== expanding.seen.length || !listed.every(({ name }) => seen.has(name)))
    return faulty('zip.broken', '', { reason: 'entriesDiffer' });
  if (seen.size !== expanding.seen.length) return faulty('zip.broken', '', { reason: 'nameTwice' });
  const entries = new Map<string, Uint8Array>();
  for (const { name, crc } of listed) {
    const chunks = expanding.chunks.get(name);
    if (chunks === undefined) continue;
    if (!expanding.whole.has(name)) return faulty('zip.cut_off', name, {});
    const bytes = joined(chunks);
    if (crc32(bytes) !== crc) return faulty('zip.broken', name, { reason: 'checkSum' });
    entries.set(name, bytes);
  }
  return { names: expanding.seen, entries };
}

/**
 * What is in a zip, within limits? Entries are expanded piece by piece, and the first that passes a limit ends it, so that a
 * small file cannot become a large one. Names are never used as paths.
 *
 * @param bytes - the zip [byte]
 * @param limits - how many entries, how large, how much denser
 * @param wanted - which entries are to be expanded, by name
 * @returns all names and the wanted entries; or the fault that ended it
 * @problem zip.cut_off - its end is not there
 * @problem zip.too_large - an entry, or all together, pass the limit while they expand
 * @law never throws; never holds much more than the limit
 * @source fflate, version 0.8.3; .ZIP File Format Specification, 4.3 (from memory)
 */
export function limitedZip(bytes: Uint8Array, limits: ZipLimits, wanted: (name: string) => boolean): ZipRead {
  const listed = listedEntries(bytes);
  if (listed === null) return faulty('zip.cut_off', '', {});
  if (listed.length > limits.most_entries)
    return faulty('zip.too_many', '', { count: listed.length, most: limits.most_entries });
  const encrypted = listed.find(({ name, isEncrypted }) => isEncrypted && wanted(name));
  if (encrypted) return faulty('zip.unreadable', encrypted.name, { reason: 'encrypted' });
  const expanding = new Expanding(limits, wanted);
  let pushed_bytes = 0;
  const unzip = new Unzip((file) => expanding.entry(file, () => pushed_bytes));
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length && !expanding.fault; at += step_bytes) {
      pushed_bytes = at;
      unzip.push(bytes.subarray(at, at + step_bytes), at + step_bytes >= bytes.length);
    }
  } catch {
    expanding.stop('zip.broken', '', { reason: 'packing' });
  }
  return expanding.fault ? { fault: expanding.fault } : checked(expanding, listed);
}
