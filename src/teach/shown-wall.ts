import type { Profile } from '../profile/profile.ts';
import { type TeachingKnowledge, tryIn } from './teaching-knowledge.ts';

/** All keyways where there is room for them; else those that the blank goes into first, in chart order. */
export function pickShown(
  knowledge: TeachingKnowledge,
  blank: Profile,
  openings: readonly Profile[],
  places: number,
): readonly Profile[] {
  if (openings.length <= places) return openings;
  const { inside, blocked, unknown } = tryIn(knowledge, blank.id, openings);
  const first = new Set([...inside, ...blocked, ...unknown].slice(0, places));
  return openings.filter((opening) => first.has(opening));
}

/** "and 12 more keyways: goes into 2, blocked in 10": the keyways of a wall that there is no room for. */
export function restWords(knowledge: TeachingKnowledge, blank: Profile, rest: readonly Profile[]): string {
  const { inside, blocked, unknown } = tryIn(knowledge, blank.id, rest);
  const parts = [
    inside.length > 0 ? `goes into ${inside.length}` : '',
    blocked.length > 0 ? `blocked in ${blocked.length}` : '',
    unknown.length > 0 ? `${unknown.length} not judged yet` : '',
  ].filter(Boolean);
  return `and ${rest.length} more keyways: ${parts.join(', ')}`;
}
