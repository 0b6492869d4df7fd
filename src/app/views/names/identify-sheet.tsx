import { useEffect } from 'react';
import type { Family } from '../../../family/family.ts';
import { IdentifyAnswer } from '../../panels/names/identify/identify-answer.tsx';
import { IdentifyHead } from '../../panels/names/identify/identify-head.tsx';
import { IdentifyWays } from '../../panels/names/identify/identify-ways.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import { identifyWhenNew } from '../../state/names/identifying.ts';
import styles from './identify-sheet.module.css';

/** What an unknown outline is: every section of the family, ranked by how close it lies. */
export function IdentifySheet({ family }: { family: Family }) {
  const session = useSession();
  const question = useStore(session.identify, (s) => s);
  const { unknown, among, error, mirrored, turned } = question;
  // biome-ignore lint/correctness/useExhaustiveDependencies: whatever is asked otherwise is asked anew
  useEffect(() => {
    identifyWhenNew(session, family);
  }, [session, family.profiles, unknown, among, error, mirrored, turned]);
  if (!unknown)
    return (
      <div className={styles.empty}>
        <IdentifyWays family={family} />
      </div>
    );
  return (
    <div className={styles.sheet}>
      <IdentifyHead key={unknown.name} unknown={unknown} />
      <IdentifyAnswer family={family} unknown={unknown} />
    </div>
  );
}
