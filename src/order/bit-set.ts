/** A set of whole numbers from 0 up to a fixed size, 32 to a word. */
export type BitSet = Uint32Array;

/** A set that has room for the numbers below `size` and holds none. */
export function emptySet(size: number): BitSet {
  return new Uint32Array((size + 31) >>> 5);
}

/** The set of all numbers below `size`. */
export function fullSet(size: number): BitSet {
  const set = emptySet(size).fill(0xffffffff);
  if (size & 31) set[set.length - 1] = 2 ** (size & 31) - 1;
  return set;
}

/** The set of some numbers, all below `size`. */
export function setOf(size: number, members: Iterable<number>): BitSet {
  const set = emptySet(size);
  for (const member of members) addTo(set, member);
  return set;
}

/** Puts a number into a set. */
export function addTo(set: BitSet, member: number): void {
  set[member >>> 5] |= 1 << (member & 31);
}

/** Whether a number is in a set. */
export function hasMember(set: BitSet, member: number): boolean {
  return ((set[member >>> 5] >>> (member & 31)) & 1) === 1;
}

/** The numbers in a set, least first. */
export function membersOf(set: BitSet): number[] {
  const members: number[] = [];
  for (let i = 0; i < set.length; i++)
    for (let rest = set[i]; rest !== 0; rest &= rest - 1) members.push(32 * i + 31 - Math.clz32(rest & -rest));
  return members;
}

/** How many numbers are in a set. */
export function countMembers(set: BitSet): number {
  let count = 0;
  for (let i = 0; i < set.length; i++) for (let rest = set[i]; rest !== 0; rest &= rest - 1) count++;
  return count;
}

/** Whether all of `a` is in `b`; both have room for the same numbers. */
export function isSubset(a: BitSet, b: BitSet): boolean {
  for (let i = 0; i < a.length; i++) if ((a[i] & ~b[i]) !== 0) return false;
  return true;
}

/** Whether two sets hold the same. */
export function isSameSet(a: BitSet, b: BitSet): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** What two sets share, as a new set. */
export function intersection(a: BitSet, b: BitSet): BitSet {
  const shared = a.slice();
  for (let i = 0; i < shared.length; i++) shared[i] &= b[i];
  return shared;
}

/** Puts all of `b` into `a`. */
export function uniteWith(a: BitSet, b: BitSet): void {
  for (let i = 0; i < a.length; i++) a[i] |= b[i];
}

/** Takes all of `b` out of `a`. */
export function takeFrom(a: BitSet, b: BitSet): void {
  for (let i = 0; i < a.length; i++) a[i] &= ~b[i];
}
