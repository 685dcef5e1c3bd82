import { expect, it } from 'vitest';
import { tickOf, ticksRead, withTick } from './ticks.ts';

const line = { siteId: 'S1', partId: 'pipe', each_count: 1, count: 4 };

it('a tick is of a line with its count: where the load changes, it is gone', () => {
  const ticks = withTick(new Set(), tickOf('loaded', line), true);
  expect(ticks.has(tickOf('loaded', line))).toBe(true);
  expect(ticks.has(tickOf('landed', line))).toBe(false);
  expect(ticks.has(tickOf('loaded', { ...line, count: 5 }))).toBe(false);
  expect([...withTick(ticks, tickOf('loaded', line), false)]).toEqual([]);
});

it('what was kept is read again, and what is no list of ticks is none', () => {
  const ticks = withTick(new Set(['a']), tickOf('landed', line), true);
  expect(ticksRead(JSON.stringify([...ticks]))).toEqual(ticks);
  for (const damaged of [null, '', '{', '{"a":1}', '7']) expect([...ticksRead(damaged)]).toEqual([]);
  expect([...ticksRead('["a",1,null]')]).toEqual(['a']);
});
