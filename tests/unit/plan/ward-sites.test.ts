import { describe, expect, test } from 'vitest';
import type { BladeLimits } from '../../../src/family/plan.ts';
import { wardSites } from '../../../src/plan/ward-sites.ts';
import { BLADE, GAP, mm } from './sample-blade.ts';

const MM = 1_000_000;

const fieldsOf = (blade: Partial<BladeLimits>, depths = 1, gap: typeof GAP = GAP) =>
  wardSites({ ...BLADE, ...blade }, gap, depths)
    .limits.filter(({ kind }) => kind === 'fault')
    .map(({ field }) => field);

describe('sites counted by hand', () => {
  test('five heights from 0.6 to 4.6 mm, both faces level: ten sites', () => {
    const { sites, arrangement, web } = wardSites(BLADE, GAP, 1);
    expect(arrangement).toBe('level');
    expect(sites.map(({ side, bottom }) => `${side} ${bottom / MM}`)).toEqual([
      'left 0.6',
      'right 0.6',
      'left 1.6',
      'right 1.6',
      'left 2.6',
      'right 2.6',
      'left 3.6',
      'right 3.6',
      'left 4.6',
      'right 4.6',
    ]);
    expect(web).toBe(mm(0.8));
    expect(sites[0].depths).toEqual([mm(0.6)]);
  });

  test('a hair less height is one height less', () => {
    expect(wardSites({ ...BLADE, cutZone: mm(3.051) }, GAP, 1).sites).toHaveLength(8);
  });

  test('one face only', () => {
    const { sites, arrangement, limits } = wardSites({ ...BLADE, sides: 'left' }, GAP, 1);
    expect(sites).toHaveLength(5);
    expect(arrangement).toBe('one-face');
    expect(limits.map(({ field }) => field)).toContain('sides');
  });

  test('where level grooves leave too little, the faces take turns', () => {
    // 2.0 - 2 x 0.9 = 0.2 mm is too thin; a step apart, 0.25 mm in height and 0.2 mm across, 0.32 mm is left.
    const { sites, arrangement } = wardSites({ ...BLADE, grooveDepth: mm(0.9) }, { ...GAP, leastWeb: mm(0.3) }, 1);
    expect(arrangement).toBe('thinned');
    expect(sites).toHaveLength(5);
    const heights = sites.map(({ bottom }) => bottom);
    expect(new Set(heights).size).toBe(5);
    expect(sites.filter(({ side }) => side === 'left')).toHaveLength(3);
  });

  test('where even the next step is too close, one face has them all', () => {
    const { sites } = wardSites({ ...BLADE, grooveDepth: mm(0.9) }, GAP, 1);
    expect(sites.map(({ side }) => side)).toEqual(['left', 'left', 'left', 'left', 'left']);
  });

  test('leaning flanks part the roots, so that half a step of stagger keeps every site', () => {
    // Roots 0.75 - 2 x 0.9 tan 15 = 0.268 mm wide, half a step of 0.6 mm apart: 0.332 mm in height and 0.2 mm across.
    const lean = { grooveDepth: mm(0.9), heightStep: mm(1.2), flank: (15 * Math.PI) / 180, cutZone: mm(1.5) };
    const { sites, arrangement, web } = wardSites({ ...BLADE, ...lean }, { ...GAP, leastWeb: mm(0.35) }, 1);
    expect(arrangement).toBe('staggered');
    expect(sites.filter(({ side }) => side === 'left')).toHaveLength(5);
    expect(sites.filter(({ side }) => side === 'right')).toHaveLength(5);
    expect(web / MM).toBeCloseTo(Math.hypot(0.2, 0.6 - (0.75 - 1.8 * Math.tan((15 * Math.PI) / 180))), 3);
  });

  test('depths go down from the greatest in steps', () => {
    expect(wardSites(BLADE, GAP, 2).sites[0].depths).toEqual([mm(0.3), mm(0.6)]);
  });
});

describe('limits that no blade can be made to', () => {
  test.each([
    ['a groove deeper than the thickness less the web', { grooveDepth: mm(1.51) }, 1, 'grooveDepth'],
    ['a ward no deeper than play and tolerance', { grooveDepth: mm(0.245) }, 1, 'grooveDepth'],
    ['a step of depth within play and tolerance', { depthStep: mm(0.245) }, 2, 'depthStep'],
    ['more depths than the groove has', { depthStep: mm(0.3) }, 3, 'depths'],
    ['flanks that meet', { flank: (35 * Math.PI) / 180 }, 1, 'flank'],
    ['a ward without a tip', { grooveWidth: mm(0.24) }, 1, 'grooveWidth'],
    ['a root radius above half the width', { rootRadius: mm(0.376) }, 1, 'rootRadius'],
    ['grooves that run into each other', { heightStep: mm(0.75) }, 1, 'heightStep'],
    ['a land that is too thin', { heightStep: mm(0.88) }, 1, 'heightStep'],
    ['no room above the back zone', { backZone: mm(5) }, 1, 'cutZone'],
    ['a back that is rounder than the blade is thick', { backRadius: mm(1.01) }, 1, 'backRadius'],
  ] as const)('%s', (_, blade, depths, field) => {
    expect(fieldsOf(blade, depths)).toContain(field);
    expect(wardSites({ ...BLADE, ...blade }, GAP, depths).sites).toEqual([]);
  });

  test('the same sizes a micrometre or so on the other side are sound', () => {
    expect(fieldsOf({ grooveDepth: mm(1.5) })).toEqual([]);
    expect(fieldsOf({ grooveDepth: mm(0.246) })).toEqual([]);
    expect(fieldsOf({ depthStep: mm(0.246) }, 2)).toEqual([]);
    expect(fieldsOf({ rootRadius: mm(0.375) })).toEqual([]);
    expect(fieldsOf({ heightStep: mm(0.89) })).toEqual([]);
  });

  test('nothing to run in', () => {
    expect(fieldsOf({}, 1, { ...GAP, runningClearance: 0, tolerance: 0 })).toEqual(['runningClearance']);
  });

  test('every field at fault is named at once', () => {
    expect(fieldsOf({ grooveDepth: mm(0.2), heightStep: mm(0.5), backRadius: mm(3), cutZone: mm(7.5) })).toEqual([
      'backRadius',
      'grooveDepth',
      'heightStep',
      'cutZone',
    ]);
  });

  test('each fault says what to do', () => {
    const { limits } = wardSites({ ...BLADE, grooveDepth: mm(1.6), heightStep: mm(0.5) }, GAP, 1);
    for (const { words, cure } of limits) {
      expect(words).toMatch(/mm/);
      expect(cure).toMatch(/^Give/);
    }
  });
});
