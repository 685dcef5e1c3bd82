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

/** Bytes that are not UTF-8 as Windows-1252, where each has a letter there and none are letters of UTF-8; else null. */
function windowsText(bytes: Uint8Array): string | null {
  const byteByByte = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  if (noLetter.test(byteByByte) || letterOfUtf8.test(byteByByte)) return null;
  return byteByByte.replace(/[\u0080-\u009f]/g, (byte) => windowsLetters[byte.charCodeAt(0) - 0x80]!);
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
  if (begins(bytes, 0xff, 0xfe, 0, 0)) return { encoding: 'UTF-32' };
  for (const [mark, encoding] of utf16)
    if (begins(bytes, ...mark)) {
      const text = strictly(bytes, encoding);
      return text === null ? { encoding: 'UTF-16 or binary' } : { text, taken: encoding.toUpperCase() };
    }
  if (begins(bytes, 0x50, 0x4b, 0x03, 0x04)) return { encoding: 'workbook or zip' };
  if (begins(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return { encoding: 'old workbook' };
  if (zeros_fraction(bytes) > mostZeros_fraction) return { encoding: 'UTF-16 or binary' };
  const text = strictly(bytes, 'utf-8');
  if (text !== null) return { text };
  const windows = windowsText(bytes);
  if (windows !== null) return { text: windows, taken: 'Windows-1252' };
  return { text: new TextDecoder('utf-8').decode(bytes) };
}
