import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDatabase } from '@eavewell/database';
import { seededDice } from '@eavewell/engine';
import { afterAll, expect, it } from 'vitest';
import { repository } from '../rules/repository.ts';

/** How often the writer is killed; `npm run soak` asks for more. */
const kills = process.env['EAVEWELL_SOAK'] === '1' ? 50 : 6;
const folder = mkdtempSync(join(tmpdir(), 'killed '));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the writer until it has answered so often, then kills it so many milliseconds later; gives the last number it answered for. */
function killed(answers: number, later_ms: number): Promise<number> {
  return new Promise((done, fail) => {
    const writer = spawn(process.execPath, [join(repository, 'checks/faults/writer.mjs'), folder], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let [text, trouble, begun] = ['', '', false];
    writer.stderr.on('data', (chunk) => {
      trouble += chunk;
    });
    writer.stdout.on('data', (chunk) => {
      text += chunk;
      if (begun || text.split('\n').length <= answers) return;
      begun = true;
      setTimeout(() => writer.kill('SIGKILL'), later_ms);
    });
    writer.on('close', (code) => {
      // What stands before the last line end was wholly said.
      const said = text.slice(0, text.lastIndexOf('\n')).split('\n').at(-1);
      if (code !== null) fail(new Error(`the writer ended by itself: ${trouble}`));
      else done(Number(said));
    });
  });
}

it(`keeps what was answered for when the program is killed ${kills} times in the middle of writing`, async () => {
  const below = seededDice(7).next;
  let last = 0;
  for (let kill = 0; kill < kills; kill++) {
    const answered = await killed(1 + below(20), below(20));
    expect(answered).toBeGreaterThan(last);
    const found = await openDatabase(folder);
    if (!found.ok) throw new Error(found.problems[0]!.code);
    const kept = await found.value.records('p');
    await found.value.close();
    if (!kept.ok) throw new Error(kept.problems[0]!.code);
    const numbers = kept.value.map(({ number }) => number);
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(numbers.length).toBeGreaterThanOrEqual(answered);
    // At most the one it was writing.
    expect(numbers.length).toBeLessThanOrEqual(answered + 1);
    for (const record of kept.value) expect(record.changes.length).toBe(1 + (record.number % 40));
    last = numbers.length;
  }
}, 600_000);
