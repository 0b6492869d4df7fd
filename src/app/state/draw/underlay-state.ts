import type { Point } from '../../../geom/point.ts';
import type { PictureFile } from '../../../interchange/json/schema.ts';
import type { GrayPicture } from '../../../trace/gray-picture.ts';
import type { MarksFault } from '../../../trace/marks-fault.ts';
import type { PictureFrame, PictureMarks, PicturePoint, PictureSize } from '../../../trace/picture-scale.ts';
import type { FourPoints } from '../../../trace/plane-map.ts';
import type { PictureTrace } from '../../../trace/trace-picture.ts';
import type { Session } from '../session.ts';
import { listenTo, makeStore, type Store } from '../store.ts';

/** A decoded picture. */
export interface UnderlayImage {
  readonly name: string;
  readonly size: PictureSize;
  readonly bitmap: ImageBitmap;
  readonly light: GrayPicture;
  /** What the file would keep: the picture as a data address; null where it is too large for one. */
  readonly data: string | null;
  /** What became of it when it was opened, in words; empty where nothing did. */
  readonly note: string;
}

/** The marks that can be set on a picture. */
export const MARK_NAMES = {
  scale: ['scaleFrom', 'scaleTo'],
  turn: ['lineFrom', 'lineTo'],
  perspective: ['corner1', 'corner2', 'corner3', 'corner4'],
} as const;

export type MarkName = (typeof MARK_NAMES)[keyof typeof MARK_NAMES][number];

/** The steps from a picture to an outline; one is open at a time. */
export type TraceStep = keyof typeof MARK_NAMES | 'outline';

/** What was told of a picture so far, complete or not. */
export interface Told {
  readonly points: Readonly<Partial<Record<MarkName, PicturePoint>>>;
  /** Nanometres. */
  readonly distance: number;
  readonly width: number;
  readonly height: number;
  readonly lies: 'upright' | 'level';
  /** Radians, counter-clockwise. */
  readonly turn: number;
  readonly middle: Point;
}

/** How the automatic outline is found, as it is set by hand. */
export interface TraceHand {
  /** Grey as stored, 0 to 1. */
  readonly grey: number;
  readonly shade: 'dark' | 'light';
  /** Pixels. */
  readonly blur: number;
  /** Square nanometres. */
  readonly leastArea: number;
  /** Nanometres; null for the one that goes with the size of a pixel. */
  readonly tolerance: number | null;
  readonly sharpen: boolean;
}

/** The automatic outline of a picture. */
export interface Tracing {
  readonly running: boolean;
  readonly found: PictureTrace | null;
  /** The number of the picked loop; -1 for none. */
  readonly picked: number;
  /** Where it was picked by hand, among the profiles; null for the likeliest. */
  readonly pickedAt: Point | null;
  /** Why there is no result, in words. */
  readonly trouble: string | null;
}

/** A picture under one profile. */
export interface Underlay {
  readonly image: UnderlayImage;
  readonly told: Told;
  /** Where the picture lies: as told last without a fault. */
  readonly frame: PictureFrame;
  readonly fault: MarksFault | null;
  readonly step: TraceStep | null;
  /** The mark that the next press sets; null while none is being set. */
  readonly placing: MarkName | null;
  /** The mark in hand and where it is. */
  readonly held: { readonly name: MarkName; readonly at: PicturePoint } | null;
  readonly opacity: number;
  readonly hand: TraceHand;
  readonly tracing: Tracing;
  /** The field of the file that holds it; null while it is not kept. */
  readonly kept: PictureFile | null;
  /** Grows with each change of the frame or the picture, so that a view may fit itself anew. */
  readonly opened: number;
}

/** The pictures of a window, by the profile that they lie under. */
export interface UnderlayState {
  readonly underlays: Readonly<Record<string, Underlay>>;
  /** The profile whose picture is being read. */
  readonly reading: string | null;
  /** Why the last picture was not opened or kept, in words. */
  readonly trouble: { readonly id: string; readonly what: string; readonly cure: string } | null;
  /** Whether somebody came to Draw for the picture of an unknown outline, and has touched nothing else since. */
  readonly wanted: boolean;
}

const NO_PICTURES: UnderlayState = { underlays: {}, reading: null, trouble: null, wanted: false };

/** No automatic outline yet. */
export const NOT_TRACED: Tracing = { running: false, found: null, picked: -1, pickedAt: null, trouble: null };

const stores = new WeakMap<Session, Store<UnderlayState>>();

/** The pictures of a window; they go when another family is opened. */
export function underlaysOf(session: Session): Store<UnderlayState> {
  const known = stores.get(session);
  if (known) return known;
  const made = makeStore(NO_PICTURES);
  stores.set(session, made);
  listenTo(
    session.documents,
    (s) => s.opened,
    () => {
      for (const { image } of Object.values(made.getState().underlays)) image.bitmap.close();
      made.setState(NO_PICTURES);
    },
  );
  listenTo(
    session.selection,
    (s) => s.view,
    (view) => view === 'draw' || made.setState({ wanted: false }),
  );
  return made;
}

/** Shows where a picture of an unknown outline is opened and traced. */
export function goToPicture(session: Session): void {
  underlaysOf(session).setState({ wanted: true });
  session.selection.setState({ view: 'draw' });
}

/** The picture under a profile; null where there is none. */
export function underlayOf(session: Session, id: string): Underlay | null {
  const { underlays } = underlaysOf(session).getState();
  return Object.hasOwn(underlays, id) ? underlays[id] : null;
}

/** Replaces parts of what is known of the picture under a profile; nothing where there is none. */
export function changeUnderlay(session: Session, id: string, change: Partial<Underlay>): void {
  const store = underlaysOf(session);
  const underlay = underlayOf(session, id);
  if (!underlay) return;
  store.setState(({ underlays }) => ({ underlays: { ...underlays, [id]: { ...underlay, ...change } } }));
}

/** The marks that what was told amounts to: those of which every part is there. */
export function marksOf({ points: p, distance, width, height, lies, turn, middle }: Told): PictureMarks {
  const corners = p.corner1 && p.corner2 && p.corner3 && p.corner4 && [p.corner1, p.corner2, p.corner3, p.corner4];
  return {
    ...(p.scaleFrom && p.scaleTo && { scale: { from: p.scaleFrom, to: p.scaleTo, distance } }),
    ...(corners && { rectangle: { corners: corners as unknown as FourPoints, width, height } }),
    ...(p.lineFrom && p.lineTo && { line: { from: p.lineFrom, to: p.lineTo, lies } }),
    turn,
    middle,
  };
}

/** What marks tell, as it is set by hand; `usual` fills in what they do not tell. */
export function toldOf({ scale, rectangle, line, turn, middle }: PictureMarks, usual: Told): Told {
  const corners = rectangle?.corners;
  return {
    ...usual,
    points: {
      ...(scale && { scaleFrom: scale.from, scaleTo: scale.to }),
      ...(line && { lineFrom: line.from, lineTo: line.to }),
      ...(corners && { corner1: corners[0], corner2: corners[1], corner3: corners[2], corner4: corners[3] }),
    },
    ...(scale && { distance: scale.distance }),
    ...(rectangle && { width: rectangle.width, height: rectangle.height }),
    ...(line && { lies: line.lies }),
    turn,
    middle,
  };
}
