import { describe, expect, it } from 'vitest';
import { loadAppLanguage } from '../app.ts';
import { englishTexts } from '../catalogues.ts';
import { messageFaults } from './checkMessage.ts';
import { messageWith } from './printMessage.ts';
import { pseudoEnds, pseudoTexts } from './pseudo.ts';
import { sayIn } from './sayIn.ts';
import type { MessageKey } from './texts.ts';

describe('the languages nobody speaks', () => {
  it('ask for what English asks for, message by message', () => {
    const { sections } = pseudoTexts(englishTexts, 'en-XA');
    let messages = 0;
    for (const [name, section] of Object.entries(englishTexts.sections))
      for (const [key, message] of Object.entries(section)) {
        const pseudo = sections[name]![key]!;
        expect(
          messageFaults(pseudo, message, 'en').filter(({ kind }) => kind !== 'tooLong'),
          key,
        ).toEqual([]);
        expect(pseudo.startsWith(pseudoEnds.open) && pseudo.endsWith(pseudoEnds.close)).toBe(true);
        messages++;
      }
    expect(messages).toBeGreaterThan(1000);
  });

  it('are a third longer at least, and read to the end', () => {
    const say = sayIn(pseudoTexts(englishTexts, 'en-XA'));
    const english = englishTexts.sections['cautions']!;
    for (const [key, message] of Object.entries(english)) {
      const text = say(`cautions.${key}` as MessageKey);
      expect(text.length).toBeGreaterThan(message.length * 1.3);
      expect(text).not.toMatch(/[aeiou]/);
    }
    expect(say('units.day', { amount: '3', count: 3 })).toBe('⟦3 ðåýš⟧');
  });

  it('come to the app when it asks for them by their tags, one of them from right to left', async () => {
    const [left, right] = [await loadAppLanguage('en-XA'), await loadAppLanguage('ar-XB')];
    expect([left.code, left.direction, right.code, right.direction]).toEqual(['en-XA', 'ltr', 'ar-XB', 'rtl']);
    expect(left.say('app.skip')).toMatch(/^⟦.*⟧$/);
    expect(right.numbers.money(5, 'XTS')).toBe('⟦\u20685\u2069 \u2068XTS\u2069⟧');
  });
});

it('writes a message anew as it was, where nothing is changed', () => {
  for (const message of [
    "plain, with the site's own apostrophe",
    'a {b} of {n, plural, one {# row {c}} other {# rows}} and {d, select, yes { it} other {}}',
    "--set '''{file}:{x}''' '{' \"a\": 1 '}'",
    '{n, plural, =0 {none} other {#}} {m, number}',
  ])
    expect(
      messageWith(
        messageWith(message, (text) => text),
        (text) => text,
      ),
    ).toBe(messageWith(message, (text) => text));
  expect(messageWith("it's {b} '{c}'", (text) => text.toUpperCase())).toBe("IT''S {b} '{'C'}'");
});
