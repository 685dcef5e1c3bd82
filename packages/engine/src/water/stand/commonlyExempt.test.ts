import { expect, it } from 'vitest';
import { commonlyExempt_L } from './commonlyExempt.ts';

it('takes the step at or above the height', () => {
  expect(commonlyExempt_L(2)).toBe(2000);
  expect(commonlyExempt_L(2.01)).toBe(1000);
  expect(commonlyExempt_L(0.1)).toBe(16000);
  expect(commonlyExempt_L(4.01)).toBe(0);
});
