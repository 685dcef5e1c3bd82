import { answerMeanings, inspection } from '@eavewell/tables';
import { expect, it } from 'vitest';
import { isMessage, loadLanguage } from './index.ts';
import { questionsPage } from './questionsPage.ts';

it('every question and every answer has its text', () => {
  const keys = [
    inspection.textKey,
    ...inspection.questions.flatMap((one) => [one.textKey, ...one.choices.map((c) => c.textKey)]),
  ];
  expect(keys.length).toBeGreaterThan(30);
  expect(keys.filter((key) => !isMessage(key))).toEqual([]);
  const apart = inspection.questions.flatMap(({ onlyWith }) =>
    onlyWith === null ? [] : [`questions.onlyWith.${onlyWith}`],
  );
  expect(
    [...apart, ...answerMeanings.map((one) => `questions.meaning.${one}`)].filter((key) => !isMessage(key)),
  ).toEqual([]);
});

it('the page lists every question with its answers', async () => {
  const page = questionsPage();
  const english = await loadLanguage('en');
  for (const { textKey, choices } of inspection.questions)
    for (const key of [textKey, ...choices.map((one) => one.textKey)])
      if (isMessage(key)) expect(page).toContain(english.say(key));
});
