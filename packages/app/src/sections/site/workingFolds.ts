import { lineMeant, type SiteReport } from './siteFigures.ts';

type Line = SiteReport['working'][number];

/** Lines that are read at a glance; a working of more is folded. Ours. */
const glance = 12;

/** A working in the parts it is read in: places of its lines, each in one part alone. */
export interface FoldedWorking {
  /** The lines that were asked for. */
  readonly asked: readonly number[];
  /** Those whose results stand in them as inputs, and in these in turn. */
  readonly from: readonly number[];
  readonly others: readonly number[];
  readonly isFolded: boolean;
}

/**
 * Parts a working, so that a person reads first what was asked for.
 *
 * @param lines - the working
 * @param opened - the figure, as `workingOf` names it
 * @returns the parts; a short working, or one without the line that was asked for, is not folded
 */
export function foldedWorking(lines: readonly Line[], opened: string): FoldedWorking {
  // A figure of the whole site is of every tank's line; one of a part is of its own.
  const asked = opened.includes(' ')
    ? [lineMeant(lines, opened)].filter((at) => at >= 0)
    : lines.flatMap(({ code }, i) => (code === opened ? [i] : []));
  const found = new Set<number>();
  for (const at of asked) follow(lines, at, found);
  for (const at of asked) found.delete(at);
  const from = [...found].sort((a, b) => a - b);
  const others = lines.flatMap((_, i) => (asked.includes(i) || found.has(i) ? [] : [i]));
  return { asked, from, others, isFolded: lines.length > glance && asked.length > 0 };
}

function follow(lines: readonly Line[], at: number, found: Set<number>): void {
  for (const input of lines[at]!.inputs) {
    const own = lines.findLastIndex((line, i) => i < at && isResult(line, input));
    if (own < 0 || found.has(own)) continue;
    found.add(own);
    follow(lines, own, found);
  }
}

/** Days and moments of a plan: of these whole numbers name their line too, as of what people wait in all. */
const ofPlan: ReadonlySet<string> = new Set(['planDay', 'planTime']);

/** Is it this line's result, to the last digit? Other whole numbers stand in many lines by chance, and name none. */
function isResult(line: Line, { value, unit }: Line['inputs'][number]): boolean {
  if (typeof value !== 'number' || line.value !== value) return false;
  if (unit === 'personDay') return line.unit === unit;
  return ofPlan.has(unit) ? ofPlan.has(line.unit) : !Number.isInteger(value) && line.unit === unit;
}
