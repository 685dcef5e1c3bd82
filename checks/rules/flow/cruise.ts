import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { cruisedFolders } from '../../../setup/run.mjs';

const tool = fileURLToPath(
  new URL('../../../node_modules/dependency-cruiser/bin/dependency-cruise.mjs', import.meta.url),
);
const rules = fileURLToPath(new URL('../../../.dependency-cruiser.cjs', import.meta.url));

/** What the cruise of a tree saw, and every breach as `rule: from`. */
export interface Cruise {
  readonly modules: number;
  readonly dependencies: number;
  readonly breaches: readonly string[];
}

interface Report {
  readonly summary: {
    readonly totalCruised: number;
    readonly totalDependenciesCruised?: number;
    readonly violations: readonly { readonly rule: { readonly name: string }; readonly from: string }[];
  };
}

/** Cruises a tree with the repository's own rules, as `npm test` does. */
export function cruise(folder: string): Cruise {
  const ended = spawnSync(process.execPath, [tool, '--config', rules, '--output-type', 'json', ...cruisedFolders], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (!ended.stdout.startsWith('{')) throw new Error(`The cruise did not run: ${ended.stderr}`);
  const { summary } = JSON.parse(ended.stdout) as Report;
  return {
    modules: summary.totalCruised,
    dependencies: summary.totalDependenciesCruised ?? 0,
    breaches: [...new Set(summary.violations.map(({ rule, from }) => `${rule.name}: ${from}`))].sort(),
  };
}
