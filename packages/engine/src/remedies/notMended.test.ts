import { expect, it } from 'vitest';
import type { SiteDesign } from '../kernel/index.ts';
import { whyNotBeside } from './notMended.ts';

const stand = (verdict: string, cappedBy: string | null) => ({ verdict, cappedBy });
const designed = (stands: readonly object[], stations: object) =>
  ({ stands, settling: [], head: [], drainage: null, stations }) as unknown as SiteDesign;

it('wants facts where a stand is tight by what nobody surveyed, and the engineer where one is so by its figures', () => {
  const assumed = stand('tight', 'stand.fastening_assumed');
  expect(whyNotBeside(['stand'], designed([assumed], { stand: 'tight' }))).toBe('facts');
  expect(whyNotBeside(['stand'], designed([assumed, stand('tight', null)], { stand: 'tight' }))).toBe('stand');
  expect(whyNotBeside(['stand'], designed([stand('short', 'stand.fastening_assumed')], { stand: 'short' }))).toBe(
    'stand',
  );
  expect(whyNotBeside(['stand'], designed([], { stand: 'unknown' }))).toBe('facts');
  expect(whyNotBeside([], designed([], {}))).toBeNull();
});
