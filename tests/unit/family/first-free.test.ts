import { expect, test } from 'vitest';
import { firstFree } from '../../../src/family/first-free.ts';

test('the first of the names that nothing has', () => {
  const named = (n: number) => (n === 1 ? 'rail' : `rail-${n}`);
  expect(firstFree([], named)).toBe('rail');
  expect(firstFree(['rail', 'rail-2', 'rail-4'], named)).toBe('rail-3');
});
