import { many } from './counted.ts';
import { numbers } from './numbers.ts';

/** A path as it is typed: in quotes where it has spaces or other letters that a terminal takes otherwise. */
export const typed = (path: string): string =>
  /^[\w./\\:~+-]+$/.test(path) || path.startsWith('--data ') ? path : `"${path}"`;

/** A column a header may stand for, and the units or orders one of which must be said with it. */
export interface Choice {
  readonly column: string;
  readonly hows: readonly string[];
}

export type Choices = readonly [Choice, ...Choice[]];

const setting = (file: string, header: string, { column, hows }: Choice): string => {
  const [first, ...others] = hows.map((how) => `:${how}`);
  return [`--set '${file}:${header}=${column}${first ?? ''}'`, ...others].join(' or ');
};

/** What the command says that matches headers to columns. */
export const columns = {
  /** How a programme of a data folder is typed in place of a folder. */
  dataTyped: (data: string, programme: string | null) =>
    `--data ${typed(data)}${programme === null ? '' : ` --programme ${typed(programme)}`}`,
  nothingWritten: 'Nothing was written.',
  kept: 'Kept',
  saved: (file: string) => `${file}: matched before`,
  notUnderstood: (file: string, count: number) => `${file}: ${many(count, 'header', 'headers')} not understood`,
  allUnderstood: 'Every other header is understood.',
  toAccept: (folder: string) =>
    `Look at each. Nothing is used until it is accepted: eavewell columns ${typed(folder)} --accept`,
  noMatch: (header: string) => `${header}: like none of the columns; its values are left alone`,
  notSure: (header: string, candidates: readonly string[]) => `${header}: perhaps ${candidates.join(', ')}`,
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
    gallon: (file: string, header: string, [likely]: Choices) => `Which gallon? ${setting(file, header, likely)}`,
    dateOrder: (file: string, header: string, [likely]: Choices) =>
      `Day or month first? ${setting(file, header, likely)}`,
    several: (file: string, header: string, choices: Choices) =>
      `It could be more than one. Choose: ${choices.map((choice) => setting(file, header, choice)).join(', or ')}`,
    values: (file: string, header: string, [likely]: Choices) =>
      `Too few of its values fit. Mend them, or: ${setting(file, header, likely)}`,
    unit: (file: string, header: string, [likely]: Choices, unit: string) =>
      `Its unit cannot be converted to ${unit === '' ? 'the column' : unit}. If it is in ${unit}: ${setting(file, header, likely)}`,
  },
  setForm: (text: string) =>
    `--set needs FILE:HEADER=COLUMN, as 'roofs.csv:Roof length=length_m', or SHEET=TABLE; it was given: ${text}`,
  unknownFile: (file: string, near: string) =>
    `${file} is none of the tables.${near === '' ? '' : ` Did you mean ${near}?`} Nothing was written.`,
  unknownHeader: (header: string, file: string, near: string) =>
    `There is no header "${header}" in ${file}.${near === '' ? '' : ` Did you mean "${near}"?`} Nothing was written.`,
};
