import { findForeignKeyways, findSameNames, findTwoSchemes } from './find-clashes.ts';
import { findJoined, sayJoined } from './find-joined.ts';
import { findLengths } from './find-lengths.ts';
import { findLookAlikes } from './find-look-alikes.ts';
import { FreshNames } from './fresh-name.ts';
import type { Knowledge } from './knowledge.ts';
import type { MisleadingName } from './misleading-name.ts';

/**
 * Names of a family that mislead, each with the reason and with names instead. Old names are left alone: they are in the
 * register so that old lists can be read. What depends on a pair that is not judged yet is not told.
 *
 * @returns [] for a family without such names. Renames suggested for one fault make no other one.
 * @check tests/unit/names/misleading.test.ts, tests/laws/naming-scheme.test.ts
 */
export function misleadingNames(knowledge: Knowledge): MisleadingName[] {
  const fresh = new FreshNames(knowledge.register);
  return [
    ...findJoined(knowledge).map((joined) => sayJoined(joined, knowledge, fresh)),
    ...findForeignKeyways(knowledge, fresh),
    ...findLengths(knowledge, fresh),
    ...findTwoSchemes(knowledge, fresh),
    ...findSameNames(knowledge, fresh),
    ...findLookAlikes(knowledge, fresh),
  ];
}
