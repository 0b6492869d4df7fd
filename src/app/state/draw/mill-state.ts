import type { Ring } from '../../../geom/ring.ts';
import type { MillFault } from '../../../profile/check-milled.ts';
import type { Milled } from '../../../profile/profile.ts';
import type { GrooveReading } from '../../../profile/read-grooves.ts';
import type { DraggingGroove } from '../../tools/draw/dragging-groove.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';

/** A description that was wanted and cannot be milled; the last sound one stays the profile's. */
export interface MillDraft {
  /** What the profile was when this was wanted; another one (after undo) makes the draft void. */
  readonly base: Milled;
  readonly milled: Milled;
  /** For each groove its place in the profile's list, or null where it is new. */
  readonly sources: readonly (number | null)[];
  readonly faults: readonly MillFault[];
}

/** A drawn outline as it was read: a preview until it is used or left. */
export interface ReadPreview {
  readonly id: string;
  /** The outline that was read: another one makes the preview void. */
  readonly ring: Ring;
  /** Nanometres. */
  readonly tolerance: number;
  readonly reading: GrooveReading;
}

/** What the Mill form knows beside the family. */
export interface MillState {
  /** The profile that the rest is about. */
  readonly id: string | null;
  /** Place of the chosen groove in the list; null where none is. */
  readonly chosen: number | null;
  readonly draft: MillDraft | null;
  readonly drag: DraggingGroove | null;
  readonly preview: ReadPreview | null;
  /** What the last action did, in words; empty where there is nothing to say. */
  readonly told: string;
}

const NOTHING: MillState = { id: null, chosen: null, draft: null, drag: null, preview: null, told: '' };

const stores = new WeakMap<Session, Store<MillState>>();

/** The mill store of a window: canvas, form and keys share it. */
export function millOf(session: Session): Store<MillState> {
  const known = stores.get(session);
  if (known) return known;
  const made = makeStore(NOTHING);
  stores.set(session, made);
  return made;
}

/** What the form knows of one profile: nothing, where it was about another one. */
export function millFor(state: MillState, id: string): MillState {
  return state.id === id ? state : { ...NOTHING, id };
}
