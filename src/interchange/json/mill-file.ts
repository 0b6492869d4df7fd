import { toFileLength } from '../../family/file-length.ts';
import type { Milled } from '../../profile/profile.ts';
import { milledFile, profileFileOf, replaceProfile } from './edit-profiles.ts';
import type { FamilyFile, MilledFile } from './schema.ts';

/**
 * The family with another milled description for one profile; a drawn one becomes milled. Fields that we do not know
 * are kept, in the blade and in each groove that stays.
 *
 * @param sources for each groove of `milled` its place among the grooves before, or null where it is new.
 * @throws RangeError where the family has no such profile.
 * @check tests/unit/interchange/mill-file.test.ts
 */
export function putMilled(
  file: FamilyFile,
  id: string,
  milled: Milled,
  sources: readonly (number | null)[],
): FamilyFile {
  const profile = profileFileOf(file, id);
  if (!profile) throw new RangeError(`putMilled: no profile "${id}"`);
  const { outline: _outline, milled: before, ...head } = profile;
  const { grooves, ...blade } = milledFile(milled, file.units);
  const grown = grooves.map((groove, i) => ({ ...unknownOfGroove(before, sources[i] ?? null), ...groove }));
  return replaceProfile(file, id, { ...head, milled: { ...unknownOfBlade(before), ...blade, grooves: grown } });
}

function unknownOfBlade(before: MilledFile | undefined): Record<string, unknown> {
  if (!before) return {};
  const { thickness: _t, height: _h, backRadius: _r, grooves: _g, ...rest } = before;
  return rest;
}

function unknownOfGroove(before: MilledFile | undefined, source: number | null): Record<string, unknown> {
  const groove = source === null ? undefined : before?.grooves[source];
  if (!groove) return {};
  const { side: _s, bottom: _b, width: _w, depth: _d, flankDeg: _f, rootRadius: _r, ...rest } = groove;
  return rest;
}

/** The family with another least web, nanometres, or without one. */
export function putLeastWeb(file: FamilyFile, nm: number | null): FamilyFile {
  const { leastWeb: _before, profiles, ...frame } = file;
  return nm === null ? { ...frame, profiles } : { ...frame, leastWeb: toFileLength(nm, file.units), profiles };
}
