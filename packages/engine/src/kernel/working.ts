import type { Range } from './range.ts';
import { chlorineWorkings } from './roomWorkings/chlorine.ts';
import { costWorkings } from './roomWorkings/cost.ts';
import { drainageWorkings } from './roomWorkings/drainage.ts';
import { headWorkings } from './roomWorkings/head.ts';
import { kitWorkings } from './roomWorkings/kit.ts';
import { loadsWorkings } from './roomWorkings/loads.ts';
import { moneyWorkings } from './roomWorkings/money.ts';
import { rolloutWorkings } from './roomWorkings/rollout.ts';
import { safetyWorkings } from './roomWorkings/safety.ts';
import { settlingWorkings } from './roomWorkings/settling.ts';
import { standWorkings } from './roomWorkings/stand.ts';
import { stormWorkings } from './roomWorkings/storm.ts';
import { treatmentWorkings } from './roomWorkings/treatment.ts';
import { waterTestsWorkings } from './roomWorkings/waterTests.ts';
import { wearWorkings } from './roomWorkings/wear.ts';

/** Every step a working can hold, in the order of the water's path. The words package has a label and a formula in words for each. */
export const workingCodes = [
  'rain.years',
  'rain.filled',
  'rain.made',
  'rain.byDistance',
  'rain.mean',
  'roof.area',
  'roof.runoff',
  'roof.firstFlush',
  'roof.inflow',
  ...stormWorkings,
  ...drainageWorkings,
  ...settlingWorkings,
  'people.designYear',
  'storage.group',
  'people.presence',
  'people.judgedDemand',
  'people.highestDemand',
  'people.otherDemand',
  'people.backwash',
  'storage.volume',
  'storage.order',
  'storage.rationedDays',
  'storage.dryDays',
  'storage.dryDaysRange',
  'storage.daysMet',
  'storage.goodYears',
  'storage.goodYearsRange',
  'storage.goodYearsNext',
  'storage.tankForDays',
  'storage.tankForRuns',
  'storage.tankForTarget',
  'storage.catalogueTank',
  'storage.tankToHold',
  'storage.shortfall',
  'storage.otherShort',
  'storage.yieldBeforeSpill',
  'storage.secondSource',
  'storage.firstService',
  'storage.verdict',
  ...standWorkings,
  ...headWorkings,
  ...treatmentWorkings,
  ...wearWorkings,
  ...waterTestsWorkings,
  ...chlorineWorkings,
  ...safetyWorkings,
  ...kitWorkings,
  ...loadsWorkings,
  ...moneyWorkings,
  ...costWorkings,
  ...rolloutWorkings,
] as const;
export type WorkingCode = (typeof workingCodes)[number];

/** Something a figure was made from. `name` is a key of the words package. */
export interface WorkingInput {
  readonly name: string;
  readonly value: number | string;
  readonly unit: string;
  /** Cells of the programme's tables that it is taken from: the first of them that is entered. */
  readonly from?: readonly CellName[];
}

/** A cell of the programme's tables; of the settings the key is the setting, and the column as well. */
export interface CellName {
  readonly table: string;
  readonly key: string;
  readonly column: string;
}

/** One line of a working: how one figure was reached. `code` names its label and its formula in words, in the words package. */
export interface WorkingLine {
  readonly code: WorkingCode;
  readonly value: number | string | Range | null;
  readonly unit: string;
  readonly inputs: readonly WorkingInput[];
  /** `id, place` of docs/sources.json, or `survey`, `gauge`, `settings`, `definition`. */
  readonly source: string;
}

/** Input of a working line, by name, value and unit, and the cells it is taken from. */
export function workingInput(name: string, value: number | string, unit: string, ...from: CellName[]): WorkingInput {
  return from.length === 0 ? { name, value, unit } : { name, value, unit, from };
}

/** A cell by its table, row and column. */
export function cellName(table: string, key: string, column: string): CellName {
  return { table, key, column };
}

/**
 * Writes down one step of a working and hands the value on, so that a figure is computed once and explained where it is computed.
 *
 * @param lines - the working so far; the new line is added at its end
 * @param line - the step: code, value [unit as given], inputs and source
 * @returns the value of the line, unchanged [unit as given]
 * @definition ours
 */
export function explain<T extends number | string | Range | null>(
  lines: WorkingLine[],
  line: WorkingLine & { readonly value: T },
): T {
  lines.push(line);
  return line.value;
}
