import { setOf } from '../../src/order/bit-set.ts';
import { inclusionCovers } from '../../src/order/inclusion.ts';
import { heightsOf } from '../../src/order/transitive-reduction.ts';
import { randomNumbers } from './random-numbers.ts';

/** Sets by inclusion, as they would stand in a tier diagram. */
export interface SetDiagram {
  readonly tiers: readonly number[];
  readonly covers: readonly (readonly [lower: number, upper: number])[];
}

/** About `size` sets as in a well-planned family: half base sets, then runs of neighbours, longer runs, and all. */
export function nestedSets(size: number, seed: number): SetDiagram {
  const random = randomNumbers(seed);
  const base = Math.ceil(size / 2);
  const runs = Array.from({ length: size - base - 1 }, (_, i) => {
    const length = Math.min(base, i % 3 < 2 ? random.whole(2, 4) : random.whole(5, 6 + base / 4));
    const from = random.whole(0, base - length);
    return numbers(from, from + length);
  });
  return diagramOf([...numbers(0, base).map((i) => [i]), ...runs, numbers(0, base)], base);
}

/** About `size` sets without any plan: half base sets, then random ones of all sizes. */
export function scatteredSets(size: number, seed: number): SetDiagram {
  const random = randomNumbers(seed);
  const base = Math.ceil(size / 2);
  const sets = Array.from({ length: size - base - 1 }, () => {
    const share = random.pick([0.05, 0.12, 0.3]);
    return numbers(0, base).filter(() => random.chance(share));
  });
  return diagramOf(
    [...numbers(0, base).map((i) => [i]), ...sets.filter((set) => set.length > 1), numbers(0, base)],
    base,
  );
}

function numbers(from: number, to: number): number[] {
  return Array.from({ length: to - from }, (_, i) => from + i);
}

function diagramOf(members: readonly number[][], room: number): SetDiagram {
  const different = [...new Map(members.map((set) => [set.join(), set])).values()];
  const covers = inclusionCovers(different.map((set) => setOf(room, set)));
  return { tiers: heightsOf(different.length, covers), covers };
}
