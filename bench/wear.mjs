import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { demoProgramme } from '@eavewell/demo';
import { readIsoDay, readyProgramme, seriesOf, unmeasuredUnit, wearOf } from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { leanDryDays, median, timed } from './plainRun.mjs';

const sites = 1500;
const rounds = 3;

/** When the cartridges of a large programme are due: 200 futures a site, against one plain run of the site's own record. */
export async function wearBench(count = sites) {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-bench-'));
  try {
    const programme = join(folder, 'programme');
    await writeProgramme(programme, demoProgramme({ sites: count, seed: 1, clean: true }));
    const { facts } = await readProgramme(programme);
    return [ratio(withUnits(facts), 0), ratio(withUnits(facts), 4)];
  } finally {
    await rm(folder, { recursive: true });
  }
}

const installedOn = readIsoDay('2027-03-01');
const figures = {
  ...unmeasuredUnit,
  ...{ ratedFlow_L_per_h: 900, ratedPressure_kPa: 60, lowestFlow_L_per_h: 300 },
  ...{ ratedLitres_L: 2_000_000, ratedTurbidity_NTU: 5, lifeLimit_years: 3, backwash_fraction: 0.03 },
};

/** The same programme with a unit at every site, and what its second sources and roofs bring known. */
function withUnits(facts) {
  const unit = { serial: 'U1', partId: null, figures, installedOn, removedOn: null };
  return {
    ...facts,
    settings: { ...facts.settings, roofTurbidity_NTU: 2, roofTurbidityHigh_NTU: 8, cartridgeFailures_per_year: 0.05 },
    sites: facts.sites.map((site) => ({
      ...site,
      secondSource: site.secondSource && { ...site.secondSource, turbidity_NTU: 20 },
      treatment: { units: [unit], cartridges: [], flowReadings: [], pressureTests: [] },
    })),
  };
}

/** Readings of a set, two months apart. */
function readings(count) {
  return Array.from({ length: count }, (_, i) => ({
    ...{ unitSerial: 'U1', readOn: installedOn + 60 * (i + 1), flow_L_per_h: 880 - 60 * i },
    ...{ pressure_kPa: 60, waterTemperature_C: 22, passed_L: null },
  }));
}

function ratio(facts, readingsCount) {
  const found = [];
  const perSite = [];
  const read = facts.sites.map((site) => ({
    ...site,
    treatment: { ...site.treatment, flowReadings: readings(readingsCount) },
  }));
  for (let round = 0; round < rounds; round++) {
    const ready = readyProgramme(facts, { today: readIsoDay('2028-01-01') });
    const lean = leanMedian(facts, ready);
    const before = process.cpuUsage();
    let dated = 0;
    for (const site of read) if (wearOf(site, ready).finding[0].endsOn !== null) dated++;
    const used = process.cpuUsage(before);
    if (dated === 0) throw new Error('no site has a date');
    const ms = (used.user + used.system) / 1000 / read.length;
    perSite.push(ms);
    found.push(ms / lean);
  }
  return (
    `when cartridges are due, 200 futures, ${readingsCount} readings, ${read.length} sites: a site costs ${median(found).toFixed(0)} lean two-pass runs ` +
    `(${found.map((one) => one.toFixed(0)).join(', ')}), ${median(perSite).toFixed(1)} ms of CPU here`
  );
}

/** One lean two-pass run over a site's own record [ms]: the median of 60 sizes. */
function leanMedian(facts, ready) {
  const site = facts.sites.find((one) => seriesOf(one, ready).length > 0);
  const [{ inflow_L }] = seriesOf(site, ready);
  const balance = {
    inflow_L,
    judged_L: new Float64Array(inflow_L.length).fill(site.people * 7.5),
    other_L: new Float64Array(inflow_L.length).fill(site.people * 5),
  };
  return median(Array.from({ length: 60 }, (_, i) => timed(() => leanDryDays(balance, 1500 * (i + 1), 2))));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  for (const line of await wearBench(Number(process.argv[2] ?? sites))) console.log(`- ${line}`);
