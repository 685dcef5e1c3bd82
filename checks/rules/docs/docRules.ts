import ts from 'typescript';
import type { DoorFunction, EngineProgram } from './engineProgram.ts';
import { holdsNumbers, isPlain } from './numbers.ts';
import { sourceFaults } from './sources.ts';

const unit = /\[[^\]]+\]/;

/** What a doc comment is checked against. */
export interface DocWorld {
  readonly sourceIds: ReadonlySet<string>;
  readonly problemCodes: ReadonlySet<string>;
}

/** A doc comment taken apart. */
export interface DocComment {
  readonly text: string;
  readonly params: ReadonlyMap<string, string>;
  readonly tags: ReadonlyMap<string, readonly string[]>;
}

/** The doc comment of a function, or null where it has none. */
export function docCommentOf({ declaration }: DoorFunction): DocComment | null {
  const owner = ts.isVariableDeclaration(declaration) ? declaration.parent.parent : declaration;
  const comments = ts.getJSDocCommentsAndTags(owner).filter(ts.isJSDoc);
  const last = comments.at(-1);
  if (!last) return null;
  const params = new Map<string, string>();
  const tags = new Map<string, string[]>();
  for (const tag of last.tags ?? []) {
    const text = (ts.getTextOfJSDocComment(tag.comment) ?? '').trim();
    if (ts.isJSDocParameterTag(tag)) params.set(tag.name.getText(), text);
    const name = tag.tagName.text;
    tags.set(name, [...(tags.get(name) ?? []), ts.isJSDocParameterTag(tag) ? '' : text]);
  }
  return { text: (ts.getTextOfJSDocComment(last.comment) ?? '').trim(), params, tags };
}

/** Everything wrong with the doc comment of one function, in words. */
export function docFaults(engine: EngineProgram, own: DoorFunction, world: DocWorld): readonly string[] {
  const doc = docCommentOf(own);
  if (!doc || doc.text === '') return ['has no doc comment'];
  if (isMadeByAnother(own)) return [];
  if (isOneLiner(own) && doc.tags.size === 0) return oneLinerFaults(engine, own, doc);
  return [
    ...paramFaults(engine, own, doc),
    ...returnFaults(engine, own, doc),
    ...originFaults(doc, world),
    ...problemFaults(own, doc, world),
    ...exampleFaults(engine, own, doc),
  ];
}

/** A function that another, documented one made: `const x = makerOf(…)`. */
function isMadeByAnother({ declaration }: DoorFunction): boolean {
  return (
    ts.isVariableDeclaration(declaration) && !!declaration.initializer && ts.isCallExpression(declaration.initializer)
  );
}

/** The kernel's one-line conversions: a single return. */
function isOneLiner({ declaration, door }: DoorFunction): boolean {
  if (door !== 'kernel/index.ts' || !ts.isFunctionDeclaration(declaration)) return false;
  const statements = declaration.body?.statements;
  return statements?.length === 1 && statements[0]!.kind === ts.SyntaxKind.ReturnStatement;
}

function oneLinerFaults(engine: EngineProgram, own: DoorFunction, doc: DocComment): string[] {
  return returnType(engine, own) === 'bare' && !unit.test(doc.text) ? ['has no [unit] in its comment'] : [];
}

function returnType({ checker }: EngineProgram, { signature }: DoorFunction) {
  return holdsNumbers(checker, checker.getReturnTypeOfSignature(signature));
}

function paramFaults({ checker }: EngineProgram, own: DoorFunction, doc: DocComment): string[] {
  const faults: string[] = [];
  const names = own.signature.getParameters().map((parameter) => parameter.name);
  for (const parameter of own.signature.getParameters()) {
    const text = doc.params.get(parameter.name);
    const type = checker.getTypeOfSymbolAtLocation(parameter, own.declaration);
    if (text === undefined || text.replace(/^-\s*/, '') === '') faults.push(`has no @param ${parameter.name}`);
    else if (holdsNumbers(checker, type) === 'bare' && !unit.test(text))
      faults.push(`@param ${parameter.name} has no [unit]`);
  }
  for (const name of doc.params.keys()) if (!names.includes(name)) faults.push(`@param ${name} is no parameter`);
  return faults;
}

function returnFaults(engine: EngineProgram, own: DoorFunction, doc: DocComment): string[] {
  const type = engine.checker.getReturnTypeOfSignature(own.signature);
  if (type.flags & ts.TypeFlags.Void) return [];
  const text = (doc.tags.get('returns') ?? [])[0] ?? '';
  if (text === '') return ['has no @returns'];
  return returnType(engine, own) === 'bare' && !unit.test(text) ? ['@returns has no [unit]'] : [];
}

function originFaults(doc: DocComment, { sourceIds }: DocWorld): string[] {
  const sources = doc.tags.get('source') ?? [];
  const definitions = doc.tags.get('definition') ?? [];
  if (sources.length + definitions.length === 0) return ['has neither @source nor @definition'];
  const empty = definitions.some((text) => text === '') ? ['@definition says nothing'] : [];
  return [...empty, ...sources.flatMap((text) => sourceFaults(text, sourceIds))];
}

function problemFaults({ signature }: DoorFunction, doc: DocComment, { problemCodes }: DocWorld): string[] {
  const told = doc.tags.get('problem') ?? [];
  const faults = told.flatMap((text) => {
    const code = text.split(/\s/)[0] ?? '';
    return problemCodes.has(code) && / - \S/.test(text)
      ? []
      : [`@problem ${text}: wants "code - when", code of the catalogue`];
  });
  if (told.length === 0 && signature.getReturnType().aliasSymbol?.name === 'Checked')
    faults.push('returns Checked and names no @problem');
  return faults;
}

function exampleFaults({ checker }: EngineProgram, own: DoorFunction, doc: DocComment): string[] {
  const examples = doc.tags.get('example') ?? [];
  const silent = examples
    .filter((text) => !text.includes('// →'))
    .map(() => '@example has no line "expression // → literal"');
  const types = own.signature.getParameters().map((one) => checker.getTypeOfSymbolAtLocation(one, own.declaration));
  const plain = types.every((type) => isPlain(checker, type)) && isPlain(checker, own.signature.getReturnType());
  return plain && examples.length === 0 ? ['takes and gives plain values and has no @example'] : silent;
}
