import { expect, it } from 'vitest';
import { changed, good } from './folder.ts';
import { type Page, withServer, zipOf } from './served.ts';

/** Asks as a browser of somebody who reads other languages. */
async function askIn(page: Page, language: string | null, path: string) {
  const headers = {
    cookie: page.cookie,
    origin: page.origin,
    ...(language === null ? {} : { 'accept-language': language }),
  };
  const answer = await fetch(`${page.origin}${path}`, { headers });
  const text = await answer.text();
  return { headers: answer.headers, text, body: text.startsWith('{') ? JSON.parse(text) : null };
}

it('answers in the language a browser asks for, and says which', async () => {
  await withServer(async (page) => {
    const asked: readonly (readonly [header: string | null, language: string, title: RegExp])[] = [
      [null, 'en', /^There is nothing at/],
      ['es', 'es', /^No hay nada en/],
      ['es-PE,es;q=0.9,en;q=0.8', 'es-PE', /^No hay nada en/],
      ['fr,en;q=0.5,es;q=0.7', 'es', /^No hay nada en/],
      ['es;q=0,en', 'en', /^There is nothing at/],
      ['fr, *;q=0.1', 'en', /^There is nothing at/],
      ['xx-!!;q=9, ;;,=', 'en', /^There is nothing at/],
      ['x'.repeat(5000), 'en', /^There is nothing at/],
    ];
    for (const [header, language, title] of asked) {
      const { headers, body } = await askIn(page, header, '/nowhere');
      expect([headers.get('content-language'), headers.get('vary')]).toEqual([language, 'Accept-Language']);
      expect(body.title).toMatch(title);
      expect(body.problems[0].code).toBe('request.not_found');
    }
    // Files of the pages are one for all languages: a browser that keeps them finds them after a change of its own.
    const file = await askIn(page, 'es', '/assets/none.js');
    expect(file.headers.get('vary') ?? '').not.toMatch(/Accept-Language/);
    const front = await askIn(page, 'es', '/');
    expect(front.text).toMatch(/<html lang="es" dir="ltr">[\s\S]*Los programas de esta carpeta de datos/);
  });
});

it('says every sentence of a design and of a review in that language, and changes no figure', async () => {
  await withServer(async (page) => {
    const programme = await page.empty();
    await page.takeIn(programme, 'tarn.zip', zipOf(good));
    for (let i = 0; i < 200; i++) {
      if ((await page.ask('GET', `${programme}/design`)).body.done_fraction === 1) break;
      await new Promise((later) => setTimeout(later, 50));
    }
    const both = async (path: string) => {
      const [english, spanish] = [await askIn(page, 'en', path), await askIn(page, 'es', path)];
      return [english.body, spanish.body];
    };
    const [sites, sitios] = await both(`${programme}/sites`);
    expect(sites.sites).toHaveLength(3);
    for (const [i, { design }] of sitios.sites.entries()) {
      const { finding: english, remedy: _, ...same } = sites.sites[i].design;
      const { finding, remedy: __, ...figures } = design;
      expect(figures).toEqual(same);
      expect(finding).not.toBe(english);
      expect(finding).toMatch(/agua|veredicto|meta/i);
    }
    const words = ['finding', 'what', 'todo', 'about', 'label', 'formula', 'said', 'sourceSaid'];
    const withoutWords = (value: unknown) =>
      JSON.stringify(value, (key, part: unknown) => (words.includes(key) ? undefined : part));
    for (const path of [`${programme}/design`, `${programme}/sites/S001`]) {
      const [english, spanish] = await both(path);
      expect(withoutWords(spanish)).toBe(withoutWords(english));
      expect(JSON.stringify(spanish)).toMatch(/Techo que capta lluvia/);
      expect(JSON.stringify(spanish)).not.toMatch(/Roof that catches|Nothing to do|readings/);
    }
    const [list, lista] = [
      await askIn(page, 'en', `${programme}/overview`),
      await askIn(page, 'es', `${programme}/overview`),
    ];
    expect(lista.headers.get('vary')).toBe('Accept-Language, Accept-Encoding');
    expect(lista.headers.get('etag')).not.toBe(list.headers.get('etag'));
    for (const [i, { finding, withheldBy: _, ...rest }] of lista.body.sites.entries()) {
      const { finding: english, withheldBy: __, ...same } = list.body.sites[i];
      expect(rest).toEqual(same);
      expect(finding).not.toBe(english);
    }
    const faulty = zipOf(changed('roofs.csv', '24,8.5', 'abc,8.5'));
    const review = await page.send(programme, 'faulty.zip', faulty);
    const looked = await askIn(page, 'es', `${programme}/imports/${review.body.importId}`);
    expect(looked.body.problems.map(({ what }: { what: string }) => what)).toContain('"abc" no es un número.');
  });
});
