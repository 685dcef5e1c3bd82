import { spoken } from '../language.ts';

const { kit: words } = spoken.commandLine;
const { numbers } = spoken;

/** So many of a part, in what it is counted in; null: not known. */
export function countSaid(count: number | null, countedIn: string, isAtLeast = false): string {
  if (count === null) return words.notKnown;
  const text = numbers.quantity(count, countedIn === 'piece' ? '' : countedIn);
  return isAtLeast ? words.atLeast(text) : text;
}
