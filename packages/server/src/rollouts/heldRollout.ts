import { rm } from 'node:fs/promises';
import {
  type AreaWeather,
  areasWeather,
  type ProgrammeFacts,
  type ReadyKit,
  type ReadyRollout,
  type RolloutSite,
  readyKit,
  readyProgramme,
  readyRollout,
  rolloutSites,
  type Verdict,
} from '@eavewell/engine';
import { programmeOfRows, readProgramme, writeProgramme } from '@eavewell/formats';
import { foldRecords } from '@eavewell/records';
import type { JobAround } from '@eavewell/work';
import { readList } from '../designs/designFiles.ts';
import { type KeptAt, recordsOf } from '../recordsOf.ts';

/** The state of a programme that a rollout is asked of. */
export interface RolloutAt extends KeptAt {
  /** Names all of it: the programme, the version, the day, the program. */
  readonly stamp: string;
  /** A folder that is not there yet, to write the tables into. */
  readonly passing: string;
  /** Where its design is kept, and by which program. */
  readonly designs: string;
  readonly build: string;
  /** The day it is asked on [day]. */
  readonly today: number;
}

/** A rollout that is held, with all that is told of it. */
export interface HeldRollout {
  readonly at: RolloutAt;
  readonly facts: ProgrammeFacts;
  readonly sites: readonly RolloutSite[];
  readonly kit: ReadyKit;
  readonly ready: ReadyRollout;
  readonly weather: readonly AreaWeather[];
}

/** What of the making is judging, the rest is legs: common shares, ours. */
const judging_fraction = 0.6;

/** Reads the facts of a state and makes its rollout ready. */
export async function makeRollout(at: RolloutAt, around: JobAround): Promise<HeldRollout> {
  const facts = await factsOf(at);
  const verdicts = await verdictsOf(at);
  const programme = readyProgramme(facts, { today: at.today });
  const kit = readyKit(facts, at.today);
  const sites: RolloutSite[] = [];
  for (const site of rolloutSites(facts.sites, programme, kit, verdicts)) {
    sites.push(site);
    around.report((judging_fraction * sites.length) / facts.sites.length);
  }
  const ready = readyRollout(facts, sites, { today: at.today });
  around.report(1);
  return { at, facts, sites, kit, ready, weather: areasWeather(ready, facts.sites, programme) };
}

async function factsOf(at: RolloutAt): Promise<ProgrammeFacts> {
  const found = await recordsOf(at);
  if (!found.ok) throw new Error(found.problems.map(({ code }) => code).join(', '));
  try {
    await writeProgramme(at.passing, programmeOfRows(foldRecords(found.value)));
    return (await readProgramme(at.passing)).facts;
  } finally {
    await rm(at.passing, { recursive: true, force: true });
  }
}

/** Verdicts of the design of these facts, where it is kept. */
async function verdictsOf({ designs, build, version }: RolloutAt): Promise<ReadonlyMap<string, Verdict>> {
  const list = await readList(designs, build);
  if (list === null || list.version !== version) return new Map();
  return new Map(list.sites.map(({ short }) => [short.siteId, short.verdict]));
}
