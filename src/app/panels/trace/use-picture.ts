import { useEffect } from 'react';
import type { Box } from '../../../geom/point.ts';
import { toProfilePlane } from '../../../trace/picture-scale.ts';
import type { ShownPicture } from '../../canvas/draw/underlay-layer.tsx';
import { followFile } from '../../state/draw/underlay-editing.ts';
import { type Underlay, underlaysOf } from '../../state/draw/underlay-state.ts';
import { useSession, useStore } from '../use-store.ts';
import { openKeptPicture } from './open-picture.ts';

/** What is known of the picture under a profile; null where there is none. */
export function useUnderlay(id: string): Underlay | null {
  return useStore(underlaysOf(useSession()), ({ underlays }) => (Object.hasOwn(underlays, id) ? underlays[id] : null));
}

/**
 * The picture under a profile, to be drawn; null where there is none. One that the file keeps is opened, and lies as the
 * file has it, also after an undo.
 */
export function useShownPicture(id: string): ShownPicture | null {
  const session = useSession();
  const underlay = useUnderlay(id);
  const document = useStore(session.documents, (s) => s.document);
  const editing = useStore(session.documents, (s) => s.editedFrom !== null);
  const kept = document?.file.profiles.find((profile) => profile.id === id)?.picture;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a document that changed is what it waits for
  useEffect(() => {
    const { reading } = underlaysOf(session).getState();
    const follows = underlay ? followFile(session, id) : kept === undefined;
    if (!follows && kept && reading !== id) openKeptPicture(session, id, kept);
  }, [session, id, kept, editing, underlay === null]);
  return underlay;
}

/** The part of the sheet that a picture covers, nanometres; null for none. Far parts of a steep perspective do not count. */
export function pictureBox(shown: ShownPicture | null): Box | null {
  if (!shown) return null;
  const { width, height } = shown.image.size;
  const places = [0, 0.25, 0.5, 0.75, 1].flatMap((u) =>
    [0, 0.25, 0.5, 0.75, 1].flatMap((v) => toProfilePlane(shown.frame, { x: u * width, y: v * height }) ?? []),
  );
  const middle = shown.told.middle;
  const reach = 1.5 * Math.hypot(width, height) * shown.frame.nmPerPixel;
  const near = places.filter((p) => Math.hypot(p.x - middle.x, p.y - middle.y) <= reach);
  const xs = near.map((p) => p.x);
  const ys = near.map((p) => p.y);
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
}
