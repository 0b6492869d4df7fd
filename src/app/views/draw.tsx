import type { Family } from '../../family/family.ts';
import { EmptyNotice } from '../panels/empty-notice.tsx';
import { useSession, useStore } from '../panels/use-store.ts';
import { editedProfile } from '../state/selection-state.ts';

/** One outline, edited. */
export function Draw({ family }: { family: Family }) {
  const { selection } = useSession();
  const profile = editedProfile(
    family,
    useStore(selection, (s) => s),
  );
  if (!profile) return <EmptyNotice title="Nothing to draw" what="Pick a section in the tray." />;
  return <p>{profile.name}</p>;
}
