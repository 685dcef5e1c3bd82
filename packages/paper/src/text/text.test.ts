import { readdirSync, readFileSync } from 'node:fs';
import { loadLanguage, type MessageKey } from '@eavewell/words';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { facesFor } from './letters.ts';
import { linesOf } from './lines.ts';
import { paragraphOf } from './paragraph.ts';

const inSight = (text: string, direction: 'ltr' | 'rtl') =>
  linesOf(paragraphOf(text, direction), 10, 1e6)[0]!.runs.map((run) => run.text);
/** Letters as they come out from the left, whatever the shaper turns by itself. */
const fromTheLeft = (text: string, direction: 'ltr' | 'rtl') =>
  linesOf(paragraphOf(text, direction), 10, 1e6)[0]!
    .runs.flatMap(({ face, text: given }) =>
      face.font.layout(given).glyphs.map(({ codePoints }) => String.fromCodePoint(...codePoints)),
    )
    .join('');

it('a line breaks at spaces, never between a figure and its unit nor within a scale', () => {
  const said = (text: string, width: number) => linesOf(paragraphOf(text, 'ltr'), 10, width).map(({ says }) => says);
  const text = 'tank 12 kPa at 1 : 150 and 3 × 4 m or 12 June';
  for (let width = 60; width < 260; width += 7) {
    const lines = said(text, width);
    const pieces = lines.join(' ').replaceAll('\u00a0', ' ');
    expect(pieces).toBe(text);
    for (const line of lines) expect(line).not.toMatch(/^(?:kPa|m|:|150|×|4)\b|(?:12 kPa at 1|3)$/);
  }
  expect(said('pressure 12 kPa', 60)).toEqual(['pressure', '12\u00a0kPa']);
  expect(said('20 दिन', 5_000)).toEqual(['20\u00a0दिन']);
});

it('no line is longer than its room, and nothing of a text is lost, whatever the text', () => {
  const letters = fc.constantFrom(...'abcde fghij 12 . - é ü س ل ا م क ि त र् (', ...')');
  fc.assert(
    fc.property(
      fc.array(letters, { maxLength: 60 }),
      fc.integer({ min: 30, max: 200 }),
      fc.constantFrom('ltr', 'rtl'),
      (all, width, direction) => {
        const paragraph = paragraphOf(all.join(''), direction as 'ltr' | 'rtl');
        const lines = linesOf(paragraph, 10, width);
        for (const line of lines) expect(line.width_pt).toBeLessThanOrEqual(width + 0.02);
        const bare = (text: string) => text.replace(/\s/g, '');
        expect(bare(lines.map(({ says }) => says).join(''))).toBe(bare(all.join('')));
      },
    ),
    { numRuns: 200 },
  );
});

it('a word that is longer than a line is cut between letters', () => {
  const lines = linesOf(paragraphOf('unbreakablename', 'ltr'), 10, 30);
  expect(lines.length).toBeGreaterThan(2);
  expect(lines.map(({ says }) => says).join('')).toBe('unbreakablename');
});

it('letters from right to left stand in the order of the bidirectional algorithm, numbers and brackets with them', () => {
  // Source: uax-9, its own kind of example: a text with a piece that runs the other way, and a number within it.
  expect(fromTheLeft('car אבג 12 דה bus', 'ltr')).toBe('car הד\u00a012 גבא bus');
  expect(fromTheLeft('אבג 12 דה', 'rtl')).toBe('הד\u00a012 גבא');
  // A bracket that opens at the right is drawn as one that closes.
  expect(fromTheLeft('(אב)', 'rtl')).toBe('(בא)');
  expect(inSight('(אב)', 'rtl')).toEqual([')אב(']);
  // Digits of Arabic run from left to right, also those whose script is Arabic by name.
  expect(fromTheLeft('۱۲۳', 'rtl')).toBe('۱۲۳');
  expect(fromTheLeft('١٢٣', 'rtl')).toBe('١٢٣');
  // On a sheet from right to left, what has none of its letters is read as it is written.
  expect(fromTheLeft('4.70 m', 'rtl')).toBe('4.70\u00a0m');
});

it('letters of Arabic join: each has the form of its place in the word', () => {
  const [run] = linesOf(paragraphOf('سلام', 'rtl'), 10, 1e6)[0]!.runs;
  const glyphs = run!.face.font.layout(run!.text).glyphs;
  // Seen from the left: meem alone, lam with alef as one, seen at its beginning. Source: unicode, the forms of presentation B.
  expect(glyphs.map(({ codePoints }) => codePoints.map((one) => one.toString(16)).join('+'))).toEqual([
    '645',
    '644+627',
    '633',
  ]);
  const alone = run!.face.font.layout('س').glyphs[0]!;
  expect(glyphs[2]!.id).not.toBe(alone.id);
});

it('a letter that no face has is named with the text it stands in; marks that are not seen are not asked for', () => {
  const { missing } = paragraphOf('tap 🚰', 'ltr');
  expect(missing).toEqual([{ letter: '🚰', codePoint: 'U+1F6B0', text: 'tap 🚰' }]);
  expect(paragraphOf('\u2068T1\u2069 a\u00adb\u200e', 'rtl').missing).toEqual([]);
});

const folder = new URL('../../../words/languages/', import.meta.url);

/** Messages by language; those of a test language are its plain ones, in which every letter of English comes. */
async function messagesOf(): Promise<ReadonlyMap<string, readonly string[]>> {
  const all = new Map<string, readonly string[]>();
  const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
  for (const file of files) {
    const sections = JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as Record<string, Record<string, string>>;
    all.set(
      file,
      Object.values(sections).flatMap((section) => Object.values(section)),
    );
  }
  const english = JSON.parse(readFileSync(new URL('en.json', folder), 'utf8')) as Record<
    string,
    Record<string, string>
  >;
  for (const tag of ['en-XA', 'ar-XB']) {
    const { say } = await loadLanguage(tag);
    const said = Object.entries(english).flatMap(([section, messages]) =>
      Object.entries(messages).flatMap(([key, text]) =>
        section === 'language' || /[{}']/.test(text) ? [] : [say(`${section}.${key}` as MessageKey)],
      ),
    );
    all.set(tag, said);
  }
  return all;
}

it('every letter of every message of every language has a face, plain and strong, those of the test languages too', async () => {
  const all = await messagesOf();
  expect(all.size).toBeGreaterThan(3);
  for (const [language, messages] of all) {
    const letters = new Set(messages.flatMap((text) => [...text]));
    expect(letters.size, language).toBeGreaterThan(50);
    for (const weight of ['plain', 'strong'] as const)
      expect(
        facesFor([...letters].join(''), weight, null).missing.filter((one) => one !== '\n'),
        language,
      ).toEqual([]);
  }
});
