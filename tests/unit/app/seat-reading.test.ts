import { expect, test } from 'vitest';
import { judgeNow } from '../../../src/app/doors/pair-now.ts';
import { seatReading, seatText } from '../../../src/app/state/seat-reading.ts';
import { entrantsOf, type Family, openingsOf } from '../../../src/family/family.ts';
import type { KnownFits } from '../../../src/family/known-fits.ts';
import { plainConditions } from '../../../src/fit/conditions.ts';
import { makeRing, type Ring } from '../../../src/geom/ring.ts';
import type { Profile } from '../../../src/profile/profile.ts';

function ringOf(mm: readonly [number, number][]): Ring {
  const made = makeRing(mm.map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })));
  if (!made.ok) throw new Error(made.fault.message);
  return made.ring;
}

/** A blade with a slot of the given height in its back, 0.6 mm wide about x = 1. */
function slotted(width: number, height: number, slot: number, wide = 0.6): Ring {
  const [a, b] = [1 - wide / 2, 1 + wide / 2];
  return ringOf([
    ...([
      [1 - width / 2, 0],
      [a, 0],
      [a, slot],
      [b, slot],
      [b, 0],
      [1 + width / 2, 0],
    ] as [number, number][]),
    ...([
      [1 + width / 2, height],
      [1 - width / 2, height],
    ] as [number, number][]),
  ]);
}

// A keyway with a ward of 0.5 mm standing on its floor; every blank is 0.05 mm clear of it all round but for its slot.
const profiles: Profile[] = [
  { id: 'k', kind: 'opening', name: 'Heron keyway', section: 'Heron', ring: slotted(2.1, 9, 0.5, 0.5) },
  { id: 'own', kind: 'blank', name: 'Heron blank, five chambers', section: 'Heron', ring: slotted(2, 8, 0.6) },
  { id: 'shallow', kind: 'blank', name: 'Reed group blank', section: 'Reed', ring: slotted(2, 8, 0.2) },
  { id: 'long', kind: 'blank', name: 'Heron blank, six chambers', section: 'Heron', ring: slotted(2, 8, 0.7) },
  { id: 'thick', kind: 'blank', name: 'Thick blank', section: 'Rail', ring: slotted(2.3, 8, 0.6) },
  { id: 'tool', kind: 'tool', name: 'Strip', ring: slotted(1.2, 6, 0.2) },
];
const family: Family = {
  name: 'Seats',
  units: 'mm',
  runningClearance: 40_000,
  tolerance: 0,
  tiltLimit: 0,
  profiles,
};
const conditions = plainConditions(40_000);
const known: KnownFits = {
  openings: openingsOf(family).map(({ id }) => id),
  profiles: entrantsOf(family).map(({ id }) => id),
  fits: entrantsOf(family).map(({ ring }) => openingsOf(family).map((k) => judgeNow(k.ring, ring, conditions))),
};
const [keyway, own, shallow, long, thick, tool] = profiles;

test('a blank whose slot is 0.3 mm too shallow for the ward rides 0.3 mm higher than the own blank', () => {
  const seat = seatReading(family, known, shallow, keyway);
  expect(seat?.own).toBe(own);
  expect(Math.abs((seat?.offset ?? 0) - 300_000)).toBeLessThan(100);
  expect(seat && seatText(seat, 'mm')).toBe(
    'rides 0.300 mm higher than the Heron blank: every cut stands off by as much',
  );
  expect(seatText({ own, offset: -12_000 }, 'mm')).toContain('rides 0.012 mm lower than');
});

test('a longer blank of the section rides as high; of the own blank, a tool and what is blocked nothing is said', () => {
  const seat = seatReading(family, known, long, keyway);
  expect(seat && seatText(seat, 'in')).toBe('rides as high as the Heron blank');
  for (const profile of [own, thick, tool]) expect(seatReading(family, known, profile, keyway)).toBeNull();
});

test('nothing is said before every pair of the keyway is judged', () => {
  const gap = { ...known, fits: known.fits.map((row, i) => (i === 0 ? [undefined] : row)) };
  expect(seatReading(family, gap, shallow, keyway)).toBeNull();
  expect(seatReading(family, null, shallow, keyway)).toBeNull();
});
