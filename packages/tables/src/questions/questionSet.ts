import { z } from 'zod';

const id = z.string().regex(/^[a-z][A-Za-z0-9]{0,63}$/);
/** The key of a message of the words package. */
const textKey = z.string().regex(/^questions\.[A-Za-z0-9.]+$/);

/** How a question is answered. */
export const questionKinds = ['choice', 'yesNo', 'number', 'text'] as const;
export type QuestionKind = (typeof questionKinds)[number];

/** What an answer comes to: all well; to be mended; stop, people can be hurt or made ill before it is. */
export const answerMeanings = ['good', 'mend', 'stop'] as const;
export type AnswerMeaning = (typeof answerMeanings)[number];

const choice = z.strictObject({ id, textKey, meaning: z.enum(answerMeanings) });

const question = z
  .strictObject({
    id,
    kind: z.enum(questionKinds),
    textKey,
    /** What a number is in. */
    unit: z.string().nullable(),
    /** The words one chooses from: of a choice two or more, of yes and no both, else none. */
    choices: z.array(choice),
    /** Asked only where there is one; null: always. */
    onlyWith: z.enum(['gutter', 'diverter', 'stand', 'tieDown']).nullable(),
  })
  .refine(({ kind, choices }) => (kind === 'choice' ? choices.length >= 2 : kind !== 'yesNo' || isYesNo(choices)), {
    message: 'the choices do not fit the kind',
  })
  .refine(({ kind, choices }) => kind === 'choice' || kind === 'yesNo' || choices.length === 0, {
    message: 'a number or a text has no choices',
  })
  .refine(({ kind, unit }) => kind === 'number' || unit === null, { message: 'only a number has a unit' });

function isYesNo(choices: readonly { readonly id: string }[]): boolean {
  return choices.map((one) => one.id).join(' ') === 'yes no';
}

/** The questions of one round, in the order they are asked. Texts are keys of messages, never HTML. */
export const questionSet = z
  .strictObject({ id, textKey, questions: z.array(question).min(1) })
  .refine(({ questions }) => new Set(questions.map((one) => one.id)).size === questions.length, {
    message: 'two questions have one id',
  });

export type QuestionSet = z.infer<typeof questionSet>;
export type Question = QuestionSet['questions'][number];
