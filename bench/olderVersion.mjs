import { spawn } from 'node:child_process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { median } from './plainRun.mjs';

// node bench/olderVersion.mjs CHECKOUT [ROUNDS]: the whole chain of 1,500 sites in this version against a built checkout of another, in turn.
const sites = 1500;
const [other, rounds = '3'] = process.argv.slice(2);
if (other === undefined) throw new Error('Say which built checkout of another version to measure against.');
const here = fileURLToPath(new URL('..', import.meta.url));

// What each version makes of its own demo: its sites without faults, judged, with what would mend them.
const chain = (checkout) => `
  const door = (name) => import(new URL('packages/' + name + '/dist/index.js', ${JSON.stringify(pathToFileURL(`${checkout}/`).href)}).href);
  const { demoProgramme } = await import(new URL('demo/dist/index.js', ${JSON.stringify(pathToFileURL(`${checkout}/`).href)}).href);
  const { designSites, readyProgramme, remediesOf } = await door('engine');
  const { readProgramme, writeProgramme } = await door('formats');
  const { mkdtemp, rm } = await import('node:fs/promises');
  const folder = await mkdtemp('${process.env.TMPDIR ?? '/tmp'}/eavewell-bench-');
  await writeProgramme(folder, demoProgramme({ sites: ${sites}, seed: 1, clean: true }));
  const { facts } = await readProgramme(folder);
  await rm(folder, { recursive: true });
  const measured = (withRemedies) => {
    const before = process.cpuUsage();
    const ready = readyProgramme(facts);
    let [at, looked] = [0, 0];
    for (const design of designSites(facts.sites, ready)) {
      if (withRemedies && remediesOf(facts.sites[at], ready, design)) looked++;
      at++;
    }
    const { user, system } = process.cpuUsage(before);
    return { cpu_s: (user + system) / 1e6, judged: at, looked };
  };
  console.log(JSON.stringify([measured(false), measured(true)]));
`;

function run(checkout) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--input-type=module', '-e', chain(checkout)], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let text = '';
    child.stdout.on('data', (data) => {
      text += data;
    });
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve(JSON.parse(text)) : reject(new Error(`ended with ${code}`))));
  });
}

const ratios = [[], []];
for (let round = 0; round < Number(rounds); round++) {
  const [now, then] = [await run(here), await run(other)];
  for (const [i, what] of ['design', 'design with remedies'].entries()) {
    ratios[i].push(now[i].cpu_s / then[i].cpu_s);
    const told = ({ cpu_s, judged, looked }) => `${cpu_s.toFixed(1)} s CPU (${judged} sites, ${looked} with remedies)`;
    console.log(`${what}: this ${told(now[i])}, other ${told(then[i])}, ratio ${ratios[i].at(-1).toFixed(2)}`);
  }
}
console.log(`medians: design ${median(ratios[0]).toFixed(2)}, design with remedies ${median(ratios[1]).toFixed(2)}`);
