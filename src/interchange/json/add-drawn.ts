import type { Vertex } from '../../geom/vertex.ts';
import { addProfile, drawnProfile, freshId, type ProfileHead } from './edit-profiles.ts';
import type { FamilyFile } from './schema.ts';

/** A family with one profile more, and the id that the profile was given. */
export interface NewlyDrawn {
  readonly file: FamilyFile;
  readonly id: string;
}

/**
 * The family with a drawn profile more, under an id made of its name.
 *
 * @param head its name and kind, and the profile that it comes after; at the end where there is none of that id.
 * @param vertices in order, arcs as bulges, nanometres; they are not checked here.
 * @check tests/unit/interchange/add-drawn.test.ts
 */
export function addDrawn(
  file: FamilyFile,
  { afterId, ...head }: Omit<ProfileHead, 'id'> & { readonly afterId?: string },
  vertices: readonly Vertex[],
): NewlyDrawn {
  const id = freshId(file, head.name);
  return { file: addProfile(file, drawnProfile({ id, ...head }, vertices, file.units), afterId), id };
}
