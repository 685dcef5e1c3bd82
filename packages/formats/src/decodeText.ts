/** The text of a file, or the encoding that it seems to have instead. */
export type Decoded = { readonly text: string } | { readonly encoding: string };

const looked_bytes = 65536;
/** A text in UTF-8 has no zero bytes; one in UTF-16 is nearly half zeros. A tenth is between. Ours. */
const mostZeros_fraction = 0.1;

function zeros_fraction(bytes: Uint8Array): number {
  const looked = bytes.subarray(0, looked_bytes);
  let zeros = 0;
  for (const byte of looked) if (byte === 0) zeros++;
  return looked.length === 0 ? 0 : zeros / looked.length;
}

function begins(bytes: Uint8Array, ...start: readonly number[]): boolean {
  return start.every((byte, i) => bytes[i] === byte);
}

/**
 * What text do these bytes hold? UTF-8, with or without its mark at the start. Bytes that are not UTF-8 become U+FFFD, which the
 * reader of cells names; another encoding altogether is named here.
 *
 * @param bytes - the file [byte]
 * @returns the text, or the encoding found
 * @source The Unicode Standard, section 23.8 (byte order mark)
 */
export function decodeText(bytes: Uint8Array): Decoded {
  if (begins(bytes, 0xff, 0xfe) || begins(bytes, 0xfe, 0xff)) return { encoding: 'UTF-16' };
  if (begins(bytes, 0x50, 0x4b, 0x03, 0x04)) return { encoding: 'workbook or zip' };
  if (begins(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return { encoding: 'old workbook' };
  if (zeros_fraction(bytes) > mostZeros_fraction) return { encoding: 'UTF-16 or binary' };
  return { text: new TextDecoder('utf-8').decode(bytes) };
}
