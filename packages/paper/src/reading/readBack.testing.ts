import { inflateSync } from 'node:zlib';

/* Reads the text of a PDF back, as a reader that copies it would: faces' own tables of what a glyph says, and what a marked piece says in place of its glyphs. */

interface Objects {
  readonly texts: ReadonlyMap<number, string>;
  readonly streams: ReadonlyMap<number, string>;
}

/** Every object of the file: its text, and its stream unpacked. */
function objectsOf(bytes: Uint8Array): Objects {
  const file = Buffer.from(bytes).toString('latin1');
  const texts = new Map<number, string>();
  const streams = new Map<number, string>();
  for (const { 1: number, 2: body } of file.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) {
    const at = body!.indexOf('\nstream\n');
    texts.set(Number(number), at < 0 ? body! : body!.slice(0, at));
    if (at < 0) continue;
    const packed = Buffer.from(body!.slice(at + 8, body!.lastIndexOf('\nendstream')), 'latin1');
    const isPacked = body!.slice(0, at).includes('/FlateDecode');
    streams.set(Number(number), (isPacked ? inflateSync(packed) : packed).toString('latin1'));
  }
  return { texts, streams };
}

const utf16 = (hex: string): string => {
  let text = '';
  for (let at = 0; at < hex.length; at += 4) text += String.fromCharCode(Number.parseInt(hex.slice(at, at + 4), 16));
  return text;
};

/** What each glyph of a face says. */
function saidByGlyphs(cmap: string): ReadonlyMap<number, string> {
  const said = new Map<number, string>();
  for (const { 1: block } of cmap.matchAll(/beginbfrange\n([\s\S]*?)\nendbfrange/g))
    for (const { 1: from, 3: list } of block!.matchAll(/<([0-9a-f]+)> <([0-9a-f]+)> \[([^\]]*)\]/g))
      [...list!.matchAll(/<([0-9a-f ]*)>/g)].forEach(({ 1: hex }, nth) => {
        said.set(Number.parseInt(from!, 16) + nth, utf16(hex!.replaceAll(' ', '')));
      });
  return said;
}

/** A text of the file in brackets: PDF's own letters or UTF-16. */
function bracketed(text: string): string {
  const plain = text.replace(
    /\\([nrtbf()\\])/g,
    (_, one: string) => ({ n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' })[one] ?? one,
  );
  if (!plain.startsWith('\u00fe\u00ff')) return plain;
  return utf16(Buffer.from(plain.slice(2), 'latin1').toString('hex'));
}

const ref = (text: string, name: string): number => Number(new RegExp(`/${name} (\\d+) 0 R`).exec(text)?.[1]);

/** The operators of each page. */
export function contentsOf(bytes: Uint8Array): readonly string[] {
  const { texts, streams } = objectsOf(bytes);
  return pagesOf(texts).map((page) => streams.get(ref(page, 'Contents')) ?? '');
}

const pagesOf = (texts: ReadonlyMap<number, string>): readonly string[] =>
  [...texts.entries()]
    .filter(([, text]) => /\/Type \/Page\b(?!s)/.test(text))
    .sort(([a], [b]) => a - b)
    .map(([, text]) => text);

/** What is said on each page, a piece for each run of letters, in the order it is drawn. */
export function textsOf(bytes: Uint8Array): readonly (readonly string[])[] {
  const { texts, streams } = objectsOf(bytes);
  const tables = new Map<number, ReadonlyMap<number, string>>();
  return pagesOf(texts).map((page) => {
    const resources = texts.get(ref(page, 'Resources')) ?? '';
    const fonts = new Map(
      [...(/\/Font <<([\s\S]*?)>>/.exec(resources)?.[1] ?? '').matchAll(/\/(\w+) (\d+) 0 R/g)].map(
        ({ 1: name, 2: id }) => [name!, Number(id)],
      ),
    );
    const tableOf = (font: number) => {
      const known = tables.get(font);
      if (known) return known;
      const made = saidByGlyphs(streams.get(ref(texts.get(font) ?? '', 'ToUnicode')) ?? '');
      tables.set(font, made);
      return made;
    };
    return saidIn(streams.get(ref(page, 'Contents')) ?? '', (name) => tableOf(fonts.get(name) ?? 0));
  });
}

const steps =
  /\/(\w+) [\d.]+ Tf|\[([^\]]*)\] TJ|\/Span <<\s*\/ActualText \(((?:\\[\s\S]|[^\\)])*)\)\s*>> BDC|\/(\w+) (?:<<[\s\S]*?>> )?BDC|\/\w+ BMC|\bEMC\b/g;

function saidIn(content: string, tableOf: (font: string) => ReadonlyMap<number, string>): readonly string[] {
  const said: string[] = [];
  let font = '';
  // Within a piece that says something in place of its glyphs, glyphs are passed over.
  const open: boolean[] = [];
  for (const [whole, face, glyphs, actual] of content.matchAll(steps)) {
    if (face !== undefined) font = face;
    else if (glyphs !== undefined) {
      if (open.includes(true)) continue;
      const table = tableOf(font);
      let text = '';
      for (const { 1: hex } of glyphs.matchAll(/<([0-9a-f]+)>/g))
        for (let at = 0; at < hex!.length; at += 4)
          text += table.get(Number.parseInt(hex!.slice(at, at + 4), 16)) ?? '\ufffd';
      said.push(text);
    } else if (actual !== undefined) {
      open.push(true);
      said.push(bracketed(actual));
    } else if (whole === 'EMC') open.pop();
    else open.push(false);
  }
  return said;
}
