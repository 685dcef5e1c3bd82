import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { folderAsRead } from './folderAsRead.ts';
import type { ProgrammeRead } from './programmeRead.ts';
import { readProgramme } from './readProgramme.ts';

import { writeProgramme } from './writeProgramme.ts';

/** Faults of the form of a file, which a written folder no longer has. */
const ofForm = [
  'file.separator',
  'file.encoding_taken',
  'file.no_last_line_end',
  'column.decimal_comma',
  'column.hidden_ends',
  'header.hidden_ends',
  'columns.used',
  'file.unknown',
  'package.',
];

async function inNewFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-kept-'));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** A cell that looks like a formula gains the apostrophe of every text that does, whatever its column. */
const unguarded = (text: string) => text.replaceAll(/'+(?=[=+\-@\t\r])/g, '');

function lines(problems: readonly Problem[]): readonly string[] {
  return problems
    .filter(({ code }) => !ofForm.some((form) => code.startsWith(form)))
    .map(({ code, severity, place, facts }) => {
      const value = unguarded(String(facts['value']));
      return JSON.stringify([code, severity, place, code === 'cell.unusual' ? Number(value.replace(',', '.')) : value]);
    });
}

function left(read: ProgrammeRead): readonly string[] {
  return read.notUsed.map(({ file, row, column, value, code }) =>
    JSON.stringify([file, row, column, unguarded(value), code]),
  );
}

/** Reads the files, writes what was read elsewhere, reads that, and asserts that nothing differs. */
async function assertKept(files: Readonly<Record<string, string | Uint8Array>>): Promise<ProgrammeRead> {
  return await inNewFolder(async (room) => {
    const [from, to, again] = [join(room, 'from'), join(room, 'to'), join(room, 'again')];
    for (const [path, content] of Object.entries(files)) {
      await mkdir(dirname(join(from, path)), { recursive: true });
      await writeFile(join(from, path), content);
    }
    const first = await readProgramme(from, { keep: true });
    await writeProgramme(to, folderAsRead(first));
    const second = await readProgramme(to, { keep: true });
    expect(second.facts).toEqual(first.facts);
    expect(lines(second.problems)).toEqual(lines(first.problems));
    expect(left(second)).toEqual(left(first));
    await writeProgramme(again, folderAsRead(second));
    const third = await readProgramme(again, { keep: true });
    expect(third.kept!.files).toEqual(second.kept!.files);
    return second;
  });
}

const cell = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.constantFrom('', '1', '12.5', '007', '0.50', '-3.25', 'S001', 'yes', 'T', '-', '-9999', '1e3'),
  },
  {
    weight: 4,
    arbitrary: fc.constantFrom(
      'a "quoted" one',
      'two\nlines',
      "'=1+1",
      '=1+1',
      '+5',
      "'plain",
      ' spaced ',
      '1,5',
      '1,500',
      '1.500',
      'x;y',
      'NaN',
      '2027-03-01',
      '01/02/2027',
      '\u00a0S002',
      'S0\u200b01',
      'Tärn',
    ),
  },
  { weight: 2, arbitrary: fc.string({ maxLength: 10, unit: 'grapheme' }) },
);

/** Cells as one line, quoted where they must be for this separator. */
function lineOf(cells: readonly string[], separator: string): string {
  const quote = (text: string) =>
    /["\r\n]/.test(text) || text.includes(separator) ? `"${text.replaceAll('"', '""')}"` : text;
  return cells.map(quote).join(separator);
}

const shape = fc.constantFrom('whole', 'whole', 'whole', 'whole', 'short', 'long', 'empty', 'openQuote');
const roofHeader = ['siteId', 'roofId', 'length_m', 'width_m', 'material', 'surveyor', '=note', 'gutteredFraction'];
const folders = fc.record({
  separator: fc.constantFrom(',', ',', ';', '\t'),
  mark: fc.constantFrom('', '\uFEFF'),
  end: fc.constantFrom('\n', '\n', '\r\n', ''),
  header: fc.constantFrom(
    roofHeader,
    roofHeader,
    roofHeader.map((name) => (name === 'length_m' ? 'length' : name)),
    [...roofHeader, 'surveyor'],
    roofHeader.toReversed(),
  ),
  rows: fc.array(
    fc.tuple(shape, fc.array(cell, { minLength: 9, maxLength: 9 }), fc.constantFrom('S001', 'S002', '001', 'S9')),
    { maxLength: 6 },
  ),
  rain: fc.array(fc.tuple(fc.constantFrom('2001-01-01', '2001-01-02', '', '1/2/2001', 'x'), cell, cell), {
    maxLength: 6,
  }),
  sites: fc.array(cell, { minLength: 2, maxLength: 2 }),
});

const base = {
  'tanks.csv': 'siteId,tankId,nominal_L\nS001,T1,5000\n001,T1,5000\n',
  'gauges.csv': 'gaugeId,name,observer\nG1,East,Uta\n',
  'settings.json': '{ "programme": "Tarn", "colour": "blue", "target": { "often": 3 } }\n',
};

/** How many folders are made up; `npm run fuzz` asks for many. */
const folders_count = Number(process.env['EAVEWELL_FUZZ'] ?? 60);

it('made-up folders come back as they stood: facts, faults, rows not used, columns nobody knows', async () => {
  let [faulty, raw] = [0, 0];
  await fc.assert(
    fc.asyncProperty(folders, async ({ separator, mark, end, header, rows, rain, sites }) => {
      const lineEnd = end === '' ? '\n' : end;
      const body = rows.map(([kind, cells, siteId]) => {
        const whole = [siteId, ...cells].slice(0, header.length);
        if (kind === 'empty') return '';
        if (kind === 'openQuote') return `${siteId}${separator}"never closed`;
        return lineOf(kind === 'short' ? whole.slice(0, 4) : kind === 'long' ? [...whole, 'more'] : whole, separator);
      });
      const roofs = mark + [lineOf(header, separator), ...body].join(lineEnd) + end;
      const depths = rain.map((cells) => `${lineOf(cells, ',')}\n`).join('');
      const read = await assertKept({
        ...base,
        'sites.csv': `siteId,name,people,notes\nS001,${lineOf([sites[0]!], ',')},120,\n001,Two,85,${lineOf([sites[1]!], ',')}\n`,
        'roofs.csv': roofs,
        'rain/G1.csv': `date,rain_mm,observer\n${depths}`,
      });
      if (read.problems.length > 4) faulty++;
      if (folderAsRead(read).rawFiles!.length > 0) raw++;
    }),
    { numRuns: folders_count, seed: 20261127 },
  );
  expect(faulty).toBeGreaterThan(folders_count / 2);
  expect(raw).toBeGreaterThan(folders_count / 10);
  expect(raw).toBeLessThan(folders_count * 0.95);
}, 3_600_000);

it('keeps the columns nobody knows behind the known ones, rows left out too, and settings nobody knows', async () => {
  const read = await assertKept({
    ...base,
    'sites.csv': 'notes,siteId,name,people\n007,S001,Upper,120\n"a, ""b""",S 2,Lower,85\nc,S001,Again,1\n',
    'roofs.csv': 'siteId,roofId\nS001,a\n',
  });
  const { tables, settings, rain } = folderAsRead(read);
  expect(tables.sites).toEqual([
    expect.objectContaining({ siteId: 'S001', name: 'Upper', people: 120, notes: '007' }),
    expect.objectContaining({ siteId: 'S 2', name: 'Lower', people: 85, notes: 'a, "b"' }),
    expect.objectContaining({ siteId: 'S001', name: 'Again', people: 1, notes: 'c' }),
  ]);
  expect(Object.keys(tables.sites![0]!).at(-1)).toBe('notes');
  expect(settings).toEqual({ programme: 'Tarn', colour: 'blue', target: { often: 3 } });
  expect(rain).toEqual([]);
});

it('keeps files that are no tables, letter for letter or byte for byte', async () => {
  const bytes = new Uint8Array([0x50, 0x4b, 0x03, 0x04, 1, 2, 3]);
  const read = await assertKept({
    ...base,
    'sites.csv': 'siteId,name\nS001,Upper\nS002,Lo',
    'roofs.csv': bytes,
    'settings.json': '{ "programme": "Tarn", }',
    'rain/G9.csv': 'date,rain_mm\n2001-01-01,1\n',
  });
  const raw = folderAsRead(read).rawFiles!;
  expect(raw.map(({ path }) => path)).toEqual(['roofs.csv', 'rain/G9.csv', 'settings.json']);
  expect(raw[0]!.bytes).toEqual(Buffer.from(bytes));
});

it('writes values read in another unit in ours, and what was accepted as "leave alone" again', async () => {
  const read = await assertKept({
    ...base,
    'sites.csv': 'siteId,name,people\nS001,Upper,120\n',
    'roofs.csv': 'siteId,roofId,Length (ft),Remark\nS001,a,10,x\n',
    'columns.json': '{ "roofs.csv": { "Length (ft)": { "column": "length_m", "unit": "ft" }, "Remark": null } }',
  });
  const { tables, rawFiles } = folderAsRead(read);
  expect(tables.roofs).toEqual([expect.objectContaining({ length_m: 3.048, Remark: 'x' })]);
  expect(rawFiles!.map(({ path, text }) => [path, JSON.parse(text)])).toEqual([
    ['columns.json', { 'roofs.csv': { Remark: null } }],
  ]);
});

it('keeps columns whose names the language has a meaning for', async () => {
  const read = await assertKept({
    ...base,
    'sites.csv': 'siteId,name,constructor,toString\nS001,Upper,1,2\n',
    'roofs.csv': 'siteId,roofId,__proto__\nS001,a,x\n',
  });
  const { tables, rawFiles } = folderAsRead(read);
  expect(Object.entries(tables.sites![0]!).slice(-2)).toEqual([
    ['constructor', '1'],
    ['toString', '2'],
  ]);
  expect(rawFiles!.map(({ path }) => path)).toEqual(['roofs.csv']);
});

it('is not made of a programme whose files were not kept', async () => {
  const read = await inNewFolder((folder) => readProgramme(folder));
  expect(read.kept).toBeUndefined();
  expect(() => folderAsRead(read)).toThrow(RangeError);
});
