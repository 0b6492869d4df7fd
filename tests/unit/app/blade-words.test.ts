import { expect, test } from 'vitest';
import {
  countWords,
  gapFacts,
  moreRoomWords,
  siteByKey,
  siteFacts,
  siteLabel,
} from '../../../src/app/state/plan/blade/blade-words.ts';
import { wardSites } from '../../../src/plan/ward-sites.ts';
import { BLADE, GAP, mm } from '../plan/sample-blade.ts';

const layout = wardSites(BLADE, GAP, 2);
const { sites } = layout;

test('sites are counted by face', () => {
  expect(countWords(layout)).toBe('10 ward sites: 5 on the left, 5 on the right');
  expect(countWords({ sites: [] })).toBe('No ward site');
  expect(countWords({ sites: sites.slice(0, 1) })).toBe('1 ward site: 1 on the left, 0 on the right');
});

test('keys go up and down a face, and across to the nearest on the other', () => {
  // Level: 0 left and 1 right at the back, then 2 and 3, and so on.
  expect(siteByKey(sites, 0, 'ArrowUp')).toBe(2);
  expect(siteByKey(sites, 0, 'ArrowDown')).toBe(0);
  expect(siteByKey(sites, 4, 'ArrowRight')).toBe(5);
  expect(siteByKey(sites, 5, 'ArrowRight')).toBe(5);
  expect(siteByKey(sites, 5, 'ArrowLeft')).toBe(4);
  expect(siteByKey(sites, 8, 'ArrowUp')).toBe(8);
  expect(siteByKey(sites, 3, 'Home')).toBe(0);
  expect(siteByKey(sites, 3, 'End')).toBe(9);
  expect(siteByKey(sites, 3, 'x')).toBeNull();
  expect(siteByKey([], 0, 'ArrowUp')).toBeNull();
});

test('a site says where it is, in either unit', () => {
  expect(siteLabel(2, sites[2], BLADE, 'mm')).toBe('Site 3, left face, 1.60 mm to 2.35 mm');
  expect(siteLabel(2, sites[2], BLADE, 'in')).toMatch(/^Site 3, left face, 0\.063 in to/);
});

test('a site says what a ward there does', () => {
  const facts = new Map(siteFacts(BLADE, GAP, layout, 0, 'mm').map(({ term, value }) => [term, value]));
  expect(facts.get('Depths')).toBe('0.30 mm, 0.60 mm');
  // The tip stands 0.6 - 0.08 past the face, 0.48 short of the middle of 2 mm; play takes 2 x 0.08 of the stop.
  expect(facts.get('Ward, short of the centre line')).toBe('0.48 mm');
  expect(facts.get('Stops by, at full depth')).toBe('0.44 mm');
  expect(facts.get('Web to the other face')).toBe('0.80 mm');
});

test('a deep ward is past the centre line', () => {
  const deep = { ...BLADE, grooveDepth: mm(1.3), sides: 'left' as const };
  const terms = siteFacts(deep, GAP, wardSites(deep, GAP, 1), 0, 'mm').map(({ term }) => term);
  expect(terms).toContain('Ward, past the centre line');
  expect(terms).not.toContain('Web to the other face');
});

test('the gap and what stops are told', () => {
  const values = gapFacts(GAP, layout, 'mm').map(({ value }) => value);
  expect(values).toEqual(['0.080 mm', '0.245 mm', '0.500 mm', '0.800 mm']);
});

test('more room in words', () => {
  expect(moreRoomWords({ field: 'height', by: mm(0.24), sites: 12 }, 'mm')).toBe('0.24 mm more height: 12 sites');
  expect(moreRoomWords({ field: 'heightStep', by: -mm(0.05), sites: 12 }, 'mm')).toBe(
    '0.05 mm less height step: 12 sites',
  );
  expect(moreRoomWords({ field: 'sides', by: 0, sites: 8 }, 'mm')).toBe('Both faces: 8 sites');
});
