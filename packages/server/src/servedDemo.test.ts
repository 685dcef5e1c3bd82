import { programmeOfRows, rowsOfProgramme } from '@eavewell/formats';
import { folderTableNames } from '@eavewell/tables';
import { expect, it } from 'vitest';
import { servedDemo } from './servedDemo.ts';

it('keeps every table of the demo in rows, so that a row that is added is written with them', () => {
  const rows = rowsOfProgramme(servedDemo());
  for (const name of folderTableNames) expect(rows.get('files')?.has(`${name}.csv`) ?? false, name).toBe(false);
  const added = { siteId: 'S001', tankId: 'new', tankVolume_L: '10000' };
  const tanks = new Map([...(rows.get('tanks') ?? []), ['S001/new', added]]);
  const written = programmeOfRows({ rowsAsEntered: (table) => (table === 'tanks' ? tanks : (rows.get(table) ?? [])) });
  expect(written.tables.tanks).toContainEqual(expect.objectContaining(added));
  expect((written.rawFiles ?? []).map(({ path }) => path)).not.toContain('tanks.csv');
});
