// Every part of a display set is closed, whatever the scale, the fitting gap and the tip: also where the gap closes a web
// to nothing, and where a slant of the tip goes right through a corner of the section.

import { expect, test } from 'vitest';
import { makeRing } from '../../src/geom/ring.ts';
import { buildParts, planDisplay } from '../../src/print3d/build-display-set.ts';
import { type DisplaySetup, usualSetup } from '../../src/print3d/display-setup.ts';
import { isClosed, volumeOf } from '../../src/print3d/measure-surface.ts';
import { openWorkshop } from '../../src/print3d/solids.ts';
import type { Profile } from '../../src/profile/profile.ts';
import { demoFamily } from '../kit/demo-family.ts';

const workshop = await openWorkshop();
const demo = demoFamily();

function blankOf(id: string, points: readonly (readonly [number, number])[]): Profile {
  const made = makeRing(points.map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })));
  if (!made.ok) throw new Error('not a ring');
  return { id, kind: 'blank', name: id, ring: made.ring };
}

/** Two halves that hang together by a web of 0.4 mm, and two triangles by one of 0.2 mm. */
const WEBS = [
  blankOf('webbed', [
    ...([
      [0, 0],
      [2, 0],
      [2, 2],
      [1.2, 2],
      [1.2, 4],
      [2, 4],
    ] as const),
    ...([
      [2, 6],
      [0, 6],
      [0, 4],
      [0.8, 4],
      [0.8, 2],
      [0, 2],
    ] as const),
  ]),
  blankOf('waist', [
    [0, 0],
    [2, 0],
    [1.1, 3],
    [2, 6],
    [0, 6],
    [0.9, 3],
  ]),
];
const family = { ...demo, profiles: [...demo.profiles, ...WEBS] };

function partsOf(changes: Partial<DisplaySetup>) {
  const setup = { ...usualSetup(family), openings: [], board: false, letters: false, ...changes };
  const steps = buildParts(planDisplay(family, setup), { workshop, setup, letters: null });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value.parts;
  }
}

const NASTY = ['webbed', 'waist', 'smew-blank', 'bittern-blank', 'avocet-blank', 'dunlin-blank', 'shore-group-blank'];

/** Scale and gap: the slants of a pointed tip meet corners at the first two, the webs close at the next two. */
const CASES = [
  [2, 0.1],
  [4, 0.4],
  [1, 0.2],
  [1, 0.1],
  [4, 0],
  [7.77, 0.15],
] as const;

test.each(CASES)('at %d:1 with a gap of %d mm every coupon is closed', (scale, gap) => {
  for (const tip of ['flat', 'chamfered', 'pointed'] as const) {
    for (const { name, surface } of partsOf({ scale, gap, tip, blanks: NASTY })) {
      expect(isClosed(surface), `${name}, ${tip}`).toBe(true);
      expect(volumeOf(surface)).toBeGreaterThan(0);
    }
  }
});
