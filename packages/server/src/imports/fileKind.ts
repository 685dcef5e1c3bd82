import { open } from 'node:fs/promises';

/** What a file is, by its first bytes; `text` where they are those of no other. */
export type FileKind =
  | 'zip'
  | 'oldWorkbook'
  | 'photo'
  | 'pdf'
  | 'packed'
  | 'map'
  | 'webPage'
  | 'film'
  | 'empty'
  | 'text'
  | 'other';

const starts: readonly (readonly [kind: FileKind, bytes: readonly number[], from?: number])[] = [
  ['zip', [0x50, 0x4b, 0x03, 0x04]],
  ['zip', [0x50, 0x4b, 0x05, 0x06]],
  ['oldWorkbook', [0xd0, 0xcf, 0x11, 0xe0]],
  ['photo', [0xff, 0xd8, 0xff]],
  ['photo', [0x89, 0x50, 0x4e, 0x47]],
  ['photo', [0x47, 0x49, 0x46, 0x38]],
  ['photo', [0x49, 0x49, 0x2a, 0x00]],
  ['photo', [0x4d, 0x4d, 0x00, 0x2a]],
  ['photo', [0x57, 0x45, 0x42, 0x50], 8],
  ['photo', [0x66, 0x74, 0x79, 0x70, 0x68, 0x65, 0x69], 4],
  ['film', [0x66, 0x74, 0x79, 0x70], 4],
  ['pdf', [0x25, 0x50, 0x44, 0x46]],
  ['packed', [0x52, 0x61, 0x72, 0x21]],
  ['packed', [0x37, 0x7a, 0xbc, 0xaf]],
  ['packed', [0x1f, 0x8b]],
];

/** As much of a file as is looked at [byte]. */
const looked_bytes = 4096;

/**
 * What kind of file is this, whatever its name says?
 *
 * @param path - the file [text]
 * @returns its kind
 * @source file-signatures, first bytes (from memory)
 */
export async function fileKind(path: string): Promise<FileKind> {
  const file = await open(path, 'r');
  try {
    const { buffer, bytesRead } = await file.read(new Uint8Array(looked_bytes), 0, looked_bytes, 0);
    const bytes = buffer.subarray(0, bytesRead);
    if (bytes.length === 0) return 'empty';
    const known = starts.find(([, start, from = 0]) => start.every((byte, i) => bytes[from + i] === byte));
    if (known) return known[0];
    const hasMark = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
    if (!hasMark && bytes.includes(0)) return 'other';
    const text = new TextDecoder().decode(bytes);
    if (/<(?:kml|gpx)[\s>]/.test(text)) return 'map';
    return /^\s*<(?:!doctype html|html)/i.test(text) ? 'webPage' : 'text';
  } finally {
    await file.close();
  }
}
