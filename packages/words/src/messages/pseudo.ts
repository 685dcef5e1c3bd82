import { messageWith } from './printMessage.ts';
import type { PseudoTag } from './pseudoTags.ts';
import type { LanguageHead, LanguageTexts } from './texts.ts';

const accented: Readonly<Record<string, string>> = Object.fromEntries(
  [...'AÅBƁCÇDÐEÉGĜHĤIÎJĴKĶLĻNÑOÖRŔSŠTŢUÛWŴYÝZŽaåbƀcçdðeégĝhĥiîjĵkķlļnñoörŕsštţuûwŵyýzž'.matchAll(/(.)(.)/gu)].map(
    ([, plain = '', other = '']) => [plain, other],
  ),
);

/** How much longer a text of another language may well be. Common practice, no source. */
const longer_fraction = 0.4;

/** Letters with accents, so that a text that is not of the catalogue is seen at once; and vowels again, so that it is longer. */
function pseudoText(text: string): string {
  let owed = 0;
  return [...text]
    .map((letter) => {
      const shown = accented[letter] ?? letter;
      owed += longer_fraction;
      if (!/[aeiou]/i.test(letter)) return shown;
      const more = Math.floor(owed);
      owed -= more;
      return shown + shown.repeat(more);
    })
    .join('');
}

const heads: Readonly<Record<PseudoTag, LanguageHead>> = {
  'en-XA': { code: 'en-XA', name: 'Pseudo', direction: 'ltr', forms: 'en-GB' },
  'ar-XB': { code: 'ar-XB', name: 'Pseudo', direction: 'rtl', forms: 'en-GB' },
};

/** Marks at the ends of every message: what stands outside them was never in a catalogue. */
export const pseudoEnds = { open: '⟦', close: '⟧' } as const;

/**
 * A language made of English to test with: accents, two fifths longer, each message between ⟦ and ⟧. What a page shows
 * without them was not said by the words; what does not fit will not fit in German either.
 *
 * @param english - the English messages
 * @param tag - `en-XA` from left to right, `ar-XB` from right to left
 */
export function pseudoTexts(english: LanguageTexts, tag: PseudoTag): LanguageTexts {
  const sections = Object.entries(english.sections).map(([name, section]) => [
    name,
    Object.fromEntries(
      Object.entries(section).map(([key, message]) => [
        key,
        `${pseudoEnds.open}${messageWith(message, pseudoText)}${pseudoEnds.close}`,
      ]),
    ),
  ]);
  return { language: heads[tag], sections: Object.fromEntries(sections) };
}
