import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { roomsIn } from '../docs/engineProgram.ts';

const fromSomewhere = /source:|sources:|@source|@definition|common practice, no source|from memory|\bours\b/i;

/** Everything wrong with the rooms of an engine: what must stand in each, and numbers that say where they come from. */
export function roomFaults(engine: string): readonly string[] {
  const rooms = [...roomsIn(engine), ...['parts', 'remedies'].filter((room) => existsSync(join(engine, room)))];
  return rooms.flatMap((room) => {
    const faults: string[] = [];
    for (const file of ['README.md', 'index.ts'])
      if (!existsSync(join(engine, room, file)) || statSync(join(engine, room, file)).size === 0)
        faults.push(`${room} has no ${file}`);
    for (const file of readdirSync(join(engine, room)).filter(
      (one) => one.endsWith('.ts') && !one.endsWith('.test.ts'),
    )) {
      const text = readFileSync(join(engine, room, file), 'utf8');
      const wrong = file === 'constants.ts' ? constantsWithoutSource(text) : strayConstants(text);
      faults.push(...wrong.map((name) => `${room}/${file} ${name}`));
    }
    return faults;
  });
}

/** Numbers named at the top of a file other than constants.ts. 0, 1 and −1 are no facts, nor are codes counted up from 0. */
function strayConstants(text: string): readonly string[] {
  return text.split(/\n\s*\n/).flatMap((group) => {
    const named = topNames(group).filter(({ value }) => value && isNumeric(value));
    const numbers = named.map(({ value }) => Number(value!.getText().replaceAll('_', '')));
    if (numbers.length > 1 && numbers.every((number, index) => number === index)) return [];
    const facts = named.filter((_, index) => ![0, 1, -1].includes(numbers[index]!));
    return facts.map(({ name }) => `${name}: a number belongs in constants.ts`);
  });
}

/** Constants whose comment does not say where they come from. One comment may serve constants that follow it without a blank line. */
function constantsWithoutSource(text: string): readonly string[] {
  const groups = text.split(/\n\s*\n/);
  return groups.flatMap((group) =>
    fromSomewhere.test(group)
      ? []
      : topNames(group)
          .filter(({ value }) => value && holdsNumber(value))
          .map(({ name }) => `${name}: no source stands beside it`),
  );
}

function holdsNumber(value: ts.Node): boolean {
  return ts.isNumericLiteral(value) || !!ts.forEachChild(value, (part) => holdsNumber(part) || undefined);
}

function isNumeric(value: ts.Expression): boolean {
  return ts.isNumericLiteral(value) || (ts.isPrefixUnaryExpression(value) && ts.isNumericLiteral(value.operand));
}

function topNames(text: string): readonly { readonly name: string; readonly value: ts.Expression | undefined }[] {
  const source = ts.createSourceFile('constants.ts', text, ts.ScriptTarget.Latest, true);
  const statements = source.statements.filter(ts.isVariableStatement);
  return statements.flatMap((one) =>
    one.declarationList.declarations.map((own) => ({ name: own.name.getText(), value: own.initializer })),
  );
}
