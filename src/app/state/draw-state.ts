import type { Point } from '../../geom/point.ts';
import type { Vertex } from '../../geom/vertex.ts';
import type { Profile } from '../../profile/profile.ts';
import { makeStore, type Store } from './store.ts';

/** The two ways to describe a profile in the Draw view: by its vertices, or by the way it is milled. */
export type DrawForm = 'outline' | 'mill';

/** An outline that was wanted and is not sound: it is shown where it fails and never taken. */
export interface Refused {
  readonly vertices: readonly Vertex[];
  /** Places where it crosses or touches itself, nanometres; empty where the fault has no place. */
  readonly at: readonly Point[];
  /** Why, in words. */
  readonly words: string;
}

/** What the Draw view knows beside the family: which form is shown, what is chosen, what the pen has begun. */
export interface DrawState {
  readonly form: DrawForm;
  /** Numbers of the chosen vertices of the edited outline, ascending. */
  readonly chosen: readonly number[];
  /** The outline last wanted and refused; null where all was taken. */
  readonly refused: Refused | null;
  /** Vertices set by the pen so far; null while no outline is begun. Kept over a reload. */
  readonly pen: readonly Vertex[] | null;
  /** Profiles that lie under the edited one as ghosts, by id. */
  readonly ghosts: readonly string[];
}

const NOTHING: DrawState = { form: 'outline', chosen: [], refused: null, pen: null, ghosts: [] };

/** A store in which nothing is chosen or begun. */
export function makeDrawStore(): Store<DrawState> {
  return makeStore(NOTHING);
}

/** The vertices that the Draw view edits: as drawn, or for a milled profile the corners of its outline. */
export function editedVertices({ drawn, ring }: Profile): readonly Vertex[] {
  return drawn ?? ring;
}
