import {
  designSites,
  doubleMass,
  filledDryDays,
  type GaugeFacts,
  greatCircle_km,
  monthTotals,
  neighboursOf,
  type Problem,
  type ProgrammeFacts,
  type ReadyProgramme,
  rainRecord,
  readyProgramme,
  type SiteFacts,
  seriesOf,
} from '@eavewell/engine';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { gaugePage, type SiteOnGauge } from '../print/gaugePage.ts';
import { countProblems } from '../print/problemList.ts';
import { targetTexts } from '../print/programmeHead.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';
import { nearestIds } from './nearestIds.ts';
import { readFolder } from './readFolder.ts';

const { progress: progressWords, rain } = spoken.commandLine;

/** Says what one gauge measured, what is wrong in it, and what rests on it. */
export async function rainCommand(folder: string, gaugeId: string, context: Context): Promise<ExitCode> {
  const read = await readFolder(folder, context);
  const { facts } = read;
  const gauge = gaugeOf(facts, gaugeId);
  const ready = readyProgramme(facts, { gauges: new Set([gaugeId]) });
  const finding = ready.gauges.get(gaugeId)!;
  const record = rainRecord(gauge);
  const ofFiles = read.problems.filter((problem) => isOfGauge(problem, gauge));
  const problems = [...ofFiles, ...finding.problems, ...finding.stormTold.problems];
  const sites = sitesOn(facts, ready, gaugeId, context);
  const targets = targetTexts({ ...facts, sites: facts.sites.filter((site) => site.gaugeId === gaugeId) });
  context.progress.done();
  const sheet = new Sheet(context.look);
  const neighbours = neighboursOf(gauge, ready.records);
  const others = neighbours.map((one) => one.record.gaugeId);
  const own = record.ok ? record.value : null;
  const near = neighbours.map((one) => monthTotals(one.record));
  const mass = own && doubleMass(monthTotals(own), near);
  const shown = {
    gauge,
    finding,
    record: own,
    problems,
    sites,
    targets,
    mass,
    neighbours: others,
    settings: facts.settings,
  };
  gaugePage(sheet, { ...shown, withinReach_count: withinReach(facts, gauge) });
  await write(context.around.stdout, sheet.text());
  return countProblems(problems).blocker > 0 ? exitCodes.blocker : exitCodes.done;
}

function gaugeOf({ gauges }: ProgrammeFacts, gaugeId: string): GaugeFacts {
  const found = gauges.find((gauge) => gauge.gaugeId === gaugeId);
  if (found) return found;
  const ids = gauges.map((gauge) => gauge.gaugeId);
  throw new WrongUse(rain.unknownGauge(gaugeId, nearestIds(gaugeId, ids)));
}

/** How many sites without a gauge of their own have this one within reach. */
function withinReach({ sites, settings }: ProgrammeFacts, { latitude_deg, longitude_deg }: GaugeFacts): number {
  if (latitude_deg === null || longitude_deg === null) return 0;
  const there = { latitude_deg, longitude_deg };
  const isNear = ({ gaugeId, latitude_deg: lat, longitude_deg: lon }: SiteFacts) =>
    gaugeId === null &&
    lat !== null &&
    lon !== null &&
    greatCircle_km({ latitude_deg: lat, longitude_deg: lon }, there) <= settings.gaugeReach_km;
  return sites.filter(isNear).length;
}

function isOfGauge({ place }: Problem, { gaugeId, file }: GaugeFacts): boolean {
  // A sheet of a workbook may hold the rain of several gauges.
  return place.gaugeId === undefined ? place.file === file : place.gaugeId === gaugeId;
}

/** The sites that use the gauge, and how much of what they lack rests on filled days. */
function sitesOn(
  facts: ProgrammeFacts,
  ready: ReadyProgramme,
  gaugeId: string,
  { progress }: Context,
): readonly SiteOnGauge[] {
  const sites = facts.sites.filter((site) => site.gaugeId === gaugeId);
  const years = ready.gauges.get(gaugeId)?.rain?.years ?? [];
  const found: SiteOnGauge[] = [];
  for (const design of designSites(sites, ready)) {
    // Of the tank that is worst off, as everywhere where one figure stands for a site.
    const worst = design.storages[0]?.tankIds[0];
    const series = seriesOf(sites[found.length]!, ready).find(({ tankIds }) => tankIds[0] === worst);
    const dry = series ? filledDryDays(series, years) : { dryDays: 0, filledDryDays: 0 };
    found.push({ siteId: design.siteId, name: design.name, verdict: design.verdict, ...dry });
    progress.at(() => progressWords.judging(found.length, sites.length));
  }
  return found;
}
