import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = keptRun;

let room: string;
let folder: string;
let sites: string;

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-positions-'));
  folder = join(room, 'tidy');
  expect((await eavewell(['demo', folder, '--clean', '--sites', '12'])).code).toBe(0);
  sites = await readFile(join(folder, 'sites.csv'), 'utf8');
});

afterAll(() => rm(room, { recursive: true, force: true }));

const forms = ['geojson', 'kml', 'kmz', 'gpx'] as const;
const named = (name: string) => join(room, name);
const put = (text: string) => writeFile(join(folder, 'sites.csv'), text);
const now = () => readFile(join(folder, 'sites.csv'), 'utf8');
/** The table of sites without a position in it. */
const bare = () => sites.replace(/,-[\d.]+,[\d.]+,/g, ',,,');

const wpt = (name: string, latitude: number, longitude: number) =>
  `<wpt lat="${latitude}" lon="${longitude}"><name>${name}</name></wpt>`;
const gpx = (inside: string) =>
  `<gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1">${inside}</gpx>`;

describe('map and positions', () => {
  it.each(forms)('carry the positions of all sites out and in again, byte for byte: .%s', async (form) => {
    await put(sites);
    const path = named(`all.${form}`);
    const written = await eavewell(['map', folder, '--out', path]);
    expect([written.code, written.err]).toEqual([0, '']);
    expect(written.out.replace(/\s+/g, ' ')).toContain(`15 points and 0 ways written: ${path}`);
    await put(bare());
    const tried = await eavewell(['positions', folder, path]);
    expect(tried.code).toBe(0);
    expect(tried.out).toContain('--accept sets 12 positions.');
    expect(tried.out).toContain('3 points are where the tables have them already.');
    expect(await now()).toBe(bare());
    const set = await eavewell(['positions', folder, path, '--accept']);
    expect(set.out.replace(/\s+/g, ' ')).toContain(`12 positions set: ${join(folder, 'sites.csv')}`);
    expect(await now()).toBe(sites);
    const again = await eavewell(['positions', folder, path, '--accept']);
    expect(again.out).toContain('There is nothing to set.');
  });
});

describe('positions', () => {
  const map = async (text: string) => {
    await writeFile(named('some.gpx'), text);
    return named('some.gpx');
  };
  const first = () => {
    const [siteId, name, latitude, longitude] = sites.split('\n')[1]!.split(',') as [string, string, string, string];
    return { siteId, name, latitude: Number(latitude), longitude: Number(longitude) };
  };

  it('says from where to where and how far, and never writes what is only likely or in doubt unasked', async () => {
    await put(sites);
    const { siteId, name, latitude, longitude } = first();
    const second = sites.split('\n')[2]!.split(',');
    const path = await map(
      gpx(
        wpt(siteId, latitude + 0.01, longitude) +
          wpt(`${second[1]!.slice(0, -1)}x`, -9, 83) +
          wpt('S003', 0, 0) +
          wpt('Nowhere', -9, 83),
      ),
    );
    const tried = await eavewell(['positions', folder, path, '--far', '200']);
    expect(tried.code).toBe(0);
    const row = tried.out.split('\n').find((line) => line.startsWith(`  ${siteId}`));
    expect(row).toContain(`${latitude.toFixed(5)} ${longitude.toFixed(5)}`);
    expect(row).toContain(`${(latitude + 0.01).toFixed(5)} ${longitude.toFixed(5)}`);
    expect(row).toMatch(/ 1\.11 km$/);
    expect(tried.out).toContain('In the map only: 1 point\n  Nowhere\n');
    expect(tried.out).toContain('--accept sets 1 position.');
    expect(tried.out).toContain('--accept-likely sets 1 likely one too.');
    expect(tried.out.replace(/\s+/g, ' ')).toContain('"S003" is at 0, 0, which devices write when they do not know.');
    expect(await now()).toBe(sites);
    await eavewell(['positions', folder, path, '--far', '200', '--accept']);
    const sure = sites.replace(`${name},${latitude},`, `${name},${Number((latitude + 0.01).toFixed(7))},`);
    expect(await now()).toBe(sure);
    await eavewell(['positions', folder, path, '--far', '200', '--accept-likely']);
    expect(await now()).toBe(sure.replace(`${second[1]},${second[2]},${second[3]},`, `${second[1]},-9,83,`));
    await put(sites);
    const near = await eavewell(['positions', folder, path]);
    expect(near.out.replace(/\s+/g, ' ')).toContain('is 107 km from where it stands in the table, more than 5 km.');
  });

  it('takes lines as ways only where that is asked for', async () => {
    await put(sites);
    const { siteId, latitude, longitude } = first();
    const track = `<trk><name>Path</name><type>foot</type><trkseg><trkpt lat="${latitude}" lon="${longitude}"/><trkpt lat="${latitude}" lon="${longitude + 1}"/></trkseg></trk>`;
    const path = await map(gpx(track));
    const tried = await eavewell(['positions', folder, path]);
    expect(tried.out).toContain('1 line in the map: --ways takes them as ways.');
    const shown = await eavewell(['positions', folder, path, '--ways']);
    expect(shown.out).toMatch(new RegExp(`Path +Path +${siteId} +- +foot +1\\d\\d km +new`));
    expect(shown.out).toContain('ask who knows the way');
    expect(await readdir(folder)).not.toContain('ways.csv');
    const kept = await eavewell(['positions', folder, path, '--ways', '--accept']);
    expect(kept.code).toBe(0);
    expect(await readFile(join(folder, 'ways.csv'), 'utf8')).toMatch(
      new RegExp(`^wayId,name,from,to,mode,length_km,.*\nPath,Path,${siteId},,foot,1\\d\\d\\.\\d+,+\n$`),
    );
    const checked = await eavewell(['check', folder]);
    expect(checked.out).toMatch(/ways\.csv +1 of 1 row used/);
    expect(checked.out).not.toMatch(/ways\.csv,|ways\.geojson/);
    const out = named('with-ways.kml');
    expect((await eavewell(['map', folder, '--out', out])).out).toContain('1 way written');
    await rm(join(folder, 'ways.csv'));
    await rm(join(folder, 'ways.geojson'));
  });

  it('prints within 80 columns, and ASCII alone where the terminal shows no more', async () => {
    await put(bare());
    const path = named('all.kml');
    for (const args of [
      ['positions', folder, path],
      ['positions', folder, path, '--ways', '--all'],
      ['positions', '--help'],
      ['map', '--help'],
    ]) {
      const { out } = await eavewell(args);
      for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
      expect(out).not.toMatch(/undefined|NaN|\[object|Infinity/);
      expect((await eavewell(args, { LANG: 'C' })).out).toMatch(/^[\n -~]*$/);
    }
    await put(sites);
  });

  it('ends with 1 where the map cannot be read, and with 2 where it is used wrongly', async () => {
    const broken = await eavewell(['positions', folder, await map('<gpx><wpt')]);
    expect([broken.code, broken.err]).toEqual([1, '']);
    expect(broken.out).toContain('The file ends in the middle');
    const absent = await eavewell(['positions', folder, named('none.gpx')]);
    expect(absent.code).toBe(1);
    expect(absent.out).toContain('There is no file');
    expect((await eavewell(['positions', named('nowhere'), named('all.gpx')])).code).toBe(2);
    for (const far of ['0', '-1', 'x', '', '20001'])
      expect((await eavewell(['positions', folder, named('all.gpx'), '--far', far])).code, far).toBe(2);
  });

  it('says where rows of the tables could not be read, so that their points seem to be of nobody', async () => {
    await put(sites.replace('S001,', 'S 001,'));
    const { code, out } = await eavewell(['positions', folder, named('all.gpx')]);
    expect(code).toBe(1);
    expect(out).toContain('sites.csv, row 2, siteId');
    expect(out).toContain('In the map only: 1 point');
    await put(sites);
  });

  it('ends with 1 and writes nothing where a table cannot be changed surely', async () => {
    const broken = bare().replace(',Lorv', ',"Lorv');
    expect(broken).not.toBe(bare());
    await put(broken);
    const { code, out } = await eavewell(['positions', folder, named('all.gpx'), '--accept']);
    expect(code).toBe(1);
    expect(out).toContain('could not be changed surely');
    expect(await now()).toBe(broken);
    await put(sites);
  });
});

describe('map', () => {
  it('needs a name that says the form, and replaces nothing unasked', async () => {
    expect((await eavewell(['map', folder])).code).toBe(2);
    expect((await eavewell(['map', folder, '--out', named('a.shp')])).err).toContain('.geojson, .kml, .kmz or .gpx');
    await writeFile(named('mine.kml'), 'mine');
    expect((await eavewell(['map', folder, '--out', named('mine.kml')])).code).toBe(2);
    expect(await readFile(named('mine.kml'), 'utf8')).toBe('mine');
    expect((await eavewell(['map', folder, '--out', named('mine.kml'), '--replace'])).code).toBe(0);
    const lines = await eavewell(['map', folder, '--out', join(folder, 'ways.geojson'), '--replace']);
    expect(lines.code).toBe(2);
    expect(lines.err).toContain('keeps the lines of ways');
  });

  it('names what is not on it, and writes no empty map', async () => {
    const two = sites.split('\n').map((row, i) => (i === 1 || i === 2 ? row.replace(/,-[\d.]+,[\d.]+,/, ',,,') : row));
    await put(two.join('\n'));
    const { code, out } = await eavewell(['map', folder, '--out', named('b.gpx')]);
    expect(code).toBe(0);
    expect(out).toContain('Not on it, without a position: 2 (S001, S002)');
    await put(sites);
    const empty = join(room, 'empty');
    await eavewell(['demo', empty, '--clean', '--sites', '1']);
    for (const name of ['sites.csv', 'gauges.csv']) {
      const text = await readFile(join(empty, name), 'utf8');
      await writeFile(join(empty, name), text.replace(/,-[\d.]+,[\d.]+,/g, ',,,'));
    }
    const none = await eavewell(['map', empty, '--out', named('none.kml')]);
    expect(none.code).toBe(1);
    expect(none.out).toContain('nothing to write');
    expect(await readdir(room)).not.toContain('none.kml');
  });
});
