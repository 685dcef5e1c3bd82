import type { ProgrammeRead } from '@eavewell/formats';
import fc from 'fast-check';
import { strFromU8, zipSync } from 'fflate';
import { beforeAll, expect, it } from 'vitest';
import { fuzzRuns } from './fuzzRuns.ts';
import { bookBytes, goodSheets, partsOf, readBytes, sheetXml, type XmlCell } from './workbook.ts';

const sheets = goodSheets();
const names = sheets.map(({ name }) => name);
const partOf = (name: string) => `xl/worksheets/sheet${names.indexOf(name) + 1}.xml`;

/** What may be put into XML: marks of its own, entities, cells, numbers out of any range, bytes. */
const pieces = fc.oneof(
  fc.constantFrom(
    '',
    '<',
    '>',
    '&',
    '&#0;',
    '&x;',
    '</row>',
    '<row>',
    '<c r="A1"/>',
    '<c r="ZZZ9999999"><v>1</v></c>',
    '<c t="s"><v>-1</v></c>',
    '<c t="e"><v>#REF!</v></c>',
    '<v>NaN</v>',
    '<v>1e999</v>',
    '<f>A1</f>',
    '<!DOCTYPE a>',
    '<![CDATA[x]]>',
    '<!--',
    '_x0000_',
    '"',
    ' r="1"',
    ' t="d"',
    '1048577',
    '\uFFFD',
  ),
  fc.string({ maxLength: 12, unit: 'binary' }),
);

const hostile: fc.Arbitrary<XmlCell> = fc.record(
  {
    t: fc.constantFrom('n', 's', 'b', 'e', 'd', 'str', 'inlineStr', 'zzz'),
    s: fc.constantFrom(0, 1, 2, 3, 4, 5, 6, 999, -1),
    v: fc.oneof(
      fc.constantFrom(
        '',
        'NaN',
        'INF',
        '-1',
        '0',
        '60',
        '1e308',
        '1e-400',
        '2958466',
        '#N/A',
        'S001',
        '=1+1',
        '01/02/2001',
        '7,5',
      ),
      fc.double().map(String),
      fc.string({ maxLength: 8 }).map((text) => text.replace(/[^\x20-\x7e]/g, '?')),
    ),
    f: fc.constantFrom('', 'A1', 'NOW()'),
  },
  { requiredKeys: [], noNullPrototype: true },
);

let whole: ProgrammeRead;
beforeAll(async () => {
  whole = await readBytes(bookBytes({ sheets }));
});

/** What holds of every reading, whatever stands in the file. */
function holds(read: ProgrammeRead): void {
  const left = read.files.reduce((sum, { rows, used }) => sum + rows - used, 0);
  expect(read.notUsed.filter(({ column }) => column === undefined).length).toBe(left);
  for (const { rows, used } of read.files) expect(used).toBeLessThanOrEqual(rows);
  for (const { rain_mm, day } of read.facts.gauges.flatMap(({ readings }) => readings)) {
    expect(rain_mm === null || Number.isFinite(rain_mm)).toBe(true);
    expect(Number.isInteger(day)).toBe(true);
  }
  expect(JSON.stringify(read.facts, (_, value) => (Number.isNaN(value) ? 'not a number!' : value))).not.toContain(
    'not a number!',
  );
  const ids = read.facts.sites.map(({ siteId }) => siteId);
  expect(new Set(ids).size).toBe(ids.length);
  for (const { severity, place } of read.problems) {
    if (severity !== 'blocker' || place.siteId === undefined) continue;
    const site = read.facts.sites.find(({ siteId }) => siteId === place.siteId);
    if (site) expect(site.doubts).toContainEqual(place);
  }
}

/** The other sheets have as many rows as before, and the rain is the same where neither it nor the gauges were touched. */
function othersHold(read: ProgrammeRead, touched: string): void {
  for (const { file, rows } of whole.files) {
    const name = file.replace('plan.xlsx/', '');
    if (name !== touched) expect(read.files.find((one) => one.file === file)?.rows).toBe(rows);
  }
  if (touched !== 'rain' && touched !== 'gauges')
    expect(read.facts.gauges.map(({ readings }) => readings)).toEqual(
      whole.facts.gauges.map(({ readings }) => readings),
    );
}

it('random changes to cells cost no row but their own', async () => {
  let withProblems = 0;
  const change = fc.record({ name: fc.constantFrom(...names), row: fc.nat(), column: fc.nat(), cell: hostile });
  await fc.assert(
    fc.asyncProperty(change, async ({ name, row: chosen, column, cell }) => {
      const made = structuredClone(sheets);
      const sheet = made.find((one) => one.name === name)!;
      const row = 1 + (chosen % (sheet.rows.length - 1));
      sheet.rows[row]![column % sheet.rows[0]!.length] = cell;
      const read = await readBytes(bookBytes({ sheets: made }));
      if (read.problems.length > 0) withProblems++;
      holds(read);
      const before = [...sheets.find((one) => one.name === name)!.rows[row]!, ...sheet.rows[row]!].map(String);
      if (!['sites', 'roofs', 'diverters', 'tanks'].includes(name)) return;
      for (const site of whole.facts.sites) {
        if (before.includes(site.siteId)) continue;
        const { doubts, ...facts } = read.facts.sites.find(({ siteId }) => siteId === site.siteId)!;
        expect({ ...facts, doubts: [] }).toEqual(site);
        for (const doubt of doubts) expect(doubt).toMatchObject({ file: `plan.xlsx/${name}`, row: row + 1 });
      }
      for (const { file, rows } of whole.files)
        expect(Math.abs((read.files.find((one) => one.file === file)?.rows ?? 0) - rows)).toBeLessThanOrEqual(1);
    }),
    { numRuns: fuzzRuns(400), seed: 20261127 },
  );
  expect(withProblems).toBeGreaterThan(fuzzRuns(400) / 4);
});

it('random changes to the XML of a sheet never stop the reading, and cost the other sheets nothing', async () => {
  let withProblems = 0;
  const change = fc.record({
    name: fc.constantFrom(...names),
    from: fc.nat(),
    length: fc.nat({ max: 12 }),
    piece: pieces,
  });
  await fc.assert(
    fc.asyncProperty(change, async ({ name, from, length, piece }) => {
      const xml = sheetXml(sheets.find((one) => one.name === name)!);
      const start = from % xml.length;
      const changed = xml.slice(0, start) + piece + xml.slice(start + length);
      const read = await readBytes(bookBytes({ sheets, parts: { [partOf(name)]: changed } }));
      if (read.problems.length > 0) withProblems++;
      holds(read);
      othersHold(read, name);
    }),
    { numRuns: fuzzRuns(300), seed: 20261128 },
  );
  expect(withProblems).toBeGreaterThan(fuzzRuns(300) / 4);
});

it('random changes to any part, its name or its presence never stop the reading', async () => {
  const parts = partsOf({ sheets });
  const change = fc.record({
    name: fc.constantFrom(...Object.keys(parts)),
    kind: fc.constantFrom('text', 'text', 'drop', 'rename', 'swap'),
    other: fc.constantFrom(...Object.keys(parts)),
    from: fc.nat(),
    length: fc.nat({ max: 20 }),
    piece: pieces,
  });
  await fc.assert(
    fc.asyncProperty(change, async ({ name, kind, other, from, length, piece }) => {
      const changed: Record<string, Uint8Array> = { ...parts };
      const text = strFromU8(parts[name]!);
      const start = from % text.length;
      if (kind === 'text') changed[name] = Buffer.from(text.slice(0, start) + piece + text.slice(start + length));
      else if (kind === 'swap') [changed[name], changed[other]] = [parts[other]!, parts[name]!];
      else delete changed[name];
      if (kind === 'rename') changed[`${name}${piece}`.slice(0, 200)] = parts[name]!;
      holds(await readBytes(zipSync(changed)));
    }),
    { numRuns: fuzzRuns(150), seed: 20261129 },
  );
});

it('random damages to the bytes of the file never stop the reading, and never change a value unnoticed', async () => {
  const bytes = bookBytes({ sheets });
  const damage = fc.record({ from: fc.nat(), length: fc.nat({ max: 20 }), put: fc.uint8Array({ maxLength: 20 }) });
  let unnoticed = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(damage, { minLength: 1, maxLength: 2 }), async (damages) => {
      let damaged = bytes;
      for (const { from, length, put } of damages) {
        const start = from % damaged.length;
        damaged = new Uint8Array([...damaged.slice(0, start), ...put, ...damaged.slice(start + length)]);
      }
      const read = await readBytes(damaged);
      holds(read);
      if (read.problems.length > 0) return;
      unnoticed++;
      // No problem: then it was no damage to what is read.
      expect(read.facts).toEqual(whole.facts);
    }),
    { numRuns: fuzzRuns(150), seed: 20261130 },
  );
  expect(unnoticed).toBeLessThan(fuzzRuns(150) / 2);
});
