/** The text of a file, with what its bytes were taken for where that is not UTF-8; or what they seem to be instead. */
export type Decoded = { readonly text: string; readonly taken?: string } | { readonly encoding: string };

const looked_bytes = 65536;
/** A text in UTF-8 has no zero bytes; one in UTF-16 is nearly half zeros. A tenth is between. Ours. */
const mostZeros_fraction = 0.1;

const utf16 = [
  [[0xff, 0xfe], 'utf-16le'],
  [[0xfe, 0xff], 'utf-16be'],
] as const;

function zeros_fraction(bytes: Uint8Array): number {
  const looked = bytes.subarray(0, looked_bytes);
  let zeros = 0;
  for (const byte of looked) if (byte === 0) zeros++;
  return looked.length === 0 ? 0 : zeros / looked.length;
}

function begins(bytes: Uint8Array, ...start: readonly number[]): boolean {
  return start.every((byte, i) => bytes[i] === byte);
}

/** The text, or null where the bytes are not of this encoding throughout. */
function strictly(bytes: Uint8Array, encoding: string): string | null {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** A letter of two to four bytes in UTF-8, as it shows where the bytes were read as one letter each. */
const letterOfUtf8 = /[\u00c2-\u00f4][\u0080-\u00bf]/;
/** Bytes to which Windows-1252 gives no letter, and control characters other than tab and the line ends. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is what it is for
const noLetter = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\u0081\u008d\u008f\u0090\u009d]/;

/**
 * Letters of the bytes 0x80 to 0x9f; a space stands where there is none. Written out, for Node 20 decodes these bytes as controls.
 * Source: WHATWG Encoding Standard, index windows-1252 (from memory).
 */
const windowsLetters = '€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ';

/** Are these bytes, one letter each, what a text in Windows-1252 never holds? */
export function isNoWindowsText(byteByByte: string): boolean {
  return noLetter.test(byteByByte) || letterOfUtf8.test(byteByByte);
}

/** Bytes as the letters Windows-1252 gives them. */
export function asWindowsText(byteByByte: string): string {
  return byteByByte.replace(/[\u0080-\u009f]/g, (byte) => windowsLetters[byte.charCodeAt(0) - 0x80]!);
}

/** Bytes that are not UTF-8 as Windows-1252, where each has a letter there and none are letters of UTF-8; else null. */
function windowsText(bytes: Uint8Array): string | null {
  const byteByByte = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  return isNoWindowsText(byteByByte) ? null : asWindowsText(byteByByte);
}

/**
 * What text do these bytes hold? UTF-8, with or without its mark at the start; UTF-16 with its mark; Windows-1252 where every byte
 * has a letter there. Bytes that are neither become U+FFFD, which the reader of cells names.
 *
 * @param bytes - the file [byte]
 * @returns the text and what it was taken for where that is not UTF-8; or the encoding found, which is not read
 * @law a text in UTF-8 is never taken for anything else
 * @source The Unicode Standard, section 23.8 (byte order mark)
 * @source WHATWG Encoding Standard, index windows-1252 (from memory)
 */
export function decodeText(bytes: Uint8Array): Decoded {
  const start = startOf(bytes);
  if (start !== null && 'utf16' in start) {
    const text = strictly(bytes, start.utf16);
    return text === null ? { encoding: noKnownText } : { text, taken: start.utf16.toUpperCase() };
  }
  if (start !== null) return start;
  const text = strictly(bytes, 'utf-8');
  if (text !== null) return { text };
  const windows = windowsText(bytes);
  if (windows !== null) return { text: windows, taken: 'Windows-1252' };
  return { text: new TextDecoder('utf-8').decode(bytes) };
}

/** What bytes seem to be that are no text we read. */
export const noKnownText = 'UTF-16 or binary';

/**
 * What do the first bytes of a file say of it?
 *
 * @param bytes - the file, or its first 65,536 bytes [byte]
 * @returns its kind of UTF-16; or what it is that is not read; or null, for a text of one byte a letter or UTF-8
 * @source The Unicode Standard, section 23.8 (byte order mark)
 */
export function startOf(
  bytes: Uint8Array,
): { readonly utf16: 'utf-16le' | 'utf-16be' } | { readonly encoding: string } | null {
  if (begins(bytes, 0xff, 0xfe, 0, 0)) return { encoding: 'UTF-32' };
  for (const [mark, encoding] of utf16) if (begins(bytes, ...mark)) return { utf16: encoding };
  if (begins(bytes, 0x50, 0x4b, 0x03, 0x04)) return { encoding: 'workbook or zip' };
  if (begins(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return { encoding: 'old workbook' };
  return zeros_fraction(bytes) > mostZeros_fraction ? { encoding: noKnownText } : null;
}
