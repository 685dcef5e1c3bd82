import { expect, it } from 'vitest';
import { changedTexts, messagesOf, textsOf } from './messages.ts';

const loud = (message: string) => changedTexts(message, (text) => text.toUpperCase());

it('changes what is read in a message and nothing else', () => {
  expect(loud('all saved')).toBe('ALL SAVED');
  expect(loud('{from} to {to, number} L')).toBe('{from} TO {to, number} L');
  expect(loud('{count, plural, =0 {no sites} one {# site of {name}} other {# sites}} now')).toBe(
    '{count, plural, =0 {NO SITES} one {# SITE OF {name}} other {# SITES}} NOW',
  );
  expect(loud('{kind, select, roof {the roof} other {it}}')).toBe('{kind, select, roof {THE ROOF} other {IT}}');
  expect(loud("it''s '{' one '}' of {two}")).toBe("IT''S '{' ONE '}' OF {two}");
  expect(textsOf('{count, plural, one {# site} other {# sites}} now')).toEqual(['# site', '# sites', 'now']);
});

it('leaves every message of English as it is where nothing is to be changed', () => {
  const messages = messagesOf('en');
  expect(messages.length).toBeGreaterThan(100);
  expect(messages.filter((message) => changedTexts(message, (text) => text) !== message)).toEqual([]);
});
