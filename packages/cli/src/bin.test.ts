import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

it('says what to type where the program is not built yet', () => {
  const room = mkdtempSync(join(tmpdir(), 'eavewell-bin-'));
  try {
    cpSync(fileURLToPath(new URL('../bin', import.meta.url)), join(room, 'bin'), { recursive: true });
    cpSync(fileURLToPath(new URL('../package.json', import.meta.url)), join(room, 'package.json'));
    const { status, stderr, stdout } = spawnSync(process.execPath, [join(room, 'bin', 'eavewell.js')], {
      encoding: 'utf8',
    });
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/npm start/);
  } finally {
    rmSync(room, { recursive: true, force: true });
  }
});
