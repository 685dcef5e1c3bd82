import { carePicture, carePictureIds } from '@eavewell/drawing';
import { type Language, loadPaperLanguage, paperChoices } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { textsOf } from '../reading/readBack.testing.ts';
import type { SitePackContent } from './content.ts';
import { content, options } from './madeUpPack.testing.ts';
import { sitePack } from './sitePack.ts';

/** The made-up pack with what is said of it in the words of a language, and the pictures there are. */
function contentIn({ say, numbers, cautions }: Language): SitePackContent {
  const years = say('findings.goodYears', {
    years: numbers.ofYears(17, 32),
    next: numbers.likelyNextYears({ low: 2, high: 8 }, 10),
  });
  const dry = numbers.dryDaysAYear(21.7);
  return {
    ...content,
    finding: say('findings.shortOfTank', { years }),
    cautions: [cautions.stand, cautions.height],
    stations: content.stations.map((one) => ({ ...one, figure: one.station === 'storage' ? dry : null })),
    steps: content.steps.map((step) => ({
      ...step,
      said: say('steps.fill'),
      cautions: [cautions.lifting],
    })),
    pictures: carePictureIds.map((id) => ({ picture: carePicture(id), title: say(`pictures.${id}`) })),
  };
}

describe('a pack in every language there is for paper', () => {
  for (const { code } of paperChoices)
    it(`is made in ${code} without a word of another language`, async () => {
      const lacked = new Set<string>();
      const language = await loadPaperLanguage(code, (key) => lacked.add(key));
      // What it is made of itself, such as the words of the terminal, is not printed.
      lacked.clear();
      const pack = sitePack(contentIn(language), language, options);
      expect([...lacked]).toEqual([]);
      if (pack.kind !== 'made') throw new Error(pack.said.join(' '));
      expect(pack.pages_count).toBeLessThanOrEqual(6);
      const said = textsOf(pack.bytes).flat().join(' ').replaceAll('\u00a0', ' ');
      for (const text of [language.say('pictures.washHands'), language.say('pack.tests'), language.stations.storage])
        expect(said, text).toContain(text);
    });
});
