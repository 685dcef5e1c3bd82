import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What the command for packs says. */
export const packPageIn = ({ say }: Speech) => ({
  working: (done: number, all: number) => say('commandLine.pack.working', { done, all }),
  made: (count: number, pages: number, folder: string) => say('commandLine.pack.made', { count, pages, folder }),
  shortened: (count: number) => say('commandLine.pack.shortened', { count }),
  notMade: (count: number) => say('commandLine.pack.notMade', { count }),
  isThere: (file: string, count: number) => say('commandLine.pack.isThere', { file, count }),
  unknownCarrier: (id: string, near: readonly string[]) =>
    say('commandLine.pack.unknownCarrier', { id, hasNear: yes(near.length > 0), near: near.join(', ') }),
  help: say('commandLine.pack.help'),
  outHelp: say('commandLine.pack.outHelp'),
  byHelp: say('commandLine.pack.byHelp'),
  overwriteHelp: say('commandLine.pack.overwriteHelp'),
  examples: say('commandLine.pack.examples'),
});
