import {
  designSites,
  type ProgrammeFacts,
  readyProgramme,
  remediesOf,
  type SiteDesign,
  type SiteFacts,
  seriesOf,
  siteSizes,
  verdictOrder,
} from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { madeProgramme, twoTanks } from './madeSites.ts';

const programmes = 40;

/** The two halves of a site with two tanks that are not joined, each as a site of its own, written down without the engine. */
function apart(site: SiteFacts): readonly SiteFacts[] {
  return ['A', 'B'].map((first) => {
    const tanks = site.tanks.filter(({ tankId }) => tankId.startsWith(first));
    const fraction = tanks.find((tank) => tank.peopleFraction !== null)!.peopleFraction!;
    return {
      ...site,
      people: site.people! * fraction,
      tanks: tanks.map((tank) => ({ ...tank, peopleFraction: null })),
      roofs: site.roofs.filter(({ tankId }) => tankId?.startsWith(first)).map((roof) => ({ ...roof, tankId: null })),
    };
  });
}

function designOf(facts: ProgrammeFacts, site: SiteFacts): SiteDesign {
  return designSites([site], readyProgramme(facts)).next().value as SiteDesign;
}

describe('a site with two tanks apart against two sites with one', () => {
  it('the same findings, series and sizes, and the worse verdict', () => {
    const seen: Record<string, number> = {};
    for (let seed = 1; seed <= programmes; seed++) {
      const facts = madeProgramme(seed);
      const site = twoTanks(facts.site, seed);
      const ready = readyProgramme(facts);
      const both = designOf(facts, site);
      const alone = apart(site).map((one) => designOf(facts, one).storages[0]!);
      expect(both.storages).toHaveLength(2);
      for (const finding of alone)
        expect(both.storages.find(({ tankIds }) => tankIds[0] === finding.tankIds[0])).toEqual(finding);
      const worst = verdictOrder.find((verdict) => alone.some((finding) => finding.verdict === verdict))!;
      expect(both.verdict).toBe(worst);
      expect(both.storages[0]!.verdict).toBe(worst);
      expect(both.storages.reduce((sum, { people }) => sum + people, 0)).toBeCloseTo(site.people!, 9);
      if (seed < 5) expect(seriesOf(site, ready)).toEqual(apart(site).flatMap((one) => seriesOf(one, ready)));
      const gauge = ready.gauges.get('G');
      const sizes = siteSizes(site, gauge, ready);
      for (const [index, one] of apart(site).entries())
        expect(sizes[index]!.tankForTarget_L).toBe(siteSizes(one, gauge, ready)[0]!.tankForTarget_L);
      const key = alone.map(({ verdict }) => verdict).join('+');
      seen[key] = (seen[key] ?? 0) + 1;
    }
    // Enough mixtures have been met for the comparison to mean something.
    expect(Object.keys(seen).length).toBeGreaterThan(5);
  });

  it('everybody is served when the last tank serves', () => {
    const facts = madeProgramme(3);
    const site = { ...twoTanks(facts.site, 3), handOverDay: facts.gauges[0]!.readings[100]!.day };
    const days = apart(site).map((one) => designOf(facts, one).firstService!.firstServiceDay);
    expect(designOf(facts, site).firstService!.firstServiceDay).toBe(Math.max(...days));
  });

  it('order of tanks and roofs changes neither design nor remedies', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const facts = madeProgramme(seed);
      const site = twoTanks(facts.site, seed);
      const turned = { ...site, tanks: [...site.tanks].reverse(), roofs: [...site.roofs].reverse() };
      const of = (one: SiteFacts) => {
        const found = remediesOf(one, readyProgramme(facts));
        return found?.remedies.map(({ changes, verdict, goodYears }) => ({
          changes: new Set(changes),
          verdict,
          goodYears,
        }));
      };
      expect(designOf(facts, turned).storages.map(({ verdict, goodYears }) => [verdict, goodYears])).toEqual(
        designOf(facts, site).storages.map(({ verdict, goodYears }) => [verdict, goodYears]),
      );
      expect(of(turned)).toEqual(of(site));
    }
  });
});
