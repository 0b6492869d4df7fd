import { beforeAll, expect, test } from 'vitest';
import { difference } from '../../../src/geom/clip.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { regionArea } from '../../../src/geom/region-area.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import type { Cutter } from '../../../src/passage/groove-cover.ts';
import { millPassage } from '../../../src/passage/mill-passage.ts';
import type { Passage } from '../../../src/passage/passage.ts';
import { checkMilled } from '../../../src/profile/check-milled.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { findPassage } from '../../kit/find-passage.ts';
import { judge } from '../../kit/judge.ts';

const UM = 1_000;
const CUTTER: Cutter = { flank: 0, rootRadius: 0, leastWidth: 300 * UM, depthStep: 50 * UM };
const ANY = { thickness: null, height: null };

const keyways = (ids: readonly string[], others: readonly string[] = []) => {
  const rings = new Map(demoFamily().profiles.map(({ id, ring }) => [id, ring]));
  const some = (wanted: readonly string[]): Record<string, Ring> =>
    Object.fromEntries(wanted.map((id) => [`${id}-keyway`, rings.get(`${id}-keyway`) as Ring]));
  return { chosen: some(ids), others: some(others) };
};

function mill(
  passage: Passage,
  rings: Record<string, Ring>,
  cutter = CUTTER,
  plain: Parameters<typeof millPassage>[0]['plain'] = ANY,
) {
  const openings = Object.entries(rings).map(([id, ring]) => ({ id, ring }));
  const search = millPassage({ passage, openings, plain, cutter });
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

const { chosen, others } = keyways(['heron', 'smew', 'bittern'], ['plover', 'avocet']);
let free: Passage;
beforeAll(() => {
  free = findPassage(chosen, 40 * UM, others);
}, 120_000);

test('it lies within the widest blank, can be milled, enters every chosen keyway, and its grooves are those of the cutter', () => {
  const passage = mill(free, { ...chosen, ...others });
  if (!passage?.blank?.milled || !free.blank) throw new Error('none');
  const { blade, free: most } = passage.blank.milled;
  expect(checkMilled(blade)).toEqual([]);
  expect(most).toBe(free.blank.area);
  expect(passage.blank.area).toBeLessThanOrEqual(most);
  expect(passage.blank.area).toBeGreaterThan(0.85 * most);
  for (const { depth, width, flank, rootRadius } of blade.grooves) {
    expect(depth % CUTTER.depthStep).toBe(0);
    expect(width).toBeGreaterThanOrEqual(CUTTER.leastWidth);
    expect([flank, rootRadius]).toEqual([0, 0]);
  }
  for (const ring of Object.values(chosen)) expect(judge(ring, passage.blank.ring, 40 * UM).verdict).toBe('enters');
  for (const { id, fit } of passage.entries)
    expect(fit.verdict).toBe(judge({ ...chosen, ...others }[id], passage.blank.ring, 40 * UM).verdict);
  const [a, b] = [passage.members[0].move, free.members[0].move];
  const back = passage.blank.ring.map(({ x, y }) => ({ x: x + b.x - a.x, y: y + b.y - a.y })) as unknown as Ring;
  expect(regionArea(difference(regionOf(back), regionOf(free.blank.ring)))).toBeLessThan(1e9);
});

test('flanks, a root radius and coarse depths take off more, a wide cutter more still', () => {
  const area = (cutter: Partial<Cutter>) => mill(free, chosen, { ...CUTTER, ...cutter })?.blank?.area ?? 0;
  const plain = area({});
  const leaning = area({ flank: Math.PI / 9, rootRadius: 100 * UM });
  expect(leaning).toBeGreaterThan(0);
  expect(leaning).toBeLessThan(plain);
  expect(area({ depthStep: 300 * UM })).toBeLessThan(plain);
  expect(area({ leastWidth: 1_200 * UM })).toBeLessThan(plain);
});

test('a plain blade of a given size is kept to; one that is too thick or too high is none', () => {
  const thinner = mill(free, chosen, CUTTER, { thickness: 1_800 * UM, height: 8_000 * UM });
  expect(thinner?.blank?.milled?.blade).toMatchObject({ thickness: 1_800 * UM, height: 8_000 * UM });
  expect(mill(free, chosen, CUTTER, { thickness: null, height: 20_000 * UM })).toBeNull();
  expect(mill(free, chosen, CUTTER, { thickness: 4_000 * UM, height: null })).toBeNull();
});
