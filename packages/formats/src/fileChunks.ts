import { isAscii } from 'node:buffer';
import { open } from 'node:fs/promises';
import { asWindowsText, isNoWindowsText, noKnownText, startOf } from './decodeText.ts';

/** How much of a file is held at a time [byte]. Ours. */
export const chunk_bytes = 1 << 20;
/** So much of it shows what it is [byte]: what decodeText looks at. */
const head_bytes = 65536;

/**
 * Gives the bytes of a file piece by piece. A piece is good until the next is asked for.
 *
 * @param path - the file [text]
 * @param most_bytes - how long a piece may be [byte]
 * @returns its bytes in order [byte]
 * @definition ours
 */
export async function* fileChunks(path: string, most_bytes: number = chunk_bytes): AsyncGenerator<Uint8Array> {
  const file = await open(path);
  try {
    const buffer = new Uint8Array(most_bytes);
    for (;;) {
      const { bytesRead } = await file.read(buffer, 0, most_bytes);
      if (bytesRead === 0) return;
      yield buffer.subarray(0, bytesRead);
    }
  } finally {
    await file.close();
  }
}

/** What the bytes of a file were taken for; or what they seem to be, which is not read. */
export type Surveyed =
  | {
      readonly text: 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';
      /** Is there a quotation mark, or a line end of CR alone? Then lines are not told apart by their bytes. */
      readonly isPlain: boolean;
    }
  | { readonly encoding: string };

const [quote, carriage, newLine] = [0x22, 0x0d, 0x0a];

/** A letter of UTF-8 has at most so many bytes [byte]. */
const longestLetter_bytes = 4;

/** Looks for what is not of the plain form, across the pieces. */
class PlainTest {
  isPlain = true;
  private endsInCarriage = false;

  take(bytes: Uint8Array): void {
    if (!this.isPlain) return;
    if (this.endsInCarriage && bytes[0] !== newLine) this.isPlain = false;
    if (bytes.includes(quote) || bytes.includes(0)) this.isPlain = false;
    for (let at = bytes.indexOf(carriage); at >= 0 && at < bytes.length - 1; at = bytes.indexOf(carriage, at + 1))
      if (bytes[at + 1] !== newLine) this.isPlain = false;
    this.endsInCarriage = bytes.at(-1) === carriage;
  }
}

async function isWindows(path: string, most_bytes: number): Promise<boolean> {
  let before = '';
  for await (const bytes of fileChunks(path, most_bytes)) {
    const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
    if (isNoWindowsText(before + text)) return false;
    before = text.slice(-1);
  }
  return true;
}

async function headOf(path: string): Promise<Uint8Array> {
  for await (const bytes of fileChunks(path, head_bytes)) return bytes.slice();
  return new Uint8Array(0);
}

/**
 * What text do the bytes of a file hold? Read piece by piece; the same answer as decodeText gives for the whole.
 *
 * @param path - the file [text]
 * @param most_bytes - how long a piece may be [byte]
 * @returns its encoding, and whether its lines can be told apart by their bytes; or what it seems to be, which is not read
 * @law the encoding is the one decodeText finds
 * @definition ours: docs/decisions/0015-encodings.md
 */
export async function surveyFile(path: string, most_bytes: number = chunk_bytes): Promise<Surveyed> {
  const start = startOf(await headOf(path));
  if (start !== null && 'encoding' in start) return start;
  const utf16 = start?.utf16 ?? null;
  const plain = new PlainTest();
  const decoder = new TextDecoder(utf16 ?? 'utf-8', { fatal: true });
  let isClean = true;
  try {
    for await (const bytes of fileChunks(path, most_bytes)) {
      plain.take(bytes);
      // Between whole letters, plain ASCII needs no decoding.
      if (utf16 === null && isClean && isAscii(bytes)) continue;
      decoder.decode(bytes, { stream: true });
      isClean = bytes.length >= longestLetter_bytes && isAscii(bytes.subarray(-longestLetter_bytes));
    }
    decoder.decode();
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    if (utf16 !== null) return { encoding: noKnownText };
    const text = (await isWindows(path, most_bytes)) ? 'windows-1252' : 'utf-8';
    return { text, isPlain: false };
  }
  return { text: utf16 ?? 'utf-8', isPlain: utf16 === null && plain.isPlain };
}

/** The lines of a file that came whole, and after the last piece the line that has no end, if there is one. */
export interface LinesRead {
  readonly lines: readonly string[];
  readonly unended: string | null;
}

/**
 * Gives the lines of a text file piece by piece, whatever ends them.
 *
 * @param path - the file [text]
 * @param encoding - what its bytes are
 * @param most_bytes - how long a piece may be [byte]
 * @returns lines without their ends; the last one apart where it has no end
 * @definition ours
 */
export async function* fileLines(
  path: string,
  encoding: 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252',
  most_bytes: number = chunk_bytes,
): AsyncGenerator<LinesRead> {
  const decoder = encoding === 'windows-1252' ? null : new TextDecoder(encoding);
  let rest = '';
  for await (const bytes of fileChunks(path, most_bytes)) {
    const text: string = decoder
      ? decoder.decode(bytes, { stream: true })
      : asWindowsText(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1'));
    const all: string = rest + text;
    // A CR at the very end may be half of a line end.
    const held = all.endsWith('\r') ? 1 : 0;
    const lines = all.slice(0, all.length - held).split(/\r\n?|\n/);
    rest = lines.pop()! + (held === 1 ? '\r' : '');
    yield { lines, unended: null };
  }
  rest += decoder?.decode() ?? '';
  const lines = rest.split(/\r\n?|\n/);
  const unended = lines.pop()!;
  yield { lines, unended: unended === '' ? null : unended };
}
