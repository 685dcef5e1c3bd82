import { expect, it } from 'vitest';
import { headOfSpending, spendings } from './heads.ts';

it('puts each spending under its head', () => {
  const heads = Object.fromEntries(spendings.map((one) => [one, headOfSpending(one, null)]));
  expect(heads).toMatchObject({
    kit: 'capExHardware',
    crew: 'capExHardware',
    survey: 'capExSoftware',
    committee: 'capExSoftware',
  });
  expect(heads).toMatchObject({ waterTests: 'opEx', visits: 'directSupport', renewal: 'capManEx' });
});

it('tells maintenance of capital from running by one year', () => {
  expect(headOfSpending('renewal', 1)).toBe('opEx');
  expect(headOfSpending('renewal', 1.01)).toBe('capManEx');
});
