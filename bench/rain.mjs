import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  designSites,
  madeRain,
  monthlyNormals,
  monthsFromRecord,
  rainOfSite,
  rainRecord,
  rainUnder,
  readyProgramme,
  seriesOf,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { leanDryDays, median, timed } from './plainRun.mjs';

const sites = 1500;
const years = 100;
const rounds = 5;

/** Made-up rain of 100 years, rain by distance and a scenario, each for a large programme and each against a baseline in the same run. */
export async function rainBench() {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-bench-'));
  try {
    const programme = join(folder, 'programme');
    await writeProgramme(programme, demoProgramme({ sites, seed: 1, clean: true }));
    const { facts } = await readProgramme(programme);
    return [makingRatio(facts), madeProgrammeRatio(facts), distanceRatio(facts), scenarioRatio(facts)];
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** One lean two-pass run over a site's own days [ms]: the median of 60 sizes. */
function leanMedian(site, ready) {
  const [{ inflow_L }] = seriesOf(site, ready);
  const balance = {
    inflow_L,
    judged_L: new Float64Array(inflow_L.length).fill(site.people * 7.5),
    other_L: new Float64Array(inflow_L.length).fill(site.people * 5),
  };
  return median(Array.from({ length: 60 }, (_, i) => timed(() => leanDryDays(balance, 1500 * (i + 1), 2))));
}

const listed = (values, digits = 2) =>
  `${median(values).toFixed(digits)} (${values.map((one) => one.toFixed(digits)).join(', ')})`;

/** What a day costs to make, beside a day of the lean run. */
function makingRatio(facts) {
  const months = monthsFromRecord(rainRecord(facts.gauges[0]).value);
  const made = madeFacts(facts);
  const ready = readyProgramme(made);
  const ratios = [];
  for (let round = 0; round < rounds; round++) {
    const lean = leanMedian(made.sites[0], ready);
    ratios.push(timed(() => madeRain(months, { name: `round ${round}`, seed: 1, firstYear: 1, years })) / lean);
  }
  return `making ${years} years of days of one gauge costs ${listed(ratios, 1)} lean two-pass runs over as many days`;
}

/** The same programme with normals in place of records: the months of each record; a gauge that has normals alone keeps them. */
function madeFacts(facts) {
  const monthsOf = (gauge) => {
    const record = rainRecord(gauge);
    return record.ok ? monthlyNormals(record.value) : null;
  };
  const normalsOf = (gauge) =>
    monthsOf(gauge)?.map(({ month, meanTotal_mm, meanWetDays }) => ({
      month,
      rain_mm: meanTotal_mm,
      wetDays: meanWetDays,
      source: null,
      yearFrom: null,
      yearTo: null,
    })) ?? gauge.normals;
  const gauges = facts.gauges.map((gauge) => ({ ...gauge, readings: [], normals: normalsOf(gauge) }));
  return { ...facts, gauges, settings: { ...facts.settings, madeYears: years } };
}

function cpu(work) {
  const before = process.cpuUsage();
  work();
  const used = process.cpuUsage(before);
  return (used.user + used.system) / 1000;
}

function judge(facts, ready) {
  let [judged, holding] = [0, 0];
  for (const design of designSites(facts.sites, ready)) {
    if (design.storage) judged++;
    if (design.verdict === 'holds') holding++;
  }
  if (judged !== facts.sites.length) throw new Error(`${judged} of ${facts.sites.length} sites were judged`);
  return holding;
}

function madeProgrammeRatio(facts) {
  const made = madeFacts(facts);
  const ratios = [];
  let peak = 0;
  for (let round = 0; round < rounds; round++) {
    const ready = readyProgramme(made);
    const lean = leanMedian(made.sites[0], ready);
    const ms = cpu(() => {
      if (judge(made, readyProgramme(made)) > 0) throw new Error('a site holds on made-up rain');
    });
    peak = Math.max(peak, process.memoryUsage().rss / 2 ** 20);
    ratios.push(ms / sites / ((lean + leanMedian(made.sites[0], ready)) / 2));
  }
  return (
    `design of ${sites} sites × ${years} made-up years: engine CPU is ${listed(ratios, 1)} lean two-pass runs a site over as many days; ` +
    `resident ${peak.toFixed(0)} MiB at most`
  );
}

/** Sites without a gauge of their own beside the same sites with one. */
function distanceRatio(facts) {
  const settings = { ...facts.settings, gaugeReach_km: 500 };
  const unnamed = { ...facts, settings, sites: facts.sites.map((site) => ({ ...site, gaugeId: null })) };
  const ratios = [];
  for (let round = 0; round < rounds; round++) {
    const given = cpu(() => judge(facts, readyProgramme(facts)));
    const blended = cpu(() => judge(unnamed, readyProgramme(unnamed)));
    ratios.push(blended / given);
  }
  const ready = readyProgramme(unnamed);
  globalThis.gc?.();
  const before = process.memoryUsage().rss;
  for (const site of unnamed.sites) if (!rainOfSite(site, ready)?.rain) throw new Error('no rain');
  const grown = (process.memoryUsage().rss - before) / 2 ** 20;
  return `${sites} sites without a gauge of their own, three gauges within reach: engine CPU is ${listed(ratios)} × the run with gauges given; memory grew by ${grown.toFixed(0)} MiB over all of them`;
}

function scenarioRatio(facts) {
  const asked = { wetDays_fraction: 0.9, wetDayRain_fraction: 0.95, lastYears: null };
  const ratios = [];
  for (let round = 0; round < rounds; round++) {
    const alone = cpu(() => judge(facts, readyProgramme(facts)));
    const both = cpu(() => {
      const ready = readyProgramme(facts);
      judge(facts, ready);
      judge(facts, rainUnder(ready, asked));
    });
    ratios.push(both / alone);
  }
  return `a scenario for ${sites} sites × 32 years beside the present verdicts: engine CPU is ${listed(ratios)} × the run without (2 is a second run and no more)`;
}
