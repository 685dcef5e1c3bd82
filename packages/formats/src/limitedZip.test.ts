import { strFromU8, strToU8, Zip, ZipDeflate, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { limitedZip, type ZipLimits } from './limitedZip.ts';

const limits: ZipLimits = { most_entries: 10, largestEntry_bytes: 5e6, largest_bytes: 8e6, most_ratio: 200 };
const everything = () => true;

/** A zip written as a stream: the sizes stand behind each entry, not before it. */
function streamed(files: Readonly<Record<string, Uint8Array>>): Uint8Array {
  const chunks: Uint8Array[] = [];
  const zip = new Zip((_error, chunk) => void chunks.push(chunk));
  for (const [name, bytes] of Object.entries(files)) {
    const entry = new ZipDeflate(name);
    zip.add(entry);
    entry.push(bytes, true);
  }
  zip.end();
  return Uint8Array.from(chunks.flatMap((chunk) => [...chunk]));
}

const entriesOf = (bytes: Uint8Array) => {
  const read = limitedZip(bytes, limits, everything);
  return 'fault' in read ? read.fault : [...read.entries].map(([name, content]) => [name, strFromU8(content)]);
};
const codeOf = (bytes: Uint8Array, own: ZipLimits = limits) => {
  const read = limitedZip(bytes, own, everything);
  return 'fault' in read ? read.fault.code : 'read';
};

/** Noise that does not pack, the same every time. */
function noise(size: number): Uint8Array {
  let state = 7;
  return Uint8Array.from({ length: size }, () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state >> 16;
  });
}

describe('limitedZip', () => {
  it('expands packed, stored and streamed entries', () => {
    const files = { 'a.txt': strToU8('some text, some text'), 'dir/é.txt': strToU8('') };
    const expected = [
      ['a.txt', 'some text, some text'],
      ['dir/é.txt', ''],
    ];
    expect(entriesOf(zipSync(files))).toEqual(expected);
    expect(entriesOf(zipSync(files, { level: 0 }))).toEqual(expected);
    expect(entriesOf(streamed(files))).toEqual(expected);
  });

  it('keeps entries of many pieces whole', () => {
    const big = noise(300_000);
    for (const bytes of [zipSync({ big }), zipSync({ big }, { level: 0 }), streamed({ big })]) {
      const read = limitedZip(bytes, limits, everything);
      expect('fault' in read ? read.fault : Buffer.compare(read.entries.get('big')!, big)).toBe(0);
    }
  });

  it('expands only what is wanted, and names the rest', () => {
    const read = limitedZip(zipSync({ a: strToU8('1'), b: strToU8('2') }), limits, (name) => name === 'b');
    expect(read).toEqual({ names: ['a', 'b'], entries: new Map([['b', strToU8('2')]]) });
  });

  it('stops at each limit', () => {
    expect(codeOf(zipSync({ a: noise(5_000_001) }))).toBe('zip.too_large');
    expect(codeOf(zipSync({ a: noise(5_000_000) }))).toBe('read');
    expect(codeOf(zipSync({ a: noise(4_100_000), b: noise(4_100_000) }))).toBe('zip.too_large');
    expect(codeOf(zipSync({ a: new Uint8Array(4_000_000) }))).toBe('zip.too_dense');
    expect(codeOf(zipSync({ a: new Uint8Array(900_000) }))).toBe('read');
    expect(codeOf(zipSync(Object.fromEntries(Array.from({ length: 11 }, (_, i) => [`${i}`, noise(3)]))))).toBe(
      'zip.too_many',
    );
  });

  it('never holds what a bomb would become', () => {
    const bomb = zipSync({ a: new Uint8Array(100e6) }, { level: 9 });
    const before_bytes = process.memoryUsage().arrayBuffers;
    expect(codeOf(bomb, { ...limits, most_ratio: 1e9 })).toBe('zip.too_large');
    expect(process.memoryUsage().arrayBuffers - before_bytes).toBeLessThan(30e6);
  });

  it('names what is damaged', () => {
    const bytes = zipSync({ a: strToU8('some text'), b: strToU8('more') }, { level: 0 });
    const at = (text: string) => Buffer.from(bytes).indexOf(text);
    const changed = (place: number, value: number) => Object.assign(bytes.slice(), { [place]: value });
    expect(codeOf(bytes.slice(0, -1))).toBe('zip.cut_off');
    expect(codeOf(bytes.slice(0, 40))).toBe('zip.cut_off');
    expect(codeOf(new Uint8Array(0))).toBe('zip.cut_off');
    expect(codeOf(changed(at('text'), 'T'.charCodeAt(0)))).toBe('zip.broken');
    // Compression 9 in the entry's own head, which stands at the start.
    expect(codeOf(changed(8, 9))).toBe('zip.unreadable');
    // The entry's own name differs from that in the list.
    expect(codeOf(changed(30, 'z'.charCodeAt(0)))).toBe('zip.broken');
  });

  it('never throws, whatever one byte becomes', () => {
    const bytes = zipSync({ a: strToU8('some text, some text'), b: strToU8('more') });
    for (let place = 0; place < bytes.length; place++)
      for (const value of [0, 1, 127, 255])
        expect(['read', 'zip.broken', 'zip.cut_off', 'zip.too_many', 'zip.too_large', 'zip.unreadable']).toContain(
          codeOf(Object.assign(bytes.slice(), { [place]: value })),
        );
  });
});
