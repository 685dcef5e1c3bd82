import type { YearAtTank } from '@eavewell/engine';
import { english } from '@eavewell/words';
import type { Sheet } from './sheet.ts';

const { design } = english.commandLine;

const drawnSteps = '▁▂▃▄▅▆▇█';
const plainSteps = '123456789';
/** Years in one line of the strip. */
const yearsALine = 50;

/** A year's mark: how many dry days it has beside the worst year. */
function markOf(year: YearAtTank, worst: number, drawn: boolean): string {
  if (!year.judged) return '?';
  if (year.dryDays === 0) return drawn ? '·' : '.';
  const steps = drawn ? drawnSteps : plainSteps;
  return steps[Math.min(steps.length - 1, Math.ceil((year.dryDays / worst) * steps.length) - 1)]!;
}

/** Dry days year by year: one mark a year, then the years with dry days in figures. */
export function yearsStrip(sheet: Sheet, years: readonly YearAtTank[]): void {
  const worst = Math.max(1, ...years.filter((year) => year.judged).map((year) => year.dryDays));
  for (let from = 0; from < years.length; from += yearsALine) {
    const some = years.slice(from, from + yearsALine);
    const strip = some.map((year) => markOf(year, worst, sheet.look.drawn)).join('');
    sheet.line(`${some[0]!.waterYear} ${strip} ${some.at(-1)!.waterYear}`, 2);
  }
  sheet.line(design.stripKey(sheet.look.drawn), 2);
  const dry = years.filter((year) => year.dryDays > 0 || !year.judged);
  if (dry.length === 0) return;
  const cells = dry.map(
    (year) =>
      `${year.waterYear}${year.judged ? ' ' : '*'} ${String(year.dryDays).padStart(3)} (${year.longestRun_days})`,
  );
  const across = Math.max(1, Math.floor((sheet.look.width - 2) / 18));
  const rows: string[][] = [];
  for (let from = 0; from < cells.length; from += across) rows.push(cells.slice(from, from + across));
  sheet.table(
    Array.from({ length: Math.min(across, cells.length) }, () => ({ head: '', align: 'left' }) as const),
    rows,
  );
  sheet.line(design.yearsKey, 2);
}
