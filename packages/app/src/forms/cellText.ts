import type { AppNumbers } from '@eavewell/words/app';
import { figureOf, isNumber, shownCell } from './cellEntry.ts';
import { formTable } from './formTables.ts';
import type { FieldWords } from './useFieldWords.ts';

/**
 * A cell as people read it: figures with their units, choices and days in words; what cannot be read stands as it is.
 *
 * @param place - its table and column [text]
 * @param cell - as the tables write it; null is empty [text]
 * @param numbers - of the language
 * @param words - of the language
 * @returns the text; null for an empty cell
 */
export function cellText(
  { table, column }: { readonly table: string; readonly column: string },
  cell: string | null,
  numbers: AppNumbers,
  words: Pick<FieldWords, 'choice'>,
): string | null {
  if (cell === null) return null;
  const contract = formTable(table)?.columns[column];
  if (contract === undefined) return cell;
  if (contract.kind === 'choice' || contract.kind === 'yesNo')
    return contract.choices.includes(cell) ? words.choice(cell) : cell;
  if (contract.kind === 'date' && /^\d{4}-\d{2}-\d{2}$/.test(cell)) return numbers.date(cell);
  const isPlain = isNumber(contract) && /^-?\d+(?:\.\d+)?$/.test(cell);
  if (!isPlain || contract.unit === 'year' || contract.unit === 'number') return cell;
  // A position keeps all its figures: rounded, it would be another place.
  if (contract.unit === 'deg') return `${shownCell(contract, cell, numbers.decimalMark)}°`;
  return figureOf(contract, Number(cell), numbers);
}
