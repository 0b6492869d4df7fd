import type { Family } from '../../family/family.ts';
import { editedProfile } from '../state/selection-state.ts';
import { useSession, useStore } from './use-store.ts';

/** The edited outline in numbers: the forms of the Draw view. */
export function DrawReadings({ family }: { family: Family }) {
  const { selection } = useSession();
  const profile = editedProfile(
    family,
    useStore(selection, (s) => s),
  );
  return <h2>{profile?.name ?? 'Nothing picked'}</h2>;
}
