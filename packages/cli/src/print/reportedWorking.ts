import type { ProblemReport, SiteKitReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { design, headings, kit } = spoken.commandLine;

/** Every figure with its formula, what went into it and where it comes from, as a report has them. */
export function reportedWorking(sheet: Sheet, working: NonNullable<SiteKitReport['working']>): void {
  if (working.length === 0) return;
  sheet.heading(headings.working);
  for (const [index, line] of working.entries()) {
    const value =
      line.value === null
        ? kit.notKnown
        : (line.said ?? spoken.numbers.quantity(line.value, line.unit === 'piece' ? '' : line.unit));
    sheet.line(`${line.label}: ${value}`, 1, 2, String(index + 1).padStart(2));
    sheet.line(line.formula, 5);
    const inputs = line.inputs.map(
      (input) =>
        `${input.label} ${input.said ?? spoken.numbers.given(input.value, input.unit === 'piece' ? '' : input.unit)}`,
    );
    if (inputs.length > 0) sheet.line(inputs.join('; '), 5);
    sheet.line(design.sourceOf(line.sourceSaid), 5);
  }
}

/** What is wrong, and what to do about it, as a report has it. */
export function reportedProblems(sheet: Sheet, problems: readonly ProblemReport[]): void {
  if (problems.length === 0) return;
  sheet.heading(headings.problems);
  for (const { severity, place, what, todo } of problems) {
    const known = Object.fromEntries(Object.entries(place).filter(([, part]) => part !== undefined));
    const where = Object.keys(known).length === 0 ? '' : `, ${spoken.place(known)}`;
    sheet.line(`${spoken.severities[severity].name}${where}: ${what}`, 2, 2);
    sheet.line(todo, 4);
  }
}
