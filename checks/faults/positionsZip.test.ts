import { strToU8, zipSync } from 'fflate';
import { describe } from 'vitest';
import { assertCases, kml, kmlPoint, type MapCase, noted, ofFile, tarn } from './mapCases.ts';

const zip = (files: Readonly<Record<string, string>>) =>
  zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));
const whole = zip({ 'doc.kml': kml(tarn) });

/** The bytes with the encrypted bit set in both places it stands. */
function locked(from: Uint8Array): Uint8Array {
  const to = from.slice();
  const view = new DataView(to.buffer);
  for (let at = 0; at < to.length - 4; at++) {
    const signature = view.getUint32(at, true);
    if (signature === 0x04034b50) to[at + 6]! |= 1;
    if (signature === 0x02014b50) to[at + 8]! |= 1;
  }
  return to;
}

/** One letter of a stored entry changed, as a worn disk does. */
function worn(): Uint8Array {
  const stored = zipSync({ 'doc.kml': [strToU8(kml(tarn)), { level: 0 }] });
  const at = Buffer.from(stored).indexOf('125.25');
  stored[at + 2] = '7'.charCodeAt(0);
  return stored;
}

const zips: readonly MapCase[] = [
  { fault: 'a KMZ as it should be', file: whole, problems: [], points: ['Tarn'] },
  {
    fault: 'a KMZ without doc.kml',
    file: zip({ 'images/a.txt': 'x', 'other.kml': kml(tarn) }),
    problems: [noted('positions.kmz_taken', 'other.kml')],
    points: ['Tarn'],
  },
  {
    fault: 'a KMZ with two maps',
    file: zip({ 'a.kml': kml(kmlPoint('Ferry', '1,2')), 'doc.kml': kml(tarn) }),
    problems: [noted('positions.kmz_taken', 'doc.kml')],
    points: ['Tarn'],
  },
  { fault: 'a KMZ without a map', file: zip({ 'a.txt': 'x' }), problems: [ofFile('positions.kmz_without_kml')] },
  { fault: 'a KMZ cut off', file: whole.slice(0, -30), problems: [ofFile('zip.cut_off')] },
  { fault: 'a KMZ cut to its first bytes', file: whole.slice(0, 8), problems: [ofFile('zip.cut_off')] },
  { fault: 'a KMZ locked with a password', file: locked(whole), problems: [ofFile('zip.unreadable', 'doc.kml')] },
  { fault: 'a KMZ in which one letter was lost', file: worn(), problems: [ofFile('zip.broken', 'doc.kml')] },
  {
    fault: 'a KMZ that grows without end',
    file: zip({ 'doc.kml': kml(' '.repeat(30e6)) }),
    problems: [ofFile('zip.too_dense', 'doc.kml')],
  },
  {
    fault: 'a KMZ of many files',
    file: zip(Object.fromEntries(Array.from({ length: 2001 }, (_, i) => [`a${i}.txt`, '']))),
    problems: [ofFile('zip.too_many')],
  },
  {
    fault: 'a path out of the folder, which is only a name',
    file: zip({ '../../doc.kml': kml(tarn) }),
    problems: [noted('positions.kmz_taken', '../../doc.kml')],
    points: ['Tarn'],
  },
  {
    fault: 'a document type inside the KMZ',
    file: zip({ 'doc.kml': `<!DOCTYPE kml>${kml(tarn, '')}` }),
    problems: [ofFile('positions.doctype')],
  },
];

describe('a zip', () => assertCases(zips));
