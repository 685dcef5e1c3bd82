import type { ProgrammeFacts, RoofFacts, SiteFacts } from '@eavewell/engine';
import { unmeasuredTank } from '@eavewell/engine';
import { slowBars_count } from './slowBars.ts';

/** One way to change a site, written down without the engine: what it becomes, what it costs, how it is told. */
export interface Way {
  readonly kinds: readonly string[];
  readonly site: SiteFacts;
  /** [currency, amount] of what is bought; null where something has no price. */
  readonly cost: { readonly amount: number; readonly currency: string } | null;
  readonly cut: number;
  /** People sent to a site of their own, 0 where everybody stays. */
  readonly others: number;
  /** 1 where the source near by is declared. */
  readonly source: number;
  /** Ways that differ only in how many people go share one. */
  readonly series: string;
  readonly gutter: number;
  readonly names: string;
  /** To which body of water each change is made. */
  readonly places: string;
}

type Bought = readonly (readonly [amount: number | null, currency: string])[];

function money(bought: Bought): Way['cost'] {
  if (bought.some(([amount]) => amount === null)) return null;
  const currencies = [...new Set(bought.map(([, currency]) => currency))];
  if (currencies.length > 1) return null;
  return { amount: bought.reduce((sum, [amount]) => sum + amount!, 0), currency: currencies[0] ?? '' };
}

/** A body of water, by the first letter of its tanks; all of the site where that is empty. */
export interface Body {
  readonly letter: string;
  readonly volume_L: number;
}

type Tank = { readonly partId: string; readonly volume_L: number };
type Bought1 = readonly [kind: 'secondTank' | 'largerTank', tank: Tank];

/** What is done to one body of water. */
interface Done {
  readonly body: Body;
  readonly gutter: number | null;
  readonly flush: boolean;
  readonly set: readonly Bought1[];
  readonly count: number;
}

function isOf({ letter }: Body, tankId: string | null): boolean {
  return letter === '' || tankId?.startsWith(letter) === true;
}

/** All that may be done to one body of water, nothing among it. */
function everyDone(body: Body, tanks: readonly Tank[]): Done[] {
  const sets: (readonly Bought1[])[] = [
    [],
    ...tanks.map((tank) => [['secondTank', tank] as const]),
    ...tanks.filter((tank) => tank.volume_L > body.volume_L).map((tank) => [['largerTank', tank] as const]),
    ...tanks.flatMap((a, i) => tanks.slice(i).map((b) => [['secondTank', a] as const, ['secondTank', b] as const])),
  ];
  return [null, 0.75, 1].flatMap((gutter) =>
    [false, true].flatMap((flush) =>
      sets.map((set) => ({ body, gutter, flush, set, count: Number(gutter !== null) + Number(flush) + set.length })),
    ),
  );
}

/** Every choice of one thing done to each body of water, so many changes at most. */
function together(bodies: readonly Body[], tanks: readonly Tank[]): (readonly Done[])[] {
  let all: (readonly Done[])[] = [[]];
  for (const body of bodies)
    all = all.flatMap((before) =>
      everyDone(body, tanks).flatMap((one) => {
        const count = one.count + before.reduce((sum, done) => sum + done.count, 0);
        return count > 2 ? [] : [[...before, one]];
      }),
    );
  return all;
}

/** Every way of one change or two, one after the other, by plain loops. */
// long: the long way round is meant to be read as one list of steps, with nothing shared with the engine
export function everyWay(facts: ProgrammeFacts & { readonly site: SiteFacts }, bodies: readonly Body[]): Way[] {
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
    height_m: null,
    standHeight_m: null,
  };
  const flushOf = (roof: RoofFacts, share: number): number => {
    if (roof.diverter === null) return settings.firstFlush_mm;
    return roof.diverter.firstFlush_mm ?? roof.diverter.chamber_L! / (roof.roofPlanArea_m2! * share);
  };
  const flushTo = (roof: RoofFacts, firstFlush_mm: number) => ({
    ...roof,
    diverter: { ...roof.diverter!, firstFlush_mm },
  });

  const now = site.demand.length > 0 ? site.demand : [{ purpose: 'all', litres_per_person_per_day: 7.5, judged: true }];
  const judgedNow = now.filter((one) => one.judged).reduce((sum, one) => sum + one.litres_per_person_per_day, 0);
  const steps = [20, 15, 10, 7.5, 6, 5, 4, 3, 2.5].filter((litres) => litres < judgedNow);
  const demands = [null, ...(now.some((one) => !one.judged) ? [judgedNow] : []), ...steps];
  const ways: Way[] = [];
  for (const dones of together(bodies, tanks))
    for (const [cut, litres] of demands.entries()) {
      const count = dones.reduce((sum, done) => sum + done.count, Number(cut > 0));
      if (count > 2) continue;
      let { roofs, tanks: stand } = site;
      const bought: (readonly [number | null, string])[] = [];
      const metres: number[] = [];
      let diverters = 0;
      let isNothing = false;
      for (const { body, gutter, flush, set } of dones) {
        const lead = (roof: RoofFacts) => isOf(body, roof.tankId);
        if (gutter !== null) {
          const wanting = (roof: RoofFacts) =>
            lead(roof) && roof.gutteredFraction !== null && roof.gutteredFraction < gutter;
          if (!roofs.some(wanting)) isNothing = true;
          roofs = roofs.map((roof) => {
            if (!wanting(roof)) return roof;
            const share = roof.gutteredFraction!;
            const long_m = Math.max(roof.length_m ?? roof.roofPlanArea_m2! / roof.width_m!, roof.width_m!);
            metres.push(2 * long_m * (gutter - share));
            const wider = { ...roof, gutteredFraction: gutter };
            const least = Math.min(settings.firstFlush_mm, flushOf(roof, share));
            if (flushOf(wider, gutter) >= least) return wider;
            diverters++;
            return flushTo(wider, least);
          });
        }
        if (flush) {
          const deep = (roof: RoofFacts) =>
            lead(roof) && flushOf(roof, roof.gutteredFraction ?? 1) > settings.firstFlush_mm;
          const many = roofs.filter(deep).length;
          if (many === 0) isNothing = true;
          diverters += many;
          roofs = roofs.map((roof) => (deep(roof) ? flushTo(roof, settings.firstFlush_mm) : roof));
        }
        for (const [kind, { partId, volume_L }] of set) {
          bought.push(priceOf(partId));
          const there = stand.filter(({ tankId }) => isOf(body, tankId));
          const tankId = `${body.letter}bought ${stand.length}`;
          const first = kind === 'largerTank' ? undefined : there[0]!.tankId;
          const share = site.tanks.find((tank) => isOf(body, tank.tankId) && tank.peopleFraction !== null);
          if (kind === 'largerTank') {
            stand = stand.filter((tank) => !there.includes(tank));
            roofs = roofs.map((roof) => (body.letter !== '' && lead(roof) ? { ...roof, tankId } : roof));
          }
          const peopleFraction = kind === 'largerTank' ? (share?.peopleFraction ?? null) : null;
          stand = [
            ...stand,
            { ...unmeasuredTank, ...bare, tankId, nominal_L: volume_L, joinedTo: first ?? null, peopleFraction },
          ];
        }
      }
      if (isNothing) continue;
      if (metres.length > 0) {
        bought.push([Math.min(25 * slowBars_count(metres, 4), 17 * slowBars_count(metres, 3)), 'XTS']);
      }
      if (diverters > 0) {
        const [amount, currency] = priceOf('flush');
        bought.push([amount === null ? null : amount * diverters, currency]);
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
      const named = dones.flatMap(({ body, gutter, flush, set }) => [
        ...(gutter === null ? [] : [{ kind: 'gutter', partId: '', at: body.letter }]),
        ...(flush ? [{ kind: 'firstFlush', partId: '', at: body.letter }] : []),
        ...set.map(([kind, { partId }]) => ({ kind, partId, at: body.letter })),
      ]);
      named.sort((a, b) => kinds.indexOf(a.kind) - kinds.indexOf(b.kind));
      const one = {
        kinds: [...named.map(({ kind }) => kind), ...(cut > 0 ? ['litres'] : [])],
        site: { ...site, roofs, tanks: stand, demand },
        cost: money(bought),
        cut,
        others: 0,
        source: 0,
        series: JSON.stringify([dones, cut]),
        gutter: dones.reduce((sum, { gutter }) => sum + (gutter ?? 0), 0),
        names: named.map(({ partId }) => partId).join(' '),
        places: named.map(({ at }) => at).join(' '),
      };
      if (count > 0) ways.push(one);
      if (count < 2 && cut === 0) ways.push(...wholeSiteWays(facts, one, bought));
    }
  return ways;
}

/** The way of the water down. */
const kinds = ['gutter', 'firstFlush', 'secondTank', 'largerTank', 'secondSource', 'people', 'litres'];

/** One way with the source near by declared, and with one, two, … people sent elsewhere, up to half of them. */
function wholeSiteWays(facts: ProgrammeFacts, way: Way, bought: Bought): Way[] {
  const { site } = way;
  const near = site.secondSource === null ? site.nearSecondSource : null;
  const kit = facts.parts.find((part) => part.kind === 'site');
  const price = facts.prices.find((one) => one.partId === kit?.partId);
  const cost = money([...bought, [price?.amount ?? null, price?.currency ?? '']]);
  const splits = Array.from({ length: Math.floor(site.people! / 2) }, (_, index): Way => {
    const others = index + 1;
    return { ...way, kinds: [...way.kinds, 'people'], site: { ...site, people: site.people! - others }, others, cost };
  });
  // A larger tank with people sent away is never told: the same part beside what stands does no less, for no more.
  const isLarger = way.kinds.includes('largerTank');
  const told = isLarger ? [] : splits;
  if (near === null) return told;
  const withSource = { ...site, secondSource: near };
  return [...told, { ...way, kinds: [...way.kinds, 'secondSource'], site: withSource, source: 1, cost: null }];
}
