import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { designSites, readyProgramme, type SiteDesign, type SiteFacts } from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { contentOf, type SitePackContent, sitePack } from '@eavewell/paper';
import { siteReport } from '@eavewell/report';
import { english, type Language, loadPaperLanguage } from '@eavewell/words';
import { afterAll, expect, it } from 'vitest';

// The pack of a site, from the tables of a programme to a file of paper.

const room = await mkdtemp(join(tmpdir(), 'eavewell-pack-'));
await writeProgramme(join(room, 'demo'), demoProgramme({ sites: 60 }));
const { facts } = await readProgramme(join(room, 'demo'));
const ready = readyProgramme(facts);
afterAll(() => rm(room, { recursive: true }));

/** The largest site, one without roofs if there is one, and every tenth. */
const largest = [...facts.sites].sort((a, b) => b.roofs.length + b.tanks.length - a.roofs.length - a.tanks.length)[0]!;
const chosen = new Set<SiteFacts>([
  largest,
  ...facts.sites.filter((site, nth) => nth % 10 === 0 || site.roofs.length === 0),
]);

const load = (nth: number): SitePackContent['loads'][number] => ({
  loadId: `L${nth}`,
  carrier: 'Tern',
  weight_kg: 300,
  limit_kg: 450,
  longest_m: 4,
  items: Array.from({ length: 40 }, (_, row) => ({
    ...{ partId: `P${row}`, what: `P${row}`, size: '110 mm', count: row + 1, weight_kg: null, hands_count: 2 },
  })),
  cautions: ['!'],
});

const designs = new Map<SiteFacts, SiteDesign>();
function designOf(site: SiteFacts): SiteDesign {
  const known = designs.get(site) ?? [...designSites([site], ready)][0]!;
  designs.set(site, known);
  return known;
}

function packOf(site: SiteFacts, language: Language) {
  const design = designOf(site);
  const report = siteReport(design, null, language, null);
  const others = { caretaker: null, trip: null, way: [], detail: null, measuredBy: null, measuredOn: null };
  const content = contentOf(
    { programme: 'Lumevara Rivers', site, report, loads: [1, 2, 3].map(load), ...others },
    language,
  );
  return { content, report, pack: sitePack(content, language, { printedOn: '2026-06-09', printedAt: null }) };
}

it('sites of the demo have a pack of six pages at most, the largest of them too, each with all its cautions', () => {
  expect(chosen.size).toBeGreaterThan(5);
  for (const site of chosen) {
    const { content, report, pack } = packOf(site, english);
    expect(pack.kind, site.siteId).toBe('made');
    if (pack.kind !== 'made') continue;
    expect(pack.pages_count, site.siteId).toBeLessThanOrEqual(6);
    expect(pack.isOver).toBe(false);
    const said = content.steps.flatMap(({ cautions }) => cautions).join(' ');
    for (const caution of report.cautions) expect(said).toContain(caution.said);
    if (report.standGate.gate === 'closed') expect(content.cautions).toContain(report.standGate.said);
    for (const { figure, reason, toDo } of content.stations)
      expect(`${figure} ${reason} ${toDo}`).not.toMatch(/NaN|undefined|Infinity/);
  }
});

it('every language of paper makes it, whichever way it runs, and makes the same file twice', async () => {
  for (const tag of ['es', 'ar', 'hi', 'ar-XB']) {
    const language = await loadPaperLanguage(tag);
    const { pack } = packOf(largest, language);
    expect(pack.kind, tag).toBe('made');
    if (pack.kind === 'made' && tag === 'ar')
      expect(Buffer.compare(pack.bytes, (packOf(largest, language).pack as typeof pack).bytes)).toBe(0);
  }
});
