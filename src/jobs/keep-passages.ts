import { commonPassage, type PassageInput } from '../passage/find-passage.ts';
import type { Passage } from '../passage/passage.ts';

/** So many passages are kept: those of a few lessons. */
const MOST_KEPT = 32;

/** Passages of earlier calls in this thread, by what they are of; the one used last stands last. */
const kept = new Map<string, Passage>();

/**
 * What some keyways have in common, found once for as long as the outlines are the same.
 *
 * @yields how far the search is.
 * @check tests/unit/jobs/keep-passages.test.ts
 */
export function* keptPassage(input: PassageInput): Generator<{ done: number; total: number }, Passage, void> {
  const key = keyOf(input);
  const passage = kept.get(key) ?? (yield* commonPassage(input));
  kept.delete(key);
  kept.set(key, passage);
  const [oldest] = kept.keys();
  if (kept.size > MOST_KEPT) kept.delete(oldest);
  return passage;
}

/** All that a passage depends on, as text: names of the keyways too, since it tells them. */
function keyOf({ openings, chosen, runningClearance }: PassageInput): string {
  const outlines = openings.map(({ id, ring }) => `${id}: ${ring.map(({ x, y }) => `${x} ${y}`).join(' ')}`);
  return [String(runningClearance), chosen.join(' '), ...outlines].join('\n');
}
