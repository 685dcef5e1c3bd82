import { randomBytes } from 'node:crypto';
import {
  dayOnClock,
  designSites,
  type ReadyProgramme,
  readyProgramme,
  remediesOf,
  remediesTogether,
  type SiteFacts,
  type SmallestRemedy,
  setDatesAt,
  wearOf,
} from '@eavewell/engine';
import { type ProgrammeRead, programmeOfRows, readProgramme, writeProgramme } from '@eavewell/formats';
import { foldRecords, recordName } from '@eavewell/records';
import {
  type FaultAt,
  faultFinder,
  faultNamer,
  gaugeReport,
  peopleOf,
  problemReport,
  programmeRemediesReport,
  siteCup,
  siteReport,
  siteSaid,
  siteShort,
  siteYears,
} from '@eavewell/report';
import { designSchemaVersion } from '@eavewell/tables';
import { english } from '@eavewell/words';
import type { JobAround } from '@eavewell/work';
import { type KeptAt, recordsOf } from '../recordsOf.ts';
import { type DesignRest, DesignWriter, type SiteTold } from './designFiles.ts';
import { clearShared, keepShared, siteText } from './keptFacts.ts';
import { siteHasher } from './siteHash.ts';

/** What a design is asked of. */
export interface DesignAsked extends KeptAt {
  /** A folder that is not there yet, to write the tables into; who asks takes it away. */
  readonly folder: string;
  /** Where designs of the programme are kept. */
  readonly kept: string;
  readonly build: string;
  readonly programVersion: string;
}

/** How many sites a design had, and how many of them were carried over. */
export interface DesignDone {
  readonly sites: number;
  readonly carried: number;
}

/** How often what is judged is told, and how often it is kept [ms]. Ours. */
const [told_ms, saved_ms] = [250, 5000] as const;

/** Gives every site its verdict: what the command `design` reports. A site whose facts are as they were is not judged again. */
export async function designTask(asked: DesignAsked, around: JobAround): Promise<DesignDone> {
  const found = await recordsOf(asked);
  if (!found.ok) throw new Error(found.problems.map(({ code }) => code).join(', '));
  const records = found.value;
  const facts = foldRecords(records);
  await writeProgramme(asked.folder, programmeOfRows(facts));
  const read = await readProgramme(asked.folder);
  const writer = await DesignWriter.open(asked.kept, asked.build);
  try {
    const { rest, carried } = await judge(read, writer, asked, around);
    const last = records.at(-1);
    const siteIds = read.facts.sites.map(({ siteId }) => siteId);
    if (!around.stopped()) {
      const lastRecord = last === undefined ? null : recordName(last);
      const stamp = randomBytes(6).toString('hex');
      const shared = await keepShared(asked.kept, stamp, read.facts);
      await writer.finish({ version: asked.version, lastRecord, stamp, rest }, siteIds);
      await clearShared(asked.kept, shared);
    }
    return { sites: siteIds.length, carried };
  } finally {
    await writer.close();
  }
}

/** Judges one site, and keeps what it comes to. */
type JudgeOne = (site: SiteFacts, hash: string) => Promise<void>;

function judging(writer: DesignWriter, ready: ReadyProgramme, faultAt: FaultAt): JudgeOne {
  const named = faultNamer(faultAt, english);
  return async (site, hash) => {
    const { siteId } = site;
    const [found] = designSites([site], ready);
    const design = named(found!);
    const remedies = remediesOf(site, ready, design);
    const short = siteShort(site, design, remedies, english, ready.settings);
    const said = siteSaid(found!, remedies, faultAt);
    const { people } = design;
    const smallest = remedies && {
      ...{ siteId, people, smallest: remedies.remedies[0] ?? null, notMended: remedies.notMended },
    };
    const wear = wearOf(site, ready, found);
    const report = JSON.stringify(siteReport(design, remedies, english, wear));
    await writer.add(siteId, report, siteText(site, faultAt), {
      ...{ hash, short, said, smallest, sets: setDatesAt(site, ready, { design: found!, wear }) },
      years: siteYears(found!),
      cup: siteCup(found!, wear.finding, ready.today ?? null),
    });
  };
}

async function judge(read: ProgrammeRead, writer: DesignWriter, asked: DesignAsked, around: JobAround) {
  const { facts } = read;
  const ready = readyProgramme(facts, { today: dayOnClock(new Date()) });
  const faultAt = faultFinder(read.problems);
  const judgeOne = judging(writer, ready, faultAt);
  const hashOf = siteHasher(facts, ready, faultAt);
  const smallest: SmallestRemedy[] = [];
  let fresh: SiteTold[] = [];
  let [carried, done, told, saved] = [0, 0, performance.now(), performance.now()];
  for (const site of facts.sites) {
    const hash = hashOf(site);
    if (writer.judged.get(site.siteId)?.hash === hash) carried++;
    else await judgeOne(site, hash);
    const judged = writer.judged.get(site.siteId)!;
    if (judged.smallest) smallest.push(judged.smallest);
    fresh.push({ short: judged.short, said: judged.said, years: judged.years, cup: judged.cup });
    done++;
    if (performance.now() - told > told_ms || done === facts.sites.length) {
      around.report(done / facts.sites.length, fresh);
      [fresh, told] = [[], performance.now()];
      // Where jobs share a thread, others get their turn.
      await new Promise(setImmediate);
      if (around.stopped()) break;
    }
    if (performance.now() - saved > saved_ms) {
      await writer.save();
      saved = performance.now();
    }
  }
  return { rest: restOf(read, ready, smallest, asked.programVersion), carried };
}

function restOf(
  { facts, problems, notUsed }: ProgrammeRead,
  ready: ReadyProgramme,
  smallest: readonly SmallestRemedy[],
  eavewell: string,
): DesignRest {
  const { people, unknown } = peopleOf(facts);
  return {
    eavewell,
    schema: designSchemaVersion,
    programme: { name: facts.settings.programme, sites: facts.sites.length, people, sitesWithoutPeople: unknown },
    settings: { ...facts.settings },
    gauges: [...ready.gauges.values()].map((gauge) => gaugeReport(gauge, english)),
    remedies: programmeRemediesReport(remediesTogether(smallest), ready.market.day),
    problems: problems.map((problem) => problemReport(problem, english)),
    notUsed: notUsed.map((one) => ({ ...one, column: one.column ?? null, cells: [...one.cells] })),
  };
}
