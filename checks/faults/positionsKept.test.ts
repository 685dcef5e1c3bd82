import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readPositions, replaceFiles, withPositions, withWays } from '@eavewell/formats';
import {
  type MapLine,
  type MapPoint,
  matchPositions,
  positionTargets,
  wayEnds,
  waysKnown,
  waysOfLines,
} from '@eavewell/tables';
import { describe, expect, it } from 'vitest';
import { type Files, good, inFolder, readFiles } from './folder.ts';

const at = (latitude_deg: number, longitude_deg: number) => ({ latitude_deg, longitude_deg });
const point = (number: number, name: string, position: MapPoint['position']): MapPoint => ({
  number,
  name,
  ids: [],
  kind: null,
  position,
});
const moved = [point(1, 'S001', at(-8.51234567, 125.25)), point(2, 'Ferry Stones', at(-8.76, 125.5))];

/** Sets the positions in a folder of these files; gives its tables as texts, and the code of the problem if there was one. */
async function kept(files: Files, points: readonly MapPoint[] = moved, names = ['sites.csv']) {
  return inFolder(files, async (folder) => {
    const read = await readPositions(folder);
    if ('problem' in read) throw new Error(read.problem.code);
    const { matches } = matchPositions(points, positionTargets(read.tables), 'a.gpx', { far_km: 100 });
    const made = await withPositions(folder, matches);
    if ('files' in made) await replaceFiles(folder, made.files);
    const texts = await Promise.all(names.map((name) => readFile(join(folder, name), 'latin1')));
    return {
      code: 'problem' in made ? made.problem.code : null,
      texts,
      files: 'files' in made ? [...made.files.keys()] : [],
    };
  });
}

const sites = good['sites.csv']!;
/** What must come of the good table: two cells of two rows. */
const expected = sites
  .replace('Upper Tarn,-8.5,125.25', 'Upper Tarn,-8.5123457,125.25')
  .replace('Ferry Stones,-8.75,125.5', 'Ferry Stones,-8.76,125.5');

describe('positions that are kept', () => {
  it('change two cells of their rows and no other byte', async () => {
    const { texts, code, files } = await kept(good);
    expect([code, files]).toEqual([null, ['sites.csv']]);
    expect(texts).toEqual([expected]);
  });

  it('leave columns nobody knows, odd quotes, empty lines, spaces and the last line as they are', async () => {
    const odd = (text: string) =>
      `\uFEFF${text
        .split('\n')
        .slice(0, -1)
        .map((row, i) => `${row},${i === 0 ? 'remark' : `"a ""b"", c"`}`)
        .join('\r\n\r\n')}`;
    const { texts } = await kept({ ...good, 'sites.csv': odd(sites) });
    expect(texts).toEqual([Buffer.from(odd(expected), 'utf8').toString('latin1')]);
  });

  it('are written with a decimal comma where the table has such', async () => {
    const comma = (text: string) => text.replaceAll(',', ';').replace(/(\d)\.(\d)/g, '$1,$2');
    const { texts } = await kept({ ...good, 'sites.csv': comma(sites) });
    const wanted = comma(sites)
      .replace('Upper Tarn;-8,5;125,25', 'Upper Tarn;-8,5123457;125,2500000')
      .replace('Ferry Stones;-8,75;125,5', 'Ferry Stones;-8,7600000;125,5000000');
    expect(texts).toEqual([wanted]);
  });

  it('come with their columns where the table has none', async () => {
    const without = (text: string) => text.replaceAll(/^((?:[^,\n]*,){2})[^,\n]*,[^,\n]*,/gm, '$1');
    const { texts } = await kept({ ...good, 'sites.csv': without(sites) });
    const [header, first, second, third] = without(sites).split('\n');
    expect(texts[0]!.split('\n')).toEqual([
      `${header},latitude_deg,longitude_deg`,
      `${first},-8.5123457,125.25`,
      `${second},,`,
      `${third},-8.76,125.5`,
      '',
    ]);
  });

  it('go into the tables of gauges and places as well', async () => {
    const places = 'placeId,name,latitude_deg\nstore-1,Store,\n';
    const points = [point(1, 'G-west', at(-8.71, 125.61)), point(2, 'Store', at(-8.4, 125.2))];
    const { texts, files } = await kept({ ...good, 'places.csv': places }, points, [
      'gauges.csv',
      'places.csv',
      'sites.csv',
    ]);
    expect(files).toEqual(['gauges.csv', 'places.csv']);
    expect(texts[0]).toBe(good['gauges.csv']!.replace('West Landing,-8.7,125.6', 'West Landing,-8.71,125.61'));
    expect(texts[1]).toBe('placeId,name,latitude_deg,longitude_deg\nstore-1,Store,-8.4,125.2\n');
    expect(texts[2]).toBe(sites);
  });
});

describe('nothing is written', () => {
  it('into a table that is not in UTF-8', async () => {
    const bytes = Uint8Array.from(sites.replace('Lower Tarn', 'Lower T\xe4rn'), (letter) => letter.charCodeAt(0));
    const { code, texts } = await kept({ ...good, 'sites.csv': bytes });
    expect(code).toBe('positions.table_encoding');
    expect(texts).toEqual([Buffer.from(bytes).toString('latin1')]);
  });

  it('into a table whose quotes do not close', async () => {
    const broken = sites.replace('Lower Tarn', '"Lower Tarn');
    const { code, texts } = await kept({ ...good, 'sites.csv': broken });
    expect(code).toBe('positions.table_broken');
    expect(texts).toEqual([broken]);
  });

  it('into any table where one of them cannot be changed', async () => {
    const broken = good['gauges.csv']!.replace('East Landing', '"East Landing');
    const points = [...moved, point(3, 'G-west', at(-8.71, 125.61))];
    const { code, texts } = await kept({ ...good, 'gauges.csv': broken }, points, ['sites.csv', 'gauges.csv']);
    expect(code).toBe('positions.table_broken');
    expect(texts).toEqual([sites, broken]);
  });
});

const track: MapLine = {
  number: 1,
  name: 'Tarn path, "upper"',
  ids: [],
  mode: 'foot',
  pieces: [[at(-8.5, 125.25), at(-8.52, 125.27), at(-8.55, 125.3)]],
};

async function keptWays(folder: string, lines: readonly MapLine[]) {
  const read = await readPositions(folder);
  if ('problem' in read) throw new Error(read.problem.code);
  const { ways } = waysOfLines(lines, waysKnown(read.tables), wayEnds(positionTargets(read.tables)), 'a.gpx', 1);
  const made = await withWays(folder, ways, read.tables);
  if ('problem' in made) return made.problem.code;
  await replaceFiles(folder, made.files);
  return null;
}

describe('ways that are kept', () => {
  it('are read again without a fault, and kept again change nothing', async () => {
    await inFolder(good, async (folder) => {
      expect(await keptWays(folder, [track])).toBeNull();
      const [table, lines] = await Promise.all(
        ['ways.csv', 'ways.geojson'].map((name) => readFile(join(folder, name), 'utf8')),
      );
      expect(table!.split('\n')).toEqual([
        'wayId,name,from,to,mode,length_km,there_h,back_h,limit_kg,limit_L,longest_m,porters,fuel_L_per_km,weatherArea,riverGaugeId',
        // 8.5 to 8.55 south and 125.25 to 125.3 east: 5.56 km north to south, 5.50 km west to east.
        expect.stringMatching(/^Tarn-path-upper,"Tarn path, ""upper""",S001,S002,foot,7\.8\d*,{9}$/),
        '',
      ]);
      const again = await readFiles({ ...good, 'ways.csv': table!, 'ways.geojson': lines! });
      expect(again.problems).toEqual([]);
      expect(await keptWays(folder, [track])).toBeNull();
      expect(await readFile(join(folder, 'ways.csv'), 'utf8')).toBe(table);
      expect(await readFile(join(folder, 'ways.geojson'), 'utf8')).toBe(lines);
    });
  });

  it('leave other ways, their lines and what nobody knows as they are', async () => {
    const own = 'wayId,name,remark,from,to\r\nW1,River,"a, b",S001,S003\r\nTarn-path-upper,,x,,\r\n';
    const other =
      '{"type":"Feature","id":"W1","properties":{"by":"Ona"},"geometry":{"type":"LineString","coordinates":[[125.25,-8.5],[125.5,-8.75]]}}';
    const files = {
      ...good,
      'ways.csv': own,
      'ways.geojson': `{"type":"FeatureCollection","name":"ours","features":[${other}]}`,
    };
    await inFolder(files, async (folder) => {
      const known = { ...track, name: null, ids: ['Tarn-path-upper'] };
      expect(await keptWays(folder, [known])).toBeNull();
      expect((await readFile(join(folder, 'ways.csv'), 'utf8')).split('\r\n')).toEqual([
        'wayId,name,remark,from,to,mode,length_km',
        'W1,River,"a, b",S001,S003,,',
        expect.stringMatching(/^Tarn-path-upper,,x,S001,S002,foot,7\.8\d*$/),
        '',
      ]);
      const lines = JSON.parse(await readFile(join(folder, 'ways.geojson'), 'utf8')) as {
        name: string;
        features: unknown[];
      };
      expect(lines.name).toBe('ours');
      expect(lines.features).toHaveLength(2);
      expect(lines.features[0]).toEqual(JSON.parse(other));
    });
  });

  it('are written so that no spreadsheet takes a name for a formula', async () => {
    const own = 'wayId,name,from,to,mode,length_km\nW1,River,S001,S003,river,50\n';
    for (const files of [good, { ...good, 'ways.csv': own }])
      await inFolder(files, async (folder) => {
        expect(await keptWays(folder, [{ ...track, name: '=1+1' }])).toBeNull();
        expect(await readFile(join(folder, 'ways.csv'), 'utf8')).toContain(",'=1+1,S001,S002,foot,");
        const again = await readPositions(folder);
        expect('tables' in again && again.tables.ways!.rows.at(-1)!.values.name).toBe('=1+1');
      });
  });

  it('are refused where the file of lines is broken, and nothing is written', async () => {
    await inFolder({ ...good, 'ways.geojson': '{"type":"Feat' }, async (folder) => {
      expect(await keptWays(folder, [track])).toBe('positions.table_broken');
      await expect(readFile(join(folder, 'ways.csv'))).rejects.toThrow(/ENOENT/);
    });
  });

  it('keep the old file where the disk refuses the new one', async () => {
    await inFolder({ ...good, 'ways.csv': 'wayId,name,from,to,mode,length_km\n' }, async (folder) => {
      const before = await readFile(join(folder, 'ways.csv'), 'utf8');
      // A folder stands where the unfinished file would: nobody may write there, whoever it is.
      await mkdir(join(folder, `ways.csv.${process.pid}.unfinished`));
      await expect(keptWays(folder, [track])).rejects.toThrow(/EISDIR/);
      expect(await readFile(join(folder, 'ways.csv'), 'utf8')).toBe(before);
    });
  });
});
