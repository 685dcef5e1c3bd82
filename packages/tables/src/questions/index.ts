export { inspection } from './inspection.ts';
export { type InstallationStep, installationSteps, type StepCaution, stepsOf } from './installationSteps.ts';
export {
  type AnswerMeaning,
  answerMeanings,
  type Question,
  type QuestionKind,
  type QuestionSet,
  questionKinds,
  questionSet,
} from './questionSet.ts';
