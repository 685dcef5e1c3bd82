import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = (...args: readonly string[]) => keptRun(args);

/** A text without its line ends, which depend on the length of paths. */
const flowing = (text: string) => text.replace(/\s+/g, ' ');

let room: string;
let [folder, book, clean, cleanBook] = ['', '', '', ''];
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-convert-'));
  [folder, book] = [join(room, 'islands'), join(room, 'islands.xlsx')];
  [clean, cleanBook] = [join(room, 'tidy'), join(room, 'tidy.xlsx')];
  await eavewell('demo', folder, '--sites', '8');
  await eavewell('demo', clean, '--sites', '5', '--clean');
  expect((await eavewell('convert', clean, cleanBook)).code).toBe(0);
});
afterAll(() => rm(room, { recursive: true, force: true }));

describe('convert', () => {
  it('writes a folder as a workbook, and says how much', async () => {
    const { code, out } = await eavewell('convert', folder, book);
    expect(code).toBe(0);
    expect(flowing(out)).toMatch(/islands\.xlsx: \d+ sheets, [\d,]+ rows and [\d,]+ days of rain\./);
  });

  it('writes a workbook as a folder that gives the same design', async () => {
    expect((await eavewell('convert', cleanBook, join(room, 'again'))).code).toBe(0);
    const [before, after] = [await eavewell('design', clean), await eavewell('design', join(room, 'again'))];
    expect(after.out.replaceAll('again', 'tidy')).toBe(before.out);
  });

  it('leaves what is there alone unless told, and names what stays from before', async () => {
    await writeFile(join(room, 'mine.xlsx'), 'mine');
    expect(await eavewell('convert', clean, join(room, 'mine.xlsx'))).toMatchObject({ code: 2, out: '' });
    expect(await readFile(join(room, 'mine.xlsx'), 'utf8')).toBe('mine');
    expect((await eavewell('convert', clean, join(room, 'mine.xlsx'), '--overwrite')).code).toBe(0);
    expect((await eavewell('convert', cleanBook, folder)).code).toBe(2);
    await eavewell('demo', join(room, 'full'), '--sites', '5', '--clean');
    await writeFile(join(room, 'full', 'rain', 'G77.csv'), 'date,rain_mm\n');
    const { code, out } = await eavewell('convert', cleanBook, join(room, 'full'), '--overwrite');
    expect(code).toBe(0);
    expect(out).toContain('rain/G77.csv');
  });

  it('ends with 1 and says so where something that counts was left', async () => {
    await eavewell('demo', join(room, 'odd'), '--sites', '5', '--clean');
    await writeFile(join(room, 'odd', 'settings.json'), '{');
    const { code, out } = await eavewell('convert', join(room, 'odd'), join(room, 'odd.xlsx'));
    expect(code).toBe(1);
    expect(out).toContain('settings.json');
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80 + room.length);
  });

  it.each(['demo.xls', 'demo.ods', 'demo.xlsm', 'demo.CSV'])(
    'writes no %s, and makes nothing of that name',
    async (name) => {
      const to = join(room, name);
      const { code, out, err } = await eavewell('convert', clean, to);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(flowing(err)).toContain('only a folder or a workbook .xlsx');
      expect(await readdir(room)).not.toContain(name);
    },
  );

  it.each([
    ['the same place twice', () => [clean, clean], 'same'],
    ['nothing that is there', () => [join(room, 'none.xlsx'), join(room, 'x')], 'no folder or workbook'],
    ['a file that is none', () => [join(room, 'tidy', 'sites.csv'), join(room, 'x')], 'no folder or workbook'],
    ['no name', () => [clean, ''], 'name'],
  ])('refuses %s', async (_, args, said) => {
    const { code, err } = await eavewell('convert', ...args());
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(await readdir(room)).not.toContain('x');
  });
});

describe('every command on a workbook', () => {
  it('design says what it says of the folder', async () => {
    const [ofFolder, ofBook] = [await eavewell('design', clean), await eavewell('design', cleanBook)];
    expect(ofBook.code).toBe(ofFolder.code);
    expect(ofBook.out.replaceAll('tidy.xlsx', 'tidy')).toBe(ofFolder.out);
  });

  it('rain says what it says of the folder', async () => {
    const [ofFolder, ofBook] = [await eavewell('rain', clean, 'G1'), await eavewell('rain', cleanBook, 'G1')];
    expect(ofBook.code).toBe(ofFolder.code);
    expect(flowing(ofBook.out).replaceAll('tidy.xlsx/rain,', 'rain/G1.csv,')).toBe(flowing(ofFolder.out));
  });

  it('check names sheet, row, column and cell', async () => {
    const { code, out } = await eavewell('check', book, '--all');
    expect(code).toBe(1);
    expect(out).toMatch(/islands\.xlsx\/\w+, row \d+, \w+, cell [A-Z]\d+/);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });

  it('a workbook that cannot be opened is wrong use, with what to do', async () => {
    await writeFile(join(room, 'old.xls'), Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0, 0, 0, 0]));
    for (const command of ['check', 'design']) {
      const { code, err } = await eavewell(command, join(room, 'old.xls'));
      expect(code).toBe(2);
      expect(err).toContain('save it as a workbook of the kind .xlsx');
    }
    expect(await eavewell('convert', join(room, 'old.xls'), join(room, 'x'))).toMatchObject({ code: 2, out: '' });
  });
});
