import { describe, expect, it } from 'vitest';
import { decodeText } from './decodeText.ts';

const bytes = (text: string, encoding: BufferEncoding) => new Uint8Array(Buffer.from(text, encoding));

describe('decodeText', () => {
  it('reads UTF-8 with and without its mark', () => {
    expect(decodeText(bytes('Tarné', 'utf8'))).toEqual({ text: 'Tarné' });
    expect(decodeText(bytes('\uFEFFTarné', 'utf8'))).toEqual({ text: 'Tarné' });
    expect(decodeText(new Uint8Array())).toEqual({ text: '' });
  });

  it('reads UTF-16 with its mark, and says so', () => {
    expect(decodeText(bytes('\uFEFFTarné', 'utf16le'))).toEqual({ text: 'Tarné', taken: 'UTF-16LE' });
    expect(decodeText(new Uint8Array([0xfe, 0xff, 0, 97]))).toEqual({ text: 'a', taken: 'UTF-16BE' });
  });

  it('reads Windows-1252 where every byte has a letter there, and says so', () => {
    expect(decodeText(bytes('a,é,b', 'latin1'))).toEqual({ text: 'a,é,b', taken: 'Windows-1252' });
    expect(decodeText(new Uint8Array([0x80, 0x92, 0x9c]))).toEqual({ text: '€’œ', taken: 'Windows-1252' });
  });

  it('gives the marks of the bytes 0x80 to 0x9f the letters of the standard', () => {
    // Code points by byte, from the standard's index (from memory).
    const index = { 128: 0x20ac, 133: 0x2026, 138: 0x160, 145: 0x2018, 150: 0x2013, 153: 0x2122, 159: 0x178 };
    for (const [byte, point] of Object.entries(index))
      expect(decodeText(new Uint8Array([Number(byte)]))).toEqual({
        text: String.fromCodePoint(point),
        taken: 'Windows-1252',
      });
  });

  it.each([0x81, 0x8d, 0x8f, 0x90, 0x9d, 0x1b])('puts U+FFFD where byte %i has no letter', (byte) => {
    expect(decodeText(new Uint8Array([97, 0xe9, 44, byte, 98]))).toEqual({
      text: `a\uFFFD,${byte < 0x80 ? '\u001b' : '\uFFFD'}b`,
    });
  });

  it('puts U+FFFD for a damaged byte among letters of UTF-8, and keeps them', () => {
    expect(decodeText(new Uint8Array([...bytes('é,', 'utf8'), 0xe9, 98]))).toEqual({ text: 'é,\uFFFDb' });
  });

  it.each([
    ['UTF-16 with half a letter', new Uint8Array([0xff, 0xfe, 97]), 'UTF-16 or binary'],
    ['UTF-16 with half a pair', new Uint8Array([0xff, 0xfe, 0x00, 0xd8]), 'UTF-16 or binary'],
    ['UTF-32', new Uint8Array([0xff, 0xfe, 0, 0, 97, 0, 0, 0]), 'UTF-32'],
    ['UTF-16 without one', bytes('abc', 'utf16le'), 'UTF-16 or binary'],
    ['a workbook', new Uint8Array([0x50, 0x4b, 3, 4]), 'workbook or zip'],
    ['an old workbook', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]), 'old workbook'],
  ])('names %s', (_, found, encoding) => {
    expect(decodeText(found)).toEqual({ encoding });
  });
});
