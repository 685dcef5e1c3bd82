import { runTool } from './run.mjs';
import { build, install } from './setUp.mjs';

install();
build();

// How often the ranges hold a truth that is known, over many made records: the table of docs/methods/storage.md.
process.env['EAVEWELL_COVERAGE'] = '1';
process.exitCode = runTool('vitest', ['run', '--project', 'laws', 'checks/laws/ranges']);
