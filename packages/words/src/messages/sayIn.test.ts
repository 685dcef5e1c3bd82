import { describe, expect, it } from 'vitest';
import { sayIn } from './sayIn.ts';
import type { LanguageTexts, MessageKey, MessageValues } from './texts.ts';

const english: LanguageTexts = {
  language: { code: 'en', name: 'English', direction: 'ltr' },
  sections: {
    app: {
      name: 'Eavewell',
      rows: '{count, plural, one {# row} other {# rows}} of {file}',
      only: 'Only here, for {who}',
      quote: "the site's own",
    },
  },
};

const made = (sections: LanguageTexts['sections'], head: Partial<LanguageTexts['language']> = {}): LanguageTexts => ({
  language: { code: 'xx', name: 'Made up', direction: 'ltr', ...head },
  sections,
});

/** Keys of made-up catalogues, which no compiler knows. */
const loosely = (say: ReturnType<typeof sayIn>) => say as (key: string, values?: MessageValues) => string;

describe('a message', () => {
  const say = loosely(sayIn(english));

  it('is filled, with the form its count takes and its number as people read it', () => {
    expect(say('app.rows', { count: 1, file: 'a.csv' })).toBe('1 row of a.csv');
    expect(say('app.rows', { count: 12_345, file: '{x}' })).toBe('12,345 rows of {x}');
    expect(say('app.quote')).toBe("the site's own");
  });

  it('that nobody wrote, or that is not filled, is our own mistake', () => {
    expect(() => say('app.unheard')).toThrow(/app\.unheard/);
    expect(() => say('app.only')).toThrow(/app\.only/);
    expect(() => say('app.toString')).toThrow(/app\.toString/);
  });

  it('takes the forms of its own language', () => {
    const slavic = made(
      { app: { rows: '{count, plural, one {# wiersz} few {# wiersze} many {# wierszy} other {# wiersza}} {file}' } },
      { code: 'pl' },
    );
    const inSlavic = loosely(sayIn(slavic, english));
    expect([1, 3, 12, 22].map((count) => inSlavic('app.rows', { count, file: '' }).trim())).toEqual([
      '1 wiersz',
      '3 wiersze',
      '12 wierszy',
      '22 wiersze',
    ]);
  });

  it('is said in English where the language lacks it or has it broken', () => {
    const halfDone = loosely(sayIn(made({ app: { name: 'X', only: 'broken {who' } }), english));
    expect(halfDone('app.name')).toBe('X');
    expect(halfDone('app.rows', { count: 2, file: 'f' })).toBe('2 rows of f');
    expect(halfDone('app.only', { who: 'her' })).toBe('Only here, for her');
  });

  it('keeps what runs the other way together', () => {
    const arabic = loosely(sayIn(made({ app: { only: '{who}!' } }, { code: 'ar', direction: 'rtl' }), english));
    expect(arabic('app.only', { who: 'sites.csv (S001)' })).toBe('\u2068sites.csv (S001)\u2069!');
  });

  it('from right to left, too, tells one case from another, whatever it is beside', () => {
    const text = '{how, select, boat {قارب {who}} other {سير {who}}}';
    const deep = '{count, plural, other {{how, select, boat {قارب} other {سير}} {who}}}';
    const arabic = loosely(sayIn(made({ app: { only: text, rows: deep } }, { code: 'ar', direction: 'rtl' }), english));
    expect(arabic('app.only', { how: 'boat', who: 'A' })).toBe('قارب \u2068A\u2069');
    expect(arabic('app.only', { how: 'foot', who: 'A' })).toBe('سير \u2068A\u2069');
    expect(arabic('app.rows', { how: 'boat', who: 'A', count: 3 })).toBe('قارب \u2068A\u2069');
  });

  it('is known by its key, or does not compile', () => {
    const known: MessageKey = 'app.name';
    // @ts-expect-error no such key
    const unknown: MessageKey = 'app.unheard';
    expect([known, unknown]).toHaveLength(2);
  });
});
