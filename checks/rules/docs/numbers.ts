import ts from 'typescript';
import { carriesUnit } from './units.ts';

const typedArray = /^(?:Float|Int|Uint|BigInt|BigUint)\d+(?:Clamped)?Array$/;
const listNames = [
  'Array',
  'ReadonlyArray',
  'ArrayLike',
  'Iterable',
  'Iterator',
  'IterableIterator',
  'Generator',
  'Promise',
];
const lists = new RegExp(`^(?:${[...listNames, 'Map', 'ReadonlyMap', 'WeakMap', 'Set', 'ReadonlySet'].join('|')})$`);

/** How a type holds numbers: not at all, in fields whose names carry the unit, or bare, so that its comment must say the unit. */
export type Holds = 'none' | 'named' | 'bare';

/** How does this type hold numbers? Functions, texts and yes/no hold none. */
export function holdsNumbers(checker: ts.TypeChecker, type: ts.Type, seen: ReadonlySet<ts.Type> = new Set()): Holds {
  if (seen.has(type)) return 'none';
  const within = new Set(seen).add(type);
  if (type.flags & (ts.TypeFlags.NumberLike | ts.TypeFlags.BigIntLike)) return 'bare';
  if (type.isUnionOrIntersection()) return worst(type.types.map((one) => holdsNumbers(checker, one, within)));
  if (type.flags & ts.TypeFlags.TypeParameter) {
    const limit = checker.getBaseConstraintOfType(type);
    return limit && limit !== type ? holdsNumbers(checker, limit, within) : 'none';
  }
  if (!(type.flags & ts.TypeFlags.Object) || type.getCallSignatures().length > 0) return 'none';
  const name = type.getSymbol()?.name ?? '';
  if (typedArray.test(name)) return 'bare';
  if (checker.isArrayType(type) || checker.isTupleType(type) || lists.test(name))
    return worst(entriesOf(checker, type).map((one) => holdsNumbers(checker, one, within)));
  const index = type.getStringIndexType();
  if (index) return holdsNumbers(checker, index, within);
  return worst(type.getProperties().map((field) => holdsField(checker, name, field, within)));
}

/** What a list holds; of a map, its values: a key is a name, not a quantity. */
function entriesOf(checker: ts.TypeChecker, type: ts.Type): readonly ts.Type[] {
  const held = checker.getTypeArguments(type as ts.TypeReference);
  return isMap(type) ? held.slice(1) : held;
}

function isMap(type: ts.Type): boolean {
  return /Map$/.test(type.getSymbol()?.name ?? '');
}

/** Is it declared as a DayIndex? The compiler itself only sees a number. */
export function isDayIndex(declaration: ts.Declaration | undefined): boolean {
  if (!declaration || !(ts.isPropertySignature(declaration) || ts.isVariableDeclaration(declaration))) return false;
  return /^(?:readonly )?DayIndex\b/.test(declaration.type?.getText() ?? '');
}

function holdsField(checker: ts.TypeChecker, owner: string, field: ts.Symbol, seen: ReadonlySet<ts.Type>): Holds {
  const type = checker.getTypeOfSymbol(field);
  const held = holdsNumbers(checker, type, seen);
  if (held !== 'bare') return held;
  if (isDayIndex(field.valueDeclaration) || isMap(type)) return 'named';
  // `Range` and its like take their unit from the field that holds them, so that on their own they are bare.
  return carriesUnit(field.name, null) || (!['low', 'high'].includes(field.name) && carriesUnit(field.name, owner))
    ? 'named'
    : 'bare';
}

function worst(found: readonly Holds[]): Holds {
  if (found.includes('bare')) return 'bare';
  return found.includes('named') ? 'named' : 'none';
}

/** Is every value of this type written in one short line: numbers, texts, yes/no, and lists of them? */
export function isPlain(checker: ts.TypeChecker, type: ts.Type): boolean {
  const plain =
    ts.TypeFlags.NumberLike |
    ts.TypeFlags.StringLike |
    ts.TypeFlags.BooleanLike |
    ts.TypeFlags.Null |
    ts.TypeFlags.Undefined |
    ts.TypeFlags.Void;
  if (type.flags & plain) return true;
  if (type.isUnion()) return type.types.every((one) => isPlain(checker, one));
  if (!checker.isArrayType(type) && !checker.isTupleType(type)) return false;
  return checker.getTypeArguments(type as ts.TypeReference).every((one) => isPlain(checker, one));
}
