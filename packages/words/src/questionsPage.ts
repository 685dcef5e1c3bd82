import { inspection, type Question } from '@eavewell/tables';
import { isMessage } from './catalogues.ts';
import { english } from './languageOf.ts';

/** A message by a key that a set of questions names; a key without one is our own mistake and throws. */
function said(key: string): string {
  if (!isMessage(key)) throw new Error(`no message ${key}`);
  return english.say(key);
}

function rowOf({ id, textKey, choices, onlyWith }: Question): string {
  const answers = choices.map((one) => `${said(one.textKey)} (${said(`questions.meaning.${one.meaning}`)})`);
  const asked = onlyWith === null ? 'always' : said(`questions.onlyWith.${onlyWith}`);
  return `| \`${id}\` | ${said(textKey)} | ${answers.join('; ')} | ${asked} |`;
}

/** The page of the sets of questions: what is asked on a round, and what each answer comes to. */
export function questionsPage(): string {
  return [
    '# Sets of questions',
    '',
    'Made by `npm run generate` from `packages/tables/src/questions` and the messages of English; do not edit. Texts in other languages stand in `packages/words/languages`, section `questions`.',
    '',
    `## ${said(inspection.textKey)} (\`${inspection.id}\`)`,
    '',
    english.cautions.height,
    '',
    english.cautions.stand,
    '',
    '| id | question | answers, and what each comes to | asked |',
    '|---|---|---|---|',
    ...inspection.questions.map(rowOf),
    '',
  ].join('\n');
}
