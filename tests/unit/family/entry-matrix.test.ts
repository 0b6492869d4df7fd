import { describe, expect, test } from 'vitest';
import { type EntryMatrix, entryMatrix } from '../../../src/family/entry-matrix.ts';
import { entrantsOf, type Family, openingsOf } from '../../../src/family/family.ts';
import type { Profile, ProfileKind } from '../../../src/profile/profile.ts';
import { boxOfMm } from '../../kit/shapes.ts';

const profile = (id: string, kind: ProfileKind, width: number): Profile => ({
  id,
  kind,
  name: id,
  ring: boxOfMm(width, 8),
});

const family: Family = {
  name: 'Polderwick College',
  units: 'mm',
  runningClearance: 10_000,
  tolerance: 0,
  tiltLimit: 0,
  profiles: [
    profile('plover-blank', 'blank', 2),
    profile('plover-keyway', 'opening', 2.1),
    profile('strip', 'tool', 0.5),
    profile('avocet-keyway', 'opening', 1.5),
    profile('avocet-blank', 'blank', 1.4),
  ],
};

/** Runs a generator to its end. */
function finished(family: Family): { matrix: EntryMatrix; steps: { done: number; total: number }[] } {
  const steps: { done: number; total: number }[] = [];
  const run = entryMatrix(family);
  for (;;) {
    const step = run.next();
    if (step.done) return { matrix: step.value, steps };
    steps.push(step.value);
  }
}

describe('the entry matrix', () => {
  test('keeps the order of the chart; openings are columns, all else rows', () => {
    const { matrix } = finished(family);
    expect(matrix.openings).toEqual(['plover-keyway', 'avocet-keyway']);
    expect(matrix.profiles).toEqual(['plover-blank', 'strip', 'avocet-blank']);
    expect(openingsOf(family).map(({ id }) => id)).toEqual(matrix.openings);
    expect(entrantsOf(family).map(({ id }) => id)).toEqual(matrix.profiles);
  });

  test('fits[row][column] is the row thing in the column keyway', () => {
    const { fits } = finished(family).matrix;
    expect(fits[0].map(({ verdict }) => verdict)).toEqual(['tight', 'blocked']);
    expect(fits[2].map(({ verdict }) => verdict)).toEqual(['tight', 'tight']);
    expect(fits[0][1].clearance).toBeLessThan(0);
    expect(fits[1].map(({ play }) => Math.round(play.lateral))).toEqual([1_600_000, 1_000_000]);
  });

  test('another order of the file is another order of the matrix, with the same fits', () => {
    const turned = finished({ ...family, profiles: [...family.profiles].reverse() }).matrix;
    const { matrix } = finished(family);
    expect(turned.openings).toEqual([...matrix.openings].reverse());
    expect(turned.fits).toEqual([...matrix.fits].reverse().map((row) => [...row].reverse()));
  });

  test('steps count every pair once', () => {
    expect(finished(family).steps).toEqual([1, 2, 3, 4, 5, 6].map((done) => ({ done, total: 6 })));
  });

  test('nothing is judged before it is asked for', () => {
    const run = entryMatrix(family);
    expect(run.next().value).toEqual({ done: 1, total: 6 });
    run.return(undefined as never);
    expect(run.next().done).toBe(true);
  });
});
