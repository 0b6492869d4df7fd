import { expect, test } from 'vitest';
import { makeRing } from '../../../src/geom/ring.ts';
import { checkGap } from '../../../src/print3d/check-gap.ts';
import { type DisplaySetup, usualSetup } from '../../../src/print3d/display-setup.ts';
import type { Profile, ProfileKind } from '../../../src/profile/profile.ts';
import { demoFamily } from '../../kit/demo-family.ts';

/** A rectangle 8 mm high; heights leave room, so the width alone decides. */
function bar(id: string, kind: ProfileKind, width: number): Profile {
  const height = kind === 'opening' ? 8 : 7;
  const made = makeRing(
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ].map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })),
  );
  if (!made.ok) throw new Error('not a ring');
  return { id, kind, name: id, ring: made.ring };
}

const OPENINGS = [bar('narrow', 'opening', 1.95), bar('even', 'opening', 2.02), bar('wide', 'opening', 2.5)];
const BLANK = bar('blank', 'blank', 2);

function checksOf(entrant: Profile, changes: Partial<DisplaySetup>) {
  const setup = { ...usualSetup(demoFamily()), scale: 4, ...changes };
  const steps = checkGap(entrant, OPENINGS, setup);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

function check(changes: Partial<DisplaySetup>) {
  return checksOf(BLANK, changes).map(({ kind, subjects, size, limit }) => ({
    kind,
    subjects,
    size: Number(size?.toFixed(3)),
    limit,
  }));
}

test('a blocked pair that the gap lets in, and one that it makes looser, are told as printed', () => {
  // Blocked by 25 um a side, 0.1 mm as printed: a gap of 0.12 mm lets it in. The even one has 10 um a side.
  expect(check({ gap: 0.12 })).toEqual([
    { kind: 'gap-lets-in', subjects: ['blank', 'narrow'], size: 0.1, limit: 0.12 },
    { kind: 'gap-hides', subjects: ['blank', 'even'], size: 0.04, limit: 0.12 },
  ]);
});

test('a smaller gap, or a larger scale, keeps the verdicts', () => {
  expect(check({ gap: 0.09 }).map(({ kind }) => kind)).toEqual(['gap-hides']);
  expect(check({ gap: 0.12, scale: 8 }).map(({ kind }) => kind)).toEqual(['gap-hides']);
  expect(check({ gap: 0.03 })).toEqual([]);
  expect(check({ gap: 0 })).toEqual([]);
});

test('what goes in more easily than itself is named as what it is', () => {
  expect(checksOf(BLANK, { gap: 0.09 })[0].what).toMatch(/more easily than the blank itself$/);
  expect(checksOf(bar('hook', 'tool', 2), { gap: 0.09 })[0].what).toMatch(/more easily than the tool itself$/);
});
