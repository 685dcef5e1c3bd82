import type { Row } from './draft.ts';
import type { Particular } from './particulars.ts';

/** Ids of the sources sites may name. */
const sourceIds = { river: 'RIVER1', spring: 'SPRING1' } as const;

/** What people near the driest gauge fall back on: a river the year round, and a spring that fails at the end of the dry season. */
export function secondSourceRows(river: string, spring: string): Row[] {
  const source = 'programme survey, October 2025';
  return [
    {
      secondSourceId: sourceIds.river,
      name: river,
      kind: 'river',
      months: '1 to 12',
      turbidity_NTU: 60,
      source,
    },
    {
      secondSourceId: sourceIds.spring,
      name: spring,
      kind: 'spring',
      months: '11 to 8',
      turbidity_NTU: 3,
      source,
    },
  ];
}

/** The source a site names. */
export function secondSourceOf(particular: Particular | undefined): string | null {
  return particular === 'river' || particular === 'spring' ? sourceIds[particular] : null;
}
