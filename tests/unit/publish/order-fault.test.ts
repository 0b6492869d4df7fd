import { describe, expect, test } from 'vitest';
import type { Family } from '../../../src/family/family.ts';
import { orderFault } from '../../../src/publish/order-fault.ts';
import type { OrderOfAny } from '../../../src/publish/sheet-order.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const any: OrderOfAny = { paper: 'A4', turned: 'portrait', palette: 'colour', units: 'mm' };
const family = demoFamily();

function only(...kinds: string[]): Family {
  return { ...family, plan: undefined, profiles: family.profiles.filter(({ kind }) => kinds.includes(kind)) };
}

describe('an order that cannot be met', () => {
  test('is told where the family lacks a part, with what to do', () => {
    const chart = { ...any, sheet: 'chart' } as const;
    expect(orderFault(family, chart)).toBeNull();
    expect(orderFault(only('blank', 'tool'), chart)).toBe('the family has no openings: draw or import one first');
    expect(orderFault(only('opening'), chart)).toMatch(/no blanks and no tools: draw or import one first/);
    expect(orderFault(only('opening', 'tool'), { ...chart, blanksOnly: true })).toMatch(/tools only: take tools in/);
  });

  test('names an id that is not there, and the ids that are', () => {
    const scale = { ...any, sheet: 'scale', enlarge: 6 } as const;
    const [opening] = family.profiles.filter(({ kind }) => kind === 'opening');
    const [blank] = family.profiles.filter(({ kind }) => kind === 'blank');
    expect(orderFault(family, { ...scale, opening: opening.id, blank: blank.id })).toBeNull();
    expect(orderFault(family, { ...scale, opening: 'none' })).toMatch(
      /^there is no opening with the id "none"; it has /,
    );
    expect(orderFault(family, { ...scale, opening: 'none' })).toContain(opening.id);
    expect(orderFault(family, { ...scale, blank: opening.id })).toContain(
      `no blank or tool with the id "${opening.id}"`,
    );
    expect(orderFault(family, { ...any, sheet: 'card', of: 'none' })).toContain('no blank, tool or holder');
    expect(orderFault(family, { ...any, sheet: 'card', of: blank.id })).toBeNull();
    expect(orderFault(family, { ...any, sheet: 'chart', inBetween: [opening.id, 'none'] })).toContain('"none"');
  });

  test('tells the range of a number', () => {
    for (const enlarge of [0.5, 51, Number.NaN])
      expect(orderFault(family, { ...any, sheet: 'scale', enlarge })).toBe(
        `the enlargement must be 1 to 50, not ${enlarge}`,
      );
    for (const questions of [0, 101, 2.5])
      expect(orderFault(family, { ...any, sheet: 'answers', questions, seed: 1 })).toContain(`100, not ${questions}`);
  });
});
