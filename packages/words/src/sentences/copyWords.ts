import type { Speech } from '../problems.ts';

/** What is said where a programme is written anew, or one is made to try things on. */
export const convertIn = ({ say }: Speech) => ({
  book: (path: string, sheets: number, rows: number, days: number) =>
    say('commandLine.convert.book', { path, sheets, rows, days }),
  folder: (path: string, files: number, rows: number, days: number) =>
    say('commandLine.convert.folder', { path, files, rows, days }),
  told: say('commandLine.convert.told'),
  onlyTo: (path: string) => say('commandLine.convert.onlyTo', { path }),
  onItself: say('commandLine.convert.onItself'),
  notThere: (path: string) => say('commandLine.convert.notThere', { path }),
});

export const demoIn = ({ say }: Speech) => ({
  made: (count: number, gauges: number, folder: string) => say('commandLine.demo.made', { count, gauges, folder }),
  faults: (count: number) => say('commandLine.demo.faults', { count }),
  next: say('commandLine.demo.next'),
  notEmpty: (folder: string) => say('commandLine.demo.notEmpty', { folder }),
  notAFolder: (folder: string) => say('commandLine.demo.notAFolder', { folder }),
  wholeSites: say('commandLine.demo.wholeSites'),
  wholeSeed: say('commandLine.demo.wholeSeed'),
});
