import {
  type DesignSettings,
  defaultSettings,
  type Facts,
  type Problem,
  readIsoDay,
  type Target,
} from '@eavewell/engine';
import { expectedText, limitsText } from '../contract/columns.ts';
import { settingsColumns, targetColumns } from '../contract/settings.ts';
import type { Column, Limits } from '../contract/table.ts';
import { nearest } from './nearest.ts';
import { shown } from './readCell.ts';
import { type TableProblemCode, tableProblem } from './tableProblems.ts';

/** Settings as they will be used, and what was wrong with those given. */
export interface SettingsRead {
  readonly settings: DesignSettings;
  readonly problems: readonly Problem[];
}

/** What JSON has no word for is written as in a table: a day as YYYY-MM-DD, and yes or no as such or as true or false. */
function asRead({ kind }: Column<unknown>, value: unknown): unknown {
  if (kind === 'date') return typeof value === 'string' ? readIsoDay(value) : null;
  if (kind === 'yesNo' && (value === 'yes' || value === 'no')) return value === 'yes';
  return value;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A value as it stands in the file. One nested too deep to be written out is only named. */
function written(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value);
  try {
    return shown(JSON.stringify(value) ?? String(value));
  } catch {
    return Array.isArray(value) ? '[…]' : '{…}';
  }
}

/** Settings being read: takes each value as it is asked for, or the default with a blocker that says so. */
class SettingsReader {
  readonly problems: Problem[] = [];
  private readonly file: string;
  constructor(file: string) {
    this.file = file;
  }

  private add(code: TableProblemCode, key: string, facts: Facts): void {
    this.problems.push(tableProblem(code, { file: this.file, column: key }, { key, ...facts }));
  }

  unknownKeys(given: Readonly<Record<string, unknown>>, known: readonly string[], before = ''): void {
    for (const key of Object.keys(given)) {
      if (known.includes(key)) continue;
      const likely = nearest(key, known) ?? '';
      this.add('settings.unknown_key', shown(before + key), { value: written(given[key]), expected: known, likely });
    }
  }

  wrong(key: string, value: unknown, expected: string, used: unknown): void {
    this.add('settings.wrong_value', key, { value: written(value), expected, used: written(used) });
  }

  private unusual(key: string, value: number, column: Column<unknown>, usual: Limits): void {
    if (value >= usual.low && value <= usual.high) return;
    const facts = { value: String(value), expected: limitsText(column, usual), unit: column.unit };
    this.add('settings.unusual', key, { ...facts, low: String(usual.low), high: String(usual.high) });
  }

  take<T>(key: string, value: unknown, column: Column<NonNullable<T>>, standard: T): T {
    if (value === undefined || (value === null && standard === null)) return standard;
    const read = column.schema.safeParse(asRead(column, value));
    if (!read.success) {
      this.wrong(key, value, expectedText(column), standard);
      return standard;
    }
    if (column.usual && typeof read.data === 'number') this.unusual(key, read.data, column, column.usual);
    return read.data;
  }
}

function readTarget(reader: SettingsReader, value: unknown): Target {
  const standard = defaultSettings.target;
  if (value === undefined) return standard;
  if (!isObject(value)) {
    reader.wrong('target', value, Object.keys(targetColumns).join(', '), standard);
    return standard;
  }
  reader.unknownKeys(value, Object.keys(targetColumns), 'target.');
  const take = (key: keyof Target) => reader.take(`target.${key}`, value[key], targetColumns[key], standard[key]);
  return {
    daysMet_fraction: take('daysMet_fraction'),
    longestDryRun_days: take('longestDryRun_days'),
    goodYears_fraction: take('goodYears_fraction'),
  };
}

/**
 * Which settings does a programme have? Those it states; for the rest the defaults, and for a wrong one the default too, with
 * a blocker that names the value found and the one used.
 *
 * @param given - what settings.json holds, already parsed
 * @param file - its name, for the places of problems [text]
 * @returns the settings to use, with every problem
 * @problem settings.wrong_value - not of the kind or range asked for
 * @problem settings.unknown_key - no such setting
 * @definition ours: defaults in the engine's defaultSettings
 */
export function readSettings(given: unknown, file = 'settings.json'): SettingsRead {
  const reader = new SettingsReader(file);
  if (!isObject(given)) {
    reader.wrong('', given, 'an object { … }', 'the defaults');
    return { settings: defaultSettings, problems: reader.problems };
  }
  reader.unknownKeys(given, ['target', ...Object.keys(settingsColumns)]);
  const take = <K extends keyof typeof settingsColumns>(key: K) =>
    reader.take<DesignSettings[K]>(
      key,
      given[key],
      settingsColumns[key] as Column<NonNullable<DesignSettings[K]>>,
      defaultSettings[key],
    );
  const flat = Object.keys(settingsColumns).map((key) => [key, take(key as keyof typeof settingsColumns)]);
  const settings: DesignSettings = {
    ...defaultSettings,
    target: readTarget(reader, given['target']),
    ...(Object.fromEntries(flat) as Partial<DesignSettings>),
  };
  return { settings, problems: reader.problems };
}
