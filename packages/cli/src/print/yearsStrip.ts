import type { YearAtTank } from '@eavewell/engine';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';
import { sideBySide, strip } from './strip.ts';

const { design } = spoken.commandLine;

/** Dry days year by year: one mark a year, then the years with dry days in figures. */
export function yearsStrip(sheet: Sheet, years: readonly YearAtTank[]): void {
  strip(
    sheet,
    years.map(({ waterYear, judged, dryDays }) => ({ year: waterYear, value: judged ? dryDays : null })),
  );
  sheet.line(design.stripKey(sheet.look.drawn), 2);
  const dry = years.filter((year) => year.dryDays > 0 || !year.judged);
  if (dry.length === 0) return;
  const cells = dry.map(
    (year) =>
      `${year.waterYear}${year.judged ? ' ' : '*'} ${String(year.dryDays).padStart(3)} (${year.longestRun_days})`,
  );
  sideBySide(sheet, cells, 18);
  sheet.line(design.yearsKey, 2);
}
