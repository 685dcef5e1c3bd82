// long: one command line, run end to end, with one set of folders
import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { designReport } from '@eavewell/tables';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Kept, keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = keptRun;

/** The whole design of the demo, as text and as JSON, which several tests read: worked out once each. */
const designs = new Map<string, ReturnType<typeof eavewell>>();
function designOnce(...more: readonly string[]): ReturnType<typeof eavewell> {
  const known = designs.get(more.join()) ?? eavewell(['design', folder, ...more]);
  designs.set(more.join(), known);
  return known;
}

let room: string;
let folder: string;
let clean: string;
/** Some sites of the demo, a short one among them. */
let few: string;

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-'));
  folder = join(room, 'islands');
  clean = join(room, 'tidy');
  few = join(room, 'few');
  expect((await eavewell(['demo', folder])).code).toBe(0);
  expect((await eavewell(['demo', clean, '--clean', '--sites', '5'])).code).toBe(0);
  expect((await eavewell(['demo', few, '--sites', '24'])).code).toBe(0);
});

afterAll(() => rm(room, { recursive: true, force: true }));

function expectNarrow(text: string): void {
  for (const line of text.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
}

describe('demo', () => {
  it('says what to run next, and leaves a folder that holds something alone', async () => {
    const before = (await readdir(folder)).sort();
    const { code, err } = await eavewell(['demo', folder]);
    expect(code).toBe(2);
    expect(err).toMatch(/is not empty\. Name a new folder/);
    expect((await readdir(folder)).sort()).toEqual(before);
  });

  it('refuses a number of sites that is none', async () => {
    for (const sites of ['0', '1.5', 'many', '-3']) {
      const { code, err } = await eavewell(['demo', join(room, 'never'), '--sites', sites]);
      expect(code).toBe(2);
      expect(err).toMatch(/whole number/);
    }
    expect(await readdir(room)).not.toContain('never');
  });
});

describe('check', () => {
  it('ends with 1 where a blocker is, names file, row, column and value, and fits 80 columns', async () => {
    const { code, out, err } = await eavewell(['check', folder]);
    expect(code).toBe(1);
    expect(err.replace(/^(reading|judging).*\n/gm, '')).toBe('');
    expect(out).toMatch(/roofs\.csv, row \d+, length_m, site S\d+: "\d+,\d+" has a decimal comma\./);
    expect(out).toMatch(/blockers\n/);
    expect(out.search(/^\d+ blockers$/m)).toBeLessThan(out.search(/^\d+ notes$/m));
    expectNarrow(out);
  });

  it('ends with 0 on a clean programme', async () => {
    const { code, out } = await eavewell(['check', clean]);
    expect(code).toBe(0);
    expect(out).toMatch(/5 of 5 rows used/);
    expect(out).not.toMatch(/blockers\n|warnings\n/);
  });

  it('gives the reason of a row that was not used as a sentence', async () => {
    const out = join(room, 'reasons');
    await eavewell(['check', folder, '--out', out]);
    const reasons = (await readFile(join(out, 'not-used.csv'), 'utf8')).split('\n').slice(1);
    expect(reasons.filter((line) => /,[a-z]+\.[a-z_]+,/.test(line))).toEqual([]);
  });

  it('finds what would leave a site without a verdict, though every cell can be read', async () => {
    const gap = join(room, 'gap');
    await eavewell(['demo', gap, '--clean', '--sites', '3']);
    const text = await readFile(join(gap, 'tanks.csv'), 'utf8');
    await writeFile(join(gap, 'tanks.csv'), text.replace(/^S002,.*\n/gm, ''));
    const { code, out } = await eavewell(['check', gap]);
    expect(code).toBe(1);
    expect(out).toContain('tanks.csv, site S002: No tank is listed.');
    expect(out).toContain('1 blocker');
    expect((await eavewell(['design', gap])).out).toContain('1 blocker,');
  });

  it('writes problems and what was not used', async () => {
    const out = join(room, 'checked');
    expect((await eavewell(['check', folder, '--out', out])).code).toBe(1);
    const problems = await readFile(join(out, 'problems.csv'), 'utf8');
    const notUsed = await readFile(join(out, 'not-used.csv'), 'utf8');
    expect(problems).toMatch(/^severity,code,file,row,column,siteId,gaugeId,day,what,todo\n/);
    expect(problems).toMatch(/\nblocker,cell\.decimal_comma,roofs\.csv,\d+,length_m,/);
    expect(notUsed).toMatch(/has a decimal comma/);
    expect((await readdir(out)).sort()).toEqual(['not-used.csv', 'problems.csv']);
  });
});

describe('design', () => {
  it('shows exceptions first by mark and word, counts what holds, and fits 80 columns', async () => {
    const { code, out } = await designOnce();
    expect(code).toBe(1);
    const verdicts = [...out.matchAll(/^(?:│.│|┊ ┊) (short|unknown|tight) {2,}/gm)].map((found) => found[1]);
    const order = ['short', 'unknown', 'tight'];
    expect(verdicts.length).toBeGreaterThan(5);
    expect(verdicts).toEqual([...verdicts].sort((a, b) => order.indexOf(a!) - order.indexOf(b!)));
    expect(out).toMatch(/│█│ holds {4}\d+ sites hold/);
    expect(out).toMatch(/not safe to drink until it is treated and tested/);
    expectNarrow(out);
  });

  it('fits 80 columns with long names, wide letters and a narrow terminal', async () => {
    const odd = join(room, 'odd');
    await eavewell(['demo', odd, '--sites', '6']);
    const sites = await readFile(join(odd, 'sites.csv'), 'utf8');
    const names = ['N'.repeat(300), '村'.repeat(120), 'a b '.repeat(90).trim(), 'x\u202ey'];
    let row = 0;
    const changed = sites.replace(/^(S\d+),[^,]*,/gm, (_, id: string) => `${id},${names[row++ % names.length]},`);
    await writeFile(join(odd, 'sites.csv'), changed);
    for (const args of [
      ['design', odd],
      ['check', odd, '--all'],
      ['design', odd, '--site', 'S001'],
    ]) {
      const { out } = await eavewell(args);
      expectNarrow(out);
      expect(out).not.toMatch(/\u202e|undefined|NaN/);
    }
  });

  it('shows forty sites at most, and then the counts again', async () => {
    const large = join(room, 'large');
    await eavewell(['demo', large, '--sites', '180']);
    const { out } = await eavewell(['design', large]);
    // Forty sites are short and more: only some of them are shown.
    expect(Number(/^│ │ (\d+) sites short$/m.exec(out)?.[1])).toBeGreaterThan(40);
    expect(out.split('\n').filter((line) => /^│ │ (short) /.test(line)).length).toBeLessThanOrEqual(40);
    expect(out).toMatch(/And \d+ more; the most people-days without water came first\./);
    expect(out.match(/ sites? hold$/gm)!.length).toBeGreaterThanOrEqual(2);
    expectNarrow(out);
  });

  it('shows one site in full, numbered working and all', async () => {
    for (const siteId of ['S001', 'S058']) {
      const { out, code } = await eavewell(['design', folder, '--site', siteId]);
      expect(out).toMatch(new RegExp(`\\(${siteId}\\)`));
      expect(out).not.toMatch(/undefined|NaN|\[object/);
      expectNarrow(out);
      expect(code).toBe(/unknown {2}/.test(out) ? 1 : 0);
    }
    const { out } = await eavewell(['design', clean, '--site', 'S001']);
    for (const heading of ['Figures', 'Longest dry runs', 'Other tanks', 'How the figures were reached', 'Cautions'])
      expect(out).toMatch(new RegExp(`\n${heading}\n`));
    expect(out).toMatch(/\n {2}1 Roof that catches rain: [\d.,]+ m²\n/);
  });

  it('names the nearest ids where there is no such site', async () => {
    const { code, err, out } = await eavewell(['design', folder, '--site', 'S0O1']);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(/There is no site S0O1\. Near it: S001/);
  });

  it('prints ASCII only on a terminal that shows no more', async () => {
    for (const env of [{ LANG: 'C.UTF-8', TERM: 'dumb' }, { LANG: 'C' }, {}] as Record<string, string>[])
      for (const args of [
        ['design', few],
        ['design', folder, '--site', 'S001'],
        ['check', folder, '--all'],
      ]) {
        const { out } = await eavewell(args, env);
        expect(out).toMatch(/^[\n -~]*$/);
      }
    const { out } = await eavewell(['design', folder], {});
    expect(out).toMatch(/^[\n -~]*$/);
    expect(out).toMatch(/^\[ \] short {4}/m);
  });

  it('colours only where it is asked for, and never against NO_COLOR', async () => {
    const coloured = await eavewell(['design', few], { LANG: 'C.UTF-8', FORCE_COLOR: '1' });
    const plain = await eavewell(['design', few], { LANG: 'C.UTF-8', FORCE_COLOR: '1', NO_COLOR: '1' });
    const control = String.fromCharCode(27);
    expect(coloured.out).toContain(`${control}[31m`);
    expect(plain.out).not.toContain(control);
    expect(coloured.out.replaceAll(new RegExp(`${control}\\[\\d+m`, 'g'), '')).toBe(plain.out);
  });

  it('asks where the daily series should go', async () => {
    expect((await eavewell(['design', clean, '--series'])).code).toBe(2);
  });
});

describe('design --json', () => {
  it('agrees with its schema, strictly, in zod and in docs/design.schema.json', async () => {
    const published = await readFile(new URL('../../../docs/design.schema.json', import.meta.url), 'utf8');
    const ajv = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true });
    const validate = ajv.compile(JSON.parse(published));
    for (const args of [
      ['design', folder, '--json'],
      ['design', clean, '--json', '--series'],
    ]) {
      const { out, code } = args[1] === folder ? await designOnce('--json') : await eavewell(args);
      const report: unknown = JSON.parse(out);
      expect(designReport.safeParse(report).error?.issues ?? []).toEqual([]);
      validate(report);
      expect(validate.errors ?? []).toEqual([]);
      expect(code).toBe(args.includes('--series') ? 0 : 1);
    }
    const broken = { ...JSON.parse((await eavewell(['design', clean, '--json'])).out), more: 1 };
    expect(designReport.safeParse(broken).success).toBe(false);
    expect(validate(broken)).toBe(false);
  });

  it('holds every site with verdict and working, and daily series only when asked', async () => {
    const report = designReport.parse(JSON.parse((await designOnce('--json')).out));
    expect(report.sites).toHaveLength(60);
    for (const site of report.sites) {
      expect(site.series).toBeUndefined();
      expect(site.storages.length === 0).toBe(site.stations.storage === 'unknown');
      if (site.storages.length > 0) expect(site.working.length).toBeGreaterThan(15);
      else expect(site.problems.some((problem) => problem.severity === 'blocker')).toBe(true);
    }
    const daily = designReport.parse(JSON.parse((await eavewell(['design', clean, '--json', '--series'])).out));
    for (const { series, storages } of daily.sites) {
      expect(series).toHaveLength(storages.length);
      for (const { tankIds, years } of storages) {
        const { dry, content_L } = series!.find((one) => one.tankIds[0] === tankIds[0])!;
        expect(dry).toHaveLength(content_L.length);
        expect(dry.filter(Boolean).length).toBe(years.reduce((sum, year) => sum + year.dryDays, 0));
      }
    }
  });

  it('streams: a slow reader never has much waiting, and gets the same bytes', async () => {
    const fast = await designOnce('--json');
    const slow = await eavewell(['design', folder, '--json'], { LANG: 'C.UTF-8' }, new Kept(true));
    expect(slow.out).toBe(fast.out);
    expect(slow.stdout.largestWaiting).toBeLessThan(fast.out.length / 10);
  });

  it('ends quietly when the reader goes away', async () => {
    const gone = new (class extends Kept {
      override _write(_chunk: Buffer, _encoding: string, done: (error?: Error | null) => void): void {
        done(Object.assign(new Error('write EPIPE'), { code: 'EPIPE' }));
      }
    })();
    gone.on('error', () => undefined);
    const { err, code } = await eavewell(['design', folder, '--json'], {}, gone);
    expect(code).toBe(0);
    expect(err).not.toMatch(/EPIPE|fault/);
  });
});

describe('design --out', () => {
  it('writes verdicts, the same JSON, problems and what was not used, each whole', async () => {
    const out = join(room, 'designed');
    const { code } = await eavewell(['design', clean, '--out', out, '--series']);
    expect(code).toBe(0);
    expect((await readdir(out)).sort()).toEqual([
      'design.json',
      'not-used.csv',
      'problems.csv',
      'series',
      'verdicts.csv',
    ]);
    const json = await eavewell(['design', clean, '--json', '--series']);
    expect(await readFile(join(out, 'design.json'), 'utf8')).toBe(json.out);
    const verdicts = (await readFile(join(out, 'verdicts.csv'), 'utf8')).trimEnd().split('\n');
    expect(verdicts).toHaveLength(6);
    const daily = await readFile(join(out, 'series', 'S001.csv'), 'utf8');
    expect(daily).toMatch(
      /^date,rain_mm,known,inflow_L,judgedAsked_L,content_L,judgedTaken_L,otherTaken_L,spill_L,secondSource_L,dry\n\d{4}-/,
    );
  });

  it.runIf(process.platform === 'linux')('says so where no folder can be made', async () => {
    const { code, err } = await eavewell(['design', clean, '--out', '/proc/eavewell']);
    expect(code).toBe(2);
    expect(err).toContain('no folder can be made there');
  });

  it('refuses a file in place of the folder', async () => {
    const file = join(room, 'a-file');
    await writeFile(file, '');
    expect((await eavewell(['design', clean, '--out', file])).code).toBe(2);
    expect(await readFile(file, 'utf8')).toBe('');
  });
});

describe('wrong use', () => {
  it('ends with 2 and a suggestion', async () => {
    expect(await eavewell(['desing', folder])).toMatchObject({
      code: 2,
      err: expect.stringMatching(/Did you mean design/),
    });
    expect(await eavewell(['check', folder, '--al'])).toMatchObject({ code: 2, err: expect.stringMatching(/--all/) });
    expect((await eavewell([])).code).toBe(2);
    expect((await eavewell(['check'])).code).toBe(2);
    expect(await eavewell(['check', join(room, 'nowhere')])).toMatchObject({
      code: 2,
      err: expect.stringMatching(/There is no folder/),
    });
  });

  it('teaches by example, within 80 columns', async () => {
    for (const command of [[], ['check'], ['design'], ['demo']]) {
      const { code, out } = await eavewell([...command, '--help']);
      expect(code).toBe(0);
      expect(out).toMatch(/\$ eavewell /);
      expectNarrow(out);
    }
  });

  it('asks for a name where a folder has none', async () => {
    for (const args of [
      ['demo', ''],
      ['design', clean, '--out', ''],
    ]) {
      const { code, err } = await eavewell(args);
      expect([code, err]).toEqual([2, expect.stringMatching(/^The folder has no name\./)]);
    }
  });

  it('never opens what lies outside the folder, whatever links to it', async () => {
    const linked = join(room, 'linked');
    await eavewell(['demo', linked, '--clean', '--sites', '2']);
    await writeFile(join(room, 'secret.csv'), 'siteId,name\nS001,not for you\n');
    await rm(join(linked, 'sites.csv'));
    await symlink(join(room, 'secret.csv'), join(linked, 'sites.csv'));
    const { code, out } = await eavewell(['check', linked]);
    expect(code).toBe(1);
    expect(out).toContain('"sites.csv" leads out of the programme');
    expect(out).not.toContain('not for you');
  });

  it('takes an empty programme for what it is', async () => {
    const empty = join(room, 'empty');
    await mkdir(empty);
    const { code, out } = await eavewell(['design', empty]);
    expect(code).toBe(1);
    expect(out).toMatch(/no site to judge/);
  });
});

describe('our own fault', () => {
  const broken = () =>
    new (class extends Kept {
      override write(): boolean {
        throw new Error('made to fail');
      }
    })();

  it('is one sentence and 70; the stack only on request', async () => {
    const plain = await eavewell(['check', clean], {}, broken());
    expect(plain.code).toBe(70);
    expect(plain.err.trimEnd().split('\n')).toHaveLength(1);
    expect(plain.err).toMatch(/our fault, not yours: made to fail/);
    const traced = await eavewell(['check', clean], { EAVEWELL_TRACE: '1' }, broken());
    expect(traced.err).toMatch(/\n {4}at /);
  });
});
