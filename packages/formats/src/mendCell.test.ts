import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { mendCell } from './mendCell.ts';

it('writes one cell anew and leaves the rest letter for letter, or says why it cannot', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-mend-'));
  try {
    const text = '\uFEFFsiteId;name;people\r\nS001;"Upper; Tarn";many\r\nS002;Lower\r\n';
    const put = (content: string | Uint8Array) => writeFile(join(folder, 'sites.csv'), content);
    const stands = () => readFile(join(folder, 'sites.csv'), 'utf8');
    await put(text);
    const at = (row: number, column: string) => ({ file: 'sites.csv', row, column });
    expect(await mendCell(folder, at(2, 'people'), '85')).toBeNull();
    expect(await stands()).toBe(text.replace('many', '85'));
    expect(await mendCell(folder, at(3, 'people'), '=1')).toBeNull();
    expect(await stands()).toBe(text.replace('many', '85').replace('S002;Lower', "S002;Lower;'=1"));
    const before = await stands();
    for (const place of [at(1, 'people'), at(9, 'people'), at(2, 'roofId')])
      expect((await mendCell(folder, place, 'x'))?.code).toBe('positions.table_broken');
    expect((await mendCell(folder, { file: 'roofs.csv', row: 2, column: 'roofId' }, 'x'))?.code).toBe('file.missing');
    expect(await stands()).toBe(before);
    await put(new Uint8Array([0x73, 0xe9, 0x0a, 0x31]));
    expect((await mendCell(folder, at(2, 'people'), 'x'))?.code).toBe('positions.table_encoding');
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
