import type { Place, Problem } from '@eavewell/engine';
import { bare, hiddenIn } from './hiddenCharacters.ts';
import { shown } from './readCell.ts';
import { type TableProblemCode, tableProblem } from './tableProblems.ts';

interface Count {
  readonly value: string;
  readonly points: readonly string[];
  readonly row: number;
  count: number;
}

/** Counts the cells of each column with characters that cannot be seen, so that a whole column of them makes one note. */
export class HiddenTally {
  readonly #counts = new Map<string, Count>();

  /** Takes note of one cell that was used. `isText`: what stands inside it is kept. */
  cell(column: string, row: number, text: string, isText: boolean): void {
    if (hiddenIn(text).length === 0) return;
    const inside = bare(text);
    const ends = hiddenIn(text.slice(0, text.indexOf(inside)) + text.slice(text.indexOf(inside) + inside.length));
    if (ends.length > 0) this.#add('column.hidden_ends', column, row, inside, ends);
    const kept = isText ? hiddenIn(inside) : [];
    if (kept.length > 0) this.#add('column.hidden_inside', column, row, inside, kept);
  }

  #add(code: TableProblemCode, column: string, row: number, value: string, points: readonly string[]): void {
    const key = `${code} ${column}`;
    const before = this.#counts.get(key);
    if (before) before.count++;
    else this.#counts.set(key, { value: shown(value), points, row, count: 1 });
  }

  /** One note for each column and kind. */
  problems(place: Place): readonly Problem[] {
    return [...this.#counts].map(([key, { value, points, row, count }]) => {
      const [code, column] = key.split(' ') as [TableProblemCode, string];
      return tableProblem(code, { ...place, row, column }, { value, points, count, expected: '' });
    });
  }
}
