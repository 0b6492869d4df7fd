import type { SolidPart } from './display-set.ts';

/**
 * Several parts as one surface, each where it lies on its bed; millimetres.
 *
 * @check tests/unit/app/block-pictures.test.ts
 */
export function joinParts(parts: readonly SolidPart[]): Pick<SolidPart, 'positions' | 'triangles'> {
  const count = (pick: 'positions' | 'triangles') => parts.reduce((sum, part) => sum + part[pick].length, 0);
  const positions = new Float32Array(count('positions'));
  const triangles = new Uint32Array(count('triangles'));
  let [at, from] = [0, 0];
  for (const part of parts) {
    const first = at / 3;
    triangles.set(
      part.triangles.map((corner) => corner + first),
      from,
    );
    positions.set(
      part.positions.map((value, i) => value + part.place[i % 3]),
      at,
    );
    at += part.positions.length;
    from += part.triangles.length;
  }
  return { positions, triangles };
}
