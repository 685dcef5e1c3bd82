import { isMessage } from '../catalogues.ts';
import type { MessageKey, MessageValues } from '../messages/texts.ts';
import type { ProblemSentence, Told } from '../problems.ts';

/** One sentence for each of some codes. */
export type Sentences<Code extends string> = Readonly<Record<Code, (told: Told) => ProblemSentence>>;

/** A problem's sentence by its key in the catalogue: `what` is wrong, and what `todo`. */
export type SentenceKey =
  Extract<MessageKey, `problems.${string}.what`> extends `problems.${infer Key}.what` ? Key : never;

/** A part of a sentence, by its key in the catalogue. */
export type PartKey = Extract<MessageKey, `problems.part.${string}`> extends `problems.part.${infer Key}` ? Key : never;

/** A choice in a message: `{it, select, yes {…} other {…}}`. */
export const yes = (it: unknown): 'yes' | 'no' => (it ? 'yes' : 'no');

/** What is wrong and what to do, both filled with the same values. */
export function says(t: Told, key: SentenceKey, values: MessageValues = {}): ProblemSentence {
  return {
    what: t.say(`problems.${key}.what` as MessageKey, values),
    todo: t.say(`problems.${key}.todo` as MessageKey, values),
  };
}

/** The same, and "Did you mean …?" before the advice where there is a likely one. */
export function saysOrMeant(t: Told, key: SentenceKey, values: MessageValues = {}): ProblemSentence {
  const { what, todo } = says(t, key, values);
  return { what, todo: meant(t, todo) };
}

/** A part of a sentence. */
export const part = (t: Told, key: PartKey, values: MessageValues = {}): string =>
  t.say(`problems.part.${key}` as MessageKey, values);

/** A word for one of several kinds, such as the reason why a zip was not read; null for a kind that has none. */
export function wordFor(t: Told, kinds: string, kind: string, values: MessageValues = {}): string | null {
  const key = `problems.part.${kinds}.${kind}`;
  return isMessage(key) ? t.say(key, values) : null;
}

/** "Did you mean …?" where there is a likely one, else the other advice. */
export function meant(t: Told, otherwise: string): string {
  const likely = likelyOf(t);
  return likely === null ? otherwise : part(t, 'meant', { likely, otherwise });
}

/** What is likely meant; null where nothing is. */
export function likelyOf(t: Told): string | null {
  return t.has('likely') && t.text('likely') !== t.say('problems.part.empty') ? t.text('likely') : null;
}

/** A fact in quotes; "(empty)" and the like stand as they are. */
export function quoted(t: Told, name = 'value'): string {
  const value = t.text(name);
  return value.startsWith('(') ? value : `"${value}"`;
}

/** The word for a unit of a table; null where its column says it already, as a year does. */
const unitWord = (t: Pick<Told, 'say'>, name: string): string | null => {
  const key = `problems.part.unit.${name.replaceAll('/', '_per_').replaceAll(' ', '_')}`;
  return isMessage(key) ? t.say(key) : null;
};

/** " mm", as units stand behind figures; nothing where there is none to say. */
export function unitBehind(t: Pick<Told, 'say'>, name: string): string {
  const word = unitWord(t, name);
  return word === null ? '' : ` ${word}`;
}

/** " (mm)", as units stand behind what is asked for. */
export function unitAside(t: Pick<Told, 'say'>, name: string): string {
  const word = unitWord(t, name);
  return word === null ? '' : ` (${word})`;
}

/** The unit a problem names. */
const unitNamed = (t: Told): string => (t.has('unit') ? t.text('unit') : '');
export const unitIn = (t: Told): string => unitBehind(t, unitNamed(t));
export const unitAsked = (t: Told): string => unitAside(t, unitNamed(t));

/** The first of the named facts that is there, with its unit where it is a number. */
export function amount(t: Told, names: readonly string[], unit: string): string {
  const name = names.find((candidate) => t.has(candidate));
  if (name === undefined) return part(t, 'notSaid');
  const value = t.number(name);
  return value === null ? t.text(name) : t.numbers.quantity(value, unit);
}

/** What a row leaves unknown where it cannot be used: one station, by its word, or one of the other bearings of the tables. */
export function bearing(t: Told): { readonly bears: string; readonly station: string } {
  const bears = t.has('bears') ? t.text('bears') : 'site';
  const station = wordFor(t, 'beside', bears);
  return station === null ? { bears, station: '' } : { bears: 'station', station };
}
