import ts from 'typescript';

export const mostLinesOfAFile = 300;
export const mostLinesOfAFunction = 50;
/** A page's markup takes a line for a tag. */
export const mostLinesOfMarkup = 80;

/** Something longer than the house wants, and the reason that stands above it, if one does. */
export interface Long {
  readonly place: string;
  readonly lines: number;
  readonly reason: string | null;
}

const reasonForm = /^\/\/ long: (\S.*)$/;

/** Files and functions of one text that are over the limits. `isTest` texts have long functions by nature: suites of tests. */
export function longIn(file: string, text: string, isTest: boolean): readonly Long[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const lines = text.split('\n');
  const code = codeLines(source, lines.length);
  const count = (from: number, to: number) => code.slice(from, to + 1).filter(Boolean).length;
  const found: Long[] = [];
  const whole = count(0, lines.length - 1);
  if (whole > mostLinesOfAFile)
    found.push({ place: file, lines: whole, reason: reasonForm.exec(lines[0]!.trim())?.[1] ?? null });
  const visit = (node: ts.Node) => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body) {
      const from = source.getLineAndCharacterOfPosition(node.getStart()).line;
      const own = count(from, source.getLineAndCharacterOfPosition(node.getEnd()).line);
      const reason = reasonForm.exec((lines[from - 1] ?? '').trim())?.[1] ?? null;
      const most = file.endsWith('.tsx') ? mostLinesOfMarkup : mostLinesOfAFunction;
      if (own > most) found.push({ place: `${file}:${from + 1}`, lines: own, reason });
    }
    ts.forEachChild(node, visit);
  };
  if (!isTest) visit(source);
  return found;
}

/** Which lines hold code? Blank lines and comments do not count. */
function codeLines(source: ts.SourceFile, total: number): readonly boolean[] {
  const code = new Array<boolean>(total).fill(false);
  const visit = (node: ts.Node) => {
    const parts = node.getChildren(source);
    if (parts.length === 0 && node.getWidth(source) > 0) {
      const last = source.getLineAndCharacterOfPosition(node.getEnd()).line;
      for (let line = source.getLineAndCharacterOfPosition(node.getStart(source)).line; line <= last; line++)
        code[line] = true;
    }
    for (const part of parts) if (!ts.isJSDoc(part)) visit(part);
  };
  visit(source);
  return code;
}
