import { readIsoDay } from '@eavewell/engine';
import type { Facts } from '@eavewell/records';
import type { RolloutWorking } from '@eavewell/tables';
import { isMessage, type Language } from '@eavewell/words';

type Line = RolloutWorking['working'][number];
type Cell = NonNullable<Line['inputs'][number]['from']>[number];

/**
 * Which inputs of a working were entered: each keeps the one cell that it was entered in, said in words.
 *
 * @param working - its inputs with the cells they may be taken from
 * @param facts - the programme as it was entered
 * @param language - of the words
 * @returns the same working; an input whose cells are empty, or say something else than it does, names none
 */
export function withEntered(working: RolloutWorking, facts: Facts, language: Language): RolloutWorking {
  return {
    ...working,
    working: working.working.map((line) => ({
      ...line,
      inputs: line.inputs.map(({ from = [], ...input }) => {
        const entered = from.find((cell) => textAt(facts, cell) !== null);
        if (entered === undefined || !isSame(textAt(facts, entered)!, input, language)) return input;
        return { ...input, from: [{ ...entered, said: cellSaid(facts, entered, language) }] };
      }),
    })),
  };
}

/** What stands in a cell; of a setting its value. Null: nothing. */
function textAt(facts: Facts, { table, key, column }: Cell): string | null {
  return facts.row(table, key)?.[table === 'settings' ? 'value' : column] ?? null;
}

/** Does the cell say what the input has? What was made of it by others (growth, a vehicle along) is no cell's own. */
function isSame(
  text: string,
  { value, said }: Pick<Line['inputs'][number], 'value' | 'said'>,
  { numbers }: Language,
): boolean {
  if (readIsoDay(text) !== null) return said === numbers.date(text);
  return Number(text.replace(',', '.')) === value;
}

function cellSaid(facts: Facts, { table, key, column }: Cell, language: Language): string {
  const { say } = language;
  const name = `fields.${table}_${column}`;
  const field = isMessage(name) ? say(name) : column;
  if (table === 'settings') return say('rolloutAnswers.enteredSetting', { field });
  return say('rolloutAnswers.enteredCell', { field, row: facts.row(table, key)?.['name'] ?? key });
}
