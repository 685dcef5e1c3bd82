import { expect, it } from 'vitest';
import { unmeasuredPart } from '../kernel/index.ts';
import { partById } from './partById.ts';

const tank = { ...unmeasuredPart, partId: 'T1', kind: 'tank', name: 'Tank', volume_L: 500 };

it('finds a part by its exact id only', () => {
  expect(partById([tank], 'T1')).toBe(tank);
  expect(partById([tank], 't1')).toBeNull();
});
