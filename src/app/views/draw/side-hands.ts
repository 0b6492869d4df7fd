import type { Profile } from '../../../profile/profile.ts';
import { dragGroove, dropGroove, giveUpGroove, grooveCursor, pressGroove } from '../../panels/mill/mill-dragging.ts';
import { dragMark, dropMark, giveUpMark, markCursor, pressMark } from '../../panels/trace/mark-dragging.ts';
import type { Session } from '../../state/session.ts';
import type { DrawingView, PixelPoint } from '../../tools/drawing-view.ts';

/** Something beside the outline that the pointer can take hold of on the sheet: it is asked before the outline is. */
export interface SideHand {
  /** Takes what is under the pointer; false where nothing of its own is there. */
  press(session: Session, profile: Profile, view: DrawingView, at: PixelPoint): boolean;
  drag(session: Session, view: DrawingView, at: PixelPoint, fine: boolean): void;
  drop(session: Session): void;
  /** Gives up what is held; returns whether something was. */
  giveUp(session: Session): boolean;
  /** The pointer's look where it is, as CSS names it; null where nothing of its own is there. */
  cursor(session: Session, profile: Profile, view: DrawingView, at: PixelPoint): string | null;
}

/** The marks that scale and straighten a picture. */
const MARKS: SideHand = {
  press: (session, { id }, view, at) => pressMark(session, id, view, at),
  drag: (session, view, at) => dragMark(session, view, at),
  drop: dropMark,
  giveUp: giveUpMark,
  cursor: (session, { id }, view, at) => markCursor(session, id, view, at),
};

const millsGrooves = ({ draw }: Session) => draw.getState().form === 'mill' && draw.getState().tool === 'choose';

/** The grooves and sizes of a milled profile, in the Mill form. */
const GROOVES: SideHand = {
  press: (session, profile, view, at) => millsGrooves(session) && pressGroove(session, profile, view, at),
  drag: dragGroove,
  drop: dropGroove,
  giveUp: giveUpGroove,
  cursor: (session, profile, view, at) => (millsGrooves(session) ? grooveCursor(session, profile, view, at) : null),
};

/** All of them, in the order in which they are asked. */
export const SIDE_HANDS: readonly SideHand[] = [MARKS, GROOVES];
