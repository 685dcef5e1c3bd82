import { carePictureIds } from '@eavewell/drawing';
import { english, loadLanguage, loadPaperLanguage, type MessageKey } from '@eavewell/words';
import { expect, it } from 'vitest';

it('every picture without words has a name of its own in every language', async () => {
  const languages = [english, await loadLanguage('es'), await loadPaperLanguage('ar'), await loadPaperLanguage('hi')];
  for (const { code, say } of languages) {
    const names = carePictureIds.map((id) => say(`pictures.${id}` satisfies MessageKey));
    expect(new Set(names).size, code).toBe(carePictureIds.length);
    for (const name of names) expect(name.length, `${code} ${name}`).toBeLessThan(40);
  }
  const inEnglish = carePictureIds.map((id) => english.say(`pictures.${id}`));
  expect(inEnglish).toContain('Do not dip into the tank');
});
