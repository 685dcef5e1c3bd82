import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  designSites,
  type ProgrammeFacts,
  readIsoDay,
  readyProgramme,
  type SiteDesign,
  wearOf,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoProgramme } from './demoProgramme.ts';

describe('treatment, samples and raw water of sixty sites, seed 1', () => {
  const { planted: _, ...programme } = demoProgramme();
  const { tables } = programme;
  let read: { readonly facts: ProgrammeFacts };
  let found: { readonly designs: readonly SiteDesign[]; readonly problems: SiteDesign['problems'] };
  beforeAll(async () => {
    const folder = await mkdtemp(join(tmpdir(), 'demo-'));
    try {
      await writeProgramme(folder, programme);
      read = await readProgramme(folder);
    } finally {
      await rm(folder, { recursive: true });
    }
    const designs = [...designSites(read.facts.sites, readyProgramme(read.facts))];
    found = { designs, problems: designs.flatMap(({ problems }) => problems) };
  });

  test('units, samples and raw water show what each may come to', () => {
    const rows = (name: keyof typeof tables) => tables[name] ?? [];
    const sitesOf = (name: keyof typeof tables) => new Set(rows(name).map(({ siteId }) => siteId));
    const withUnits = sitesOf('treatmentUnits').size;
    expect(withUnits).toBeGreaterThan(40);
    expect(withUnits).toBeLessThan(60);
    expect(sitesOf('flowReadings').size).toBeGreaterThan(withUnits / 5);
    expect(sitesOf('flowReadings').size).toBeLessThan(withUnits / 2);
    expect(sitesOf('pressureTests').size).toBeGreaterThanOrEqual(3);
    expect(sitesOf('waterTests').size).toBeGreaterThan(30);
    expect(sitesOf('chlorination').size).toBe(2);
    expect(rows('rawWater').every(({ source }) => String(source).startsWith('invented'))).toBe(true);
    const ofUnits = rows('parts').filter(({ kind }) => kind === 'treatmentUnit');
    const shown = ofUnits.filter(({ evidence }) => evidence === 'challengeTest');
    expect(shown.map(({ viruses_log10 }) => viruses_log10 ?? null)).toEqual([null, 4]);
    expect(shown.every(({ evidenceSource }) => String(evidenceSource).startsWith('invented'))).toBe(true);
    const safeties = found.designs.flatMap(({ safety }) => safety ?? []);
    expect(new Set(safeties.map(({ mayDrink }) => mayDrink))).toEqual(new Set(['yes', 'no', 'notShown']));
    // Two with a count of E. coli at the tap, one where every tube turned.
    const last = safeties.flatMap(({ waterTests }) => waterTests.last ?? []);
    expect(last.filter(({ sign, count_per_100mL: count }) => sign === 'equal' && count! > 0)).toHaveLength(2);
    expect(last.filter(({ sign }) => sign === 'more')).toHaveLength(1);
    const told = new Set(found.problems.map(({ code }) => code));
    for (const code of [
      ...['waterTests.rare', 'waterTests.before_handover', 'chlorine.residual_low', 'treatment.test_fails'],
      ...['safety.lead', 'safety.coating', 'safety.asbestos', 'safety.trees', 'safety.no_barrier'],
    ])
      expect(told, code).toContain(code);
    // Without evidence for viruses they are too many, unless there is chlorine.
    const plain = new Set(
      rows('treatmentUnits').flatMap((row) => (row['partId'] === 'unit-hand' ? [row['siteId']] : [])),
    );
    const atPlain = found.designs.filter(({ siteId }) => plain.has(siteId));
    expect(atPlain.filter(({ stations }) => stations.cup === 'short')).toHaveLength(atPlain.length - 1);
  });

  test('sets of cartridges are due on different days, one is overdue, and a meter runs backwards', () => {
    const facts = { ...read.facts, settings: { ...read.facts.settings, futures: 50 } };
    const ready = readyProgramme(facts, { today: readIsoDay('2026-09-01')! });
    const worn = facts.sites.map((site) => wearOf(site, ready));
    const codes = worn.flatMap(({ problems }) => problems.map(({ code }) => code));
    expect(codes.filter((code) => code === 'wear.overdue')).toHaveLength(1);
    expect(codes.filter((code) => code === 'wear.meter_backwards')).toHaveLength(1);
    const ends = worn.flatMap(({ finding }) => (finding ?? []).flatMap(({ endsOn }) => endsOn?.p50 ?? []));
    expect(new Set(ends).size).toBeGreaterThan(20);
    expect(ends.filter((day) => day < readIsoDay('2027-04-01')!).length).toBeGreaterThanOrEqual(3);
  });
});
