import { inflateSync } from 'node:zlib';

/** One page of paper: its size and what is written on it. */
export interface PaperPage {
  readonly width_pt: number;
  readonly height_pt: number;
  readonly text: string;
}

/** A stream of a PDF, unpacked. */
function streamOf(object: string): string {
  const head = object.indexOf('stream') + 'stream'.length;
  const from = head + (object[head] === '\r' ? 2 : 1);
  return inflateSync(Buffer.from(object.slice(from, object.lastIndexOf('endstream')), 'latin1')).toString('latin1');
}

const hex = (text: string) => Number.parseInt(text, 16);

/** Letters written in UTF-16, as hexadecimal. */
const lettersOf = (text: string) => (text.match(/.{4}/g) ?? []).map((unit) => String.fromCharCode(hex(unit))).join('');

/** Which letters each number of a font stands for. */
function lettersByNumber(map: string): ReadonlyMap<number, string> {
  const letters = new Map<number, string>();
  for (const [, list] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, number, text] of list!.matchAll(/<(\w+)>\s*<(\w+)>/g)) letters.set(hex(number!), lettersOf(text!));
  for (const [, list] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, first, last, text] of list!.matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w+)>/g))
      for (let number = hex(first!); number <= hex(last!); number++)
        letters.set(number, String.fromCharCode(hex(text!) + number - hex(first!)));
  return letters;
}

/** What a page's drawing writes; each piece of text begins a new word. */
function written(drawing: string, fonts: ReadonlyMap<string, ReadonlyMap<number, string>>): string {
  let letters: ReadonlyMap<number, string> = new Map();
  let text = '';
  for (const [, font, , shown] of drawing.matchAll(/\/(F\d+) [\d.]+ Tf|\b(BT)\b|((?:<\w+>|\[[^\]]*\])\s*TJ?j?)/g)) {
    if (font !== undefined) letters = fonts.get(font) ?? new Map();
    else if (shown === undefined) text += ' ';
    else
      for (const [, run] of shown.matchAll(/<(\w+)>/g))
        text += (run!.match(/.{4}/g) ?? []).map((number) => letters.get(hex(number)) ?? '?').join('');
  }
  return text.replaceAll(/\s+/g, ' ');
}

/**
 * What stands on the pages of a PDF that Chromium made: its fonts say which letters their numbers stand for.
 *
 * @param pdf - the file
 * @returns its pages in order
 */
export function paperPages(pdf: Buffer): readonly PaperPage[] {
  const file = pdf.toString('latin1');
  const objects = new Map<string, string>();
  for (const found of file.matchAll(/(?:^|\n)(\d+) 0 obj\s/g)) {
    const from = found.index + found[0].length;
    objects.set(found[1]!, file.slice(from, file.indexOf('endobj', from)));
  }
  const refer = (object: string, name: string) =>
    objects.get(new RegExp(`/${name} (\\d+) 0 R`).exec(object)?.[1] ?? '');
  return [...objects.values()]
    .filter((object) => /\/Type\s*\/Page\b/.test(object))
    .map((page) => {
      const fonts = new Map<string, ReadonlyMap<number, string>>();
      for (const [, name, number] of page.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
        const map = refer(objects.get(number!) ?? '', 'ToUnicode');
        if (map !== undefined) fonts.set(name!, lettersByNumber(streamOf(map)));
      }
      const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page) ?? [];
      return {
        width_pt: Number(width),
        height_pt: Number(height),
        text: written(streamOf(refer(page, 'Contents')!), fonts),
      };
    });
}
