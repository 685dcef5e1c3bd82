import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';
import { numbers } from './numbers.ts';

/** One sentence for each of some codes. */
export type Sentences<Code extends string> = Readonly<Record<Code, (told: Told) => ProblemSentence>>;

/** The text with a large first letter. */
export const capital = (text: string) => text.slice(0, 1).toUpperCase() + text.slice(1);

export const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

/** The first of the named facts that is there, with its unit where it is a number; else the other words. */
export function amount(t: Told, names: readonly string[], unit: string, otherwise: string): string {
  const name = names.find((candidate) => t.has(candidate));
  if (name === undefined) return otherwise;
  const value = t.number(name);
  return value === null ? t.text(name) : numbers.quantity(value, unit);
}
