import { access, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';

const eavewell = (...args: readonly string[]) => keptRun(args);
let room: string;
let folder: string;

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-packs-'));
  folder = join(room, 'islands');
  await writeProgramme(folder, demoProgramme({ sites: 2, clean: true }));
});
afterAll(() => rm(room, { recursive: true }));

describe('pack', () => {
  it('makes one PDF a site, each whole, and says how many pages they have', async () => {
    const out = join(room, 'all');
    const { code, out: said } = await eavewell('pack', folder, '--out', out);
    expect(code).toBe(0);
    expect(said).toMatch(/^2 packs in /);
    expect((await readdir(out)).sort()).toEqual(['S001.pdf', 'S002.pdf']);
    for (const file of await readdir(out)) {
      const bytes = await readFile(join(out, file));
      expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
      expect(bytes.subarray(-16).toString('latin1')).toContain('%%EOF');
    }
  });

  it('makes one site alone, in a language for paper that the terminal does not speak', async () => {
    const out = join(room, 'one');
    const { code, out: said } = await eavewell('--language', 'ar', 'pack', folder, '--site', 'S002', '--out', out);
    expect(code).toBe(0);
    expect(said).toMatch(/^1 pack in /);
    const bytes = await readFile(join(out, 'S002.pdf'), 'latin1');
    expect(bytes).toContain('/Lang (ar)');
  });

  it.each([
    ['en', '1 pack in ', 'en'],
    ['es', '1 paquete en ', 'es'],
    ['hi-IN', '1 pack in ', 'hi-IN'],
  ])('in %s, named as anywhere else', async (tag, begins, printed) => {
    const out = join(room, `in-${tag}`);
    const { code, out: said } = await eavewell('--language', tag, 'pack', folder, '--site', 'S002', '--out', out);
    expect(code).toBe(0);
    expect(said.startsWith(begins)).toBe(true);
    expect(await readFile(join(out, 'S002.pdf'), 'latin1')).toContain(`/Lang (${printed})`);
  });

  it('writes over no pack that is there unless it is told to', async () => {
    const out = join(room, 'written');
    await eavewell('pack', folder, '--site', 'S001', '--out', out);
    const path = join(out, 'S001.pdf');
    await writeFile(path, 'noted by hand');
    const refused = await eavewell('pack', folder, '--site', 'S001', '--out', out);
    expect(refused.code).toBe(2);
    expect(refused.err).toContain('--overwrite');
    expect(await readFile(path, 'utf8')).toBe('noted by hand');
    expect((await eavewell('pack', folder, '--site', 'S001', '--out', out, '--overwrite')).code).toBe(0);
    expect(await readFile(path, 'latin1')).toMatch(/^%PDF-/);
  });

  it.each([
    [['--site', 'S01'], 'S001'],
    [['--by', 'longbaot'], 'longboat'],
  ])('%j is answered with what is there, and nothing is made', async (args, near) => {
    const out = join(room, `none-${near}`);
    const { code, err } = await eavewell('pack', folder, '--out', out, ...args);
    expect(code).toBe(2);
    expect(err).toContain(near);
    await expect(access(out)).rejects.toThrow();
  });

  it('a language that neither pages nor paper have is named with those there are', async () => {
    const { code, err } = await eavewell('--language', 'xx', 'pack', folder, '--out', join(room, 'none'));
    expect(code).toBe(2);
    expect(err).toMatch(/ar \(.*hi \(/s);
  });
});
