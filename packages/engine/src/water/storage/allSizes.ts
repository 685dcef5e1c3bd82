import type { WaterYear } from '../../kernel/index.ts';
import { metSlack_fraction } from './constants.ts';
import type { Balance, RunRules } from './dayByDay.ts';

/** How a record is run through tanks of every size: `yas` looks at the content and has to be run size by size. */
export type SizeRules = Pick<RunRules, 'passes' | 'start'> & { readonly order: 'drawFirst' | 'ybs' };

/** The answer for every tank volume at once. */
export interface AllSizes {
  /** By day: judged litres are short exactly in tanks smaller than this [L]; 0 never, Infinity in every tank. */
  readonly critical_L: Float64Array;
  /** The same for the other purposes. */
  readonly otherCritical_L: Float64Array;
  /** Judged litres asked of the tank in the counted pass; under ybs, those the day's own rain gave are not among them [L]. */
  readonly asked_L: number;
  /** Stretches of tank volume in which one more litre of tank is one less judged litre short: from, to, from, to … [L]. */
  readonly relief_L: Float64Array;
}

/**
 * Which days are short, in tanks of every volume at once, exactly?
 *
 * The content V(C) of a tank of volume C is piecewise linear in C with slopes 0 and 1 only, and each half-step of a day
 * covers a prefix of it: drawing D sets V to 0 up to the volume where V = D and lowers the rest by D; adding I sets V to
 * C up to the volume where the empty space C − V = I and raises the rest by I. So V is a stack of breakpoints, leftmost on
 * top: each half-step pops what its prefix covers and pushes at most one. The volume at which a draw stops is the day's
 * critical volume.
 *
 * @param balance - inflow and demands by day [L], arrays of one length, values 0 or more
 * @param rules - order `drawFirst` or `ybs` (`yas` looks at the content: use `dayByDay`), passes and first content
 * @returns critical volumes by day [L] and the stretches that carry the exact shortfall [L]
 * @law a day is short in `dayByDay` exactly where its critical volume is above the tank's
 * @definition ours: docs/methods/storage.md, every size at once
 * @example
 * allSizes({ inflow_L: Float64Array.of(5, 0, 0), judged_L: Float64Array.of(2, 2, 2), other_L: Float64Array.of(0, 0, 0) }, { order: 'drawFirst', passes: 2, start: 'empty' }).critical_L // → Float64Array.of(Infinity, 2, 4)
 */
export function allSizes(balance: Balance, rules: SizeRules): AllSizes {
  const otherCritical_L = new Float64Array(balance.inflow_L.length);
  const run = runAllSizes(balance, rules, { otherCritical_L, tankVolume_L: 0, stretches: wholeRecord(balance) });
  return { critical_L: run.critical_L, otherCritical_L, asked_L: run.asked_L[0]!, relief_L: run.relief_L };
}

/** Critical volumes, and what one tank falls short of in the counted pass. */
export interface SizesAndTank {
  readonly critical_L: Float64Array;
  /** Judged litres short in the tank asked about, in the years that count [L]. */
  readonly shortfall_L: number;
  /** Days of those years on which its other purposes are not wholly met. */
  readonly otherShortDays: number;
}

/**
 * Which days are short of judged litres, in tanks of every volume at once, and what does one tank fall short of? The part
 * of `allSizes` that a verdict needs, without the curve of litres. The second pass ends where it has come to what the first
 * one held at the same place: the rest would be the same again.
 *
 * @param balance - inflow and demands by day [L], arrays of one length, values 0 or more
 * @param rules - order `drawFirst` or `ybs`, passes and first content
 * @param tankVolume_L - the tank asked about [L], 0 or more
 * @param years - the record's years, adjoining, of which only the judged ones count; the whole record where not given
 * @returns critical volumes by day [L]; shortfall of the tank [L] and its days short of other purposes [day], in the judged years
 * @law critical volumes equal those of `allSizes`; shortfall and days those of `dayByDay`
 * @definition ours: docs/methods/storage.md, every size at once
 */
export function criticalVolumes(
  balance: Balance,
  rules: SizeRules,
  tankVolume_L: number,
  years: readonly Stretch[] = wholeRecord(balance),
): SizesAndTank {
  const run = runAllSizes(balance, rules, { otherCritical_L: null, tankVolume_L, stretches: years });
  let [asked_L, relieved_L, otherShortDays] = [0, 0, 0];
  for (const [index, { judged }] of years.entries()) {
    if (!judged) continue;
    asked_L += run.asked_L[index]!;
    relieved_L += run.relieved_L[index]!;
    otherShortDays += run.otherShortDays[index]!;
  }
  return { critical_L: run.critical_L, shortfall_L: Math.max(0, asked_L - relieved_L), otherShortDays };
}

/** A stretch of days of the record, and whether it counts. */
type Stretch = Pick<WaterYear, 'from' | 'to' | 'judged'>;

function wholeRecord({ inflow_L }: Balance): readonly Stretch[] {
  return [{ from: 0, to: inflow_L.length, judged: true }];
}

/** What is kept of the counted pass: everything where there is an array for the other purposes, else one tank's litres. */
interface Kept {
  readonly otherCritical_L: Float64Array | null;
  readonly tankVolume_L: number;
  readonly stretches: readonly Stretch[];
}

/** What the counted pass came to; by stretch, in their order, but for the critical volumes. */
interface SizesRun {
  readonly critical_L: Float64Array;
  readonly asked_L: Float64Array;
  /** Judged litres that a larger tank up to the one asked about gave [L]. */
  readonly relieved_L: Float64Array;
  readonly otherShortDays: Float64Array;
  readonly relief_L: Float64Array;
}

/** The days, pass by pass, stretch by stretch. */
function runAllSizes(balance: Balance, rules: SizeRules, kept: Kept): SizesRun {
  const { stretches, otherCritical_L } = kept;
  const make = () => new Float64Array(stretches.length);
  const critical_L = new Float64Array(balance.inflow_L.length);
  const sums = { asked_L: make(), relieved_L: make(), otherShortDays: make() };
  const content = new ContentBySize(rules.start === 'full');
  // Every curve of litres is kept from the counted pass alone, so that one runs to its end.
  const mayEndEarly = rules.passes === 2 && otherCritical_L === null;
  const firstPass: BreaksOfSize[] = [];
  const greatest_L = make();
  for (let pass = 1; pass <= rules.passes; pass++) {
    content.keepsRelief = otherCritical_L !== null && pass === rules.passes;
    for (const [index, stretch] of stretches.entries()) {
      if (mayEndEarly && pass === 1) firstPass.push(content.copied());
      else if (mayEndEarly && content.sameUpTo_L(firstPass[index]!) >= greatest_L[index]!) break;
      content.relieved_L = 0;
      runStretch(balance, rules, kept, stretch, content, critical_L, sums, index);
      sums.relieved_L[index] = content.relieved_L;
    }
    if (pass === 1 && mayEndEarly) greatestFromHere(critical_L, stretches, kept.tankVolume_L, greatest_L);
  }
  return { critical_L, ...sums, relief_L: content.relief() };
}

/** The days of one stretch. */
function runStretch(
  { inflow_L, judged_L, other_L, covered }: Balance,
  rules: SizeRules,
  { otherCritical_L, tankVolume_L }: Kept,
  stretch: Stretch,
  content: ContentBySize,
  critical_L: Float64Array,
  sums: Pick<SizesRun, 'asked_L' | 'otherShortDays'>,
  index: number,
): void {
  const drawFirst = rules.order === 'drawFirst';
  const enough_L = tankVolume_L * (1 + metSlack_fraction);
  let [asked_L, otherShortDays] = [0, 0];
  for (let day = stretch.from; day < stretch.to; day++) {
    const inflow = inflow_L[day]!;
    const judged = judged_L[day]!;
    const other = other_L[day]!;
    // Under ybs the day's rain serves the judged purposes first, then the others; only what is left over moves the tank.
    const direct = drawFirst ? 0 : Math.min(judged, inflow);
    const directOther = drawFirst ? 0 : Math.min(other, inflow - direct);
    asked_L += judged - direct;
    const critical = judged > direct ? content.draw(judged - direct, true, tankVolume_L) : 0;
    // A second source takes what is missing: the tank is drawn from all the same, and the day is dry in none.
    critical_L[day] = covered?.[day] === 1 ? 0 : critical;
    const otherCritical = other > directOther ? content.draw(other - directOther, false, 0) : 0;
    if (otherCritical > enough_L) otherShortDays++;
    if (otherCritical_L) otherCritical_L[day] = otherCritical;
    const stored = inflow - direct - directOther;
    if (stored > 0) content.add(stored);
  }
  sums.asked_L[index] = asked_L;
  sums.otherShortDays[index] = otherShortDays;
}

/** Up to which volume must two passes agree at the start of each stretch for all that follows to agree? */
function greatestFromHere(
  critical_L: Float64Array,
  stretches: readonly Stretch[],
  tankVolume_L: number,
  greatest_L: Float64Array,
): void {
  let greatest = tankVolume_L * (1 + metSlack_fraction);
  for (let index = stretches.length - 1; index >= 0; index--) {
    const { from, to } = stretches[index]!;
    for (let day = from; day < to; day++) if (critical_L[day]! > greatest) greatest = critical_L[day]!;
    greatest_L[index] = greatest;
  }
}

/** V(C) at one moment: its breakpoints from the right to the left, and whether the leftmost piece rises. */
interface BreaksOfSize {
  readonly breaks: Float64Array;
  readonly rising: boolean;
}

/** V(C): its breakpoints from the right (first) to the left (last, on top), slopes 0 and 1 in turn from the leftmost piece on. */
class ContentBySize {
  keepsRelief = false;
  /** Length of the stretches below the volume asked about [L]. */
  relieved_L = 0;
  private breaks = new Float64Array(256);
  private depth = 0;
  /** Does the leftmost piece, from volume 0, rise with slope 1? */
  private rising: boolean;
  private stretches = new Float64Array(0);
  private stretchEnd = 0;

  constructor(full: boolean) {
    this.rising = full;
  }

  draw(amount_L: number, judged: boolean, below_L: number): number {
    return this.cover(amount_L, true, judged && this.keepsRelief, below_L);
  }

  add(amount_L: number): void {
    this.cover(amount_L, false, false, 0);
  }

  copied(): BreaksOfSize {
    return { breaks: this.breaks.slice(0, this.depth), rising: this.rising };
  }

  /** Up to which volume do both say the same? Every tank is for itself, so what agrees once agrees from then on. */
  sameUpTo_L(other: BreaksOfSize): number {
    if (this.rising !== other.rising) return 0;
    for (let fromTop = 1; ; fromTop++) {
      const own = this.breaks[this.depth - fromTop] ?? Infinity;
      const others = other.breaks[other.breaks.length - fromTop] ?? Infinity;
      if (own !== others) return Math.min(own, others);
      if (own === Infinity) return Infinity;
    }
  }

  relief(): Float64Array {
    return this.stretches.slice(0, this.stretchEnd);
  }

  /** Uses up `amount_L` of length on pieces of the slope asked, from the left; all that is passed takes the other slope. Returns where it ends. */
  // long: the one hot loop of the room
  private cover(amount_L: number, rising: boolean, keep: boolean, below_L: number): number {
    let depth = this.depth;
    const breaks = this.breaks;
    let left = 0;
    let rest = amount_L;
    let end = Infinity;
    let skip = this.rising !== rising;
    this.rising = !rising;
    for (;;) {
      if (skip) {
        if (depth === 0) break;
        left = breaks[--depth]!;
      }
      skip = true;
      const open = depth === 0;
      const right = open ? Infinity : breaks[--depth]!;
      const width = right - left;
      if (keep) this.keepStretch(left, width < rest ? right : left + rest);
      if (left < below_L) this.relieved_L += Math.min(width < rest ? right : left + rest, below_L) - left;
      if (width > rest) {
        end = left + rest;
        if (!open) breaks[depth++] = right;
        breaks[depth++] = end;
        break;
      }
      if (width === rest) {
        end = right;
        break;
      }
      rest -= width;
      left = right;
    }
    this.depth = depth;
    if (depth + 2 > breaks.length) this.breaks = enlarged(breaks);
    return end;
  }

  private keepStretch(from_L: number, to_L: number): void {
    if (this.stretchEnd + 2 > this.stretches.length) this.stretches = enlarged(this.stretches);
    this.stretches[this.stretchEnd++] = from_L;
    this.stretches[this.stretchEnd++] = to_L;
  }
}

function enlarged(array: Float64Array): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(Math.max(256, array.length * 2));
  larger.set(array);
  return larger;
}
