import type { Language } from '@eavewell/words';
import { type Heads, headsSaying } from '../document/heads.ts';
import type { Setter } from '../document/setter.ts';
import type { SitePackContent, SitePackOptions } from './content.ts';

const rightOf = ({ people, caretaker, trip }: SitePackContent, { say, numbers }: Language): readonly string[] => {
  const who = [
    people === null ? null : say('pack.people', { people: numbers.people(people) }),
    caretaker === null ? null : say('pack.caretaker', { name: caretaker }),
  ].filter((one) => one !== null);
  const when =
    trip === null ? null : say('pack.trip', { ...trip, from: numbers.date(trip.from), to: numbers.date(trip.to) });
  return [who.join(' '), ...(when === null ? [] : [when])].filter((one) => one !== '');
};

/**
 * Heads and feet of a pack.
 *
 * @param setter - lays their letters
 * @param content - whose pack it is
 * @param language - its words
 * @param options - when it is printed
 */
export function headsOf(setter: Setter, content: SitePackContent, language: Language, options: SitePackOptions): Heads {
  const { say, numbers } = language;
  const { programme, name, siteId } = content;
  const day = numbers.date(options.printedOn);
  return headsSaying(setter, {
    number: (page, pages) => say('pack.page', { page, pages }),
    ...{ name, laterName: `${name}, ${siteId}`, right: rightOf(content, language) },
    printed:
      options.printedAt === null
        ? say('pack.printed', { programme, day })
        : say('pack.printed_at', { programme, day, time: options.printedAt }),
    plans: say('pack.plans'),
  });
}
