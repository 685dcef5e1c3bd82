import type { Facts } from '@eavewell/records';
import type { OpenProgramme } from '../openProgramme.ts';
import { type PlanRowsSent, planTables } from './rolloutAt.ts';

const isOfPlans = (table: string): boolean => (planTables as readonly string[]).includes(table);

/** Rows of the tables of plans, to be sent. */
export function planRowsOf(facts: Facts): PlanRowsSent {
  const rows = (table: string) => [...facts.rowsAsEntered(table)];
  return { plans: rows('plans'), planTrips: rows('planTrips'), planStops: rows('planStops') };
}

/** How many records there are up to the last that changed something beside the plans [count]: what is made of the facts serves until there are more. */
export function factsVersion({ records }: Pick<OpenProgramme, 'records'>): number {
  return 1 + records.findLastIndex(({ changes }) => changes.some(({ table }) => !isOfPlans(table)));
}

/** Was anything of a plan changed by a record? */
export function touchesPlan(record: OpenProgramme['records'][number], planId: string): boolean {
  return record.changes.some(({ table, key }) => isOfPlans(table) && (key === planId || key.startsWith(`${planId}/`)));
}
