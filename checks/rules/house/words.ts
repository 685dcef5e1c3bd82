import ts from 'typescript';

/** Words people of this trade do not use; the program has its own for each. */
const notUsed = ['dashboard', 'wizard', 'asset', 'ticket', 'submission', 'workspace', 'insight'];
const notUsedForm = new RegExp(`\\b(?:${notUsed.join('|')})s?\\b`, 'gi');

/** Words not used, in the texts of a source file: its strings and templates, not its names. */
export function wordsNotUsedInCode(text: string): readonly string[] {
  const source = ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node) => {
    const isPath = node.parent && (ts.isImportDeclaration(node.parent) || ts.isExportDeclaration(node.parent));
    const isText =
      ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node);
    if (isText && !isPath) found.push(...wordsNotUsed(node.text));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Words not used, in plain text. */
export function wordsNotUsed(text: string): readonly string[] {
  return text.match(notUsedForm) ?? [];
}

/** Places of one machine only, which mean nothing on another: `/home/somebody`, `C:\Users\…`. */
export function machinePaths(text: string): readonly string[] {
  return text.match(/(?<![\w.:/])\/(?:home|root|Users|tmp|mnt|opt)\/[\w.-]+|\b[A-Z]:\\\w+/g) ?? [];
}
