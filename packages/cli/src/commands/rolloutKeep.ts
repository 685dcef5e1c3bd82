import { access, constants, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { isoDay, type PlanRows, type Problem, type ProgrammeFacts } from '@eavewell/engine';
import { filesOfPlans, isWorkbook, makeFolder, type PlanTables, replaceFiles, withPlan } from '@eavewell/formats';
import type { RolloutGiven } from '@eavewell/report';
import { idForm } from '@eavewell/tables';
import { WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import type { FolderFound, FromData } from './folderOrData.ts';

const { rollout: words } = spoken.commandLine;

/** Where in the folder of results the plan stands as tables of the programme. */
const keptFolder = 'kept';

export interface KeepOptions extends FromData {
  readonly keep?: string;
  readonly by?: string;
  readonly planId?: string;
  readonly inForce?: boolean;
  readonly out?: string;
}

/** How what is found is to be kept. */
export interface KeepAsked {
  /** What the plan is called; null: it is not to be kept in its programme. */
  readonly name: string | null;
  readonly by: string;
  /** Null: the first that is free. */
  readonly planId: string | null;
  readonly isInForce: boolean;
  readonly data: string | null;
  readonly programme: string | null;
  /** The instant the search began, ISO 8601: what changes after it is told as changed since. */
  readonly begunAt: string;
}

/** Longest name of a plan or a person, shorter than a record takes it [character]. Ours. */
const longestName = 200;

/** What is asked of keeping, where it makes sense. */
export async function keepAsked(options: KeepOptions, { path }: Pick<FolderFound, 'path'>): Promise<KeepAsked> {
  const { keep, by, planId, inForce, out, data, programme } = options;
  const name = keep?.trim() ?? null;
  if (name !== null && !isNamed(name)) throw new WrongUse(words.keep.nameless);
  if (name === null && out === undefined && (planId !== undefined || inForce)) throw new WrongUse(words.keep.nowhere);
  if (name !== null && data !== undefined && !isNamed(by)) throw new WrongUse(words.keep.nobody);
  if (planId !== undefined && !idForm.test(planId)) throw new WrongUse(words.keep.idForm(planId));
  if (name !== null && data === undefined && (await isWorkbook(path))) throw new WrongUse(words.keep.workbook);
  // Whoever may not write there is told before anything is searched; a folder that is not there is told by whoever reads it.
  if (name !== null && data === undefined)
    await access(path, constants.W_OK).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'ENOENT') throw error;
    });
  return {
    ...{ name, by: by?.trim() ?? '', planId: planId ?? null, isInForce: inForce === true },
    ...{ data: data ?? null, programme: programme ?? null, begunAt: new Date().toISOString() },
  };
}

const isNamed = (text = ''): boolean => text.trim() !== '' && text.length <= longestName;

/** An id that a plan has already is refused before anything is searched. */
export function refuseTaken({ planId }: KeepAsked, facts: ProgrammeFacts): void {
  if (planId !== null && facts.rollout.plans.some((plan) => plan.planId === planId))
    throw new WrongUse(words.keep.taken(planId, freeId(facts)));
}

function freeId({ rollout: { plans } }: ProgrammeFacts): string {
  const taken = new Set(plans.map(({ planId }) => planId));
  for (let number = 1; ; number++) if (!taken.has(`P${number}`)) return `P${number}`;
}

/** What was found, with the rows it is kept in. */
export interface FoundToKeep extends Pick<RolloutGiven, 'facts' | 'problem' | 'replanned'> {
  readonly rows: PlanRows;
}

const firstDayOf = ({ problem, replanned }: FoundToKeep) => isoDay(replanned?.facts.from ?? problem.firstDay);

/** The plan as rows of the tables it is kept in. */
function tablesOf(found: FoundToKeep, asked: KeepAsked, name: string): PlanTables {
  const planId = asked.planId ?? freeId(found.facts);
  const plan = { planId, name, from: firstDayOf(found), timedAt: asked.begunAt };
  const { planTrips, planStops } = found.rows;
  return {
    plans: [{ ...plan, ...(asked.isInForce ? { isInForce: 'yes' } : {}) }],
    planTrips: planTrips.map((cells) => ({ ...cells, planId })),
    planStops: planStops.map((cells) => ({ ...cells, planId })),
  };
}

/** Writes the tables of the plan beside those that are read; gives the folder they are in. Null: there is no trip to keep. */
export async function writePlanTables(
  out: string,
  found: FoundToKeep,
  asked: KeepAsked,
  name: string,
): Promise<string | null> {
  const folder = join(out, keptFolder);
  const files = filesOfPlans(tablesOf(found, asked, asked.name ?? name));
  const isEmpty = found.rows.planTrips.length === 0;
  // Those of an older plan must not stay.
  if (isEmpty) for (const file of files.keys()) await rm(join(folder, file), { force: true });
  if (isEmpty) return null;
  await makeFolder(folder);
  await replaceFiles(folder, files);
  return folder;
}

/** How keeping ended: what is said of it, or why it was not done. */
export type Kept = { readonly said: string } | { readonly problems: readonly Problem[] };

/** Keeps the plan in its programme: in the tables of its folder, or as a change of its data folder. */
export async function keepFound(
  found: FoundToKeep,
  asked: KeepAsked & { readonly name: string },
  { path, shown }: Pick<FolderFound, 'path' | 'shown'>,
): Promise<Kept> {
  const { name, by, planId, isInForce, data, programme: programmeId } = asked;
  if (found.rows.planTrips.length === 0) return { said: words.keep.nothing };
  if (data === null) {
    const plans = tablesOf(found, asked, name);
    const made = await withPlan(path, plans);
    if ('problem' in made) return { problems: [made.problem] };
    await replaceFiles(path, made.files);
    return { said: words.keep.kept(name, plans.plans[0]!['planId']!, shown) };
  }
  const { keepPlan } = await import('@eavewell/server');
  const kept = await keepPlan(data, {
    ...{ programmeId, planId, by, name, from: firstDayOf(found), isInForce },
    ...{ ...found.rows, timedAt: asked.begunAt },
  });
  return kept.ok ? { said: words.keep.kept(name, kept.value, shown) } : { problems: kept.problems };
}
