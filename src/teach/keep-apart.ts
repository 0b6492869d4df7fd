/**
 * Places in order, moved as little as keeps them apart within a room: none nearer to the next than both their halves, none
 * over the edge. Where there is too little room, they stand out at its beginning.
 *
 * @param wanted middles, ascending.
 * @param sizes how much of the room each takes, in the order of the places; one number where all take the same.
 * @check tests/unit/teach/keep-apart.test.ts
 */
export function keepApart(wanted: readonly number[], sizes: number | readonly number[], room: number): number[] {
  const sizeOf = (i: number) => (typeof sizes === 'number' ? sizes : sizes[i]);
  const apart = (i: number) => (sizeOf(i) + sizeOf(i + 1)) / 2;
  const places = [...wanted];
  const last = places.length - 1;
  for (let i = 0; i <= last; i++)
    places[i] = Math.max(places[i], i === 0 ? sizeOf(0) / 2 : places[i - 1] + apart(i - 1));
  for (let i = last; i >= 0; i--)
    places[i] = Math.min(places[i], i === last ? room - sizeOf(last) / 2 : places[i + 1] - apart(i));
  return places;
}
