import { expect, it } from 'vitest';
import { unmeasuredPart } from '../kernel/index.ts';
import { tankSizes } from './tankSizes.ts';

const part = (partId: string, volume_L: number | null, kind = 'tank') => ({
  ...unmeasuredPart,
  partId,
  kind,
  name: partId,
  volume_L,
});

it('lists tanks with a volume, smallest first, equal ones by id', () => {
  const parts = [
    part('B', 900),
    part('C', 200),
    part('A', 900),
    part('D', null),
    part('E', 100, 'gutter'),
    part('F', 0),
  ];
  expect(tankSizes(parts)).toEqual([
    { partId: 'C', tankVolume_L: 200 },
    { partId: 'A', tankVolume_L: 900 },
    { partId: 'B', tankVolume_L: 900 },
  ]);
  expect(tankSizes([...parts].reverse())).toEqual(tankSizes(parts));
});
