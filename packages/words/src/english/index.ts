import type { Language } from '../language.ts';
import { commandLine } from './commandLine.ts';
import { engineProblemSentences } from './engineProblems.ts';
import { findings } from './findings.ts';
import { numbers } from './numbers.ts';
import { place } from './place.ts';
import { recordProblemSentences } from './recordProblems.ts';
import { remedies } from './remedies.ts';
import { tableProblemSentences } from './tableProblems.ts';
import { input, source, values, working } from './working.ts';

/** Every text in English. */
export const english: Language = {
  code: 'en',
  name: 'English',
  numbers,
  verdicts: { holds: 'holds', tight: 'tight', short: 'short', unknown: 'unknown', notJudged: 'not judged' },
  stations: { roof: 'roof', gutter: 'gutter', storage: 'tank', treatmentUnit: 'treatment unit', tap: 'tap' },
  severities: {
    blocker: ['blocker', 'blockers'],
    warning: ['warning', 'warnings'],
    note: ['note', 'notes'],
  },
  problems: { ...engineProblemSentences, ...recordProblemSentences, ...tableProblemSentences },
  place,
  findings,
  remedies,
  working,
  input,
  values,
  source,
  cautions: {
    drinking:
      'Water from a roof is not safe to drink until it is treated and tested: ask the health authority. This program judges how much there is, not whether it is safe.',
    otherWater:
      'Other water, from a river or a spring, is worse than roof water: it must be treated before anyone drinks it. Ask the health authority.',
    height: 'Measuring and guttering are work at height: a firm ladder, a second person, never in wind or rain.',
    stand:
      'A full tank weighs a tonne for every 1,000 L: stand and ground are for somebody licensed to judge, by the local code.',
    plans: 'It plans; it does not certify. Rain to come may differ from the record.',
  },
  commandLine,
};
