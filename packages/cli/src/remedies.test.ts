import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type DesignReport, designReport } from '@eavewell/tables';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = (...args: readonly string[]) => keptRun(args);

let room: string;
let folder: string;

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-remedies-'));
  folder = join(room, 'islands');
  await eavewell('demo', folder);
});
afterAll(() => rm(room, { recursive: true, force: true }));

/** The report of the demo, each by its options worked out once. */
const reports = new Map<string, Promise<DesignReport>>();
function reportOf(...args: readonly string[]): Promise<DesignReport> {
  const known =
    reports.get(args.join(' ')) ??
    eavewell('design', folder, '--json', ...args).then(({ out }) => designReport.parse(JSON.parse(out)));
  reports.set(args.join(' '), known);
  return known;
}

describe('design with remedies', () => {
  it('says under each short site what would mend it and for how much, and adds it up', async () => {
    const { out } = await eavewell('design', folder);
    const report = await reportOf();
    // One that has no verdict for its tank is asked for its facts first.
    const short = report.sites.filter((site) => site.verdict === 'short' && site.storages.length > 0);
    expect(short.length).toBeGreaterThan(3);
    expect(out.match(/^ {13}(Would hold|Would be tight|No change)/gm)).toHaveLength(short.length);
    expect(out).toMatch(/Would hold: gutter 100 % of the roof and join a tank of 11,000 L;\s+1,496 USD\./);
    const holding = report.sites.flatMap(({ remedies }) => {
      const [first] = remedies?.ranked ?? [];
      return first?.verdict === 'holds' && remedies!.notMended === null ? [first] : [];
    });
    const unpriced = holding.filter(({ cost }) => cost.amount === null).length;
    const besides = unpriced === 0 ? '' : ` \\+ ${unpriced} not known`;
    expect(out).toMatch(new RegExp(`^ {2}together +holds +${holding.length} +[\\d,]+ +[\\d,]+ USD${besides}$`, 'm'));
    // What no cost has in it is said once under the list.
    expect(
      out.match(/Not in it:\s+downpipes\s+that\s+are\s+not\s+named,\s+brackets,\s+stand,\s+carrying,\s+work\./g),
    ).toHaveLength(1);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });

  it('tells another site and a second source near by with what they ask for', async () => {
    const near = join(room, 'near');
    await eavewell('demo', near);
    // The same demo as that of the other tests, before it is changed.
    const before = await reportOf();
    const split = before.sites.find((site) => site.remedies?.ranked[0]?.changes.some(({ kind }) => kind === 'people'))!;
    const sites = (await readFile(join(near, 'sites.csv'), 'utf8')).split(/\r?\n/);
    const column = sites[0]!.split(',').indexOf('nearSecondSource');
    const named = (row: string) => row.split(',').with(column, 'ford').join(',');
    const withNear = sites.map((row) => (row.startsWith(`${split.siteId},`) ? named(row) : row));
    await writeFile(join(near, 'sites.csv'), withNear.join('\n'));
    await writeFile(join(near, 'secondSources.csv'), 'secondSourceId,name,kind,months\nford,Grey Ford,river,1 to 12\n');
    const { out } = await eavewell('design', near, '--site', split.siteId);
    expect(out).toMatch(/another\s+site\s+for\s+\d+\s+people/);
    expect(out).toMatch(/use the river \(Grey Ford\)/);
    expect(out).toMatch(
      /Water of the second source on [\d.]+ days a year: it must\s+be\s+treated\s+before\s+anyone\s+drinks\s+it;\s+ask/,
    );
    expect(out).toMatch(/no\s+one\s+is\s+sent\s+away\s+before/);
    expect(out).toMatch(/Cost not known: another site is not priced\./);
    expect(out).toMatch(/Cost not known: fetching water and treating it is not priced\./);
    const after = designReport.parse(JSON.parse((await eavewell('design', near, '--json')).out));
    const ranked = after.sites.find(({ siteId }) => siteId === split.siteId)!.remedies!.ranked;
    const source = ranked.findIndex(({ changes }) => changes.some(({ kind }) => kind === 'secondSource'));
    expect(ranked[source]).toMatchObject({ verdict: 'tight', cost: { amount: null, reason: 'secondSource' } });
    expect(ranked[source]!.sourceDays_per_year).toBeGreaterThan(0);
  });

  it('shows all of one site in order, within 80 columns, with what a dry year brings', async () => {
    const { out } = await eavewell('design', folder, '--site', 'S057');
    const section = /\nWhat would mend it\n([\s\S]*?)\n\n/.exec(out)![1]!;
    expect(section).toMatch(/change +becomes +dry days a year +good years +cost/);
    expect(section.indexOf(' holds ')).toBeLessThan(section.indexOf(' tight '));
    expect(section).toMatch(/promise 6 L a person \* +holds .* nothing$/m);
    expect(section).toMatch(/\* cuts what was promised;/);
    expect(out).toMatch(/Good years +\d+ of \d+ years +\d+( to \d+)? of \d+ +at least/);
    expect(out).not.toContain('…');
    expect(section).toMatch(
      /Leave it, and tell the community: a\s+year\s+as\s+the\s+worst\s+on\s+record,\s+as\s+from\s+\d+\s+[A-Z][a-z]+\s+\d{4},\s+brings\s+\d+\s+days/,
    );
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
    const held = (await reportOf()).sites.find((site) => site.verdict === 'holds')!;
    expect((await eavewell('design', folder, '--site', held.siteId)).out).not.toContain('What would mend it');
  });

  it('gives them as JSON and in verdicts.csv, for sites that are short or tight and no others', async () => {
    const out = join(room, 'out');
    await eavewell('design', folder, '--out', out);
    const report = await reportOf();
    const lines = (await readFile(join(out, 'verdicts.csv'), 'utf8')).trimEnd().split('\n');
    expect(lines[0]).toMatch(
      /,smallestRemedy,smallestRemedyVerdict,smallestRemedyCost_amount,smallestRemedyCost_currency,siteClass,/,
    );
    const targets = new Map([
      [null, ',,programme,0.95,7,0.8'],
      ['school', ',school,class,0.95,10,0.8'],
      ['clinic', ',clinic,class,0.98,5,0.9'],
    ]);
    let [looked, mended, amount] = [0, 0, 0];
    for (const [index, site] of report.sites.entries()) {
      if (site.verdict === 'holds' || site.storages.length === 0) expect(site.remedies).toBeNull();
      else if (site.verdict !== 'unknown') expect(site.remedies).not.toBeNull();
      if (site.remedies !== null) looked++;
      const target = targets.get(site.siteClass)!;
      const first = site.remedies?.ranked[0];
      if (first === undefined) {
        expect(lines[index + 1]!.endsWith(`,,,,${target}`)).toBe(true);
        continue;
      }
      // One that gutters alone are mended at, and whose water does not last, is counted nowhere as mended.
      const isCounted = !first.besides.includes('storage');
      if (isCounted && (first.verdict === 'tight' || site.remedies!.notMended === null)) mended++;
      const about = first.about.includes(',') ? `"${first.about}"` : first.about;
      const { amount: own, currency } = first.cost;
      expect(lines[index + 1]!.endsWith(`,${about},${first.verdict},${own ?? ''},${currency ?? ''}${target}`)).toBe(
        true,
      );
      if (isCounted) amount += own ?? 0;
    }
    expect(mended).toBeGreaterThan(3);
    expect(report.remedies.looked.sites).toBe(looked);
    expect(report.remedies.looked.costs).toEqual([{ amount, currency: 'USD' }]);
    expect(report.remedies.groups.reduce((sum, group) => sum + group.sites, 0)).toBe(mended);
    const named = report.remedies.notMended.flatMap(({ siteIds }) => siteIds);
    const none = report.sites.filter((site) => site.remedies !== null && site.remedies.notMended !== null);
    expect(named.sort()).toEqual(none.map(({ siteId }) => siteId).sort());
  });

  it('costs at the prices of the day that is named, and never takes a missing price for 0', async () => {
    const costOf = (report: Awaited<ReturnType<typeof reportOf>>) =>
      report.sites.find((site) => site.siteId === 'S040')!.remedies!.ranked[0]!.cost;
    const [now, before, never] = [
      await reportOf(),
      await reportOf('--prices-on', '2025-06-01'),
      await reportOf('--prices-on', '2024-06-01'),
    ];
    expect(now.remedies.pricesOn).toBe('2026-02-02');
    expect(costOf(before).amount).toBeLessThan(costOf(now).amount!);
    expect(costOf(never)).toMatchObject({ amount: null, currency: null, reason: 'onlyLaterPrices' });
    expect(never.remedies.looked.costs).toEqual([]);
    const { code, err } = await eavewell('design', folder, '--prices-on', 'Tuesday');
    expect(code).toBe(2);
    expect(err).toContain('--prices-on needs a day');
  });

  it('says why where nothing can be bought', async () => {
    const bare = join(room, 'bare');
    await eavewell('demo', bare);
    await writeFile(join(bare, 'prices.csv'), 'partId,priceDate,amount,currency\n');
    const { out } = await eavewell('design', bare, '--site', 'S040');
    expect(out).toMatch(/There are no prices\./);
    expect(out).toMatch(/Cost not known: no price\./);
    expect(out).not.toMatch(/\b0 USD/);
  });
});
