import { type AnswerMeaning, type Question, type QuestionSet, questionSet } from './questionSet.ts';

const key = (...parts: readonly string[]) => ['questions', 'inspection', ...parts].join('.');

function asked(
  id: string,
  choices: Readonly<Record<string, AnswerMeaning>>,
  onlyWith: Question['onlyWith'] = null,
): Question {
  const words = Object.keys(choices);
  return {
    id,
    kind: words.join(' ') === 'yes no' ? 'yesNo' : 'choice',
    textKey: key(id),
    unit: null,
    choices: words.map((word) => ({ id: word, textKey: key(id, word), meaning: choices[word]! })),
    onlyWith,
  };
}

/**
 * What is looked at on a round of a site: screens against leaves and mosquitoes, lid, gutters, first flush, stand, tie-downs, platform of the taps.
 * Mosquitoes breed in standing water that is not screened; a stand that cracks, leans or is washed out comes down. Which questions, and what an
 * answer comes to, is ours, after hydraulics of screens and stands (docs/methods/stand.md) and common practice, no source.
 */
export const inspection: QuestionSet = questionSet.parse({
  id: 'inspection',
  textKey: key('title'),
  questions: [
    asked('gutterScreen', { clean: 'good', blocked: 'mend', torn: 'mend', none: 'mend' }, 'gutter'),
    asked('gutterWater', { none: 'good', some: 'mend', larvae: 'stop' }, 'gutter'),
    asked('inletScreen', { whole: 'good', blocked: 'mend', torn: 'stop', none: 'stop' }),
    asked('overflowScreen', { whole: 'good', torn: 'stop', none: 'stop' }),
    asked('lid', { closed: 'good', gaps: 'mend', open: 'stop' }),
    asked('larvae', { yes: 'stop', no: 'good' }),
    asked('firstFlush', { empty: 'good', full: 'mend', dirty: 'mend' }, 'diverter'),
    asked('standCracks', { yes: 'stop', no: 'good' }, 'stand'),
    asked('standLeans', { yes: 'stop', no: 'good' }, 'stand'),
    asked('standScour', { yes: 'stop', no: 'good' }, 'stand'),
    asked('tieDowns', { tight: 'good', loose: 'mend', missing: 'stop' }, 'tieDown'),
    asked('tapPlatform', { dry: 'good', wet: 'mend', broken: 'mend', none: 'mend' }),
  ],
});
