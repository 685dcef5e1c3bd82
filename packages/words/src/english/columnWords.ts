import { many } from './counted.ts';
import { numbers } from './numbers.ts';

/** A path as it is typed: in quotes where it has spaces or other letters that a terminal takes otherwise. */
export const typed = (path: string): string => (/^[\w./\\:~+-]+$/.test(path) ? path : `"${path}"`);

const setting = (file: string, header: string, column: string, how: string): string =>
  `--set '${file}:${header}=${column}${how}'`;

/** What the command says that matches headers to columns. */
export const columns = {
  nothingWritten: 'Nothing was written.',
  kept: 'Kept',
  saved: (file: string) => `${file}: matched before`,
  notUnderstood: (file: string, count: number) => `${file}: ${many(count, 'header', 'headers')} not understood`,
  allUnderstood: 'Every other header is understood.',
  toAccept: (folder: string) =>
    `Look at each. Nothing is used until it is accepted: eavewell columns ${typed(folder)} --accept`,
  noMatch: (header: string) => `${header}: like none of the columns; its values are left alone`,
  notSure: (header: string, candidates: readonly string[]) => `${header}: perhaps ${candidates.slice(0, 3).join(', ')}`,
  sheetIs: (sheet: string, ours: string | null) =>
    ours === null ? `sheet "${sheet}": left alone` : `sheet "${sheet}" → ${ours}`,
  sheetUnknown: (sheet: string) => `Sheet "${sheet}" is not called as a table`,
  sheetOfGauge: 'the readings of one gauge',
  sheetWhy: { name: 'its name says so', headers: 'its headers are like those of the table' },
  whichGauge: (sheet: string, gauges: readonly string[]) =>
    gauges.length === 0
      ? `Of which gauge? Add a sheet gauges (gaugeId, name) with it first, then: --set '${sheet}=rain ID', with its gaugeId`
      : `Of which gauge (${gauges.slice(0, 5).join(', ')})? --set '${sheet}=rain ${gauges[0]}'`,
  otherSheets: (names: readonly string[]) =>
    `Like none of the tables, left alone: ${names.join(', ')}. If one is: --set '${names[0]}=TABLE'`,
  unknownSheet: (sheet: string, near: string) =>
    `There is no sheet "${sheet}".${near === '' ? '' : ` Did you mean "${near}"?`} Nothing was written.`,
  why: {
    sameWords: 'the same words',
    someWords: 'some of the same words',
    spelling: 'nearly the same spelling',
    unit: 'the unit stands in the header',
    ownName: 'the right name, but its dates stand in another order',
  },
  fits: (fits: number, looked: number) =>
    `${numbers.quantity(fits, 'number')} of ${many(looked, 'value', 'values')} fit`,
  noValues: 'no values to look at',
  unitNotSaid: (unit: string) => `the header names no unit: it would be read in ${unit}`,
  open: {
    gallon: (file: string, header: string, column: string) =>
      `Which gallon? ${setting(file, header, column, ':usgal')} or :impgal`,
    dateOrder: (file: string, header: string, column: string) =>
      `Day or month first? ${setting(file, header, column, ':dmy')} or :mdy`,
    several: (file: string, header: string, column: string) =>
      `It could be more than one. Choose: ${setting(file, header, column, '')}`,
    values: (file: string, header: string, column: string) =>
      `Too few of its values fit. Mend them, or: ${setting(file, header, column, '')}`,
    unit: (file: string, header: string, column: string, unit: string) =>
      `Its unit cannot be converted to ${unit === '' ? 'the column' : unit}. If it is in ${unit}: ${setting(file, header, column, '')}`,
  },
  setForm: (text: string) =>
    `--set needs FILE:HEADER=COLUMN, as 'roofs.csv:Roof length=length_m', or SHEET=TABLE; it was given: ${text}`,
  unknownFile: (file: string, near: string) =>
    `${file} is none of the tables.${near === '' ? '' : ` Did you mean ${near}?`} Nothing was written.`,
  unknownHeader: (header: string, file: string, near: string) =>
    `There is no header "${header}" in ${file}.${near === '' ? '' : ` Did you mean "${near}"?`} Nothing was written.`,
};
