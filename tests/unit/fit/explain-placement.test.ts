import { describe, expect, test } from 'vitest';
import { type Explanation, explainPlacement } from '../../../src/fit/explain-placement.ts';
import { partName } from '../../../src/fit/fit-sentence.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { judge } from '../../kit/judge.ts';
import { boxOfMm, ringOfMm, soundRing, wardedKeyway } from '../../kit/shapes.ts';

const at = (xMm: number, yMm: number, tilt = 0) => ({ x: xMm * 1e6, y: yMm * 1e6, tilt });
const slot = boxOfMm(2.1, 8.5);
const blade = boxOfMm(2, 8.4);

/** What stands in the way, the deepest first. */
const named = ({ collisions }: Explanation) => collisions.map(partName);
const mirrored = (ring: Ring) => soundRing(ring.map(({ x, y }) => ({ x: -x, y })));

describe('a collision', () => {
  test('with a ward: its side, its height band above the floor of the keyway, its depth', () => {
    const { gap, collisions } = explainPlacement(wardedKeyway(0.5), blade, at(0.1, 0.05));
    expect(collisions).toHaveLength(1);
    const [ward] = collisions;
    expect(ward).toMatchObject({ side: 'left', ward: true });
    expect(ward.from).toBeCloseTo(3.1e6, 0);
    expect(ward.to).toBeCloseTo(3.9e6, 0);
    expect(Math.abs(ward.depth - 0.4e6)).toBeLessThan(2);
    expect(gap).toBe(-ward.depth);
  });

  test('a ward keeps its height wherever the blank stands and wherever the keyway is drawn', () => {
    const moved = soundRing(wardedKeyway(0.5).map(({ x, y }) => ({ x: x + 5e6, y: y - 9e6 })));
    for (const up of [0, 0.05, 0.1]) {
      const [ward] = explainPlacement(moved, boxOfMm(2, 6), at(5.1, up + 2 - 9)).collisions;
      expect(ward.from).toBeCloseTo(3.1e6, 0);
    }
  });

  test('on the other side where the keyway is mirrored', () => {
    const [ward] = explainPlacement(mirrored(wardedKeyway(0.5)), mirrored(blade), at(-0.1, 0.05)).collisions;
    expect(ward).toMatchObject({ side: 'right', ward: true });
  });

  test.each([
    ['left wall', -0.1, 0.05],
    ['right wall', 0.2, 0.05],
    ['floor of the keyway', 0.05, -0.1],
    ['top of the keyway', 0.05, 0.2],
  ])('with the %s, which is no ward', (name, x, y) => {
    expect(named(explainPlacement(slot, blade, at(x, y)))).toEqual([name]);
  });

  test('a ward that reaches past the middle keeps its side', () => {
    const deep = wardedKeyway(1.4);
    expect(named(explainPlacement(deep, boxOfMm(0.6, 8.4), at(0.9, 0.05)))).toEqual(['left ward']);
    const other = named(explainPlacement(mirrored(deep), mirrored(boxOfMm(0.6, 8.4)), at(-0.9, 0.05)));
    expect(other).toEqual(['right ward']);
  });

  test('the lips of a ward with a head belong to its side, past the middle too', () => {
    const headed = ringOfMm([
      [0, 0],
      [2, 0],
      [2, 8],
      [0, 8],
      [0, 4.6],
      [0.6, 4.6],
      [0.6, 5.2],
      [1.5, 5.2],
      [1.5, 3.4],
      [0.6, 3.4],
      [0.6, 4],
      [0, 4],
    ]);
    expect(named(explainPlacement(headed, boxOfMm(0.3, 0.3), at(1.1, 5)))).toEqual(['left ward']);
    expect(named(explainPlacement(headed, boxOfMm(0.1, 0.4), at(1.2, 3.2)))).toEqual(['left ward']);
  });

  test('a flare at the open bottom does not make wards of the plain walls', () => {
    const flared = ringOfMm([
      [-0.5, 0],
      [2.5, 0],
      [2.05, 0.9],
      [2.05, 8.5],
      [-0.05, 8.5],
      [-0.05, 0.9],
    ]);
    expect(named(explainPlacement(flared, boxOfMm(2.2, 8.4), at(-0.1, 0.05))).sort()).toEqual([
      'left wall',
      'right wall',
    ]);
  });

  test('a ward is named before the wall that it pushes the blank against, at equal depth', () => {
    const keyway = wardedKeyway(0.5);
    const { placement } = judge(keyway, blade);
    expect(named(explainPlacement(keyway, blade, placement))[0]).toBe('left ward');
  });

  test('wards on the floor and under the roof', () => {
    const sill = ringOfMm([
      [0, 0],
      [0.8, 0],
      [0.8, 1],
      [1.3, 1],
      [1.3, 0],
      [2.1, 0],
      [2.1, 8.5],
      [0, 8.5],
    ]);
    expect(named(explainPlacement(sill, boxOfMm(2, 7.4), at(0.05, 0.5)))).toEqual(['bottom ward']);
    const hung = soundRing(sill.map(({ x, y }) => ({ x, y: 8.5e6 - y })));
    expect(named(explainPlacement(hung, boxOfMm(2, 7.4), at(0.05, 0.5)))).toEqual(['top ward']);
  });

  test.each([10, 60, 150, 400, 2000])('a shallow one of %i nm has its full depth', (depth) => {
    const { gap, collisions } = explainPlacement(slot, blade, { x: -depth, y: 50_000, tilt: 0 });
    expect(collisions).toHaveLength(1);
    expect(Math.abs(-gap - depth)).toBeLessThan(2);
  });

  test('points in a covered island count, not the outlines only', () => {
    const speck = [
      { x: 1e6, y: 4e6 },
      { x: 1e6, y: 4.2e6 },
      { x: 1.2e6, y: 4.2e6 },
      { x: 1.2e6, y: 4e6 },
    ];
    const { gap } = explainPlacement([{ outer: slot, holes: [speck] }], blade, at(0.05, 0.05));
    expect(Math.abs(gap + 1e5)).toBeLessThan(2);
  });

  test('every part of a blank worn in two is looked at', () => {
    const parts = [boxOfMm(2, 3), soundRing(boxOfMm(2.3, 3).map(({ x, y }) => ({ x, y: y + 5e6 })))];
    const { collisions } = explainPlacement(slot, parts, at(0, 0));
    expect(collisions).toHaveLength(1);
    expect(collisions[0].from).toBeCloseTo(5e6, 0);
  });
});

describe('the whole placement', () => {
  test('where a blocked blank stands best, the depth is the interference', () => {
    for (const [opening, blank] of [
      [boxOfMm(2, 8.5), boxOfMm(2.2, 8.4)],
      [wardedKeyway(0.6), blade],
      [boxOfMm(2, 2), boxOfMm(2.3, 2.3)],
    ]) {
      const fit = judge(opening, blank);
      const { gap } = explainPlacement(opening, blank, fit.placement);
      expect(Math.abs(gap - fit.clearance)).toBeLessThan(fit.accuracy + 5);
    }
  });

  test('where a blank fits, the gap is the clearance and nothing collides', () => {
    const fit = judge(wardedKeyway(0.02), boxOfMm(1.9, 8.4));
    const explanation = explainPlacement(wardedKeyway(0.02), boxOfMm(1.9, 8.4), fit.placement);
    expect(explanation.collisions).toEqual([]);
    expect(Math.abs(explanation.gap - fit.clearance)).toBeLessThan(1);
  });

  test('a hand-placed blank far outside collides by how far it is from the keyway', () => {
    const { gap } = explainPlacement(slot, blade, at(5, 0));
    expect(gap / 1e6).toBeCloseTo(-4.9, 5);
  });

  test('a tilted blank: corners dig in on opposite sides, at heights in the keyway', () => {
    const tilt = (3 * Math.PI) / 180;
    const lean = (8.4 / 2) * Math.sin(tilt);
    const { collisions } = explainPlacement(slot, blade, at(0.05 + lean, 0.05, tilt));
    const sides = collisions.map(({ side }) => side);
    expect(sides).toContain('left');
    expect(sides).toContain('right');
    const left = collisions.find(({ side }) => side === 'left');
    const right = collisions.find(({ side }) => side === 'right');
    // By hand: where its back and its upper edge cross the walls.
    const back = (x: number) => 50_000 + (x - 50_000 - lean * 1e6) * Math.tan(tilt);
    expect(left?.to).toBeCloseTo(back(0) + 8.4e6 / Math.cos(tilt), -2);
    expect(right?.from).toBeCloseTo(back(2.1e6), -2);
  });
});

describe('contacts', () => {
  test.each([
    ['bottom', 0.05, 0],
    ['top', 0.05, 0.1],
    ['left', 0, 0.05],
    ['right', 0.1, 0.05],
  ])('a touch on the %s, without any gap, has its side', (side, x, y) => {
    const { gap, contacts } = explainPlacement(slot, blade, at(x, y));
    expect(gap).toBe(0);
    expect(new Set(contacts.map((contact) => contact.side))).toEqual(new Set([side]));
    expect(contacts.every(({ ward }) => !ward)).toBe(true);
  });

  test('touching the tip of a ward past the middle: that ward', () => {
    const { contacts } = explainPlacement(wardedKeyway(1.2), boxOfMm(0.8, 0.6), at(1.2, 3.2));
    expect(contacts[0]).toMatchObject({ side: 'left', ward: true, gap: 0 });
  });

  test('the narrowest come first, with both ends, height and which corner or edge', () => {
    const { contacts } = explainPlacement(slot, blade, at(0.03, 0.06));
    expect(contacts[0]).toMatchObject({ side: 'left', ward: false });
    for (const { gap, onBlank, onOpening, side, blankFeature, openingFeature, height } of contacts) {
      expect(gap).toBeCloseTo(Math.hypot(onBlank.x - onOpening.x, onBlank.y - onOpening.y), 6);
      expect(gap).toBeLessThanOrEqual(contacts[0].gap + 2_000);
      expect(side).toBe('left');
      expect(blankFeature.kind).toBe('corner');
      expect(openingFeature).toEqual({ kind: 'edge', index: 3 });
      expect([0.06e6, 8.46e6]).toContain(height);
    }
    expect(contacts[0].gap).toBeCloseTo(30_000, 3);
  });

  test('a wall counts up to 2 um beyond the narrowest gap, not further', () => {
    const sidesAt = (xMm: number) =>
      new Set(explainPlacement(slot, boxOfMm(2, 8), at(xMm, 0.2)).contacts.map(({ side }) => side));
    expect(sidesAt(0.0505)).toEqual(new Set(['left', 'right']));
    expect(sidesAt(0.0515)).toEqual(new Set(['right']));
  });

  test('all places that limit are told: a centred blank has both walls', () => {
    const { contacts } = explainPlacement(slot, boxOfMm(2, 8), at(0.05, 0.2));
    expect(new Set(contacts.map(({ side }) => side))).toEqual(new Set(['left', 'right']));
  });
});
