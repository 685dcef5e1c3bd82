import { relative, sep } from 'node:path';
import ts from 'typescript';
import type { EngineProgram } from './engineProgram.ts';
import { holdsNumbers, isDayIndex } from './numbers.ts';
import { carriesUnit } from './units.ts';

/** A numeric constant or field of the engine that others can see. */
export interface NumericName {
  readonly name: string;
  /** The interface of a field, null for a constant. */
  readonly owner: string | null;
  readonly place: string;
}

/** Every exported numeric constant and every numeric field of an exported interface of the engine. */
export function numericNames(engine: EngineProgram): readonly NumericName[] {
  const found: NumericName[] = [];
  for (const source of engine.program.getSourceFiles()) {
    const file = relative(engine.folder, source.fileName).split(sep).join('/');
    if (file.startsWith('..') || file.includes('node_modules/')) continue;
    const take = (node: ts.NamedDeclaration, owner: string | null) => {
      if (!node.name || isDayIndex(node) || !isQuantity(engine.checker, engine.checker.getTypeAtLocation(node))) return;
      const place = `${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
      found.push({ name: node.name.getText(), owner, place });
    };
    for (const statement of source.statements) {
      if (!isExported(statement)) continue;
      if (ts.isVariableStatement(statement)) for (const one of statement.declarationList.declarations) take(one, null);
      if (ts.isInterfaceDeclaration(statement))
        for (const member of statement.members) if (ts.isPropertySignature(member)) take(member, statement.name.text);
    }
  }
  return found;
}

/** Names that carry no unit, as `place name`. */
export function namesWithoutTheirUnit(names: readonly NumericName[]): readonly string[] {
  const wrong = names.filter(({ name, owner }) => !carriesUnit(name, owner));
  return wrong.map(({ name, owner, place }) => `${place} ${owner === null ? '' : `${owner}.`}${name}`);
}

function isExported(statement: ts.Statement): boolean {
  return (
    ts.canHaveModifiers(statement) &&
    !!ts.getModifiers(statement)?.some((one) => one.kind === ts.SyntaxKind.ExportKeyword)
  );
}

/** A number, a list of numbers, or a range of them: what wants a unit in its name. Other objects carry units in their fields. */
function isQuantity(checker: ts.TypeChecker, type: ts.Type): boolean {
  const one = checker.getNonNullableType(type);
  if (one.getCallSignatures().length > 0 || holdsNumbers(checker, one) !== 'bare') return false;
  const entry = checker.isArrayType(one) ? checker.getTypeArguments(one as ts.TypeReference)[0]! : one;
  if (!(entry.flags & ts.TypeFlags.Object) || entry.getNumberIndexType()) return true;
  return entry.getProperties().every(({ name }) => name === 'low' || name === 'high');
}
