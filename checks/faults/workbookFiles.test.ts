import { existsSync } from 'node:fs';
import { readProgramme, workbookLimits } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { inFolder } from './folder.ts';
import { bookBytes, bookLine, goodSheets, inFile, partsOf, readBytes } from './workbook.ts';

const good = () => bookBytes({ sheets: goodSheets() });
const withParts = (parts: Readonly<Record<string, string | Uint8Array | null>>) =>
  bookBytes({ sheets: goodSheets(), parts });

/** Asserts that nothing of the file is read, for this one reason; gives its sentence. */
async function refused(bytes: Uint8Array, code: string, name = 'plan.xlsx') {
  const read = await readBytes(bytes, name);
  expect(read.problems.map((problem) => problem.code)).toEqual([code]);
  expect(read.problems[0]!.severity).toBe('blocker');
  expect(read.problems[0]!.place.file).toBe(name);
  expect([read.facts.sites, read.facts.gauges, read.files, read.notUsed]).toEqual([[], [], [], []]);
  const { what, todo } = problemSentence(read.problems[0]!);
  return `${what} ${todo}`;
}

/** The bytes with one field of the entry of this name changed, in both places where a zip keeps it. */
function patched(bytes: Uint8Array, name: string, field: number, value: number, size: 2 | 4): Uint8Array {
  const copy = Uint8Array.from(bytes);
  const view = new DataView(copy.buffer);
  for (let at = 0; at + 46 < copy.length; at++) {
    const mark = view.getUint32(at, true);
    const isCentral = mark === 0x02014b50;
    if (!isCentral && mark !== 0x04034b50) continue;
    const nameAt = at + (isCentral ? 46 : 30);
    if (!Buffer.from(copy.subarray(nameAt, nameAt + name.length)).equals(Buffer.from(name))) continue;
    const place = at + (isCentral ? field : field - 2);
    if (size === 2) view.setUint16(place, value, true);
    else view.setUint32(place, value, true);
  }
  return copy;
}

describe('a file that is no workbook of the form that is read', () => {
  it('an empty file', async () => {
    await refused(new Uint8Array(), 'file.empty');
  });

  it('text under the name of a workbook', async () => {
    expect(await refused(strToU8('siteId,name\nS1,Tarn\n'), 'workbook.not_a_workbook')).toContain('folder of tables');
  });

  it('a zip of other files', async () => {
    await refused(zipSync({ 'sites.csv': strToU8('siteId\n') }), 'workbook.not_a_workbook');
  });

  it('a text document', async () => {
    const parts = partsOf({ sheets: [] });
    await refused(zipSync({ ...parts, 'word/document.xml': strToU8('<a/>') }), 'workbook.not_a_workbook');
  });

  it('an old workbook', async () => {
    const bytes = Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Array(504).fill(0)]);
    expect(await refused(bytes, 'workbook.other_format', 'plan.xls')).toContain('.xlsx');
  });

  it('a workbook locked with a password', async () => {
    const name = Buffer.from('EncryptedPackage', 'utf16le');
    const bytes = Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, ...new Array(508).fill(0), ...name]);
    expect(await refused(bytes, 'workbook.password')).toContain('without the password');
  });

  it('a zip whose entries are locked', async () => {
    await refused(patched(good(), 'xl/workbook.xml', 8, 1, 2), 'workbook.password');
  });

  it('a binary workbook', async () => {
    const parts = partsOf({ sheets: [] });
    await refused(zipSync({ ...parts, 'xl/workbook.bin': strToU8('x') }), 'workbook.other_format', 'plan.xlsb');
  });

  it('an OpenDocument workbook', async () => {
    const bytes = zipSync({
      mimetype: strToU8('application/vnd.oasis.opendocument.spreadsheet'),
      'content.xml': strToU8('<a/>'),
    });
    await refused(bytes, 'workbook.other_format', 'plan.ods');
  });

  it('is known by its first bytes whatever its name', async () => {
    const read = await readBytes(good(), 'plan.backup');
    expect(read.problems).toEqual([]);
    expect(read.facts.sites).toHaveLength(3);
  });

  it('a file that is no workbook by name nor bytes is no folder', async () => {
    const read = await readBytes(strToU8('hello'), 'plan.txt');
    expect(read.problems.map(({ code }) => code)).toEqual(['folder.not_a_folder']);
  });

  it('one that is not there is a folder that is not there', async () => {
    await inFolder({}, async (folder) => {
      const read = await readProgramme(`${folder}/plan.xlsx`);
      expect(read.problems.map(({ code }) => code)).toEqual(['folder.missing']);
    });
  });
});

describe('a workbook that is broken', () => {
  it('is cut off anywhere', async () => {
    const bytes = good();
    for (const share of [0.1, 0.5, 0.9, 0.999])
      await refused(bytes.subarray(0, Math.floor(bytes.length * share)), 'workbook.cut_off');
  });

  it.each(['xl/workbook.xml', '_rels/.rels', 'xl/styles.xml', 'xl/sharedStrings.xml'])('has no %s', async (part) => {
    await refused(withParts({ [part]: null }), part === '_rels/.rels' ? 'workbook.not_a_workbook' : 'workbook.damaged');
  });

  it.each(['xl/workbook.xml', 'xl/styles.xml', 'xl/sharedStrings.xml'])(
    'has XML in %s that is not well-formed',
    async (part) => {
      await refused(withParts({ [part]: '<workbook><sheets></workbook>' }), 'workbook.damaged');
    },
  );

  it('holds other bytes than were packed', async () => {
    const bytes = good();
    await refused(patched(bytes, 'xl/workbook.xml', 16, 12345, 4), 'workbook.damaged');
  });

  it('packs a part in a way that is not read', async () => {
    const read = await readBytes(patched(good(), 'xl/worksheets/sheet4.xml', 10, 12, 2));
    expect(read.problems.map(bookLine)).toEqual(['sheet.unreadable blocker @ tanks - - = "plan.xlsx/tanks"']);
    expect(read.facts.sites[0]!.roofs).toHaveLength(2);
  });

  it('has two parts of one name', async () => {
    const bytes = zipSync({ ...partsOf({ sheets: goodSheets() }), 'XL/workbook.xml': strToU8('<workbook/>') });
    await refused(bytes, 'workbook.damaged');
  });

  it('names a sheet whose part is not there', async () => {
    const read = await readBytes(withParts({ 'xl/worksheets/sheet4.xml': null }));
    expect(read.problems.map(bookLine)).toEqual(['sheet.unreadable blocker @ tanks - - = "plan.xlsx/tanks"']);
  });
});

describe('a workbook that would do harm', () => {
  it('that declares an entity is refused, and nothing is read or swelled', async () => {
    const entity = '<!DOCTYPE a [<!ENTITY x SYSTEM "file:///etc/hostname"><!ENTITY y "&x;&x;">]>';
    const sheet = `${entity}<worksheet><sheetData><row><c t="str"><v>&y;</v></c></row></sheetData></worksheet>`;
    const read = await readBytes(withParts({ 'xl/worksheets/sheet4.xml': sheet }));
    expect(read.problems.map(bookLine)).toEqual(['sheet.unreadable blocker @ tanks - - = "plan.xlsx/tanks"']);
    expect(read.problems[0]!.facts['reason']).toContain('document type');
    await refused(withParts({ 'xl/workbook.xml': `${entity}<workbook/>` }), 'workbook.damaged');
  });

  it('that uses an entity nobody declared is refused', async () => {
    const read = await readBytes(withParts({ 'xl/worksheets/sheet4.xml': '<worksheet>&boom;</worksheet>' }));
    expect(read.problems.map(({ code }) => code)).toEqual(['sheet.unreadable']);
  });

  it('with entries that lead elsewhere is read, and they are not', async () => {
    const parts = partsOf({ sheets: goodSheets() });
    const bytes = zipSync({
      ...parts,
      '../../escaped.txt': strToU8('x'),
      '/abs.txt': strToU8('x'),
      'a\\b.txt': strToU8('x'),
    });
    await inFile(bytes, async (path) => {
      const read = await readProgramme(path);
      expect(read.problems.map(bookLine)).toEqual([
        'workbook.entry_unsafe warning @ plan.xlsx - - = "../../escaped.txt"',
      ]);
      expect(read.problems[0]!.facts['count']).toBe(3);
      expect(read.facts.sites).toHaveLength(3);
      expect(existsSync(`${path}/../../escaped.txt`)).toBe(false);
    });
  });

  it('whose sheets stand in another file, or outside, is not followed', async () => {
    for (const target of [
      'Target="http://localhost/sheet.xml" TargetMode="External"',
      'Target="../../../etc/passwd"',
    ]) {
      const rels = Buffer.from(partsOf({ sheets: goodSheets() })['xl/_rels/workbook.xml.rels']!).toString();
      const read = await readBytes(
        withParts({ 'xl/_rels/workbook.xml.rels': rels.replace('Target="worksheets/sheet4.xml"', target) }),
      );
      expect(read.problems.map(bookLine)).toEqual(['sheet.unreadable blocker @ tanks - - = "plan.xlsx/tanks"']);
    }
  });

  it('with macros and links to other workbooks is read, and says so', async () => {
    const link = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLink';
    const relations = `<Relationship Id="rIdX" Type="${link}" Target="externalLinks/externalLink1.xml"/>`;
    const bytes = bookBytes({ sheets: goodSheets(), relations, parts: { 'xl/vbaProject.bin': 'x' } });
    const read = await readBytes(bytes, 'plan.xlsm');
    expect(read.problems.map(({ code, severity }) => `${code} ${severity}`)).toEqual([
      'workbook.macros note',
      'workbook.other_workbooks note',
    ]);
    expect(read.facts.sites).toHaveLength(3);
  });
});

/** A sheet of blanks that packs to nearly nothing. */
const blanks = (MB: number) =>
  Buffer.concat([Buffer.from('<worksheet>'), Buffer.alloc(MB * 1e6, ' '), Buffer.from('</worksheet>')]);

describe('a workbook beyond the limits', () => {
  it('a part that swells is stopped while it is unpacked, and the message names the limit', async () => {
    const read = await readBytes(withParts({ 'xl/worksheets/sheet4.xml': blanks(60) }));
    expect(read.problems.map(({ code, facts }) => `${code} ${facts['limit']}`)).toEqual([
      'workbook.over_limit inflation',
    ]);
    expect(problemSentence(read.problems[0]!).what).toContain(`the most is ${workbookLimits.inflation} times`);
    expect(read.facts.sites).toHaveLength(3);
    expect(read.facts.sites.every(({ doubts }) => doubts.length === 1)).toBe(true);
  });

  it('is stopped also where the file states a small size', async () => {
    const bytes = patched(
      withParts({ 'xl/worksheets/sheet4.xml': blanks(60) }),
      'xl/worksheets/sheet4.xml',
      24,
      1000,
      4,
    );
    const read = await readBytes(bytes);
    expect(read.problems.map(({ facts }) => facts['limit'])).toEqual(['inflation']);
  });

  it('a part that is not what the file states is not used', async () => {
    const read = await readBytes(patched(good(), 'xl/worksheets/sheet4.xml', 24, 1000, 4));
    expect(read.problems.map(bookLine)).toEqual(['sheet.unreadable blocker @ tanks - - = "plan.xlsx/tanks"']);
  });

  it('too many entries', async () => {
    const many = Object.fromEntries(
      Array.from({ length: workbookLimits.entries + 1 }, (_, i) => [`x/${i}`, new Uint8Array()]),
    );
    const said = await refused(zipSync({ ...partsOf({ sheets: goodSheets() }), ...many }), 'workbook.over_limit');
    expect(said).toContain('the most is 10,000');
  });

  it('XML nested too deep', async () => {
    const deep = `${'<a>'.repeat(100)}${'</a>'.repeat(100)}`;
    const read = await readBytes(withParts({ 'xl/worksheets/sheet4.xml': `<worksheet>${deep}</worksheet>` }));
    expect(read.problems.map(({ facts }) => facts['limit'])).toEqual(['depth']);
  });

  it('too many merged ranges', async () => {
    const many = '<mergeCell ref="A1:B1"/>'.repeat(workbookLimits.merged + 1);
    const sheet = `<worksheet><sheetData/><mergeCells>${many}</mergeCells></worksheet>`;
    const read = await readBytes(withParts({ 'xl/worksheets/sheet4.xml': sheet }));
    expect(read.problems.map(({ facts }) => facts['limit'])).toEqual(['merged']);
  });

  it('too many columns', async () => {
    const sheets = goodSheets();
    sheets[0]!.rows[0]!.push(...Array.from({ length: workbookLimits.columns }, (_, i) => `c${i}`));
    const read = await readBytes(bookBytes({ sheets }));
    expect(read.problems[0]!.facts['limit']).toBe('columns');
  });

  it('a cell in the last place there is costs nothing', async () => {
    const sheets = goodSheets();
    const xml = Buffer.from(partsOf({ sheets })['xl/worksheets/sheet4.xml']!).toString();
    const far = xml.replace('</sheetData>', '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData>');
    const began = performance.now();
    const read = await readBytes(withParts({ 'xl/worksheets/sheet4.xml': far }));
    expect(performance.now() - began).toBeLessThan(5000);
    expect(read.problems.map(bookLine)).toEqual(['sheet.beside_table warning @ tanks 1048576 - XFD1048576 = "1"']);
  });
});

it('the builder makes a zip that another reader of zips opens', () => {
  expect(Object.keys(unzipSync(good()))).toContain('xl/worksheets/sheet1.xml');
});
