import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = (...args: readonly string[]) => keptRun(args);

const files: Readonly<Record<string, string>> = {
  'sites.csv':
    'Site ID,Village,lat,long,Population,Rain gauge\nS001,Upper Tarn,-8.5,125.2,120,G1\nS002,Lower Tarn,-8.6,125.3,80,G1\n',
  'roofs.csv': 'site id,roof id,Roof length (ft),Width in feet,Material,Guttered (%),Notes\nS001,a,80,30,tile,90,x\n',
  'tanks.csv': 'siteId,tankId,Capacity (gal)\nS001,T1,2500\n',
  'gauges.csv': 'gaugeId,name\nG1,Up\nG2,Down\n',
  'rain/G1.csv': 'Date,Rain (in)\n01/02/2001,0.5\n14/02/2001,1.2\n',
  'rain/G2.csv': 'Date,Rain (in)\n03/02/2001,0.5\n24/02/2001,1.2\n',
};

let room: string;
let given: string;
let count = 0;

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-columns-'));
  given = join(room, 'given');
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(given, path)), { recursive: true });
    await writeFile(join(given, path), text);
  }
});

afterAll(() => rm(room, { recursive: true, force: true }));

/** The given folder anew. */
async function anew(): Promise<string> {
  const folder = join(room, `copy${count++}`);
  await cp(given, folder, { recursive: true });
  return folder;
}

async function anewWith(roofs: string): Promise<string> {
  const folder = await anew();
  await writeFile(join(folder, 'roofs.csv'), roofs);
  return folder;
}

async function saved(folder: string): Promise<unknown> {
  return JSON.parse(await readFile(join(folder, 'columns.json'), 'utf8'));
}

describe('columns', () => {
  it('shows what each header is likely to be and why, and writes nothing', async () => {
    const folder = await anew();
    const before = await readdir(folder);
    const { code, out } = await eavewell('columns', folder);
    expect(code).toBe(0);
    expect(await readdir(folder)).toEqual(before);
    for (const said of [
      'Site ID → siteId',
      'Village → name',
      'long → longitude_deg',
      'Population → people',
      'Rain gauge → gaugeId',
      'Roof length (ft) → length_m (ft)',
      'Guttered (%) → gutteredFraction (percent)',
      'Notes: like none of the columns',
      'rain/*.csv: 2 headers',
      'Date → date (dmy)',
      'Rain (in) → rain_mm (in)',
    ])
      expect(out).toContain(said);
    expect(out).toMatch(/the same words; the unit stands in the header; 1 of 1\s+value/);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });

  it('never proposes a gallon, and keeps the one that is named', async () => {
    const folder = await anew();
    const { out } = await eavewell('columns', folder, '--accept');
    expect(out).toMatch(/Which gallon\? --set\s+'tanks\.csv:Capacity \(gal\)=nominal_L:usgal'/);
    expect(await saved(folder)).not.toHaveProperty(['tanks.csv']);
    await eavewell('columns', folder, '--set', 'tanks.csv:Capacity (gal)=nominal_L:usgal');
    expect(await saved(folder)).toMatchObject({
      'tanks.csv': { 'Capacity (gal)': { column: 'nominal_L', unit: 'usgal' } },
      'rain/*.csv': { Date: { column: 'date', dateOrder: 'dmy' }, 'Rain (in)': { column: 'rain_mm', unit: 'in' } },
    });
  });

  it('is used by check and design from then on, and said', async () => {
    const folder = await anew();
    const before = await eavewell('check', folder);
    expect(before.out).toContain('is missing');
    await eavewell(
      'columns',
      folder,
      '--accept',
      '--set',
      'tanks.csv:Capacity (gal)=nominal_L:impgal',
      '--set',
      'roofs.csv:Notes=-',
    );
    const { out } = await eavewell('check', folder);
    expect(out).not.toContain('is missing');
    expect(out).toContain('A saved matching of headers was used: Site ID → siteId');
    const design = await eavewell('design', folder, '--json');
    const report = JSON.parse(design.out) as { sites: readonly { siteId: string }[] };
    expect(report.sites.map(({ siteId }) => siteId)).toEqual(['S001', 'S002']);
    expect((await eavewell('design', folder)).out).toContain('A saved matching of headers is used for 5 files');
    expect((await eavewell('columns', folder)).out).toContain('Every other header is understood.');
  });

  it.each([
    ['roofs.csv:Roof length (ft)', /--set needs FILE:HEADER=COLUMN/],
    ['rofs.csv:Notes=material', /none of the tables\. Did you mean roofs\.csv\?/],
    ['roofs.csv:Note=material', /There is no header "Note" in roofs\.csv\. Did you mean "Notes"\?/],
    ['roofs.csv:Notes=materials', /Did you mean material\?/],
    ['roofs.csv:Roof length (ft)=length_m:cubit', /cannot be converted/],
    ['tanks.csv:Capacity (gal)=nominal_L:gal', /usgal, impgal/],
  ])('refuses --set %s, and writes nothing', async (set, said) => {
    const folder = await anew();
    const { code, err } = await eavewell('columns', folder, '--set', set);
    expect(code).toBe(2);
    expect(err).toMatch(said);
    expect(await readdir(folder)).not.toContain('columns.json');
  });

  it('carries the unit that a header names into every --set it proposes, and takes none without it', async () => {
    const folder = await anew();
    const roofs = 'siteId,roofId,Roof length (ft),Width (ft),Plan width (ft)\nS001,a,eighty,30,31\nS001,b,80,30,31\n';
    await writeFile(join(folder, 'roofs.csv'), roofs);
    const flat = (await eavewell('columns', folder)).out.replace(/\s+/g, ' ');
    expect(flat).toContain("Too few of its values fit. Mend them, or: --set 'roofs.csv:Roof length (ft)=length_m:ft'");
    expect(flat).toContain("It could be more than one. Choose: --set 'roofs.csv:Plan width (ft)=width_m:ft'");
    // Every --set that is printed names a unit where its header does, and is taken as it stands.
    const sets = [...flat.matchAll(/--set '([^']+)'/g)].map(([, set]) => set!);
    const withUnit = sets.filter((set) => /\((?:ft|gal|in)\)/.test(set));
    expect(withUnit.length).toBe(3);
    for (const set of withUnit) {
      expect(set).toMatch(/:(?:ft|in|m|ft2|usgal)$/);
      expect((await eavewell('columns', await anewWith(roofs), '--set', set)).code, set).toBe(0);
    }
    for (const set of ['roofs.csv:Roof length (ft)=length_m', 'tanks.csv:Capacity (gal)=nominal_L']) {
      const { code, err } = await eavewell('columns', folder, '--set', set);
      expect(code).toBe(2);
      expect(err.replace(/\s+/g, ' ')).toContain(set.includes('gal') ? ':usgal' : ':ft');
    }
    expect(await readdir(folder)).not.toContain('columns.json');
  });

  it('takes a header that names another unit for values in our own where that is said, and keeps it said', async () => {
    const folder = await anew();
    const set = 'roofs.csv:Roof length (ft)=length_m:m';
    expect((await eavewell('columns', folder, '--set', set)).code).toBe(0);
    expect(await saved(folder)).toEqual({ 'roofs.csv': { 'Roof length (ft)': { column: 'length_m', unit: 'm' } } });
    expect((await eavewell('columns', folder)).out).not.toContain('names another unit');
  });

  it('says that a folder is not there', async () => {
    const { code, err } = await eavewell('columns', join(room, 'nowhere'));
    expect(code).toBe(2);
    expect(err).toMatch(/There is no folder/);
  });

  it('leaves a columns.json that cannot be read as it stands', async () => {
    const folder = await anew();
    await writeFile(join(folder, 'columns.json'), '{ "roofs.csv": {\n');
    const { code, err } = await eavewell('columns', folder, '--accept');
    expect(code).toBe(2);
    expect(err).toMatch(/columns\.json could not be read: in line 2, character 1, a bracket/);
    expect(await readFile(join(folder, 'columns.json'), 'utf8')).toBe('{ "roofs.csv": {\n');
    expect((await eavewell('columns', folder)).out).toContain('could not be read');
  });

  it('asks for day or month where both would do, and for one column where two headers would', async () => {
    const folder = await anew();
    for (const gauge of ['G1', 'G2'])
      await writeFile(join(folder, `rain/${gauge}.csv`), 'date,rain_mm\n01/02/2001,1\n03/02/2001,2\n');
    await writeFile(join(folder, 'tanks.csv'), 'siteId,tankId,Volume (L),Capacity (L)\nS001,T1,2500,2600\n');
    const { out } = await eavewell('columns', folder, '--accept');
    expect(out).toMatch(/Day or month first\? --set 'rain\/\*\.csv:date=date:dmy' or :mdy/);
    expect(out).toMatch(/Volume \(L\): perhaps nominal_L/);
    expect(out).toMatch(/Capacity \(L\): perhaps nominal_L/);
    expect(await saved(folder)).not.toHaveProperty(['tanks.csv']);
    expect(await saved(folder)).not.toHaveProperty(['rain/*.csv']);
    await eavewell('columns', folder, '--set', 'rain/*.csv:date=date:dmy');
    expect((await eavewell('check', folder)).out).toContain('rain/, 2 files  4 of 4 rows used');
  });
});
