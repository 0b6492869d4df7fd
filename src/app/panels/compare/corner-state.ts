import type { Placement } from '../../../fit/fit.ts';
import type { Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import type { Session } from '../../state/session.ts';
import { makeStore, type Store } from '../../state/store.ts';

/** Which of the two in hand has its corners moved. */
export type CornerPart = 'entrant' | 'opening';

/** An edit of a corner under way. */
export interface CornerEdit {
  readonly id: string;
  /** The outline as it was when the edit began: each wanted place is tried on this one. */
  readonly base: readonly Vertex[];
  /** The number of the moved corner in `base`. */
  readonly index: number;
  /** Where the blank lay by hand before; null where it lay in its best placement. */
  readonly handBefore: Placement | null;
  /** Where the blank is held while the corner is moved. */
  readonly held: Placement;
}

/** The corners of Compare: whether they are shown, whose, which is chosen, and what became of the last move. */
export interface CornerState {
  readonly on: boolean;
  readonly part: CornerPart;
  readonly chosen: number;
  readonly edit: CornerEdit | null;
  /** Where the chosen corner was wanted and not taken, in the frame of its outline; null where all was taken. */
  readonly refusedAt: Point | null;
  /** Why it was not taken, in words; empty where it was. */
  readonly refusal: string;
}

const NO_CORNERS: CornerState = { on: false, part: 'entrant', chosen: 0, edit: null, refusedAt: null, refusal: '' };

const stores = new WeakMap<Session, Store<CornerState>>();

/** The corner store of a window: drawing and readings share it. */
export function cornersOf(session: Session): Store<CornerState> {
  const known = stores.get(session);
  if (known) return known;
  const made = makeStore(NO_CORNERS);
  stores.set(session, made);
  return made;
}
