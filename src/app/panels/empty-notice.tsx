import type { ReactNode } from 'react';
import type { Family } from '../../family/family.ts';
import { openText } from '../state/document-state.ts';
import { SAMPLE_FAMILIES } from '../state/sample-families.ts';
import styles from './notices.module.css';
import { useSession, useStore } from './use-store.ts';

interface EmptyNoticeProps {
  readonly title: string;
  readonly what: string;
  /** Keys that lead on from there. */
  readonly children?: ReactNode;
}

/** What stands in the middle when there is nothing to lay out, and the way on from there. */
export function EmptyNotice({ title, what, children }: EmptyNoticeProps) {
  const { documents, doors } = useSession();
  const isStillPlanned = useStore(documents, (s) => isOnlyPlanned(s.document?.family));
  const [demo] = SAMPLE_FAMILIES;
  return (
    <section className={styles.empty}>
      <h2>{title}</h2>
      <p>{isStillPlanned ? 'This family has no section yet: it begins with a plan of its areas and holders.' : what}</p>
      {isStillPlanned && <PlanKey />}
      {children}
      <button type="button" className="key" onClick={() => openText(documents, doors, demo.text, demo.fileName)}>
        Open the demo family
      </button>
    </section>
  );
}

/** Whether a family has a plan, and no section made from it yet. */
function isOnlyPlanned(family: Family | undefined): boolean {
  return family?.plan !== undefined && family.profiles.length === 0;
}

/** Leads to where sections are planned. */
function PlanKey() {
  const { selection } = useSession();
  return (
    <button type="button" className="key" onClick={() => selection.setState({ view: 'plan' })}>
      Plan its sections
    </button>
  );
}
