import { type DrawnResult, makeDrawn, type Vertex } from '../../geom/vertex.ts';
import { outlineFile } from './edit-profiles.ts';
import type { FamilyDocument } from './read.ts';

/** A document after an edit, or why the edit does not make a sound outline. */
export type OutlineEdit =
  | { readonly ok: true; readonly document: FamilyDocument }
  | { readonly ok: false; readonly fault: Extract<DrawnResult, { ok: false }>['fault'] };

/**
 * The document with another outline for one profile: a new value, the given one stays as it is. A milled profile
 * becomes a drawn one, since its grooves no longer tell its outline; every other field, known or not, is kept.
 *
 * @param id of a profile of the document.
 * @param vertices in order, arcs as bulges, nanometres.
 * @throws RangeError where the document has no such profile.
 * @check tests/unit/interchange/replace-outline.test.ts
 */
export function replaceOutline(document: FamilyDocument, id: string, vertices: readonly Vertex[]): OutlineEdit {
  const place = document.family.profiles.findIndex((profile) => profile.id === id);
  if (place < 0) throw new RangeError(`replaceOutline: no profile "${id}"`);
  const made = makeDrawn(vertices);
  if (!made.ok) return made;
  const { file, family } = document;
  const { milled: _asMilled, ...head } = file.profiles[place];
  const { milled: _milled, ...profile } = family.profiles[place];
  const outline = outlineFile(made.drawn, file.units);
  return {
    ok: true,
    document: {
      file: { ...file, profiles: file.profiles.with(place, { ...head, outline }) },
      family: { ...family, profiles: family.profiles.with(place, { ...profile, ring: made.ring, drawn: made.drawn }) },
    },
  };
}
