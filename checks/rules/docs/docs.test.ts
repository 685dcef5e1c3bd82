import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as engineIndex from '../../../packages/engine/src/index.ts';
import { engineProblems } from '../../../packages/engine/src/kernel/index.ts';
import { repository } from '../repository.ts';
import { docFaults } from './docRules.ts';
import { doorFunctions, readEngine } from './engineProgram.ts';
import { exampleLines, runExample } from './examples.ts';
import { namesWithoutTheirUnit, numericNames } from './numericNames.ts';
import { readSources } from './sources.ts';

const folder = join(repository, 'packages/engine/src');
const engine = readEngine(folder);
const functions = doorFunctions(engine);
const sourceIds = new Set(readSources(join(repository, 'docs/sources.json')).map(({ id }) => id));
const world = { sourceIds, problemCodes: new Set(Object.keys(engineProblems)) };

describe('what the doors of the engine export', () => {
  test('is documented with units, sources and examples', () => {
    expect(functions.length).toBeGreaterThan(20);
    const faults = functions.flatMap((own) =>
      docFaults(engine, own, world).map((fault) => `${own.file}:${own.line} ${own.name} ${fault}`),
    );
    expect(faults).toEqual([]);
  });

  test('does what its examples say', async () => {
    const examples = functions.flatMap((own) => exampleLines(own).map((line) => ({ line, door: own.door })));
    expect(examples.length).toBeGreaterThan(20);
    const wrong: string[] = [];
    for (const { line, door } of examples) {
      const exported = (await import(join(folder, door))) as Record<string, unknown>;
      const came = runExample(line, { ...engineIndex, ...exported });
      if (came !== null) wrong.push(`${line.place} ${line.expression} ${came}`);
    }
    expect(wrong).toEqual([]);
  });
});

test('numeric constants and fields of the engine end in their unit', () => {
  const names = numericNames(engine);
  expect(names.length).toBeGreaterThan(20);
  expect(namesWithoutTheirUnit(names)).toEqual([]);
});
