import { describe, expect, test } from 'vitest';
import { tiersOf } from '../../../src/family/tiers.ts';
import { largeFamily } from '../../cases/large-families.ts';
import { judgeTable } from '../../kit/judge-table.ts';

describe('the invented large families', () => {
  test.each([
    [8, 12, 0],
    [20, 40, 3],
    [60, 120, 0],
  ])('%i keyways and %i blanks: the judge says what the ward sites say', (openings, blanks, lengths) => {
    const { family, goesIn: bySites } = largeFamily(openings, blanks, { lengths });
    const table = judgeTable(family);
    expect(table.openings).toHaveLength(openings);
    expect(table.entrants).toHaveLength(blanks);
    expect(table.goesIn).toEqual(bySites);
    const tiers = tiersOf(table);
    expect(tiers.nodes).toHaveLength(blanks - lengths);
    expect(Math.max(...tiers.nodes.map(({ tier }) => tier))).toBeGreaterThan(1);
    expect(tiers.nodes.filter(({ rank }) => rank === 'all').map(({ id }) => id)).toEqual(['all-section-blank']);
  });

  test('there is one of 200 by 200', () => {
    const { family, goesIn: bySites } = largeFamily(200, 200, { lengths: 10 });
    expect(family.profiles).toHaveLength(400);
    expect(new Set(bySites.map((row) => row.map(Number).join(''))).size).toBe(190);
  });

  test('too many are refused', () => {
    expect(() => largeFamily(8, 500)).toThrow('different group blanks');
    expect(() => largeFamily(300, 10)).toThrow('2 to 200 openings');
  });
});
