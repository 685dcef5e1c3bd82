import { describe, expect, it } from 'vitest';
import { decodeText } from './decodeText.ts';

const bytes = (text: string, encoding: BufferEncoding) => new Uint8Array(Buffer.from(text, encoding));

describe('decodeText', () => {
  it('reads UTF-8 with and without its mark', () => {
    expect(decodeText(bytes('Tarné', 'utf8'))).toEqual({ text: 'Tarné' });
    expect(decodeText(bytes('\uFEFFTarné', 'utf8'))).toEqual({ text: 'Tarné' });
    expect(decodeText(new Uint8Array())).toEqual({ text: '' });
  });

  it('puts U+FFFD for bytes that are not UTF-8 and keeps the rest', () => {
    expect(decodeText(bytes('a,é,b', 'latin1'))).toEqual({ text: 'a,\uFFFD,b' });
  });

  it.each([
    ['UTF-16 with its mark', bytes('\uFEFFab', 'utf16le'), 'UTF-16'],
    ['big-endian UTF-16 with its mark', new Uint8Array([0xfe, 0xff, 0, 97]), 'UTF-16'],
    ['UTF-16 without one', bytes('abc', 'utf16le'), 'UTF-16 or binary'],
    ['a workbook', new Uint8Array([0x50, 0x4b, 3, 4]), 'workbook or zip'],
    ['an old workbook', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]), 'old workbook'],
  ])('names %s', (_, found, encoding) => {
    expect(decodeText(found)).toEqual({ encoding });
  });
});
