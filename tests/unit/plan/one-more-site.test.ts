import { expect, test } from 'vitest';
import { oneMoreSite } from '../../../src/plan/one-more-site.ts';
import { wardSites } from '../../../src/plan/ward-sites.ts';
import { BLADE, GAP, mm } from './sample-blade.ts';

test('by hand: a sixth height takes a millimetre, of which the blade has none to spare', () => {
  // Five heights take 0.6 to 5.35 mm, exactly the band; four steps and a groove are 4.75 mm.
  const more = oneMoreSite(BLADE, GAP, 1);
  const by = (field: string) => more.find((one) => one.field === field)?.by;
  expect(by('height')).toBe(mm(1));
  expect(by('cutZone')).toBe(-mm(1));
  // Six grooves need (4.75 - 0.75) / 5 = 0.8 mm a step, less than a groove with its land of 0.14 mm.
  expect(by('heightStep')).toBeUndefined();
  expect(by('thickness')).toBeUndefined();
  expect(more.find(({ field }) => field === 'height')?.sites).toBe(12);
});

test('each change does give more, and a hundredth of a millimetre less of it does not', () => {
  const deep = { ...BLADE, grooveDepth: mm(0.9), sides: 'both' as const };
  const now = wardSites(deep, GAP, 1).sites.length;
  const more = oneMoreSite(deep, GAP, 1);
  expect(more.map(({ field }) => field)).toContain('thickness');
  expect(more.map(({ field }) => field)).toContain('grooveDepth');
  for (const { field, by, sites } of more) {
    const at = (change: number) =>
      field === 'leastWeb'
        ? wardSites(deep, { ...GAP, leastWeb: GAP.leastWeb + change }, 1).sites.length
        : wardSites({ ...deep, [field]: Number(deep[field]) + change }, GAP, 1).sites.length;
    expect(at(by), field).toBe(sites);
    expect(at(by), field).toBeGreaterThan(now);
    expect(at(by - Math.sign(by) * mm(0.01)), field).toBeLessThanOrEqual(now);
  }
});

test('the other face comes first', () => {
  expect(oneMoreSite({ ...BLADE, sides: 'left' }, GAP, 1)[0]).toEqual({ field: 'sides', by: 0, sites: 10 });
});

test('a blade that cannot be made has no next site', () => {
  expect(oneMoreSite({ ...BLADE, grooveDepth: mm(0.1) }, GAP, 1)).toEqual([]);
});
