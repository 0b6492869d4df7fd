import { readFileSync } from 'node:fs';
import type { Family } from '../../src/family/family.ts';
import { readFamily } from '../../src/interchange/json/read.ts';
import type { Profile } from '../../src/profile/profile.ts';

/** The demo family. */
export function demoFamily(): Family {
  const read = readFamily(readFileSync('profiles-demo/polderwick.json', 'utf8'));
  if (!read.ok) throw new Error('The demo family is not sound.');
  return read.document.family;
}

/** A profile of the demo family. */
export function demoProfile(id: string): Profile {
  const found = demoFamily().profiles.find((profile) => profile.id === id);
  if (!found) throw new Error(`The demo family has no ${id}.`);
  return found;
}

/**
 * The demo family's file with these profiles only, without what is told of the others: names, claims, lesson, plan. For
 * tests that need some sections of it and not its two hundred pairs.
 */
export function partOfDemo(...ids: readonly string[]): object {
  const { names, claims, lesson, plan, profiles, ...rest } = JSON.parse(
    readFileSync('profiles-demo/polderwick.json', 'utf8'),
  );
  return { ...rest, profiles: ids.map((id) => profiles.find((profile: { id: string }) => profile.id === id)) };
}
