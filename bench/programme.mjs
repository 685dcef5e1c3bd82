import { spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { demoProgramme } from '@eavewell/demo';
import { designSites, readyProgramme, remediesOf, seriesOf } from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { leanDryDays, median, timed } from './plainRun.mjs';

const sites = 1500;
const rounds = 5;
const command = fileURLToPath(new URL('../packages/cli/bin/eavewell.js', import.meta.url));

/** A large programme: what the engine costs a site against one plain run, and what the whole command costs. */
export async function programmeBench() {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-bench-'));
  try {
    const programme = join(folder, 'programme');
    await writeProgramme(programme, demoProgramme({ sites, seed: 1, clean: true }));
    return [...(await engineRatio(programme)), ...(await remediesRatio(programme)), ...(await wholeCommand(programme))];
  } finally {
    await rm(folder, { recursive: true });
  }
}

async function engineRatio(folder) {
  const { facts } = await readProgramme(folder);
  const ratios = [];
  const perSite = [];
  for (let round = 0; round < rounds; round++) {
    const ready = readyProgramme(facts);
    const baseline = leanMedian(facts, ready);
    const before = process.cpuUsage();
    const fresh = readyProgramme(facts);
    let count = 0;
    for (const design of designSites(facts.sites, fresh)) if (design.storages.length > 0) count++;
    const used = process.cpuUsage(before);
    if (count !== sites) throw new Error(`${count} of ${sites} sites were judged`);
    const ms = (used.user + used.system) / 1000 / sites;
    perSite.push(ms);
    // The machine drifts: the baseline is taken before and after.
    ratios.push(ms / ((baseline + leanMedian(facts, ready)) / 2));
  }
  return [
    `design of ${sites} sites × 32 years: engine CPU is ${median(ratios).toFixed(1)} lean two-pass runs a site ` +
      `(${ratios.map((ratio) => ratio.toFixed(1)).join(', ')}); ${median(perSite).toFixed(2)} ms CPU a site`,
  ];
}

/** What the remedies of the sites that are short or tight add to the run without them, both from a fresh start, in turn. */
async function remediesRatio(folder) {
  const { facts } = await readProgramme(folder);
  const ratios = [];
  let mended = 0;
  for (let round = 0; round < rounds; round++) {
    const [without] = designed(facts, false);
    const [within, found] = designed(facts, true);
    ratios.push(within / without);
    mended = found;
  }
  return [
    `remedies of ${mended} sites of ${sites} × 32 years: engine CPU is ${median(ratios).toFixed(2)} × the run without ` +
      `(${ratios.map((ratio) => ratio.toFixed(2)).join(', ')})`,
  ];
}

/** CPU of judging every site [ms], with remedies or without, and how many sites had any looked for. */
function designed(facts, withRemedies) {
  const before = process.cpuUsage();
  const ready = readyProgramme(facts);
  let [at, looked] = [0, 0];
  for (const design of designSites(facts.sites, ready)) {
    if (withRemedies && remediesOf(facts.sites[at], ready, design)) looked++;
    at++;
  }
  const used = process.cpuUsage(before);
  if (withRemedies && looked === 0) throw new Error('no site was short or tight');
  return [(used.user + used.system) / 1000, looked];
}

/** Median of 200 lean two-pass runs, 200 sizes, on a real site's balance [ms]. */
function leanMedian(facts, ready) {
  const site = facts.sites[0];
  const [{ inflow_L }] = seriesOf(site, ready);
  const balance = {
    inflow_L,
    judged_L: new Float64Array(inflow_L.length).fill(site.people * 7.5),
    other_L: new Float64Array(inflow_L.length).fill(site.people * 5),
  };
  return median(Array.from({ length: 200 }, (_, i) => timed(() => leanDryDays(balance, 500 * (i + 1), 2))));
}

async function wholeCommand(folder) {
  const lines = [];
  for (const [name, args] of [
    ['design', []],
    ['design --json', ['--json']],
  ]) {
    const walls = [];
    let peak = 0;
    for (let round = 0; round < rounds; round++) {
      const run = await runMeasured(['design', folder, ...args]);
      walls.push(run.seconds);
      peak = Math.max(peak, run.peak_MiB);
    }
    lines.push(`eavewell ${name}, ${sites} sites: ${median(walls).toFixed(2)} s wall, peak ${peak.toFixed(0)} MiB`);
  }
  return lines;
}

function runMeasured(args) {
  const probe = new URL('./peakMemory.mjs', import.meta.url).href;
  const start = performance.now();
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', probe, command, ...args], {
      stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
    });
    let text = '';
    child.stdio[3].on('data', (data) => {
      text += data;
    });
    child.on('error', reject);
    child.on('close', (code) => {
      if (code !== 0) reject(new Error(`design ended with ${code}`));
      else resolve({ seconds: (performance.now() - start) / 1000, peak_MiB: Number(text) / 1024 });
    });
  });
}
