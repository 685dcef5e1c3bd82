import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type ProgrammeTables, readProgramme, WriteRefused, writeNotUsed, writeProgramme } from '@eavewell/formats';
import { folderTables } from '@eavewell/tables';
import { describe, expect, it } from 'vitest';
import { inFolder, line, listed } from './folder.ts';

/** Every column of sites.csv, and the commas of those behind the first six. */
const siteColumns = Object.keys(folderTables.sites.columns);
const restEmpty = ','.repeat(siteColumns.length - 6);

const programme: ProgrammeTables = {
  settings: { programme: 'Tarn water', seed: 7 },
  tables: {
    sites: [
      { siteId: 'S001', name: '=Upper "old", Tarn', people: 120, gaugeId: 'G-east', latitude_deg: -8.5 },
      { siteId: 'S002', name: "'-plus", people: 'abc', gaugeId: 'G-east' },
    ],
    roofs: [{ siteId: 'S001', roofId: 'school', length_m: 24.25, width_m: 8, gutteredFraction: 1 }],
    tanks: [{ siteId: 'S001', tankId: 'T1', nominal_L: 20000 }],
    demand: [{ siteId: null, purpose: 'drinking', litres_per_person_per_day: 7.5, judged: true }],
    gauges: [{ gaugeId: 'G-east', name: 'East Landing', readingTime: '07:00' }],
  },
  rain: [
    {
      gaugeId: 'G-east',
      rows: [
        { date: '2001-01-01', rain_mm: 0.1 },
        { date: '2001-01-02', rain_mm: null },
        { date: '2001-01-03', rain_mm: '-9999' },
      ],
    },
  ],
};

describe('a programme that is written and read again', () => {
  it('comes back as it was given, its planted faults too', async () => {
    await inFolder({}, async (folder) => {
      const written = await writeProgramme(folder, programme);
      expect(written.files).toEqual([
        'sites.csv',
        'roofs.csv',
        'tanks.csv',
        'demand.csv',
        'gauges.csv',
        'rain/G-east.csv',
        'settings.json',
        'datapackage.json',
      ]);
      const read = await readProgramme(folder);
      expect(read.problems.map(line)).toEqual([
        'cell.not_a_number blocker @ sites.csv 3 people = "abc"',
        'rainFile.missing_code warning @ rain/G-east.csv 4 rain_mm = "-9999"',
      ]);
      const { sites, gauges, settings } = read.facts;
      expect(sites.map(({ name, people }) => [name, people])).toEqual([
        ['=Upper "old", Tarn', 120],
        ["'-plus", null],
      ]);
      expect(sites[0]!.roofs[0]!.length_m).toBe(24.25);
      expect(sites[0]!.tanks[0]!.nominal_L).toBe(20000);
      expect(gauges[0]!.readings.map(({ rain_mm }) => rain_mm)).toEqual([0.1, null, null]);
      expect([settings.programme, settings.seed]).toEqual(['Tarn water', 7]);
    });
  });

  it('holds no formula, no byte order mark and no carriage return', async () => {
    await inFolder({}, async (folder) => {
      await writeProgramme(folder, programme);
      const text = await readFile(join(folder, 'sites.csv'), 'utf8');
      expect(text).toBe(
        [
          siteColumns.join(','),
          `S001,"'=Upper ""old"", Tarn",-8.5,,120,G-east${restEmpty}`,
          `S002,''-plus,,,abc,G-east${restEmpty}`,
          '',
        ].join('\n'),
      );
    });
  });

  it('leaves no unfinished file beside the finished ones', async () => {
    await inFolder({}, async (folder) => {
      await writeProgramme(folder, programme);
      const names = [...(await readdir(folder)), ...(await readdir(join(folder, 'rain')))];
      expect(names.filter((name) => name.includes('unfinished'))).toEqual([]);
    });
  });

  it('holds the raw files it was given, which may stand in for a table', async () => {
    await inFolder({}, async (folder) => {
      await writeProgramme(folder, { ...programme, rawFiles: [{ path: 'roofs.csv', text: 'siteId,roo' }] });
      const read = await readProgramme(folder);
      expect(read.problems.map(line)).toContain('header.column_missing blocker @ roofs.csv 1 roofId = ""');
    });
  });
});

describe('a folder that holds something already', () => {
  it('is refused, and nothing in it is touched', async () => {
    await inFolder({ 'sites.csv': 'mine' }, async (folder) => {
      const refusal = await writeProgramme(folder, programme).catch((error: unknown) => error);
      expect(refusal).toBeInstanceOf(WriteRefused);
      expect((refusal as WriteRefused).problem.code).toBe('folder.not_empty');
      expect(await readFile(join(folder, 'sites.csv'), 'utf8')).toBe('mine');
      expect(await readdir(folder)).toEqual(['sites.csv']);
    });
  });

  it('is written over when that is asked for, other files left alone', async () => {
    await inFolder({ 'sites.csv': 'mine', 'notes.txt': 'keep' }, async (folder) => {
      await writeProgramme(folder, programme, { overwrite: true });
      expect(await readFile(join(folder, 'notes.txt'), 'utf8')).toBe('keep');
      expect((await readProgramme(folder)).facts.sites).toHaveLength(2);
    });
  });

  it('is refused where it is a file', async () => {
    await inFolder({ place: 'x' }, async (folder) => {
      const refusal = await writeProgramme(join(folder, 'place'), programme).catch((error: unknown) => error);
      expect((refusal as WriteRefused).problem.code).toBe('folder.not_a_folder');
    });
  });

  it('keeps the old file when the new one cannot be put in its place', async () => {
    await inFolder({}, async (folder) => {
      await mkdir(join(folder, 'roofs.csv'));
      await writeFile(join(folder, 'roofs.csv', 'inside'), 'kept');
      await expect(writeProgramme(folder, programme, { overwrite: true })).rejects.toThrow();
      expect(await readFile(join(folder, 'roofs.csv', 'inside'), 'utf8')).toBe('kept');
      expect((await readdir(folder)).filter((name) => name.includes('unfinished'))).toEqual([]);
    });
  });
});

describe('what must not be written', () => {
  it.each(['../x', 'a/b', ''])('a rain file named by the id %j', async (gaugeId) => {
    await inFolder({}, async (folder) => {
      await expect(writeProgramme(folder, { ...programme, rain: [{ gaugeId, rows: [] }] })).rejects.toThrow(RangeError);
      expect(await readdir(folder)).toEqual([]);
    });
  });

  it.each(['../x.txt', '/x.txt', 'a/../../x', 'a\\b', ''])('a raw file at %j', async (path) => {
    await inFolder({}, async (folder) => {
      await expect(writeProgramme(folder, { ...programme, rawFiles: [{ path, text: '' }] })).rejects.toThrow(
        RangeError,
      );
    });
  });

  it('a number that is none', async () => {
    await inFolder({}, async (folder) => {
      const tables = { sites: [{ siteId: 'S1', people: Number.NaN }] };
      await expect(writeProgramme(folder, { ...programme, tables })).rejects.toThrow(RangeError);
    });
  });
});

describe('the list of what was not used', () => {
  it('is a table with file, row, column, value, reason and the row as it stands', async () => {
    await inFolder({}, async (folder) => {
      await writeProgramme(folder, programme);
      const read = await readProgramme(folder);
      expect(listed(read)).toHaveLength(2);
      const path = join(folder, 'not-used.csv');
      await writeNotUsed(path, read.notUsed, ({ code }) => `why: ${code}`);
      expect(await readFile(path, 'utf8')).toBe(
        [
          'file,row,column,value,reason,cells',
          `sites.csv,3,people,abc,why: cell.not_a_number,"S002,''-plus,,,abc,G-east${restEmpty}"`,
          'rain/G-east.csv,4,rain_mm,-9999,why: rainFile.missing_code,"2001-01-03,-9999"',
          '',
        ].join('\n'),
      );
      // It may stand in the folder: it is not taken for a table.
      expect((await readProgramme(folder)).problems).toEqual(read.problems);
    });
  });
});
