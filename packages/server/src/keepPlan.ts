import type { Checked, Problem } from '@eavewell/engine';
import { type Facts, type RowChange, recordProblem } from '@eavewell/records';
import { folderTables } from '@eavewell/tables';
import { computerClock } from './openProgramme.ts';
import { Programmes } from './programmes.ts';
import { changesToKeep, freePlanId, type PlanToKeep } from './rollouts/planKept.ts';

/** A plan that was found beside the program that serves a data folder. */
export interface PlanFound extends Omit<PlanToKeep, 'planId' | 'head'> {
  /** The programme; null: the only one that is not set aside. */
  readonly programmeId: string | null;
  /** Null: the first that is free. */
  readonly planId: string | null;
  readonly by: string;
  readonly name: string;
  readonly from: string;
  readonly isInForce: boolean;
}

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/**
 * Keeps a plan in a programme of a data folder, as one change that can be undone.
 *
 * @param dataFolder - the data folder [text]
 * @param found - the plan, and who keeps it
 * @returns the id it has
 * @problem database.in_use - another program has the data folder open; and the other codes of Programmes.open
 * @problem database.programme_unknown - there is no such programme
 * @problem change.row_there - there is a plan of that id
 * @problem change.plan_outlived - sites or crews it names are not there any more
 * @law nothing is written unless all of it is
 * @definition ours: docs/decisions/0409-the-command-keeps-its-plan.md
 */
export async function keepPlan(dataFolder: string, found: PlanFound): Promise<Checked<string>> {
  const opened = await Programmes.open(dataFolder, computerClock);
  if (!opened.ok) return opened;
  const programmes = opened.value;
  try {
    const listed = (await programmes.list()).filter(({ isSetAside }) => !isSetAside);
    const only = listed.length === 1 ? listed[0]!.programmeId : '';
    const programme = await programmes.programme(found.programmeId ?? only);
    if (!programme.ok) return programme;
    let planId = '';
    const origin = { by: found.by, source: { kind: 'form', name: null } } as const;
    const made = await programme.value.changeBy(origin, (facts) => {
      planId = found.planId ?? freePlanId(facts);
      return changesOf(facts, found, planId);
    });
    return made.ok ? { ...made, value: planId } : made;
  } finally {
    await programmes.close();
  }
}

function changesOf(facts: Facts, found: PlanFound, planId: string): Checked<readonly RowChange[]> {
  const { name, from, isInForce } = found;
  if (facts.row('plans', planId) !== null) return refused(recordProblem('change.row_there', {}, { value: planId }));
  const gone = goneFrom(facts, found);
  if (gone.length > 0)
    return refused(recordProblem('change.plan_outlived', {}, { value: gone.join(', '), count: gone.length }));
  const head = { name, from, ...(isInForce ? { isInForce: 'yes' as const } : {}) };
  const value = [...(isInForce ? inForceNoMore(facts) : []), ...changesToKeep(facts, { ...found, planId, head })];
  return { ok: true, value, problems: [] };
}

/** Ids of sites and crews a plan names that are not there. */
function goneFrom(facts: Facts, { planTrips, planStops }: PlanFound): readonly string[] {
  const of = (table: 'sites' | 'crews', column: string, rows: PlanFound['planStops']) => {
    // A table that is kept letter for letter has no rows to look in.
    if (facts.row('files', folderTables[table].file) !== null) return [];
    const there = new Set([...facts.rows(table)].map(([, cells]) => cells[column]));
    return rows.map((cells) => cells[column]!).filter((id) => !there.has(id));
  };
  return [...new Set([...of('crews', 'crewId', planTrips), ...of('sites', 'siteId', planStops)])];
}

/** One plan is followed and no other. */
function inForceNoMore(facts: Facts): readonly RowChange[] {
  return [...facts.rows('plans')].flatMap(([key, { isInForce }]): readonly RowChange[] =>
    isInForce === 'yes'
      ? [{ kind: 'edited', table: 'plans', key, before: { isInForce }, after: { isInForce: 'no' } }]
      : [],
  );
}
