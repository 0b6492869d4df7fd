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
