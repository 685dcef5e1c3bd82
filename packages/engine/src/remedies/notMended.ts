import {
  type DesignSettings,
  type EngineProblemCode,
  jeffreysRange,
  type SiteDesign,
  type StorageFinding,
} from '../kernel/index.ts';
import { tankSizes } from '../parts/index.ts';
import { asItIs, type Chains, type Plan } from './chains.ts';
import { kindsAtTank, type Open, pairsOf } from './openChanges.ts';
import type { RemedyCase } from './remedyCase.ts';
import type { StationBeside } from './stationsBeside.ts';
import { type AsFitted, wantsFacts } from './wantsFacts.ts';

/** Why no change, and no two, make a site hold. */
export type NotMendedReason =
  | 'assumed'
  | 'growth'
  | 'roofSize'
  | 'madeRain'
  | 'record'
  | 'noTanks'
  | 'tank'
  | 'water'
  | 'apart'
  | 'drainage'
  | 'head'
  | 'settling'
  | 'stand'
  | 'treatment'
  | 'safety'
  | 'facts';

/** What the assumption that caps a site comes to, where it is one of its own kind. */
const cappedReasons: Partial<Record<EngineProblemCode, NotMendedReason>> = {
  'site.growth_not_used': 'growth',
  'site.roof_very_large': 'roofSize',
  'rain.made_up': 'madeRain',
};

/** What a station comes to that nothing lifts. */
const reasonsBeside: Readonly<Record<StationBeside, NotMendedReason>> = {
  gutter: 'drainage',
  settling: 'settling',
  stand: 'stand',
  treatmentUnit: 'treatment',
  tap: 'head',
  cup: 'safety',
};

/**
 * Why does nothing lift the other stations? The first of them, the way of the water down; one that is not known wants facts first.
 *
 * @param besides - stations that nothing lifts
 * @param design - the site as it is, or with gutters and pipes changed
 * @returns the reason; null where there is none
 * @definition ours
 */
export function whyNotBeside(besides: readonly StationBeside[], design: AsFitted): NotMendedReason | null {
  const known = besides.find((one) => !wantsFacts(one, design));
  if (known !== undefined) return reasonsBeside[known];
  return besides.length > 0 ? 'facts' : null;
}

/**
 * Why does nothing make the storage hold?
 *
 * @param chains - the site
 * @param open - what may be done to each body of water that does not hold
 * @param wanting - these bodies of water
 * @param given - the site, the market
 * @param design - the site as it is
 * @returns the reason
 * @definition ours: docs/methods/remedies.md, none mends it
 */
export function whyNotStorage(
  chains: Chains,
  open: readonly Open[],
  wanting: readonly StorageFinding[],
  given: RemedyCase,
  design: SiteDesign,
): NotMendedReason {
  // A second source is no such cap: a site that leans on one holds once it holds without it.
  const cap = wanting.find(({ cappedBy }) => cappedBy !== null && cappedBy !== 'site.second_source')?.cappedBy ?? null;
  return cap === null ? whyNot(chains, open, given, design) : (cappedReasons[cap] ?? 'assumed');
}

function whyNot(
  chains: Chains,
  open: readonly Open[],
  { market }: RemedyCase,
  { storages, target }: SiteDesign,
): NotMendedReason {
  const { judgedYears } = storages[0]!;
  if (isRecordTooShort(chains.settings, target, judgedYears)) return 'record';
  if (tankSizes(market.parts).length === 0) return 'noTanks';
  const hasTank = ({ gutter }: Open) => {
    const { group } = gutter[0]!;
    const plans = [asItIs, ...gutter.map((one): Plan => ({ ...asItIs, placed: [one] }))];
    return plans.some((plan) => chains.sizes(group, plan)?.hasTank === true);
  };
  if (!open.every(hasTank)) return 'water';
  const isMendedAlone = (group: Open) => {
    const single = kindsAtTank.flatMap((kind) => group[kind].map((one): Plan => ({ ...asItIs, placed: [one] })));
    return chains.holdsAlone(group.gutter[0]!.group, [...single, ...pairsOf([group])]);
  };
  return open.length > 1 && open.every(isMendedAlone) ? 'apart' : 'tank';
}

/** Could this many years hold if every one of them were good? */
function isRecordTooShort(
  { leastYears, range_fraction }: DesignSettings,
  target: SiteDesign['target'],
  judgedYears: number,
): boolean {
  if (judgedYears < leastYears) return true;
  return jeffreysRange(judgedYears, judgedYears, range_fraction).low < target.goodYears_fraction;
}
