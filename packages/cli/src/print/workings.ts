import type { Problem, WorkingLine } from '@eavewell/engine';
import { problemSentence, workingText } from '@eavewell/words';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { design, headings } = spoken.commandLine;

/** Every figure with its formula, what went into it and where it comes from. */
export function workingSection(sheet: Sheet, working: readonly WorkingLine[]): void {
  if (working.length === 0) return;
  sheet.heading(headings.working);
  working.forEach((line, index) => {
    const text = workingText(line, spoken);
    sheet.line(`${text.label}: ${text.value}`, 1, 2, String(index + 1).padStart(2));
    sheet.line(text.formula, 5);
    if (text.inputs.length > 0) sheet.line(text.inputs.map(({ label, value }) => `${label} ${value}`).join('; '), 5);
    sheet.line(design.sourceOf(text.source), 5);
  });
}

/** What is wrong at a site, and what to do about it. */
export function problemsSection(sheet: Sheet, problems: readonly Problem[]): void {
  if (problems.length === 0) return;
  sheet.heading(headings.problems);
  for (const problem of problems) {
    const { what, todo } = problemSentence(problem, spoken);
    const severity = spoken.severities[problem.severity].name;
    sheet.line(`${severity}, ${spoken.place(problem.place)}: ${what}`, 2, 2);
    sheet.line(todo, 4);
  }
}
