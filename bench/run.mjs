import { cpus, totalmem } from 'node:os';
import { programmeBench } from './programme.mjs';
import { rainBench } from './rain.mjs';
import { recordsBench } from './records.mjs';
import { serverBench } from './server.mjs';
import { storageBench } from './storage.mjs';
import { wearBench } from './wear.mjs';

const [cpu] = cpus();
console.log(
  `${new Date().toISOString().slice(0, 10)}, Node ${process.version}, ${cpus().length} cores of ${cpu.model}, ${(totalmem() / 2 ** 30).toFixed(0)} GiB`,
);
// Each is told as it is done: a long run that stops has told what it found.
for (const bench of [storageBench, programmeBench, rainBench, wearBench, recordsBench, serverBench])
  for (const line of await bench()) console.log(`- ${line}`);
