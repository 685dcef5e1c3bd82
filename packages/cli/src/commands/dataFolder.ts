import { homedir } from 'node:os';
import { join } from 'node:path';
import type { Surroundings } from '../print/terminal.ts';

/** Where a person's own programmes are kept, where no folder is named: as each system has it. EAVEWELL_DATA names another. */
export function dataFolderOf({ env, platform }: Pick<Surroundings, 'env' | 'platform'>): string {
  const own = env['EAVEWELL_DATA'];
  if (own) return own;
  const home = env['HOME'] || homedir();
  if (platform === 'win32') return join(env['LOCALAPPDATA'] || join(home, 'AppData', 'Local'), 'Eavewell');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Eavewell');
  return join(env['XDG_DATA_HOME'] || join(home, '.local', 'share'), 'eavewell');
}
