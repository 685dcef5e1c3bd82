import type { Problem, StationVerdict, WorkingLine } from '@eavewell/engine';
import type { Language } from './language.ts';
import { english } from './languageOf.ts';
import { verdictMarks } from './marks.ts';
import type { ProblemCode, ProblemSentence } from './problems.ts';
import { problemSentences } from './sentences/problemSentences.ts';

export { isMessage, loadTexts } from './catalogues.ts';
export * from './language.ts';
export { english, languageOf, loadLanguage } from './languageOf.ts';
export { verdictMarks } from './marks.ts';
export { type LanguageChoice, languageChoices } from './messages/choices.ts';
export { languageFor, tagAsked } from './messages/languageFor.ts';
export { sayIn } from './messages/sayIn.ts';
export type { LanguageHead, LanguageTexts, MessageKey, MessageValues, Say } from './messages/texts.ts';
export { enoughLitres } from './numbers.ts';
export type { NumberWords } from './numberWords.ts';
export {
  loadPaperLanguage,
  loadPaperTexts,
  paperChoices,
  paperLanguageFor,
  paperSections,
} from './paperLanguages.ts';
export type { ProblemCode, ProblemSentence, Speech, Told } from './problems.ts';
export { questionsPage } from './questionsPage.ts';
export type { RemedyWords } from './remedyWords.ts';
export type { CommandLineWords } from './sentences/commandLine.ts';
export { type PlanNames, planRecordSaid } from './sentences/planMoves.ts';
export {
  headFor,
  languageFileText,
  languageFromFile,
  type SentText,
  type TranslationFault,
  translationRows,
  withTranslations,
} from './translating.ts';

function isKnown(code: string): code is ProblemCode {
  return Object.hasOwn(problemSentences, code);
}

/** What is wrong and what to do, for any problem. A code without a sentence is our own mistake and throws. */
export function problemSentence(problem: Problem, language: Language = english): ProblemSentence {
  if (!isKnown(problem.code)) throw new Error(`no sentence for the problem ${problem.code}`);
  return language.problem(problem.code, problem);
}

/** A verdict as its mark, three characters wide, and its word. */
export function verdictText(verdict: StationVerdict, drawn: boolean, language: Language = english): string {
  const mark = verdictMarks[verdict];
  return `${drawn ? mark.drawn : mark.plain} ${language.verdicts[verdict]}`;
}

/** One line of a working, in words. */
export interface WorkingText {
  readonly label: string;
  readonly value: string;
  readonly formula: string;
  readonly inputs: readonly { readonly label: string; readonly value: string }[];
  readonly source: string;
}

/** How one figure was reached, in words: label, value with unit, formula, inputs and source. */
export function workingText(line: WorkingLine, language: Language = english): WorkingText {
  const { label, formula } = language.working[line.code];
  return {
    label,
    value: valueText(line, language),
    formula,
    inputs: line.inputs.map((one) => ({
      label: language.input(one.name),
      value: inWords(one.value, language) ?? language.numbers.given(one.value, one.unit),
    })),
    source: language.source(line.source),
  };
}

/** A value that is a word of the engine, in words; null where it is none. */
function inWords(value: WorkingLine['value'], language: Language): string | null {
  return typeof value === 'string' ? language.value(value) : null;
}

function valueText(line: WorkingLine, language: Language): string {
  if (line.value === null) return language.say('working.value.none');
  return inWords(line.value, language) ?? language.numbers.quantity(line.value, line.unit);
}

export type { ChlorineSaid } from './sentences/chlorineFindings.ts';
export type { DrainageSaid } from './sentences/drainageFindings.ts';
export type { HeadSaid } from './sentences/headFindings.ts';
export type { SafetySaid } from './sentences/safetyFindings.ts';
export { sectionFindings } from './sentences/sectionFindings.ts';
export { markWords, sectionWords } from './sentences/sectionWords.ts';
export type { SettlingSaid } from './sentences/settlingFindings.ts';
export type { StandSaid } from './sentences/standFindings.ts';
export type { TreatmentSaid } from './sentences/treatmentFindings.ts';
export { type SourceOfRisk, sourceOfRisk } from './sentences/waterOfRisk.ts';
export type { WaterTestsSaid } from './sentences/waterTestsFindings.ts';
export type { WearSaid } from './sentences/wearFindings.ts';
