import {
  type CountedBy,
  type CountedIn,
  explain,
  type KitRounding,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import type { BarPlan, CutRun } from '../../parts/index.ts';
import { roundingSlack_fraction } from './constants.ts';
import { idsOf } from './countedFor.ts';
import type { CountedFor, Cutting, KitPart } from './kitFacts.ts';
import { amountOf, cutsOf, isCut, knownOf, planOf } from './kitRuns.ts';

/** What counts a part: a rule, or the design, which names it. */
export interface KitFrom {
  /** Null: the design names the part. */
  readonly ruleId: string | null;
  readonly countedBy: CountedBy;
  readonly ofIds: readonly string[];
  /** Things, or metres. */
  readonly counted_count: number;
  /** In what the part is counted in, before rounding. */
  readonly needed_count: number;
}

/** So many of a part at one site. All counts are in what the part is counted in; null: nothing of it is known. */
export interface KitLine {
  readonly partId: string;
  readonly name: string;
  readonly kind: string;
  readonly countedIn: CountedIn;
  /** Before it is rounded. */
  readonly needed_count: number | null;
  readonly rounded_count: number | null;
  readonly spare_count: number | null;
  readonly total_count: number | null;
  /** Is there more that nobody could count? */
  readonly isAtLeast: boolean;
  /** `named`: the design names the part, whatever rules count beside. */
  readonly from: 'rule' | 'named';
  readonly ruleIds: readonly string[];
  /** What counts it: parts that are named first, then rules in their order. */
  readonly counts: readonly KitFrom[];
  /** How bars of it are cut; null where it is not. */
  readonly cuts: BarPlan | null;
  readonly working: readonly WorkingLine[];
}

/** What came of one rule, or of what the design names. */
interface Counted {
  readonly from: KitFrom;
  readonly rounded: number;
  readonly spare: number;
  readonly leastSpare: number;
  readonly cuts: readonly CutRun[];
}

/** One line of a site's kit, from all that counts its part. */
export function kitLine(part: KitPart, counted: readonly CountedFor[], isOpen: boolean, cutting: Cutting): KitLine {
  const each = counted.map((one) => countedOf(part, one));
  const all = each.filter((one) => one !== null);
  const isAtLeast = isOpen || all.length < each.length || counted.some(({ ones }) => knownOf(ones).unknown.length > 0);
  const { partId, name, kind, kit } = part;
  const ruleIds = counted.flatMap(({ rule }) => (rule === null ? [] : [rule.ruleId]));
  const from = ruleIds.length < counted.length ? 'named' : 'rule';
  const counts = all.map((one) => one.from);
  const bare = { partId, name, kind, countedIn: kit.countedIn, isAtLeast, from, ruleIds, counts } as const;
  const cut = all.flatMap((one) => one.cuts);
  const cuts = cut.length > 0 ? planOf(cut, part, cutting) : null;
  if (all.length === 0 || (cut.length > 0 && cuts === null)) return { ...bare, ...nothingKnown };
  const isWhole = kit.countedIn === 'piece';
  const whole = (count: number) => (isWhole ? up(count) : count);
  const needed_count = sum(all.map(({ from }) => from.needed_count));
  const rounded_count = whole(sum(all.map(({ rounded }) => rounded))) + (cuts?.bars_count ?? 0);
  const spare_count = Math.max(whole(sum(all.map(({ spare }) => spare))), ...all.map(({ leastSpare }) => leastSpare));
  const total_count = rounded_count + (isWhole ? up(spare_count) : spare_count);
  const figures = { needed_count, rounded_count, spare_count: total_count - rounded_count, total_count };
  return { ...bare, ...figures, cuts, working: workingOf(part, all, figures, cuts) };
}

const nothingKnown = {
  needed_count: null,
  rounded_count: null,
  spare_count: null,
  total_count: null,
  cuts: null,
  working: [],
} as const;

/** Null where nothing of it could be counted. */
function countedOf(part: KitPart, one: CountedFor): Counted | null {
  const { rule, countedBy } = one;
  const { known } = knownOf(one.ones);
  const isBars = isCut(part, countedBy);
  if (known.length === 0 || (isBars && !(part.length_m !== null && part.length_m > 0))) return null;
  const counted_count = sum(known.map((each) => amountOf(each)!));
  const wanted = counted_count * (rule?.each_count ?? 1);
  const needed_count = isBars ? wanted / part.length_m! : wanted;
  const rounded = isBars ? 0 : roundedBy(rule?.rounding ?? 'none', wanted);
  return {
    from: { ruleId: rule?.ruleId ?? null, countedBy, ofIds: idsOf(known), counted_count, needed_count },
    rounded,
    spare: (isBars ? needed_count : rounded) * (rule?.spare_fraction ?? 0),
    leastSpare: counted_count > 0 ? (rule?.leastSpare_count ?? 0) : 0,
    cuts: isBars && (rule === null || rule.each_count > 0) ? cutsOf(one, known) : [],
  };
}

/** The next whole number up; the last bits of a sum are none. */
export function up(count: number): number {
  return Math.max(0, Math.ceil(count - Math.max(1, count) * roundingSlack_fraction));
}

function roundedBy(rounding: KitRounding, count: number): number {
  if (rounding === 'none') return count;
  return rounding === 'up' ? up(count) : Math.floor(count + 0.5 + roundingSlack_fraction);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}

/** Every step of one line. */
function workingOf(
  part: KitPart,
  all: readonly Counted[],
  counts: { readonly rounded_count: number; readonly spare_count: number; readonly total_count: number },
  bars: BarPlan | null,
): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const unit = part.kit.countedIn;
  for (const { from } of all) {
    const inputs = [
      workingInput('partId', part.partId, ''),
      workingInput('kitRule', from.ruleId ?? 'named', ''),
      workingInput('countedBy', from.countedBy, ''),
      workingInput('counted', from.counted_count, from.countedBy.endsWith('Metre') ? 'm' : 'piece'),
    ];
    explain(lines, { code: 'kit.needed', value: from.needed_count, unit, inputs, source: 'survey' });
  }
  if (bars !== null) {
    const inputs = [
      workingInput('barLength', part.length_m!, 'm'),
      workingInput('leastBars', bars.bound_count, 'piece'),
      workingInput('joints', bars.joints_count, 'piece'),
    ];
    explain(lines, { code: 'kit.bars', value: bars.bars_count, unit, inputs, source: 'definition' });
  }
  const step = (code: 'kit.rounded' | 'kit.spare' | 'kit.total', value: number) =>
    explain(lines, { code, value, unit, inputs: [], source: 'definition' });
  step('kit.rounded', counts.rounded_count);
  step('kit.spare', counts.spare_count);
  step('kit.total', counts.total_count);
  return lines;
}
