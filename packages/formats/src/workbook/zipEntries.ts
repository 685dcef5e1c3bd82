import { Unreadable } from './workbookLimits.ts';

/** One entry of a zip, as its central directory has it. */
export interface ZipEntry {
  readonly name: string;
  /** 0 stored, 8 deflated; others are not read. */
  readonly method: number;
  readonly isEncrypted: boolean;
  readonly crc: number;
  readonly packed_bytes: number;
  readonly size_bytes: number;
  /** Where its local header begins in the file [byte]. */
  readonly at: number;
}

const [endMark, entryMark, localMark] = [0x06054b50, 0x02014b50, 0x04034b50];
const [end_bytes, entry_bytes, local_bytes, longestComment_bytes] = [22, 46, 30, 0xffff];
const [inExtra16, inExtra32] = [0xffff, 0xffffffff];
const sizesExtra = 1;

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/** Where the record stands that ends a zip; null where there is none, as in a file cut off. */
function endAt(view: DataView): number | null {
  const last = view.byteLength - end_bytes;
  for (let at = last; at >= 0 && at >= last - longestComment_bytes; at--)
    if (view.getUint32(at, true) === endMark) return at;
  return null;
}

/** A size or place that did not fit into its 32 bits stands in the extra field, in the order of those that did not. */
function longSizes(view: DataView, from: number, to: number, sizes: readonly number[]): readonly number[] {
  if (!sizes.includes(inExtra32)) return sizes;
  for (let at = from; at + 4 <= to; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== sizesExtra) continue;
    let next = at + 4;
    return sizes.map((size) => {
      if (size !== inExtra32) return size;
      next += 8;
      return Number(view.getBigUint64(next - 8, true));
    });
  }
  throw new Unreadable('sizes are missing');
}

function entriesAt(bytes: Uint8Array, end: number): readonly ZipEntry[] {
  const view = viewOf(bytes);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (count === inExtra16 || at === inExtra32) throw new Unreadable('a zip of more than 65,534 entries or 4 GB');
  const decoder = new TextDecoder('utf-8');
  const entries: ZipEntry[] = [];
  for (let i = 0; i < count; i++) {
    if (view.getUint32(at, true) !== entryMark) throw new Unreadable('the list of entries is broken');
    const nameAt = at + entry_bytes;
    const extraAt = nameAt + view.getUint16(at + 28, true);
    const next = extraAt + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    const written = [24, 20, 42].map((field) => view.getUint32(at + field, true));
    const sizes = longSizes(view, extraAt, extraAt + view.getUint16(at + 30, true), written);
    entries.push({
      name: decoder.decode(bytes.subarray(nameAt, extraAt)),
      method: view.getUint16(at + 10, true),
      isEncrypted: (view.getUint16(at + 8, true) & 1) === 1,
      crc: view.getUint32(at + 16, true),
      size_bytes: sizes[0]!,
      packed_bytes: sizes[1]!,
      at: sizes[2]!,
    });
    at = next;
  }
  return entries;
}

/**
 * Which entries has this zip, by its central directory? Nothing is inflated.
 *
 * @param bytes - the file [byte]
 * @returns the entries in order; null where the end of the zip is not there: the file was cut off, or is no zip
 * @source zip-appnote, 4.3.12 and 4.3.16 (from memory)
 */
export function zipEntries(bytes: Uint8Array): readonly ZipEntry[] | null {
  const end = endAt(viewOf(bytes));
  if (end === null) return null;
  try {
    return entriesAt(bytes, end);
  } catch (error) {
    if (error instanceof RangeError) throw new Unreadable('the list of entries leads out of the file');
    throw error;
  }
}

/**
 * The packed bytes of an entry.
 *
 * @param bytes - the file [byte]
 * @param entry - the entry
 * @returns its bytes as they are packed [byte]
 * @source zip-appnote, 4.3.7 (from memory)
 */
export function packedBytes(bytes: Uint8Array, { at, packed_bytes }: ZipEntry): Uint8Array {
  const view = viewOf(bytes);
  if (at + local_bytes > bytes.length || view.getUint32(at, true) !== localMark)
    throw new Unreadable('an entry is not where the list says');
  const start = at + local_bytes + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  if (start + packed_bytes > bytes.length) throw new Unreadable('an entry ends beyond the file');
  return bytes.subarray(start, start + packed_bytes);
}
