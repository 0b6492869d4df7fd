import { describe, expect, test } from 'vitest';
import { type EntryMatrix, entryMatrix } from '../../../src/family/entry-matrix.ts';
import type { Family } from '../../../src/family/family.ts';
import { alikeWords, type GuardMargins, guardMargins } from '../../../src/family/guard-margin.ts';
import { seatOffset } from '../../../src/family/seat-offset.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { boxOfMm, ringOfMm, wardedKeyway } from '../../kit/shapes.ts';

const part = (id: string, kind: Profile['kind'], ring: Ring, section?: string): Profile => ({
  id,
  kind,
  name: id,
  ring,
  section,
});

/** 2.0 x 8.4 mm, 0.65 mm deep groove on the left from 3.0 to 4.0 mm; its back drawn at a height in mm. */
const grooved = (back: number) =>
  ringOfMm(
    [
      [0, 0],
      [2, 0],
      [2, 8.4],
      [0, 8.4],
      [0, 4],
      [0.65, 4],
      [0.65, 3],
      [0, 3],
    ].map(([x, y]) => [x, y + back] as const),
  );

const family: Family = {
  name: 'Test',
  units: 'mm',
  runningClearance: 40_000,
  tolerance: 0,
  tiltLimit: 0,
  profiles: [
    part('shallow', 'opening', wardedKeyway(0.4), 'Low'),
    part('deep', 'opening', wardedKeyway(0.6), 'High'),
    part('plain-blank', 'blank', boxOfMm(2, 8.4)),
    part('own-blank', 'blank', grooved(0), 'High'),
    part('high-blank', 'blank', grooved(2)),
    part('fat-strip', 'tool', boxOfMm(2.11, 8)),
  ],
};

function finish<T>(steps: Generator<unknown, T, void>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const matrix: EntryMatrix = finish(entryMatrix(family));
const margins: GuardMargins = finish(guardMargins(family, matrix));

describe('the room a family has', () => {
  // 0.4 mm of ward leaves 1.7 mm for 2.0 mm: 0.3 mm missing, 75 um from each face of each part. The tool that misses by
  // 10 um does not count.
  test('the guard margin is set by the shallowest ward that stops a blank', () => {
    expect(margins.guard).toMatchObject({ profile: 'plain-blank', opening: 'shallow' });
    expect(Math.abs((margins.guard?.length ?? 0) - 75_000)).toBeLessThan(1_000);
  });

  test('pairs that set the same are counted, and the first of them is named', () => {
    // The two grooved blanks are one shape, and enter both keyways with 50 um at each face.
    expect([margins.guard?.alike, margins.clearance?.alike]).toEqual([undefined, 3]);
    const [, , plain] = family.profiles;
    const twins = { ...family, profiles: [...family.profiles, ...['b', 'c'].map((id) => ({ ...plain, id }))] };
    // 10 um wider: 2.5 um more at each face of each part.
    const wider = { ...twins, profiles: [...twins.profiles, { ...plain, id: 'wider', ring: boxOfMm(2.01, 8.4) }] };
    // Twins whose wear stands within a step of the figures, not on one: they are alike nevertheless.
    const off = { ...plain, ring: boxOfMm(2.0012, 8.4) };
    const offGrid = {
      ...family,
      profiles: [...family.profiles, ...['b', 'c', 'd'].map((id) => ({ ...off, id }))].filter(
        ({ id }) => id !== plain.id,
      ),
    };
    for (const one of [twins, wider, offGrid]) {
      const { guard } = finish(guardMargins(one, finish(entryMatrix(one))));
      expect(guard).toMatchObject({ opening: 'shallow', alike: 2 });
      expect(guard && alikeWords(guard)).toBe(', the same for 2 other pairs');
    }
  });

  test('the smallest clearance is that of a blank, with the pair that sets it', () => {
    expect(margins.clearance).toMatchObject({ profile: 'own-blank', length: 50_000 });
  });

  test('the seat is counted against the section’s own blank, wherever the outlines were drawn', () => {
    const [shallow, deep, plain, own, high] = family.profiles;
    expect(seatOffset(family, matrix, own, deep)).toBe(0);
    expect(seatOffset(family, matrix, high, deep)).toBeCloseTo(0, 3);
    expect(seatOffset(family, matrix, plain, deep)).toBeNull();
    expect(seatOffset(family, matrix, own, shallow)).toBeNull();
  });
});
