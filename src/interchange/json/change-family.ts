import { type FamilyRead, readPresentVersion } from './read.ts';
import type { FamilyFile } from './schema.ts';

/**
 * The document of a file that was made from the value of another one, or what is wrong with it. Profiles that the two
 * share are taken over as they are, so that an edit costs what it touches.
 *
 * @param next a value made without changing the old one in place.
 * @check tests/unit/interchange/change-family.test.ts
 */
export function changeFamily(next: FamilyFile): FamilyRead {
  return readPresentVersion(next);
}
