import type { TestPortion } from '../../kernel/index.ts';
import { mostUncountable_count } from './constants.ts';
import { type Portion, portionFault } from './portion.ts';

/** The portions of a sample as they can be reckoned with, and those that cannot. */
export interface PortionsRead {
  readonly portions: readonly Portion[];
  readonly faulty: readonly TestPortion[];
}

/** Turns rows of a sample into portions. Plates of one volume whose colonies were counted together are one plate of all their water. */
export function portionsOf(rows: readonly TestPortion[]): PortionsRead {
  const portions: Portion[] = [];
  const faulty: TestPortion[] = [];
  for (const row of rows) {
    const read = portionsOfRow(row);
    if (read === null || read.length === 0 || read.some((portion) => portionFault(portion) !== null)) faulty.push(row);
    else portions.push(...read);
  }
  return { portions, faulty };
}

function portionsOfRow(row: TestPortion): readonly Portion[] | null {
  const { volume_mL, portions_count, positive_count, colonies_count, uncountable_count, uncountableFrom_count } = row;
  const isCounted = Number.isInteger(portions_count) && portions_count >= 0;
  const isUncounted = Number.isInteger(uncountable_count) && uncountable_count >= 0;
  if (!isCounted || !isUncounted || uncountable_count > mostUncountable_count) return null;
  if (row.kind === 'tubes') {
    if (positive_count === null || colonies_count !== null || uncountable_count > 0) return null;
    return [{ kind: 'wells', volume_mL, wells_count: portions_count, positive_count }];
  }
  if (positive_count !== null || (portions_count > 0 && colonies_count === null)) return null;
  if (portions_count === 0 && (colonies_count ?? 0) > 0) return null;
  if (uncountable_count > 0 && uncountableFrom_count === null) return null;
  const counted: readonly Portion[] =
    portions_count > 0
      ? [{ kind: 'plate', volume_mL: volume_mL * portions_count, colonies_count: colonies_count! }]
      : [];
  const uncounted = Array.from({ length: uncountable_count }, () => ({
    ...{ kind: 'uncountable' as const, volume_mL },
    limit_count: uncountableFrom_count!,
  }));
  return [...counted, ...uncounted];
}
