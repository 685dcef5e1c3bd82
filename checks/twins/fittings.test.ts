// long: sites, catalogue and every combination by hand stand in one place, with nothing shared with the engine
import {
  changedSite,
  type DownpipeFacts,
  designSite,
  type GutterFacts,
  otherStations,
  type PartFacts,
  type PriceFacts,
  type ProgrammeFacts,
  type ReadyProgramme,
  rainOfSite,
  readyProgramme,
  remediesOf,
  type SiteFacts,
  unmeasuredGutter,
  unmeasuredPart,
  type Verdict,
} from '@eavewell/engine';
import { expect, it } from 'vitest';
import { madeProgramme } from './madeSites.ts';
import { numbersFrom } from './records.ts';
import { slowBars_count } from './slowBars.ts';

// Gutters and pipes of a remedy against every combination of a small catalogue, each built by hand and judged the long way round.

const sites = process.env['EAVEWELL_SOAK'] === undefined ? 48 : 400;
const day = 11_000;

interface Made {
  readonly facts: ProgrammeFacts & { readonly site: SiteFacts };
  readonly roofId: string;
}

/** A site with water enough, one roof with measured gutters, and pipes to its taps; a storm, and a small catalogue. */
// long: one site and its catalogue, fact by fact
function madeSite(seed: number): Made {
  const made = madeProgramme(seed);
  const next = numbersFrom(seed * 6151 + 5);
  for (let i = 0; i < 8; i++) next();
  const one = <T>(...choices: readonly T[]): T => choices[Math.floor(next() * choices.length)]!;
  const roof = {
    ...made.site.roofs[0]!,
    length_m: 18,
    width_m: 8,
    roofPlanArea_m2: one(60, 110, 170),
    gutteredFraction: 1,
    pitch_deg: one(10, 22),
    eaveHeight_m: 4,
    diverter: null,
  };
  const gutter = (gutterId: string): GutterFacts => ({
    ...unmeasuredGutter,
    gutterId,
    roofId: roof.roofId,
    shape: one('halfRound' as const, 'rectangular' as const),
    width_mm: one(80, 100, 125, 150),
    depth_mm: one(50, 62, 75),
    length_m: one(9, 18),
    fall_mm_per_m: one(0, 5),
    outlet_mm: one(50, 63, 75),
    outlets_count: one(null, 1, 2),
    runToOutlet_m: one(null, null, 9),
    bends_count: one(null, 0, 1),
  });
  const downpipe = (downpipeId: string): DownpipeFacts => ({
    downpipeId,
    roofId: roof.roofId,
    bore_mm: one(40, 50, 63, 75),
    length_m: one(3, 3.5),
  });
  const tank = {
    ...made.site.tanks[0]!,
    tankId: 'T1',
    nominal_L: 400_000,
    diameter_m: null,
    joinedTo: null,
    outletHeight_m: 0.1,
    overflowHeight_m: 2,
    height_m: 2.3,
    standHeight_m: one(0, 0, 0.8),
    // Where there are two gutters its overflow does, so that not every combination is tried with every overflow.
    overflowBore_mm: seed % 4 === 0 ? 200 : one(40, 63, 90),
    overflows_count: one(null, 1, 2),
    overflowScreen: one('open' as const, 'screened' as const),
  };
  const pipe = (pipeId: string, leg: 'tankToUnit' | 'unitToTap') => ({
    pipeId,
    tankId: one(null, 'T1'),
    leg,
    bore_mm: one(15, 20, 25),
    length_m: one(4, 12, 30),
    material: 'plastic' as const,
    elbows_count: one(0, 3),
    tees_count: 0,
    valves_count: one(0, 1),
    meters_count: 0,
    otherLoss_k: null,
  });
  const site: SiteFacts = {
    ...made.site,
    roofs: [roof],
    tanks: [tank],
    people: 12,
    secondSource: null,
    demand: [],
    gutters: seed % 4 === 0 ? [gutter('G1'), gutter('G2')] : [gutter('G1')],
    downpipes: one([downpipe('D1')], [downpipe('D1'), downpipe('D2')], []),
    pipes: seed % 3 === 0 ? [] : [pipe('P1', 'tankToUnit'), pipe('P2', 'tankToUnit'), pipe('P3', 'unitToTap')],
    taps_count: one(1, 2, 3),
    tapHeight_m: one(-2, -1, 0.4),
    unitHeight_m: -1,
    hasHandPump: one(false, false, true),
  };
  const part = (partId: string, kind: string, sizes: Partial<PartFacts>): PartFacts => ({
    ...unmeasuredPart,
    partId,
    kind,
    name: partId,
    ...sizes,
  });
  const trough = (partId: string, topWidth_mm: number, depth_mm: number) =>
    part(partId, 'gutter', { shape: 'halfRound', topWidth_mm, depth_mm, length_m: one(3, 4) });
  const bore = (partId: string, kind: string, bore_mm: number, length_m: number | null = null) =>
    part(partId, kind, { bore_mm, length_m });
  const parts = [
    trough('trough-a', 125, 70),
    trough('trough-b', one(150, 180), 90),
    bore('outlet-a', 'outlet', 75),
    bore('outlet-b', 'outlet', one(90, 110)),
    bore('down-a', 'downpipe', one(63, 75), 3),
    bore('down-b', 'downpipe', 110, 4),
    bore('over-a', 'overflow', one(75, 90)),
    bore('over-b', 'overflow', 160),
    bore('pipe-a', 'pipe', 32, one(6, 25)),
    bore('pipe-b', 'pipe', one(40, 50), 6),
  ];
  const prices = parts.flatMap(({ partId }): PriceFacts[] =>
    seed % 9 === 4 && partId.endsWith('a')
      ? []
      : [{ partId, priceDate: day, amount: 5 + Math.floor(next() * 40), currency: 'XTS' }],
  );
  const storm = {
    returnPeriod_years: 20,
    intensity_mm_per_h: one(90, 160, 240),
    low_mm_per_h: null,
    high_mm_per_h: null,
  };
  const gauges = made.gauges.map((gauge) => ({ ...gauge, storms: [{ ...storm, source: 'made' }] }));
  const settings = { ...made.settings, unitHead_m: one(0.2, 1) };
  return { facts: { ...made, site, sites: [site], gauges, parts, prices, settings }, roofId: roof.roofId };
}

type Judge = (site: SiteFacts) => { readonly gutter: Verdict | 'notJudged'; readonly tap: Verdict | 'notJudged' };

function judgeOf(site: SiteFacts, ready: ReadyProgramme): Judge {
  const storm = rainOfSite(site, ready)?.storm ?? null;
  const given = { settings: ready.settings, parts: [], storm, stormTold: null, rainByIntensity: null };
  return (changed) =>
    otherStations(changed, { ...given, demandHighest_L_per_day: new Map(), sourceDays: null, today: null }).verdicts;
}

type Money = number | null;
const plus = (a: Money, b: Money): Money => (a === null || b === null ? null : a + b);
const cheaper = (a: Money, b: Money): Money => (a === null ? b : b === null ? a : Math.min(a, b));
const worth = { short: 0, unknown: 1, tight: 2, holds: 3, notJudged: 4 };

/** The least that can be paid to come to each verdict; undefined where nothing comes to it; null where it has no price. */
type Least = Partial<Record<'tight' | 'holds', Money>>;

function noted(least: Least, verdict: Verdict | 'notJudged', cost: Money): void {
  if (verdict !== 'holds' && verdict !== 'tight') return;
  least[verdict] = verdict in least ? cheaper(least[verdict]!, cost) : cost;
}

const subsets = <T>(all: readonly T[]): readonly (readonly T[])[] =>
  Array.from({ length: 2 ** all.length }, (_, bits) => all.filter((_one, at) => (bits >> at) & 1));

function priceIn(facts: ProgrammeFacts, partId: string): Money {
  return facts.prices.find((one) => one.partId === partId)?.amount ?? null;
}
const pieces = (runs_m: readonly number[], part: PartFacts) => slowBars_count(runs_m, part.length_m!);

/** What is done to one gutter. */
interface GutterWay {
  readonly gutter: GutterFacts;
  readonly cost: Money;
  readonly added: number;
}

function gutterWays(facts: ProgrammeFacts, there: GutterFacts): GutterWay[] {
  const of = (kind: string) => facts.parts.filter((part) => part.kind === kind);
  const ways: GutterWay[] = [];
  for (const trough of [null, ...of('gutter')])
    for (const outlet of [null, ...of('outlet')])
      for (const added of [0, 1])
        for (const extra of outlet === null && added === 1
          ? of('outlet').filter((part) => part.bore_mm! >= there.outlet_mm!)
          : [null]) {
          const outlets = there.outlets_count ?? 1;
          // The only runs here that are those of an outlet in the middle: nine metres of eighteen.
          const isInMiddle = outlets === 1 && there.runToOutlet_m === 9 && there.length_m === 18;
          const each = (part: PartFacts, count: number): Money => {
            const price = priceIn(facts, part.partId);
            return price === null ? null : price * count;
          };
          let cost: Money = 0;
          if (trough) cost = plus(cost, each(trough, pieces([there.length_m!], trough)));
          if (outlet) cost = plus(cost, each(outlet, outlets + added));
          if (extra) cost = plus(cost, each(extra, 1));
          const gutter: GutterFacts = {
            ...there,
            ...(trough
              ? { shape: trough.shape, width_mm: trough.topWidth_mm, depth_mm: trough.depth_mm, baseWidth_mm: null }
              : {}),
            ...(outlet ? { outlet_mm: outlet.bore_mm } : {}),
            ...(added ? { outlets_count: outlets + 1, runToOutlet_m: isInMiddle ? there.length_m! / 4 : null } : {}),
          };
          ways.push({ gutter, cost, added });
        }
  return ways;
}

/** Every choice for one roof: each gutter by itself, any of its downpipes of one part, and as many more as it has more outlets. */
function leastForGutters({ facts, roofId }: Made, judge: Judge): Least {
  const { site } = facts;
  const least: Least = {};
  let gutters: { readonly ways: readonly GutterWay[] }[] = [{ ways: [] }];
  for (const there of site.gutters)
    gutters = gutters.flatMap(({ ways }) => gutterWays(facts, there).map((way) => ({ ways: [...ways, way] })));
  const overflows = site.gutters.length > 1 ? [null] : [null, ...facts.parts.filter(({ kind }) => kind === 'overflow')];
  const pipes = facts.parts.filter(({ kind }) => kind === 'downpipe');
  const widest_mm = Math.max(...site.gutters.map(({ outlet_mm }) => outlet_mm!));
  // What becomes of the downpipes and of the overflow says nothing of the gutters, so each is judged with the others as good as they get.
  const verdicts = new Map<string, Verdict | 'notJudged'>();
  const judged = (changed: SiteFacts, key: string) => {
    const known = verdicts.get(key) ?? judge(changed).gutter;
    verdicts.set(key, known);
    return known;
  };
  for (const { ways } of gutters) {
    const added = ways.reduce((sum, way) => sum + way.added, 0);
    const cost = ways.reduce<Money>((sum, way) => plus(sum, way.cost), 0);
    for (const part of added > 0 ? pipes : [null, ...pipes])
      for (const replaced of part === null ? [[]] : subsets(site.downpipes)) {
        if (part !== null && added === 0 && replaced.length === 0) continue;
        if (part !== null && site.downpipes.length === 0 && part.bore_mm! < widest_mm) continue;
        const longest_m = site.downpipes.length > 0 ? Math.max(...site.downpipes.map(({ length_m }) => length_m!)) : 4;
        const runs = [...replaced.map(({ length_m }) => length_m!), ...Array.from({ length: added }, () => longest_m)];
        const price = part === null ? 0 : priceIn(facts, part.partId);
        const ofPipes = price === null ? null : price * (part ? pieces(runs, part) : 0);
        const extra = Array.from(
          { length: site.downpipes.length > 0 ? added : 0 },
          (_, index): DownpipeFacts => ({
            downpipeId: `X${index}`,
            roofId,
            bore_mm: part!.bore_mm,
            length_m: longest_m,
          }),
        );
        const downpipes = [
          ...site.downpipes.map((pipe) => (replaced.includes(pipe) ? { ...pipe, bore_mm: part!.bore_mm } : pipe)),
          ...extra,
        ];
        for (const overflow of overflows) {
          const tank = site.tanks[0]!;
          const ofOverflow = overflow === null ? 0 : priceIn(facts, overflow.partId);
          const all = plus(
            plus(cost, ofPipes),
            ofOverflow === null ? null : ofOverflow * (overflow ? (tank.overflows_count ?? 1) : 0),
          );
          const tanks = [overflow === null ? tank : { ...tank, overflowBore_mm: overflow.bore_mm }];
          const key = JSON.stringify([
            ways.map((way) => way.gutter),
            downpipes.map(({ bore_mm }) => bore_mm),
            overflow?.partId,
          ]);
          noted(least, judged({ ...site, gutters: ways.map((way) => way.gutter), downpipes, tanks }, key), all);
        }
      }
  }
  return least;
}

function leastForPipes({ facts }: Made, judge: Judge): Least {
  const { site } = facts;
  const least: Least = {};
  for (const part of facts.parts.filter(({ kind }) => kind === 'pipe'))
    for (const some of subsets(site.pipes)) {
      if (some.length === 0 || some.some(({ bore_mm }) => bore_mm! >= part.bore_mm!)) continue;
      const price = priceIn(facts, part.partId);
      const runs_m = some.map(({ length_m }) => length_m!);
      const pipes = site.pipes.map((pipe) => (some.includes(pipe) ? { ...pipe, bore_mm: part.bore_mm } : pipe));
      noted(least, judge({ ...site, pipes }).tap, price === null ? null : price * pieces(runs_m, part));
    }
  return least;
}

/** What a station comes to, and for how much; null where it cannot be lifted. */
function lift(
  now: Verdict | 'notJudged',
  least: Least,
): { readonly verdict: 'tight' | 'holds'; readonly cost: Money } | null {
  for (const verdict of ['holds', 'tight'] as const)
    if (verdict in least && worth[verdict] > worth[now]) return { verdict, cost: least[verdict]! };
  return null;
}

it('finds the least of all combinations of gutters, outlets, downpipes, overflows and pipes', {
  timeout: 600_000,
}, () => {
  const seen: Record<string, number> = {};
  const count = (what: string) => {
    seen[what] = (seen[what] ?? 0) + 1;
  };
  for (let seed = 1; seed <= sites; seed++) {
    const made = madeSite(seed);
    const { site } = made.facts;
    const ready = readyProgramme(made.facts);
    const gauge = rainOfSite(site, ready);
    const design = designSite(site, gauge, ready);
    expect(design.stations.storage, `site ${seed}`).toBe('holds');
    const judge = judgeOf(site, ready);
    const { gutter, tap } = design.stations;
    const isWanting = (verdict: string) => verdict === 'short' || verdict === 'tight';
    const lifts = [
      ...(isWanting(gutter) ? [lift(gutter, leastForGutters(made, judge))] : []),
      ...(isWanting(tap) ? [lift(tap, leastForPipes(made, judge))] : []),
    ];
    const found = remediesOf(site, ready);
    if (!isWanting(gutter) && !isWanting(tap)) {
      count('nothing to do');
      continue;
    }
    const done = lifts.filter((one) => one !== null);
    const moved = [
      isWanting(gutter) && lifts[0] !== null ? gutter : null,
      isWanting(tap) && lifts.at(-1) !== null ? tap : null,
    ];
    const then = done.some(({ verdict }) => verdict === 'tight') ? 'tight' : 'holds';
    const isBetter = done.length > 0 && (then === 'holds' || moved.includes('short'));
    expect(found, `site ${seed}`).not.toBeNull();
    expect(found!.leaveIt).toBeNull();
    if (!isBetter) {
      expect(found!.remedies, `site ${seed}`).toEqual([]);
      count('nothing does it');
      continue;
    }
    const [first] = found!.remedies;
    expect(found!.remedies.length, `site ${seed}`).toBe(1);
    const cost = done.reduce<Money>((sum, one) => plus(sum, one.cost), 0);
    expect([first!.verdict, first!.cost.amount], `site ${seed}`).toEqual([then, cost]);
    for (const { kind } of first!.changes) count(kind);
    count(first!.verdict);
    const after = designSite(changedSite(site, first!.changes, made.facts.settings)!.site, gauge, ready);
    const left = first!.besides.length > 0;
    if (!left) expect(after.verdict, `site ${seed}`).toBe(first!.verdict);
  }
  console.log(seen);
  for (const kind of ['largerGutter', 'outlet', 'downpipe', 'overflow', 'pipe', 'holds', 'nothing does it'])
    expect(seen[kind], kind).toBeGreaterThan(1);
});

it('says that it is the taps that stay, where the widest pipe leaves them tight and nothing else is judged', () => {
  const { facts } = madeSite(1);
  const narrow = facts.site.pipes.map((pipe) => ({ ...pipe, tankId: null, bore_mm: 15 }));
  const tank = { ...facts.site.tanks[0]!, standHeight_m: 0.05 };
  const heights = { tapHeight_m: -2, unitHeight_m: -1, taps_count: 2, hasHandPump: false };
  const site = { ...facts.site, ...heights, tanks: [tank], gutters: [], downpipes: [], pipes: narrow };
  // 2.15 m of fall, 0.9 m of it in the unit, 1 m wanted at the taps: pipes of no loss at all leave 0.25 m, under the margin.
  const settings = {
    ...facts.settings,
    unitHead_m: 0.9,
    residualHead_m: 1,
    headMargin_m: 0.5,
    judgeStand: 'never' as const,
  };
  const wide = facts.parts.map((part) => (part.partId === 'pipe-b' ? { ...part, bore_mm: 63 } : part));
  const ready = readyProgramme({ ...facts, site, sites: [site], settings, parts: wide } as ProgrammeFacts);
  expect(designSite(site, rainOfSite(site, ready), ready).stations).toMatchObject({ storage: 'holds', tap: 'short' });
  const found = remediesOf(site, ready)!;
  expect(found.remedies.map(({ verdict }) => verdict)).toEqual(['tight']);
  expect([found.notMended, found.besides]).toEqual(['head', []]);
});

it('mends what is tight by its figures where the rest is so by an assumption alone, and leaves that to a survey', () => {
  let mended = 0;
  for (let seed = 1; seed <= 160; seed++) {
    const { facts } = madeSite(seed);
    const roofs = facts.site.roofs.map((roof) => ({ ...roof, pitch_deg: null, form: null }));
    const site: SiteFacts = { ...facts.site, roofs, pipes: [] };
    // Mild enough for some parts to carry it, and known so roughly that others carry its middle alone.
    const intensity_mm_per_h = 20 + (seed % 8) * 10;
    const storm = { intensity_mm_per_h, low_mm_per_h: 10, high_mm_per_h: 1.4 * intensity_mm_per_h };
    const gauges = facts.gauges.map((one) => ({ ...one, storms: one.storms.map((each) => ({ ...each, ...storm })) }));
    const settings = { ...facts.settings, judgeStand: 'never' as const };
    const ready = readyProgramme({ ...facts, site, sites: [site], gauges, settings } as ProgrammeFacts);
    const gauge = rainOfSite(site, ready);
    const { drainage, stations } = designSite(site, gauge, ready);
    if (stations.gutter !== 'tight' || drainage!.cappedBy !== null) continue;
    const found = remediesOf(site, ready)!;
    for (const { changes, verdict, besides } of found.remedies) {
      mended++;
      const after = designSite(changedSite(site, changes, facts.settings)!.site, gauge, ready);
      expect([verdict, besides, after.drainage!.cappedBy], `site ${seed}`).toEqual([
        'tight',
        [],
        'drainage.pitch_unknown',
      ]);
      for (const { capacity_L_per_s, flow_L_per_s_range } of after.drainage!.parts)
        expect(flow_L_per_s_range!.high).toBeLessThanOrEqual(capacity_L_per_s!);
      expect(found.notMended).toBe('facts');
    }
  }
  expect(mended).toBeGreaterThan(2);
});
