import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** A path as it is typed: in quotes where it has spaces or other letters that a terminal takes otherwise. */
export const typed = (path: string): string =>
  /^[\w./\\:~+-]+$/.test(path) || path.startsWith('--data ') ? path : `"${path}"`;

/** A column a header may stand for, and the units or orders one of which must be said with it. */
export interface Choice {
  readonly column: string;
  readonly hows: readonly string[];
}

export type Choices = readonly [Choice, ...Choice[]];

/** What to type for a header, with each unit or order it may have. */
const settingIn =
  ({ say }: Speech) =>
  (file: string, header: string, { column, hows }: Choice): string => {
    const [first, ...others] = hows.map((how) => `:${how}`);
    return [`--set '${file}:${header}=${column}${first ?? ''}'`, ...others].reduce((one, other) =>
      say('commandLine.columns.or', { one, other }),
    );
  };

/** What the command says that matches headers to columns. */
// long: the words of one command, a line or two each
export const columnsIn = ({ say, numbers }: Speech) => ({
  /** How a programme of a data folder is typed in place of a folder. */
  dataTyped: (data: string, programme: string | null) =>
    `--data ${typed(data)}${programme === null ? '' : ` --programme ${typed(programme)}`}`,
  nothingWritten: say('commandLine.columns.nothingWritten'),
  kept: say('commandLine.columns.kept'),
  saved: (file: string) => say('commandLine.columns.saved', { file }),
  notUnderstood: (file: string, count: number) => say('commandLine.columns.notUnderstood', { file, count }),
  allUnderstood: say('commandLine.columns.allUnderstood'),
  toAccept: (folder: string) => say('commandLine.columns.toAccept', { folder: typed(folder) }),
  noMatch: (header: string) => say('commandLine.columns.noMatch', { header }),
  notSure: (header: string, candidates: readonly string[]) =>
    say('commandLine.columns.notSure', { header, candidates: candidates.join(', ') }),
  sheetIs: (sheet: string, ours: string | null) =>
    say('commandLine.columns.sheetIs', { hasOurs: yes(ours !== null), sheet, ours: ours ?? '' }),
  sheetUnknown: (sheet: string) => say('commandLine.columns.sheetUnknown', { sheet }),
  sheetOfGauge: say('commandLine.columns.sheetOfGauge'),
  sheetWhy: { name: say('commandLine.columns.sheetWhy.name'), headers: say('commandLine.columns.sheetWhy.headers') },
  whichGauge: (sheet: string, gauges: readonly string[]) =>
    gauges.length === 0
      ? say('commandLine.columns.whichGauge.none', { sheet })
      : say('commandLine.columns.whichGauge', { gauges: gauges.slice(0, 5).join(', '), sheet, gauge: gauges[0] ?? '' }),
  otherSheets: (names: readonly string[]) =>
    say('commandLine.columns.otherSheets', { names: names.join(', '), sheet: names[0] ?? '' }),
  unknownSheet: (sheet: string, near: string) =>
    say('commandLine.columns.unknownSheet', { sheet, hasNear: yes(near !== ''), near }),
  why: {
    sameWords: say('commandLine.columns.why.sameWords'),
    someWords: say('commandLine.columns.why.someWords'),
    spelling: say('commandLine.columns.why.spelling'),
    unit: say('commandLine.columns.why.unit'),
    ownName: say('commandLine.columns.why.ownName'),
  },
  fits: (fits: number, looked: number) =>
    say('commandLine.columns.fits', { fits: numbers.quantity(fits, 'number'), looked }),
  noValues: say('commandLine.columns.noValues'),
  unitNotSaid: (unit: string) => say('commandLine.columns.unitNotSaid', { unit }),
  open: {
    gallon: (file: string, header: string, [likely]: Choices) =>
      say('commandLine.columns.open.gallon', { setting: settingIn({ say, numbers })(file, header, likely) }),
    dateOrder: (file: string, header: string, [likely]: Choices) =>
      say('commandLine.columns.open.dateOrder', { setting: settingIn({ say, numbers })(file, header, likely) }),
    several: (file: string, header: string, choices: Choices) =>
      say('commandLine.columns.open.several', {
        choices: choices
          .map((choice) => settingIn({ say, numbers })(file, header, choice))
          .reduce((one, other) => say('commandLine.columns.orElse', { one, other })),
      }),
    values: (file: string, header: string, [likely]: Choices) =>
      say('commandLine.columns.open.values', { setting: settingIn({ say, numbers })(file, header, likely) }),
    unit: (file: string, header: string, [likely]: Choices, unit: string) =>
      say('commandLine.columns.open.unit', {
        hasUnit: yes(unit !== ''),
        unit,
        setting: settingIn({ say, numbers })(file, header, likely),
      }),
  },
  setForm: (text: string) => say('commandLine.columns.setForm', { text }),
  unknownFile: (file: string, near: string) =>
    say('commandLine.columns.unknownFile', { file, hasNear: yes(near !== ''), near }),
  unknownHeader: (header: string, file: string, near: string) =>
    say('commandLine.columns.unknownHeader', { header, file, hasNear: yes(near !== ''), near }),
});
