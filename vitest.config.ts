import { defineConfig } from 'vitest/config';

/** Workspace packages are tested from their sources: the export condition `source` of their package.json comes first. */
const conditions = ['source', 'module', 'node', 'development|production'];

/** The suites of `checks/`, by what they prove. Each has its own folder of tests. */
const suites = ['published', 'laws', 'twins', 'faults', 'files', 'rules'];

const project = (name: string, include: readonly string[], testTimeout: number) => ({
  extends: true as const,
  test: { name, include: [...include], environment: 'node' as const, testTimeout, hookTimeout: testTimeout },
});

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    // A suite may be empty while it is being written; checks/rules fails when one of them is.
    passWithNoTests: true,
    projects: [
      project('source', ['packages/*/src/**/*.test.ts', 'demo/src/**/*.test.ts'], 30_000),
      ...suites.map((name) => project(name, [`checks/${name}/**/*.test.ts`], 120_000)),
    ],
  },
});
