import {
  designSites,
  type ProgrammeFacts,
  type ReadyProgramme,
  type RoofFacts,
  readyProgramme,
  remediesOf,
  type SiteDesign,
  type SiteFacts,
  siteSizes,
} from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { madeProgramme } from './madeSites.ts';

const programmes = 160;

/** One way to change a site, written down without the engine: what it becomes, what it costs, how it is told. */
interface Way {
  readonly kinds: readonly string[];
  readonly site: SiteFacts;
  /** [currency, amount] of what is bought; null where something has no price. */
  readonly cost: { readonly amount: number; readonly currency: string } | null;
  readonly cut: number;
  readonly gutter: number;
  readonly names: string;
}

/** A way, judged by designSite. */
interface Judged extends Way {
  readonly design: SiteDesign;
}

type Bought = readonly (readonly [amount: number | null, currency: string])[];

function money(bought: Bought): Way['cost'] {
  if (bought.some(([amount]) => amount === null)) return null;
  const currencies = [...new Set(bought.map(([, currency]) => currency))];
  if (currencies.length > 1) return null;
  return { amount: bought.reduce((sum, [amount]) => sum + amount!, 0), currency: currencies[0] ?? '' };
}

/** Every way of one change or two, one after the other, by plain loops. */
function everyWay(facts: ProgrammeFacts & { readonly site: SiteFacts }, volumeNow_L: number): Way[] {
  const { site, settings } = facts;
  const priceOf = (partId: string): readonly [number | null, string] => {
    const price = facts.prices.find((one) => one.partId === partId);
    return [price?.amount ?? null, price?.currency ?? ''];
  };
  const tanks = ['small', 'middle', 'large'].map((partId) => ({
    partId,
    volume_L: facts.parts.find((part) => part.partId === partId)!.volume_L!,
  }));
  const bare = {
    tankId: '',
    outletHeight_m: null,
    overflowHeight_m: null,
    diameter_m: null,
    partVolume_L: null,
    role: 'storage' as const,
    peopleFraction: null,
  };
  const flushOf = (roof: RoofFacts, share: number): number => {
    if (roof.diverter === null) return settings.firstFlush_mm;
    return roof.diverter.firstFlush_mm ?? roof.diverter.chamber_L! / (roof.roofPlanArea_m2! * share);
  };
  const flushTo = (roof: RoofFacts, firstFlush_mm: number) => ({
    ...roof,
    diverter: { ...roof.diverter!, firstFlush_mm },
  });

  const gutters = [null, 0.75, 1];
  const flushes = [false, true];
  const now = site.demand.length > 0 ? site.demand : [{ purpose: 'all', litres_per_person_per_day: 7.5, judged: true }];
  const judgedNow = now.filter((one) => one.judged).reduce((sum, one) => sum + one.litres_per_person_per_day, 0);
  const steps = [20, 15, 10, 7.5, 6, 5, 4, 3, 2.5].filter((litres) => litres < judgedNow);
  const demands = [null, ...(now.some((one) => !one.judged) ? [judgedNow] : []), ...steps];
  const sets = [
    [],
    ...tanks.map((tank) => [['secondTank', tank] as const]),
    ...tanks.filter((tank) => tank.volume_L > volumeNow_L).map((tank) => [['largerTank', tank] as const]),
    ...tanks.flatMap((a, i) => tanks.slice(i).map((b) => [['secondTank', a] as const, ['secondTank', b] as const])),
  ];
  const ways: Way[] = [];
  for (const gutter of gutters)
    for (const flush of flushes)
      for (const [cut, litres] of demands.entries())
        for (const set of sets) {
          const count = Number(gutter !== null) + Number(flush) + Number(cut > 0) + set.length;
          if (count < 1 || count > 2) continue;
          let { roofs } = site;
          const bought: (readonly [number | null, string])[] = [];
          let diverters = 0;
          if (gutter !== null) {
            if (roofs.every((roof) => roof.gutteredFraction === null || roof.gutteredFraction >= gutter)) continue;
            const metres: (number | null)[] = [];
            roofs = roofs.map((roof) => {
              const share = roof.gutteredFraction;
              if (share === null || share >= gutter) return roof;
              metres.push(roof.length_m === null ? null : 2 * roof.length_m * (gutter - share));
              const wider = { ...roof, gutteredFraction: gutter };
              const least = Math.min(settings.firstFlush_mm, flushOf(roof, share));
              if (flushOf(wider, gutter) >= least) return wider;
              diverters++;
              return flushTo(wider, least);
            });
            const pieces = (length_m: number) =>
              metres.reduce<number>((sum, one) => sum + Math.ceil(one! / length_m - 1e-9), 0);
            bought.push(metres.includes(null) ? [null, ''] : [Math.min(25 * pieces(4), 17 * pieces(3)), 'XTS']);
          }
          if (flush) {
            const deep = (roof: RoofFacts) => flushOf(roof, roof.gutteredFraction ?? 1) > settings.firstFlush_mm;
            const many = roofs.filter(deep).length;
            if (many === 0) continue;
            diverters += many;
            roofs = roofs.map((roof) => (deep(roof) ? flushTo(roof, settings.firstFlush_mm) : roof));
          }
          if (diverters > 0) {
            const [amount, currency] = priceOf('flush');
            bought.push([amount === null ? null : amount * diverters, currency]);
          }
          let stand = site.tanks;
          for (const [kind, { partId, volume_L }] of set) {
            bought.push(priceOf(partId));
            if (kind === 'largerTank') stand = [];
            const tankId = `bought ${stand.length}`;
            stand = [...stand, { ...bare, tankId, nominal_L: volume_L, joinedTo: stand[0]?.tankId ?? null }];
          }
          const demand =
            litres === null
              ? site.demand
              : now
                  .filter((one) => one.judged)
                  .map((one) => ({
                    ...one,
                    litres_per_person_per_day:
                      litres === judgedNow
                        ? one.litres_per_person_per_day
                        : (one.litres_per_person_per_day * litres) / judgedNow,
                  }));
          ways.push({
            kinds: [
              ...(gutter === null ? [] : ['gutter']),
              ...(flush ? ['firstFlush'] : []),
              ...set.map(([kind]) => kind),
              ...(cut > 0 ? ['litres'] : []),
            ],
            site: { ...site, roofs, tanks: stand, demand },
            cost: money(bought),
            cut,
            gutter: gutter ?? 0,
            names: set.map(([, tank]) => tank.partId).join(' '),
          });
        }
  return ways;
}

function before(a: Judged, b: Judged, withVerdict = true): number {
  const holds = (one: Judged) => Number(one.design.verdict !== 'holds');
  const known = (one: Judged) => Number(one.cost === null);
  const steps = [
    withVerdict ? holds(a) - holds(b) : 0,
    a.cut - b.cut,
    known(a) - known(b),
    a.cost && b.cost && a.cost.amount > 0 && b.cost.amount > 0
      ? Number(a.cost.currency > b.cost.currency) - Number(a.cost.currency < b.cost.currency)
      : 0,
    a.cost && b.cost ? a.cost.amount - b.cost.amount : 0,
    a.kinds.length - b.kinds.length,
    a.design.storages[0]!.tankVolume_L - b.design.storages[0]!.tankVolume_L,
    a.gutter - b.gutter,
    Number(a.kinds.join('+') > b.kinds.join('+')) - Number(a.kinds.join('+') < b.kinds.join('+')),
    Number(a.names > b.names) - Number(a.names < b.names),
  ];
  return steps.find((step) => step !== 0) ?? 0;
}

/** What should be told: of each kind the first that holds and the first, gentler, that is tight; pairs only before every single. */
function told(judged: readonly Judged[]): readonly Judged[] {
  const kept = (some: readonly Judged[]) => {
    const found: Judged[] = [];
    for (const kinds of new Set(some.map((one) => one.kinds.join('+')))) {
      const ofKind = some.filter((one) => one.kinds.join('+') === kinds).sort((a, b) => before(a, b));
      const holds = ofKind.find((one) => one.design.verdict === 'holds');
      const tight = ofKind.find((one) => one.design.verdict === 'tight');
      if (holds) found.push(holds);
      if (tight && (!holds || before(tight, holds, false) < 0)) found.push(tight);
    }
    return found;
  };
  const singles = kept(judged.filter((one) => one.kinds.length === 1)).sort((a, b) => before(a, b));
  const keeping = judged.some((one) => one.cut === 0 && one.design.verdict === 'holds');
  const pairs = kept(judged.filter((one) => one.kinds.length === 2 && !(keeping && one.cut > 0)));
  const early = pairs.filter((pair) => singles.every((single) => before(pair, single) < 0));
  const holding = [...singles, ...early].filter((one) => one.design.verdict === 'holds');
  const useful = early.filter(
    (pair) => pair.design.verdict === 'holds' || holding.every((one) => before(pair, one, false) < 0),
  );
  return [...singles, ...useful].sort((a, b) => before(a, b));
}

function designOf(site: SiteFacts, ready: ReadyProgramme): SiteDesign {
  return designSites([site], ready).next().value as SiteDesign;
}

describe('remedies against judging every change and every pair the long way round', () => {
  it('the same remedies in the same order, each with the verdict, days, years and cost of the changed site', () => {
    const seen: Record<string, number> = {};
    for (let seed = 1; seed <= programmes; seed++) {
      const facts = madeProgramme(seed);
      const ready = readyProgramme(facts);
      const now = designOf(facts.site, ready);
      const found = remediesOf(facts.site, ready);
      seen[now.verdict] = (seen[now.verdict] ?? 0) + 1;
      if (now.verdict !== 'short' && now.verdict !== 'tight') {
        expect(found).toBeNull();
        continue;
      }
      const judged = everyWay(facts, now.storages[0]!.tankVolume_L)
        .map((way): Judged => ({ ...way, design: designOf(way.site, ready) }))
        .filter(({ design }) => design.verdict === 'holds' || (design.verdict === 'tight' && now.verdict === 'short'));
      const wanted = told(judged).map((one) => ({
        kinds: one.kinds,
        names: one.names,
        cut: one.cut,
        verdict: one.design.verdict,
        tankVolume_L: one.design.storages[0]!.tankVolume_L,
        dryDays_per_year: one.design.storages[0]!.dryDays_per_year,
        goodYears: one.design.storages[0]!.goodYears,
        amount: one.cost?.amount ?? null,
      }));
      const got = found!.remedies.map((one) => ({
        kinds: one.changes.map((change) => change.kind),
        names: one.changes.flatMap((change) => ('partId' in change ? [change.partId] : [])).join(' '),
        cut: one.promiseCut_count,
        verdict: one.verdict,
        tankVolume_L: one.tankVolume_L,
        dryDays_per_year: one.dryDays_per_year,
        goodYears: one.goodYears,
        amount: one.cost.amount,
      }));
      expect(got, `programme ${seed}`).toEqual(wanted);
      expect(found!.notMended === null).toBe(judged.some(({ design }) => design.verdict === 'holds'));
      for (const one of found!.remedies) {
        const kinds = one.changes.map((change) => change.kind).join('+');
        seen[kinds] = (seen[kinds] ?? 0) + 1;
        if (one.cost.amount === null) seen['no cost'] = (seen['no cost'] ?? 0) + 1;
      }
      if (found!.notMended) seen[found!.notMended] = (seen[found!.notMended] ?? 0) + 1;
    }
    // Enough of everything has been met for the comparison to mean something.
    console.log(seen);
    for (const kind of [
      ...['short', 'tight', 'holds', 'gutter', 'firstFlush', 'secondTank', 'largerTank', 'litres', 'no cost'],
      ...['secondTank+secondTank', 'gutter+secondTank', 'secondTank+litres', 'gutter+litres'],
    ])
      expect(seen[kind], kind).toBeGreaterThan(1);
  });

  it('the verdict of every size read off one curve is that of the site with that tank', () => {
    let searched = 0;
    for (let seed = 1; seed <= 20; seed++) {
      // Days decide here, not runs: the size that holds lies beyond the one whose good years do.
      const target = { daysMet_fraction: 0.97, longestDryRun_days: 60, goodYears_fraction: 0.8 };
      const made = madeProgramme(seed);
      const facts = { ...made, settings: { ...made.settings, target } };
      const ready = readyProgramme(facts);
      const sizes = siteSizes(facts.site, ready.gauges.get('G'), ready)[0]!;
      const from_L = 0.4 * (sizes.tankForTarget_L ?? sizes.tankVolume_L);
      const tanks = Array.from({ length: 40 }, (_, i) => ({ partId: null, tankVolume_L: from_L * 1.06 ** i }));
      const found = sizes.verdictsAt(tanks);
      for (const { point, verdict } of found) {
        const tank = { ...facts.site.tanks[0]!, nominal_L: point.tankVolume_L, diameter_m: null, joinedTo: null };
        const [storage] = designOf({ ...facts.site, tanks: [tank] }, ready).storages;
        expect(verdict, `programme ${seed}, ${point.tankVolume_L} L`).toBe(storage!.verdict);
        expect(point.goodYears).toBe(storage!.goodYears);
        expect(point.dryDays_per_year).toBe(storage!.dryDays_per_year);
      }
      // The same sizes asked for in other company: the search for the size that holds takes other steps.
      for (let count = 1; count < tanks.length; count++) {
        expect(sizes.verdictsAt(tanks.slice(0, count))).toEqual(found.slice(0, count));
        expect(sizes.verdictsAt(tanks.slice(count))).toEqual(found.slice(count));
      }
      const sure = found.filter(({ point, verdict }) => verdict === 'tight' && point.goodYears === 16).length;
      if (sure > 2 && found.some(({ verdict }) => verdict === 'holds')) searched++;
    }
    expect(searched).toBeGreaterThan(3);
  });
});
