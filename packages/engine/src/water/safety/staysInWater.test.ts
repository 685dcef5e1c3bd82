import { expect, it } from 'vitest';
import { staysInWater } from './staysInWater.ts';

it('leaves everything where nothing is done', () => {
  expect(staysInWater([], false)).toHaveLength(9);
});

it('leaves viruses behind a membrane without a challenge test, and takes them out with one', () => {
  expect(staysInWater(['membrane'], false)).toContain('viruses');
  expect(staysInWater(['membrane'], true)).not.toContain('viruses');
});

it('never takes out what is dissolved', () => {
  const dissolved = ['dissolvedMetals', 'salts', 'dissolvedChemicals', 'tasteAndColour'];
  expect(staysInWater(['settling', 'membrane', 'chlorine', 'boiling'], true)).toEqual(dissolved);
});

it('leaves Cryptosporidium in chlorinated water, and germs coming again in boiled', () => {
  expect(staysInWater(['chlorine'], false)).toContain('cryptosporidium');
  expect(staysInWater(['boiling'], false)).toContain('germsComingAgain');
});
