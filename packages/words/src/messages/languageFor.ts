import { appLanguages } from '../languages/app.ts';
import { isPseudo } from './pseudoTags.ts';

/** A language there is, by its code. */
export type LanguageCode = keyof typeof appLanguages;

/** A language that was found for a tag, and the region whose forms were asked for with it. */
export interface LanguageFound {
  readonly code: LanguageCode;
  /** The whole tag where it says more than the code, such as `es-PE`; else undefined. */
  readonly region: string | undefined;
}

const isKnown = (code: string): code is LanguageCode => Object.hasOwn(appLanguages, code);

/** A tag as it should be written, cut to language, script and region; null where it is no tag. */
export function canonicalTag(tag: string): string | null {
  try {
    const { language, script, region } = new Intl.Locale(tag.replaceAll('_', '-'));
    return [language, script, region].filter((part) => part !== undefined).join('-');
  } catch {
    return null;
  }
}

/** The language that comes nearest to a tag: `es-PE` is answered in `es`, with the numbers of Peru; null where none does. */
export function languageFor(tag: string): LanguageFound | null {
  const canonical = canonicalTag(tag);
  if (canonical === null) return null;
  if (isPseudo(canonical)) return { code: 'en', region: canonical };
  const code = nearest(canonical, isKnown);
  return code && { code, region: code === canonical ? undefined : canonical };
}

/** The code that is longest of those a tag begins with, of the ones there are; null where there is none. */
export function nearest<Code extends string>(tag: string, isThere: (code: string) => code is Code): Code | null {
  for (let part = tag; part !== ''; part = part.slice(0, Math.max(0, part.lastIndexOf('-'))))
    if (isThere(part)) return part;
  return null;
}

/** A header longer than this is not read to its end [character]: no browser sends one. Ours. */
const longestHeader = 1000;

/**
 * The tag somebody would rather be answered in, of those there are, as a browser sends them: `es-PE,es;q=0.9,en;q=0.8`.
 * English where nothing of it can be answered.
 *
 * @param header - Accept-Language, or undefined
 * @source rfc9110, section 12.5.4
 */
export function tagAsked(header: string | undefined): string {
  const wishes = (header ?? '')
    .slice(0, longestHeader)
    .split(',')
    .map((wish) => {
      const [tag = '', ...parameters] = wish.split(';').map((part) => part.trim());
      const weight = parameters.find((one) => /^q=/i.test(one))?.slice(2);
      return { tag, weight: weight === undefined ? 1 : Number(weight) };
    })
    .filter(({ weight }) => weight > 0 && weight <= 1)
    .sort((a, b) => b.weight - a.weight);
  for (const { tag } of wishes) {
    const found = tag === '*' ? { code: 'en', region: undefined } : languageFor(tag);
    if (found) return found.region ?? found.code;
  }
  return 'en';
}
