import { mkdtemp, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeFolder } from './makeFolder.ts';

let room: string;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-folder-'));
});
afterAll(() => rm(room, { recursive: true }));

describe('makeFolder', () => {
  it('makes a folder with all above it, and is content where it stands', async () => {
    const path = join(room, 'a', 'b', 'c');
    await makeFolder(path);
    await makeFolder(path);
    expect((await stat(path)).isDirectory()).toBe(true);
  });

  it('rejects where a file stands in the way', async () => {
    await writeFile(join(room, 'file'), '');
    await expect(makeFolder(join(room, 'file'))).rejects.toThrow('EEXIST');
    await expect(makeFolder(join(room, 'file', 'b'))).rejects.toThrow('ENOTDIR');
  });

  it.runIf(process.platform === 'linux')('rejects, and ends, where no folder can be made', async () => {
    await expect(makeFolder('/proc/eavewell/b')).rejects.toThrow('ENOENT');
  });
});
