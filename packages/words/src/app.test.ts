import { describe, expect, it } from 'vitest';
import { appLanguages, languageFor, loadAppLanguage } from './app.ts';

describe('the words of the app', () => {
  it('are loaded in a language, with its direction and numbers', async () => {
    const spanish = await loadAppLanguage('es');
    expect([spanish.code, spanish.name, spanish.direction]).toEqual(['es', 'español', 'ltr']);
    expect(spanish.say('app.skip')).toBe('Ir a la página');
    expect(spanish.numbers.litres(16_400)).toBe('16\u00a0400 L');
    expect(spanish.numbers.days(7.5)).toBe('7,5 días');
    expect(spanish.numbers.date('2010-07-20')).toBe('20 de julio de 2010');
    expect(spanish.numbers.parse('7.5')).toEqual({ kind: 'number', value: 7.5 });
    expect(spanish.numbers.moment('2026-03-01T12:00:00Z')).toMatch(/1 de marzo de 2026/);
    expect(spanish.numbers.moment('one day')).toBe('one day');
    const english = await loadAppLanguage('en');
    expect(english.say('app.skip')).toBe('Skip to the page');
    expect(english.numbers.likelyNextYears({ low: 23, high: 30 }, 31)).toBe('likely 23 to 30 of the next 31');
  });

  it('keep the forms of a region, and English where there is no such language', async () => {
    const mexican = await loadAppLanguage('es-MX');
    expect([mexican.code, mexican.numbers.decimalMark, mexican.numbers.days(7.5)]).toEqual(['es-MX', '.', '7.5 días']);
    expect((await loadAppLanguage('tlh')).say('app.skip')).toBe('Skip to the page');
    expect((await loadAppLanguage('not a tag')).code).toBe('en');
  });

  it('are looked up by the nearest tag', () => {
    expect(['es', 'ES-pe', 'es_419', 'en-GB', 'fr', '', '*'].map((tag) => languageFor(tag)?.code ?? null)).toEqual([
      'es',
      'es',
      'es',
      'en',
      null,
      null,
      null,
    ]);
    expect(appLanguages.map(({ code }) => code).slice(0, 2)).toEqual(['en', 'es']);
  });
});
