import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { run } from '@eavewell/cli';
import { readProgramme, tablesAsRead, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { doubted, inFolder } from './folder.ts';
import { bookBytes, bookLine, type Cell, changedSheet, goodSheets, inFile, type SheetMade } from './workbook.ts';

class Kept extends Writable {
  text = '';
  override _write(chunk: Buffer, _encoding: string, done: () => void): void {
    this.text += chunk.toString('utf8');
    done();
  }
}

async function eavewell(...args: readonly string[]) {
  const [stdout, stderr] = [new Kept(), new Kept()];
  const code = await run(args, { stdout, stderr, env: { LANG: 'C.UTF-8' }, platform: 'linux' });
  await new Promise<void>((ended) => stdout.end(ended));
  return { code, out: stdout.text, flat: stdout.text.replace(/\s+/g, ' '), err: stderr.text };
}

const seattle = new URL('../../node_modules/vega-datasets/data/seattle-weather.csv', import.meta.url);
let days: readonly { readonly iso: string; readonly rain_mm: number }[];
let room: string;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-columns-'));
  const lines = (await readFile(seattle, 'utf8')).trimEnd().split('\n').slice(1);
  days = lines.map((line) => {
    const [date = '', rain = ''] = line.split(',');
    return { iso: date.replaceAll('/', '-').slice(0, 10), rain_mm: Number(rain) };
  });
});
afterAll(() => rm(room, { recursive: true, force: true }));

/** A day as text, month first and without zeros before it. */
function monthFirst(iso: string): string {
  const [year, month, day] = iso.split('-').map(Number);
  return `${month}/${day}/${year}`;
}

/** One inch is 25.4 mm. The rain of the record to two decimals of an inch, as a gauge marked in inches gives it. */
const inches = (rain_mm: number) => Math.round((rain_mm / 25.4) * 100) / 100;

/** A workbook as somebody has it who never saw the tables: own names of sheets and headers, feet, inches, dates as text. */
function ownBook(gauge: boolean): Uint8Array {
  const sites: Cell[][] = [
    ['Site ID', 'Village', 'People'],
    ['V1', 'Upper Tarn', 40],
    ['V2', 'Ferry Landing', 150],
  ];
  if (gauge) for (const [i, row] of sites.entries()) row.push(i === 0 ? 'Rain gauge' : 'G1');
  const roofs: Cell[][] = [['Site ID', 'Roof', 'Length (ft)', 'Width (ft)', 'Material']];
  for (const id of ['V1', 'V2']) roofs.push([id, 'main', 60, 30, 'corrugatedMetal']);
  const tanks: Cell[][] = [['Site ID', 'Tank', 'Capacity (L)']];
  for (const id of ['V1', 'V2']) tanks.push([id, 'A', 20000]);
  const rain = days.map(({ iso, rain_mm }): Cell[] => [monthFirst(iso), inches(rain_mm)]);
  const sheets: SheetMade[] = [
    { name: 'Village list', rows: sites },
    { name: 'Roof list', rows: roofs },
    { name: 'Tanks', rows: tanks },
    { name: 'Rain data', rows: [['Read by the teacher'], ['Date', 'Precip (in)'], ...rain] },
    { name: 'Budget', rows: [['Paid', 'to whom']] },
  ];
  const gauges = { name: 'gauges', rows: [['gaugeId', 'name'] as Cell[], ['G1', 'At the school'] as Cell[]] };
  return bookBytes({ sheets: gauge ? [...sheets, gauges] : sheets });
}

/** The same programme as a folder, in mm, m and our own names. 60 ft are 18.288 m and 30 ft 9.144 m: 0.3048 m to the foot. */
async function sameFolder(path: string): Promise<void> {
  const ids = ['V1', 'V2'];
  const sites = [
    { siteId: 'V1', name: 'Upper Tarn', people: 40, gaugeId: 'G1' },
    { siteId: 'V2', name: 'Ferry Landing', people: 150, gaugeId: 'G1' },
  ];
  const roof = { roofId: 'main', length_m: 18.288, width_m: 9.144, material: 'corrugatedMetal' };
  await writeProgramme(path, {
    settings: {},
    tables: {
      sites,
      roofs: ids.map((siteId) => ({ siteId, ...roof })),
      tanks: ids.map((siteId) => ({ siteId, tankId: 'A', nominal_L: 20000 })),
      gauges: [{ gaugeId: 'G1', name: 'At the school' }],
    },
    rain: [{ gaugeId: 'G1', rows: days.map(({ iso, rain_mm }) => ({ date: iso, rain_mm })) }],
  });
}

interface SiteTold {
  readonly siteId: string;
  readonly verdict: string;
  readonly storages: readonly { readonly years: readonly { readonly dryDays: number }[] }[];
}

describe('a workbook of somebody who never saw the tables', () => {
  it('comes to the verdicts of the folder in mm, by what the program says alone', async () => {
    const book = join(room, 'village water.xlsx');
    await writeFile(book, ownBook(false));
    const first = await eavewell('check', book);
    expect(first.code).toBe(1);
    expect(first.flat).toContain('let "eavewell columns" match');

    const proposed = await eavewell('columns', book);
    for (const told of [
      'sheet "Village list" → sites',
      'sheet "Roof list" → roofs',
      'sheet "Tanks" → tanks',
      'Length (ft) → length_m (ft)',
      'Date → date (mdy)',
      'Precip (in) → rain_mm (in)',
      "--set 'Rain data=rain ID'",
      'left alone: Budget',
      `columns "${book}" --accept`,
    ])
      expect(proposed.flat).toContain(told);
    await expect(readFile(join(room, 'village water.columns.json'))).rejects.toThrow();

    // Which gauge it is cannot be known: the program asks for a sheet of gauges, and for the gauge of each site.
    await eavewell('columns', book, '--accept');
    const second = await eavewell('check', book);
    expect(second.flat).toContain('The workbook has no sheet gauges. Add it, with the columns gaugeId, name');
    expect(second.flat).toContain('No gauge is named.');
    await writeFile(book, ownBook(true));
    expect((await eavewell('columns', book)).flat).toContain('sheet "Rain data" → rain G1');
    expect((await eavewell('columns', book, '--accept')).out).toContain('Written: ');
    expect((await eavewell('check', book)).code).toBe(0);

    const folder = join(room, 'same');
    await sameFolder(folder);
    const told = async (path: string) => {
      const { code, out } = await eavewell('design', path, '--json');
      expect(code).toBe(0);
      return JSON.parse(out) as { sites: readonly SiteTold[] };
    };
    const [ofBook, ofFolder] = [await told(book), await told(folder)];
    expect(ofFolder.sites.map(({ verdict }) => verdict)).toEqual(['short', 'short']);
    expect(ofBook.sites.map(({ siteId, verdict }) => [siteId, verdict])).toEqual(
      ofFolder.sites.map(({ siteId, verdict }) => [siteId, verdict]),
    );
    // 0.005 inch is 0.127 mm, 21 L of this roof: a day on the edge may go the other way, and no more than one a year does.
    ofBook.sites.forEach(({ storages }, i) => {
      const other = ofFolder.sites[i]!.storages;
      const dry = (of: SiteTold['storages']) => of.flatMap(({ years }) => years.map(({ dryDays }) => dryDays));
      expect(dry(storages).length).toBe(dry(other).length);
      expect(dry(other).length).toBeGreaterThan(0);
      for (const [year, count] of dry(storages).entries())
        expect(Math.abs(count - dry(other)[year]!)).toBeLessThanOrEqual(1);
    });
    // Every reading is that of the record, to half of the last digit that was written.
    const { facts } = await readProgramme(book);
    const { readings } = facts.gauges[0]!;
    expect(readings.length).toBe(days.length);
    readings.forEach(({ day, rain_mm }, i) => {
      expect(new Date(day * 864e5).toISOString().slice(0, 10)).toBe(days[i]!.iso);
      expect(Math.abs(rain_mm! - days[i]!.rain_mm)).toBeLessThanOrEqual(0.005 * 25.4 + 1e-9);
    });
    // Written as a folder, it says the same without the matching.
    const back = join(room, 'back');
    expect((await eavewell('convert', book, back)).code).toBe(0);
    expect((await told(back)).sites.map(({ verdict, storages }) => [verdict, storages])).toEqual(
      ofBook.sites.map(({ verdict, storages }) => [verdict, storages]),
    );
  });

  it('takes what is typed, and refuses what cannot be', async () => {
    const book = join(room, 'typed.xlsx');
    await writeFile(book, ownBook(true));
    const saved = async () => JSON.parse(await readFile(join(room, 'typed.columns.json'), 'utf8'));
    for (const [text, said] of [
      ['Rian data=rain', 'Did you mean "Rain data"?'],
      ['Rain data=rian', 'Did you mean rain?'],
      ['Rain data:Precip (in)=rain_mm:cubit', 'Nothing was written.'],
      ['Rain data:Perciption=rain_mm', 'There is no header "Perciption"'],
      ['Nowhere:Date=date', 'none of the tables'],
    ] as const) {
      const { code, err } = await eavewell('columns', book, '--set', text);
      expect([text, code]).toEqual([text, 2]);
      expect(err.replace(/\s+/g, ' ')).toContain(said);
    }
    await expect(saved()).rejects.toThrow();
    const set = ['Rain data=rain G1', 'Rain data:Precip (in)=rain_mm:mm', 'Rain data:Date=date:mdy', 'Budget=-'];
    expect((await eavewell('columns', book, ...set.flatMap((one) => ['--set', one]))).code).toBe(0);
    expect(await saved()).toEqual({
      sheets: { 'Rain data': 'rain G1', Budget: null },
      'Rain data': { 'Precip (in)': { column: 'rain_mm', unit: 'mm' }, Date: { column: 'date', dateOrder: 'mdy' } },
    });
    // Given to another sheet, rain G1 is no longer that of the first.
    await eavewell('columns', book, '--set', 'Tanks=rain G1');
    expect((await saved()).sheets).toEqual({ Budget: null, Tanks: 'rain G1' });
  });
});

/** Reads a workbook beside which a matching is saved. */
async function readWith(sheets: readonly SheetMade[], saved: unknown) {
  return inFile(bookBytes({ sheets }), async (path) => {
    const text = typeof saved === 'string' ? saved : JSON.stringify(saved);
    await writeFile(path.replace('.xlsx', '.columns.json'), text);
    return readProgramme(path);
  });
}

function renamed(from: string, to: string): SheetMade[] {
  return changedSheet(from, (sheet) => Object.assign(sheet, { name: to }));
}

describe('faults of a matching beside a workbook', () => {
  const every = ['S001', 'S002', 'S003'];
  const reading = async (sheets: readonly SheetMade[], saved: unknown) => {
    const read = await readWith(sheets, saved);
    return { lines: read.problems.map(bookLine), inDoubt: [...new Set(doubted(read))], read };
  };

  it('says which sheets it took, and names the cell of a fault by its own letters', async () => {
    const sheets = renamed('roofs', 'Houses');
    const houses = sheets.find(({ name }) => name === 'Houses')!;
    houses.rows = [['List of houses'], ...houses.rows];
    houses.rows[1]![houses.rows[1]!.indexOf('length_m')] = 'Long';
    const at = houses.rows[1]!.indexOf('Long');
    houses.rows[2]![at] = 'much';
    const { lines, inDoubt } = await reading(sheets, {
      sheets: { Houses: 'roofs' },
      Houses: { Long: { column: 'length_m', unit: 'ft' } },
    });
    expect(lines).toContain('sheet.matched note @ Houses - - = "Houses"');
    expect(lines.find((text) => text.startsWith('cell.not_a_number'))).toContain('Houses 3 length_m C3');
    expect(inDoubt).toEqual(['S001']);
  });

  it.each([
    ['is no JSON', '{ "rain": ', 'columns.not_json blocker @ plan.columns.json'],
    ['gives a sheet to no table', { sheets: { Houses: 'rofs' } }, 'columns.wrong_entry blocker @ plan.columns.json'],
    ['has sheets that are no list of them', { sheets: ['rain'] }, 'columns.wrong_entry blocker @ plan.columns.json'],
    ['names an unknown unit', { roofs: { x: { column: 'length_m', unit: 'cubit' } } }, 'columns.unknown_unit blocker'],
  ])('puts every site in doubt where it %s', async (_, saved, told) => {
    const { lines, inDoubt } = await reading(goodSheets(), saved);
    expect(lines.filter((text) => text.startsWith(told))).toHaveLength(1);
    expect(inDoubt).toEqual(every);
  });

  it('warns of a sheet that is not there, and of an entry for no table, and puts none in doubt', async () => {
    const { lines, inDoubt } = await reading(goodSheets(), {
      sheets: { Houzes: 'roofs' },
      Houzes: { x: null },
      'roofs.csv': { x: null },
    });
    expect(lines).toEqual([
      'columns.unknown_file warning @ plan.columns.json - - = "roofs.csv"',
      'sheet.not_there warning @ Houzes - - = "Houzes"',
    ]);
    expect(inDoubt).toEqual([]);
  });

  it('uses neither of two sheets for one table, and leaves alone a sheet it is told to', async () => {
    const sheets = [...goodSheets(), { name: 'Houses', rows: [['siteId', 'roofId'] as Cell[]] }];
    const two = await reading(sheets, { sheets: { Houses: 'roofs' } });
    expect(two.lines.some((text) => text.startsWith('sheet.twice blocker'))).toBe(true);
    expect(two.inDoubt).toEqual(every);
    const left = await reading(sheets, { sheets: { Houses: null } });
    expect(left.lines).toEqual([]);
  });

  it('reads the rain of all gauges under headers of its own', async () => {
    const sheets = changedSheet('rain', (sheet) => {
      sheet.rows[0] = ['Station', 'Day', 'Fall'];
      for (const row of sheet.rows.slice(1)) if (typeof row![2] === 'number') row![2] *= 10;
    });
    const matching = { rain: { Station: 'gaugeId', Day: 'date', Fall: { column: 'rain_mm', unit: 'tenths' } } };
    const { lines, read } = await reading(sheets, matching);
    expect(lines.map((text) => text.split(' ')[0])).toEqual(['columns.used']);
    const plain = await inFile(bookBytes({ sheets: goodSheets() }), readProgramme);
    const depths = ({ facts }: typeof plain) =>
      facts.gauges.map(({ readings }) =>
        readings.map(({ day, rain_mm }) => [day, rain_mm === null ? null : Number(rain_mm.toFixed(9))]),
      );
    expect(depths(plain).flat().length).toBeGreaterThan(9);
    expect(depths(read)).toEqual(depths(plain));
  });

  it('writes a cell that could not be read in feet so that nobody reads it in metres', async () => {
    const sheets = changedSheet('roofs', (sheet) => {
      const at = sheet.rows[0]!.indexOf('length_m');
      sheet.rows[1]![at] = '8,5';
    });
    await inFile(bookBytes({ sheets }), (path) =>
      inFolder({}, async (to) => {
        const saved = { roofs: { length_m: { column: 'length_m', unit: 'ft' } } };
        await writeFile(path.replace('.xlsx', '.columns.json'), JSON.stringify(saved));
        const before = await readProgramme(path);
        await writeProgramme(to, (await tablesAsRead(path)).programme);
        const after = await readProgramme(to);
        expect(await readFile(join(to, 'roofs.csv'), 'utf8')).toContain('"8,5 ft"');
        const roofs = ({ facts }: typeof before) => facts.sites.map((site) => site.roofs.map((roof) => roof.length_m));
        expect(roofs(after)).toEqual(roofs(before));
        expect(doubted(after)).toEqual(doubted(before));
      }),
    );
  });
});
