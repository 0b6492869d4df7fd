import { expect, test } from 'vitest';
import { labelParts } from '../../../src/print3d/label-parts.ts';
import { demoProfile } from '../../kit/demo-family.ts';

const knot = demoProfile('knot-blank');

test('a coupon carries the name of its section, a tool its own', () => {
  const labels = labelParts([knot, demoProfile('strip-055')]);
  expect([...labels.values()]).toEqual(['Knot', 'Strip 0.55 x 6']);
});

test('two lengths of a section are told apart by their chambers', () => {
  const labels = labelParts([demoProfile('heron-blank-5'), demoProfile('heron-blank-6'), knot]);
  expect(Object.fromEntries(labels)).toEqual({
    'heron-blank-5': 'Heron 5',
    'heron-blank-6': 'Heron 6',
    'knot-blank': 'Knot',
  });
});

test('equal names end with the id', () => {
  const twins = ['a', 'b'].map((id) => ({ ...knot, id }));
  expect([...labelParts(twins).values()]).toEqual([`${knot.name} (a)`, `${knot.name} (b)`]);
});
