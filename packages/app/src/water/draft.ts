import type { DayOrder, RemedyChange, Scenario } from '@eavewell/engine';
import { within } from './limits.ts';

/** Measures of gutters, pipes, overflows, stands and taps that can be tried, by whose they are. */
export const fittingMeasures = {
  gutter: ['width_mm', 'fall_mm_per_m', 'outlets_count'],
  downpipe: ['bore_mm'],
  tank: ['overflowBore_mm', 'standHeight_m'],
  site: ['tapHeight_m'],
} as const;
type FittingMeasures = typeof fittingMeasures;

/** One of them changed; `id` is that of the gutter, the downpipe or the tank, and of the site for its taps. */
export type FittingStep = {
  readonly [Of in keyof FittingMeasures]: {
    readonly kind: 'fitting';
    readonly of: Of;
    readonly id: string;
    readonly measure: FittingMeasures[Of][number];
    readonly value: number;
  };
}[keyof FittingMeasures];

/** One thing changed on the drawing or beside it. */
export type DraftStep =
  | { readonly kind: 'tank'; readonly tankId: string; readonly volume_L: number }
  | { readonly kind: 'diameter'; readonly tankId: string; readonly diameter_m: number }
  | { readonly kind: 'overflow'; readonly tankId: string; readonly overflowHeight_m: number }
  | { readonly kind: 'gutter'; readonly roofId: string; readonly gutteredFraction: number }
  | { readonly kind: 'firstFlush'; readonly roofId: string; readonly firstFlush_mm: number }
  | { readonly kind: 'litres'; readonly purpose: string; readonly litres_per_person_per_day: number }
  /** People as they are counted: growth to the design year is added as the site has it. */
  | { readonly kind: 'people'; readonly people: number }
  | FittingStep
  | { readonly kind: 'remedy'; readonly changes: readonly RemedyChange[] };

/** What she has changed and not kept: plain data, so that it goes to a thread as it is. */
export interface Draft {
  /** In the order they were made. */
  readonly steps: readonly DraftStep[];
  /** Steps taken back, the last to be taken back last: they can be made again until another is made. */
  readonly undone: readonly DraftStep[];
}

export const emptyDraft: Draft = { steps: [], undone: [] };

/** A question put to the site; no fact of it, and never kept. */
export interface Question {
  readonly scenario: Scenario;
  /** The order of the day; null: as the settings say. */
  readonly order: DayOrder | null;
}

/** The rain as it was, the order of the settings. */
export const noQuestion: Question = {
  scenario: { wetDays_fraction: 1, wetDayRain_fraction: 1, lastYears: null },
  order: null,
};

/** Is the rain asked to be another? */
export function isRainAsked({ scenario }: Question): boolean {
  return scenario.wetDays_fraction !== 1 || scenario.wetDayRain_fraction !== 1 || scenario.lastYears !== null;
}

/** Is anything asked? */
export function isAsked(question: Question): boolean {
  return question.order !== null || isRainAsked(question);
}

/**
 * The draft with one more step. Its figures are brought into what the tables take; a step that is no number is not made.
 *
 * @param draft - before
 * @param step - the change: volumes [L], lengths [m], shares [fraction], depths [mm], people [person]
 * @returns the draft after; the very same where nothing was made
 */
export function withStep(draft: Draft, step: DraftStep): Draft {
  const made = stepWithin(step);
  return made === null ? draft : { steps: [...draft.steps, made], undone: [] };
}

/** The draft without its last step. */
export function withoutLast(draft: Draft): Draft {
  const last = draft.steps.at(-1);
  if (last === undefined) return draft;
  return { steps: draft.steps.slice(0, -1), undone: [...draft.undone, last] };
}

/** The draft with the step that was taken back last made again. */
export function withAgain(draft: Draft): Draft {
  const last = draft.undone.at(-1);
  if (last === undefined) return draft;
  return { steps: [...draft.steps, last], undone: draft.undone.slice(0, -1) };
}

/** A step whose figure the tables take; null where it is no number. */
export function stepWithin(step: DraftStep): DraftStep | null {
  switch (step.kind) {
    case 'tank': {
      const volume_L = within('volume_L', step.volume_L);
      return volume_L === null ? null : { ...step, volume_L };
    }
    case 'diameter': {
      const diameter_m = within('diameter_m', step.diameter_m);
      return diameter_m === null ? null : { ...step, diameter_m };
    }
    case 'overflow': {
      const overflowHeight_m = within('overflowHeight_m', step.overflowHeight_m);
      return overflowHeight_m === null ? null : { ...step, overflowHeight_m };
    }
    case 'gutter': {
      const gutteredFraction = within('gutteredFraction', step.gutteredFraction);
      return gutteredFraction === null ? null : { ...step, gutteredFraction };
    }
    case 'firstFlush': {
      const firstFlush_mm = within('firstFlush_mm', step.firstFlush_mm);
      return firstFlush_mm === null ? null : { ...step, firstFlush_mm };
    }
    case 'litres': {
      const litres_per_person_per_day = within('litres_per_person_per_day', step.litres_per_person_per_day);
      return litres_per_person_per_day === null ? null : { ...step, litres_per_person_per_day };
    }
    case 'people': {
      const people = within('people', step.people);
      return people === null ? null : { ...step, people };
    }
    case 'fitting': {
      const value = within(step.measure, step.value);
      return value === null ? null : { ...step, value };
    }
    case 'remedy':
      return step;
  }
}
