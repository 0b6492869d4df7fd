import type { Family } from '../../../family/family.ts';
import type { Ring } from '../../../geom/ring.ts';
import type { MillFault } from '../../../profile/check-milled.ts';
import type { Milled } from '../../../profile/profile.ts';
import type { GrooveReading } from '../../../profile/read-grooves.ts';
import type { DraggingGroove } from '../../tools/draw/dragging-groove.ts';
import { endEdit } from '../edit-document.ts';
import { editedProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { listenTo, makeStore, type Store } from '../store.ts';

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
  /** The profile that the rest but `letGo` is about. */
  readonly id: string | null;
  /** Place of the chosen groove in the list; null where none is. */
  readonly chosen: number | null;
  readonly draft: MillDraft | null;
  readonly drag: DraggingGroove | null;
  readonly preview: ReadPreview | null;
  /** What the last action did, in words; empty where there is nothing to say. */
  readonly told: string;
  /** What was let go as another profile was picked, in words, whichever is picked now; empty once more is done. */
  readonly letGo: string;
}

const NOTHING: MillState = { id: null, chosen: null, draft: null, drag: null, preview: null, told: '', letGo: '' };

const stores = new WeakMap<Session, Store<MillState>>();

/** The mill store of a window: canvas, form and keys share it. */
export function millOf(session: Session): Store<MillState> {
  const known = stores.get(session);
  if (known) return known;
  const made = makeStore(NOTHING);
  stores.set(session, made);
  tieDrag(session, made);
  return made;
}

/**
 * A held handle is let go where another profile is picked, or undo takes away what it was held on. Words on sizes that
 * were let go are put away where the family is edited, or another one opened.
 */
function tieDrag({ documents, selection }: Session, mill: Store<MillState>): void {
  listenTo(
    selection,
    (picked) => {
      const family = documents.getState().document?.family;
      return (family && editedProfile(family, picked)?.id) ?? null;
    },
    (id) => {
      if (!mill.getState().drag) {
        sayLetGo(documents.getState().document?.family, mill, id);
        return;
      }
      endEdit(documents);
      mill.setState({ drag: null, draft: null });
    },
  );
  listenTo(
    documents,
    (s) => s.document,
    () => {
      if (mill.getState().letGo) mill.setState({ letGo: '' });
      // Every blade that the drag makes has one that it was edited from.
      if (mill.getState().drag && documents.getState().editedFrom === null) mill.setState({ drag: null, draft: null });
    },
  );
}

/** Sizes that were typed, cannot be milled and are let go as another profile is picked are told there. */
function sayLetGo(family: Family | undefined, mill: Store<MillState>, next: string | null): void {
  const { id, draft } = mill.getState();
  if (draft === null || next === null || next === id) return;
  const left = family?.profiles.find((profile) => profile.id === id);
  if (left?.milled !== draft.base) return;
  const kept = left.kind === 'opening' ? 'keyway' : 'blade';
  const letGo = `${left.name}: the sizes that could not be milled are dropped; its last sound ${kept} stays.`;
  mill.setState({ ...NOTHING, id: next, letGo });
}

/** What the form knows of one profile: where it was about another one, only what was let go. */
export function millFor(state: MillState, id: string): MillState {
  return state.id === id ? state : { ...NOTHING, id, letGo: state.letGo };
}
