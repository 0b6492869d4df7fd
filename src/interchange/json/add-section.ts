import type { Vertex } from '../../geom/vertex.ts';
import type { Milled } from '../../profile/profile.ts';
import { addProfile, drawnProfile, freshId, milledProfile, type ProfileHead } from './edit-profiles.ts';
import type { FamilyFile } from './schema.ts';

/** The shape of a section: milled, or drawn by its vertices, arcs as bulges. Nanometres. */
export type SectionShape = { readonly milled: Milled } | { readonly drawn: readonly Vertex[] };

/** A family with one section more, and the id that it was given. */
export interface AddedSection {
  readonly file: FamilyFile;
  readonly id: string;
}

/**
 * The family with one section more, under an id made of its name.
 *
 * @param head its name and kind, and the profile that it comes after; at the end where there is none of that id.
 * @param shape it is not checked here.
 * @check tests/unit/interchange/add-section.test.ts, tests/unit/interchange/mill-file.test.ts
 */
export function addSection(
  file: FamilyFile,
  { afterId, ...head }: Omit<ProfileHead, 'id'> & { readonly afterId?: string },
  shape: SectionShape,
): AddedSection {
  const id = freshId(file, head.name);
  const made =
    'milled' in shape
      ? milledProfile({ id, ...head }, shape.milled, file.units)
      : drawnProfile({ id, ...head }, shape.drawn, file.units);
  return { file: addProfile(file, made, afterId), id };
}
