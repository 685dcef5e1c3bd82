import type { Balance, RunRules } from './dayByDay.ts';

/** How a record is run through tanks of every size: `yas` looks at the content and has to be run size by size. */
export type SizeRules = RunRules & { readonly order: 'drawFirst' | 'ybs' };

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
  const { critical_L, asked_L, content } = runAllSizes(balance, rules, otherCritical_L);
  return { critical_L, otherCritical_L, asked_L, relief_L: content.relief() };
}

/**
 * Which days are short of judged litres, in tanks of every volume at once? The critical volumes of `allSizes` alone, for
 * who needs no more: half the work.
 *
 * @param balance - inflow and demands by day [L], arrays of one length, values 0 or more
 * @param rules - order `drawFirst` or `ybs`, passes and first content
 * @returns critical volumes by day [L]; 0 never, Infinity in every tank
 * @law equals `critical_L` of `allSizes`
 * @definition ours: docs/methods/storage.md, every size at once
 */
export function criticalVolumes(balance: Balance, rules: SizeRules): Float64Array {
  return runAllSizes(balance, rules, null).critical_L;
}

/** The days, pass by pass. Relief and the other purposes' volumes are kept only where there is an array for the latter. */
function runAllSizes(balance: Balance, rules: SizeRules, otherCritical_L: Float64Array | null) {
  const { inflow_L, judged_L, other_L } = balance;
  const days = inflow_L.length;
  const critical_L = new Float64Array(days);
  const content = new ContentBySize(rules.start === 'full');
  const drawFirst = rules.order === 'drawFirst';
  let asked_L = 0;
  for (let pass = 1; pass <= rules.passes; pass++) {
    content.keepsRelief = otherCritical_L !== null && pass === rules.passes;
    asked_L = 0;
    for (let day = 0; day < days; day++) {
      const inflow = inflow_L[day]!;
      const judged = judged_L[day]!;
      const other = other_L[day]!;
      // Under ybs the day's rain serves the judged purposes first, then the others; only what is left over moves the tank.
      const direct = drawFirst ? 0 : Math.min(judged, inflow);
      const directOther = drawFirst ? 0 : Math.min(other, inflow - direct);
      asked_L += judged - direct;
      critical_L[day] = judged > direct ? content.draw(judged - direct, true) : 0;
      const otherCritical = other > directOther ? content.draw(other - directOther, false) : 0;
      if (otherCritical_L) otherCritical_L[day] = otherCritical;
      const stored = inflow - direct - directOther;
      if (stored > 0) content.add(stored);
    }
  }
  return { critical_L, asked_L, content };
}

/** V(C): its breakpoints from the right (first) to the left (last, on top), slopes 0 and 1 in turn from the leftmost piece on. */
class ContentBySize {
  keepsRelief = false;
  private breaks = new Float64Array(256);
  private depth = 0;
  /** Does the leftmost piece, from volume 0, rise with slope 1? */
  private rising: boolean;
  private stretches = new Float64Array(0);
  private stretchEnd = 0;

  constructor(full: boolean) {
    this.rising = full;
  }

  draw(amount_L: number, judged: boolean): number {
    return this.cover(amount_L, true, judged && this.keepsRelief);
  }

  add(amount_L: number): void {
    this.cover(amount_L, false, false);
  }

  relief(): Float64Array {
    return this.stretches.slice(0, this.stretchEnd);
  }

  /** Uses up `amount_L` of length on pieces of the slope asked, from the left; all that is passed takes the other slope. Returns where it ends. */
  // long: the one hot loop of the room
  private cover(amount_L: number, rising: boolean, keep: boolean): number {
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
