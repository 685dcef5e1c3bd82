// How much memory does a rain file take that is far too long? Makes one of so many MB in a temporary folder, reads the folder, and
// prints the time and the most memory the process held. node bench/longRain.mjs 200 [plain|odd]
import { createWriteStream } from 'node:fs';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { finished } from 'node:stream/promises';
import { isoDay, readIsoDay } from '@eavewell/engine';
import { readProgramme } from '@eavewell/formats';

const size_bytes = Number(process.argv[2] ?? 200) * 1e6;
/** `odd`: semicolons, decimal commas and quotes, so that every line goes the slow way. */
const isOdd = process.argv[3] === 'odd';
const first = readIsoDay('1901-01-01');
const days = 45_000;

/** The same numbers for the same seed: a linear congruential generator, good enough for filling a file. */
let state = 20261125;
function drawn() {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return state / 2 ** 32;
}

async function makeRain(path) {
  const stream = createWriteStream(path);
  stream.write(isOdd ? 'date;rain_mm\n' : 'date,rain_mm\n');
  let written_bytes = 13;
  for (let i = 0; written_bytes < size_bytes; ) {
    let text = '';
    for (const end = i + 10_000; i < end; i++) {
      const rain_mm = (Math.floor(drawn() * 400) / 10).toFixed(1);
      const day = isoDay(first + (i % days));
      text += isOdd ? `"${day}";${rain_mm.replace('.', ',')}\n` : `${day},${rain_mm}\n`;
    }
    written_bytes += text.length;
    if (!stream.write(text)) await new Promise((drained) => stream.once('drain', drained));
  }
  stream.end();
  await finished(stream);
  return written_bytes;
}

const folder = await mkdtemp(join(tmpdir(), 'eavewell-long-'));
try {
  await mkdir(join(folder, 'rain'));
  await writeFile(join(folder, 'gauges.csv'), 'gaugeId,name\nG1,East\n');
  const written_bytes = await makeRain(join(folder, 'rain', 'G1.csv'));
  let most_bytes = 0;
  const timer = setInterval(() => {
    most_bytes = Math.max(most_bytes, process.memoryUsage().rss);
  }, 20);
  const start = performance.now();
  const before = process.cpuUsage();
  const read = await readProgramme(folder);
  const seconds = (performance.now() - start) / 1000;
  const { user, system } = process.cpuUsage(before);
  clearInterval(timer);
  const { readings } = read.facts.gauges[0];
  const codes = read.problems.filter(({ place }) => place.gaugeId === 'G1').map(({ code }) => code);
  const text = [
    `${(written_bytes / 1e6).toFixed(0)} MB, ${isOdd ? 'odd' : 'plain'}`,
    `${seconds.toFixed(1)} s wall, ${((user + system) / 1e6).toFixed(1)} s CPU`,
    `most resident ${(most_bytes / 1e6).toFixed(0)} MB, of the process ${(process.resourceUsage().maxRSS / 1000).toFixed(0)} MB`,
    `${readings.length} readings kept`,
    codes.join(' '),
  ].join('; ');
  process.stdout.write(`${text}\n`);
} finally {
  await rm(folder, { recursive: true });
}
