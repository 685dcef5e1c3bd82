import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { lightShown } from './light.ts';

it('shows the light that was chosen, else that of the computer', () => {
  expect(lightShown('day', true)).toBe('day');
  expect(lightShown('night', false)).toBe('night');
  expect([lightShown('asComputer', true), lightShown('asComputer', false)]).toEqual(['night', 'day']);
});

it('has its colours of the dark once', () => {
  const tokens = readFileSync(new URL('tokens.css', import.meta.url), 'utf8');
  expect(tokens.match(/color-scheme: dark/g)).toHaveLength(1);
  // Day, night and paper.
  expect(tokens.match(/--brick-fill:/g)).toHaveLength(3);
});
