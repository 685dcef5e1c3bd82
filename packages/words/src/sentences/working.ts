import { type WorkingCode, workingCodes } from '@eavewell/engine';
import { isMessage } from '../catalogues.ts';
import type { Language, WorkingWords } from '../language.ts';
import type { Speech } from '../problems.ts';

/** A name that stands for itself where the language has no word for it. */
const wordOr = ({ say }: Speech, key: string, otherwise: string): string => (isMessage(key) ? say(key) : otherwise);

/** The name of an input, as words. A name without an entry is spelt out: `runoffFraction` reads "runoff fraction". */
function input(w: Speech, name: string): string {
  const spelt = name
    .replace(/_(L|mm|m|m2|day|days)$/, '')
    .replaceAll('_', ' ')
    .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
    .toLowerCase();
  return wordOr(w, `working.input.${name}`, spelt);
}

/** Where a figure comes from, as words; docs/sources.json has the sources in full. */
function source(w: Speech, name: string): string {
  const [id = name, ...place] = name.split(', ');
  return [wordOr(w, `sources.${id}`, id), ...place].join(', ');
}

/** What is said of workings, in a language. */
export function workingIn(w: Speech): Pick<Language, 'working' | 'input' | 'source' | 'value'> {
  const { say } = w;
  const steps = workingCodes.map((code) => [
    code,
    { label: say(`working.${code}.label`), formula: say(`working.${code}.formula`) },
  ]);
  return {
    working: Object.fromEntries(steps) as Readonly<Record<WorkingCode, WorkingWords>>,
    input: (name) => input(w, name),
    source: (name) => source(w, name),
    value: (name) => {
      const key = `working.value.${name}`;
      return isMessage(key) ? say(key) : null;
    },
  };
}
