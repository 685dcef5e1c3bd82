import type { Sheet } from './sheet.ts';

const drawnSteps = '▁▂▃▄▅▆▇█';
const plainSteps = '123456789';
/** Years in one line of the strip. */
const yearsALine = 50;

/** One year and its figure; null where there is none. */
export interface StripYear {
  readonly year: number;
  readonly value: number | null;
}

/** A year's mark: its figure beside the greatest. */
function markOf({ value }: StripYear, greatest: number, drawn: boolean): string {
  if (value === null) return '?';
  if (value === 0) return drawn ? '·' : '.';
  const steps = drawn ? drawnSteps : plainSteps;
  return steps[Math.min(steps.length - 1, Math.ceil((value / greatest) * steps.length) - 1)]!;
}

/** Years in a row, one mark each, with the first and the last named. */
export function strip(sheet: Sheet, years: readonly StripYear[]): void {
  const greatest = Math.max(1, ...years.map(({ value }) => value ?? 0));
  for (let from = 0; from < years.length; from += yearsALine) {
    const some = years.slice(from, from + yearsALine);
    const marks = some.map((year) => markOf(year, greatest, sheet.look.drawn)).join('');
    sheet.line(`${some[0]!.year} ${marks} ${some.at(-1)!.year}`, 2);
  }
}

/** Short cells side by side, as many as fit. */
export function sideBySide(sheet: Sheet, cells: readonly string[], columns: number): void {
  const across = Math.max(1, Math.floor((sheet.look.width - 2) / columns));
  const rows: string[][] = [];
  for (let from = 0; from < cells.length; from += across) rows.push(cells.slice(from, from + across));
  sheet.table(
    Array.from({ length: Math.min(across, cells.length) }, () => ({ head: '', align: 'left' }) as const),
    rows,
  );
}
