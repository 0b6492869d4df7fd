import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import { type Shell, sayFault } from './shell.ts';

/**
 * Says of a family without openings that there is nothing to do with it, and what to do; returns the exit code, or null
 * where there are openings.
 *
 * @param file the family file, as it was named.
 * @param idle what is left undone: "there is nothing to gauge".
 * @check tests/unit/cli/no-sections.test.ts
 */
export function sayNoOpenings(family: Family, file: string, idle: string, shell: Shell): number | null {
  if (openingsOf(family).length > 0) return null;
  return sayFault(file, `has no openings, so ${idle}. ${cureOf(family, 'a keyway')}`, shell);
}

/**
 * The same of a family without blanks and tools; null where there are some.
 *
 * @param idle what is left undone: "there is nothing to examine".
 * @returns the exit code, or null.
 * @check tests/unit/cli/no-sections.test.ts
 */
export function sayNoEntrants(family: Family, file: string, idle: string, shell: Shell): number | null {
  if (entrantsOf(family).length > 0) return null;
  return sayFault(file, `has no blanks and no tools, so ${idle}. ${cureOf(family, 'a blank')}`, shell);
}

/**
 * The same of a family where nothing at all is drawn: no opening, no blank and no tool.
 *
 * @param idle what is left undone: "there is nothing to order".
 * @returns the exit code, or null where something is drawn.
 * @check tests/unit/cli/no-sections.test.ts
 */
export function sayNoProfiles(family: Family, file: string, idle: string, shell: Shell): number | null {
  if (family.profiles.length > 0) return null;
  return sayFault(file, `has no openings, blanks or tools, so ${idle}. ${cureOf(family, 'a keyway')}`, shell);
}

/** What gives a family what it lacks: "a keyway". */
function cureOf({ plan }: Family, lack: string): string {
  return plan ? 'Make its sections first: plan FILE -o NEW-FILE' : `Add ${lack} to the file`;
}
