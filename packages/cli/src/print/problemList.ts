import type { Problem, Severity } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { spoken } from '../language.ts';
import type { Sheet } from './sheet.ts';

const { check } = spoken.commandLine;

/** Worst first. */
const severities: readonly Severity[] = ['blocker', 'warning', 'note'];
/** How many of one kind are shown. */
const shownOfAKind = 3;

/** How many problems there are of each severity. */
export function countProblems(problems: readonly Problem[]): Readonly<Record<Severity, number>> {
  const counts = { blocker: 0, warning: 0, note: 0 };
  for (const problem of problems) counts[problem.severity]++;
  return counts;
}

/** Problems, blockers first, those of one kind together: a few of each, or all. */
export function problemList(sheet: Sheet, problems: readonly Problem[], all: boolean): void {
  for (const severity of severities) {
    const ofSeverity = problems.filter((problem) => problem.severity === severity);
    if (ofSeverity.length === 0) continue;
    sheet.heading(spoken.severities[severity].counted(ofSeverity.length));
    const kinds = new Map<string, Problem[]>();
    for (const problem of ofSeverity) {
      const kind = kinds.get(problem.code);
      if (kind) kind.push(problem);
      else kinds.set(problem.code, [problem]);
    }
    for (const kind of [...kinds.values()].sort((a, b) => causeOf(a) - causeOf(b) || b.length - a.length))
      printKind(sheet, kind, all ? kind.length : shownOfAKind);
  }
}

/**
 * Causes before what follows from them: what keeps a file from being read, then rows and cells, then a gauge's record, then
 * the sites, which all others leave unknown.
 */
function causeOf([problem]: readonly Problem[]): number {
  const { code } = problem!;
  if (/^(?:folder|file|columns|header|settings)\./.test(code)) return 0;
  if (code.startsWith('rain')) return 2;
  return code.startsWith('site.') ? 3 : 1;
}

/** Problems of one kind: each with its place and what was found; what to do is said once where it is the same for all. */
function printKind(sheet: Sheet, kind: readonly Problem[], most: number): void {
  const shown = kind.slice(0, most).map((problem) => ({ problem, ...problemSentence(problem, spoken) }));
  const isOneAdvice = shown.every(({ todo }) => todo === shown[0]!.todo);
  for (const { problem, what, todo } of shown) {
    sheet.line(`${spoken.place(problem.place)}: ${what}`, 2, 2);
    if (!isOneAdvice) sheet.line(todo, 4);
  }
  if (isOneAdvice) sheet.line(shown[0]!.todo, 4);
  if (kind.length > shown.length) sheet.line(check.more(kind.length - shown.length), 4);
}
