import { existsSync, readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import ts from 'typescript';

/** The engine as the compiler sees it. `folder` is `packages/engine/src`, or a made-up one. */
export interface EngineProgram {
  readonly folder: string;
  readonly program: ts.Program;
  readonly checker: ts.TypeChecker;
  readonly doors: readonly string[];
}

/** A function that a door of the engine exports. */
export interface DoorFunction {
  readonly name: string;
  /** The door, and the file it is written in, from the engine's folder. */
  readonly door: string;
  readonly file: string;
  readonly line: number;
  readonly declaration: ts.FunctionDeclaration | ts.VariableDeclaration;
  readonly signature: ts.Signature;
}

const options: ts.CompilerOptions = {
  target: ts.ScriptTarget.ES2022,
  lib: ['lib.es2023.d.ts'],
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  allowImportingTsExtensions: true,
  noEmit: true,
  strict: true,
  skipLibCheck: true,
  types: [],
};

/** Reads an engine: every room's index.ts, site.ts and plan.ts are its doors. */
export function readEngine(folder: string): EngineProgram {
  const doors = doorsOf(folder);
  const files = typeScriptFiles(folder).map((file) => join(folder, file));
  const program = ts.createProgram([...files], options);
  return { folder, program, checker: program.getTypeChecker(), doors };
}

/** Doors of the engine, from its folder. */
export function doorsOf(folder: string): readonly string[] {
  const rooms = ['kernel', 'parts', 'remedies', ...roomsIn(folder)];
  return [...rooms.map((room) => `${room}/index.ts`), 'site.ts', 'plan.ts'].filter((door) =>
    existsSync(join(folder, door)),
  );
}

/** The rooms of the water's path and of the programme, from the engine's folder. */
export function roomsIn(folder: string): readonly string[] {
  return ['water', 'programme'].flatMap((side) => {
    const path = join(folder, side);
    if (!existsSync(path)) return [];
    const found = readdirSync(path, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    return found.map((entry) => `${side}/${entry.name}`).sort();
  });
}

/** Source files under a folder, tests left out, with forward slashes. */
export function typeScriptFiles(folder: string): readonly string[] {
  const found = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return found
    .map((file) => file.split(sep).join('/'))
    .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts') && !file.includes('node_modules/'))
    .sort();
}

/** Every function the doors export, once each, by the first door that has it. */
export function doorFunctions(engine: EngineProgram): readonly DoorFunction[] {
  const found = new Map<ts.Declaration, DoorFunction>();
  for (const door of engine.doors) {
    const source = engine.program.getSourceFile(join(engine.folder, door));
    const module = source && engine.checker.getSymbolAtLocation(source);
    if (!module) continue;
    for (const exported of engine.checker.getExportsOfModule(module)) {
      const own = functionOf(engine, door, exported);
      if (own && !found.has(own.declaration)) found.set(own.declaration, own);
    }
  }
  return [...found.values()];
}

function functionOf(engine: EngineProgram, door: string, exported: ts.Symbol): DoorFunction | null {
  const { checker, folder } = engine;
  const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
  const declaration = symbol.valueDeclaration;
  if (!declaration || !(ts.isFunctionDeclaration(declaration) || ts.isVariableDeclaration(declaration))) return null;
  const signature = checker.getTypeOfSymbolAtLocation(symbol, declaration).getCallSignatures()[0];
  if (!signature) return null;
  const source = declaration.getSourceFile();
  return {
    name: exported.name,
    door,
    file: relative(folder, source.fileName).split(sep).join('/'),
    line: source.getLineAndCharacterOfPosition(declaration.getStart()).line + 1,
    declaration,
    signature,
  };
}
