import { describe, expect, it } from 'vitest';
import { english, languageChoices, languageFor, loadLanguage, translationRows } from './index.ts';
import { loadPaperLanguage, loadPaperTexts, paperChoices, paperLanguageFor, paperSections } from './paperLanguages.ts';

const codes = ['ar', 'hi'] as const;

/** What stands where a formatter puts a unit, without its number. */
const unitOf = (code: string, unit: string, count: number) =>
  new Intl.NumberFormat(code, { style: 'unit', unit, unitDisplay: 'long', numberingSystem: 'latn' })
    .formatToParts(count)
    .filter(({ type }) => type === 'unit')
    .map(({ value }) => value)
    .join('');

describe('languages for paper alone', () => {
  it('are offered for what is printed, and not for pages and terminal', () => {
    expect(paperChoices.map(({ code }) => code)).toEqual(['en', 'es', 'ar', 'hi']);
    expect(paperChoices.find(({ code }) => code === 'ar')).toEqual({ code: 'ar', name: 'العربية', direction: 'rtl' });
    expect(languageChoices.map(({ code }) => code)).toEqual(['en', 'es']);
    for (const tag of ['ar', 'hi', 'ar-EG', 'hi-IN']) expect(languageFor(tag)).toBeNull();
    expect(['ar', 'ar_EG', 'hi-IN', 'es', 'en-GB', 'xx', 'a b', ''].map(paperLanguageFor)).toEqual([
      ...['ar', 'ar', 'hi', null, null, null, null, null],
    ]);
  });

  it('are loaded by their tags; a language of the pages is the same on paper', async () => {
    expect(await loadPaperLanguage('es')).toBe(await loadLanguage('es'));
    expect(await loadPaperLanguage('xx')).toBe(english);
    const [arabic, hindi] = [await loadPaperLanguage('ar'), await loadPaperLanguage('hi-IN')];
    expect([arabic.code, arabic.direction, hindi.code, hindi.direction]).toEqual(['ar', 'rtl', 'hi-IN', 'ltr']);
    expect([arabic.verdicts.short, hindi.stations.tap]).toEqual(['لا يكفي', 'नल']);
  });

  for (const code of codes)
    it(`${code} has every message that paper says, and is told where it has not`, async () => {
      const texts = await loadPaperTexts(code);
      expect(translationRows(texts, 'missing').map(({ key }) => key)).toEqual([]);
      expect(paperSections.length).toBeGreaterThan(6);
      const rows = translationRows(texts, 'all').filter(({ key }) =>
        paperSections.includes(key.split('.')[0]! as never),
      );
      expect(rows.length).toBeGreaterThan(240);
      const same = rows.filter(
        ({ english: own, translation }) => own === translation && /\p{L}{3}/u.test(own.replace(/{\w+}/g, '')),
      );
      expect(same.map(({ key }) => key)).toEqual(['units.NTU', 'pack.turbidity']);

      const lacked: string[] = [];
      const language = await loadPaperLanguage(code, (key) => lacked.push(key));
      lacked.length = 0;
      language.numbers.days(3);
      expect(lacked).toEqual([]);
      expect(language.say('app.again')).toBe('Try again');
      expect(lacked).toEqual(['app.again']);
    });

  it('lack what stands in no section of them, and what one of its sections has not', async () => {
    const { language, sections } = await loadPaperTexts('ar');
    const { roof: _, ...stations } = sections['stations']!;
    const less = { language, sections: { ...sections, stations } };
    expect(translationRows(less, 'missing').map(({ key }) => key)).toEqual(['stations.roof']);
  });
});

/*
 * The forms of counts, beside those of the Unicode CLDR (43 and later), as the runtime has them. Arabic writes one and two without a
 * figure; `one` says "a single one" here, so that a figure that is missing is not taken for a fault.
 */
describe('counts', () => {
  const units = { day: 'day', hour: 'h', month: 'month', year: 'year' } as const;

  it('take the six forms of Arabic as CLDR has them', async () => {
    const { say } = await loadPaperLanguage('ar');
    const categories = new Intl.PluralRules('ar').resolvedOptions().pluralCategories;
    expect([...categories].sort()).toEqual(['few', 'many', 'one', 'other', 'two', 'zero']);
    for (const [unit, name] of Object.entries(units))
      for (const count of [0, 2, 3, 10, 11, 99, 100, 1.5]) {
        const amount = count === 2 ? '' : String(count);
        const own = say(`units.${name as 'day'}`, { amount, count })
          .replace(/[\u2068\u2069]/g, '')
          .replace(amount, '');
        const theirs = unitOf('ar', unit, count).trim();
        expect(own.trim(), `${count} ${unit}`).toBe(theirs);
      }
  });

  it('take the two forms of Hindi', async () => {
    const { say, numbers } = await loadPaperLanguage('hi');
    for (const count of [0, 1, 2, 5, 1.5]) {
      expect(say('units.h', { amount: String(count), count })).toBe(`${count} ${unitOf('hi', 'hour', count).trim()}`);
      expect(say('units.day', { amount: String(count), count })).toBe(`${count} ${unitOf('hi', 'day', count).trim()}`);
    }
    expect(numbers.people(1)).toBe('1 व्यक्ति');
    expect(numbers.people(12)).toBe('12 लोग');
    expect(numbers.daysAYear(21.7)).toBe('साल में 21.7 दिन');
  });

  it('stand with figures 0 to 9 and marks of their own', async () => {
    const [{ numbers: arabic }, { numbers: hindi }] = [await loadPaperLanguage('ar'), await loadPaperLanguage('hi')];
    const plain = (text: string) => text.replace(/[\u2068\u2069]/g, '');
    expect(plain(arabic.people(3))).toBe('3 أشخاص');
    expect(plain(arabic.people(11))).toBe('11 شخصًا');
    expect(plain(arabic.people(2))).toBe('شخصان');
    expect(plain(arabic.litres(12_000))).toMatch(/^12\u00a0000 لتر$/);
    expect(hindi.litres(120_000)).toBe('1,20,000 लीटर');
    expect(plain(arabic.date('2026-06-09'))).toMatch(/^9 .+ 2026$/);
    expect(hindi.date('2026-06-09')).toBe('9 जून 2026');
  });
});
