import { many, sites } from './counted.ts';

/** What is said where a programme is written anew, or one is made to try things on. */
export const convert = {
  book: (path: string, sheets: number, rows: number, days: number) =>
    `Wrote ${path}: ${many(sheets, 'sheet', 'sheets')}, ${many(rows, 'row', 'rows')} and ${many(days, 'day', 'days')} of rain.`,
  folder: (path: string, files: number, rows: number, days: number) =>
    `Wrote ${path}: ${many(files, 'file', 'files')}, ${many(rows, 'row', 'rows')} and ${many(days, 'day', 'days')} of rain.`,
  told: 'Left, or carried over otherwise',
  onlyTo: (path: string) => `${path} cannot be written: TO is only a folder or a workbook .xlsx. Name one of these.`,
  onItself: 'FROM and TO are the same. Name another place to write to.',
  notThere: (path: string) => `There is no folder or workbook ${path}. Check the path.`,
};

export const demo = {
  made: (count: number, gauges: number, folder: string) =>
    `Made ${sites(count)} and ${many(gauges, 'gauge', 'gauges')} in ${folder}. Every place and name is invented.`,
  faults: (count: number) =>
    count === 0 ? 'No faults are planted.' : `${many(count, 'fault is', 'faults are')} planted.`,
  next: 'Next:',
  notEmpty: (folder: string) =>
    `The folder ${folder} is not empty. Name a new folder, or empty it yourself; nothing was written.`,
  notAFolder: (folder: string) => `${folder} is a file. Name a new folder; nothing was written.`,
  wholeSites: 'How many sites must be a whole number from 1 to 100000.',
  wholeSeed: 'The seed must be a whole number.',
};
