import { execFileSync } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const repository = fileURLToPath(new URL('../../../', import.meta.url));
const command = join(repository, 'packages', 'cli', 'bin', 'eavewell.js');

/** What the built command prints; it ends with 1, as the demo has faults planted. */
function printed(args: readonly string[], cwd: string): string {
  const env = { ...process.env, LANG: 'C.UTF-8', NO_COLOR: '1' };
  try {
    return execFileSync(process.execPath, [command, ...args], { cwd, env, encoding: 'utf8' });
  } catch (error) {
    return (error as { stdout: string }).stdout;
  }
}

describe('the README', () => {
  it('shows what the program prints, line for line and in order, with cuts marked by …', async () => {
    const readme = await readFile(join(repository, 'README.md'), 'utf8');
    const block = /```text\n([\s\S]*?)\n```/.exec(readme)?.[1]?.split('\n') ?? [];
    expect(block.length).toBeGreaterThan(30);
    const room = await mkdtemp(join(tmpdir(), 'eavewell-readme-'));
    try {
      printed(['demo', 'demo-programme'], room);
      const lines = printed(['design', 'demo-programme'], room).split('\n');
      let at = -1;
      let cut = false;
      for (const line of block) {
        if (line.trim() === '…') {
          cut = true;
          continue;
        }
        if (cut && line === '') continue;
        const next = lines.indexOf(line, at + 1);
        expect(next, `"${line}" after line ${at} of the output`).toBeGreaterThan(at);
        if (!cut) expect(next).toBe(at + 1);
        cut = false;
        at = next;
      }
    } finally {
      await rm(room, { recursive: true });
    }
  });
});
