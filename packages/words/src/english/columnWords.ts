import { many } from './counted.ts';
import { numbers } from './numbers.ts';

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
    `Look at each. Nothing is used until it is accepted: eavewell columns ${folder} --accept`,
  noMatch: (header: string) => `${header}: like none of the columns; its values are left alone`,
  notSure: (header: string, candidates: readonly string[]) => `${header}: perhaps ${candidates.slice(0, 3).join(', ')}`,
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
    `--set needs FILE:HEADER=COLUMN, as 'roofs.csv:Roof length=length_m'; it was given: ${text}`,
  unknownFile: (file: string, near: string) =>
    `${file} is none of the tables.${near === '' ? '' : ` Did you mean ${near}?`} Nothing was written.`,
  unknownHeader: (header: string, file: string, near: string) =>
    `There is no header "${header}" in ${file}.${near === '' ? '' : ` Did you mean "${near}"?`} Nothing was written.`,
};
