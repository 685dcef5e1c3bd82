import { expect, it } from 'vitest';
import { stepOfKeys } from './stepOfKeys.ts';

const keys = { key: 'z', ctrlKey: true, metaKey: false, shiftKey: false, altKey: false };

it('undo and redo are pressed as on every computer', () => {
  expect(stepOfKeys(keys)).toBe('undo');
  expect(stepOfKeys({ ...keys, ctrlKey: false, metaKey: true })).toBe('undo');
  expect(stepOfKeys({ ...keys, key: 'Z', shiftKey: true })).toBe('redo');
  expect(stepOfKeys({ ...keys, key: 'y' })).toBe('redo');
  expect(stepOfKeys({ ...keys, ctrlKey: false })).toBeNull();
  expect(stepOfKeys({ ...keys, altKey: true })).toBeNull();
  expect(stepOfKeys({ ...keys, key: 'x' })).toBeNull();
});
