import { countedPeople, type ProgrammeFacts } from '@eavewell/engine';

/** The people of a programme: those known, and of how many sites they are not. */
export function peopleOf(facts: ProgrammeFacts): { readonly people: number; readonly unknown: number } {
  let people = 0;
  let unknown = 0;
  for (const site of facts.sites) {
    const counted = countedPeople(site, facts.settings);
    if (counted === null) unknown++;
    else people += counted;
  }
  return { people, unknown };
}
