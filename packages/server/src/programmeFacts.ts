import type { ProgrammeListed } from '@eavewell/database';
import type { Designs } from './designs/designs.ts';
import type { Programmes } from './programmes.ts';
import { sitesAndPeople } from './readKept.ts';

/** What a list tells of a programme beside its name; null where it is not known. */
export interface ProgrammeFacts {
  readonly sites: number | null;
  readonly people: number | null;
  /** Sites whose people are not known. */
  readonly withoutPeople_count: number | null;
}

const unknown = { sites: null, people: null, withoutPeople_count: null };

/**
 * How many sites has a programme, and for how many people? As its kept design says, where that is of its present facts; else as its
 * rows say. One that is set aside is not opened for it.
 *
 * @param programmes - the programmes
 * @param designs - their designs
 * @param entry - which one
 * @returns sites [count], people [person] and sites without people [count]
 * @definition ours
 */
export async function programmeFacts(
  programmes: Programmes,
  designs: Designs,
  entry: ProgrammeListed,
): Promise<ProgrammeFacts> {
  const known = await designs.keptHead(entry);
  if (known) return { sites: known.sites, people: known.people, withoutPeople_count: known.sitesWithoutPeople };
  const open = await programmes.openOne(entry.programmeId);
  if (open === null && entry.isSetAside) return unknown;
  const found = await programmes.programme(entry.programmeId);
  return found.ok ? sitesAndPeople(found.value.facts) : unknown;
}
