import { expect, test } from 'vitest';
import { walkByKey } from '../../../src/app/state/walk.ts';

test('keys walk a list round its ends; Home and End go to them', () => {
  const birds = ['Heron', 'Smew', 'Knot'];
  expect(walkByKey(birds, 'Heron', 'ArrowDown')).toBe('Smew');
  expect(walkByKey(birds, 'Knot', 'ArrowDown')).toBe('Heron');
  expect(walkByKey(birds, 'Heron', 'ArrowUp')).toBe('Knot');
  expect(walkByKey(birds, null, 'ArrowDown')).toBe('Heron');
  expect(walkByKey(birds, null, 'ArrowUp')).toBe('Knot');
  expect(walkByKey(birds, 'Smew', 'Home')).toBe('Heron');
  expect(walkByKey(birds, 'Smew', 'End')).toBe('Knot');
});

test('other keys lead nowhere, and an empty list has no place to go to', () => {
  expect(walkByKey(['Heron'], 'Heron', 'Enter')).toBeUndefined();
  expect(walkByKey(['Heron'], 'Heron', 'ArrowRight')).toBeUndefined();
  for (const key of ['Home', 'End', 'ArrowDown', 'ArrowUp']) expect(walkByKey([], null, key)).toBeNull();
});
