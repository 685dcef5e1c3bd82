import type { Scenario } from '@eavewell/engine';
import { WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';

const { scenario: words } = spoken.commandLine;

/** The options that put a question to the rain, as they were typed. */
export interface ScenarioOptions {
  readonly wetDays?: string;
  readonly wetDayRain?: string;
  readonly lastYears?: string;
}

/** What the shares may be, and how many years may be asked for. */
const least_fraction = 0.1;
const most_fraction = 3;
const mostYears = 1000;

/** The question asked, or null where none is. */
export function scenarioAsked({ wetDays, wetDayRain, lastYears }: ScenarioOptions): Scenario | null {
  if (wetDays === undefined && wetDayRain === undefined && lastYears === undefined) return null;
  return {
    wetDays_fraction: share('--wet-days', wetDays),
    wetDayRain_fraction: share('--wet-day-rain', wetDayRain),
    lastYears: lastYears === undefined ? null : wholeYears(lastYears),
  };
}

function share(option: string, text: string | undefined): number {
  if (text === undefined) return 1;
  const value = Number(text);
  if (!/^\d*\.?\d+$/.test(text) || value < least_fraction || value > most_fraction)
    throw new WrongUse(words.wrongShare(option, text, least_fraction, most_fraction));
  return value;
}

function wholeYears(text: string): number {
  const value = Number(text);
  if (!/^\d+$/.test(text) || value < 1 || value > mostYears) throw new WrongUse(words.wrongYears(text, mostYears));
  return value;
}
