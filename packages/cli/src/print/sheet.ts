import type { StationVerdict, Verdict } from '@eavewell/engine';
import { verdictMarks, verdictText } from '@eavewell/words';
import { spoken } from '../language.ts';
import type { Look } from './terminal.ts';
import { columnsOf, filled, plainText, printable, wrapped } from './text.ts';

/** Width of a verdict's mark and its longest word, and the space around them. */
function verdictColumns(): number {
  const { holds, tight, short, unknown } = spoken.verdicts;
  return 6 + Math.max(...[holds, tight, short, unknown].map(columnsOf));
}

export interface ColumnOfTable {
  readonly head: string;
  readonly align: 'left' | 'right';
}

/** Lines of output, none wider than the terminal. Everything printed for a person goes through here. */
export class Sheet {
  readonly #lines: string[] = [];
  readonly look: Look;

  constructor(look: Look) {
    this.look = look;
  }

  /** A text, wrapped: `indent` columns from the left, lines after the first `hang` more, `lead` before the first. */
  line(text: string, indent = 0, hang = 0, lead = ''): void {
    const before = ' '.repeat(indent) + (lead === '' ? '' : `${lead} `);
    const [first = '', ...rest] = wrapped(this.#safe(text), this.look.width - columnsOf(before) - hang);
    this.#lines.push(`${before}${first}`);
    for (const line of rest) this.#lines.push(`${' '.repeat(columnsOf(before) + hang)}${line}`);
  }

  blank(): void {
    if (this.#lines.length > 0 && this.#lines.at(-1) !== '') this.#lines.push('');
  }

  heading(text: string): void {
    this.blank();
    for (const line of wrapped(this.#safe(text), this.look.width)) this.#lines.push(this.look.paint.bold(line));
  }

  /** A verdict by mark and word, then texts beside it: the first is the name. */
  verdict(verdict: StationVerdict, texts: readonly string[]): void {
    const marked = this.mark(verdict);
    const width = this.look.width - verdictColumns();
    const gap = ' '.repeat(Math.max(1, verdictColumns() - columnsOf(verdictText(verdict, this.look.drawn, spoken))));
    const lines = texts.flatMap((text) => wrapped(this.#safe(text), width));
    lines.forEach((line, index) => {
      this.#lines.push(index === 0 ? `${marked}${gap}${line}` : `${' '.repeat(verdictColumns())}${line}`);
    });
  }

  /** The mark and the word, in the verdict's colour. */
  mark(verdict: StationVerdict): string {
    return this.#coloured(verdict, verdictText(verdict, this.look.drawn, spoken));
  }

  /** How many sites of each verdict, with their marks. */
  tally(counts: Readonly<Record<Verdict, number>>, order: readonly Verdict[]): void {
    for (const verdict of order.filter((one) => counts[one] > 0)) {
      const mark = verdictMarks[verdict][this.look.drawn ? 'drawn' : 'plain'];
      this.#lines.push(
        this.#coloured(verdict, `${mark} ${spoken.commandLine.verdictGroups[verdict](counts[verdict])}`),
      );
    }
  }

  /** A small table. The widest column gives way where the lines would grow too long; its texts then take several lines. */
  table(columns: readonly ColumnOfTable[], rows: readonly (readonly string[])[], indent = 2): void {
    const heads = columns.map((column) => column.head);
    const cells = [...(heads.some((head) => head !== '') ? [heads] : []), ...rows].map((row) =>
      row.map((cell) => this.#safe(cell)),
    );
    const widths = columns.map((_, index) => Math.max(0, ...cells.map((row) => columnsOf(row[index] ?? ''))));
    const room = this.look.width - indent - 2 * (columns.length - 1);
    while (widths.reduce((sum, width) => sum + width, 0) > room) {
      const widest = widths.indexOf(Math.max(...widths));
      widths[widest] = widths[widest]! - 1;
    }
    for (const row of cells) {
      const pieces = columns.map((_, index) => wrapped(row[index] ?? '', widths[index]!));
      for (let at = 0; at === 0 || pieces.some((some) => at < some.length); at++) {
        const line = columns.map((column, index) =>
          filled(pieces[index]![at] ?? '', widths[index]!, column.align === 'right' ? 'left' : 'right'),
        );
        this.#lines.push(`${' '.repeat(indent)}${line.join('  ')}`.trimEnd());
      }
    }
  }

  text(): string {
    return this.#lines.length === 0 ? '' : `${this.#lines.join('\n')}\n`;
  }

  /** Colour repeats what mark and word say already. */
  #coloured(verdict: StationVerdict, text: string): string {
    const { paint } = this.look;
    if (verdict === 'short') return paint.bold(paint.red(text));
    if (verdict === 'tight') return paint.bold(paint.yellow(text));
    if (verdict === 'unknown') return paint.bold(text);
    return verdict === 'notJudged' ? paint.dim(text) : text;
  }

  #safe(text: string): string {
    const clean = printable(text);
    return this.look.drawn ? clean : plainText(clean);
  }
}
