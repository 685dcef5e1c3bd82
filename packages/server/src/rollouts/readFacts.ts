import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import type { PlanFacts, Problem, ProgrammeFacts } from '@eavewell/engine';
import { programmeOfRows, readProgramme, readWayLines, writeProgramme } from '@eavewell/formats';
import { foldRecords } from '@eavewell/records';
import { isOfPlans, isOfRollout } from '@eavewell/report';
import { recordsOf } from '../recordsOf.ts';
import type { PlanRowsSent, RolloutAt } from './rolloutAt.ts';
import { withRowNames } from './rowNames.ts';

/** Longitude and latitude of the points of a way [deg]. */
export type WayLinesRead = ReadonlyMap<string, readonly (readonly number[])[]>;

/** The facts of a programme, with what of its tables the rollout cannot use. */
export interface FactsRead {
  readonly facts: ProgrammeFacts;
  readonly problems: readonly Problem[];
  readonly linesOf: WayLinesRead;
}

/** Reads the facts of a state from its records. */
export async function readFacts(at: RolloutAt): Promise<FactsRead> {
  const found = await recordsOf(at);
  if (!found.ok) throw new Error(found.problems.map(({ code }) => code).join(', '));
  const folder = newFolder(at);
  const rows = foldRecords(found.value);
  await writeProgramme(folder, programmeOfRows(rows));
  const { facts, problems } = await readProgramme(folder);
  const { lines } = await readWayLines(folder);
  const rowsOf = (table: string) => [...rows.rowsAsEntered(table)].map(([, cells]) => cells);
  return { facts, problems: withRowNames(problems.filter(isOfRollout), rowsOf), linesOf: linesById(lines) };
}

/** Lines by the way they are of. Across the 180° meridian longitudes go on, so that a line is drawn in one piece. */
function linesById(lines: Awaited<ReturnType<typeof readWayLines>>['lines']): WayLinesRead {
  return new Map(
    (lines ?? []).flatMap(({ ids, pieces }) => {
      let before_deg: number | null = null;
      const points = pieces.flat().map(({ latitude_deg, longitude_deg }) => {
        const turns = before_deg === null ? 0 : Math.round((before_deg - longitude_deg) / 360);
        before_deg = longitude_deg + 360 * turns;
        return [before_deg, latitude_deg];
      });
      return ids[0] === undefined ? [] : [[ids[0], points] as const];
    }),
  );
}

/** Kept plans, with what of their rows cannot be used. */
export interface PlansRead {
  readonly plans: readonly PlanFacts[];
  readonly problems: readonly Problem[];
}

/** Reads plans from their rows, beside facts that are known: only the ids that they name are written with them. */
export async function readPlans(at: RolloutAt, { sites, rollout }: ProgrammeFacts): Promise<PlansRead> {
  const sent = JSON.parse(at.planRows) as PlanRowsSent;
  const rows: Readonly<Record<string, readonly (readonly [string, Readonly<Record<string, string>>])[]>> = {
    ...sent,
    sites: sites.map(({ siteId, name }) => [siteId, { siteId, name }]),
    crews: rollout.crews.map(({ crewId, name, base }) => [crewId, { crewId, name, base }]),
  };
  const folder = newFolder(at);
  await writeProgramme(folder, programmeOfRows({ rowsAsEntered: (table) => rows[table] ?? [] }));
  const { facts, problems } = await readProgramme(folder);
  const rowsOf = (table: string) => (rows[table] ?? []).map(([, cells]) => cells);
  return { plans: facts.rollout.plans, problems: withRowNames(problems.filter(isOfPlans), rowsOf) };
}

const newFolder = ({ passing }: RolloutAt) => join(passing, randomBytes(4).toString('hex'));
