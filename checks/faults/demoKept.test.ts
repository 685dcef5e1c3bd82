import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { readProgramme, tablesAsRead, writeProgramme } from '@eavewell/formats';
import { expect, it } from 'vitest';
import { inFolder, line, listed } from './folder.ts';

it('the demo with its planted faults, a column nobody knows and a row too long comes back as it stood', async () => {
  await inFolder({}, async (room) => {
    const [from, to] = [join(room, 'from'), join(room, 'to')];
    const { planted, ...programme } = demoProgramme({ sites: 60 });
    const sites = programme.tables.sites!.map((row, i) => ({ ...row, observer: `0${i}`, '=sum': i }));
    const rain = programme.rain.map(({ gaugeId, rows }, i) => {
      return { gaugeId, rows: i === 0 ? rows.map((row, j) => ({ ...row, extra: { sheet: `p${j}` } })) : rows };
    });
    await writeProgramme(from, { ...programme, tables: { ...programme.tables, sites }, rain });
    const first = await readProgramme(from);
    await writeProgramme(to, (await tablesAsRead(from)).programme);
    const second = await readProgramme(to);
    expect(planted.length).toBeGreaterThan(10);
    expect(first.problems.length).toBeGreaterThan(10);
    expect(second.facts).toEqual(first.facts);
    expect(second.problems.map(line)).toEqual(first.problems.map(line));
    expect(listed(second)).toEqual(listed(first));
    // Word for word, but for the numbers, which are written as numbers are.
    const head = (folder: string) => readFile(join(folder, 'sites.csv'), 'utf8').then((text) => text.split('\n')[0]);
    expect(await head(to)).toBe(await head(from));
    for (const file of ['presence.csv', 'secondSources.csv', 'ways.geojson'])
      expect(await readFile(join(to, file), 'utf8')).toBe(await readFile(join(from, file), 'utf8'));
    const rainText = (folder: string) => readFile(join(folder, 'rain', `${rain[0]!.gaugeId}.csv`), 'utf8');
    expect((await rainText(to)).split('\n')[0]).toBe('date,rain_mm,sheet');
    expect(await rainText(to)).toBe(await rainText(from));
  });
});
