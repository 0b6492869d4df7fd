import { openingsOf } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';
import type { Knowledge } from './knowledge.ts';
import { listed } from './say-list.ts';
import { goesIn } from './say-pair.ts';

/** Most keyways whose reason is told when a blank is blocked there. */
const MOST_REASONS = 3;

/** Most names in one sentence. */
const MOST_NAMES = 40;

/**
 * What one blank or tool goes into, counted, and where it is blocked; by what, where that is soon said.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function sayWhere(goer: Profile, knowledge: Knowledge): string[] {
  const openings = openingsOf(knowledge.family);
  const answers = openings.map((opening) => goesIn(knowledge, goer, opening));
  const of = (answer: boolean | undefined) => openings.filter((_, i) => answers[i] === answer);
  const [entered, blocked, unknown] = [of(true), of(false), of(undefined)];
  if (openings.length === 0) return ['The family has no keyways.'];
  if (unknown.length === openings.length) return [`What ${goer.name} goes into is not judged yet.`];
  return [
    sayEntered(goer, entered, openings.length),
    ...sayBlocked(goer, blocked, knowledge),
    ...(unknown.length > 0 ? [`Not judged yet in ${namesOf(unknown)}.`] : []),
  ];
}

function sayEntered({ name }: Profile, entered: readonly Profile[], count: number): string {
  const keyways = `${count} ${count === 1 ? 'keyway' : 'keyways'}`;
  if (entered.length === 0) return `${name} goes into none of the ${keyways}.`;
  if (entered.length === count) return `${name} goes into all ${keyways}: ${namesOf(entered)}.`;
  return `${name} goes into ${entered.length} of ${keyways}: ${namesOf(entered)}.`;
}

function sayBlocked(goer: Profile, blocked: readonly Profile[], { reason }: Knowledge): string[] {
  if (blocked.length === 0) return [];
  if (blocked.length > MOST_REASONS) return [`It does not go into ${namesOf(blocked, 'or')}.`];
  return blocked.map((opening) => `In ${opening.name} it is ${reason(goer.id, opening.id) || 'blocked'}.`);
}

/** Names in one sentence; of very many, the first and how many more. */
export function namesOf(profiles: readonly Profile[], link?: string): string {
  const names = profiles.map(({ name }) => name);
  if (names.length <= MOST_NAMES) return listed(names, link);
  return `${names.slice(0, MOST_NAMES).join(', ')} and ${names.length - MOST_NAMES} more`;
}
