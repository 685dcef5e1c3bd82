import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from './run.ts';

async function eavewell(...args: readonly string[]) {
  let [out, err] = ['', ''];
  const stdout = new Writable({
    write(chunk: Buffer, _, done) {
      out += String(chunk);
      done();
    },
  });
  const stderr = new Writable({
    write(chunk: Buffer, _, done) {
      err += String(chunk);
      done();
    },
  });
  const code = await run(args, { stdout, stderr, env: { LANG: 'C.UTF-8' }, platform: 'linux' });
  await new Promise<void>((ended) => stdout.end(ended));
  return { code, out, err };
}

let room: string;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-words-'));
});
afterAll(() => rm(room, { recursive: true, force: true }));
const at = (name: string) => join(room, name);

describe('texts for another language', () => {
  it('go out whole and come back as they were', async () => {
    const spanish = await readFile(new URL('../../words/languages/es.json', import.meta.url), 'utf8');
    for (const form of ['csv', 'json']) {
      expect((await eavewell('words', 'export', 'es', at(`es.${form}`))).code).toBe(0);
      const back = await eavewell('words', 'import', 'es', at(`es.${form}`), '--into', at(`es-${form}.json`));
      expect([back.code, back.err]).toEqual([0, '']);
      expect(back.out).toMatch(/texts can be used; none is missing\./);
      expect(await readFile(at(`es-${form}.json`), 'utf8')).toBe(spanish);
    }
    const missing = await eavewell('words', 'export', 'es', at('none.csv'), '--missing');
    expect(missing.out).toBe('It lacks no text: nothing was written.\n');
  });

  it('begin a new language, from right to left, and are tried at once', async () => {
    await eavewell('words', 'export', 'fa', at('fa.csv'));
    const [header = '', ...lines] = (await readFile(at('fa.csv'), 'utf8')).split('\n');
    expect(header).toBe('key,english,about,translation');
    expect(lines.length).toBeGreaterThan(1000);
    // A spreadsheet writes semicolons, other columns first, and a mark at the start.
    await writeFile(
      at('fa.csv'),
      '\ufefftranslation;key\n"خطایی نیست.";commandLine.check.nothingWrong\n"خوانده شد";commandLine.headings.read\n;app.skip\n',
    );
    const into = at('fa.json');
    const made = await eavewell('words', 'import', 'fa', at('fa.csv'), '--into', into);
    expect([made.code, made.err]).toEqual([0, '']);
    const { language, ...sections } = JSON.parse(await readFile(into, 'utf8'));
    expect(language).toEqual({ code: 'fa', name: 'فارسی', direction: 'rtl' });
    expect(sections).toEqual({
      commandLine: { 'check.nothingWrong': 'خطایی نیست.', 'headings.read': 'خوانده شد' },
    });
    await eavewell('demo', at('islands'), '--sites', '3', '--clean');
    const tried = await eavewell('check', at('islands'), '--language', into);
    expect(tried.out).toMatch(/^خوانده شد$/m);
    expect(tried.out).toMatch(/rows used/);
    const more = await eavewell('words', 'export', 'fa', at('more.json'), '--missing', '--from', into);
    expect(more.code).toBe(0);
    const left = JSON.parse(await readFile(at('more.json'), 'utf8')).texts.map(({ key }: { key: string }) => key);
    expect(left).toHaveLength(lines.filter((line) => /^[a-z]\w*\.[\w.:-]+,/i.test(line)).length - 2);
    expect(left).not.toContain('commandLine.headings.read');
  });

  it('complete a language that is for paper alone, of which only what paper says is missing', async () => {
    const none = await eavewell('words', 'export', 'hi', at('none.csv'), '--missing');
    expect([none.code, none.out]).toEqual([0, 'It lacks no text: nothing was written.\n']);
    await writeFile(at('hi.csv'), 'key,translation\nstations.roof,छप्पर\n');
    await eavewell('words', 'import', 'hi', at('hi.csv'), '--into', at('hi.json'));
    const { language, stations } = JSON.parse(await readFile(at('hi.json'), 'utf8'));
    expect([language.for, stations.roof, stations.tap]).toEqual(['paper', 'छप्पर', 'नल']);
    // With a text of the pages it is on its way to be a language of all, and lacks all the others.
    await writeFile(at('hi.csv'), 'key,translation\napp.again,फिर कोशिश करें\n');
    await eavewell('words', 'import', 'hi', at('hi.csv'), '--into', at('hi.json'));
    expect(JSON.parse(await readFile(at('hi.json'), 'utf8')).language).not.toHaveProperty('for');
    await eavewell('words', 'export', 'hi', at('more.csv'), '--missing', '--from', at('hi.json'));
    const left = await readFile(at('more.csv'), 'utf8');
    expect(left).toMatch(/^app\.name,/m);
    expect(left).not.toMatch(/^(?:app\.again|stations\.roof),/m);
  });

  it('that cannot be used are named, and lose nothing that stood there', async () => {
    const into = at('es-kept.json');
    await eavewell('words', 'export', 'es', at('kept.json'));
    await eavewell('words', 'import', 'es', at('kept.json'), '--into', into);
    const before = await readFile(into, 'utf8');
    const sent = {
      'app.unheard': 'algo',
      'toString.length': 'algo',
      'commandLine.check.ofYears': '{judged} de todos',
      'commandLine.check.madeRain': 'generada {con} algo',
      'commandLine.check.more': 'y {count más',
      'commandLine.check.notUsed': '{rows, plural, uno {#} other {#}} {cells, plural, one {#} other {#}}',
    };
    const texts = Object.entries(sent).map(([key, translation]) => ({ key, translation }));
    await writeFile(at('bad.json'), JSON.stringify({ texts }));
    const { code, out } = await eavewell('words', 'import', 'es', at('bad.json'), '--into', into);
    expect(code).toBe(1);
    expect(await readFile(into, 'utf8')).toBe(before);
    expect(out).toMatch(/6 texts not used:/);
    for (const part of [
      /app\.unheard: no text has this key/,
      /toString\.length: no text has this key/,
      /check\.ofYears: without \{all\}/,
      /check\.madeRain: nothing fills \{con\}/,
      /check\.more: not a message that can be read/,
      /check\.notUsed: rows: there is no uno/,
    ])
      expect(out).toMatch(part);
    await writeFile(
      at('long.json'),
      JSON.stringify({
        texts: [
          { key: 'commandLine.check.madeRain', translation: 'x'.repeat(60), english: 'made up' },
          { key: 'commandLine.check.measured', translation: 'medida', english: 'was measured' },
        ],
      }),
    );
    const long = await eavewell('words', 'import', 'es', at('long.json'));
    expect(long.code).toBe(0);
    expect(long.out).toMatch(/2 texts to look at, used as they are:/);
    expect(long.out).toMatch(/madeRain: 60 characters long; more than 21 may not fit/);
    expect(long.out).toMatch(/measured: English has changed since/);
    expect(long.out).toMatch(/Nothing was written\./);
  });

  it('refuse what they cannot work with, in words', async () => {
    await writeFile(at('notes.csv'), 'a,b\n1,2\n');
    await writeFile(at('broken.json'), '{');
    await writeFile(at('bytes.csv'), new Uint8Array([0, 0, 1, 0, 2, 0]));
    const refusals: readonly (readonly [args: readonly string[], says: RegExp])[] = [
      [['export', 'not a tag', at('x.csv')], /is not the tag of a language/],
      [['export', 'ar', at('x.txt')], /end the name in \.csv or \.json/],
      [['export', 'ar', at('notes.csv')], /is there already/],
      [['import', 'ar', at('absent.csv')], /There is no file/],
      [['import', 'ar', at('notes.csv')], /needs the columns key and translation/],
      [['import', 'ar', at('bytes.csv')], /needs the columns key and translation/],
      [['import', 'ar', at('broken.json')], /does not hold the texts/],
      [['import', 'ar', at('notes.csv'), '--direction', 'up'], /ltr or rtl/],
      [['import', 'ar', at('notes.csv'), '--into', at('x.csv')], /end the name/],
      [['export', 'ar', at('y.csv'), '--from', at('broken.json')], /is not the file of a language/],
    ];
    for (const [args, says] of refusals) {
      const { code, err } = await eavewell('words', ...args);
      expect({ args, code }).toEqual({ args, code: 2 });
      expect(err.replace(/\s+/g, ' ')).toMatch(says);
    }
  });
});
