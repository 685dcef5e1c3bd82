// long: one case for each thing a programme may carry
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  type CellValue,
  olderFiles,
  type ProgrammeRead,
  type ProgrammeTables,
  readProgramme,
  tablesAsRead,
  WriteRefused,
  writeProgramme,
  writeWorkbook,
} from '@eavewell/formats';
import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { changed, type Files, good, inFolder } from './folder.ts';
import { fuzzRuns } from './fuzzRuns.ts';
import { bookBytes, bookLine, changedSheet, dateCell, inFile } from './workbook.ts';

/** What a programme says, without the names of files, rows and cells it stands in. */
function said({ facts, problems, files }: ProgrammeRead) {
  const { gauges, sites, ...others } = facts;
  return {
    ...others,
    sites: sites.map(({ doubts, ...site }) => ({
      ...site,
      doubts: doubts.map(({ column, siteId }) => [column, siteId]),
    })),
    gauges: gauges.map(({ file: _, readings, ...gauge }) => ({
      ...gauge,
      readings: readings.map(({ day, rain_mm }) => [day, rain_mm]),
    })),
    // A workbook says of a column of doubtful dates what a file says of each.
    problems: problems
      .filter(({ code }) => code !== 'column.date_order_unknown')
      .map(({ code, place, facts: found }) => {
        // Problems of a whole file name the file.
        const whole = code.startsWith('file.') ? '' : String(found['value']);
        // A written table has all its columns, the empty ones too.
        const told = code === 'row.cells_too_many' ? whole.replaceAll(/,+/g, ',') : whole;
        // 1.50 is the number 1.5 in a workbook.
        const value = /^-?\d/.test(told) && Number.isFinite(Number(told)) ? Number(told) : told;
        return `${code} ${place.column ?? ''} ${place.siteId ?? ''} ${value}`;
      })
      .sort(),
    rows: files
      .filter(({ file }) => !file.includes('rain') && !file.endsWith('settings'))
      .map(({ rows, used }) => [rows, used]),
  };
}

/** Reads a folder, the workbook it is converted into, and the folder that is converted into. */
async function thereAndBack(folder: string, room: string) {
  const [book, back] = [join(room, 'book.xlsx'), join(room, 'back')];
  const first = await tablesAsRead(folder);
  const written = await writeWorkbook(book, first.programme);
  const second = await tablesAsRead(book);
  await writeProgramme(back, second.programme);
  return {
    told: [...first.told, ...written.told, ...second.told],
    folder: said(await readProgramme(folder)),
    book: said(await readProgramme(book)),
    back: said(await readProgramme(back)),
  };
}

/** Converts files there and back, and asserts that all three say the same. */
async function assertSame(files: Files) {
  return inFolder(files, (folder) =>
    inFolder({}, async (room) => {
      const { told, folder: before, book, back } = await thereAndBack(folder, room);
      expect(book).toEqual(before);
      expect(back).toEqual(before);
      return { told, said: before };
    }),
  );
}

describe('a folder as a workbook and as a folder again', () => {
  it.each([true, false])('says the same of the demo programme, clean: %s', async (clean) => {
    await inFolder({}, async (room) => {
      const folder = join(room, 'demo');
      await writeProgramme(folder, demoProgramme({ sites: 20, seed: 3, clean }));
      const { folder: before, book, back } = await thereAndBack(folder, room);
      expect(before.problems.length > 0).toBe(!clean);
      expect(book).toEqual(before);
      expect(back).toEqual(before);
    });
  });

  it('says the same of the good folder, and has nothing to tell', async () => {
    expect((await assertSame(good)).told).toEqual([]);
  });

  const faulty: readonly (readonly [string, Files])[] = [
    ['a cell too many', changed('roofs.csv', 'S001,store,6,4', 'S001,store,6,4,4')],
    ['a needed name left empty', changed('sites.csv', 'S001,Upper Tarn,', 'S001,,')],
    ['text in a number', changed('sites.csv', ',120,', ',many,')],
    ['a decimal comma among commas', changed('roofs.csv', 'school,24,', 'school,"7,5",')],
    ['a comma that may be either', changed('roofs.csv', 'school,24,', 'school,"1,500",')],
    ['a number beyond any', changed('sites.csv', ',120,', ',1e400,')],
    ['a number too small to hold', changed('roofs.csv', 'school,24,', 'school,1e-400,')],
    ['a column that stands twice', changed('tanks.csv', 'outletHeight_m', 'diameter_m')],
    ['an id with its zeros', { ...good, ...changed('gauges.csv', 'East Landing', '007') }],
    ['a date day first', changed('sites.csv', '2027-03-01', '01/03/2027')],
    ['a day that is not', changed('sites.csv', '2027-03-01', '2027-02-30')],
    ['a text with a control character', changed('sites.csv', 'Upper Tarn', 'Upper\u001b Tarn')],
    ['a text that looks like a letter by its number', changed('sites.csv', 'Upper Tarn', 'Upper_x0041_ _x005f_')],
    ['a text of two lines', changed('sites.csv', 'Upper Tarn', '"Upper\n Tarn "')],
    ['an apostrophe of its own', changed('sites.csv', 'Upper Tarn', "'=Upper")],
    ['two rows of one key', changed('sites.csv', 'S003,Ferry', 'S002,Ferry')],
    ['a row of rain with a comma too many', changed('rain/G-east.csv', ',12.5\n', ',12,5\n')],
    ['a trace of rain', changed('rain/G-east.csv', ',12.5\n', ',T\n')],
    ['rain before the count of spreadsheets', changed('rain/G-east.csv', '2001-02-27', '1890-02-27')],
  ];
  it.each(faulty)('says the same where there is %s', async (_, files) => {
    await assertSame(files);
  });

  it.each([
    ['quotes that do not close', changed('sites.csv', 'S002,Lower', 'S002,"Lower')],
    ['a file cut off', { ...good, 'roofs.csv': good['roofs.csv']!.slice(0, -18) }],
    ['settings that are wrong', { ...good, 'settings.json': '{"draws":null,"target":5,"seed":"x","new":[1]}' }],
  ])('puts the same sites in doubt where there are %s', async (_, files) => {
    await inFolder(files, (folder) =>
      inFolder({}, async (room) => {
        const { folder: before, book, back } = await thereAndBack(folder, room);
        const known = ({ sites, settings }: typeof before) => [
          sites.map(({ doubts, ...site }) => [site, doubts.length > 0]),
          settings,
        ];
        expect(before.sites.some(({ doubts }) => doubts.length > 0)).toBe(true);
        if (!('roofs.csv' in files && files['roofs.csv'] !== good['roofs.csv'])) {
          expect(known(book)).toEqual(known(before));
          expect(known(back)).toEqual(known(before));
        }
        // Of a file cut off the row at its end stays a row that cannot be used.
        for (const { sites } of [book, back]) expect(sites.some(({ doubts }) => doubts.length > 0)).toBe(true);
      }),
    );
  });

  it('keeps decimal commas what they were in a file of semicolons', async () => {
    const roofs = good['roofs.csv']!.replaceAll(',', ';').replaceAll('.', ',').replace('school;24;', 'school;1.234;');
    await inFolder({ ...good, 'roofs.csv': roofs }, (folder) =>
      inFolder({}, async (room) => {
        const { folder: before, book, back } = await thereAndBack(folder, room);
        for (const after of [book, back]) expect(after.sites).toEqual(before.sites);
        expect(before.sites[0]!.roofs[0]!.length_m).toBeNull();
        expect(before.sites[0]!.roofs[0]!.width_m).toBe(8.5);
      }),
    );
  });

  it('withholds every verdict where the settings could not be read, and says so', async () => {
    await inFolder({ ...good, 'settings.json': '{ "draws": 5' }, (folder) =>
      inFolder({}, async (room) => {
        const { told, book, back } = await thereAndBack(folder, room);
        expect(told.map(({ code }) => code)).toEqual(['carried.settings_left']);
        for (const { sites } of [book, back]) expect(sites.every(({ doubts }) => doubts.length === 1)).toBe(true);
      }),
    );
  });

  it('carries columns of rain that nobody knows, and tells of what only a folder can hold', async () => {
    const rain = good['rain/G-east.csv']!.replace('date,rain_mm', 'date,rain_mm,observer').replace(
      ',12.5',
      ',12.5,Ana',
    );
    const files = {
      ...good,
      'rain/G-east.csv': rain,
      'rain/old notes.txt': 'x',
      'parts.csv': new Uint8Array([0, 1, 0, 2]),
      'ways.geojson': '{ "type": "FeatureCollection", "features": [] }',
      'columns.json': '{ "sites.csv": { "Remark": null, "people": { "column": "people" } } }',
      'sites.csv': good['sites.csv']!.replace('siteId', 'Remark,siteId').replaceAll('\nS', '\nx,S'),
    };
    await inFolder(files, (folder) =>
      inFolder({}, async (room) => {
        const { told, folder: before, book } = await thereAndBack(folder, room);
        expect(told.map(({ code, severity, place }) => `${code} ${severity} ${place.file}`)).toEqual([
          'file.unknown note rain/old notes.txt',
          'carried.table_left blocker parts.csv',
          'carried.file_left warning ways.geojson',
          'carried.file_left warning columns.json',
        ]);
        expect(before.sites.length).toBe(3);
        expect(book.sites.map(({ people }) => people)).toEqual(before.sites.map(({ people }) => people));
        expect(await readFile(join(room, 'back', 'rain/G-east.csv'), 'utf8')).toMatch(
          /^date,rain_mm,observer\n(.*\n)*2001-..-..,12.5,Ana\n/,
        );
      }),
    );
  });

  it('carries the days of a station file, and says that its flags are left', async () => {
    const station = good['rain/G-east.csv']!.replace('date,rain_mm', 'ID,DATE,ELEMENT,VALUE,M,Q,S').replaceAll(
      /^(\d{4})-(\d\d)-(\d\d),(.*)$/gm,
      (_, year, month, day, depth) => `G-east,${year}${month}${day},PRCP,${Math.round(Number(depth) * 10)},,,X`,
    );
    await inFolder({ ...good, 'rain/G-east.csv': station }, (folder) =>
      inFolder({}, async (room) => {
        const { told, folder: before, book, back } = await thereAndBack(folder, room);
        expect(told.map(({ code, place }) => `${code} ${place.file}`)).toEqual([
          'carried.station_days rain/G-east.csv',
        ]);
        expect(before.gauges[0]!.readings.length).toBeGreaterThan(3);
        for (const { gauges } of [book, back]) expect(gauges).toEqual(before.gauges);
      }),
    );
  });

  it('a folder as a folder keeps what only a folder can hold', async () => {
    const files = { ...good, 'parts.csv': new Uint8Array([0, 1, 0, 2]), 'settings.json': '{ "draws": 5' };
    await inFolder(files, (folder) =>
      inFolder({}, async (room) => {
        const { programme, told } = await tablesAsRead(folder);
        expect(told).toEqual([]);
        await writeProgramme(join(room, 'to'), programme);
        expect(await readFile(join(room, 'to', 'settings.json'), 'utf8')).toBe('{ "draws": 5');
        expect([...(await readFile(join(room, 'to', 'parts.csv')))]).toEqual([0, 1, 0, 2]);
      }),
    );
  });
});

/** Cells of every sort: numbers, days, words of the tables, and any text. */
const cell: fc.Arbitrary<CellValue> = fc.oneof(
  fc.constantFrom<CellValue>(
    null,
    '',
    'S1',
    'S2',
    'R1',
    'T1',
    'G1',
    'G2',
    'yes',
    'no',
    'tile',
    'drinking',
    'tank',
    'USD',
    'open',
  ),
  fc.constantFrom<CellValue>(
    '2027-03-01',
    '01/03/2027',
    '1899-12-31',
    '36892',
    '007',
    '1,5',
    '1.500',
    '=1+1',
    "'=x",
    '-3',
    '#N/A',
  ),
  fc.integer({ min: -5, max: 20000 }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.boolean(),
  fc.string({ unit: 'binary', maxLength: 12 }).map((text) => text.replaceAll('\u0000', '')),
);
const rows = (...columns: readonly string[]) =>
  fc.array(fc.record(Object.fromEntries(columns.map((name) => [name, cell])), { noNullPrototype: true }), {
    maxLength: 5,
  });
const id = (...ids: readonly string[]) => fc.constantFrom<CellValue>(...ids);

const made: fc.Arbitrary<ProgrammeTables> = fc
  .record({
    sites: rows('name', 'people', 'latitude_deg', 'rainFactor', 'handOverDay', 'gaugeId', 'note'),
    ids: fc.array(id('S1', 'S2', 'S3', '007'), { minLength: 5, maxLength: 5 }),
    roofs: rows('siteId', 'roofId', 'length_m', 'width_m', 'material', 'gutteredFraction'),
    tanks: rows('siteId', 'tankId', 'nominal_L', 'diameter_m', 'joinedTo'),
    demand: rows('siteId', 'purpose', 'litres_per_person_per_day', 'judged'),
    prices: rows('partId', 'priceDate', 'amount', 'currency'),
    rain: fc.array(
      fc.record({ date: cell.map(String), rain_mm: cell.map((value) => (typeof value === 'boolean' ? 'x' : value)) }),
      {
        maxLength: 8,
      },
    ),
    programme: fc.constantFrom('Tarn water', '=1', '2027', "'-x"),
    draws: fc.oneof(fc.integer({ min: -1, max: 2000 }), fc.constantFrom('many')),
  })
  .map(({ sites, ids, programme, draws, rain, ...tables }) => ({
    settings: { programme, draws },
    tables: {
      ...tables,
      sites: sites.map((row, i) => ({ siteId: ids[i]!, ...row })),
      gauges: [{ gaugeId: 'G1', name: 'One' }],
    },
    rain: [{ gaugeId: 'G1', rows: [{ date: '2001-01-01', rain_mm: 0.1 }, ...rain] }],
  }));

it('a programme made at random, written as a folder or as a workbook and converted, says the same', async () => {
  let withSites = 0;
  await fc.assert(
    fc.asyncProperty(made, async (programme) => {
      await inFolder({}, async (room) => {
        await writeProgramme(join(room, 'made'), programme);
        const { folder, book, back } = await thereAndBack(join(room, 'made'), room);
        await writeWorkbook(join(room, 'made.xlsx'), programme);
        const straight = said(await readProgramme(join(room, 'made.xlsx')));
        if (folder.sites.length > 0) withSites++;
        expect(book).toEqual(folder);
        expect(back).toEqual(folder);
        expect(straight).toEqual(folder);
      });
    }),
    { numRuns: fuzzRuns(60), seed: 20261201 },
  );
  expect(withSites).toBeGreaterThan(fuzzRuns(60) / 2);
});

describe('the workbook that is written', () => {
  const partsOf = async (files: Files) =>
    inFolder(files, (folder) =>
      inFolder({}, async (room) => {
        await writeWorkbook(join(room, 'a.xlsx'), (await tablesAsRead(folder)).programme);
        return unzipSync(await readFile(join(room, 'a.xlsx')));
      }),
    );

  it('has a bold first row that stays, days as days, numbers as numbers, and ids as text', async () => {
    const parts = await partsOf({ ...good, ...changed('gauges.csv', 'G-west,', '007,') });
    const sites = strFromU8(parts['xl/worksheets/sheet1.xml']!);
    const gauges = strFromU8(parts['xl/worksheets/sheet6.xml']!);
    expect(sites).toContain('state="frozen"');
    expect(sites).toContain('ySplit="1"');
    expect(sites).toMatch(/<c r="E2"><v>120<\/v><\/c>/);
    // 46447 is 2027-03-01: day 36526 is 2000-01-01 (common practice, no source), and 9,921 days later.
    expect(sites).toMatch(/<c r="H2" s="\d+"><v>46447<\/v><\/c>/);
    expect(gauges).toMatch(/<c r="A3" s="\d+" t="s">/);
    expect(strFromU8(parts['xl/sharedStrings.xml']!)).toContain('>007<');
    expect(strFromU8(parts['xl/styles.xml']!)).toContain('<b/>');
  });

  it('is not written over a file unless that is asked for', async () => {
    await inFolder({ 'a.xlsx': 'mine', 'b.xlsx/inside': 'x' }, async (folder) => {
      const programme = { settings: {}, tables: {}, rain: [] };
      const refusal = await writeWorkbook(join(folder, 'a.xlsx'), programme).catch((error: unknown) => error);
      expect((refusal as WriteRefused).problem.code).toBe('workbook.already_there');
      expect(await readFile(join(folder, 'a.xlsx'), 'utf8')).toBe('mine');
      await writeWorkbook(join(folder, 'a.xlsx'), programme, { overwrite: true });
      expect((await readFile(join(folder, 'a.xlsx'))).subarray(0, 2).toString()).toBe('PK');
      await expect(writeWorkbook(join(folder, 'b.xlsx'), programme, { overwrite: true })).rejects.toBeInstanceOf(
        WriteRefused,
      );
    });
  });
});

describe('a workbook as a folder', () => {
  it('keeps days that may have been swapped from being taken for days', async () => {
    const sheets = changedSheet('rain', (sheet) => {
      const days = [
        ...['2001-01-02', '2001-02-02', '2001-03-02', '2001-04-02'].map(dateCell),
        '13/02/2001',
        '14/02/2001',
      ];
      for (const [i, day] of days.entries()) sheet.rows[i + 1]![1] = day;
    });
    await inFile(bookBytes({ sheets }), (path) =>
      inFolder({}, async (room) => {
        await writeProgramme(room, (await tablesAsRead(path)).programme);
        const read = await readProgramme(room);
        expect(read.facts.gauges[0]!.readings).toEqual([]);
        expect(await readFile(join(room, 'rain/G-east.csv'), 'utf8')).toContain('02/01/2001,0');
      }),
    );
  });

  it('tells of rows of rain without a gauge, of other sheets, and of a setting that stands twice', async () => {
    const sheets = changedSheet('rain', (sheet) => sheet.rows.push(['../x', dateCell('2001-01-01'), 5]));
    sheets.find(({ name }) => name === 'settings')!.rows.push(['programme', 'Other']);
    sheets.push(
      { name: 'Budget', rows: [['x']] },
      {
        name: 'rain G-east',
        rows: [
          ['date', 'rain_mm'],
          [null, 1],
        ],
      },
    );
    await inFile(bookBytes({ sheets }), async (path) => {
      const { told } = await tablesAsRead(path);
      expect(told.map(bookLine)).toEqual([
        'carried.rows_left warning @ rain - - = "plan.xlsx/rain"',
        'rainFile.two_files blocker @ rain G-east - - = "plan.xlsx/rain"',
        'sheet.unknown note @ Budget - - = "Budget"',
        'carried.settings_left blocker @ settings - - = "plan.xlsx/settings"',
      ]);
    });
  });

  it('tells of what stood in the folder before', async () => {
    await inFolder({ 'diverters.csv': 'x', 'rain/G9.csv': 'x', 'notes.txt': 'x' }, async (folder) => {
      await mkdir(join(folder, 'other'));
      await writeFile(join(folder, 'other', 'sites.csv'), 'x');
      const { files } = await writeProgramme(
        folder,
        { settings: {}, tables: { sites: [] }, rain: [] },
        { overwrite: true },
      );
      expect((await olderFiles(folder, files)).map(({ code, place }) => `${code} ${place.file}`)).toEqual([
        'carried.older_file diverters.csv',
        'carried.older_file rain/G9.csv',
      ]);
    });
  });
});
