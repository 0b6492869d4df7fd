import { NM_PER_INCH, NM_PER_MM, type Point } from '../../geom/point.ts';
import { makeRing, type RingResult } from '../../geom/ring.ts';
import type { FamilyDocument } from './read.ts';

/** A document after an edit, or why the edit does not make a sound outline. */
export type OutlineEdit =
  | { readonly ok: true; readonly document: FamilyDocument }
  | { readonly ok: false; readonly fault: Extract<RingResult, { ok: false }>['fault'] };

/**
 * The document with another outline for one profile: a new value, the given one stays as it is. A milled profile
 * becomes a drawn one, since its grooves no longer tell its outline; every other field, known or not, is kept.
 *
 * @param id of a profile of the document.
 * @param points in order, nanometres.
 * @throws RangeError where the document has no such profile.
 * @check tests/unit/interchange/replace-outline.test.ts
 */
export function replaceOutline(document: FamilyDocument, id: string, points: readonly Point[]): OutlineEdit {
  const place = document.family.profiles.findIndex((profile) => profile.id === id);
  if (place < 0) throw new RangeError(`replaceOutline: no profile "${id}"`);
  const made = makeRing(points);
  if (!made.ok) return made;
  const { file, family } = document;
  const per = file.units === 'in' ? NM_PER_INCH : NM_PER_MM;
  const outline = made.ring.map(({ x, y }): [number, number] => [toFile(x, per), toFile(y, per)]);
  const { milled: _asMilled, ...drawn } = file.profiles[place];
  const { milled: _milled, ...profile } = family.profiles[place];
  return {
    ok: true,
    document: {
      file: { ...file, profiles: file.profiles.with(place, { ...drawn, outline }) },
      family: { ...family, profiles: family.profiles.with(place, { ...profile, ring: made.ring }) },
    },
  };
}

/** A length in the file's units with no more digits than bring back the same whole nanometre. */
function toFile(nm: number, per: number): number {
  return Number((nm / per).toFixed(9));
}
