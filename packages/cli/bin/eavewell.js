#!/usr/bin/env node
import { existsSync } from 'node:fs';

const built = new URL('../dist/index.js', import.meta.url);
if (existsSync(built)) {
  const { main } = await import(built.href);
  await main();
} else {
  process.stderr.write('Eavewell is not built yet. Type:  npm start\n');
  process.exitCode = 2;
}
