import type { StandGate, Station, Verdict } from '../kernel/index.ts';
import { changeKinds, isFitting, type RemedyChange } from './changes.ts';
import { compareCosts, type RemedyCost } from './cost.ts';

/** One change to a site, or two together, that lifts its verdict, with the gutters and pipes they need. */
export interface Remedy {
  /** The way of the water down: one or two, and gutters and pipes as it takes. */
  readonly changes: readonly RemedyChange[];
  /** The worst of storage and of the stations that change with it; those of `besides` apart. */
  readonly verdict: Extract<Verdict, 'holds' | 'tight'>;
  /** Does it mend the site by promising less? 0: no; else the step down, the mildest 1. */
  readonly promiseCut_count: number;
  /** Usable volume of all tanks with the changes made. */
  readonly tankVolume_L: number;
  /** Of the tank that is then worst off. */
  readonly dryDays_per_year: number;
  readonly goodYears: number;
  /** Days a year on which people drink from the second source this declares, where they lean on it most; null where none is declared. */
  readonly sourceDays_per_year: number | null;
  readonly cost: RemedyCost;
  /** Stations that do not hold with it and are not in its verdict: no change moves them, or what is new there is not known yet. */
  readonly besides: readonly Station[];
  /** May the tanks then be filled and handed over? */
  readonly standGate: StandGate;
}

/**
 * Which of two remedies is told first? The better verdict; then the one that keeps more of what was promised, because litres
 * not promised are paid for by those who drink them; then one that needs no other water than the roof's; then the one that sends
 * fewer people to another site; then the lower cost, costs that are not known last; then fewer changes,
 * a smaller tank, less gutter, and at last their names, so that no two are equal.
 *
 * @param a - a remedy
 * @param b - another
 * @returns under 0 where a comes first, over 0 where b does [number]
 * @law the order of sites, parts and prices changes nothing
 * @definition ours: docs/methods/remedies.md, rank
 */
export function compareRemedies(a: Remedy, b: Remedy): number {
  return (
    Number(a.verdict !== 'holds') - Number(b.verdict !== 'holds') ||
    a.promiseCut_count - b.promiseCut_count ||
    sourcesIn(a) - sourcesIn(b) ||
    othersOf(a) - othersOf(b) ||
    compareCosts(a.cost, b.cost) ||
    changesIn(a) - changesIn(b) ||
    a.tankVolume_L - b.tankVolume_L ||
    gutterOf(a) - gutterOf(b) ||
    byText(keyOf(a), keyOf(b))
  );
}

/**
 * Which kinds of change is a remedy made of?
 *
 * @param remedy - a remedy
 * @returns its kinds in their order, joined by + [text]
 * @definition ours
 * @example
 * kindsOf({ changes: [{ kind: 'firstFlush', firstFlush_mm: 0.5 }] }) // → 'firstFlush'
 */
export function kindsOf(remedy: Pick<Remedy, 'changes'>): string {
  const kinds = remedy.changes.map((change) => change.kind);
  return kinds.sort((a, b) => changeKinds.indexOf(a) - changeKinds.indexOf(b)).join('+');
}

/**
 * How many people does a remedy send to a site of their own?
 *
 * @param remedy - a remedy
 * @returns people [person], 0 where everybody stays
 * @definition ours
 * @example
 * othersOf({ changes: [{ kind: 'people', carried_people: 40, others_people: 3 }] }) // → 3
 */
export function othersOf(remedy: Pick<Remedy, 'changes'>): number {
  return remedy.changes.reduce((sum, change) => (change.kind === 'people' ? sum + change.others_people : sum), 0);
}

/** Gutters and pipes of one remedy count as one change. */
function changesIn({ changes }: Remedy): number {
  const fittings_count = changes.filter(isFitting).length;
  return changes.length - fittings_count + Math.min(fittings_count, 1);
}

function sourcesIn({ changes }: Remedy): number {
  return changes.filter(({ kind }) => kind === 'secondSource').length;
}

function gutterOf({ changes }: Remedy): number {
  return changes.reduce((sum, change) => (change.kind === 'gutter' ? sum + change.gutteredFraction : sum), 0);
}

function keyOf(remedy: Remedy): string {
  const parts = remedy.changes.map((change) => ('partId' in change ? change.partId : ''));
  const tanks = remedy.changes.map((change) => ('tankId' in change ? (change.tankId ?? '') : ''));
  return `${kindsOf(remedy)} ${parts.join(' ')} ${tanks.join(' ')}`;
}

function byText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
