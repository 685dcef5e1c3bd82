import type { ChartColumn } from '@eavewell/drawing';
import type { AppLanguage, AppMessageKey } from '@eavewell/words/app';
import { monthName } from './chartWords.ts';

/** How a column of a chart's table is headed and read. */
export interface ColumnWords {
  readonly key: string;
  readonly head: string;
  said(value: number | string): string;
}

const ofMonth = /^dryInMonth(\d+)_days$/;
const ofFlow = /^(caught|judgedTaken|otherTaken|spilled|secondSource|short)(Low|High)?_L$/;
const isYesNo = new Set(['judged', 'dry', 'isOverTarget']);
const rainIs = { measured: 'measured', filled: 'days_filled', unknown: 'days_unknown', made: 'days_made' } as const;

/**
 * A column of a chart's table in words.
 *
 * @param column - its key and unit
 * @param language - the language of the page
 */
export function columnWords(
  { key, unit }: ChartColumn,
  language: Pick<AppLanguage, 'say' | 'numbers' | 'code'>,
): ColumnWords {
  const { say, numbers } = language;
  const month = ofMonth.exec(key);
  const flow = ofFlow.exec(key);
  const figure = (value: number | string) => {
    if (typeof value === 'string') return numbers.date(value);
    if (key === 'month') return monthName(language, value, 'short');
    if (key === 'waterYear') return String(value);
    if (isYesNo.has(key)) return value === 1 ? say('water.yes') : '';
    return numbers.quantity(value, unit);
  };
  if (month) return { key, head: monthName(language, Number(month[1]), 'short'), said: figure };
  if (flow) {
    const name = say(`water.flow_${flow[1] as 'caught'}`);
    const end = flow[2] === undefined ? null : say(flow[2] === 'Low' ? 'water.col_low' : 'water.col_high');
    return { key, head: end === null ? name : `${name}, ${end}`, said: figure };
  }
  const head = say(`water.col_${key}` as AppMessageKey, {});
  if (key !== 'rainIs') return { key, head, said: figure };
  return { key, head, said: (value) => say(`water.${rainIs[value as keyof typeof rainIs]}`) };
}
