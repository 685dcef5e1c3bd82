import { execFile } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { demoProgramme } from '@eavewell/demo';
import { writeProgramme } from '@eavewell/formats';

/**
 * The packs of a large programme by the command that makes them, in its two threads: how long it takes by the clock, and the memory of the
 * process as it goes (Linux). By hand: `node bench/packs.mjs [sites]`, after `npm run build`.
 */
const count = Number(process.argv[2] ?? 1500);
if (!(Number.isInteger(count) && count > 0)) throw new Error('how many sites? a whole number above 0');
const watch_ms = 2000;
const command = new URL('../packages/cli/bin/eavewell.js', import.meta.url).pathname;

const folder = await mkdtemp(join(tmpdir(), 'eavewell-bench-'));
try {
  const programme = join(folder, 'programme');
  await writeProgramme(programme, demoProgramme({ sites: count, seed: 1, clean: true }));
  const out = join(folder, 'packs');
  const begun = performance.now();
  console.log(`${count} sites, load ${loadavg()[0].toFixed(1)}`);
  const running = promisify(execFile)(process.execPath, [command, 'pack', programme, '--out', out]);
  const seen = [];
  const timer = setInterval(async () => {
    const made = await readdir(out).then(
      (files) => files.length,
      () => 0,
    );
    const status = await readFile(`/proc/${running.child.pid}/status`, 'utf8').catch(() => '');
    const kB = Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0);
    if (kB > 0) seen.push({ made, memory_MiB: Math.round(kB / 1024) });
  }, watch_ms);
  const { stdout } = await running;
  clearInterval(timer);
  const seconds = (performance.now() - begun) / 1000;
  console.log(stdout.trim());
  console.log(`${seconds.toFixed(0)} s by the clock, ${((seconds * 1000) / count).toFixed(0)} ms a pack`);
  for (const quarter of [0.25, 0.5, 0.75, 1]) {
    const at = seen.filter(({ made }) => made > 0 && made <= quarter * count).at(-1);
    if (at !== undefined) console.log(`memory with ${at.made} made: ${at.memory_MiB} MiB`);
  }
} finally {
  await rm(folder, { recursive: true });
}
