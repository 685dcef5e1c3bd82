import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Workspace packages are tested from their sources: the export condition `eavewell-source` of their package.json comes first. */
const conditions = ['eavewell-source', 'module', 'node', 'development|production'];

/** The suites of `checks/`, by what they prove. Each has its own folder of tests. */
const suites = ['published', 'laws', 'twins', 'faults', 'files', 'rules'];

/** Those that look at the built program in a real browser. */
const inBrowser = ['journeys', 'scale'];

/** They come after all others, and three files run at a time on two cores: a test that drives a browser waits for it a third of its time. */
const browserWork = { lastOf: 1, workers: 3 };

const project = (name: string, include: readonly string[], testTimeout: number) => ({
  extends: true as const,
  test: { name, include: [...include], environment: 'node' as const, testTimeout, hookTimeout: testTimeout },
});

/**
 * Files that follow each other in one process: what they import is read once, which was half of their time. What a test gives to
 * all (a stand-in for fetch, for the browser's database) it takes away again (docs/decisions/0241-files-that-share-a-process.md).
 */
const together = <T extends { readonly test: object }>(one: T) => ({ ...one, test: { ...one.test, isolate: false } });

/** The journeys over every page: begun last, one of them would run alone at the end. */
const longest = ['looks', 'languages', 'water', 'safety'];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => {
      const at = longest.findIndex((name) => moduleId.endsWith(`/journeys/${name}.test.ts`));
      return at < 0 ? longest.length : at;
    };
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    // A worker for each core of the smallest machine this is run on: files mind only their own folders and ports.
    maxWorkers: 2,
    // A suite may be empty while it is being written; checks/rules fails when one of them is.
    passWithNoTests: true,
    sequence: { sequencer: LongestFirst },
    projects: [
      together(project('source', ['packages/*/src/**/*.test.{ts,tsx}', 'demo/src/**/*.test.ts'], 60_000)),
      ...suites.map((name) => together(project(name, [`checks/${name}/**/*.test.ts`], 120_000))),
      ...inBrowser.map((name) => {
        // A machine that does other work beside makes a browser slow, and some journeys see every page many times.
        const { extends: all, test } = project(name, [`checks/${name}/**/*.test.ts`], 300_000);
        const { lastOf, workers } = browserWork;
        // What is polled is waited for as long as what the browser waits for: a condition that comes late is no fault of the pages.
        const polled = { poll: { timeout: 30_000 } };
        const globalSetup = ['checks/journeys/setUp.ts'];
        const sequence = { groupOrder: lastOf + inBrowser.indexOf(name) };
        return {
          extends: all,
          test: { ...test, sequence, isolate: false, expect: polled, maxWorkers: workers, globalSetup },
        };
      }),
    ],
  },
});
