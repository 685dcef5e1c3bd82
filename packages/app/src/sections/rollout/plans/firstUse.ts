import type { TableName } from '../../../api/queries.ts';

/** What a rollout cannot be planned without, in the order in which it makes sense to say it. */
export const wantedFirst = [
  'places',
  'ways',
  'carriers',
  'crews',
  'crewCarriers',
] as const satisfies readonly TableName[];

export type WantedFirst = (typeof wantedFirst)[number];

/** One table that is needed before anything is planned. */
export interface FirstStep {
  readonly table: WantedFirst;
  readonly rows_count: number;
}

/**
 * What is there of what a plan needs?
 *
 * @param rows_count - rows of each table [count]
 * @returns every table with its rows, and whether all have some
 */
export function firstSteps(rows_count: Readonly<Record<WantedFirst, number>>): {
  readonly steps: readonly FirstStep[];
  readonly isReady: boolean;
} {
  const steps = wantedFirst.map((table) => ({ table, rows_count: rows_count[table] }));
  return { steps, isReady: steps.every((step) => step.rows_count > 0) };
}
